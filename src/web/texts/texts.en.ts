import type { Role } from '../../identity/permissions.js';
import type { OwnSignInView } from '../../identity/sign-in/sign-in.views.js';

type Method = OwnSignInView['method'];

/** Everything the app says, in English. Another language is a file like this one, of the type `Texts`. */
export const english = {
  /** BCP 47; dates and numbers are written by it. */
  language: 'en-GB',

  app: {
    name: 'Lotward',
    motto: 'Which lots arrived, what is in date, what was used on whom.',
    toContent: 'To the content',
    pages: 'Pages',
    loading: 'Loading …',
    tryAgain: 'Try again',
    cancel: 'Leave it',
    close: 'Close',
    unreachable:
      'The service did not answer, so it is not known whether anything was changed. Look whether it runs and this device has a network, then try again.',
    waiting: (seconds: number) => `You can try again in ${seconds} ${seconds === 1 ? 'second' : 'seconds'}.`,
    noSuchPage: 'There is no such page',
    noSuchPageDetail: 'Look at the address again, or go to the start.',
    toStart: 'To the start',
    notYours: 'Not for your role',
    notYoursDetail: 'In this studio your role has no part in this page. The owner can change what you are.',
  },

  shownOnce: {
    copy: 'Copy',
    copied: 'Copied',
    copyFailed: 'Copying did not work: it is marked now, copy it by hand.',
    done: 'I have it',
  },

  password: {
    show: 'Show the password',
    hint: 'At least 12 characters. A few words that do not belong together are easy to keep in mind.',
  },

  signInName: {
    label: 'Sign-in name',
    hint: 'By this you sign in. An e-mail address is easy to remember; nothing is ever sent to it.',
  },

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
    or: 'or',
    forgotten: 'Forgotten the password? The owner makes you a new link. The owner gets one on the console by',
    setUpOpen: 'Nobody has an account here yet',
    setUpOpenDetail: 'Open the link that was printed on the console where Lotward was started.',
    passkeyFailed:
      'The passkey was not used: it was cancelled, took too long, or this device has none for this address. Try again, or sign in with the password.',
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

  frame: {
    studio: 'Studio',
    start: 'Start',
    people: 'People',
    programs: 'Programs',
    account: 'My account',
    signOut: 'Sign out',
  },

  start: {
    title: 'Signed in',
    as: (name: string) => `As ${name}.`,
    onTablet: 'Somebody is signed in at this shared tablet, for tray work.',
    studios: 'Your studios',
    studiosHint: 'Where you work, as what, and what that allows.',
    noStudios: 'At present you have no part in any studio. Ask an owner to invite you.',
    until: (day: string) => `until ${day}`,
    may: 'What you may do there',
    forPrograms: 'For programs',
    forProgramsHint: 'Everything that is recorded here can be written and read over HTTP.',
    apiDescription: 'Description of the API',
    openApi: 'OpenAPI 3.1 document',
  },

  roles: {
    owner: 'Owner',
    manager: 'Manager',
    artist: 'Artist',
    auditor: 'Auditor',
    'chain manager': 'Chain manager',
  } satisfies Record<Role, string>,

  roleHints: {
    owner: 'May do everything, also decide who comes in and have clients’ data erased.',
    manager: 'Runs the desk: stock, products, orders and holds; may stand in for an artist.',
    artist: 'Plans and works sessions, lays out trays, receives and opens stock.',
    auditor: 'Only reads, and does not see who a client is. Has a last day, such as that of an inspection.',
    'chain manager': 'Leads the studios of a chain; does not see who a client is.',
  } satisfies Record<Role, string>,

  /** What a permission is called, where its own English name does not do. */
  permissions: {} as Record<string, string | undefined>,

  methods: {
    password: 'with the password',
    passkey: 'with a passkey',
    'one-time link': 'by a one-time link',
    badge: 'by the badge',
    PIN: 'by the PIN',
  } satisfies Record<Method, string>,

  account: {
    title: 'My account',
    lead: (name: string) => `You sign in as ${name}.`,
    signIns: 'Where you are signed in',
    signInsHint: 'One you do not know? Sign it out, then change the password.',
    thisOne: 'this browser',
    sharedTablet: 'shared tablet',
    since: (when: string, how: string) => `Since ${when}, ${how}`,
    lastSeen: (when: string) => `Last seen ${when}`,
    end: 'Sign out',
    endOf: (device: string) => `Sign out ${device}`,
    endOthers: 'Sign out everywhere else',
    endOthersQuestion: 'Every other browser is signed out at once; this one stays.',
    onlyHere: 'You are signed in nowhere else.',
    unknownDevice: 'A program that does not say what it is',
    device: (browser: string, system: string) => `${browser} on ${system}`,
    password: 'Password',
    passwordHint: 'A new password signs you out everywhere else.',
    current: 'Current password',
    next: 'New password',
    change: 'Change the password',
    changed: 'The password is changed. You are signed out everywhere else.',
    passkeys: 'Passkeys',
    passkeysHint:
      'A passkey stays on your phone, computer or security key and is opened by finger, face or PIN. It cannot be guessed, nor be given to a wrong site.',
    noPasskeys: 'You have none yet.',
    passkeyName: 'Name of the passkey',
    passkeyNameHint: 'So that you know it again, such as “my phone”.',
    addPasskey: 'Add a passkey',
    passkeyAdded: (name: string) => `The passkey “${name}” is added.`,
    removePasskey: 'Remove',
    removePasskeyOf: (name: string) => `Remove ${name}`,
    removePasskeyQuestion: (name: string) =>
      `“${name}” is accepted here no more. Remove it from the device too.`,
    passkeyMadeAt: (when: string) => `Added ${when}`,
    passkeyUsedAt: (when: string) => `last used ${when}`,
    passkeyNeverUsed: 'not used yet',
    passkeysUnsupported:
      'This browser offers no passkeys at this address: they need https, or an address such as localhost.',
    passkeyNotMade: 'No passkey was made: it was cancelled, took too long, or this device has one already.',
  },

  people: {
    title: 'People',
    lead: 'Who works here and as what. Each comes in by a link of their own.',
    list: 'Who works here',
    listHint: 'A role, a last day and leaving hold at once, everywhere.',
    you: 'you',
    signsIn: 'signs in',
    neverSignedIn: 'has not come in yet',
    until: (day: string) => `until ${day}`,
    left: 'left',
    noName: 'Name erased',
    invite: 'Make a link',
    inviteOf: (name: string) => `Make a link for ${name}`,
    change: 'Change',
    changeOf: (name: string) => `Change ${name}`,
    add: 'Add a person',
    addHint: 'They get a link by which they come in; it is shown here next.',
    name: 'Name',
    role: 'Role',
    lastDay: 'Last day',
    lastDayHint: 'Left empty: no end. An auditor has one.',
    works: 'Works here',
    worksHint: 'Who left cannot do anything any more; what they recorded stays.',
    addSubmit: 'Add and make the link',
    save: 'Save',
    linkTitle: (name: string) => `The link for ${name}`,
    linkDetail: (when: string) =>
      `It works once, until ${when}, and is shown only now. Give it to nobody but this person: whoever opens it comes in. Earlier links for them work no more.`,
    linkLabel: 'Link',
    makeNewPassword:
      'They sign in already: with the link they choose a new password and are signed out everywhere.',
  },

  programs: {
    title: 'Programs',
    lead: 'A token lets a program act as you: only in this studio, only what you tick, only so long.',
    list: 'Tokens',
    listHint: 'Shown are the tokens of everybody in this studio.',
    none: 'There are none yet.',
    ofYou: 'acts as you',
    ofOther: (name: string) => `acts as ${name}`,
    until: (when: string) => `until ${when}`,
    expired: (when: string) => `expired ${when}`,
    revoked: (when: string) => `revoked ${when}`,
    used: (when: string) => `last used ${when}`,
    neverUsed: 'never used',
    scopes: (count: number) => `${count} ${count === 1 ? 'permission' : 'permissions'}`,
    revoke: 'Revoke',
    revokeOf: (name: string) => `Revoke ${name}`,
    revokeQuestion: (name: string) => `The program that has “${name}” is let in no more, from now on.`,
    make: 'Make a token',
    makeHint: 'Tick as little as the program needs.',
    name: 'What it is for',
    days: 'Days it works',
    daysHint: 'From 1 to 366.',
    permissions: 'What it may do',
    submit: 'Make the token',
    tickSome: 'Tick at least one.',
    madeTitle: (name: string) => `The token “${name}”`,
    madeDetail: (when: string) =>
      `It works until ${when} and is shown only now. The program sends it with each request:`,
    madeLabel: 'Token',
  },
};

export type Texts = typeof english;
