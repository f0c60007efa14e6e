export const stockTexts = {
  stock: {
    title: 'Stock',
  },
};
