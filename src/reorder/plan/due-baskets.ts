/** A basket of a plan, as far as it matters when it is ordered. */
export interface PlannedBasket {
  supplierId: string;
  supplierName: string;
  on: string;
  productIds: readonly string[];
}

export interface DueBasket extends Omit<PlannedBasket, 'productIds'> {
  /** How many products. */
  lines: number;
  planId: string;
}

/**
 * The next order of each supplier that is to be placed by a plan, as far as it is not ordered or drafted otherwise.
 *
 * @param orderedProductIds of drafts, and of orders since the plan was made; whichever supplier brings them
 */
export function dueBaskets(
  baskets: readonly PlannedBasket[],
  { id }: { id: string },
  orderedProductIds: readonly string[],
): DueBasket[] {
  const ordered = new Set(orderedProductIds);
  const next = new Map<string, DueBasket>();
  for (const { supplierId, supplierName, on, productIds } of baskets) {
    const lines = productIds.filter((productId) => !ordered.has(productId)).length;
    const known = next.get(supplierId);
    if (lines === 0 || (known !== undefined && known.on <= on)) continue;
    next.set(supplierId, { supplierId, supplierName, on, lines, planId: id });
  }
  return [...next.values()].sort(
    (one, other) => compare(one.on, other.on) || compare(one.supplierId, other.supplierId),
  );
}

function compare(one: string, other: string): number {
  return one < other ? -1 : one > other ? 1 : 0;
}
