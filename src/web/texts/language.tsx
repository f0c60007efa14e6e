import { createContext, type ReactNode, use, useEffect, useState } from 'react';
import { english, type Texts } from './en/english.js';
import { isLanguage, type Language, languageFor, localeFor, textsIn } from './languages.js';
import { TextsContext } from './texts.js';

const kept = 'lotward-language';

interface ChosenLanguage {
  language: Language;
  choose(language: Language): void;
}

const LanguageContext = createContext<ChosenLanguage>({ language: 'en', choose: () => undefined });

export function useLanguage(): ChosenLanguage {
  return use(LanguageContext);
}

/** Lets the app speak the language that was chosen on this device, else the reader's own. */
export function InLanguage({ children }: { children: ReactNode }) {
  const [language, setLanguage] = useState(languageOfDevice);
  const [texts, setTexts] = useState<Texts>();
  useEffect(() => {
    let isLatest = true;
    const show = (read: Texts) => {
      if (!isLatest) return;
      document.documentElement.lang = language;
      setTexts({ ...read, language: localeFor(language, read.language, navigator.languages) });
    };
    textsIn(language)
      .then(show)
      .catch(() => show(english));
    return () => {
      isLatest = false;
    };
  }, [language]);
  const choose = (chosen: Language) => {
    keep(chosen);
    setLanguage(chosen);
  };
  if (!texts) return null;
  return (
    <LanguageContext value={{ language, choose }}>
      <TextsContext value={texts}>{children}</TextsContext>
    </LanguageContext>
  );
}

function languageOfDevice(): Language {
  try {
    const chosen = localStorage.getItem(kept);
    if (isLanguage(chosen)) return chosen;
  } catch {
    // A browser that keeps nothing is asked again each time.
  }
  return languageFor(navigator.languages);
}

function keep(language: Language): void {
  try {
    localStorage.setItem(kept, language);
  } catch {
    // Then it holds until the page is closed.
  }
}
