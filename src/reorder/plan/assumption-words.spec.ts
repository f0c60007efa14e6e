import { expect, it } from 'vitest';
import { assumptionWords } from './assumption-words.js';

it('says an assumption with its figures, and one it has no words for by its code', () => {
  expect(assumptionWords({ code: 'service target assumed', figures: { perMille: 955 } }, 'EUR')).toBe(
    'No service target is set: 95.5 % of the need is to be met.',
  );
  expect(assumptionWords({ code: 'order cost assumed', figures: { costMinor: 500 } }, 'EUR')).toBe(
    'No cost of placing an order is set: EUR 5.00 is taken.',
  );
  expect(assumptionWords({ code: 'something new', figures: { days: 3, share: 0.123 } }, 'EUR')).toBe(
    'something new: days 3, share 0.12.',
  );
  expect(assumptionWords({ code: 'something new', figures: {} }, 'EUR')).toBe('something new.');
});
