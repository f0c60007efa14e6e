import { DEFAULT_TOUCH_UP_DAYS } from '../../sessions/touch-up-window.js';
import { type Backtest, backtest } from './backtest.js';
import { type BookingCurve, learnBookingCurve } from './booking-curve.js';
import type { DemandFacts, PastSession } from './demand-facts.js';
import { type SessionWeights, sessionWeights } from './learnt-use.js';
import { commonWeights } from './method-weights.js';
import { learnReturns, type Returns, type VisitToReturnFrom } from './touch-ups-owed.js';
import { weekdayShares } from './weekday-shares.js';

/** Uses are counted by weeks, the last of which ends the day before the plan. */
export const PERIOD_DAYS = 7;
/** Older weeks tell nothing any more. */
const MOST_PERIODS = 104;
/** Weeks whose sum a forecast is judged by: about a lead time and the time between orders. */
export const HORIZON_PERIODS = 4;
/** Clients who come back for a touch-up, where neither the studio nor its record says. [C] */
const RETURN_RATE = 0.7;
/** Of so many items it is learnt which methods suit the studio. */
const MOST_ITEMS_LEARNT_FROM = 60;
/** Fewer uses tell nothing of methods. */
const FEWEST_USES_LEARNT_FROM = 5;
/** A touch-up takes what the visit before took, until touch-ups tell. [C] */
const CARRIED_OVER = 0.85;
const TOUCH_UPS_SUPPOSED = 10;

/** That one session took an item, or would have. */
export interface UseOfItem {
  session: PastSession;
  amount: number | null;
}

/** What all items of a plan share, worked out once. */
export interface StudioDemand {
  facts: DemandFacts;
  sessions: ReadonlyMap<string, PastSession>;
  /** Sessions by artists who are gone stay in: what a procedure takes does not leave with them. */
  usesByItem: ReadonlyMap<string, readonly UseOfItem[]>;
  /** What sessions wanted that were never completed: they tell how much is needed, but not what a session takes. */
  wantsByItem: ReadonlyMap<string, readonly UseOfItem[]>;
  weights: SessionWeights;
  bookings: BookingCurve;
  /** By procedure id; `allReturns` for those without a visit. */
  returns: ReadonlyMap<string, Returns>;
  allReturns: Returns;
  /** ISO weekdays, Monday first. */
  weekdays: readonly number[];
  weekdaysAssumed: boolean;
  /** That a touch-up takes what the visit it follows took, of any item. */
  carriedOver: number;
  /** Weights of the methods that suit the studio's items. */
  methodPrior: readonly number[];
}

/** Works out what all items share. */
export function studioDemand(facts: DemandFacts): StudioDemand {
  const sessions = new Map(facts.sessions.map((session) => [session.id, session]));
  const usesByItem = new Map<string, UseOfItem[]>();
  for (const session of facts.sessions) {
    for (const { item, amount, refused } of session.uses) {
      const uses = usesByItem.get(item) ?? [];
      uses.push({ session, amount: refused ? null : amount });
      usesByItem.set(item, uses);
    }
  }
  const firstBookings = facts.sessions.filter(({ visitKind }) => visitKind !== 'touch-up');
  const firstLapsed = facts.lapsedBookings.filter(({ visitKind }) => visitKind !== 'touch-up');
  const shares = weekdayShares(
    facts.sessions.map(({ day }) => day),
    facts.weekday,
  );
  return {
    facts,
    sessions,
    usesByItem,
    wantsByItem: wantsByItem(facts),
    weights: sessionWeights(facts.sessions),
    bookings: learnBookingCurve(firstBookings, firstLapsed, facts.days),
    ...returnsOf(facts),
    weekdays: shares ?? new Array<number>(PERIOD_DAYS).fill(1 / PERIOD_DAYS),
    weekdaysAssumed: shares === null,
    carriedOver: carriedOver(facts, sessions),
    methodPrior: commonWeights(someBacktests(usesByItem, facts.recordedFrom)),
  };
}

