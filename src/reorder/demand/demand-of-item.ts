import { ASSUMED_UNITS } from '../item.js';
import { FEWEST_PERIODS } from './backtest.js';
import { type CountForecast, forecastCounts } from './count-forecast.js';
import { demandBetween } from './demand-between.js';
import type { BookedCourse, Booking, ItemDemandFacts, KitListFacts, Visit } from './demand-facts.js';
import type {
  AmountDistribution,
  CountComponent,
  DemandModel,
  ExpectedUse,
  ForecastMethod,
  UnforeseenUse,
} from './demand-model.js';
import { joinSmallChances } from './joined-uses.js';
import { amountDistribution, type LearntUse, learnUse, meanAmount, recencyWeight } from './learnt-use.js';
import type { SeriesClass } from './series-class.js';
import {
  countByPeriod,
  HORIZON_PERIODS,
  PERIOD_DAYS,
  periodsSince,
  type StudioDemand,
  studioDemand,
  type UseOfItem,
} from './studio-demand.js';
import { returnStillExpected } from './touch-ups-owed.js';
import { weekdayIndex } from './weekday-shares.js';

export { type StudioDemand, studioDemand };

/** Something supposed and not known, with its figures. */
export interface DemandAssumption {
  code:
    | 'no history'
    | 'short history'
    | 'level assumed'
    | 'amount from kit list'
    | 'amount assumed'
    | 'return rate assumed'
    | 'return delay assumed'
    | 'booking curve assumed'
    | 'attendance assumed'
    | 'weekdays assumed'
    | 'history of predecessor'
    | 'course without kit list'
    | 'artist leaves'
    | 'bookings after the last day';
  figures: Readonly<Record<string, number | string>>;
}

/** A method of forecasting with all its variants. */
export interface DescribedMethod {
  method: ForecastMethod;
  /** Those of its variants added up. */
  weight: number;
  /** Mean logarithmic score, negated: smaller is better; of its variants, each by its weight. Null: nothing was scored. */
  score: number | null;
}

/** What is expected, by how much of it is known, and how the unknown part is foretold: for an explanation. */
export interface DemandDescription {
  /** Expected units of each seven days from day 0 on. */
  weeks: { known: number; halfKnown: number; unforeseen: number }[];
  class: SeriesClass;
  adi: number | null;
  cv2: number | null;
  /** Methods of the main unforeseen series, the most weighted first. */
  methods: DescribedMethod[];
  origins: number;
  /** Units of one use, on average. */
  unitsOfUse: number;
}

export interface ItemDemand {
  model: DemandModel;
  assumptions: DemandAssumption[];
  description: DemandDescription;
}

/** What all items' touch-ups tell counts as much as so many of this item's. */
const TOUCH_UPS_SUPPOSED = 8;
/** Fewer sessions than that, and what is supposed weighs more than what was seen. */
const FEWEST_SESSIONS = 20;
const FEWEST_TOUCH_UPS = 10;
/** A year of weeks: how often sessions are held now. */
const WEEKS_OF_LATE = 52;
/** A spread beyond this is no studio's, and is drawn no better. */
const LARGEST_DISPERSION = 1_000;

/**
 * What will be needed of one item, as chances.
 *
 * Known: bookings and courses. Half known: touch-ups owed and not booked. Not known: sessions nobody has booked yet, by a
 * series of what sessions other than touch-ups took; touch-ups of visits that still lie ahead, by a series of touch-ups; and
 * what nobody can know before, such as a shade changed at the touch-up.
 *
 * @param horizonDays until which an order made now has to last; the forecast is judged by about as long, at most four weeks
 */
export function demandOfItem(studio: StudioDemand, item: ItemDemandFacts, horizonDays: number): ItemDemand {
  const { days } = studio.facts;
  const whole = demandWithHistory(studio, item, horizonDays);
  const inheritsFrom = item.replaces === null ? 0 : (item.inheritsFrom ?? 0);
  const replacedFrom = item.replacedFrom ?? days;
  if (inheritsFrom <= 0 && replacedFrom >= days) return whole;
  // Until it inherits, only its own history counts.
  const early =
    inheritsFrom <= 0
      ? { expected: [], unforeseen: [] }
      : demandBetween(
          demandWithHistory(studio, { ...item, replaces: null }, horizonDays).model,
          0,
          Math.min(inheritsFrom, replacedFrom),
        );
  const late = demandBetween(whole.model, inheritsFrom, replacedFrom);
  const model: DemandModel = {
    days,
    expected: [...early.expected, ...late.expected],
    unforeseen: [...early.unforeseen, ...late.unforeseen],
  };
  return { ...whole, model, description: { ...whole.description, weeks: expectedWeeks(model) } };
}

