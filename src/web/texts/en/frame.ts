import type { Role } from '../../../identity/permissions.js';

export const frameTexts = {
  frame: {
    studio: 'Studio',
    start: 'Start',
    today: 'Today',
    alerts: 'Alerts',
    stock: 'Stock',
    ordering: 'Ordering',
    recalls: 'Recalls',
    records: 'Records',
    settings: 'Settings',
    account: 'My account',
    signOut: 'Sign out',
    changePerson: 'Somebody else',
  },

  start: {
    title: 'Signed in',
    as: (name: string) => `As ${name}.`,
    onTablet: 'On a shared tablet, for tray work.',
    onTabletAs: (name: string) => `${name}, on a shared tablet, for tray work.`,
    passkeyNeeded:
      'This studio lets nobody in by a password alone. Add a passkey to your account, then sign in with it.',
    toAccount: 'To my account',
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
};
