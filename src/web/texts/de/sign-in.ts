import type { signInTexts as english } from '../en/sign-in.js';

export const signInTexts: typeof english = {
  setUp: {
    title: 'Lotward einrichten',
    lead: 'Dieser Link kam von der Konsole, an der Lotward gestartet wurde, und gilt einmal. Er macht Sie zur Inhaberin oder zum Inhaber: Die anderen laden Sie ein.',
    studio: 'Das Studio',
    studioName: 'Name des Studios',
    timeZone: 'Zeitzone',
    timeZoneHint: '„Verwendbar bis“ endet mit dem Tag in dieser Zone. Von diesem Gerät übernommen.',
    you: 'Sie selbst',
    yourName: 'Ihr Name',
    yourNameHint: 'So, wie ihn die anderen in der Aufzeichnung sehen.',
    password: 'Passwort',
    submit: 'Einrichten und anmelden',
    noSecret: 'Der Link wird ganz gebraucht',
    noSecretDetail:
      'Öffnen Sie den Link, der an der Konsole ausgegeben wurde, an der Lotward gestartet wurde, mit allem, was hinter dem # steht. Er gilt eine Stunde.',
    newLink: 'Dies gibt dort einen neuen aus:',
    done: 'Eingerichtet ist es schon',
    doneDetail:
      'Dieses Lotward hat schon eine Inhaberin oder einen Inhaber. Melden Sie sich an, oder lassen Sie sich einladen.',
    toSignIn: 'Zur Anmeldung',
  },

  signIn: {
    title: 'Anmelden',
    again:
      'Sie sind abgemeldet: Die Zeit war um, oder es wurde anderswo beendet. Melden Sie sich an, um hier weiterzumachen.',
    password: 'Passwort',
    submit: 'Anmelden',
    withPasskey: 'Mit einem Passkey anmelden',
    forgotten:
      'Passwort vergessen? Die Inhaberin oder der Inhaber macht Ihnen einen neuen Link und bekommt den eigenen an der Konsole durch',
    setUpOpen: 'Hier hat noch niemand ein Konto',
    setUpOpenDetail:
      'Öffnen Sie den Link, der an der Konsole ausgegeben wurde, an der Lotward gestartet wurde.',
    onceMore: 'Noch einmal anmelden',
    onceMoreAs: (name) => `Als ${name}; dann geht es weiter.`,
  },

  invitation: {
    title: (studio) => `Willkommen bei ${studio}`,
    lead: 'Sie wurden eingeladen. Wählen Sie, wie Sie sich von jetzt an anmelden; der Link gilt einmal.',
    titleNewPassword: 'Ein neues Passwort wählen',
    leadNewPassword: (studio) =>
      `Dieser Link von ${studio} gilt einmal. Mit dem neuen Passwort werden Sie überall sonst abgemeldet.`,
    newPassword: 'Neues Passwort',
    password: 'Passwort',
    submit: 'Annehmen und anmelden',
    submitNewPassword: 'Speichern und anmelden',
    joinAs: (name) => `Sie sind hier als ${name} angemeldet.`,
    join: (name) => `Als ${name} beitreten`,
    newAccount:
      'Oder wählen Sie einen neuen Anmeldenamen und ein Passwort; dieser Browser wechselt dann dorthin.',
    haveAccount: 'Sie haben hier schon ein Konto?',
    signInFirst: 'Anmelden, dann beitreten',
    noSecret: 'Der Link wird ganz gebraucht',
    noSecretDetail: 'Öffnen Sie den Link, den Sie bekommen haben, mit allem, was hinter dem # steht.',
    unusable: 'Dieser Link kann nicht verwendet werden',
  },

  methods: {
    password: 'mit dem Passwort',
    passkey: 'mit einem Passkey',
    'one-time link': 'mit einem Einmal-Link',
    badge: 'mit dem Ausweis',
    PIN: 'mit der PIN',
  },
};
