import type { takingInTexts as english } from '../en/taking-in.js';

const plural = (count: number, one: string, many: string) => `${count} ${count === 1 ? one : many}`;

export const takingInTexts: typeof english = {
  takingIn: {
    begin: 'So sieht die Liste aus',
    template: 'Leere Liste speichern',
    example: 'Beispiel speichern',
    columns: 'Alle Spalten',
    columnsHint:
      'In der ersten Zeile stehen die Namen der Spalten, auf Englisch und in beliebiger Reihenfolge. Zellen sind durch Komma, Strichpunkt oder Tabulator getrennt. Das Datum beginnt mit dem Jahr, 2026-04-03; Zahlen stehen ohne Tausenderpunkte.',
    needed: 'immer nötig',
    bring: 'Liste mitbringen',
    bringHint:
      'Nichts wird aufgezeichnet, bevor Sie gesehen haben, was aus jeder Zeile würde. Bis zu 1000 Zeilen.',
    choose: 'Datei wählen',
    chosen: (name) => `${name} ist gelesen.`,
    paste: 'Oder hier einfügen',
    pasteHint: 'Wie aus einer Tabelle kopiert, mit der Zeile der Spaltennamen.',
    look: 'Durchsehen',
    fileFaults: {
      workbook:
        'Das ist eine Arbeitsmappe einer Tabellenkalkulation. Speichern Sie sie dort als CSV (UTF-8) und wählen Sie diese Datei.',
      notUtf8:
        'Diese Datei ist nicht in UTF-8, Namen darin würden verdorben. Speichern Sie sie als CSV (UTF-8) und wählen Sie sie noch einmal.',
      tooLong: 'Diese Datei ist zu lang. Bringen Sie sie in Teilen von bis zu 1000 Zeilen mit.',
    },
    preview: 'Was daraus würde',
    previewHint: 'Noch ist nichts aufgezeichnet. Alles wird auf einmal aufgenommen, oder nichts.',
    unreadable:
      'So lässt sich die Datei nicht lesen. Berichtigen Sie sie und bringen Sie sie noch einmal mit.',
    someFaulty: (faulty, rows) =>
      `${faulty} von ${plural(rows, 'Zeile', 'Zeilen')} lassen sich nicht aufnehmen. Berichtigen Sie das in Ihrer Datei und bringen Sie sie noch einmal mit; bis dahin wird nichts aufgenommen.`,
    noFaults: (rows) => `${plural(rows, 'Zeile', 'Zeilen')}, keine Fehler.`,
    nothingNew: 'Alles darin ist schon aufgezeichnet oder bleibt weg; es gibt nichts aufzunehmen.',
    changed:
      'Seit dem Durchsehen wurde hier etwas geändert, deshalb wurde nichts aufgenommen. Die Liste wurde noch einmal durchgesehen.',
    takeIn: 'Alles aufnehmen',
    takingIn: 'Es wird aufgenommen; bei vielen Zeilen dauert das einige Sekunden.',
    rows: 'Zeilen der Liste',
    row: (number) => `Zeile ${number}`,
    faulty: 'zu berichtigen',
    onlyFaulty: (count) =>
      count === 1
        ? 'Nur die eine Zeile, die zu berichtigen ist'
        : `Nur die ${count} Zeilen, die zu berichtigen sind`,
    onlyTold: (count) => `Nur ${plural(count, 'Zeile', 'Zeilen')} mit einer Bemerkung`,
    more: (count) => `Mehr zeigen, ${count} bleiben`,
  },

  openingStock: {
    title: 'Anfangsbestand',
    lead: 'Was zu Beginn im Regal liegt, aus einer Tabelle übernommen: mit Chargen und Daten, und mit Produkten, die noch nicht bekannt sind.',
    beginHint: 'Beginnen Sie mit der leeren Liste oder dem Beispiel und füllen Sie sie beim Zählen aus.',
    columns: {
      maker: 'Wessen Name auf dem Etikett steht. Ein unbekannter Hersteller wird angelegt.',
      product: 'Wie es heißt. Ein unbekanntes Produkt wird angelegt, wenn seine Art dabeisteht.',
      shade: 'Bei Pigmenten: Name oder Nummer des Farbtons.',
      kind: 'Bei einem neuen Produkt: pigment (Pigment), cartridge (Nadelmodul) oder consumable (Verbrauchsmaterial).',
      role: 'Bei einem neuen Pigment: colour (Farbe) oder thinner (Verdünner). Leer: Farbe.',
      'bottle ml': 'Bei einem neuen Pigment: was auf dem Etikett steht, in Millilitern.',
      'opened life': 'Bei einem neuen Produkt, vom Etikett: P12M sind 12 Monate, P30D 30 Tage.',
      notation: 'Bei einem neuen Nadelmodul, etwa 1207RL.',
      gtin: 'Die Nummer unter den Strichen, 8 bis 14 Ziffern, als Text. Sie kommt zum Produkt dazu.',
      lot: 'Die Charge wie aufgedruckt; oder „none printed“ (keine aufgedruckt) oder „unreadable“ (unlesbar): solche Ware wird beiseitegestellt, bis Sie entscheiden.',
      batch: 'Ein zweiter Code, falls es einen gibt.',
      'use by':
        'So genau wie aufgedruckt: 2027-06-30, 2027-06 oder 2027; oder „none printed“ (keines aufgedruckt).',
      'manufactured on': 'Falls es aufgedruckt ist.',
      quantity: 'Wie viele Flaschen, Schachteln oder Stück.',
      'pieces per box':
        'Wo Schachteln gezählt werden: wie viele Stück in jeder. Jede bekommt ein eigenes Etikett.',
      'opened on': 'Bei offenen Flaschen: seit wann.',
      remaining:
        'Bei offenen Pigmenten: was in jeder noch etwa ist, 6 ml oder 60 %. Leer: eine volle Flasche.',
      place: 'Wie unter Lagerplätze. Kann leer bleiben, wenn es nur einen gibt.',
      owner: 'Wem es gehört, wenn nicht dem Studio: ein Name wie unter Personen.',
      'same code':
        'Nur wenn eine Charge mit anderem Datum bekannt ist: separate lot (eigene Charge), keep recorded date (das aufgezeichnete gilt) oder correct recorded date (das aufgezeichnete berichtigen).',
    },
    effects: {
      'new maker': 'neuer Hersteller',
      'new product': 'neues Produkt',
      'new GTIN': 'neue Nummer',
      'new lot': 'neue Charge',
      'joins a lot': 'mehr von einer bekannten Charge',
      'corrects a lot': 'berichtigt das Datum einer Charge',
    },
    amount: (pieces, containers) =>
      pieces === containers
        ? `${pieces} Stück`
        : `${pieces} Stück in ${plural(containers, 'Schachtel', 'Schachteln')}`,
    opened: (day) => `geöffnet am ${day}`,
    left: (volume) => `in jeder noch etwa ${volume}`,
    setAside: (reasons) => `wird beiseitegestellt: ${reasons.join(', ')}`,
    made: (counts) =>
      `${[
        plural(counts.lots, 'neue Charge', 'neue Chargen'),
        plural(counts.containers, 'Flasche oder Schachtel', 'Flaschen und Schachteln'),
        plural(counts.products, 'neues Produkt', 'neue Produkte'),
        plural(counts.makers, 'neuer Hersteller', 'neue Hersteller'),
      ].join(', ')}.`,
    taken: (counts) =>
      `Aufgenommen: ${plural(counts.rows, 'Zeile', 'Zeilen')}, ${plural(counts.lots, 'neue Charge', 'neue Chargen')}, ${plural(counts.containers, 'Flasche oder Schachtel', 'Flaschen und Schachteln')}.`,
    toDelivery: 'Zeigen, was aufgenommen wurde',
    toLabels: 'Etiketten dafür drucken',
    toHolds: 'Über Beiseitegestelltes entscheiden',
  },

  bookings: {
    title: 'Termine aus einer Liste',
    lead: 'Was schon gebucht ist, aus einer Liste oder einem Kalender übernommen. Aufgezeichnetes wird kein zweites Mal übernommen; dieselbe Liste kann wieder mitgebracht werden.',
    beginHint: 'Eine Liste als CSV oder ein Kalender als iCalendar (.ics).',
    bringHint:
      'Nichts wird aufgezeichnet, bevor Sie gesehen haben, was aus jeder Zeile würde. Was hier gewählt ist, gilt für Zeilen, die es nicht sagen.',
    calendar: 'So wird ein Kalender gelesen',
    calendarRules: [
      'Der Titel wird in Teilen zwischen Gedankenstrichen gelesen, etwa „Ida Sommer – Pudertechnik – touch-up“: ein Teil, der eine Behandlung, eine Art des Besuchs oder jemanden nennt, der hier arbeitet, ist das; was übrig bleibt, ist die Kundin oder der Kunde, mit Namen oder Kürzel.',
      'Eine einzelne eingeladene Person ist die Kundin oder der Kunde, mit Name und Adresse.',
      'Zeilen der Beschreibung gehen beidem vor: Client (Kundin, Kunde), Reference (Kürzel), Contact (Kontakt), Artist, Procedure (Behandlung), Visit (Besuch), Booked (gebucht am), jeweils mit Doppelpunkt.',
      'Ein Eintrag ohne Behandlung bleibt weg, ebenso was vor heute liegt oder abgesagt ist. Ist eine Behandlung für alle gewählt, so ist jeder Eintrag ein Termin.',
      'Zeiten ohne Zeitzone gelten nach den Uhren des Studios. Ein ganztägiger Eintrag braucht eine Uhrzeit.',
      'Einträge, die sich wiederholen, werden einzeln übernommen, bis zu 60-mal, wenn sie enden.',
    ],
    columns: {
      'booking id':
        'Die Nummer, unter der Ihre Liste sie kennt. Daran wird der Termin wiedererkannt, wenn die Liste wieder mitgebracht wird.',
      'client reference': 'Das Kürzel von jemandem, der schon aufgezeichnet ist, etwa 7KQ2-M4.',
      'client name': 'Oder der Name. Unbekannte werden aufgezeichnet; Namen und Kontakte bleiben versiegelt.',
      contact: 'Telefonnummer oder Mailadresse. Damit ist sicher, wer gemeint ist.',
      artist: 'Ein Name wie unter Personen. Leer: wer unten gewählt ist.',
      procedure: 'Der Name wie unter Behandlungen. Leer: was unten gewählt ist.',
      visit:
        'patch test (Verträglichkeitstest), first session (erste Sitzung), touch-up (Nachbehandlung), refresh (Auffrischung), correction (Korrektur), lightening (Aufhellung) oder training (Übung).',
      'planned start': 'Nach den Uhren des Studios: 2026-04-03 14:30.',
      'booked at': 'Wann gebucht wurde, ein Tag oder eine Zeit.',
    },
    artistForAll: 'Artist, wo niemand genannt ist',
    procedureForAll: 'Behandlung, wo keine genannt ist',
    procedureForAllHint: 'Bei einem Kalender: ist eine gewählt, so ist jeder Eintrag ein Termin.',
    visitForAll: 'Besuch, wo nichts gesagt ist',
    asTheRowSays: 'Wie die Zeile sagt',
    effects: {
      'new session': 'neue Sitzung',
      'on record already': 'schon aufgezeichnet',
      'left out': 'bleibt weg',
    },
    withNewClient: 'neue Sitzung, neu aufgenommen',
    with: (artist) => `bei ${artist}`,
    reference: (reference) => `Kürzel ${reference}`,
    made: (counts) =>
      `${[
        plural(counts.sessions, 'neue Sitzung', 'neue Sitzungen'),
        plural(counts.clients, 'neue Kundin oder neuer Kunde', 'neue Kundinnen und Kunden'),
        `${counts.onRecord} schon aufgezeichnet`,
        `${counts.leftOut} bleiben weg`,
      ].join(', ')}.`,
    taken: (counts) =>
      `Aufgenommen: ${plural(counts.sessions, 'Sitzung', 'Sitzungen')}, ${plural(counts.clients, 'neue Kundin oder neuer Kunde', 'neue Kundinnen und Kunden')}.`,
    toToday: 'Zu den Sitzungen des Tages',
  },
};
