import type { commonTexts as english } from '../en/common.js';

export const commonTexts: typeof english = {
  app: {
    name: 'Lotward',
    motto: 'Welche Chargen kamen, was haltbar ist, was an wem verwendet wurde.',
    toContent: 'Zum Inhalt',
    pages: 'Seiten',
    loading: 'Wird geladen …',
    tryAgain: 'Noch einmal versuchen',
    more: 'Mehr zeigen',
    pageFailed: 'Diese Seite konnte nicht gezeigt werden',
    pageFailedDetail:
      'Vielleicht wurde Lotward erneuert, während die Seite offen war, oder dieses Gerät hat kein Netz. Nichts, was aufgezeichnet wurde, ist verloren. Laden Sie die Seite neu.',
    loadAnew: 'Seite neu laden',
    cancel: 'Doch nicht',
    save: 'Speichern',
    close: 'Schließen',
    waiting: (seconds) =>
      `In ${seconds} ${seconds === 1 ? 'Sekunde' : 'Sekunden'} können Sie es noch einmal versuchen.`,
    noSuchPage: 'Diese Seite gibt es nicht',
    noSuchPageDetail: 'Sehen Sie die Adresse noch einmal an, oder gehen Sie zum Anfang.',
    toStart: 'Zum Anfang',
    notYours: 'Nicht für Ihre Rolle',
    notYoursDetail:
      'In diesem Studio hat Ihre Rolle an dieser Seite keinen Anteil. Die Inhaberin oder der Inhaber kann Ihre Rolle ändern.',
    language: 'Sprache',
    brightness: 'Helligkeit',
    brightnesses: { auto: 'wie das Gerät', light: 'hell', dark: 'dunkel' },
  },

  problems: {
    unreachable:
      'Der Dienst hat nicht geantwortet; ob etwas geändert wurde, ist daher nicht bekannt. Sehen Sie nach, ob er läuft und ob dieses Gerät ein Netz hat, und versuchen Sie es noch einmal.',
    'passkey-not-used':
      'Es wurde kein Passkey verwendet: Es wurde abgebrochen, dauerte zu lange, oder dieses Gerät hat keinen für diese Adresse. Versuchen Sie es noch einmal, oder melden Sie sich mit dem Passwort an.',
    'passkey-not-made':
      'Es wurde kein Passkey angelegt: Es wurde abgebrochen, dauerte zu lange, oder dieses Gerät hat schon einen für Sie.',
    'sign-in-needed': 'Sie sind nicht angemeldet. Melden Sie sich an.',
    'recent-sign-in-needed': 'Dafür müssen Sie sich noch einmal anmelden.',
    'passkey-needed': 'Hier genügt ein Passwort allein nicht. Melden Sie sich mit einem Passkey an.',
    'unusable-link':
      'Dieser Link gilt nicht mehr: Er wurde schon verwendet, ist abgelaufen oder durch einen neueren ersetzt. Bitten Sie um einen neuen.',
    'not-found': 'Das gibt es hier nicht oder nicht mehr. Laden Sie die Seite neu.',
    'not-allowed': 'Das darf Ihre Rolle in diesem Studio nicht.',
    'stale-version':
      'Inzwischen hat jemand anderes dies geändert; Ihre Änderung wurde nicht gespeichert. Sehen Sie nach, was jetzt gilt, und ändern Sie es dann noch einmal.',
    'too-many-requests': 'Das waren zu viele Anfragen in kurzer Zeit. Warten Sie einen Augenblick.',
    'not-ready': 'Der Dienst ist noch nicht bereit. Versuchen Sie es gleich noch einmal.',
    'internal-error':
      'Im Dienst ist etwas fehlgeschlagen; nichts wurde geändert. Versuchen Sie es noch einmal, und sehen Sie in sein Protokoll, wenn es wieder geschieht.',
    'body-too-large': 'Das ist zu groß, um angenommen zu werden. Teilen Sie es auf.',
    'request-id-reused':
      'Unter dieser Kennung wurde schon etwas anderes aufgezeichnet. Nichts wurde geändert; laden Sie die Seite neu.',
  },

  problemsInBrief: {
    'sign-in-failed': 'Die Anmeldung ist nicht gelungen.',
    'invalid-fields': 'Einige Angaben können so nicht angenommen werden.',
    'malformed-request': 'Die Anfrage war nicht zu lesen.',
    'unsupported-media-type': 'Diese Art von Datei wird hier nicht gelesen.',
    'cross-site-request': 'Die Anfrage kam von einer fremden Seite.',
    'passkeys-unavailable': 'Passkeys gehen an dieser Adresse nicht.',
    'unusable-passkey': 'Dieser Passkey kann nicht verwendet werden.',
    'unusable-pin': 'Diese PIN kann nicht verwendet werden.',
    'unusable-password': 'Dieses Passwort kann nicht verwendet werden.',
    'wrong-state': 'In diesem Zustand geht das nicht.',
    'already-exists': 'Das gibt es schon.',
    'unusable-date': 'Dieses Datum kann nicht verwendet werden.',
    'unusable-time': 'Diese Zeit kann nicht verwendet werden.',
    'unusable-symbol': 'Dieses Symbol kann nicht verwendet werden.',
    'unknown-symbol': 'Dieses Symbol ist hier nicht bekannt.',
    'unusable-quantity': 'Diese Menge kann nicht verwendet werden.',
    'same-code-other-use-by': 'Diese Charge ist mit einem anderen „Verwendbar bis“ bekannt.',
    'not-enough-stock': 'So viel ist nicht da.',
    'decision-needed': 'Hier ist eine Entscheidung nötig.',
    'second-person-needed': 'Hier ist eine zweite Person nötig.',
    'erasure-not-listed': 'Die Löschung steht nicht in der Liste der Löschungen.',
    'unusable-file': 'Diese Datei kann nicht übernommen werden.',
  },

  shownOnce: {
    copy: 'Kopieren',
    copied: 'Kopiert',
    copyFailed: 'Das Kopieren ging nicht: Es ist jetzt markiert, kopieren Sie es von Hand.',
    done: 'Ich habe es',
  },

  password: {
    show: 'Passwort zeigen',
    hint: 'Mindestens 12 Zeichen. Ein paar Wörter, die nicht zusammengehören, merkt man sich leicht.',
  },

  signInName: {
    label: 'Anmeldename',
    hint: 'Damit melden Sie sich an. Eine E-Mail-Adresse merkt man sich leicht; es wird nie etwas dorthin geschickt.',
  },
};
