export const trayTexts = {
  tray: {
    title: 'Tray',
    of: (reference: string, procedure: string) => `For ${reference}, ${procedure}`,
    scan: 'Scan',
    scanHint: 'A hand-held scanner types here. Without one, type the lot or the code of the label.',
    judge: 'Judge it',
    notInSetup: (state: string) => `This session is ${state}, so nothing is laid out for it now.`,
    usableThrough: (day: string) => `Usable through ${day}`,
    takeInstead: (label: string, code: string) => `Take ${label}, ${code}, instead.`,
    waiting: (count: number) =>
      `${count} ${count === 1 ? 'scan waits' : 'scans wait'} to be sent. Keep this page open; sent again, each counts once.`,
    sendAgain: 'Send again',
    oneMore: '+1, another piece',
    openIt: 'I open it now',
    choice: (label: string, code: string, state: string) => `${label}, ${code}, ${state}`,
    lines: 'On the tray',
    linesHint:
      'What was admitted. Sterile barriers are checked by eye; the label and local codes come first.',
    empty: 'Nothing yet.',
    lot: (code: string) => `lot ${code}`,
    pieces: (count: number) => `${count} ${count === 1 ? 'piece' : 'pieces'}`,
    takeOff: 'Take off',
    takeOffOf: (label: string) => `Take off ${label}`,
    lacking: 'Still lacking',
    lackingHint: 'What the kit list asks for.',
  },
};