/** The demand by the item's own history and the one it inherits, as if it had always been its own. */
function demandWithHistory(studio: StudioDemand, item: ItemDemandFacts, horizonDays: number): ItemDemand {
  const learning = learn(studio, item);
  const unforeseen = unforeseenUses(learning, horizonDays);
  const expected = joinSmallChances([
    ...bookedUses(learning),
    ...courseUses(learning),
    ...owedUses(learning),
  ]);
  const { days } = studio.facts;
  const model: DemandModel = { days, expected, unforeseen: unforeseen.map(({ use }) => use) };
  const main = [...unforeseen].sort((one, other) => other.perPeriod - one.perPeriod)[0]?.forecast;
  return {
    model,
    assumptions: assumptionsOf(learning, unforeseen, model),
    description: {
      weeks: expectedWeeks(model),
      class: main?.class ?? 'no demand',
      adi: main?.adi ?? null,
      cv2: main?.cv2 ?? null,
      methods: main === undefined ? [] : methodsOf(main),
      origins: main?.origins ?? 0,
      unitsOfUse: meanAmount(learning.amountOfUse),
    },
  };
}

/** What one item's history says, before it is put together. */
interface Learning {
  studio: StudioDemand;
  item: ItemDemandFacts;
  /** By sessions, and what others wanted that were never completed. */
  uses: readonly UseOfItem[];
  /** Touch-ups that took what the visit before took, and all other uses by sessions. */
  carried: readonly UseOfItem[];
  others: readonly UseOfItem[];
  /** Touch-ups that took what the visit before did not take. */
  changed: readonly UseOfItem[];
  usesOfVisit: (visit: Visit) => LearntUse;
  /** That a touch-up takes the item if the visit before took it. */
  carriedOver: number;
  amountBySession: ReadonlyMap<string, number | null>;
  amountOfUse: AmountDistribution;
  amountFrom: LearntUse['amountFrom'];
  /** Uses of the item it takes the place of. */
  inherited: number;
  periods: number;
}

function learn(studio: StudioDemand, item: ItemDemandFacts): Learning {
  const own = studio.usesByItem.get(item.item) ?? [];
  const before = item.replaces === null ? [] : (studio.usesByItem.get(item.replaces) ?? []);
  const taken = [...joined(own, before)];
  const wanted = joined(
    studio.wantsByItem.get(item.item) ?? [],
    item.replaces === null ? [] : (studio.wantsByItem.get(item.replaces) ?? []),
  );
  const uses = [...taken, ...wanted];
  const amountBySession = new Map(taken.map(({ session, amount }) => [session.id, amount]));
  const carried: UseOfItem[] = [];
  const others: UseOfItem[] = [];
  const changed: UseOfItem[] = [];
  for (const use of uses) {
    const { visitKind, followsSessionId } = use.session;
    const known = followsSessionId !== null && studio.sessions.has(followsSessionId);
    if (visitKind !== 'touch-up' || !known) others.push(use);
    else if (amountBySession.has(followsSessionId ?? '')) carried.push(use);
    else changed.push(use);
  }
  const followed = studio.facts.sessions.filter(
    ({ visitKind, followsSessionId }) =>
      visitKind === 'touch-up' && followsSessionId !== null && amountBySession.has(followsSessionId),
  ).length;
  const carriedOn = carried.filter(({ session }) => amountBySession.has(session.id)).length;
  const amounts = amountsOf(taken, item);
  const assumed = item.unitsOfKitQuantity ?? ASSUMED_UNITS.microlitres;
  const first = own.reduce((day, { session }) => Math.min(day, session.day), item.availableFrom ?? 0);
  const fromWhen = before.length > 0 || item.availableFrom === null ? studio.facts.recordedFrom : first;
  const availableFrom = Math.max(fromWhen, studio.facts.recordedFrom);
  const usesOfVisit = learnUse(
    studio.weights,
    taken.map(({ session, amount }) => ({ ...visitOf(session), day: session.day, amount })),
    kitAmounts(studio, item),
    { availableFrom, assumedAmount: assumed },
  );
  const named = studio.facts.kitLists.some((list) => list.items.some((line) => line.item === item.item));
  return {
    ...{ studio, item, uses, carried, others, changed, usesOfVisit, amountBySession },
    carriedOver:
      (carriedOn + TOUCH_UPS_SUPPOSED * studio.carriedOver) /
      (Math.max(followed, carriedOn) + TOUCH_UPS_SUPPOSED),
    amountOfUse: amountDistribution(amounts ?? new Map([[assumed, 1]])),
    amountFrom: amounts ? 'sessions' : named && item.unitsOfKitQuantity !== null ? 'kit list' : 'assumption',
    inherited: before.length,
    periods: periodsSince(availableFrom),
  };
}

