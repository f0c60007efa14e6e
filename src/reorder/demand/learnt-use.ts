import type { PastSession, Visit } from './demand-facts.js';
import type { AmountDistribution } from './demand-model.js';

/** A session of a year ago counts half as much as one of today. */
const HALF_LIFE_DAYS = 365;
/** What is known of the wider group counts as much as so many sessions of the narrower one. */
const SESSIONS_OF_WIDER_GROUP = 4;
/** That what stands on a kit list is really used, until sessions tell. [C] */
export const KIT_LIST_CHANCE = 0.9;
/** More amounts are joined to so many, keeping their mean. */
const MOST_AMOUNTS = 8;

/** How much a session of the past counts today. */
export function recencyWeight(day: number): number {
  return 0.5 ** (Math.max(0, -day) / HALF_LIFE_DAYS);
}

/**
 * Weights of sessions by group, from all of them to those of one procedure, visit kind and artist: the days of each group's
 * sessions, the newest first, and the weight of all down to each.
 */
export type SessionWeights = ReadonlyMap<string, { days: number[]; upTo: number[] }>;

/** Adds up the sessions of every group once for all items. */
export function sessionWeights(sessions: readonly PastSession[]): SessionWeights {
  const groups = new Map<string, { days: number[]; upTo: number[] }>();
  for (const session of [...sessions].sort((one, other) => other.day - one.day)) {
    const weight = recencyWeight(session.day);
    for (const name of groupsOf(session)) {
      const group = groups.get(name) ?? { days: [], upTo: [] };
      group.days.push(session.day);
      group.upTo.push((group.upTo.at(-1) ?? 0) + weight);
      groups.set(name, group);
    }
  }
  return groups;
}

/** Weight of a group's sessions from a day on. */
function weightSince(weights: SessionWeights, name: string, since: number): number {
  const group = weights.get(name);
  if (!group) return 0;
  let from = 0;
  let to = group.days.length;
  while (from < to) {
    const middle = (from + to) >>> 1;
    if ((group.days[middle] ?? since) >= since) from = middle + 1;
    else to = middle;
  }
  return from === 0 ? 0 : (group.upTo[from - 1] ?? 0);
}

/** The groups a visit belongs to, the widest first. */
function groupsOf({ procedureId, visitKind, artistId }: Visit): readonly [string, string, string, string] {
  const visit = `${procedureId}\n${visitKind}`;
  return ['', procedureId, visit, `${visit}\n${artistId}`];
}

/** That one session took an item. */
export interface UseInSession extends Visit {
  day: number;
  /** Null: not known, or there was none left. */
  amount: number | null;
}

/** What kit lists say of an item at a visit; null: none names it. */
export type KitAmounts = (visit: Visit, level: 'all artists' | 'artist') => number | null;

export interface LearntUse {
  /** That such a visit takes the item, 0 to 1. */
  chance: number;
  amount: AmountDistribution;
  /** Sessions of just this procedure, visit kind and artist, older ones counting less. */
  effectiveSessions: number;
  amountFrom: 'sessions' | 'kit list' | 'assumption';
}

/**
 * What visits take of one item, from what sessions really took.
 *
 * The chance is shrunk from group to group (Beta-binomial): one artist's visits of a procedure towards all artists', those
 * towards all visits of the procedure, those towards what its kit list says, or else towards all the studio's sessions.
 * Amounts are pooled by the same steps.
 *
 * @param weights of all sessions (`sessionWeights`)
 * @param availableFrom sessions before that day could not have taken it
 * @param assumedAmount of a use of which neither sessions nor a kit list tell
 */
