import { expect, it } from 'vitest';
import type { SupplierTermsView } from '../../reorder/supply/supplier-terms.views.js';
import { german } from '../texts/de/german.js';
import { english } from '../texts/en/english.js';
import { wordsOfTerms } from './terms-words.js';

const taking = (medianDays: number, days95: number) =>
  ({
    orderWeekdays: [],
    minimumOrderMinor: null,
    deliveryCostMinor: null,
    freeDeliveryFromMinor: null,
    currency: 'EUR',
    leadTime: { medianDays, days95 },
  }) as unknown as SupplierTermsView;

it('tells how long orders usually take, and within how long 19 of 20 come', () => {
  expect(wordsOfTerms(taking(4, 6), english)).toBe('usually 4 days, 19 of 20 within 6 days');
  expect(wordsOfTerms(taking(4, 6), german)).toBe('meist 4 Tage, 19 von 20 binnen 6 Tagen');
  expect(wordsOfTerms(taking(1, 1), english)).toBe('takes 1 day');
});