/** A session that took both the old and the new item took it once. */
function joined(own: readonly UseOfItem[], before: readonly UseOfItem[]): Iterable<UseOfItem> {
  const bySession = new Map<string, UseOfItem>();
  for (const use of [...before, ...own]) {
    const known = bySession.get(use.session.id);
    const amount =
      known?.amount == null || use.amount === null
        ? (use.amount ?? known?.amount ?? null)
        : use.amount + known.amount;
    bySession.set(use.session.id, { session: use.session, amount });
  }
  return bySession.values();
}

function visitOf({ procedureId, visitKind, artistId }: Visit): Visit {
  return { procedureId, visitKind, artistId };
}

function amountsOf(uses: readonly UseOfItem[], { otherUses }: ItemDemandFacts): Map<number, number> | null {
  const amounts = new Map<number, number>();
  const all = [...uses.map(({ session, amount }) => ({ day: session.day, amount })), ...otherUses];
  for (const { day, amount } of all) {
    if (amount !== null && amount > 0) amounts.set(amount, (amounts.get(amount) ?? 0) + recencyWeight(day));
  }
  return amounts.size === 0 ? null : amounts;
}

function kitAmounts({ facts }: StudioDemand, { item, unitsOfKitQuantity }: ItemDemandFacts) {
  return ({ procedureId, artistId }: Visit, level: 'all artists' | 'artist'): number | null => {
    const whose = level === 'artist' ? artistId : null;
    const list = facts.kitLists.find((each) => each.procedureId === procedureId && each.artistId === whose);
    const line = list?.items.find((each) => each.item === item);
    return line
      ? Math.max(1, Math.round(line.quantity * (unitsOfKitQuantity ?? ASSUMED_UNITS.microlitres)))
      : null;
  };
}

function bookedUses({
  studio,
  usesOfVisit,
  amountBySession,
  carriedOver,
  amountOfUse,
}: Learning): ExpectedUse[] {
  return bookingsHeld(studio).flatMap(({ day, followsSessionId, ...visit }) => {
    const attended = studio.bookings.attended[day] ?? 1;
    const followed = visit.visitKind === 'touch-up' && followsSessionId !== null;
    if (followed && studio.sessions.has(followsSessionId)) {
      // What the visit before did not take is no part of what is expected: that it is changed is a series of its own.
      if (!amountBySession.has(followsSessionId)) return [];
      const amount = amountBySession.get(followsSessionId) ?? null;
      return [onDay('booking', day, attended * carriedOver, certain(amount) ?? amountOfUse)];
    }
    const { chance, amount } = usesOfVisit(visitOf(visit));
    return [onDay('booking', day, attended * chance, amount)];
  });
}

/** Bookings within the days looked ahead that the artist is still there for. */
function bookingsHeld({ facts }: StudioDemand): Booking[] {
  return facts.bookings.filter(
    ({ day, artistId }) => day >= 0 && day < facts.days && day <= (facts.lastDays.get(artistId) ?? day),
  );
}

