/** Why an assumption is what it is. */
export type AssumptionBasis = 'common practice, no source' | 'assumption';

/**
 * What planning takes for granted until somebody says otherwise or it is learnt. Each that is used is listed in the answer,
 * so that nothing is assumed in silence. Amounts of money are in minor units of the studio's currency.
 */
export const planningAssumptions = {
  /** Share of the need that should be met. */
  serviceTargetPerMille: { value: 950, basis: 'common practice, no source' },
  /** Placing an order and putting it away: a quarter of an hour of somebody, where a minor unit is a hundredth. */
  orderCostMinor: { value: 500, basis: 'assumption' },
  /** Of the price of what is held, for a year: capital, room, counting. */
  holdingPerYearPerMille: { value: 100, basis: 'assumption' },
  /** Clients who come back for their touch-up. */
  returnPerMille: { value: 700, basis: 'assumption' },
  /** From ordering to arrival, when the supplier says nothing and no order was seen. */
  leadTimeDays: { value: 14, basis: 'assumption' },
  /** What an unopened container still keeps when it arrives, when the offer says nothing and no lot was seen. */
  lifeOnArrivalDays: { value: 365, basis: 'assumption' },
  /** Of an order, when the terms say nothing. */
  deliveryCostMinor: { value: 0, basis: 'assumption' },
} as const satisfies Record<string, { value: number; basis: AssumptionBasis }>;

export type AssumptionCode = keyof typeof planningAssumptions;

/** An assumption that was used. */
export interface UsedAssumption {
  code: AssumptionCode;
  value: number;
  basis: AssumptionBasis;
}

export function usedAssumption(code: AssumptionCode): UsedAssumption {
  return { code, ...planningAssumptions[code] };
}
