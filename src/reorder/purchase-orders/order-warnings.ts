/** What should be looked at before an order is approved; each has to be confirmed by its code. */
export const orderWarningCodes = [
  'below minimum order',
  'below minimum packs',
  'offer ended',
  'product archived',
  'price not known',
  'price changed',
  'offer changed since the plan',
  'plan not the latest',
  'plan is old',
] as const;
export type OrderWarningCode = (typeof orderWarningCodes)[number];

export interface OrderWarning {
  code: OrderWarningCode;
  /** The line it is about; null: the whole order. */
  lineNumber: number | null;
  message: string;
}

/** A plan tells what to order on its day, and a little after it. */
export const LONGEST_PLAN_DAYS = 7;

/** What a line is approved from. */
export interface LineToApprove {
  lineNumber: number;
  product: string;
  archived: boolean;
  packs: number;
  packPriceMinor: number | null;
  /** Null: it was written by hand. */
  offer: { ended: boolean; minimumPacks: number; packPriceMinor: number | null } | null;
  /** Pieces in a pack: bottles, or cartridges. */
  packPieces: number;
  /** The same pack as the plan counted with it; null: no plan did, or nothing is kept of it. */
  planned: PlannedPack | null;
}

export interface PlannedPack {
  packPieces: number;
  /** For so many packs; null: in another currency. */
  packPriceMinor: number | null;
}

export interface OrderToApprove {
  supplier: string;
  lines: readonly LineToApprove[];
  linesMinor: number;
  /** Null: the supplier has none. */
  minimumOrderMinor: number | null;
  /** The plan it was drafted from; null: none. */
  plan: { ageDays: number; wasLatest: boolean } | null;
  /** Writes a sum of the order's currency, given in minor units. */
  money: (minor: number) => string;
}

/** All that should be looked at before an order is approved, of the whole order first, then line by line. */
export function orderWarnings(order: OrderToApprove): OrderWarning[] {
  const { supplier, lines, linesMinor, minimumOrderMinor, plan, money } = order;
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
  if (plan && !plan.wasLatest) {
    warn('plan not the latest', null, 'It was drafted from a plan although a later one was there.');
  }
  if (plan && plan.ageDays > LONGEST_PLAN_DAYS) {
    warn('plan is old', null, `Its plan is ${plan.ageDays} days old, more than ${LONGEST_PLAN_DAYS}.`);
  }
  for (const line of lines) {
    const { lineNumber, product, archived, packs, packPriceMinor, offer } = line;
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
    const changes = changesSincePlan(line, money);
    if (changes.length > 0) {
      warn(
        'offer changed since the plan',
        lineNumber,
        `${product} was planned otherwise: ${changes.join('; ')}. Look at the number of packs.`,
      );
    }
  }
  return warnings;
}

function changesSincePlan(line: LineToApprove, money: OrderToApprove['money']): string[] {
  const { packPieces, offer, planned } = line;
  if (planned === null) return [];
  const changes: string[] = [];
  if (planned.packPieces !== packPieces) {
    changes.push(`packs of ${planned.packPieces}, now ${packPieces}`);
  }
  const price = offer?.packPriceMinor ?? null;
  if (planned.packPriceMinor !== null && price !== null && planned.packPriceMinor !== price) {
    changes.push(`${money(planned.packPriceMinor)} a pack, now ${money(price)}`);
  }
  return changes;
}
