export const offlineTexts = {
  offline: {
    notReached: (since: string) => `The service has not been reached since ${since}.`,
    goesOn:
      'Go on laying trays: scans are judged on this device by what it last knew, kept here, and sent when the service is reached again. Completing a session needs the service.',
    knownAsOf: (time: string) => `This device knows the day as of ${time}.`,
    lookingUp: 'This device looks the day up …',
    nothingKnown: 'This device knows nothing of the day yet, so it cannot judge without network.',
    leftOut: (count: number) => `${count} containers are left out, since there are so many.`,
    waiting: (count: number) =>
      `${count} ${count === 1 ? 'entry waits' : 'entries wait'} here to be sent; each will count once.`,
    othersWaiting: (count: number) =>
      `${count} ${count === 1 ? 'entry' : 'entries'} of somebody else ${count === 1 ? 'waits' : 'wait'} here, and will be sent when they sign in on this device.`,
    notKept:
      'This browser keeps nothing for Lotward: its storage is full, or it is a private window. What waits would be lost with this page. Leave it open until the service is reached.',
    judgedHere: 'Judged on this device, by what it last knew; the service has not seen it yet.',
    notKnownHere:
      'This device does not know what was shown, and the service is not reached. It is kept and judged later. Lay it aside until then, or take something that is known.',
    judgedOtherwise: (label: string | null, when: string, here: string | null, there: string) =>
      `${label ?? 'A scan'} of ${when}: ${here === null ? '' : `judged here “${here}”, `}by the service “${there}”.`,
    refusedThere: (label: string | null, when: string) =>
      `${label ?? 'An entry'} of ${when} was not taken by the service.`,
    doTakeOff:
      'By the record it is not on the tray. Take it off; if it has touched the client, say so when the session is completed: that is recorded in any case.',
    doLay: 'By the record it lies on the tray now. If it does not, take it off on the page.',
    seen: 'I have seen it',
  },
};
