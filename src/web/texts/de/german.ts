import { english, type Texts } from '../en/english.js';
import { catalogueTexts } from './catalogue.js';
import { receivingTexts } from './receiving.js';
import { scannerTextsGerman } from './scanner.js';
import { stockTexts } from './stock.js';

/** Alles, was die Seiten sagen, auf Deutsch. */
export const german: Texts = { ...english, language: 'de-DE', ...scannerTextsGerman, ...catalogueTexts, ...stockTexts };