function courseUses(learning: Learning): ExpectedUse[] {
  const { studio, item, amountOfUse, amountFrom } = learning;
  return coursesAhead(studio).flatMap(({ list, procedureId, day, trainees }) => {
    if (list === undefined) {
      const { chance, amount } = usesOfTrainee(learning, procedureId);
      return chance > 0 ? Array.from({ length: trainees }, () => onDay('course', day, chance, amount)) : [];
    }
    const line = list.items.find((each) => each.item === item.item);
    if (!line) return [];
    const each =
      item.unitsOfKitQuantity ??
      (amountFrom === 'sessions' ? meanAmount(amountOfUse) : ASSUMED_UNITS.microlitres);
    const amount = certain(Math.round(trainees * line.quantity * each));
    return amount ? [onDay('course', day, 1, amount)] : [];
  });
}

/** Courses within the days looked ahead, each with the kit list it goes by. */
function coursesAhead({ facts }: StudioDemand): (BookedCourse & { list: KitListFacts | undefined })[] {
  return facts.courses
    .filter(({ day, trainees }) => day >= 0 && day < facts.days && trainees > 0)
    .map((course) => {
      const lists = facts.kitLists.filter((list) => list.procedureId === course.procedureId);
      return { ...course, list: lists.find(({ artistId }) => artistId === null) ?? lists[0] };
    });
}

/** Without a kit list a trainee uses what a first session of the procedure does, whoever holds it. */
function usesOfTrainee({ usesOfVisit }: Learning, procedureId: string): LearntUse {
  return usesOfVisit({ procedureId, visitKind: 'first session', artistId: '' });
}

function owedUses({ studio, amountBySession, carriedOver, amountOfUse }: Learning): ExpectedUse[] {
  const { facts } = studio;
  return facts.owedTouchUps.flatMap(({ sessionId }): ExpectedUse[] => {
    const session = studio.sessions.get(sessionId);
    if (!session || !amountBySession.has(sessionId)) return [];
    const returns = studio.returns.get(session.procedureId) ?? studio.allReturns;
    const still = returnStillExpected(returns, Math.max(0, -session.day));
    if (still === null) return [];
    const { dayWeights, share } = until(still.dayWeights, facts.lastDays.get(session.artistId));
    if (dayWeights.length === 0) return [];
    return [
      {
        source: 'touch-up',
        chance: still.chance * share * carriedOver,
        firstDay: 0,
        dayWeights,
        amount: certain(amountBySession.get(sessionId) ?? null) ?? amountOfUse,
      },
    ];
  });
}

/** The days until the last one of whoever would do it, and their share of all. */
function until(
  dayWeights: readonly number[],
  lastDay: number | undefined,
): { dayWeights: number[]; share: number } {
  const kept = lastDay === undefined ? [...dayWeights] : dayWeights.slice(0, Math.max(0, lastDay + 1));
  const share = kept.reduce((sum, weight) => sum + weight, 0);
  return share > 1e-9
    ? { dayWeights: kept.map((weight) => weight / share), share }
    : { dayWeights: [], share: 0 };
}

function onDay(
  source: ExpectedUse['source'],
  day: number,
  chance: number,
  amount: AmountDistribution,
): ExpectedUse {
  return { source, chance, firstDay: day, dayWeights: [1], amount };
}

function certain(amount: number | null): AmountDistribution | null {
  return amount === null || amount <= 0 ? null : { amounts: [amount], weights: [1] };
}

interface ForetoldSeries {
  use: UnforeseenUse;
  forecast: CountForecast;
  /** Expected uses of a period. */
  perPeriod: number;
}

