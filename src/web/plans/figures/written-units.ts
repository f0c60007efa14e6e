import type { ItemUnit } from '../../../reorder/item.js';
import type { Texts } from '../../texts/en/english.js';

/** How much of an item: `12.5 ml`, `3 pieces`. @param units pieces or microlitres; a part of one, as expectations have it */
export function writtenUnits(units: number, unit: ItemUnit, texts: Texts): string {
  if (unit === 'microlitres') {
    return new Intl.NumberFormat(texts.language, {
      style: 'unit',
      unit: 'milliliter',
      ...digits(units / 1000),
    }).format(rounded(units / 1000));
  }
  const written = new Intl.NumberFormat(texts.language, digits(units)).format(rounded(units));
  return texts.plans.pieces(written, rounded(units));
}

/** The number alone, for the edge of a chart. */
export function writtenNumber(amount: number, language: string): string {
  return new Intl.NumberFormat(language, { maximumFractionDigits: 2 }).format(amount);
}

/** The same in a column that says above what it is in. */
export function unitsAlone(units: number, unit: ItemUnit, language: string): string {
  const amount = drawnAmount(units, unit);
  return new Intl.NumberFormat(language, digits(amount)).format(rounded(amount));
}

/** What a chart of an item is drawn in: millilitres or pieces. */
export function drawnAmount(units: number, unit: ItemUnit): number {
  return unit === 'microlitres' ? units / 1000 : units;
}

/** What is much needs no small parts. */
function digits(amount: number): Intl.NumberFormatOptions {
  const size = Math.abs(amount);
  return { maximumFractionDigits: size >= 100 ? 0 : size >= 10 ? 1 : 2 };
}

/** Never minus nothing. */
function rounded(amount: number): number {
  return Math.abs(amount) < 0.005 ? 0 : amount;
}
