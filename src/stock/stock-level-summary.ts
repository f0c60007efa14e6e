import { hasEnded } from './container-transitions.js';
import { type DaysOfWarning, daysOfWarning } from './days-of-warning.js';
import { isPast, judgeShelfLife } from './shelf-life.js';
import { type ContainerOnHand, containerLife } from './stock-on-hand.js';

export interface SummarisedContainer extends ContainerOnHand {
  microlitres: number;
}

/** What the studio chose. */
export interface SummarySettings extends DaysOfWarning {
  /** Opened life taken where the label gives none; null: none is taken. */
  assumedOpenedLife: string | null;
}

/** How much of a product, a pool or a lot is here, in pieces; a bottle is one, however full. */
export interface StockLevelSummary {
  /** In date, not held, not kept for practice. */
  usablePieces: number;
  /** Those of the usable that have to be used soon. */
  endingSoonPieces: number;
  /** All that is here by the book, whatever its state. */
  onHandPieces: number;
  onHandMicrolitres: number;
  heldPieces: number;
  /** Past its use-by or open too long, and not held. */
  expiredPieces: number;
  practicePieces: number;
  /** Opened bottles among the usable. */
  openedContainers: number;
}

/**
 * Adds up containers. Each piece counts once among usable, held, expired and practice: held before expired, since a hold
 * decides first.
 *
 * @param at ISO 8601 instant
 * @param timeZone IANA time zone of the studio
 */
export function summariseStock(
  containers: readonly SummarisedContainer[],
  { assumedOpenedLife, ...warning }: SummarySettings,
  at: string,
  timeZone: string,
): StockLevelSummary {
  const summary: StockLevelSummary = {
    usablePieces: 0,
    endingSoonPieces: 0,
    onHandPieces: 0,
    onHandMicrolitres: 0,
    heldPieces: 0,
    expiredPieces: 0,
    practicePieces: 0,
    openedContainers: 0,
  };
  for (const container of containers) {
    const { pieces, microlitres, state } = container;
    if (hasEnded(state)) continue;
    summary.onHandPieces += pieces;
    summary.onHandMicrolitres += microlitres;
    const { status, daysLeft } = judgeShelfLife(containerLife(container, assumedOpenedLife), at, timeZone);
    if (state === 'practice only') summary.practicePieces += pieces;
    else if (container.holds.length > 0) summary.heldPieces += pieces;
    else if (isPast(status)) summary.expiredPieces += pieces;
    else {
      summary.usablePieces += pieces;
      const near = daysOfWarning(warning, container.productId, container.openedAt !== null);
      if (daysLeft !== null && daysLeft <= near) summary.endingSoonPieces += pieces;
      if (container.openedAt !== null && pieces > 0) summary.openedContainers += 1;
    }
  }
  return summary;
}
