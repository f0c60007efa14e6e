import type { plansTexts as english } from '../en/plans.js';

export const plansTexts: typeof english = {
  plans: {
    pages: { plan: 'Bestellplan' },
    title: 'Was zu bestellen ist',
  },
};
