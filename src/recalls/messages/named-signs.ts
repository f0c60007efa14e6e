import type { MessageLanguage } from './message-facts.js';

interface Sign {
  en: string;
  de: string;
  /** As notices write it, in either language. */
  pattern: RegExp;
}

/** Signs that notices about what goes into the skin name. The list is ours [C]; it only finds words, it adds none. */
const signs: readonly Sign[] = [
  { en: 'redness', de: 'Rötung', pattern: /\bred(?:ness|dening)\b|(?<!\p{L})Rötung/iu },
  { en: 'swelling', de: 'Schwellung', pattern: /\bswell(?:ing|s)?\b|\bswollen\b|Schwellung/iu },
  { en: 'itching', de: 'Juckreiz', pattern: /\bitch(?:ing|y|iness)?\b|(?<!\p{L})(?:Juckreiz|Jucken)/iu },
  { en: 'rash', de: 'Ausschlag', pattern: /\brash(?:es)?\b|(?:Haut)?[Aa]usschl[aä]g/iu },
  { en: 'pain', de: 'Schmerzen', pattern: /\bpain(?:ful)?\b|(?<!\p{L})Schmerz(?!mittel)/iu },
  { en: 'burning', de: 'Brennen', pattern: /\bburning\b|(?<!\p{L})Brennen(?!\p{L})/iu },
  { en: 'warmth of the place', de: 'Überwärmung der Stelle', pattern: /\bwarmth\b|Überwärmung/iu },
  { en: 'blisters', de: 'Blasen', pattern: /\bblister(?:s|ing)?\b|(?<!\p{L})(?:Blasen|Bläschen)/iu },
  {
    en: 'pus or oozing',
    de: 'Eiter oder Nässen',
    pattern: /\bpus\b|\booz(?:e|ing)\b|\bdischarge\b|(?<!\p{L})(?:Eiter|eitr|Nässen|nässend)/iu,
  },
  { en: 'fever', de: 'Fieber', pattern: /\bfever(?:ish)?\b|(?<!\p{L})Fieber/iu },
  { en: 'chills', de: 'Schüttelfrost', pattern: /\bchills\b|Schüttelfrost/iu },
  {
    en: 'lumps',
    de: 'Knoten',
    pattern: /\b(?:lumps?|nodules?|granulomas?|granulomata)\b|(?<!\p{L})(?:Knoten|Knötchen|Granulom)/iu,
  },
  { en: 'scarring', de: 'Narben', pattern: /\bscar(?:s|ring)?\b|(?<!\p{L})(?:Narben|Vernarbung)/iu },
  { en: 'discolouration', de: 'Verfärbung', pattern: /\bdiscolou?r(?:ation|ed)\b|Verfärbung/iu },
  { en: 'dizziness', de: 'Schwindel', pattern: /\bdizz(?:y|iness)\b|(?<!\p{L})Schwindel/iu },
  {
    en: 'trouble breathing',
    de: 'Atemnot',
    pattern:
      /\b(?:trouble|difficulty|difficulties|shortness of) (?:in )?breath(?:ing)?\b|Atemnot|Atembeschwerden/iu,
  },
  {
    en: 'irritation',
    de: 'Reizung',
    pattern: /\birritat(?:ion|ed|ing)\b|(?<!\p{L})(?:Haut|Augen)?[Rr]eizung/iu,
  },
  {
    en: 'an allergic reaction',
    de: 'eine allergische Reaktion',
    pattern: /\ballerg(?:y|ies|ic)\b|(?<!\p{L})[Aa]llerg/iu,
  },
  {
    en: 'an infection',
    de: 'eine Infektion',
    pattern: /\binfect(?:ion|ions|ed)\b|(?<!\p{L})(?:Infektion|Entzündung)/iu,
  },
];

/** The signs that the text of a notice names, in the language of the message, in the order of our list. */
export function namedSigns(text: string, language: MessageLanguage): string[] {
  return signs.filter(({ pattern }) => pattern.test(text)).map((sign) => sign[language]);
}
