/** What should be looked at before an order is approved; each has to be confirmed by its code. */
export const orderWarningCodes = [
  'below minimum order',
  'below minimum packs',
  'offer ended',
  'product archived',
  'price not known',
  'price changed',
] as const;
export type OrderWarningCode = (typeof orderWarningCodes)[number];

export interface OrderWarning {
  code: OrderWarningCode;
  /** The line it is about; null: the whole order. */
  lineNumber: number | null;
  message: string;
}

/** What a line is approved from. */
export interface LineToApprove {
  lineNumber: number;
  product: string;
  archived: boolean;
  packs: number;
  packPriceMinor: number | null;
  /** Null: it was written by hand. */
  offer: { ended: boolean; minimumPacks: number; packPriceMinor: number | null } | null;
}

export interface OrderToApprove {
  supplier: string;
  lines: readonly LineToApprove[];
  linesMinor: number;
  /** Null: the supplier has none. */
  minimumOrderMinor: number | null;
  /** Writes a sum of the order's currency, given in minor units. */
  money: (minor: number) => string;
}

/** All that should be looked at before an order is approved, of the whole order first, then line by line. */
export function orderWarnings(order: OrderToApprove): OrderWarning[] {
  const { supplier, lines, linesMinor, minimumOrderMinor, money } = order;
  const warnings: OrderWarning[] = [];
  const warn = (code: OrderWarningCode, lineNumber: number | null, message: string) =>
    warnings.push({ code, lineNumber, message });
  if (minimumOrderMinor !== null && linesMinor < minimumOrderMinor && lines.length > 0) {
    const missing = money(minimumOrderMinor - linesMinor);
    warn(
      'below minimum order',
      null,
      `${supplier} takes orders from ${money(minimumOrderMinor)}; this one is ${money(linesMinor)}, ${missing} less.`,
    );
  }
  for (const { lineNumber, product, archived, packs, packPriceMinor, offer } of lines) {
    if (offer?.ended)
      warn('offer ended', lineNumber, `${supplier} is recorded as offering ${product} no more.`);
    if (archived) warn('product archived', lineNumber, `${product} is archived: it was taken out of use.`);
    if (offer && packs < offer.minimumPacks) {
      const least = `${offer.minimumPacks} packs`;
      warn('below minimum packs', lineNumber, `${product} is sold from ${least}; ${packs} are ordered.`);
    }
    if (packPriceMinor === null) warn('price not known', lineNumber, `The price of ${product} is not known.`);
    const offered = offer?.packPriceMinor ?? null;
    if (packPriceMinor !== null && offered !== null && offered !== packPriceMinor) {
      const prices = `${money(packPriceMinor)} a pack, the offer says ${money(offered)}`;
      warn('price changed', lineNumber, `${product} stands here at ${prices}.`);
    }
  }
  return warnings;
}
