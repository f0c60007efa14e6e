import type { LineDraft } from './line-draft.js';
import type { ScannedGoods } from './scanned-goods.js';

export type MeantLine =
  | { kind: 'new line' }
  /** The very same symbol, without anything that tells two pieces apart: only a person knows. */
  | { kind: 'asked'; key: string }
  /** The same goods under another serial number: one more, without doubt. */
  | { kind: 'one more'; key: string }
  /** A serial number that was scanned already: the same piece. */
  | { kind: 'same piece'; key: string };

/** The serial numbers that were scanned for a line, by its key. */
export type SeenSerials = ReadonlyMap<string, readonly string[]>;

/**
 * Which line of a delivery a scan belongs to: the latest of the same number, lot and date. Nothing is counted in silence:
 * the same symbol may be another box or the same one shown twice.
 *
 * @param lines the latest first
 */
export function meantLine(scan: ScannedGoods, lines: readonly LineDraft[], serials: SeenSerials): MeantLine {
  const line = lines.find(({ scanned }) => scanned !== null && isSameGoods(scanned, scan));
  if (!line) return { kind: 'new line' };
  const { key } = line;
  if (scan.serial === null) return { kind: 'asked', key };
  return { kind: serials.get(key)?.includes(scan.serial) ? 'same piece' : 'one more', key };
}

function isSameGoods(one: ScannedGoods, other: ScannedGoods): boolean {
  if (one.gtin === null && other.gtin === null) return one.text === other.text;
  return (
    one.gtin === other.gtin &&
    one.count === other.count &&
    one.lotCode === other.lotCode &&
    one.useBy === other.useBy
  );
}
