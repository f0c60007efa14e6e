import { createContext, use } from 'react';
import { english, type Texts } from './texts.en.js';

/** The language the app speaks. */
export const TextsContext = createContext<Texts>(english);

export function useTexts(): Texts {
  return use(TextsContext);
}
