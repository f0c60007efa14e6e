import type { MessageLanguage } from './message-facts.js';

const smallWords: Record<MessageLanguage, ReadonlySet<string>> = {
  en: new Set([
    'the',
    'and',
    'of',
    'may',
    'is',
    'are',
    'with',
    'for',
    'to',
    'not',
    'this',
    'can',
    'that',
    'be',
  ]),
  de: new Set([
    'der',
    'die',
    'das',
    'und',
    'ist',
    'sind',
    'mit',
    'für',
    'nicht',
    'kann',
    'können',
    'den',
    'von',
    'zu',
  ]),
};

/** Which of the languages of messages a text is in, by its small words; null: it cannot be told, or it is another. */
export function likelyLanguage(text: string): MessageLanguage | null {
  const words = text.toLowerCase().match(/\p{L}+/gu) ?? [];
  const count = (language: MessageLanguage) => words.filter((word) => smallWords[language].has(word)).length;
  const [en, de] = [count('en'), count('de')];
  if (en === de) return null;
  return en > de ? 'en' : 'de';
}
