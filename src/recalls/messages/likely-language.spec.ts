import { describe, expect, it } from 'vitest';
import { likelyLanguage } from './likely-language.js';

describe('the language a text is likely in', () => {
  it.each([
    ['The pigment may hold germs.', 'en'],
    ['Das Pigment kann Keime enthalten.', 'de'],
    ['Le pigment contient des germes.', null],
    ['Lot 12, 13', null],
  ])('%s', (text, language) => {
    expect(likelyLanguage(text)).toBe(language);
  });
});