function unforeseenUses(learning: Learning, horizonDays: number): ForetoldSeries[] {
  const { studio, item, periods } = learning;
  const { facts, bookings } = studio;
  const horizonPeriods = Math.max(1, Math.min(HORIZON_PERIODS, Math.round(horizonDays / PERIOD_DAYS) || 1));
  const days = Array.from({ length: facts.days }, (_, day) => day);
  const dayShares = Float64Array.from(days, (day) => studio.weekdays[weekdayIndex(facts.weekday, day)] ?? 0);
  const notBooked = Float64Array.from(days, (day) => bookings.notBooked[day] ?? 1);
  const visitAhead = Float64Array.from(days, (day) => delayAtMost(studio, learning.carried, day));
  const always = new Float64Array(facts.days).fill(1);

  const foretell = (
    uses: readonly { day: number; amount: number | null }[],
    unknown: Float64Array,
    assumedMean: number,
    lastDay?: number,
  ): ForetoldSeries[] => {
    if (uses.length === 0 && assumedMean === 0) return [];
    const counts = countByPeriod(
      uses.map(({ day }) => day),
      periods,
    );
    const forecast = forecastCounts(counts, { horizonPeriods, assumedMean, prior: studio.methodPrior });
    const components = forecast.components.map(bounded);
    const perPeriod = components.reduce((sum, component) => sum + component.weight * meanOf(component), 0);
    if (!(perPeriod > 0)) return [];
    const unknownShares =
      lastDay === undefined ? unknown : unknown.map((share, day) => (day > lastDay ? 0 : share));
    const amount = learning.amountOfUse;
    return [
      { use: { components, periodDays: PERIOD_DAYS, dayShares, unknownShares, amount }, forecast, perPeriod },
    ];
  };

  const stays = ({ session }: UseOfItem) => !facts.lastDays.has(session.artistId);
  const assumed =
    periods < FEWEST_PERIODS
      ? assumedPerPeriod(learning)
      : { staying: 0, leaving: new Map<string, number>() };
  const series = [
    ...foretell(learning.others.filter(stays).map(dated), notBooked, assumed.staying),
    ...foretell(learning.carried.filter(stays).map(dated), visitAhead, 0),
    ...foretell([...learning.changed.filter(stays).map(dated), ...item.otherUses], always, 0),
  ];
  for (const [artistId, lastDay] of facts.lastDays) {
    if (lastDay < 0) continue;
    const own = (uses: readonly UseOfItem[]) =>
      uses.filter(({ session }) => session.artistId === artistId).map(dated);
    series.push(
      ...foretell(own(learning.others), notBooked, assumed.leaving.get(artistId) ?? 0, lastDay),
      ...foretell(own(learning.carried), visitAhead, 0, lastDay),
      ...foretell(own(learning.changed), always, 0, lastDay),
    );
  }
  return series;
}

function dated({ session, amount }: UseOfItem): { day: number; amount: number | null } {
  return { day: session.day, amount };
}

/** That a touch-up comes at most so many days after its visit, by the procedures this item is touched up in. */
function delayAtMost(
  { returns, allReturns }: StudioDemand,
  carried: readonly UseOfItem[],
  day: number,
): number {
  const [use] = carried;
  const { delays } = (use && returns.get(use.session.procedureId)) ?? allReturns;
  let sum = 0;
  for (let delay = 0; delay <= Math.min(day, delays.length - 1); delay++) sum += delays[delay] ?? 0;
  return Math.min(1, sum);
}

/** What a week's sessions of late would take by what is learnt of them, where the item's own weeks do not tell. */
function assumedPerPeriod({ studio, usesOfVisit }: Learning): {
  staying: number;
  leaving: Map<string, number>;
} {
  const { sessions, lastDays, recordedFrom } = studio.facts;
  const weeks = Math.max(1, Math.min(WEEKS_OF_LATE, periodsSince(recordedFrom)));
  let staying = 0;
  const leaving = new Map<string, number>();
  for (const session of sessions) {
    if (session.visitKind === 'touch-up' || session.day < -weeks * PERIOD_DAYS) continue;
    const { chance } = usesOfVisit(visitOf(session));
    if (lastDays.has(session.artistId)) {
      leaving.set(session.artistId, (leaving.get(session.artistId) ?? 0) + chance / weeks);
    } else staying += chance / weeks;
  }
  return { staying, leaving };
}

function bounded(component: CountComponent): CountComponent {
  return component.kind === 'empirical'
    ? component
    : { ...component, dispersion: Math.min(LARGEST_DISPERSION, component.dispersion) };
}

function meanOf(component: CountComponent): number {
  if (component.kind === 'negative binomial') return component.mean;
  return component.counts.reduce((sum, count) => sum + count, 0) / Math.max(1, component.counts.length);
}

