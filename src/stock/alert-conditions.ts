import { type DaysOfWarning, daysOfWarning } from './days-of-warning.js';
import type { ContainerLifeFacts } from './opened-life.js';
import { isPast, judgeShelfLife, type ShelfLife } from './shelf-life.js';

export type AlertSeverity = 'notice' | 'warning' | 'urgent';

/** The sealed remainder of a lot, or one container. Opened containers are given one by one. */
export interface StockOnHand extends ContainerLifeFacts {
  subjectKind: 'lot' | 'container';
  subjectId: string;
  productId: string;
  /** By the book; a bottle is one. */
  pieces: number;
  /** True while any hold on it or on any ancestor lot is open. */
  held: boolean;
  /** Kept for practice skin only. */
  practice: boolean;
}

/** The level at which to reorder, of one product or of all products of a configuration pool together. */
export interface StockLevel {
  subjectKind: 'product' | 'configuration pool';
  subjectId: string;
  /** None when nothing of it is offered any more. */
  productIds: readonly string[];
  /** Low at or below this. */
  minimumPieces: number;
}

export interface LowStockCondition {
  kind: 'low stock';
  subjectKind: StockLevel['subjectKind'];
  subjectId: string;
  severity: AlertSeverity;
  facts: { usablePieces: number; minimumPieces: number };
}

export interface DateCondition {
  kind: 'use-by near' | 'opened life ending' | 'expired on the shelf';
  subjectKind: StockOnHand['subjectKind'];
  subjectId: string;
  severity: AlertSeverity;
  facts: {
    productId: string;
    pieces: number;
    status: ShelfLife['status'];
    lastDay: string | null;
    daysLeft: number | null;
    boundBy: ShelfLife['boundBy'];
    /** Whose opened life was counted; left out when none was. */
    openedLifeFrom?: 'label' | 'assumed' | 'sending studio';
    held: boolean;
  };
}

export type AlertCondition = LowStockCondition | DateCondition;

/**
 * Derives every condition open at an instant; what is not in the answer is not open. One thing has at most one
 * date condition: expired stock is only 'expired on the shelf'. What is open and ends soon is 'opened life ending'
 * even when its use-by is what ends it. Practice stock may be expired, and what is on hold need not be used up in
 * time, but held stock that has expired still has to leave the shelf.
 *
 * @param warning something is near its end when so many local days or fewer are left
 * @param at ISO 8601 instant
 * @param timeZone IANA time zone of the studio
 * @returns low stock first, then dates, each in the order of what was given
 */
export function alertConditions(
  stock: readonly StockOnHand[],
  levels: readonly StockLevel[],
  warning: DaysOfWarning,
  at: string,
  timeZone: string,
): AlertCondition[] {
  const usablePieces = new Map<string, number>();
  const dated: DateCondition[] = [];
  for (const item of stock) {
    if (item.practice || item.pieces <= 0) continue;
    const life = judgeShelfLife(item, at, timeZone);
    const condition = dateCondition(item, life, warning);
    if (condition !== null) dated.push(condition);
    if (item.held || isPast(life.status)) continue;
    usablePieces.set(item.productId, (usablePieces.get(item.productId) ?? 0) + item.pieces);
  }
  const low: LowStockCondition[] = [];
  for (const level of levels) {
    const { subjectKind, subjectId, productIds, minimumPieces } = level;
    // No product is meant any more: there is nothing to reorder.
    if (productIds.length === 0) continue;
    let usable = 0;
    for (const productId of new Set(productIds)) usable += usablePieces.get(productId) ?? 0;
    if (usable > minimumPieces) continue;
    low.push({
      kind: 'low stock',
      subjectKind,
      subjectId,
      severity: usable <= 0 ? 'urgent' : 'warning',
      facts: { usablePieces: usable, minimumPieces },
    });
  }
  return [...low, ...dated];
}

function dateCondition(item: StockOnHand, life: ShelfLife, warning: DaysOfWarning): DateCondition | null {
  if (isPast(life.status))
    return describe(item, life, 'expired on the shelf', item.held ? 'notice' : 'urgent');
  if (life.daysLeft === null || item.held) return null;
  const opened = item.openedAt !== null;
  if (life.daysLeft > daysOfWarning(warning, item.productId, opened)) return null;
  return describe(item, life, opened ? 'opened life ending' : 'use-by near', opened ? 'notice' : 'warning');
}

function describe(
  item: StockOnHand,
  life: ShelfLife,
  kind: DateCondition['kind'],
  severity: AlertSeverity,
): DateCondition {
  const { subjectKind, subjectId, productId, pieces, held } = item;
  const { status, lastDay, daysLeft, boundBy, openedLifeFrom } = life;
  const from = openedLifeFrom === 'none' ? {} : { openedLifeFrom };
  const facts = { productId, pieces, status, lastDay, daysLeft, boundBy, ...from, held };
  return { kind, subjectKind, subjectId, severity, facts };
}
