import type { recallClosingTexts as english } from '../en/recall-closing.js';

const anzahl = (number: number, one: string, many: string) => `${number} ${number === 1 ? one : many}`;

export const recallClosingTexts: typeof english = {
  recallClosing: {
    obstacles: 'Was dem Abschluss entgegensteht',
    obstaclesHint: {
      recall:
        'Jedes wird auf seiner eigenen Seite behoben. Oder trotzdem abschließen und sagen, warum: Der Bericht zeigt es.',
      drill: 'In einer Übung hält es nichts auf und zeigt sich in der Wertung.',
    },
    ready: 'Dem Abschluss steht nichts entgegen.',
    of: {
      'undecided lots': (all) =>
        `von ${anzahl(all, 'Charge', 'Chargen')}, die gemeint sein ${all === 1 ? 'kann' : 'können'}`,
      'clients not told': (all) => `von ${anzahl(all, 'betroffenen Person', 'betroffenen Personen')}`,
      'containers not found': (all) =>
        `von ${anzahl(all, 'Flasche oder Schachtel', 'Flaschen und Schachteln')}`,
      'stock without disposition': (all) =>
        `von ${anzahl(all, 'Flasche oder Schachtel', 'Flaschen und Schachteln')}`,
      'pieces unexplained': (all) => `von ${anzahl(all, 'eingegangenen Stück', 'eingegangenen Stück')}`,
    },
    counts: {
      'not tried': (number) => `${number} noch nicht versucht`,
      'tried in vain': (number) => `${number} vergeblich versucht`,
      'not found': (number) => `${number} vergeblich gesucht`,
      'not looked for': (number) => `${number} noch nicht gesucht`,
      pieces: (number) => `${number} Stück darin`,
    },
    mend: {
      'undecided lots': 'Entscheiden',
      'clients not told': 'Benachrichtigen',
      'containers not found': 'Suchen',
      'stock without disposition': 'Zurückgeben oder vernichten',
      'pieces unexplained': 'Zur Bilanz',
    },
    obstacleNames: {
      'undecided lots': 'Chargen nicht entschieden',
      'clients not told': 'Betroffene nicht benachrichtigt',
      'containers not found': 'Behälter nicht gefunden',
      'stock without disposition': 'Bestand weder zurückgegeben noch vernichtet',
      'pieces unexplained': 'Stücke nicht erklärt',
    },
    override: 'Trotzdem abschließen',
    overrideOf: {
      'undecided lots': 'Trotzdem abschließen: Chargen nicht entschieden',
      'clients not told': 'Trotzdem abschließen: Betroffene nicht benachrichtigt',
      'containers not found': 'Trotzdem abschließen: Behälter nicht gefunden',
      'stock without disposition': 'Trotzdem abschließen: Bestand weder zurückgegeben noch vernichtet',
      'pieces unexplained': 'Trotzdem abschließen: Stücke nicht erklärt',
    },
    reasonOf: {
      'undecided lots': 'Warum Chargen unentschieden bleiben dürfen',
      'clients not told': 'Warum Betroffene nicht benachrichtigt werden',
      'containers not found': 'Warum Behälter nicht gefunden werden müssen',
      'stock without disposition': 'Warum Bestand bleiben darf',
      'pieces unexplained': 'Warum Stücke unerklärt bleiben',
    },
    reasonHint: 'Der Grund steht im Bericht. Nichts über Kundinnen und Kunden.',
    sign: { recall: 'Unterschreiben und abschließen', drill: 'Die Übung beenden' },
    signHint: {
      recall:
        'Was jetzt bekannt ist, bleibt als Bericht und ändert sich nicht mehr. Was nicht zurückgegeben oder vernichtet wurde, bleibt gesperrt; was von diesen Chargen noch kommt, wird ebenfalls gesperrt.',
      drill: 'Die Uhr hält an, und die Wertung bleibt.',
    },
    signedByYou: (name) => `Sie unterschreiben: ${name}.`,
    second: 'Wer mit unterschreibt',
    secondHint: 'Eine weitere Person, die es angesehen hat, falls es eine gibt.',
    noSecond: 'niemand',
    stillStanding: (number) =>
      `${number === 1 ? 'Eines steht' : `${number} Dinge stehen`} noch ohne Grund entgegen: siehe oben.`,
    close: { recall: 'Unterschreiben und den Rückruf abschließen', drill: 'Die Uhr anhalten' },
    done: { recall: 'Der Rückruf ist abgeschlossen.', drill: 'Die Übung ist vorbei.' },
    staying: (holds, guards) =>
      `${anzahl(holds, 'Sperre bleibt', 'Sperren bleiben')} auf dem, was noch da ist; ${guards === 0 ? 'beim Eingang wird nichts gesperrt' : 'was von diesen Chargen noch kommt, wird ebenfalls gesperrt'}.`,
    closed: {
      open: 'Offen',
      closed: 'Wie er abgeschlossen wurde',
      withdrawn: 'Wie er zurückgezogen wurde',
    },
    closedHint: 'So steht es im Bericht.',
    signedBy: (name) => `unterschrieben von ${name}`,
    secondBy: (name) => `mit ${name}`,
    overridden: (obstacle, reason) => `${obstacle}, trotzdem abgeschlossen: ${reason}`,
    holdsStay:
      'Was nicht zurückgegeben oder vernichtet wurde, bleibt gesperrt; was von diesen Chargen noch kommt, wird beim Eingang gesperrt.',
    report: 'Der Bericht',
    reportHint: 'So, wie es am Ende stand. Kundinnen und Kunden stehen mit ihrem Zeichen darin.',
    reportOpen:
      'So, wie es jetzt steht, als nicht abgeschlossen gekennzeichnet. Kundinnen und Kunden stehen mit ihrem Zeichen darin.',
    pdf: 'Der Bericht (PDF)',
    json: 'Dasselbe als Daten (JSON)',
  },
};
