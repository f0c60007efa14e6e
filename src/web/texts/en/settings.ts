export const settingsTexts = {
  settings: {
    pages: {
      people: 'People',
      tablets: 'Tablets',
      programs: 'Programs',
    },
  },
};
