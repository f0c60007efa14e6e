export const todayTexts = {
  day: {
    title: 'Today',
    lead: 'Whose tray is laid next. Clients stand here by their reference only.',
    list: 'Sessions of today',
    listHint: 'By the day of the studio.',
    none: 'Nothing is planned for today.',
    earlier: 'Trays still laid',
    earlierHint: 'Of other days, not finished yet.',
    setUp: 'Lay the tray',
    setUpOf: (reference: string) => `Lay the tray for ${reference}`,
    toTray: 'To the tray',
  },
};
