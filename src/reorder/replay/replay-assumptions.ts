/** What a replay takes for granted; each a code, figures and an English sentence. */
export interface ReplayAssumption {
  code: string;
  figures: Record<string, number>;
  message: string;
}

/** All that bears on what a replay says, the same for whoever is compared unless said otherwise. */
export function replayAssumptions(figures: {
  paths: number;
  reviewEveryDays: number;
  amountsAssumed: number;
}): ReplayAssumption[] {
  const { paths, reviewEveryDays, amountsAssumed } = figures;
  return [
    said(
      'weekly look',
      { days: reviewEveryDays },
      `The plan and the fixed levels look at the shelf every ${reviewEveryDays} days; the plan that is made each night looks oftener.`,
    ),
    said(
      'fewer paths',
      { paths },
      `Each decision weighs ${paths} courses of events, fewer than a plan does.`,
    ),
    said(
      'terms of today',
      {},
      'Prices, packs, lead times, life on arrival and settings are those of today, and an order takes the usual time.',
    ),
    said(
      'lists of today',
      {},
      'Kit lists, touch-up windows and a return rate that is set are those of today: what they were is not kept.',
    ),
    said(
      'bookings known in part',
      {},
      'Of bookings of then, those are known that took place and whose day of booking was written down. Called-off ones, courses and touch-up bookings without that day are not, so the plan knew less than it would have.',
    ),
    said(
      'first expired first',
      {},
      'What ends first is used first, and what ends is thrown away that day: in all three, also in “as ordered”, which may differ from what was done.',
    ),
    said(
      'no holds',
      {},
      'Holds, practice stock, counts, breakages and goods sent to or from other studios are left out.',
    ),
    said(
      'gifts come to all',
      {},
      'Gifts, samples, opening stock and what had been ordered before come to all three.',
    ),
    said(
      'no shared baskets',
      {},
      'Orders are counted item by item, each with its share of a delivery: baskets are not put together.',
    ),
    said('shortage as weighed', {}, 'A missing unit costs what the plan itself reckoned it to cost.'),
    ...(amountsAssumed > 0
      ? [
          said(
            'amounts assumed',
            { needs: amountsAssumed },
            `${amountsAssumed} needs without a written amount, or for which nothing was left, count as usual ones.`,
          ),
        ]
      : []),
  ];
}

function said(code: string, figures: Record<string, number>, message: string): ReplayAssumption {
  return { code, figures, message };
}
