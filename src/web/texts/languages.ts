import { english, type Texts } from './en/english.js';

/** The languages the app speaks, by their own names. English is always there; another one is loaded when it is chosen. */
export const languages = { en: 'English', de: 'Deutsch' } as const;
export type Language = keyof typeof languages;

export function isLanguage(text: string | null): text is Language {
  return text !== null && Object.hasOwn(languages, text);
}

/** The first language of the reader that the app speaks, else English. @param preferred BCP 47, the best first */
export function languageFor(preferred: readonly string[]): Language {
  return preferred.map(baseOf).find(isLanguage) ?? 'en';
}

/** By which dates and numbers are written: the reader's own variant of the language, `en-NZ`, where they have one. */
export function localeFor(language: Language, usual: string, preferred: readonly string[]): string {
  return preferred.find((locale) => baseOf(locale) === language && locale.includes('-')) ?? usual;
}

/** @throws what `import` throws when the file cannot be loaded */
export async function textsIn(language: Language): Promise<Texts> {
  return language === 'de' ? (await import('./de/german.js')).german : english;
}

function baseOf(locale: string): string {
  return locale.split('-', 1)[0]?.toLowerCase() ?? '';
}
