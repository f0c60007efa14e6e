import { expect, it } from 'vitest';
import { minorDigits, plainMoney, writtenMoney } from './written-money.js';

it.each([
  // ISO 4217: the minor unit of the yen has no digits, that of the Tunisian dinar three [M].
  [123_450, 'EUR', 'EUR 1,234.50', '1234.50'],
  [5, 'EUR', 'EUR 0.05', '0.05'],
  [0, 'CHF', 'CHF 0.00', '0.00'],
  [1_234, 'JPY', 'JPY 1,234', '1234'],
  [1_234, 'TND', 'TND 1.234', '1.234'],
  [99_999_999_999, 'EUR', 'EUR 999,999,999.99', '999999999.99'],
])('writes %i minor units of %s as %s', (minor, currency, written, plain) => {
  expect(writtenMoney(minor, currency)).toBe(written);
  expect(plainMoney(minor, currency)).toBe(plain);
});

it('never loses a minor unit of a sum that is an exact number', () => {
  for (const currency of ['EUR', 'JPY', 'TND']) {
    for (let minor = 0; minor < 4_000; minor += 1) {
      const back = Number(plainMoney(minor, currency).replace('.', ''));
      expect(back).toBe(minor);
    }
    expect(minorDigits(currency)).toBeGreaterThanOrEqual(0);
  }
});
