import type { recallsTexts as english } from '../en/recalls.js';

const count = (number: number, one: string, many: string) => `${number} ${number === 1 ? one : many}`;

export const recallsTexts: typeof english = {
  recalls: {
    title: 'Rückrufe',
    lead: 'Was Hersteller und Behörden zurückrufen, und wie hier darauf geantwortet wurde.',
    pages: {
      recalls: 'Rückrufe',
      notices: 'Veröffentlichte Meldungen',
      drills: 'Übungen',
      quality: 'Güte der Aufzeichnung',
    },
    answer: 'Einen Rückruf beantworten',
    open: 'Offen',
    openHint: 'Bis jede Charge entschieden, jeder Behälter gefunden und jede Kundin benachrichtigt ist.',
    noneOpen: 'Kein Rückruf ist offen.',
    over: 'Abgeschlossen und zurückgezogen',
    overHint: 'Ihre Aufzeichnung bleibt.',
    noneOver: 'Noch keine.',
    states: { open: 'offen', closed: 'abgeschlossen', withdrawn: 'zurückgezogen' },
    drill: 'Übung',
    since: (when) => `Seit ${when}`,
    from: (start, end) => `${start} bis ${end}`,
    ofChain: 'für alle Studios der Kette',
    affected: (number) => `${count(number, 'Charge', 'Chargen')} betroffen`,
    openSince: (when) => `Offen seit ${when}`,
    overSince: (state, when) => `Jetzt ${state}, seit ${when}`,
    withdrawn: (reason) => `Zurückgezogen: ${reason}`,
    openDrills: 'Laufende Übungen',
    openDrillsHint: 'Proben, keine Rückrufe.',
    outstanding: {
      undecided: (number) => `${count(number, 'Charge', 'Chargen')} zu entscheiden`,
      notFound: (number) => `${count(number, 'Behälter', 'Behälter')} nicht gefunden`,
      notTold: (number) => `${count(number, 'Person', 'Personen')} nicht benachrichtigt`,
      nothing: 'nichts steht aus',
    },
  },

  recallParts: {
    label: 'Teile der Antwort',
    outstanding: (number) => `${number} offen`,
    names: {
      overview: 'Überblick',
      containers: 'Bestand finden',
      exposures: 'Wer in Berührung kam',
      telling: 'Benachrichtigen',
      balance: 'Bilanz',
      closing: 'Abschließen',
      studios: 'Alle Studios',
    },
  },

  drillBanner:
    'Übung: Nichts wird gesperrt und niemand benachrichtigt. Alles andere geschieht, als wäre es ernst.',

  notice: {
    title: 'Einen Rückruf beantworten',
    lead: 'Vom Text der Meldung zu dem, was gesperrt wird. Nichts gilt, bevor Sie den Rückruf eröffnen.',
    take: 'Die Meldung',
    takeHint: 'Fügen Sie sie ganz ein, so wie sie kam. Der Text bleibt unverändert aufbewahrt.',
    paste: 'Text der Meldung',
    pasteHint: 'Ein Brief, eine Mail, eine Seite einer Behörde: bis 1 MB.',
    read: 'Meldung lesen',
    byHandTitle: 'Ohne Text',
    byHand: 'Von Hand eingeben',
    byHandHint: 'Nach einem Anruf, oder von einem Brief auf Papier.',
    fileTitle: 'Aus einer Datei',
    file: 'Datei wählen',
    fileHint:
      'CSV, Meldungen einer Behörde als JSON oder Safety-Gate-Berichte als XML. Meldungen, die hier etwas treffen, stehen zuerst.',
    fileTooLong:
      'Diese Datei ist länger als 3,9 MB. Teilen Sie sie, oder fügen Sie den Text der Meldung ein, die Sie betrifft.',
    ofFile: (name, number) => `${name}: ${count(number, 'Meldung', 'Meldungen')}`,
    number: (number) => `Meldung ${number}`,
    choose: 'Beantworten',
    chooseOf: (name) => `${name} beantworten`,
    meets: (certain, possible) =>
      `trifft hier ${count(certain, 'Charge', 'Chargen')} sicher, ${possible} möglicherweise`,
    meetsNothing: 'trifft hier nichts',
    again: 'Eine andere Meldung',
    sources: {
      pasted: 'eingefügter Text',
      entered: 'von Hand eingegeben',
      csv: 'eine CSV-Datei',
      'enforcement json': 'eine Meldung einer Behörde',
      'safety gate xml': 'ein Safety-Gate-Bericht',
      fetched: 'abgeholt',
    },
  },

  reading: {
    text: 'Was die Meldung sagt',
    textHint: 'Was gelesen wurde, ist markiert, jeweils mit dem, als was es gelesen wurde.',
    region: 'Text der Meldung mit ihren Markierungen',
    previous: 'Markierung davor',
    next: 'Nächste Markierung',
    place: (place, all) => `${place} von ${all}`,
    marks: (all) => count(all, 'Markierung', 'Markierungen'),
    readAs: (kind, value) => `${kind}, gelesen als ${value}`,
    leftOut: (characters) => `… ${characters} Zeichen ohne Markierung …`,
    showMore: 'Den Rest des Textes zeigen',
    partKinds: {
      maker: 'Hersteller',
      product: 'Produkt',
      shade: 'Farbton',
      gtin: 'GTIN',
      code: 'Charge',
      'code range': 'Chargen',
      'use-by': 'haltbar',
      manufactured: 'hergestellt',
      'all lots': 'alle Chargen',
      'open-ended': 'offen',
      reference: 'Nummer',
      'issued on': 'Datum',
      classification: 'Klasse',
      risk: 'Gefahr',
      remedy: 'was zu tun ist',
    },
    toLookAt: 'ansehen',
    remarks: 'Das ist anzusehen',
    showInText: 'Im Text zeigen',
    inText: 'Im Text',
    showInTextOf: (what) => `${what} im Text zeigen`,
  },

  scope: {
    title: 'Was zurückgerufen wird',
    titleHint:
      'So wurde es gelesen: Berichtigen Sie, was falsch gelesen wurde. Enger wird es nur durch Sie selbst.',
    titleHintByHand:
      'So, wie es Ihnen gesagt wurde. Was Sie weglassen, engt nicht ein: Keine Chargen heißt jede Charge.',
    product: (number) => `Produkt ${number}`,
    addProduct: 'Noch ein Produkt wird zurückgerufen',
    removeProduct: 'Dieses Produkt wegnehmen',
    maker: 'Hersteller',
    name: 'Produkt',
    shade: 'Farbton',
    shadeHint: 'Leer: jeder Farbton.',
    gtins: 'GTINs',
    gtinsHint: 'Mehrere durch Komma getrennt.',
    register: 'Gemeint im Verzeichnis',
    registerHint:
      'Ist hier etwas gewählt, so entscheiden Namen und Nummern nichts mehr: Nur diese Produkte sind gemeint.',
    choose: 'Im Verzeichnis wählen',
    chooseDone: 'Verzeichnis schließen',
    find: 'Produkt des Verzeichnisses',
    takeAway: 'Wegnehmen',
    takeAwayOf: (name) => `${name} wegnehmen`,
    lots: 'Chargen',
    noLots: 'Es sind keine Chargen genannt: Jede Charge des Produkts kann gemeint sein.',
    addLots: 'Chargen hinzufügen',
    change: 'Ändern',
    changeOf: (what) => `${what} ändern`,
    openEnded: 'Auch andere Chargen können gemeint sein',
    openEndedHint:
      'Etwa wenn eine Meldung „unter anderem“ sagt. Jede andere Charge ist dann möglicherweise gemeint.',
    narrowed: 'Die Meldung wurde als offen gelesen. Ohne das werden nur die hier genannten Chargen gesperrt.',
    termKind: 'Was genannt ist',
    termKinds: {
      code: 'Chargennummern',
      'code range': 'ein Bereich von Nummern',
      'use-by': 'Haltbarkeitsdaten',
      manufactured: 'Herstellungsdaten',
      'all lots': 'alle Chargen',
    },
    codes: 'Nummern',
    codesHint: 'Wie aufgedruckt, eine je Zeile oder durch Komma getrennt.',
    code: 'Nummer',
    codeHint: 'Wie aufgedruckt, mit Leerzeichen und Bindestrichen.',
    firstCode: 'Erste Nummer',
    lastCode: 'Letzte Nummer',
    firstDay: 'Von',
    lastDay: 'Bis',
    spanHint: 'Eines davon darf leer bleiben.',
    useByBeside: 'Haltbarkeit, die dabeisteht',
    useByBesideHint: 'Nur wenn die Meldung sie von genau diesen Chargen sagt.',
    add: 'Hinzufügen',
    nothingYet: 'Nennen Sie ein Produkt oder eine Charge: Dann steht hier, was davon da ist.',
    words: {
      codeRange: (from, through) => `${from} bis ${through}`,
      usable: (span) => `haltbar ${span}`,
      made: (span) => `hergestellt ${span}`,
      allLots: 'alle Chargen',
      fromThrough: (from, through) => `${from} bis ${through}`,
      from: (day) => `ab ${day}`,
      through: (day) => `bis ${day}`,
      anyShade: 'jeder Farbton',
      shade: (shade) => `Farbton ${shade}`,
      gtin: (gtin) => `GTIN ${gtin}`,
      anyLots: 'keine Chargen genannt: jede kann gemeint sein',
      openEnded: 'und möglicherweise weitere: Die Meldung ist offen',
      anyProduct: 'Irgendein Produkt',
      lots: (lots) => `Chargen ${lots}`,
      more: (number) => `und ${number} weitere`,
    },
  },

  grades: { certain: 'sicher', possible: 'möglich' },
  lotDecisions: { affected: 'betroffen', 'not affected': 'nicht betroffen' },

  matches: {
    title: 'Was davon hier ist',
    hint: 'Jede Charge, die je hier war, auch was verbraucht ist. Noch ist nichts gesperrt.',
    looking: 'Die Chargen werden durchgesehen …',
    none: 'Keine Charge hier ist gemeint.',
    noneHint:
      'Sehen Sie noch einmal nach, ob Produkt und Chargen so dastehen, wie sie aufgedruckt sind. Trotzdem eröffnet, sperrt der Rückruf, was später ankommt.',
    found: (certain, possible) =>
      `${count(certain, 'Charge ist', 'Chargen sind')} sicher gemeint, ${possible} möglicherweise.`,
    figures: {
      certain: 'Chargen sicher',
      possible: 'Chargen möglich',
      containers: 'Flaschen und Packungen hier',
      pieces: 'Stück vorhanden',
    },
    gradeTitles: {
      certain: (number) => `Sicher: ${count(number, 'Charge', 'Chargen')}`,
      possible: (number) => `Möglich: ${count(number, 'Charge', 'Chargen')}`,
    },
    gradeHints: {
      certain: 'Sie werden gesperrt, wenn Sie den Rückruf eröffnen.',
      possible: 'Nach dem Eröffnen sieht jemand jede an und entscheidet.',
    },
    holdIt: 'Auch sperren',
    holdItOf: (name) => `${name} auch sperren`,
    noCode: 'keine Nummer aufgezeichnet',
    here: (containers, amount) =>
      containers === 0
        ? 'nichts mehr davon hier'
        : `${count(containers, 'Flasche oder Packung', 'Flaschen und Packungen')} hier, ${amount}`,
    touched: (clients) =>
      clients === 0
        ? 'Direkt kam niemand damit in Berührung.'
        : `${count(clients, 'Person kam', 'Personen kamen')} damit in Berührung.`,
    notAll: (shown, all) =>
      `Die ersten ${shown} beider Arten stehen hier; gezählt und gleich behandelt werden alle ${all}.`,
  },

  opening: {
    title: 'Rückruf eröffnen',
    hint: 'Jede sichere Charge wird sofort gesperrt, auch auf Tabletts und in Mischungen, und ebenso, was später ankommt.',
    name: 'Wie er hier heißt',
    nameHint: 'Wie man ihn wiederfindet: das Produkt, und wessen Meldung es ist.',
    holdPossible: (number) =>
      number === 1
        ? 'Die Charge, die möglicherweise gemeint ist'
        : `Die ${number} Chargen, die möglicherweise gemeint sind`,
    holdPossibleHint:
      'Gesperrt liegen sie beiseite, bis jemand nachgesehen hat. Verloren ist dadurch nichts.',
    holdPossibleChoices: {
      all: 'Sperren, bis entschieden ist',
      chosen: 'Nur sperren, was oben angehakt bleibt',
      none: 'Verwendbar lassen, bis entschieden ist',
    },
    chainWide: 'Für alle Studios der Kette',
    chainWideHint:
      'Jedes Studio bekommt seinen Teil desselben Rückrufs. Für alle, die jedes der Studios leiten.',
    nothingHere: 'Hier ist nichts gemeint. Eröffnet, sperrt der Rückruf, was später ankommt.',
    open: 'Jetzt sperren und Rückruf eröffnen',
  },

  saidOfRecall: {
    title: 'Was die Meldung sonst sagt',
    issuer: 'Wer zurückruft',
    reference: 'Deren Nummer',
    issuedOn: 'Datum der Meldung',
    classification: 'Klasse oder Stufe',
    risk: 'Die Gefahr',
    riskHint: 'In den Worten der Meldung, nicht abgeschwächt: Das wird der Kundschaft gesagt.',
    remedy: 'Was zu tun ist',
    remedyHint: 'Was die Meldung anbietet oder verlangt.',
  },

  amending: {
    title: 'Erweitern oder berichtigen',
    hint: 'Was vorher galt, bleibt aufgezeichnet, mit dem Grund der Änderung.',
    notice: 'Eine weitere Meldung',
    noticeHint: 'Falls eine kam: Was sie nennt, kommt zu dem hinzu, was schon zurückgerufen ist.',
    byHand: 'Ohne Meldung ändern',
    amend: 'Rückruf ändern',
    amendHint: 'Chargen, die jetzt gemeint sind, werden sofort gesperrt.',
    reopenHint:
      'Dieser Rückruf war beendet. Geändert ist er wieder offen, und Chargen, die jetzt gemeint sind, werden sofort gesperrt.',
    reason: 'Warum er geändert wird',
    reasonHint: 'Etwa: Der Hersteller hat Chargen nachgemeldet.',
    releaseUnmet: 'Freigeben, was nicht mehr gemeint ist',
    releaseUnmetHint: 'Sonst bleiben Chargen gesperrt, die nicht mehr gemeint sind.',
    stale:
      'Inzwischen hat jemand anderes diesen Rückruf geändert. Verlassen Sie die Seite und beginnen Sie neu, damit davon nichts verloren geht.',
  },

  inbox: {
    title: 'Veröffentlichte Meldungen',
    lead: 'Abgeholt, wo Behörden sie veröffentlichen, und nur gezeigt, wenn sie hier etwas treffen.',
    none: 'Keine veröffentlichte Meldung wartet auf eine Antwort.',
    withoutReference: 'Meldung ohne Nummer',
    answer: 'Beantworten',
    answerOf: (name) => `${name} beantworten`,
    dismiss: 'Hier ist nichts zu tun',
    dismissOf: (name) => `${name}: hier ist nichts zu tun`,
    dismissReason: 'Warum nichts zu tun ist',
    dismissHint: 'Was nachgesehen wurde. Es bleibt aufgezeichnet.',
    came: (when) => `Kam ${when}`,
  },

  recallOverview: {
    numbers: 'Wie weit es ist',
    numbersHint: 'Von dem, was hier war und mit wem es in Berührung kam.',
    figures: {
      affected: 'Chargen betroffen',
      undecided: 'Chargen zu entscheiden',
      found: 'Behälter gefunden',
      told: 'Personen benachrichtigt',
      unexplained: 'Stück ungeklärt',
    },
    of: (part, whole) => `${part} von ${whole}`,
    lots: 'Chargen',
    lotsHint:
      'Zuerst die, über die zu entscheiden ist. Vergleichen Sie das Etikett in der Hand mit der Meldung.',
    noLots: 'Keine Charge hier ist gemeint. Was später ankommt, wird bei der Ankunft verglichen.',
    decide: { affected: 'Betroffen', 'not affected': 'Nicht betroffen' },
    decideOf: (decision, name) => `${name} ist ${decision}`,
    decisionReason: {
      affected: 'Woran man sieht, dass sie betroffen ist',
      'not affected': 'Woran man sieht, dass sie nicht betroffen ist',
    },
    decisionHint: {
      affected: 'Etwa: Auf dem Etikett steht die Nummer der Meldung. Von da an ist sie gesperrt.',
      'not affected':
        'Etwa: Auf dem Etikett in der Hand steht eine andere Nummer. Die Sperre wird aufgehoben.',
    },
    certainlyAffected: 'sicher betroffen',
    standings: {
      affected: 'betroffen',
      'not affected': 'nicht betroffen',
      undecided: 'möglich, zu entscheiden',
    },
    held: 'durch diesen Rückruf gesperrt',
    notHeld: 'durch diesen Rückruf nicht gesperrt',
    decided: (decision, who, when, reason) => `Entschieden: ${decision}, von ${who}, ${when}: ${reason}`,
    holds: 'Was gesperrt ist',
    holdsHint: 'Kein Tablett lässt es zu, und keine Hausmischung daraus.',
    heldLots: 'Chargen gesperrt',
    standingHold: 'Was später ankommt',
    standsGuard: 'wird verglichen und sofort gesperrt',
    noGuard: 'wird nicht mehr verglichen',
    caught: 'Bei der Ankunft gesperrt',
    caughtLots: (number) => count(number, 'Charge', 'Chargen'),
    trays: 'Tabletts in Vorbereitung',
    noTrays: 'auf keinem liegt es jetzt',
    traysReached: (number) =>
      `auf ${count(number, 'Tablett', 'Tabletts')} liegt es jetzt; der nächste Schritt dort sagt es`,
    toHolds: 'Zu allen Sperren',
    scopeHint: 'In Worten, wie es festgelegt wurde.',
    amend: 'Erweitern oder berichtigen',
    history: (number) => `Wie er geändert wurde: ${number} Fassungen`,
    firstScope: 'Wie er eröffnet wurde',
    amended: (number) => `Änderung ${number}`,
    counts: 'gilt jetzt',
    saidBy: (who, when) => `Von ${who}, ${when}`,
    because: (reason) => `Grund: ${reason}`,
    notice: 'Die Meldung',
    noticeHint: 'Wie sie kam, unverändert.',
    noNotice: 'Keine Meldung wurde aufbewahrt.',
    showNotice: 'Den Text zeigen',
    noticeFrom: (source, when) => `Herkunft: ${source}, ${when}.`,
    withdraw: 'Rückruf zurückziehen',
    withdrawHint:
      'Für einen Rückruf, der keiner war. Seine Sperren werden aufgehoben; seine Aufzeichnung bleibt.',
    withdrawReason: 'Warum es keiner war',
    withdrawReasonHint:
      'Etwa: Der Hersteller hat die Meldung zurückgenommen. Alles, was er sperrte, darf wieder verwendet werden.',
  },

  closingObstacles: {
    'undecided lots': (number) => `${count(number, 'Charge', 'Chargen')} zu entscheiden`,
    'clients not told': (number) => `${count(number, 'Person', 'Personen')} nicht benachrichtigt`,
    'containers not found': (number) => `${count(number, 'Behälter', 'Behälter')} nicht gefunden`,
    'stock without disposition': (number) =>
      `${count(number, 'Behälter', 'Behälter')} weder zurückgeschickt noch vernichtet`,
    'pieces unexplained': (number) => `${number} Stück ungeklärt`,
  },

  drills: {
    title: 'Übungen',
    lead: 'Ein Rückruf, geprobt an einer wirklichen Charge, gegen die Uhr. Nichts wird gesperrt, niemand benachrichtigt.',
    start: 'Eine Übung beginnen',
    startHint: 'Ab jetzt läuft die Uhr. Gehen Sie den ganzen Weg, als wäre es ernst.',
    on: 'An welcher Charge',
    random: 'An einer Charge, die gelost wird',
    randomHint: 'Aus denen, die in den letzten drei Jahren verwendet wurden: Niemand kann sich vorbereiten.',
    chosenLot: 'An einer Charge, die ich wähle',
    wholeChain: 'In allen Studios der Kette',
    begin: 'Die Uhr starten',
    findLot: 'Die Charge finden',
    lotCode: 'Chargennummer',
    find: 'Finden',
    noSuchLot: 'Keine Charge hier hat diese Nummer.',
    foundLots: 'Chargen mit dieser Nummer',
    history: 'Gehaltene Übungen',
    historyHint: 'Jede mit ihrem Ergebnis. 100 % steht nur da, wo nichts fehlt.',
    none: 'Noch keine.',
    drawn: 'die Charge wurde gelost',
    chosen: 'die Charge wurde gewählt',
    traced: 'Verwendungen verfolgt',
    balanced: 'Stück in der Bilanz',
    found: 'Behälter gefunden',
    minutes: 'Minuten',
    nothingToCount: 'nichts zu zählen',
    schedule: 'Wie oft',
    scheduleHint: 'Ist eine Übung fällig, so steht es unter Heute.',
    due: 'eine Übung ist fällig',
    noRhythm: 'Es ist kein Abstand festgelegt.',
    everyMonths: (months) => (months === 1 ? 'Jeden Monat.' : `Alle ${months} Monate.`),
    nextBy: (day) => `Die nächste bis ${day}.`,
    months: 'Alle so viele Monate',
    monthsHint: 'Leer: nach Belieben.',
    nextOn: 'Die nächste bis',
    nextOnHint: 'Leer: keine ist verlangt.',
    scheduleOfChain: 'Für alle Studios der Kette',
    scheduleSaved: 'So gilt es von jetzt an.',
    steps: 'Die Übung',
    stepsHint: 'Sagen Sie, wenn ein Schritt getan ist; es zählt die Uhr des Dienstes.',
    stepNames: {
      'notice read': 'Meldung gelesen',
      'scope settled': 'Was zurückgerufen ist, steht fest',
      'stock listed': 'Bestand aufgelistet',
      'stock found': 'Bestand gefunden',
      'exposures listed': 'Betroffene Personen aufgelistet',
      'messages prepared': 'Nachrichten vorbereitet',
      'balance drawn': 'Bilanz gezogen',
      closed: 'Abgeschlossen',
    },
    took: (minutes) => `getan, ${minutes} min`,
    goTo: 'Dorthin',
    goToOf: (step) => `Dorthin: ${step}`,
    done: 'Getan',
    doneOf: (step) => `Getan: ${step}`,
    clock: 'Zeit seit Beginn der Übung',
  },

  chainRecall: {
    title: 'Studios der Kette',
    hint: 'Nur Zahlen. Was in einem Studio zu tun ist, wird dort getan.',
    noPart: 'noch nicht erreicht',
    balanced: 'Stück in der Bilanz',
  },

  recordQuality: {
    title: 'Güte der Aufzeichnung',
    lead: 'Wie gut Verwendungen aufgezeichnet werden: je besser, desto sicherer findet ein Rückruf alle.',
    from: 'Von',
    through: 'Bis',
    here: 'Dieses Studio',
    hereHint: 'Leer gelassen zählt das letzte Jahr.',
    ofChain: 'Alle Studios der Kette',
    ofChainHint: 'Dasselbe von jedem.',
    uses: (number, from, through) =>
      `${count(number, 'Verwendung', 'Verwendungen')} vom ${from} bis ${through}.`,
    share: (percent, number) => `${percent} (${number})`,
    none: 'nichts zu zählen',
    picked: 'Charge aus einer Liste gewählt',
    late: 'nachgetragen',
    corrected: 'berichtigt',
    againstRefusal: 'trotz Ablehnung verwendet',
  },

  matchReasons: {
    'product chosen': () => 'Es ist ein Produkt, das im Verzeichnis gewählt wurde.',
    'gtin equal': ({ recorded }) => `Die Meldung nennt die GTIN ${recorded}.`,
    'names equal': ({ recorded }) => `Die Meldung nennt ${said(recorded)}.`,
    'gtin of another pack': ({ named, recorded }) =>
      `Die Meldung nennt die GTIN ${named}; die hier aufgezeichnete ${recorded} ist derselbe Artikel in anderer Packung.`,
    'gtin equal, named otherwise': ({ named, recorded }) =>
      `Die GTIN ist die der Meldung, aber dort heißt es ${said(named)} und hier ${said(recorded)}.`,
    'names equal, other gtin': ({ named, recorded }) =>
      `Die Namen sind die der Meldung, aber dort steht die GTIN ${named} und hier ${recorded}.`,
    'product name equal, other maker': ({ named, recorded }) =>
      `Der Produktname ist der der Meldung, aber dort steht der Hersteller ${said(named)} und hier ${said(recorded)}.`,
    'only product name': () => 'Die Meldung nennt das Produkt ohne seinen Hersteller.',
    'maker similar': ({ named, recorded }) =>
      `Die Meldung nennt den Hersteller ${said(named)}, hier steht ${said(recorded)}: fast dasselbe.`,
    'product name similar': ({ named, recorded }) =>
      `Die Meldung nennt das Produkt ${said(named)}, hier steht ${said(recorded)}: fast dasselbe, oder ein Teil davon.`,
    'shade similar': ({ named, recorded }) =>
      `Die Meldung nennt den Farbton ${said(named)}, hier steht ${said(recorded)}: fast dasselbe.`,
    'no shade on record': ({ named }) =>
      `Die Meldung nennt den Farbton ${said(named)}; hier ist keiner aufgezeichnet.`,
    'no gtin on record': ({ named }) =>
      `Die Meldung nennt das Produkt nur durch die GTIN ${named}; hier ist keine aufgezeichnet.`,
    'only maker': ({ recorded }) =>
      `Die Meldung nennt nur den Hersteller ${said(recorded)} und kein Produkt.`,
    'only shade': ({ recorded }) => `Vom Produkt nennt die Meldung nur den Farbton ${said(recorded)}.`,
    'no product named': () => 'Die Meldung nennt kein Produkt.',
    'slight likeness': ({ named, recorded }) =>
      `Die Meldung nennt ${said(named)}, was kaum zu ${said(recorded)} passt; aber die Chargennummer ist gleich.`,
    'all lots named': () => 'Die Meldung nennt alle Chargen.',
    'code equal': ({ named }) => `Die Meldung nennt die Nummer ${named}.`,
    'code in range': (facts) => `Die Nummer ${facts.recorded} liegt im Bereich ${ends(facts)}.`,
    'use-by in span': (facts) => `Die Haltbarkeit ${facts.recorded} liegt im Zeitraum ${ends(facts)}.`,
    'manufactured in span': (facts) =>
      `Der Herstellungstag ${facts.recorded} liegt im Zeitraum ${ends(facts)}.`,
    'code equal, other use-by': (facts) =>
      `Die Meldung nennt die Nummer ${facts.named} mit der Haltbarkeit ${ends(facts)}; hier steht ${facts.recorded}.`,
    'code in range, other use-by': (facts) =>
      `Die Nummer liegt im Bereich ${facts.named}, den die Meldung mit der Haltbarkeit ${ends(facts)} nennt; hier steht ${facts.recorded}.`,
    'other spacing': ({ named, recorded }) =>
      `Die Meldung nennt ${named}, hier steht ${recorded}: Nur Leerzeichen, Bindestriche oder ein Wort davor sind anders.`,
    'look-alikes': ({ named, recorded }) =>
      `Die Meldung nennt ${named}, hier steht ${recorded}: Anders sind nur Zeichen, die gleich aussehen.`,
    'leading zeros': ({ named, recorded }) =>
      `Die Meldung nennt ${named}, hier steht ${recorded}: Nur Nullen am Anfang sind anders.`,
    'range shows other length': (facts) =>
      `Die Zahl von ${facts.recorded} liegt im Bereich ${ends(facts)}, ist aber nicht mit so vielen Stellen geschrieben; Nullen am Anfang können fehlen.`,
    'range perhaps': (facts) =>
      `Die Nummer ${facts.recorded} kann im Bereich ${ends(facts)} liegen, je nachdem, wie er gemeint ist.`,
    slip: ({ named, recorded }) =>
      `Die Meldung nennt ${named}, hier steht ${recorded}: Ein Zeichen fehlt, ist zu viel, anders oder vertauscht.`,
    'slip from range': (facts) =>
      `Die Nummer ${facts.recorded} ist einen Schreibfehler vom Bereich ${ends(facts)} entfernt.`,
    'use-by overlaps span': (facts) =>
      `Das Etikett zeigt nur Monat oder Jahr, spätestens ${facts.recorded}; ein Teil davon liegt im Zeitraum ${ends(facts)}.`,
    'no use-by on record': (facts) =>
      `Die Meldung nennt die Haltbarkeit ${ends(facts)}; hier ist keine aufgezeichnet.`,
    'no manufacture date on record': (facts) =>
      `Die Meldung nennt, was ${ends(facts)} hergestellt wurde; hier ist kein Herstellungstag aufgezeichnet.`,
    'code unreadable': () => 'Die Nummer dieser Charge war nicht zu lesen.',
    'no code printed': () => 'Von dieser Charge ist keine Nummer aufgezeichnet.',
    'range not understood': (facts) =>
      `Welche Nummern zwischen ${facts.from} und ${facts.through} liegen, ist nicht klar; jede Charge des Produkts kann es.`,
    'open-ended': () => 'Die Meldung sagt, dass auch andere als die genannten Chargen gemeint sein können.',
    'no lots named': () => 'Die Meldung nennt keine Chargen dieses Produkts; jede kann gemeint sein.',
    'corrected code': ({ recorded }) =>
      `Die Nummer ${recorded} war von dieser Charge aufgezeichnet, bevor sie berichtigt wurde; auf dem Etikett kann sie stehen.`,
  },
  noticeRemarks: {},
};

const ends = ({ from, through }: { from?: string | null; through?: string | null }) =>
  through == null ? `ab ${from ?? 'Beginn'}` : from == null ? `bis ${through}` : `${from} bis ${through}`;
const said = (text: string | null | undefined) => (text == null || text === '' ? 'nichts' : `„${text}“`);
