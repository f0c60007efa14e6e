export const recordsTexts = {
  records: {
    title: 'Records',
  },
};
