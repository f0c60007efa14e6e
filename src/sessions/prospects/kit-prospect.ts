import type { LastUsableDay } from '../../stock/opened-life.js';
import type { KitNeed } from '../kit-lack.js';
import { isUsableAt } from './usable-ahead.js';

/** A session to come, with what its tray still needs. */
export interface KitAhead {
  sessionId: string;
  /** When it starts, ISO 8601 instant. */
  startsAt: string;
  /** The studio's local day of that. */
  day: string;
  needs: readonly KitNeed[];
}

/** A bottle, or a box of pieces of which no tray holds any: neither held nor kept for practice. */
export interface StockAhead {
  productId: string;
  /** Null: it stands for nothing else. */
  poolId: string | null;
  /** Used by many sessions and used up by none, such as a bottle; else each piece is used once. */
  isShared: boolean;
  /** Pieces that no tray holds yet. */
  freePieces: number;
  end: Pick<LastUsableDay, 'lastDay' | 'lastInstant'>;
}

interface Shelf extends StockAhead {
  left: number;
  /** Nothing is left of it, nor can whoever took of it take elsewhere: so it stays, whoever comes later. */
  isSpent: boolean;
}

/** A line of a kit of single-use pieces. */
interface Line {
  kit: KitAhead;
  need: KitNeed;
  /** Pieces taken from each shelf. */
  taken: Map<Shelf, number>;
  lackingPieces: number;
}

/**
 * Which sessions cannot be laid out, each with what it lacks then: of stock that is in date at its start and that no
 * earlier session takes. Cartridges of a pool stand for each other; a bottle serves every session once, and an opened one
 * only as long as its opened life lasts.
 *
 * The earlier session comes first, but takes what leaves most to later ones: when it can do with another box, it does.
 * So a session lacks something only if no way of sharing out would give it that without taking it from an earlier one.
 * It is a matching with augmenting paths (Kuhn 1955 [M]), which for needs served in order loses none served before. What a
 * search in vain has walked through leads nowhere for later ones either, and is not walked again: so the first session
 * that lacks something costs a search, and those after it next to nothing.
 *
 * @returns in the order of their starts; those that lack nothing are left out
 */
export function kitsLacking(
  kits: readonly KitAhead[],
  stock: readonly StockAhead[],
): { sessionId: string; lacks: KitNeed[] }[] {
  const ordered = [...kits].sort((one, other) => (one.startsAt < other.startsAt ? -1 : 1));
  const bottles = new Map<string, StockAhead[]>();
  const shelves = new Map<string, Shelf[]>();
  const linesAt = new Map<Shelf, Line[]>();
  for (const item of stock) {
    if (item.freePieces <= 0) continue;
    if (item.isShared) append(bottles, item.productId, item);
    else {
      const shelf = { ...item, left: item.freePieces, isSpent: false };
      append(shelves, `product ${item.productId}`, shelf);
      if (item.poolId !== null) append(shelves, `pool ${item.poolId}`, shelf);
    }
  }
  for (const ofNeed of shelves.values()) ofNeed.sort(byEnd);

  const note = (line: Line, shelf: Shelf): true => {
    if (!line.taken.has(shelf)) append(linesAt, shelf, line);
    line.taken.set(shelf, (line.taken.get(shelf) ?? 0) + 1);
    return true;
  };
  const take = (line: Line, seen: Set<Shelf>): boolean => {
    const walked: Shelf[] = [];
    for (const shelf of shelves.get(nameOf(line.need)) ?? []) {
      if (shelf.isSpent || seen.has(shelf)) continue;
      if (!isUsableAt(shelf.end, line.kit.day, line.kit.startsAt)) continue;
      if (shelf.left > 0) {
        shelf.left -= 1;
        return note(line, shelf);
      }
      walked.push(shelf);
    }
    for (const shelf of walked) {
      if (seen.has(shelf)) continue;
      seen.add(shelf);
      if (makeRoom(shelf, seen)) return note(line, shelf);
    }
    return false;
  };
  /** Whether somebody who took a piece there can do with another. */
  const makeRoom = (shelf: Shelf, seen: Set<Shelf>): boolean => {
    const giver = (linesAt.get(shelf) ?? []).find(
      (line) => (line.taken.get(shelf) ?? 0) > 0 && take(line, seen),
    );
    giver?.taken.set(shelf, (giver.taken.get(shelf) ?? 0) - 1);
    return giver !== undefined;
  };

  return ordered.flatMap((kit) => {
    const lacks = kit.needs.flatMap((need): KitNeed[] => {
      const usable = need.kind === 'product' ? bottles.get(need.productId) : undefined;
      if (usable !== undefined) {
        const count = usable.filter(({ end }) => isUsableAt(end, kit.day, kit.startsAt)).length;
        return count >= need.quantityPieces ? [] : [{ ...need, quantityPieces: need.quantityPieces - count }];
      }
      const line = { kit, need, taken: new Map<Shelf, number>(), lackingPieces: need.quantityPieces };
      while (line.lackingPieces > 0) {
        const seen = new Set<Shelf>();
        if (!take(line, seen)) {
          for (const shelf of seen) shelf.isSpent = true;
          break;
        }
        line.lackingPieces -= 1;
      }
      return line.lackingPieces === 0 ? [] : [{ ...need, quantityPieces: line.lackingPieces }];
    });
    return lacks.length === 0 ? [] : [{ sessionId: kit.sessionId, lacks }];
  });
}

function nameOf(need: KitNeed): string {
  return need.kind === 'product' ? `product ${need.productId}` : `pool ${need.poolId}`;
}

/** What ends first is taken first; what has no known end last. */
function byEnd(one: Shelf, other: Shelf): number {
  const [end, otherEnd] = [one.end.lastDay ?? '9999', other.end.lastDay ?? '9999'];
  return end === otherEnd ? 0 : end < otherEnd ? -1 : 1;
}

function append<Key, Value>(map: Map<Key, Value[]>, key: Key, value: Value): void {
  const values = map.get(key);
  if (values) values.push(value);
  else map.set(key, [value]);
}
