import { planBaskets } from '../decision/basket.js';
import type { Basket, BasketItem, BasketTerms } from '../decision/basket-result.js';
import type { ItemDecision } from '../decision/item-decision-result.js';
import type { LineDecision } from './vocabulary.js';

/** An item that was decided on by itself. */
export interface DecidedItem {
  name: string;
  label: string;
  decision: ItemDecision;
}

/** What is to be done of an item once its supplier's basket is put together. */
export interface FinishedLine {
  name: string;
  lineNumber: number;
  decision: LineDecision;
  orderOn: string | null;
  offerId: string | null;
  supplierId: string | null;
  packs: number;
  /** What it costs more to order nothing, in whole minor units. */
  stakeMinor: number;
  order: { productId: string; packs: number; costMinor: number } | null;
}

/**
 * Puts the orders of each supplier together and numbers the lines, those with the most at stake first.
 *
 * @param plannedOn what is ordered on this day is ordered now
 * @param together whether baskets are put together: not for an item that is looked at alone
 */
export function finishedLines(
  items: readonly DecidedItem[],
  terms: readonly BasketTerms[],
  plannedOn: string,
  together: boolean,
): { lines: FinishedLine[]; baskets: Basket[] } {
  const baskets = together ? planBaskets(terms, items.flatMap(basketItemOf)) : [];
  const inBasket = new Map(
    baskets.flatMap(({ on, supplierId, lines }) =>
      lines.map((line) => [line.key, { ...line, on, supplierId }] as const),
    ),
  );
  const lines = items.map(({ name, label, decision }) => {
    const line = inBasket.get(name);
    const { order } = decision;
    const stakeMinor = Math.max(
      0,
      Math.round(decision.costs.nothing.totalMinor - decision.costs.chosen.totalMinor),
    );
    if (line === undefined || line.packs === 0) {
      return {
        ...{ name, label, stakeMinor },
        decision: decision.decision,
        orderOn: order?.on ?? null,
        offerId: order?.offerId ?? null,
        supplierId: order?.supplierId ?? decision.offers[0]?.supplierId ?? null,
        packs: order?.packs ?? 0,
        order:
          order === null
            ? null
            : { productId: order.productId, packs: order.packs, costMinor: Math.round(order.priceMinor) },
      };
    }
    const forAppointment = decision.decision === 'order for the appointment';
    const now: LineDecision = line.on <= plannedOn ? 'order now' : 'order later';
    return {
      ...{ name, label, stakeMinor },
      decision: forAppointment ? decision.decision : now,
      orderOn: line.on,
      offerId: line.offerId,
      supplierId: line.supplierId,
      packs: line.packs,
      order: { productId: line.productId, packs: line.packs, costMinor: Math.round(line.priceMinor) },
    };
  });
  lines.sort(
    (one, other) =>
      other.stakeMinor - one.stakeMinor || compare(one.label, other.label) || compare(one.name, other.name),
  );
  return {
    lines: lines.map(({ label: _, ...line }, index) => ({ ...line, lineNumber: index + 1 })),
    baskets,
  };
}

function basketItemOf({ name, decision }: DecidedItem): BasketItem[] {
  const { basketFigures: figures, order } = decision;
  if (figures === null || decision.decision === 'let run out') return [];
  const fixed = decision.decision === 'order for the appointment';
  if (fixed && order === null) return [];
  return [{ key: name, figures, on: order?.on ?? null, fixed }];
}

function compare(one: string, other: string): number {
  return one < other ? -1 : one > other ? 1 : 0;
}
