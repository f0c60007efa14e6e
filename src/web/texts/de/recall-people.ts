import type { recallPeopleTexts as english } from '../en/recall-people.js';

const anzahl = (number: number, one: string, many: string) => `${number} ${number === 1 ? one : many}`;

export const recallPeopleTexts: typeof english = {
  recallExposures: {
    totals: 'Wen es berührt hat',
    totalsHint:
      'Direkt, in einer Mischung oder über Hausmischungen, bei jeder Art von Besuch. Mögliche sind für sich gezählt.',
    figures: {
      certain: 'Personen, sicher',
      possible: 'Personen, möglich',
      sessions: 'Sitzungen',
      uses: 'Verwendungen',
    },
    ofKind: (kind, sessions) => `${kind}: ${anzahl(sessions, 'Sitzung', 'Sitzungen')}`,
    openLotUses: (number) =>
      `${anzahl(number, 'Verwendung ist', 'Verwendungen sind')} als andere Charge aus einer Liste erfasst, an einem Tag, an dem eine zurückgerufene offen war: möglich.`,
    unknownAmounts: (number) =>
      `Bei ${anzahl(number, 'Verwendung', 'Verwendungen')} weiß niemand, wie viel es war.`,
    reversedUses: (number) =>
      `${anzahl(number, 'Verwendung wurde', 'Verwendungen wurden')} irrtümlich erfasst und zurückgenommen: nicht gezählt.`,
    erasedClients: (number) =>
      `${anzahl(number, 'Person wurde', 'Personen wurden')} gelöscht und ${number === 1 ? 'kann' : 'können'} nicht mehr benachrichtigt werden.`,
    spreadsheet: 'Als Arbeitsmappe (XLSX)',
    csv: 'Als Tabelle (CSV)',
    certainties: { certain: 'sicher berührt', possible: 'möglicherweise berührt' },
    reasons: {
      'lot undecided': 'Möglich: Noch niemand hat entschieden, ob die Charge betroffen ist.',
      'lot picked from a list':
        'Möglich: Die Charge wurde aus einer Liste gewählt und kann eine andere gewesen sein.',
      'another open lot that day':
        'Möglich: als andere Charge aus einer Liste erfasst, während an dem Tag eine zurückgerufene offen war.',
    },
    clients: 'Person für Person',
    clientsHint:
      'Nach Zeichen; die Namen stehen dort, wo benachrichtigt wird. Zuerst, wer sicher berührt wurde.',
    filter: 'Zeigen',
    all: 'alle',
    noClients: 'Es hat niemanden berührt.',
    noneOfThese: 'Niemand dieser Art.',
    show: 'Sitzungen',
    showOf: (reference) => `Sitzungen von ${reference} zeigen`,
    hide: 'Verbergen',
    hideOf: (reference) => `Sitzungen von ${reference} verbergen`,
    allSessions: 'Sitzung für Sitzung',
    allSessionsHint: 'In der Reihenfolge, in der sie waren, mit dem Grund, wo es nur möglich ist.',
    showAllSessions: 'Alle Sitzungen zeigen',
    sessionsOf: (reference) => `Sitzungen von ${reference}`,
    sessions: (number) => anzahl(number, 'Sitzung', 'Sitzungen'),
    span: (from, through) => `${from} – ${through}`,
    contactStates: {
      'not tried': 'noch nicht benachrichtigt',
      reached: 'benachrichtigt',
      refused: 'wollte es nicht wissen',
      'no answer': 'versucht, nicht erreicht',
      'message left': 'Nachricht hinterlassen',
      unreachable: 'nicht erreichbar',
      'erased, cannot be told': 'gelöscht, kann nicht benachrichtigt werden',
    },
    by: (name) => `von ${name}`,
    recordedFrom: { late: 'nachträglich erfasst', paper: 'nachträglich vom Papier erfasst' },
    lot: (code) => `Charge ${code}`,
    noCode: 'ohne Chargennummer',
    about: (volume) => `etwa ${volume}`,
    unknownAmount: 'Menge nicht bekannt',
    through: { mix: 'in einer Mischung', 'house blend': 'eine Hausmischung' },
    openThatDay: (lot) => `An dem Tag offen: ${lot}`,
    inBlend: (lot) => `Darin: ${lot}`,
    shareInBlend: (lot, volume) => `Darin: ${lot}, etwa ${volume}`,
    againstRefusal: 'Es war abgelehnt und wurde trotzdem verwendet.',
    planned: 'Wen es als Nächstes berühren würde',
    plannedHint:
      'Sitzungen in Vorbereitung oder geplant, die eine zurückgerufene Charge verwenden würden, und was stattdessen zu nehmen ist.',
    noPlanned: 'Keine Sitzung in Vorbereitung oder geplant würde es verwenden.',
    onTray: (lot) => `Auf dem Tablett: ${lot}`,
    inCup: (lot) => `In einer Mischung auf dem Tablett: ${lot}`,
    follows: 'Die Mischung würde wiederholt vom',
    kitEnough: (label) => `Die Packliste verlangt ${label}. Andere Chargen reichen:`,
    kitShort: (label, pieces) =>
      `Die Packliste verlangt ${label}. Von anderen Chargen sind nur ${pieces} haltbar da.`,
    takeInstead: 'Nehmen:',
    until: (day) => `bis ${day}`,
  },

  recallTelling: {
    standing: 'Wie weit das Benachrichtigen ist',
    standingHint:
      'Lotward bereitet die Worte vor und hält fest, was versucht wurde. Es schickt niemandem etwas.',
    audiences: {
      client: 'Kundinnen und Kunden',
      artist: 'Artists',
      supplier: 'Lieferanten',
      authority: 'Behörden',
    },
    table: 'Wer benachrichtigt wurde',
    audience: 'Wer',
    toTell: 'im Ganzen',
    told: 'wissen es',
    outstanding: 'offen',
    nobody: 'niemand',
    level: (level) => `Wirksamkeitsprüfung: Stufe ${level} ist erfüllt.`,
    noLevel: 'Wirksamkeitsprüfung: Noch keine Stufe ist erfüllt.',
    levels: 'Die Stufen, und was sie verlangen',
    levelAsks: (level, percent, toCheck) => `${level}: ${percent}, hier ${toCheck}`,
    levelAgreed: (level) => `${level}: nach Absprache im Einzelfall`,
    met: 'erfüllt',
    notMet: 'nicht erfüllt',
    source: (source, caveat) => (caveat === null ? source : `${source}: ${caveat}.`),
    contactList: 'Namen und Kontakte aller (CSV)',
    contactListHint: 'Zum Benachrichtigen. Jeder Blick auf einen Namen wird vermerkt.',
    drill:
      'In einer Übung werden Nachrichten vorbereitet und gelesen, und niemand wird benachrichtigt: Kein Versuch wird erfasst.',

    recipients: 'Wer zu benachrichtigen ist',
    recipientsHint: 'Bis jede und jeder erreicht ist, es nicht wissen will oder nicht erreichbar ist.',
    whom: 'Wen',
    onlyOutstanding: 'Nur wer noch zu benachrichtigen ist',
    none: {
      client: 'Niemand ist zu benachrichtigen.',
      artist: 'Niemand hat es verwendet oder hat noch davon.',
      supplier: 'Keine Lieferung davon nennt einen Lieferanten.',
      authority:
        'Noch keine Behörde wurde benachrichtigt. Nennen Sie sie unten, wenn eine zu benachrichtigen ist.',
    },
    noneOutstanding: (audience) => `${audience}: niemand mehr zu benachrichtigen.`,
    standings: {
      'not tried': 'noch nicht benachrichtigt',
      reached: 'benachrichtigt',
      refused: 'wollte es nicht wissen',
      'no answer': 'nicht erreicht',
      'message left': 'Nachricht hinterlassen',
      unreachable: 'nicht erreichbar',
    },
    erased: 'Gelöscht: Niemand weiß mehr, wer es war.',
    toldEarlier:
      'Schon benachrichtigt, doch eine Charge, die sie berührt hat, wurde erst danach zurückgerufen: noch einmal benachrichtigen.',
    attempts: (number, when) => `${anzahl(number, 'Versuch', 'Versuche')}, zuletzt ${when}`,
    read: 'Nachricht lesen',
    readFor: (name) => `Nachricht lesen: ${name}`,
    log: 'Versuch erfassen',
    logFor: (name) => `Versuch erfassen: ${name}`,

    notListed: 'Jemand, der nicht aufgeführt ist',
    another: {
      supplier: 'Ein Lieferant, der nicht aufgeführt ist',
      authority: 'Eine Behörde',
    },
    companyHint: {
      supplier: 'Von wem die Charge kam.',
      authority: 'So, wie Sie sie anschreiben würden.',
    },

    channel: 'Wie',
    channels: {
      telephone: 'am Telefon',
      'e-mail': 'per E-Mail',
      letter: 'per Brief',
      message: 'per Nachricht',
      'in person': 'persönlich',
    },
    outcome: 'Was dabei herauskam',
    outcomes: {
      reached: 'erreicht: weiß es jetzt',
      refused: 'wollte es nicht wissen',
      'no answer': 'nicht erreicht',
      'message left': 'Nachricht hinterlassen',
      unreachable: 'nicht erreichbar',
    },
    note: 'Was gesagt wurde',
    noteHint: {
      client: 'Wird versiegelt aufbewahrt und mit der Person gelöscht.',
      others: 'Nichts über Kundinnen und Kunden.',
    },
    save: 'Versuch erfassen',

    tried: 'Was versucht wurde',
    triedHint: 'Das Letzte zuerst.',
    noneTried: 'Noch niemand hat es versucht.',
    attempt: (when, channel, outcome, who) => `${when} ${channel}, ${outcome}, ${who}`,

    messageFor: (name) => `Nachricht für ${name}`,
    back: 'Zurück zur Liste',
    language: 'Sprache der Nachricht',
    languages: { en: 'Auf Englisch', de: 'Auf Deutsch' },
    print: 'Drucken',
    copy: 'Text kopieren',
    copyFailed: 'Kopieren ging nicht: Markieren Sie den Text oben und kopieren Sie ihn von Hand.',
    mail: 'E-Mail schreiben',
    call: 'Anrufen',
    contact: (contact) => `Erreichbar über: ${contact}`,
    seeTo: 'Das ist zu tun, bevor Sie sie weitergeben',
    about: (words) => `„${words}“`,
    asks: 'Was das Gesetz von einer Nachricht verlangt, und wo es steht',
    howSure: {
      P: 'im Wortlaut gelesen',
      S: 'aus zweiter Quelle',
      M: 'aus dem Gedächtnis',
    },
    answered: (asks, source, howSure) => `${asks}. ${source}, ${howSure}.`,
    notAnswered: (asks) => `Nicht gesagt: ${asks}`,
    picture: 'Das Produkt, wie es gefunden wurde',
    drillSheet: 'Übung: Diese Nachricht geht an niemanden.',
  },

  messageRemarks: {
    'no contact point':
      'In den Einstellungen des Studios steht keine Kontaktstelle, so nennt die Nachricht nur das Studio. Das Gesetz verlangt eine kostenlose Telefonnummer oder einen Online-Dienst: Tragen Sie eine ein oder schreiben Sie sie auf die Nachricht.',
    'no hazard named':
      'Der Rückruf sagt nichts über die Gefahr. Ergänzen Sie ihn mit den Worten der Meldung.',
    'no remedy named': 'Der Rückruf nennt keine Abhilfe. Ergänzen Sie ihn mit den Worten der Meldung.',
    'softening words left out':
      'Worte der Meldung, die die Gefahr kleiner erscheinen lassen, sind weggelassen, wie es die Verordnung (EU) 2023/988, Art. 36 Abs. 2 Buchst. c, verlangt.',
    'advice left out':
      'Sätze der Meldung, die zur Gesundheit raten oder beschwichtigen, sind weggelassen: Das ist Sache einer Ärztin oder eines Arztes.',
    'words in another language':
      'Was die Nachricht aus der Meldung übernimmt, scheint in einer anderen Sprache zu stehen. Lassen Sie es übersetzen, wo die Lesenden es brauchen.',
    'no picture':
      'Von diesen Chargen wurde für diesen Rückruf kein Foto gemacht. Das Gesetz verlangt ein Bild des Produkts: Machen Sie eines, wenn ein Behälter gefunden wird, oder legen Sie eines bei.',
    erased: 'Diese Person wurde gelöscht: Wer sie ist und wie man sie erreicht, ist hier nicht mehr bekannt.',
    drill: 'Das ist eine Übung. Lesen Sie die Nachricht, und geben Sie sie niemandem weiter.',
  },
};
