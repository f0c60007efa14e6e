import type { EffectiveSettings } from '../settings/effective-settings.js';
import { assumptionWords } from './assumption-words.js';
import type { KeptAssumption } from './kept-assumptions.js';

export interface TotalAssumption extends KeptAssumption {
  message: string;
  /** For how many items; null: of the whole studio. */
  items: number | null;
}

/** One kind of assumption, of the items it was made of. */
interface Counted {
  first: KeptAssumption;
  message: string;
  /** Whether it has the same figures for all items, and the same words. */
  isAlike: boolean;
  isSaidAlike: boolean;
  items: number;
}

/** What every line has, and no reader of the whole needs. */
const ofEveryLine = new Set(['delivery shared', 'looked ahead', 'usual amount from expected uses']);

/**
 * All that a plan supposes: what the studio did not set and what of deliveries is not known, then what was supposed of items,
 * the most frequent first.
 */
export function totalAssumptions(
  settings: EffectiveSettings,
  expected: readonly KeptAssumption[],
  ofItems: readonly (readonly KeptAssumption[])[],
  currency: string,
): TotalAssumption[] {
  const { serviceTargetPerMille, orderCostMinor, holdingPerYearPerMille } = settings;
  const ofStudio: KeptAssumption[] = [];
  if (serviceTargetPerMille.assumed) {
    ofStudio.push({ code: 'service target assumed', figures: { perMille: serviceTargetPerMille.value } });
  }
  if (orderCostMinor.assumed) {
    ofStudio.push({ code: 'order cost assumed', figures: { costMinor: orderCostMinor.value } });
  }
  if (holdingPerYearPerMille.assumed) {
    ofStudio.push({ code: 'holding cost assumed', figures: { perMille: holdingPerYearPerMille.value } });
  }
  ofStudio.push(...expected);
  const counted = new Map<string, Counted>();
  for (const assumptions of ofItems) {
    const seen = new Set<string>();
    for (const each of assumptions) {
      if (ofEveryLine.has(each.code)) continue;
      const message = assumptionWords(each, currency);
      const known = counted.get(each.code) ?? {
        ...{ first: each, message, isAlike: true, isSaidAlike: true, items: 0 },
      };
      if (JSON.stringify(known.first.figures) !== JSON.stringify(each.figures)) known.isAlike = false;
      if (known.message !== message) known.isSaidAlike = false;
      if (!seen.has(each.code)) known.items += 1;
      seen.add(each.code);
      counted.set(each.code, known);
    }
  }
  return [
    ...ofStudio.map((each) => ({ ...each, message: assumptionWords(each, currency), items: null })),
    ...[...counted.values()]
      .sort((one, other) => other.items - one.items || (one.first.code < other.first.code ? -1 : 1))
      .map(({ first, message, isAlike, isSaidAlike, items }) => ({
        code: first.code,
        figures: isAlike ? first.figures : {},
        message: isSaidAlike ? message : `For example: ${message}`,
        items,
      })),
  ];
}
