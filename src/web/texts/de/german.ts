import { english, type Texts } from '../en/english.js';

/** Alles, was die Seiten sagen, auf Deutsch. */
export const german: Texts = { ...english, language: 'de-DE' };
