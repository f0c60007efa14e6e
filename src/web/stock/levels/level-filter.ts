import type { LevelRow } from './level-rows.js';

export const levelFilters = ['low', 'ending soon', 'held', 'here'] as const;
export type LevelFilter = (typeof levelFilters)[number];

/**
 * Whether a line is looked for.
 * @param text words that all stand in its name or in what tells it apart; capitals do not matter
 * @param filter null: all of them
 */
export function isLookedFor(
  row: LevelRow,
  { text, filter }: { text: string; filter: LevelFilter | null },
): boolean {
  const said = [row.name, ...row.about, ...row.products.map(({ name }) => name)].join(' ').toLowerCase();
  const words = text.toLowerCase().split(/\s+/);
  if (!words.every((word) => said.includes(word))) return false;
  switch (filter) {
    case null:
      return true;
    case 'low':
      return row.low;
    case 'ending soon':
      return row.quantities.endingSoonPieces > 0;
    case 'held':
      return row.quantities.heldPieces > 0;
    case 'here':
      return row.quantities.onHandPieces > 0;
  }
}