export function learnUse(
  weights: SessionWeights,
  uses: readonly UseInSession[],
  kit: KitAmounts,
  { availableFrom, assumedAmount }: { availableFrom: number; assumedAmount: number },
): (visit: Visit) => LearntUse {
  const used = new Map<string, GroupUses>();
  for (const use of uses) {
    const weight = recencyWeight(use.day);
    for (const group of groupsOf(use)) {
      const known = used.get(group) ?? { weight: 0, amounts: new Map<number, number>(), amountWeight: 0 };
      known.weight += weight;
      if (use.amount !== null && use.amount > 0) {
        known.amounts.set(use.amount, (known.amounts.get(use.amount) ?? 0) + weight);
        known.amountWeight += weight;
      }
      used.set(group, known);
    }
  }
  const learnt = new Map<string, LearntUse>();
  return (visit) => {
    const groups = groupsOf(visit);
    const narrowest = groups[3];
    const known = learnt.get(narrowest);
    if (known) return known;
    const forAll = kit(visit, 'all artists');
    const forArtist = kit(visit, 'artist');
    let chance = 0;
    let amounts: ReadonlyMap<number, number> = new Map([[forArtist ?? forAll ?? assumedAmount, 1]]);
    let seen = 0;
    for (const [level, group] of groups.entries()) {
      const own = used.get(group);
      if (level === 1 && forAll !== null) chance = KIT_LIST_CHANCE;
      if (level === 3 && forArtist !== null) chance = KIT_LIST_CHANCE;
      const sessions = Math.max(weightSince(weights, group, availableFrom), own?.weight ?? 0);
      chance = shrunk(own?.weight ?? 0, sessions, chance);
      if (own && own.amountWeight > 0) {
        // What was assumed steps back at once before what was measured.
        amounts = seen === 0 ? scaled(own.amounts, 1 / own.amountWeight) : pooled(own, amounts);
        seen += own.amountWeight;
      }
    }
    const result: LearntUse = {
      chance,
      amount: amountDistribution(amounts),
      effectiveSessions: weightSince(weights, narrowest, availableFrom),
      amountFrom: seen > 0 ? 'sessions' : (forArtist ?? forAll) === null ? 'assumption' : 'kit list',
    };
    learnt.set(narrowest, result);
    return result;
  };
}

interface GroupUses {
  weight: number;
  amounts: Map<number, number>;
  amountWeight: number;
}

function shrunk(uses: number, sessions: number, wider: number): number {
  return Math.min(1, (uses + SESSIONS_OF_WIDER_GROUP * wider) / (sessions + SESSIONS_OF_WIDER_GROUP));
}

function pooled(own: GroupUses, wider: ReadonlyMap<number, number>): ReadonlyMap<number, number> {
  const total = own.amountWeight + SESSIONS_OF_WIDER_GROUP;
  const joined = new Map(scaled(wider, SESSIONS_OF_WIDER_GROUP / total));
  for (const [amount, weight] of own.amounts) {
    joined.set(amount, (joined.get(amount) ?? 0) + weight / total);
  }
  return joined;
}

function scaled(amounts: ReadonlyMap<number, number>, factor: number): ReadonlyMap<number, number> {
  return new Map([...amounts].map(([amount, weight]) => [amount, weight * factor]));
}

/**
 * Amounts and their weights as few points with the same mean: neighbours are joined at the whole numbers about their mean.
 *
 * @param weights by amount, at least one above 0
 */
export function amountDistribution(weights: ReadonlyMap<number, number>): AmountDistribution {
  const sorted = [...weights].filter(([, weight]) => weight > 0).sort(([one], [other]) => one - other);
  const total = sorted.reduce((sum, [, weight]) => sum + weight, 0);
  const points = new Map<number, number>();
  const add = (amount: number, weight: number) => {
    if (weight > 0) points.set(amount, (points.get(amount) ?? 0) + weight / total);
  };
  const bins: { weight: number; sum: number }[] = [];
  let before = 0;
  for (const [amount, weight] of sorted) {
    const bin =
      sorted.length <= MOST_AMOUNTS
        ? bins.length
        : Math.min(MOST_AMOUNTS - 1, Math.floor((before / total) * MOST_AMOUNTS));
    const known = bins[bin] ?? { weight: 0, sum: 0 };
    bins[bin] = { weight: known.weight + weight, sum: known.sum + weight * amount };
    before += weight;
  }
  for (const bin of bins) {
    if (!bin) continue;
    const mean = bin.sum / bin.weight;
    const lower = Math.floor(mean);
    add(lower, bin.weight * (1 - (mean - lower)));
    add(lower + 1, bin.weight * (mean - lower));
  }
  const amounts = [...points].sort(([one], [other]) => one - other);
  return { amounts: amounts.map(([amount]) => amount), weights: amounts.map(([, weight]) => weight) };
}

/** The mean of an amount. */
export function meanAmount({ amounts, weights }: AmountDistribution): number {
  return amounts.reduce((sum, amount, index) => sum + amount * (weights[index] ?? 0), 0);
}