/** Expected units of each seven days from day 0 on. */
export function expectedWeeks({ days, expected, unforeseen }: DemandModel): DemandDescription['weeks'] {
  const weeks = Array.from({ length: Math.ceil(days / 7) }, () => ({
    known: 0,
    halfKnown: 0,
    unforeseen: 0,
  }));
  for (const { source, chance, firstDay, dayWeights, amount } of expected) {
    const units = chance * meanAmount(amount);
    for (const [index, weight] of dayWeights.entries()) {
      const week = weeks[Math.floor((firstDay + index) / 7)];
      if (week) week[source === 'touch-up' ? 'halfKnown' : 'known'] += units * weight;
    }
  }
  for (const { components, dayShares, unknownShares, amount } of unforeseen) {
    const mean = components.reduce((sum, component) => sum + component.weight * meanOf(component), 0);
    const units = mean * meanAmount(amount);
    for (let day = 0; day < days; day++) {
      const week = weeks[Math.floor(day / 7)];
      if (week) week.unforeseen += units * (dayShares[day] ?? 0) * (unknownShares[day] ?? 0);
    }
  }
  return weeks;
}

function methodsOf({ components, scores }: CountForecast): DescribedMethod[] {
  const methods = new Map<ForecastMethod, DescribedMethod>();
  for (const { method, weight } of components) {
    const known = methods.get(method) ?? { method, weight: 0, score: null };
    methods.set(method, { ...known, weight: known.weight + weight });
  }
  for (const { method, weight, logScore } of scores) {
    const described = methods.get(method);
    if (!described || weight <= 0 || logScore === null) continue;
    described.score = (described.score ?? 0) + (logScore * weight) / described.weight;
  }
  return [...methods.values()].sort((one, other) => other.weight - one.weight);
}

function assumptionsOf(
  learning: Learning,
  series: readonly ForetoldSeries[],
  model: DemandModel,
): DemandAssumption[] {
  const { studio, uses, periods, amountFrom, amountOfUse, inherited, item } = learning;
  const { facts, bookings, allReturns } = studio;
  const assumptions: DemandAssumption[] = [];
  const add = (code: DemandAssumption['code'], figures: DemandAssumption['figures'] = {}) =>
    assumptions.push({ code, figures });

  if (uses.length === 0 && item.otherUses.length === 0) add('no history');
  else if (periods < FEWEST_PERIODS) add('short history', { weeks: periods });
  const level = series.filter(({ forecast }) =>
    forecast.components.some(({ method }) => method === 'level assumed'),
  );
  if (level.length > 0) {
    add('level assumed', { usesPerWeek: level.reduce((sum, { perPeriod }) => sum + perPeriod, 0) });
  }
  const isNeeded = model.expected.length > 0 || series.length > 0;
  if (amountFrom !== 'sessions' && isNeeded) {
    add(amountFrom === 'kit list' ? 'amount from kit list' : 'amount assumed', {
      units: meanAmount(amountOfUse),
    });
  }
  if (inherited > 0) {
    const fromDay = item.inheritsFrom ?? 0;
    add('history of predecessor', { item: item.replaces ?? '', uses: inherited, fromDay });
  }
  const withoutList = coursesAhead(studio).filter(
    ({ list, procedureId }) => list === undefined && usesOfTrainee(learning, procedureId).chance > 0,
  ).length;
  if (withoutList > 0) add('course without kit list', { courses: withoutList });
  if (!isNeeded) return assumptions;

  if (allReturns.visits < FEWEST_SESSIONS) {
    add('return rate assumed', { perMille: Math.round(allReturns.rate * 1000), visits: allReturns.visits });
  }
  if (allReturns.touchUps < FEWEST_TOUCH_UPS) add('return delay assumed', { touchUps: allReturns.touchUps });
  if (bookings.sessions < FEWEST_SESSIONS) add('booking curve assumed', { sessions: bookings.sessions });
  if (bookings.sessions + bookings.lapsed < FEWEST_SESSIONS) {
    add('attendance assumed', { perMille: Math.round((bookings.attended[0] ?? 1) * 1000) });
  }
  if (studio.weekdaysAssumed) add('weekdays assumed');
  for (const [artistId, lastDay] of facts.lastDays) {
    if (lastDay < facts.days && uses.some(({ session }) => session.artistId === artistId)) {
      add('artist leaves', { artistId, lastDay });
    }
    const late = facts.bookings.filter(
      (booking) => booking.artistId === artistId && booking.day > lastDay,
    ).length;
    if (late > 0) add('bookings after the last day', { artistId, bookings: late });
  }
  return assumptions;
}
