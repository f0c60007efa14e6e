import type { receivingTexts as english } from '../en/receiving.js';

const plural = (count: number, one: string, many: string) => `${count} ${count === 1 ? one : many}`;

export const receivingTexts: typeof english = {
  receiving: {
    title: 'Wareneingang',
    lead: 'Scannen Sie, was kam, sehen Sie es durch, nehmen Sie alles auf einmal auf.',
    scanTitle: 'Scannen',
    scanTitleHint:
      'Scannen Sie jede Schachtel oder Flasche. Zwischen zwei Scans muss nichts gedrückt werden.',
    scan: 'Symbol oder Charge',
    scanHint: 'Ein Handscanner tippt hierher. Ohne Scanner tippen Sie die Charge vom Etikett ab.',
    read: 'Lesen',
    byHand: 'Ohne Symbol: Produkt wählen',
    waiting: (count) =>
      `${plural(count, 'Scan wartet', 'Scans warten')} darauf, gelesen zu werden; nichts geht verloren.`,
    sendAgain: 'Noch einmal lesen',
    unreadable: (text) => `„${text}“ lässt sich nicht als Symbol lesen.`,
    noGoods:
      'Dieses Symbol nennt weder Produkt noch Charge, wie auf einem Paket. Scannen Sie, was darin ist.',
    ownLabel: (code) =>
      `${code} ist eines Ihrer eigenen Etiketten, es klebt also auf etwas, das schon hier ist. Scannen Sie das Symbol des Herstellers.`,
    notOwnLabel: 'Es ist das Symbol des Herstellers',
    scannedNew: (name) => `${name}: eine neue Zeile.`,
    scannedUnknown:
      'Das ist noch nicht bekannt. Sagen Sie unten, was es ist; Sie können inzwischen weiterscannen.',
    scannedMore: (name, quantity) => `${name}: nach der Seriennummer eines mehr, jetzt ${quantity}.`,
    scannedSamePiece: (name) =>
      `${name}: Genau dieses Stück wurde nach seiner Seriennummer schon gescannt. Es wird nicht noch einmal gezählt.`,

    lines: 'Was ankam',
    linesHint: 'Die zuletzt gescannte Zeile steht oben.',
    noLines: 'Noch nichts.',
    unknownProduct: 'Welches Produkt?',
    pieces: (count) => `${count} Stück`,
    packs: (quantity, each) => `${quantity} × ${each} Stück`,
    lot: (code) => `Charge ${code}`,
    usableThrough: (day) => `verwendbar bis einschließlich ${day}`,
    usableThroughMonth: (day) => `verwendbar bis einschließlich ${day} (nur der Monat ist angegeben)`,
    typedUseBy: (text) => `verwendbar bis ${text}`,
    noUseBy: 'kein Verfallsdatum',
    change: 'Ändern',
    changeOf: (name) => `Zeile ${name} ändern`,
    done: 'Fertig',
    takeOut: 'Herausnehmen',
    takeOutOf: (name) => `Zeile ${name} herausnehmen`,
    wasTakenOut: (name) => `Herausgenommen: ${name}.`,
    bringBack: 'Zurückholen',

    again: (count) =>
      count === 1
        ? 'Dasselbe Symbol wurde noch einmal gescannt. Ist das ein weiteres?'
        : `Dasselbe Symbol wurde noch ${count} Mal gescannt. Sind das weitere?`,
    againOf: (name) => `${name}, noch einmal gescannt`,
    countMore: (count) => `+${count}`,
    sameOne: 'Nein, dasselbe',
    somethingElse: 'Etwas anderes: eine eigene Zeile',

    whichProduct: 'Welches Produkt ist das?',
    unknownGtin: (gtin) => `Die Nummer ${gtin} ist noch nicht bekannt. Was ist das?`,
    unknownForArtist:
      'Wählen Sie das Produkt für diese Lieferung. Es zählt je ein Stück; Inhaber oder Leitung können die Nummer später eintragen.',
    product: 'Produkt',
    chooseProduct: 'Ein Produkt, das es schon gibt',
    makeProduct: 'Ein neues Produkt',
    joinTo: 'Sie gehört zu',
    otherProduct: 'Es ist ein anderes Produkt',
    joining: (name) => `Die Nummer wird ${name} zugeordnet …`,

    fieldsOf: (name) => `Angaben zu ${name}`,
    scannedSays: (facts) => `Gescannt: ${facts}.`,
    gtin: (gtin) => `Nummer ${gtin}`,
    gtinUnknown: 'nicht eingetragen',
    madeOn: (day) => `hergestellt am ${day}`,
    serial: (serial) => `Seriennummer ${serial}`,
    typeInstead: 'Es passt nicht zur Packung: selbst eintippen',
    typeInsteadOf: (name) => `Es passt nicht zur Packung: selbst eintippen, für ${name}`,
    codeState: 'Charge auf dem Etikett',
    codeStates: { printed: 'aufgedruckt', 'none printed': 'keine aufgedruckt', unreadable: 'nicht lesbar' },
    lotStates: {
      printed: 'Charge aufgedruckt',
      'none printed': 'keine Charge aufgedruckt',
      unreadable: 'Charge nicht lesbar',
    },
    lotCode: 'Charge',
    lotCodeHint: 'Wie aufgedruckt, mit Leerzeichen und Bindestrichen darin.',
    batchCode: 'Zweiter Code, falls vorhanden (Batch)',
    useBy: 'Verfallsdatum',
    useByHint:
      'Das Jahr zuerst, so genau wie aufgedruckt: 2028-10-31; 2028-10, wenn nur der Monat aufgedruckt ist; 2028, wenn nur das Jahr.',
    noUseByPrinted: 'Keines aufgedruckt',
    quantity: 'Wie viele',
    quantityOfPacks: (each) => `Wie viele, je ${each} Stück`,
    makesPieces: (count) => `Das sind ${count} Stück.`,
    piecesEach: 'Stück in jeder Schachtel',
    place: 'Wohin es kommt',
    usualPlace: 'Wie die ganze Lieferung',
    faulty: 'Nicht in Ordnung',
    faultyHint:
      'Auch diese werden aufgenommen und gesperrt, damit sie zurückgehen können. Was fehlt, wird nicht gezählt.',
    pieceFaults: {
      'broken seal': 'Stück mit gebrochenem Siegel',
      'damaged package': 'Stück in beschädigter Packung',
    },
    more: 'Mehr: Herstellung, Eigentum, Preis, Öffnung',
    manufacturedOn: 'Hergestellt am',
    openedOn: 'Kam geöffnet, seit',
    openedOnHint: 'Für eine Flasche, die vor der Ankunft geöffnet wurde: Ihre Frist zählt ab diesem Tag.',
    left: 'Milliliter übrig, je Flasche',
    leftHint: 'Eine Schätzung. Leer: was das Etikett sagt.',
    owner: 'Wem es gehört',
    ownerHint: 'Wer sonst es auf ein Tray legt, wird gewarnt.',
    ownedByStudio: 'Dem Studio',
    price: (currency) => `Preis eines Stücks in ${currency}`,
    priceOfPiece: (price) => `${price} je Stück`,

    joins: 'Diese Charge ist schon hier: Sie wird mehr.',
    noDate: 'ohne Datum',
    sameCode: (code, recorded, given) =>
      `Die Charge ${code} ist mit ${recorded} aufgezeichnet, hier aber mit ${given}. Was stimmt?`,
    sameCodeHint: 'Vergleichen Sie zuerst mit der Packung. Ein Versehen wird oben im Datum berichtigt.',
    decisions: {
      'separate lot': {
        label: 'Beides: zwei Chargen',
        hint: () => 'Der Hersteller hat einen Code zweimal verwendet. Sie bleiben getrennt.',
      },
      'keep recorded date': {
        label: 'Das aufgezeichnete Datum',
        hint: (recorded) => `Diese Packung ist falsch bedruckt: Sie kommt zur Charge mit ${recorded}.`,
      },
      'correct recorded date': {
        label: 'Das Datum auf dieser Packung',
        hint: (_, given) => `Die Aufzeichnung war ein Versehen: Die ganze Charge bekommt ${given}.`,
      },
    },

    delivery: 'Lieferung',
    deliveryHint: 'Vom Lieferschein; zuerst oder zuletzt auszufüllen.',
    origin: 'Wie es kam',
    origins: {
      purchase: 'gekauft',
      'gift or sample': 'Geschenk oder Muster',
      'opening stock': 'war schon vor Lotward hier',
    },
    noSupplier: 'Nicht bekannt',
    reference: 'Nummer von Lieferschein oder Rechnung',
    referenceHint: 'Leer: Es gibt keine.',
    orderedOn: 'Bestellt am',
    orderedOnHint: 'Damit bekannt wird, wie lange der Lieferant braucht.',
    putAwayAt: 'Wohin es geräumt wird',
    putAwayAtHint: 'Einzelne Zeilen können woandershin.',

    review: 'Aufnehmen',
    reviewHint: 'Alles wird auf einmal aufgezeichnet oder nichts.',
    total: (lines, pieces) => `${plural(lines, 'Zeile', 'Zeilen')}, ${pieces} Stück`,
    nothingYet: 'Es gibt noch nichts aufzunehmen. Scannen Sie etwas, oder wählen Sie ein Produkt.',
    unsettled: (count) =>
      `Noch wurde nichts aufgezeichnet: In ${plural(count, 'Zeile', 'Zeilen')} ist etwas zu klären.`,
    toLine: (name) => `Zur Zeile ${name}`,
    lacks: {
      product: 'Sagen Sie, welches Produkt es ist.',
      lot: 'Tippen Sie die Charge, oder sagen Sie, dass keine aufgedruckt oder sie nicht lesbar ist.',
      useBy: 'Tippen Sie das Verfallsdatum, oder kreuzen Sie an, dass keines aufgedruckt ist.',
      useByUnreadable:
        'Das Verfallsdatum ist nicht lesbar. Schreiben Sie das Jahr zuerst, etwa 2028-10-31 oder 2028-10.',
      quantity: 'Wie viele es sind, muss eine ganze Zahl ab 1 sein.',
      faulty: 'Was nicht in Ordnung ist, muss in ganzen Zahlen stehen, zusammen nicht mehr, als kam.',
      price: 'Der Preis muss eine Zahl sein, etwa 12,50.',
      left: 'Die übrigen Milliliter müssen eine Zahl sein, etwa 7,5.',
      again: 'Sagen Sie, ob das noch einmal gescannte Symbol ein weiteres ist.',
      decision: 'Entscheiden Sie, welches Verfallsdatum stimmt.',
      place: 'Wählen Sie, wohin es kommt.',
    },
    takeIn: 'Aufnehmen',

    takenIn: (lines, containers) =>
      `Aufgenommen: ${plural(lines, 'Zeile', 'Zeilen')}, ${plural(containers, 'Flasche oder Schachtel', 'Flaschen und Schachteln')}.`,
    someHeld: (count) =>
      `${plural(count, 'Sperre wurde', 'Sperren wurden')} gesetzt, siehe unten. Gesperrtes wird nicht angeboten, bis jemand entscheidet.`,
    nextDelivery: 'Die nächste Lieferung',
    toDelivery: 'Diese Lieferung zeigen',
    made: 'Was entstand',
    madeHint: 'Chargen und der Etikettencode jeder Flasche oder Schachtel.',
    newLot: 'neue Charge',
    moreOfLot: 'mehr von einer Charge, die schon hier war',
    held: (isLot, reason) => `${isLot ? 'Die Charge' : 'Das Fehlerhafte'} ist gesperrt: ${reason}.`,
    holdReasons: {
      'no lot printed': 'keine Charge aufgedruckt',
      'lot unreadable': 'Charge nicht lesbar',
      'no use-by printed': 'kein Verfallsdatum aufgedruckt',
      'already past': 'Verfallsdatum überschritten',
      'broken seal': 'Siegel gebrochen',
      'damaged package': 'Packung beschädigt',
    },
    containers: (count) => `${plural(count, 'Etikett', 'Etiketten')}:`,
  },

  deliveries: {
    title: 'Lieferungen',
    lead: 'Was wann ankam.',
    list: 'Lieferungen',
    listHint: 'Die letzte zuerst.',
    none: 'Noch ist nichts angekommen.',
    one: 'Lieferung',
    lines: (count) => plural(count, 'Zeile', 'Zeilen'),
    show: 'Zeigen',
    from: (supplier) => `von ${supplier}`,
    reference: (number) => `Nummer ${number}`,
    orderedOn: (day) => `bestellt ${day}`,
    arrived: 'Was ankam',
    arrivedHint: 'Chargen nach jetzigem Stand.',
    noCode: 'keine Charge bekannt',
    toLot: (code) => `Zur Charge ${code}`,
    printLabels: 'Etiketten dieser Lieferung drucken',
  },

  labels: {
    title: 'Etiketten',
    lead: 'Jede Flasche und Schachtel trägt einen eigenen Code, an dem sie am Tray erkannt wird.',
    which: 'Wovon',
    whichHint: 'Wählen Sie ein Produkt, oder kommen Sie von einer Lieferung oder Charge hierher.',
    orDelivery: 'Oder eine Lieferung wählen',
    choose: 'Flaschen und Schachteln',
    chooseHint: {
      delivery: 'Der Lieferung, soweit sie noch hier sind.',
      lot: 'Der Charge, soweit sie noch hier sind.',
      product: 'Des Produkts, soweit sie noch hier sind.',
    },
    none: 'Davon ist nichts hier.',
    all: 'Alle ankreuzen',
    noneOfThem: 'Keine ankreuzen',
    print: 'Etiketten drucken',
    printHint: 'Als PDF. Drucken Sie in wirklicher Größe, ohne Anpassung an die Seite.',
    sheet: 'Bogen',
    sheetHint: 'Die kleinen von der Rolle passen um eine Flasche mit 10 ml.',
    sheets: {
      'A4 sheet': 'A4, 65 zu 38,1 × 21,2 mm',
      roll: 'Rolle, 25 × 13 mm',
    },
    startAt: 'Erstes Etikett an Stelle',
    startAtHint: (most) =>
      `1 bis ${most}, Reihe für Reihe: Ein angebrochener Bogen kann noch einmal durch den Drucker.`,
    noSuchStart: (most) => `Ein Bogen hat die Stellen 1 bis ${most}.`,
    tooMany: (count, most) =>
      `${count} sind gewählt; ${most} werden auf einmal gedruckt. Drucken Sie die anderen von der Lieferung aus.`,
    onSheets: (labels, pages) =>
      `${plural(labels, 'Etikett', 'Etiketten')} auf ${plural(pages, 'Bogen', 'Bögen')}.`,
    onRoll: (labels) => `${plural(labels, 'Etikett', 'Etiketten')} auf der Rolle.`,
    submit: (count) => `PDF mit ${plural(count, 'Etikett', 'Etiketten')} erstellen`,
    made: 'Die Etiketten sind erstellt und als labels.pdf gespeichert.',
    open: 'Öffnen',
  },
};
