import { expect, it } from 'vitest';
import { languageFor, localeFor } from './languages.js';

it.each([
  [['de-AT', 'en'], 'de'],
  [['fr-FR', 'de', 'en-US'], 'de'],
  [['fr-FR'], 'en'],
  [[], 'en'],
])('speaks to a reader of %j in %s', (preferred, language) => {
  expect(languageFor(preferred)).toBe(language);
});

it('writes dates in the variant of the reader', () => {
  expect(localeFor('en', 'en-GB', ['de', 'en-NZ', 'en-US'])).toBe('en-NZ');
  expect(localeFor('de', 'de-DE', ['de', 'en-NZ'])).toBe('de-DE');
});
