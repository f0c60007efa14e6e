import type { ContactOutcome } from '../vocabulary.js';

/** How it stands with somebody who is to be told. */
export type ContactStanding = 'not tried' | ContactOutcome;

/** One attempt to tell somebody, as far as it decides how it stands. */
export interface Attempt {
  outcome: ContactOutcome;
  /** Instants. */
  occurredAt: string;
  recordedAt: string;
}

export interface StandingOfRecipient {
  standing: ContactStanding;
  toldEarlier: boolean;
  attempts: number;
  lastAt: string | null;
}

/** Outcomes after which nobody need try again. */
const settled: ReadonlySet<ContactStanding> = new Set<ContactStanding>(['reached', 'refused', 'unreachable']);

export function isSettled(standing: ContactStanding): boolean {
  return settled.has(standing);
}

/** Whoever was reached knows; whoever refused did not want to know. */
export function isTold(standing: ContactStanding): boolean {
  return standing === 'reached' || standing === 'refused';
}

/**
 * How it stands with one recipient. Whoever was once reached stays so; else the latest attempt says. What was said before
 * the last of the lots that concern them came to the recall does not count any more: they were not told of that lot.
 *
 * @param attempts in any order
 * @param concernedSince instant at which the last of those lots came to be known as theirs; null: as long as the recall
 */
export function contactStanding(
  attempts: readonly Attempt[],
  concernedSince: string | null,
): StandingOfRecipient {
  const inOrder = [...attempts].sort(
    (one, other) => compare(one.occurredAt, other.occurredAt) || compare(one.recordedAt, other.recordedAt),
  );
  const counting = inOrder.filter(
    ({ occurredAt }) => concernedSince === null || occurredAt >= concernedSince,
  );
  const reached = counting.some(({ outcome }) => outcome === 'reached');
  return {
    standing: reached ? 'reached' : (counting.at(-1)?.outcome ?? 'not tried'),
    toldEarlier: !reached && attempts.some(({ outcome }) => outcome === 'reached'),
    attempts: attempts.length,
    lastAt: inOrder.at(-1)?.occurredAt ?? null,
  };
}

const compare = (one: string, other: string) => (one < other ? -1 : one > other ? 1 : 0);
