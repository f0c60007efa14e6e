import type { Texts } from '../../texts/en/english.js';

/** Below this it is told as one in so many: small percentages say little. */
const rare = 0.2;
const hardly = 0.001;

/** How likely something is: `1 in 20`, `65 %`. @param chance 0 to 1 */
export function writtenChance(chance: number, texts: Texts): string {
  const words = texts.plans.chances;
  if (chance < hardly) return words.hardly;
  if (chance > 1 - hardly) return words.nearlyCertain;
  if (chance >= rare) return writtenShare(chance, texts.language);
  return words.oneIn(new Intl.NumberFormat(texts.language).format(Math.round(1 / chance)));
}

/** A share of a whole: `65 %`, `97.5 %`. @param share 0 to 1 */
export function writtenShare(share: number, language: string): string {
  return new Intl.NumberFormat(language, {
    style: 'percent',
    maximumFractionDigits: share > 0.9 && share < 1 ? 1 : 0,
  }).format(share);
}

/** A share as settings keep it. */
export function writtenPerMille(perMille: number, language: string): string {
  return new Intl.NumberFormat(language, { style: 'percent', maximumFractionDigits: 1 }).format(
    perMille / 1000,
  );
}
