/** Days of warning of one product; null: the studio's. */
export interface ProductDays {
  useByNearDays: number | null;
  openedLifeEndingDays: number | null;
}

/** How many local days before an end somebody wants to hear of it. */
export interface DaysOfWarning {
  /** For what is sealed, before its use-by. */
  useByNearDays: number;
  /** For what is open. */
  openedLifeEndingDays: number;
  /** By product id, where a product has days of its own. */
  ofProducts?: ReadonlyMap<string, ProductDays>;
}

/** The days of warning that count for something of a product: its own before the studio's. */
export function daysOfWarning(days: DaysOfWarning, productId: string, isOpen: boolean): number {
  const name = isOpen ? 'openedLifeEndingDays' : 'useByNearDays';
  return days.ofProducts?.get(productId)?.[name] ?? days[name];
}
