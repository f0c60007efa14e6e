import type { Texts } from '../texts/en/english.js';

/** `5 drops, about 200 µl`; what is not known is left out. */
export function writtenAmount(
  { drops, microlitres }: { drops: number | null; microlitres: number | null },
  texts: Texts,
): string {
  const written = (amount: number) => new Intl.NumberFormat(texts.language).format(amount);
  const parts = [
    drops !== null && texts.tray.drops(drops, written(drops)),
    microlitres !== null && microlitres !== 0 && texts.tray.microlitres(written(microlitres)),
  ].filter((part) => part !== false);
  return parts.join(', ');
}