function wantsByItem({ unmetWants }: DemandFacts): Map<string, UseOfItem[]> {
  const byItem = new Map<string, UseOfItem[]>();
  for (const { item, sessionId, ...visit } of unmetWants) {
    const wants = byItem.get(item) ?? [];
    wants.push({ session: { ...visit, id: sessionId, bookedOn: null, uses: [] }, amount: null });
    byItem.set(item, wants);
  }
  return byItem;
}

/** Whole weeks from a day of the past until the plan. */
export function periodsSince(firstDay: number): number {
  return Math.min(MOST_PERIODS, Math.max(0, Math.floor(-firstDay / PERIOD_DAYS)));
}

/** Uses of each of the last weeks, the oldest first. */
export function countByPeriod(days: readonly number[], periods: number): number[] {
  const counts = new Array<number>(periods).fill(0);
  for (const day of days) {
    const index = periods - 1 - Math.floor((-day - 1) / PERIOD_DAYS);
    if (day < 0 && index >= 0) counts[index] = (counts[index] ?? 0) + 1;
  }
  return counts;
}

function someBacktests(
  usesByItem: ReadonlyMap<string, readonly UseOfItem[]>,
  recordedFrom: number,
): Backtest[] {
  const periods = periodsSince(recordedFrom);
  const telling = [...usesByItem]
    .filter(([, uses]) => uses.length >= FEWEST_USES_LEARNT_FROM)
    .sort(([one], [other]) => (one < other ? -1 : 1));
  const step = Math.max(1, telling.length / MOST_ITEMS_LEARNT_FROM);
  const backtests: Backtest[] = [];
  for (let at = 0; at < telling.length; at += step) {
    const [, uses] = telling[Math.floor(at)] ?? [];
    const days = (uses ?? []).map(({ session }) => session.day);
    backtests.push(backtest(countByPeriod(days, periods), HORIZON_PERIODS));
  }
  return backtests;
}

function returnsOf(facts: DemandFacts): Pick<StudioDemand, 'returns' | 'allReturns'> {
  const touchedUp = new Map<string, number>();
  for (const { visitKind, followsSessionId, day } of facts.sessions) {
    if (visitKind !== 'touch-up' || followsSessionId === null) continue;
    touchedUp.set(followsSessionId, Math.min(day, touchedUp.get(followsSessionId) ?? day));
  }
  const byProcedure = new Map<string, VisitToReturnFrom[]>();
  for (const { id, day, procedureId, visitKind } of facts.sessions) {
    const back = touchedUp.get(id);
    // A visit of another kind counts only if it was followed by a touch-up all the same.
    if (visitKind !== 'first session' && visitKind !== 'correction' && back === undefined) continue;
    const visits = byProcedure.get(procedureId) ?? [];
    visits.push({ day, returnedAfter: back === undefined ? null : Math.max(0, back - day) });
    byProcedure.set(procedureId, visits);
  }
  const supposed = facts.returnPerMille === null ? RETURN_RATE : facts.returnPerMille / 1000;
  const windowOf = (procedureId: string) => facts.touchUpDays.get(procedureId) ?? DEFAULT_TOUCH_UP_DAYS;
  const everyone = [...byProcedure.values()].flat();
  const [widest] = [...byProcedure].sort(([, one], [, other]) => other.length - one.length);
  const allReturns = learnReturns(everyone, windowOf(widest?.[0] ?? ''), supposed);
  const returns = new Map(
    [...new Set([...byProcedure.keys(), ...facts.touchUpDays.keys()])].map((procedureId) => [
      procedureId,
      learnReturns(byProcedure.get(procedureId) ?? [], windowOf(procedureId), allReturns.rate),
    ]),
  );
  return { returns, allReturns };
}

function carriedOver(facts: DemandFacts, sessions: ReadonlyMap<string, PastSession>): number {
  let taken = 0;
  let again = 0;
  for (const { visitKind, followsSessionId, uses } of facts.sessions) {
    const before = visitKind === 'touch-up' && followsSessionId ? sessions.get(followsSessionId) : undefined;
    if (!before) continue;
    const items = new Set(uses.map(({ item }) => item));
    taken += before.uses.length;
    again += before.uses.filter(({ item }) => items.has(item)).length;
  }
  return (again + TOUCH_UPS_SUPPOSED * CARRIED_OVER) / (taken + TOUCH_UPS_SUPPOSED);
}
