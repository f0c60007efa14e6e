import { describe, expect, it } from 'vitest';
import { namedSigns } from './named-signs.js';

describe('the signs that a notice names', () => {
  it.each([
    ['Red, swollen skin; redness, itching and pus.', ['redness', 'swelling', 'itching', 'pus or oozing']],
    ['Es kann zu Rötungen, Hautausschlag und Fieber kommen.', ['redness', 'rash', 'fever']],
    ['Allergic reactions and granulomas.', ['lumps', 'an allergic reaction']],
    ['Wrong label.', []],
    ['A painter used the cream.', []],
  ])('are found in either language: %s', (text, signs) => {
    expect(namedSigns(text, 'en')).toEqual(signs);
  });

  it('are told in the language of the message', () => {
    expect(namedSigns('redness and fever', 'de')).toEqual(['Rötung', 'Fieber']);
  });
});
