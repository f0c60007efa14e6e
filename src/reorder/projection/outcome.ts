/** A figure found by trying many paths, and how far chance alone may have moved it. */
export interface Estimate {
  mean: number;
  /** Of the mean: deviation of the paths over the root of their number; 0 of a single path. */
  standardError: number;
}

/**
 * What comes of a policy. Unless its name says otherwise a figure is of the decision horizon alone; waste is of horizon
 * and tail, since what was ordered within may spoil after it.
 */
export interface Outcome {
  paths: number;
  usedUnits: Estimate;
  unmetUnits: Estimate;
  /** Days on which something was needed and not there. */
  shortDays: Estimate;
  /** 1 of a path that ran short, else 0: its mean is the chance. */
  short: Estimate;
  /** Of each day of the horizon: paths that ran short on it for the first time. */
  firstShortCounts: Int32Array;
  /** Days until running short for the first time, the whole horizon when it never did. */
  daysOfCover: Estimate;
  wastedUnits: Estimate;
  /** What that cost: by batch, by what was paid for an order, else by the rate of a unit. */
  wastedMinor: Estimate;
  wastedInTailUnits: Estimate;
  orders: Estimate;
  packs: Estimate;
  /** What packs cost more than the rate of their units; less is negative. */
  priceDifferenceMinor: Estimate;
  /** Units lying overnight, summed over the nights. */
  heldUnitDays: Estimate;
  heldInTailUnitDays: Estimate;
  /** Usable on the evening of the horizon's last day, and still to arrive then. */
  unitsAtHorizon: Estimate;
  onTheWayAtHorizon: Estimate;
  usedInTailUnits: Estimate;
  unmetInTailUnits: Estimate;
  /** Usable on the evening of the tail's last day, and still to arrive then. */
  unitsAtEnd: Estimate;
  onTheWayAtEnd: Estimate;
  /** Waste, shortage, orders, holding and price difference at the given rates, path by path; without any value of what is left. */
  costMinor: Estimate;
}

/** The chance that something was unmet on a day before the given one. */
export function chanceShortBefore(outcome: Outcome, day: number): number {
  let paths = 0;
  for (let each = 0; each < Math.min(day, outcome.firstShortCounts.length); each++) {
    paths += outcome.firstShortCounts[each] ?? 0;
  }
  return paths / outcome.paths;
}

/** The first day by which running short has at least the given chance; null when it has less within the horizon. */
export function firstShortDay(outcome: Outcome, chance: number): number | null {
  let paths = 0;
  for (let day = 0; day < outcome.firstShortCounts.length; day++) {
    paths += outcome.firstShortCounts[day] ?? 0;
    if (paths > 0 && paths >= chance * outcome.paths) return day;
  }
  return null;
}

/** What parts of the paths came to, as if all had been tried at once. */
export function joinedOutcome(parts: readonly Outcome[]): Outcome {
  const [first] = parts;
  if (first === undefined) throw new RangeError('No outcomes were given: at least one is needed.');
  const joined = { ...first, paths: 0, firstShortCounts: first.firstShortCounts.slice().fill(0) };
  for (const { paths, firstShortCounts } of parts) {
    joined.paths += paths;
    for (let day = 0; day < firstShortCounts.length; day++) {
      joined.firstShortCounts[day] = (joined.firstShortCounts[day] ?? 0) + (firstShortCounts[day] ?? 0);
    }
  }
  for (const figure of figuresOf(first)) joined[figure] = joinedEstimate(parts, figure, joined.paths);
  return joined;
}

/** The mean of all paths; its error from how paths differ within parts and how parts differ. */
function joinedEstimate(parts: readonly Outcome[], figure: Figure, paths: number): Estimate {
  let sum = 0;
  for (const part of parts) sum += part.paths * part[figure].mean;
  const mean = sum / paths;
  let squares = 0;
  for (const part of parts) {
    const { mean: ofPart, standardError } = part[figure];
    squares += part.paths * (part.paths - 1) * standardError ** 2 + part.paths * (ofPart - mean) ** 2;
  }
  return { mean, standardError: paths === 1 ? 0 : Math.sqrt(squares / (paths - 1) / paths) };
}

type Figure = Exclude<keyof Outcome, 'paths' | 'firstShortCounts'>;

function figuresOf(outcome: Outcome): Figure[] {
  return (Object.keys(outcome) as (keyof Outcome)[]).filter(
    (key) => key !== 'paths' && key !== 'firstShortCounts',
  );
}
