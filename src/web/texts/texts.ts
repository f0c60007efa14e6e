import { createContext, use } from 'react';
import { english, type Texts } from './en/english.js';

/** What the app says in the language that was chosen. */
export const TextsContext = createContext<Texts>(english);

export function useTexts(): Texts {
  return use(TextsContext);
}
