import { readOpenedLife } from '../../identity/opened-life-duration.js';
import { lastUsableDay } from '../../stock/opened-life.js';
import { type ContainerOnHand, containerLife } from '../../stock/stock-on-hand.js';
import type { ItemUnit } from '../item.js';
import { type Batch, NEVER } from '../projection/item-facts.js';
import { dayNumber } from './local-day-numbers.js';

/** A container as the record has it, with what each of its pieces cost. */
export interface StockedContainer extends ContainerOnHand {
  microlitres: number;
  volumeMicrolitres: number | null;
  /** The one artist it belongs to; null: the studio. */
  ownerId: string | null;
  /** Of one piece: a bottle, or a piece in a box; null: nobody wrote it down. */
  unitCostMinor: number | null;
}

export interface StockCounts {
  usableUnits: number;
  containers: number;
  opened: number;
  /** Left out, since they may not be used. */
  heldContainers: number;
  heldUnits: number;
  expiredContainers: number;
  practiceContainers: number;
  /** The last day of what ends first, ISO; null: nothing has one. */
  nextLastDay: string | null;
}

/** Pieces that belong to single artists: a bottle is one. */
export interface OwnedPieces {
  /** Those that count, whoever needs them. */
  pieces: number;
  /** Of these: what goes with an owner who leaves, and counts until their last day. */
  leavingPieces: number;
  /** Left out: their owners have left. */
  leftPieces: number;
}

interface StockSetting {
  /** The studio's local day, ISO, that is day 0. */
  day: string;
  timeZone: string;
  assumedOpenedLife: string | null;
  /** The last day here of whoever leaves, from `day`; before 0: they have left. */
  lastDayOfOwner: ReadonlyMap<string, number>;
}

/**
 * What may be used of an item, in equal containers. Held, expired and practice containers are left out and counted; so is
 * what belongs to somebody who has left, and what belongs to somebody who leaves counts until their last day.
 */
export function itemStock(
  containers: readonly StockedContainer[],
  unit: ItemUnit,
  { day, timeZone, assumedOpenedLife, lastDayOfOwner }: StockSetting,
): { batches: Batch[]; counts: StockCounts; owned: OwnedPieces } {
  const owned: OwnedPieces = { pieces: 0, leavingPieces: 0, leftPieces: 0 };
  const batches = new Map<string, Batch>();
  const counts: StockCounts = {
    usableUnits: 0,
    containers: 0,
    opened: 0,
    heldContainers: 0,
    heldUnits: 0,
    expiredContainers: 0,
    practiceContainers: 0,
    nextLastDay: null,
  };
  for (const container of containers) {
    const { pieces, microlitres, state, holds, volumeMicrolitres, unitCostMinor, ownerId } = container;
    const units = unit === 'pieces' ? pieces : microlitres;
    if (pieces <= 0 || units <= 0 || state === 'finished' || state === 'discarded') continue;
    if (state === 'practice only') {
      counts.practiceContainers += 1;
      continue;
    }
    if (holds.length > 0) {
      counts.heldContainers += 1;
      counts.heldUnits += units;
      continue;
    }
    const { lastDay } = lastUsableDay({ ...containerLife(container, assumedOpenedLife), timeZone });
    const lifeEnds = lastDay === null ? NEVER : dayNumber(lastDay, day);
    if (lifeEnds < 0) {
      counts.expiredContainers += 1;
      continue;
    }
    const ownerLeaves = (ownerId === null ? undefined : lastDayOfOwner.get(ownerId)) ?? NEVER;
    if (ownerLeaves < 0) {
      owned.leftPieces += pieces;
      continue;
    }
    if (ownerId !== null) owned.pieces += pieces;
    if (ownerLeaves < NEVER) owned.leavingPieces += pieces;
    const last = Math.min(lifeEnds, ownerLeaves);
    counts.usableUnits += units;
    counts.containers += 1;
    const opened = state === 'opened' && unit === 'microlitres';
    if (state === 'opened') counts.opened += 1;
    if (lastDay !== null && (counts.nextLastDay === null || lastDay < counts.nextLastDay)) {
      counts.nextLastDay = lastDay;
    }
    const each = unit === 'pieces' ? 1 : microlitres;
    // Of a bottle that is opened its share of the price.
    // What goes with its owner is no loss of the studio's.
    const paid = ownerLeaves < lifeEnds ? 0 : unitCostMinor;
    const costEachMinor =
      paid === null || unit === 'pieces' || volumeMicrolitres === null
        ? paid
        : Math.round((paid * Math.min(microlitres, volumeMicrolitres)) / volumeMicrolitres);
    const key = `${last} ${each} ${opened} ${costEachMinor}`;
    const batch = batches.get(key);
    const more = unit === 'pieces' ? pieces : 1;
    if (batch) batch.containers += more;
    else batches.set(key, { containers: more, unitsEach: each, lastDay: last, opened, costEachMinor });
  }
  const sorted = [...batches.values()].sort(
    (one, other) => one.lastDay - other.lastDay || other.unitsEach - one.unitsEach,
  );
  return { batches: sorted, counts, owned };
}

/**
 * Days a container may be used once it was opened, from the day of the plan on; NEVER when nothing limits it.
 *
 * @param openedLife from the label, else the studio's own; ISO 8601
 */
export function openedLifeDays(openedLife: string | null, day: string, timeZone: string): number {
  if (openedLife === null) return NEVER;
  const life = readOpenedLife(openedLife);
  if ('error' in life) return NEVER;
  const { lastDay } = lastUsableDay({
    useByLastDay: null,
    openedAt: `${day}T12:00:00Z`,
    openedLife,
    assumedOpenedLife: null,
    usableThrough: null,
    timeZone,
  });
  return lastDay === null ? NEVER : Math.max(0, dayNumber(lastDay, day));
}
