import { describe, expect, it } from 'vitest';
import { majorText, minorUnits } from './minor-units.js';

describe('an amount in a field', () => {
  it('is written as its language writes it, without groups, and read again as it was', () => {
    expect(majorText(690, 'EUR', 'en')).toBe('6.90');
    expect(majorText(690, 'EUR', 'de')).toBe('6,90');
    expect(majorText(1_234_500, 'JPY', 'de')).toBe('1234500');
    for (const [minor, currency] of [
      [0, 'EUR'],
      [5, 'EUR'],
      [123_456_789, 'EUR'],
      [1_200, 'JPY'],
      [1_234, 'KWD'],
    ] as const) {
      for (const language of ['en', 'en-GB', 'de', 'de-CH']) {
        expect(minorUnits(majorText(minor, currency, language), currency)).toBe(minor);
      }
    }
  });

  it('is none where groups are written, or more decimals than the currency has', () => {
    for (const text of ['1.000,50', '1,000.50', '1.000', '6.901', 'six', '-1']) {
      expect(minorUnits(text, 'EUR')).toBeUndefined();
    }
    expect(minorUnits('', 'EUR')).toBeNull();
  });
});
