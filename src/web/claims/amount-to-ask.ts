import { majorText } from '../plans/figures/minor-units.js';

/** An amount as it is typed. What was paid in another currency is not an amount of this one, and is left empty. */
export function amountToAsk(
  { amountMinor, currency }: { amountMinor: number | null; currency: string | null },
  ours: string,
  language: string,
): string {
  return amountMinor !== null && currency === ours ? majorText(amountMinor, ours, language) : '';
}
