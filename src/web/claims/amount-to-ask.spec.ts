import { expect, it } from 'vitest';
import { amountToAsk } from './amount-to-ask.js';

it('asks for what was paid, unless it was paid in another currency or is not known', () => {
  expect(amountToAsk({ amountMinor: 1_250, currency: 'EUR' }, 'EUR', 'de')).toBe('12,50');
  expect(amountToAsk({ amountMinor: 1_250, currency: 'CHF' }, 'EUR', 'de')).toBe('');
  expect(amountToAsk({ amountMinor: null, currency: null }, 'EUR', 'de')).toBe('');
});
