import type { Texts } from '../texts/en/english.js';

/** A volume as it is read on a bottle: `12.5 ml`. @param microlitres an estimate */
export function writtenVolume(microlitres: number, language: string): string {
  return new Intl.NumberFormat(language, {
    style: 'unit',
    unit: 'milliliter',
    maximumFractionDigits: 2,
  }).format(microlitres / 1000);
}

/** How much is there: pieces, and about how much in them. */
export function writtenAmount(
  { pieces, microlitres }: { pieces: number; microlitres: number },
  texts: Texts,
): string {
  const counted = texts.amounts.pieces(pieces);
  return microlitres === 0
    ? counted
    : texts.amounts.about(counted, writtenVolume(microlitres, texts.language));
}

/** A change with its sign: `−1 piece, about −12.5 ml`. */
export function writtenChange(
  { pieces, microlitres }: { pieces: number; microlitres: number },
  texts: Texts,
): string {
  const counted = new Intl.NumberFormat(texts.language, { signDisplay: 'exceptZero' }).format(pieces);
  const volume = new Intl.NumberFormat(texts.language, {
    style: 'unit',
    unit: 'milliliter',
    maximumFractionDigits: 2,
    signDisplay: 'exceptZero',
  }).format(microlitres / 1000);
  if (microlitres === 0) return texts.amounts.change(counted);
  return pieces === 0 ? volume : texts.amounts.about(texts.amounts.change(counted), volume);
}

/** What something is called: its product, with the shade where it has one. */
export function nameOf({ productName, shade }: { productName: string; shade: string | null }): string {
  return shade === null ? productName : `${productName} ${shade}`;
}

/** The code of a label as people read it: three groups of four. */
export function writtenLabel(code: string): string {
  return code.replace(/(.{4})(?=.)/g, '$1-');
}
