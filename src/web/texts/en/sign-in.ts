import type { OwnSignInView } from '../../../identity/sign-in/sign-in.views.js';

type Method = OwnSignInView['method'];

export const signInTexts = {
  setUp: {
    title: 'Set up Lotward',
    lead: 'This link came from the console where Lotward was started, and works once. It makes you the owner: you invite the others.',
    studio: 'The studio',
    studioName: 'Name of the studio',
    timeZone: 'Time zone',
    timeZoneHint: 'Use-by dates end with the day in this zone. Taken from this device.',
    you: 'You, the owner',
    yourName: 'Your name',
    yourNameHint: 'As colleagues see it in the record.',
    password: 'Password',
    submit: 'Set up and sign in',
    noSecret: 'The link is needed whole',
    noSecretDetail:
      'Open the link that was printed on the console where Lotward was started, with all that stands behind the #. It works for an hour.',
    newLink: 'This prints a new one there:',
    done: 'The set-up was done already',
    doneDetail: 'Somebody is owner here. Sign in, or ask the owner for an invitation.',
    toSignIn: 'To signing in',
  },

  signIn: {
    title: 'Sign in',
    again: 'You are signed out: the time was over, or it was ended elsewhere. Sign in to go on here.',
    password: 'Password',
    submit: 'Sign in',
    withPasskey: 'Sign in with a passkey',
    forgotten: 'Forgotten the password? The owner makes you a new link. The owner gets one on the console by',
    setUpOpen: 'Nobody has an account here yet',
    setUpOpenDetail: 'Open the link that was printed on the console where Lotward was started.',
    onceMore: 'Sign in again',
    onceMoreAs: (name: string) => `As ${name}; then it goes on.`,
  },

  invitation: {
    title: (studio: string) => `Come in to ${studio}`,
    lead: 'You were invited. Choose how you sign in from now on; the link works once.',
    titleNewPassword: 'Choose a new password',
    leadNewPassword: (studio: string) =>
      `This link, from ${studio}, works once. With the new password you are signed out everywhere else.`,
    newPassword: 'New password',
    password: 'Password',
    submit: 'Accept and sign in',
    submitNewPassword: 'Save and sign in',
    joinAs: (name: string) => `You are signed in here as ${name}.`,
    join: (name: string) => `Join as ${name}`,
    newAccount: 'Or choose a new sign-in name and password; this browser then changes over to it.',
    haveAccount: 'You have an account here already?',
    signInFirst: 'Sign in, then join',
    noSecret: 'The link is needed whole',
    noSecretDetail: 'Open the link you were given, with all that stands behind the #.',
    unusable: 'This link cannot be used',
  },

  methods: {
    password: 'with the password',
    passkey: 'with a passkey',
    'one-time link': 'by a one-time link',
    badge: 'by the badge',
    PIN: 'by the PIN',
  } satisfies Record<Method, string>,
};
