import type { AlertDestinationView } from '../../../alerts/destinations/alert-destinations.views.js';
import type { AlertPreferenceView } from '../../../alerts/preferences/alert-preferences.views.js';

export const channelsTexts = {
  /** Where the alerts of a studio go, for those who run it. */
  channels: {
    title: 'Where alerts go',
    lead: 'To whom and where the studio’s alerts are sent. All of them stand under Alerts in any case.',

    stopped: 'Stopped',
    stoppedHint:
      'Nothing goes there any more. Each says why; let it go on once the cause is mended, or remove it.',
    whose: (name: string) => `of ${name}`,
    kinds: {
      mail: 'e-mail',
      webhook: 'webhook',
      push: 'browser',
    } satisfies Record<AlertDestinationView['kind'], string>,

    order: 'Order of people',
    orderHint:
      'An urgent alert goes to the first. Whoever answers it ends that; otherwise it goes on to the next.',
    orderAssumed: 'Nothing was chosen yet: managers are told first, then owners, as they came.',
    handsOn: 'Hand on what nobody answers',
    minutes: 'Minutes until it goes on',
    minutesHint: 'From 5 to 1440.',
    notHandedOn: 'Not handed on: only the first is told, and whoever chose to be told at once.',
    hasLeft: 'works here no more',
    people: 'Who is told, in this order',
    orderNow: 'As it stands now',
    emptyOrder: 'Nobody is named: managers are told first, then owners, as they came.',
    noOrder: 'Nobody is told of what is urgent: nobody here is a manager or owner.',
    upOf: (name: string) => `Move ${name} up`,
    takeOut: 'Take out',
    takeOutOf: (name: string) => `Take out ${name}`,
    addPerson: 'Add somebody at the end',
    choose: 'choose',
    nothingLeads: 'is told nothing: no address, no browser',

    staff: 'People',
    staffHint: 'Each chooses for themselves how they are told. Here you can give them an address.',
    toldFrom: {
      urgent: 'urgent ones',
      warning: 'urgent ones and what is soon',
      notice: 'all of them',
      never: 'none one by one',
    } satisfies Record<AlertPreferenceView['toldFrom'], string>,
    atOnce: 'urgent ones at once',
    daily: 'a summary each morning',
    noSummary: 'no summary',
    isAssumed: 'nothing chosen, assumed of the role',
    addresses: (count: number) => (count === 1 ? 'one address' : `${count} addresses`),
    browsers: (count: number) => (count === 1 ? 'one browser' : `${count} browsers`),
    nothing: 'Nothing is sent: no address and no browser of theirs is told.',
    giveAddress: 'Add an address',
    giveAddressOf: (name: string) => `Add an address for ${name}`,
    addressesOf: (name: string) => `Addresses and browsers of ${name}`,

    webhooks: 'Webhooks',
    webhooksHint:
      'Another program is told by a signed message (Standard Webhooks). It checks the signature by a secret that is shown once.',
    noWebhooks: 'No webhook is told.',
    from: (severity: string) => `from “${severity}” on`,
    add: 'Add a webhook',
    addHint: 'Its secret is shown right after.',
    name: 'Name',
    nameHint: 'What you call it, such as the program that is told.',
    url: 'Address',
    urlHint:
      'Beginning with https://. Addresses inside the own network are refused unless whoever runs Lotward allows them.',
    minimum: 'From which severity on',
    change: 'Change',
    changeOf: (name: string) => `Change ${name}`,
    rotate: 'New secret',
    rotateOf: (name: string) => `New secret for ${name}`,
    rotateQuestion:
      'Messages are signed with both for one more day; put the new one into the receiver until then.',
    secretOf: (name: string) => `The secret of ${name}`,
    secret: 'Secret',
    secretDetail: 'Copy it now into the receiver, it is not shown again.',
    oldUntil: (when: string) => `The one before signs too until ${when}.`,
  },
};
