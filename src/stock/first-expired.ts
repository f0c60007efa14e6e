import { Temporal } from 'temporal-polyfill';
import type { ContainerLifeFacts } from './opened-life.js';
import { isPast, judgeShelfLife, type ShelfLife } from './shelf-life.js';

/** One container, or the sealed pieces of one lot, that could be taken for the same purpose as the others. */
export interface ContainerCandidate extends ContainerLifeFacts {
  id: string;
  /** Local day of receipt, ISO `YYYY-MM-DD`; null when it is not known, which counts as the latest. */
  receivedOn: string | null;
  /** True while any hold on it or on any ancestor lot is open. */
  held: boolean;
  /** Kept for practice skin only. */
  practice: boolean;
  /** Emptied, or no pieces left. */
  finished: boolean;
}

export type ExclusionReason = 'held' | 'expired' | 'open too long' | 'practice stock' | 'finished';

export interface Excluded<Candidate extends ContainerCandidate> {
  candidate: Candidate;
  reasons: ExclusionReason[];
}

export interface FirstExpiredOrder<Candidate extends ContainerCandidate> {
  /** The usable ones, the one to take first at the front. */
  order: Candidate[];
  excluded: Excluded<Candidate>[];
}

interface Judged<Candidate extends ContainerCandidate> {
  candidate: Candidate;
  life: ShelfLife;
}

/**
 * First expired, first out. Opened containers come before sealed ones; within each, the earliest last usable day
 * first, then the earliest received, then the id, so that the order is the same every time it is asked. Those
 * without a known date come last of all, opened or sealed: nobody can say that they are still good. After
 * 21 CFR 211.150 [P] (oldest approved stock first; it does not bind studios).
 *
 * @param at ISO 8601 instant of use
 * @param timeZone IANA time zone of the studio
 */
export function orderFirstExpired<Candidate extends ContainerCandidate>(
  candidates: readonly Candidate[],
  at: string,
  timeZone: string,
): FirstExpiredOrder<Candidate> {
  const usable: Judged<Candidate>[] = [];
  const excluded: Excluded<Candidate>[] = [];
  for (const candidate of candidates) {
    const life = judgeShelfLife(candidate, at, timeZone);
    const reasons = exclusionReasons(candidate, life);
    if (reasons.length === 0) usable.push({ candidate, life });
    else excluded.push({ candidate, reasons });
  }
  usable.sort(compareForTaking);
  return { order: usable.map((judged) => judged.candidate), excluded };
}

/**
 * The usable candidates that stop being usable strictly before the one picked, in the order to take them: what
 * the person is told when picking past them. A sealed one does not count against a dated opened one, because
 * finishing what is open comes first. Against a pick without a known date every dated one counts.
 */
export function earlierExpiring<Candidate extends ContainerCandidate>(
  candidates: readonly Candidate[],
  than: ContainerCandidate,
  at: string,
  timeZone: string,
): Candidate[] {
  const picked = judgeShelfLife(than, at, timeZone);
  const onlyOpened = than.openedAt !== null && picked.lastDay !== null;
  return orderFirstExpired(candidates, at, timeZone).order.filter(
    (candidate) =>
      candidate.id !== than.id &&
      !(onlyOpened && candidate.openedAt === null) &&
      compareEnds(judgeShelfLife(candidate, at, timeZone), picked) < 0,
  );
}

function exclusionReasons(candidate: ContainerCandidate, life: ShelfLife): ExclusionReason[] {
  const reasons: ExclusionReason[] = [];
  if (candidate.held) reasons.push('held');
  if (isPast(life.status)) reasons.push(life.status);
  if (candidate.practice) reasons.push('practice stock');
  if (candidate.finished) reasons.push('finished');
  return reasons;
}

function compareForTaking(a: Judged<ContainerCandidate>, b: Judged<ContainerCandidate>): number {
  return (
    Number(a.life.lastDay === null) - Number(b.life.lastDay === null) ||
    Number(a.candidate.openedAt === null) - Number(b.candidate.openedAt === null) ||
    compareEnds(a.life, b.life) ||
    compareKnownFirst(a.candidate.receivedOn, b.candidate.receivedOn, Temporal.PlainDate.compare) ||
    compareText(a.candidate.id, b.candidate.id)
  );
}

/** Earlier end first. A life that ends at an hour ends before one that runs to the end of the same day. */
function compareEnds(a: ShelfLife, b: ShelfLife): number {
  return (
    compareKnownFirst(a.lastDay, b.lastDay, Temporal.PlainDate.compare) ||
    compareKnownFirst(a.lastInstant, b.lastInstant, Temporal.Instant.compare)
  );
}

function compareKnownFirst(
  a: string | null,
  b: string | null,
  compare: (a: string, b: string) => number,
): number {
  if (a === null || b === null) return Number(a === null) - Number(b === null);
  return compare(a, b);
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
