import type { stockTexts as english } from '../en/stock.js';

export const stockTexts: typeof english = {
  find: {
    label: 'Etikett, Charge oder Produkt finden',
    hint: 'Ein Handscanner tippt hier hinein. Oder tippen Sie den Code unseres Etiketts, eine Charge oder Wörter eines Namens ein.',
    find: 'Finden',
    nothing: (text) =>
      `Nichts hier trägt „${text}“: kein Etikett, keine Charge und kein Produkt. Vergleichen Sie es Zeichen für Zeichen mit dem Etikett, oder sehen Sie die Chargen durch.`,
  },

  levels: {
    title: 'Bestand',
    lead: 'Wie viel noch verwendet werden darf, nach Farbton und nach Konfiguration. Eine Flasche zählt als eine, wie voll sie auch ist.',
    search: 'Farbton, Produkt oder Hersteller',
    filter: 'Zeigen',
    everything: 'alles',
    filters: {
      low: 'was knapp ist',
      'ending soon': 'was bald verwendet werden muss',
      held: 'was gesperrt ist',
      here: 'was da ist',
    },
    kinds: { pigments: 'Pigmente', cartridges: 'Nadelmodule', consumables: 'Anderes' },
    kindHints: {
      pigments: 'Nach Farbton, in Flaschen.',
      cartridges: 'Nach Konfiguration, in Stück: Nadelmodule, die einander ersetzen, zählen zusammen.',
      consumables: 'In Flaschen oder Stück.',
    },
    nothingAtAll:
      'Noch ist kein Produkt eingetragen. Tragen Sie eines ein und erfassen Sie dann, was angekommen ist.',
    nothingFound: 'Nichts passt. Lassen Sie Wörter weg, oder zeigen Sie alles.',
    usable: 'verwendbar',
    opened: 'angebrochen',
    reserved: 'auf Tabletts',
    held: 'gesperrt',
    past: 'abgelaufen',
    practice: 'zum Üben',
    minimum: 'Mindestbestand',
    noMinimum: 'keiner',
    low: 'knapp',
    endingSoon: (count) => `${count} bald zu verwenden`,
    endsBy: (day) => `bis ${day}`,
    setMinimum: 'Mindestbestand setzen',
    setMinimumOf: (name) => `Mindestbestand setzen: ${name}`,
    minimumHint: 'Sind nur noch so viele oder weniger verwendbar, ist es knapp und wird gemeldet.',
    removeMinimum: 'Mindestbestand wegnehmen',
  },

  amounts: {
    pieces: (count) => `${count} Stück`,
    about: (pieces, volume) => `${pieces}, etwa ${volume}`,
    change: (signed) => `${signed} Stück`,
  },

  containerForms: { bottle: 'Flasche', box: 'Schachtel' },

  conditions: {
    usable: 'darf verwendet werden',
    'ends soon': 'muss bald verwendet werden',
    'no date known': 'kein Datum bekannt',
    expired: 'abgelaufen',
    'open too long': 'zu lange angebrochen',
    'practice only': 'nur zum Üben',
    'on hold': 'gesperrt',
    recalled: 'zurückgerufen',
    finished: 'aufgebraucht',
    discarded: 'nicht mehr da',
  },

  containers: {
    title: 'Flaschen und Schachteln',
    lead: 'Jede mit ihrem eigenen Etikett und der Zeit, die sie hat.',
    place: 'Platz',
    anywhere: 'überall',
    state: 'Zustand',
    here: 'alles, was da ist',
    none: 'Dort steht nichts. Wählen Sie einen anderen Platz oder Zustand.',
  },

  container: {
    title: 'Flasche oder Schachtel',
    time: 'Ihre Zeit',
    timeHint: 'Sie darf bis zum Ende des Tages verwendet werden, der zuerst kommt.',
    through: (day) => `Letzter Tag: ${day}.`,
    daysLeft: (days) =>
      days === 0 ? 'Das ist heute.' : days === 1 ? 'Ein Tag bleibt.' : `${days} Tage bleiben.`,
    assumed:
      'Die Zeit nach dem Öffnen nimmt das Studio an, denn vom Etikett ist keine aufgezeichnet. Vergleichen Sie: Das Etikett geht vor.',
    sendingStudio:
      'Das Ende der Zeit nach dem Öffnen hat das Studio genannt, das sie angebrochen geschickt hat.',
    marks: {
      received: (day) => `angekommen ${day}`,
      opened: (day) => `geöffnet ${day}`,
      today: (day) => `heute, ${day}`,
      'opened life': (day) => `Zeit nach dem Öffnen endet ${day}`,
      'use-by': (day) => `Etikett: verwendbar bis ${day}`,
    },
    operations: 'Erfassen, was geschieht',
    operationsHint:
      'Was geschehen ist, wird aufgezeichnet, auch wenn es nicht hätte geschehen sollen. Nichts Aufgezeichnetes wird gelöscht.',
    facts: 'Angaben',
    state: 'Zustand',
    place: 'Platz',
    owner: 'Wem sie gehört',
    studio: 'dem Studio',
    inIt: 'Darin laut Buch',
    onTrays: 'Davon auf Tabletts',
    received: 'Angekommen',
    opened: 'Geöffnet',
    printLabel: 'Etiketten drucken',
    nowInIt: (amount) => `Jetzt darin laut Buch: ${amount}.`,
    toHistory: 'Zum Verlauf der Charge',
    nowOfLot: (amount) => `Von der Charge vorhanden: ${amount}.`,
  },

  operations: {
    open: 'Jetzt öffnen',
    count: 'Zählen',
    move: 'Umstellen',
    finish: 'Sie ist leer',
    'waste pieces': 'Stücke wegwerfen',
    discard: 'Wegwerfen',
    return: 'Zurückschicken',
    'keep for practice': 'Zum Üben behalten',
    'correct opened date': 'Tag des Öffnens berichtigen',
    'undo opening': 'Sie wurde nicht geöffnet',
  },
  operationHints: {
    move: 'An einen anderen Platz. Ihre Daten bleiben, wie sie sind.',
    finish:
      'Die Flasche wird als aufgebraucht aufgezeichnet, und was das Buch noch zeigt, wird abgeschrieben. Nur eine Berichtigung durch Inhaber oder Leitung holt sie zurück.',
    'waste pieces': 'Sie gehen als weggeworfen aus dem Buch.',
    discard: 'Sie geht ganz aus dem Buch, als weggeworfen.',
    return: 'Sie geht als an den Lieferanten zurückgeschickt aus dem Buch.',
    'keep for practice':
      'Von da an ist sie nur für Übungshaut und wird nie auf ein Tablett zugelassen. Das wird nicht zurückgenommen.',
    'correct opened date': 'Die Zeit, die sie hat, wird neu gerechnet. Beide Tage bleiben aufgezeichnet.',
    'undo opening':
      'Für ein irrtümlich aufgezeichnetes Öffnen: Sie gilt wieder als ungeöffnet, solange nichts entnommen wurde.',
  },
  operationFields: {
    place: 'Neuer Platz',
    noOtherPlace: 'Es gibt keinen anderen Platz',
    pieces: 'Stück',
    piecesHint: (most) => `Leer gelassen: die ganze Schachtel. Bis zu ${most} liegen auf keinem Tablett.`,
    openedOn: 'Geöffnet am',
    reason: 'Grund',
    reasonHint: 'Über die Sache und nie über Kunden: Es wird unverschlüsselt aufbewahrt.',
  },
  recorded: {
    open: 'Als geöffnet aufgezeichnet. Die Zeit nach dem Öffnen läuft ab jetzt.',
    count: 'Die Zählung ist gebucht.',
    move: 'Umgestellt.',
    finish: 'Als aufgebraucht aufgezeichnet.',
    'waste pieces': 'Die Stücke sind als weggeworfen aufgezeichnet.',
    discard: 'Als weggeworfen aufgezeichnet.',
    return: 'Als zurückgeschickt aufgezeichnet.',
    'keep for practice': 'Ab jetzt nur zum Üben.',
    'correct opened date': 'Der Tag des Öffnens ist berichtigt.',
    'undo opening': 'Wieder als ungeöffnet aufgezeichnet.',
  },

  count: {
    pieces: 'Stücke in der Schachtel',
    piecesHint: (onTrays) =>
      onTrays === 0
        ? 'So viele, wie darin liegen.'
        : `So viele, wie darin liegen, ohne die ${onTrays} auf Tabletts: Diese zählen als vorhanden.`,
    difference: (booked, present, onTrays) => {
      const trays = onTrays === 0 ? '' : `, ${onTrays} auf Tabletts eingerechnet`;
      const difference = present - booked;
      if (difference === 0) return `Das zeigt auch das Buch: ${booked}${trays}. Nichts wird sich ändern.`;
      const change = difference > 0 ? `${difference} mehr` : `${-difference} weniger`;
      return `Das Buch zeigt ${booked}${trays}. Das sind ${change}: Es wird ${present} zeigen.`;
    },
    book: 'Zählung buchen',
    lookForBottle: (amount) =>
      `Laut Buch ist sie hier: ${amount}. Fehlt sie, geht all das aus dem Buch; taucht sie auf, wird die Bewegung zurückgenommen.`,
    stillThere: 'Sie ist noch da',
    missing: 'Sie fehlt',
  },

  lots: {
    title: 'Chargen',
    lead: 'Die neuesten zuerst. Eine Charge ist eine Herstellung eines Produkts; ihr Code findet sie, auch ein berichtigter.',
    state: 'Zeigen',
    states: {
      usable: 'was verwendet werden darf',
      'ending soon': 'was bald verwendet werden muss',
      held: 'was gesperrt ist',
      expired: 'was abgelaufen ist',
      empty: 'was aufgebraucht ist',
    },
    ofCode: (code) => `Mit dem Code ${code}.`,
    ofProduct: (name) => `Von ${name}.`,
    all: 'Alle Chargen zeigen',
    none: 'Eine solche Charge gibt es nicht. Zeigen Sie alles, oder suchen Sie einen anderen Code.',
  },

  lot: {
    title: 'Charge',
    lot: 'Charge',
    of: (code) => `Charge ${code}`,
    withoutCode: 'Charge ohne Code',
    maker: 'Hersteller',
    facts: 'Die Charge',
    codes: 'Aufgedruckte Codes',
    earlierCodes: 'Berichtigte Codes, die sie noch finden',
    useByFact: 'Etikett',
    lastDay: (day) => `verwendbar bis ${day}`,
    endOf: {
      month: (day) => `verwendbar bis zum Ende des Monats: ${day}`,
      year: (day) => `verwendbar bis zum Ende des Jahres: ${day}`,
    },
    noUseBy: 'kein Datum aufgedruckt',
    manufacturedOn: 'Hergestellt am',
    origin: 'Wie sie kam',
    byTheBook: 'laut Buch',
    empty: 'aufgebraucht',
    toTrace: 'Wer diese Charge bekam',
    correct: 'Angaben berichtigen',
    containersHint: 'Was noch da ist, steht zuerst.',
  },

  codeStates: {
    printed: 'aufgedruckt',
    'none printed': 'kein Code aufgedruckt',
    unreadable: 'Code unlesbar',
  },
  lotCodeKinds: { lot: 'Charge', batch: 'Batch', other: 'anderer Code' },
  lotOrigins: {
    delivery: 'mit einer Lieferung',
    blend: 'als Hausmischung',
    'opening stock': 'als Anfangsbestand',
    'late record': 'durch einen Nachtrag',
    transfer: 'aus einem anderen Studio',
  },

  correct: {
    codeState: 'Code',
    codeHint: 'Wie aufgedruckt, mit Leerzeichen und Bindestrichen.',
    addCode: 'Ein weiterer Code ist aufgedruckt',
    useBy: 'Verwendbar bis, wie aufgedruckt',
    useByHint:
      'Das Jahr zuerst: 2027-03-31, oder 2027-03, wenn nur der Monat dasteht. Leer: keines aufgedruckt.',
    manufacturedOn: 'Hergestellt am, falls aufgedruckt',
    manufacturedOnHint: 'Das Jahr zuerst: 2026-01-05.',
    reason: 'Was falsch war',
    separateLot: 'Es sind trotzdem zwei Chargen',
  },

  history: {
    title: 'Verlauf',
    hint: 'Jede Bewegung, die neueste zuerst, mit dem Bestand danach. Ein Irrtum wird durch eine weitere Bewegung zurückgenommen; beide bleiben.',
    after: (amount) => `Danach vorhanden: ${amount}`,
    reversal: (name) => `Zurückgenommen: ${name}`,
    reverses: (movement) => `Nimmt zurück: ${movement}.`,
    reversesEarlier: 'Nimmt eine frühere Bewegung zurück.',
    wasReversed: 'Das wurde zurückgenommen.',
    toSession: 'Zur Sitzung',
    takeBack: 'Zurücknehmen',
    takeBackOf: (movement) => `Zurücknehmen: ${movement}`,
    takeBackReason: 'Warum es ein Irrtum war',
  },
  movementKinds: {
    received: 'angekommen',
    produced: 'gemischt',
    'transferred in': 'hereingestellt',
    adjusted: 'angeglichen',
    used: 'verwendet',
    blended: 'in eine Hausmischung gegeben',
    wasted: 'weggeworfen',
    returned: 'zurückgeschickt',
    'transferred out': 'herausgestellt',
  },

  origin: {
    title: 'Woher sie kam',
    hint: 'Und wohin sie außer in Sitzungen ging.',
    none: 'Davon ist nichts aufgezeichnet.',
    delivery: (origin, when) => `${origin}, ${when}`,
    blendedFrom: 'Aus dieser Charge gemischt',
    blendedInto: 'In diese Hausmischung gegeben',
    cameFrom: 'Aus einem anderen Studio der Kette',
    wentTo: (state) => `An ein anderes Studio der Kette geschickt, ${state}`,
  },
  deliveryOrigins: {
    purchase: 'Kauf',
    'gift or sample': 'Geschenk oder Muster',
    'opening stock': 'Anfangsbestand',
  },
  transferStates: {
    'in transit': 'unterwegs',
    arrived: 'angekommen',
    'turned up': 'später aufgetaucht',
    withdrawn: 'zurückgerufen',
  },

  holds: {
    title: 'Sperren',
    lead: 'Was gesperrt ist, wird auf kein Tablett zugelassen, auch keine Hausmischung daraus.',
    hint: 'Gesperrt wird sie auf kein Tablett zugelassen, auch keine Hausmischung daraus.',
    none: 'Nichts ist gesperrt.',
    noneHere: 'Sie ist nicht gesperrt und war es nie.',
    inherited: (count) =>
      count === 1
        ? 'Etwas, woraus sie gemischt ist, ist gesperrt; auch sie darf nicht verwendet werden.'
        : `${count} Sperren stehen auf dem, woraus sie gemischt ist; auch sie darf nicht verwendet werden.`,
    placeOnLot: 'Die ganze Charge sperren',
    placeOnContainer: 'Diese sperren',
    ofWholeLot: 'die ganze Charge',
    ofContainer: 'eine Flasche oder Schachtel',
    kind: 'Art der Sperre',
    kindHints: {
      quarantine: 'Bis sie angesehen wurde.',
      recall: 'Der Hersteller oder eine Behörde hat sie zurückgerufen.',
      compliance: 'Sie sagt oder enthält nicht, was das Gesetz verlangt.',
    },
    reason: 'Grund',
    note: 'Was gesehen wurde',
    noteHint:
      'Falls mehr zu sagen ist. Über die Sache und nie über Kunden: Es wird unverschlüsselt aufbewahrt.',
    since: (when) => `Seit ${when}`,
    release: 'Aufheben',
    releaseOf: (about) => `Sperre aufheben: ${about}`,
    releaseReason: 'Warum sie wieder verwendet werden darf',
    releaseHint:
      'Über die Sache und nie über Kunden: Es wird unverschlüsselt aufbewahrt. Die Sperre bleibt im Verlauf.',
    released: (when, reason) => `Aufgehoben ${when}: ${reason}`,
    askRelease: 'Aufhebung beantragen',
    askAgain: 'Noch einmal beantragen',
    askReleaseOf: (about) => `Aufhebung der Sperre beantragen: ${about}`,
    releaseAsked: (who, when, reason) => `${who} hat die Aufhebung ${when} beantragt: ${reason}`,
    anotherReleases:
      'Was zurückgerufen ist, heben zwei auf: Nun tut es eine andere Person, die Sperren aufheben darf. Wo es keine gibt, steht ein Foto am Antrag für sie.',
    releasePhoto: 'Foto der Sache',
    releasePhotoHint: 'Falls ein Bild mehr sagt. Danach hebt eine andere Person die Sperre auf.',
    releasePhotoAlone:
      'Hier nötig: Niemand sonst darf in diesem Studio Sperren aufheben, darum steht ein Foto für die zweite Person. Kein Kunde darf darauf sein.',
  },
  holdKinds: { quarantine: 'Quarantäne', recall: 'Rückruf', compliance: 'Vorschrift' },
  holdReasons: {
    'no lot printed': 'keine Charge aufgedruckt',
    'lot unreadable': 'Charge unlesbar',
    'no use-by printed': 'kein Datum aufgedruckt',
    'already past': 'schon abgelaufen',
    'broken seal': 'Siegel gebrochen',
    'damaged package': 'Packung beschädigt',
    doubt: 'Zweifel',
    'recall notice': 'Rückruf',
    'label statement missing': 'Angabe auf dem Etikett fehlt',
    other: 'anderer',
  },

  trace: {
    titleOfLot: 'Wer diese Charge bekam',
    titleOfSession: 'Womit jemand in Berührung kam',
    lead: 'Kunden stehen hier nur mit ihrem Kennzeichen.',
    totals: (uses, sessions, clients) =>
      `${uses} ${uses === 1 ? 'Verwendung' : 'Verwendungen'} in ${sessions} ${
        sessions === 1 ? 'Sitzung' : 'Sitzungen'
      }, bei ${clients} ${clients === 1 ? 'Person' : 'Personen'}.`,
    reversedUses: (count) =>
      count === 1
        ? 'Eine Verwendung war ein Irrtum und ist zurückgenommen; sie bleibt sichtbar.'
        : `${count} Verwendungen waren Irrtümer und sind zurückgenommen; sie bleiben sichtbar.`,
    none: 'Nach den Aufzeichnungen kam niemand damit in Berührung.',
    uses: 'Jede Verwendung',
    usesHint: 'In der Reihenfolge, in der sie geschahen.',
    columns: {
      client: 'Kunde',
      session: 'Sitzung',
      lot: 'Charge in der Hand',
      through: 'Durch',
      amount: 'Menge',
    },
    directly: 'unmittelbar',
    throughs: { mix: 'eine Mischung', 'house blend': 'eine Hausmischung' },
    reversed: 'zurückgenommen',
    againstRefusal: 'trotz Ablehnung verwendet',
    pieces: (count) => `${count} Stück`,
    noAmount: 'nicht bekannt',
    csv: 'Alles als CSV',
    graph: 'Als Bild',
    graphHint: 'Von der Charge links zu den Sitzungen rechts. Jedes Feld führt zu seiner Seite.',
    graphLabel:
      'Der Weg von Chargen zu Sitzungen, wie ihn die Tabelle sagt. Es lässt sich seitlich verschieben.',
    drawn: (sessions) =>
      sessions === 1
        ? 'Gezeichnet ist die erste Sitzung.'
        : `Gezeichnet sind die ersten ${sessions} Sitzungen.`,
    more: (sessions) =>
      sessions === 1
        ? 'Eine weitere ist nicht gezeichnet; Tabelle und CSV haben alle.'
        : `${sessions} weitere sind nicht gezeichnet; Tabelle und CSV haben alle.`,
    kinds: {
      lot: 'Charge',
      blend: 'Hausmischung',
      container: 'Flasche oder Schachtel',
      mix: 'Mischung',
      session: 'Sitzung',
    },
    sisterLots: 'Andere Chargen mit demselben Code',
    sisterLotsHint: 'Wer nach dem Code fragt, meint auch diese.',
    toLot: 'Zur Charge',
    toSession: 'Zur Sitzung',
  },
};
