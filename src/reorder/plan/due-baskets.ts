/** A basket of a plan, as far as it matters when it is ordered. */
export interface PlannedBasket {
  supplierId: string;
  supplierName: string;
  on: string;
  /** How many products. */
  lines: number;
}

export interface DueBasket extends PlannedBasket {
  planId: string;
}

/** The next order of each supplier that is to be placed by a plan, unless one was drafted since the plan was made. */
export function dueBaskets(
  baskets: readonly PlannedBasket[],
  { id }: { id: string },
  draftedSuppliers: readonly string[],
): DueBasket[] {
  const drafted = new Set(draftedSuppliers);
  const next = new Map<string, DueBasket>();
  for (const { supplierId, supplierName, on, lines } of baskets) {
    const known = next.get(supplierId);
    if (drafted.has(supplierId) || lines === 0 || (known !== undefined && known.on <= on)) continue;
    next.set(supplierId, { supplierId, supplierName, on, lines, planId: id });
  }
  return [...next.values()].sort(
    (one, other) => compare(one.on, other.on) || compare(one.supplierId, other.supplierId),
  );
}

function compare(one: string, other: string): number {
  return one < other ? -1 : one > other ? 1 : 0;
}
