import type { channelsTexts as english } from '../en/channels.js';

export const channelsTexts: typeof english = {
  channels: {
    title: 'Wohin Hinweise gehen',
    lead: 'An wen und wohin die Hinweise des Studios geschickt werden. Unter Hinweise stehen ohnehin alle.',

    stopped: 'Beendet',
    stoppedHint:
      'Dorthin geht nichts mehr. Bei jedem steht, warum; lassen Sie es weitergehen, wenn der Grund behoben ist, oder entfernen Sie es.',
    whose: (name) => `von ${name}`,
    kinds: { mail: 'E-Mail', webhook: 'Webhook', push: 'Browser' },

    order: 'Reihenfolge der Personen',
    orderHint:
      'Ein dringender Hinweis geht an die erste Person. Wer ihn beantwortet, beendet das; sonst geht er an die nächste.',
    orderAssumed:
      'Es wurde noch nichts gewählt: Zuerst erfahren es die Leitungen, dann die Inhaberinnen und Inhaber, wie sie dazukamen.',
    handsOn: 'Weitergeben, was niemand beantwortet',
    minutes: 'Minuten, bis er weitergeht',
    minutesHint: 'Von 5 bis 1440.',
    notHandedOn:
      'Wird nicht weitergegeben: Es erfährt nur die erste Person, und wer es sofort erfahren will.',
    hasLeft: 'arbeitet nicht mehr hier',
    people: 'Wer es erfährt, in dieser Reihenfolge',
    orderNow: 'So steht es jetzt',
    emptyOrder:
      'Niemand ist genannt: Zuerst erfahren es die Leitungen, dann die Inhaberinnen und Inhaber, wie sie dazukamen.',
    noOrder: 'Niemand erfährt, was dringend ist: Hier hat niemand die Leitung, und niemandem gehört es.',
    upOf: (name) => `Nach oben: ${name}`,
    takeOut: 'Herausnehmen',
    takeOutOf: (name) => `Herausnehmen: ${name}`,
    addPerson: 'Jemanden ans Ende setzen',
    choose: 'wählen',
    nothingLeads: 'erfährt nichts: keine Adresse, kein Browser',

    staff: 'Personen',
    staffHint: 'Alle wählen selbst, wie sie es erfahren. Hier können Sie ihnen eine Adresse geben.',
    toldFrom: {
      urgent: 'Dringendes',
      warning: 'Dringendes und was bald ansteht',
      notice: 'alles',
      never: 'nichts einzeln',
    },
    atOnce: 'Dringendes sofort',
    daily: 'jeden Morgen eine Übersicht',
    noSummary: 'keine Übersicht',
    isAssumed: 'nichts gewählt, nach der Rolle angenommen',
    addresses: (count) => (count === 1 ? 'eine Adresse' : `${count} Adressen`),
    browsers: (count) => (count === 1 ? 'ein Browser' : `${count} Browser`),
    nothing: 'Es wird nichts geschickt: Keine Adresse und kein Browser bekommt Bescheid.',
    giveAddress: 'Adresse hinzufügen',
    giveAddressOf: (name) => `Adresse hinzufügen für ${name}`,
    addressesOf: (name) => `Adressen und Browser von ${name}`,

    webhooks: 'Webhooks',
    webhooksHint:
      'Ein anderes Programm erfährt es durch eine signierte Nachricht (Standard Webhooks). Es prüft die Signatur mit einem Geheimnis, das einmal gezeigt wird.',
    noWebhooks: 'Kein Webhook bekommt Bescheid.',
    from: (severity) => `ab „${severity}“`,
    add: 'Webhook hinzufügen',
    addHint: 'Sein Geheimnis wird gleich danach gezeigt.',
    name: 'Name',
    nameHint: 'Wie Sie ihn nennen, etwa nach dem Programm, das es erfährt.',
    url: 'Adresse',
    urlHint:
      'Beginnt mit https://. Adressen im eigenen Netz werden abgelehnt, außer wer Lotward betreibt, erlaubt sie.',
    minimum: 'Ab welcher Dringlichkeit',
    change: 'Ändern',
    changeOf: (name) => `Ändern: ${name}`,
    rotate: 'Neues Geheimnis',
    rotateOf: (name) => `Neues Geheimnis für ${name}`,
    rotateQuestion:
      'Nachrichten werden noch einen Tag lang mit beiden signiert; tragen Sie das neue bis dahin beim Empfänger ein.',
    secretOf: (name) => `Das Geheimnis von ${name}`,
    secret: 'Geheimnis',
    secretDetail: 'Kopieren Sie es jetzt zum Empfänger, es wird nicht noch einmal gezeigt.',
    oldUntil: (when) => `Das bisherige signiert noch bis ${when}.`,
  },
};
