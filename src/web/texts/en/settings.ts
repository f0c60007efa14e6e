export const settingsTexts = {
  settings: {
    pages: {
      people: 'People',
      tablets: 'Tablets',
      programs: 'Programs',
      products: 'Products',
      companies: 'Makers and suppliers',
      configurations: 'Cartridges',
      places: 'Places',
    },
  },
};
