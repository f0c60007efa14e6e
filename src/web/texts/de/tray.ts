import type { trayTexts as english } from '../en/tray.js';
import { completionTexts } from './completion.js';
import { walkInTexts } from './walk-in.js';

export const trayTexts: typeof english = {
  ...completionTexts,
  ...walkInTexts,

  tray: {
    title: 'Tablett',
    of: (reference, procedure) => `Für ${reference}, ${procedure}`,
    scan: 'Scannen',
    scanHint: 'Ein Handscanner tippt hier hinein. Ohne ihn die Charge oder den Code des Etiketts eintippen.',
    judge: 'Prüfen',
    nothingShown: 'Zeigen Sie das erste Stück. Hier steht, ob es verwendet werden darf.',
    notInSetup: (state) => `Diese Sitzung ist ${state}; für sie wird jetzt nichts bereitgelegt.`,
    usableThrough: (day) => `Verwendbar bis ${day}`,
    expiredOn: (day) => `Verwendbar bis ${day}: Dieser Tag ist vorbei.`,
    wasOpenThrough: (day, whose) => `Zu lange offen: verwendbar bis ${day}, nach ${whose}.`,
    onTrayNow: (count) => `${count} auf dem Tablett`,
    takeInstead: (label, code) => `Nehmen Sie stattdessen ${label}, ${code}.`,
    waiting: (count) =>
      `${count} ${count === 1 ? 'Scan wartet' : 'Scans warten'} darauf, gesendet zu werden. Was wartet, bleibt auf diesem Gerät und zählt einmal, wie oft es auch gesendet wird.`,
    pressesWait: (count) =>
      `${count} ${count === 1 ? 'Tastendruck wartet' : 'Tastendrücke warten'} darauf, gesendet zu werden. Was wartet, bleibt auf diesem Gerät und zählt einmal, wie oft es auch gesendet wird.`,
    sendAgain: 'Erneut senden',
    oneMore: '+1, ein weiteres Stück',
    openIt: 'Ich öffne es jetzt',
    takeBack: 'Wieder herunternehmen',
    choice: (label, code, state) => `${label}, ${code}, ${state}`,
    lines: 'Auf dem Tablett',
    linesCount: (count) => `Auf dem Tablett (${count})`,
    linesHint:
      'Was zugelassen wurde. Sterilbarrieren prüft das Auge; Etikett und örtliche Vorschriften gehen vor.',
    runningTotal: (pieces, bottles) =>
      `${pieces} Stück, ${bottles} ${bottles === 1 ? 'Flasche' : 'Flaschen'}`,
    empty: 'Noch nichts.',
    lot: (code) => `Charge ${code}`,
    pieces: (count) => `${count} Stück`,
    takeOff: 'Herunternehmen',
    takeOneOff: 'Eines herunternehmen',
    takeOffOf: (label, pieces) => `${pieces > 1 ? 'Eines herunternehmen' : 'Herunternehmen'}: ${label}`,
    lacking: 'Fehlt noch:',
    gap: (count, label) => (count === 1 ? label : `${count} × ${label}`),
    moreLacking: (count) => `${count} weitere`,
    nothingLacking: 'Von der Packliste fehlt nichts.',
    finish: 'Abschließen',

    mixes: 'Mischungen',
    mixesCount: (count) => `Mischungen (${count})`,
    newMix: 'Neue Mischung',
    mixNumber: (number) => `Mischung ${number}`,
    bottlesOf: (mix) => `Flaschen für ${mix}`,
    noBottles:
      'Noch liegt kein Pigment auf dem Tablett. Scannen Sie zuerst die Flasche, damit ihr Datum geprüft wird.',
    drops: (_count, written) => `${written} Tropfen`,
    microlitres: (written) => `etwa ${written} µl`,
    dropMore: '+1 Tropfen',
    dropMoreOf: (label) => `+1 Tropfen ${label}`,
    dropBack: '−1',
    dropBackOf: (label) => `−1 Tropfen ${label}`,
    totalOf: (mix, amount) => `${mix}: ${amount}`,
  },

  lastVisit: {
    title: 'Letzter Besuch',
    none: 'Es ist kein früherer Besuch aufgezeichnet, für den gemischt wurde.',
    was: (kind, procedure, day) => `${procedure}, ${kind}, am ${day}.`,
    noMix: 'Damals wurde nichts gemischt.',
    mix: (label) => `Damals gemischt: ${label}`,
    fromLot: (code) => (code === null ? 'aus einer Charge ohne Code' : `aus Charge ${code}`),
    noLonger: {
      held: 'jetzt gesperrt',
      finished: 'aufgebraucht',
      'practice only': 'nur zum Üben',
      expired: 'abgelaufen',
      'open too long': 'zu lange offen',
    },
    onTray: 'Auf dem Tablett: dieselbe Flasche.',
    otherBottle: (label) => `Stattdessen auf dem Tablett: eine andere Flasche dieser Charge, ${label}.`,
    otherLot: (code) =>
      `Stattdessen auf dem Tablett: eine andere Charge, ${code}. Vergleichen Sie die Farbe.`,
    scanIt: (code) =>
      code === null
        ? 'Nicht auf dem Tablett: Scannen Sie die Flasche.'
        : `Nicht auf dem Tablett: Scannen Sie die Flasche der Charge ${code}.`,
    takeLot: (code, label) =>
      `Nehmen Sie stattdessen ${code === null ? label : `Charge ${code} (${label})`} und scannen Sie sie.`,
    nothingInstead: 'Keine andere Flasche davon, die verwendet werden darf, ist da.',
    repeat: (leftOut) =>
      leftOut === 0
        ? 'Noch einmal mischen'
        : `Noch einmal mischen, ohne ${leftOut === 1 ? 'das, was nicht auf dem Tablett liegt' : `die ${leftOut}, die nicht auf dem Tablett liegen`}`,
    repeated: 'Noch einmal gemischt',
  },

  takeOver: {
    open: 'Jemand anderes übernimmt',
    title: 'Wer übernimmt?',
    lead: 'Dieses Tablett bleibt offen. Was ab jetzt gescannt und unterschrieben wird, gehört der neuen Person.',
    waiting: (count) =>
      `${count} ${count === 1 ? 'Eingabe wartet' : 'Eingaben warten'} darauf, gesendet zu werden. Was gescannt wurde, bleibt bei der Person, die es gescannt hat, und wird gesendet, wenn sie hier wieder angemeldet ist.`,
    noTablet: 'Dieses Gerät ist kein gemeinsames Tablet mehr. Melden Sie sich ab und mit Namen wieder an.',
  },

  reasonWords: {
    recalled: 'Zurückgerufen',
    'on hold': 'Gesperrt',
    expired: 'Abgelaufen',
    'open too long': 'Zu lange offen',
    'practice only': 'Nur zum Üben',
    'already used': 'Schon verwendet',
    'none left': 'Nichts mehr da',
    'no date known': 'Kein Datum bekannt',
    'date differs from the record': 'Zwei Daten',
    'out of date before the touch-up': 'Zu alt für die Nachbehandlung',
    'an earlier-expiring one is here': 'Ein älteres ist da',
    'another bottle is open': 'Eine andere ist offen',
    "another artist's": 'Gehört jemand anderem',
    'not on the kit list': 'Nicht auf der Packliste',
    'another one?': 'Ein weiteres?',
    'which container?': 'Welche Flasche oder Schachtel?',
    'which lot?': 'Welche Charge?',
  },

  whose: {
    label: 'der Haltbarkeit nach dem Öffnen auf dem Etikett',
    assumed: 'der Haltbarkeit nach dem Öffnen, die dieses Studio annimmt',
    'sending studio': 'Angabe des Studios, aus dem es kam',
    none: 'der Haltbarkeit nach dem Öffnen',
  },
};
