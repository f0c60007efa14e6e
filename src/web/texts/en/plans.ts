export const plansTexts = {
  /** What to order, and why. */
  plans: {
    pages: { plan: 'Plan' },
    title: 'What to order',
  },
};
