import { setPriority } from 'node:os';
import { parentPort, workerData } from 'node:worker_threads';
import { openSnapshot } from '../../platform/database/snapshot.js';
import { dateOfDay } from '../decision/plan-days.js';
import type { ItemDemandFacts } from '../demand/demand-facts.js';
import { studioDemand } from '../demand/studio-demand.js';
import { calibrate } from '../replay/calibration.js';
import { factsAsOf, itemFactsAsOf } from '../replay/facts-as-of.js';
import { type FixedLevels, orderBetween, usualLevels } from '../replay/fixed-levels.js';
import { pastForecasts } from '../replay/past-forecasts.js';
import { type PastNeeds, pastNeeds } from '../replay/past-needs.js';
import { type LinkedItem, linkedNames, successionAsOf } from '../replay/past-succession.js';
import { planThen } from '../replay/plan-then.js';
import { realShelves } from '../replay/real-shelves.js';
import { replayAssumptions } from '../replay/replay-assumptions.js';
import { type ItemRecord, loadItemRecords } from '../replay/replay-facts.query.js';
import {
  type ItemPast,
  type ReplayMorning,
  type ReplayResult,
  replayItem,
  replayReal,
  replaySteps,
} from '../replay/replay-item.js';
import { DAYS_NEEDED, weeksToReplay } from '../replay/replay-span.js';
import type {
  ReplayItemView,
  ReplayOutcomeView,
  ReplayResultView,
  ReplaySumsView,
} from '../replay/replays.views.js';
import { cheapestOffer, usualTerms } from '../replay/usual-terms.js';
import { HORIZON_DAYS, LONGEST_DAYS } from './item-horizon.js';
import type { PlanItemFacts, PlanOffer } from './item-line.js';
import { loadPlanFacts, type PlanFacts } from './plan-facts.query.js';
import type { PlanMessage, PlanTask } from './plan-task.interface.js';

const reviewEveryDays = 7;
/** Of each decision: it is one of thousands, and a plan's own takes its time. */
const mostPaths = 200;
/** The most items that are replayed, those most needed first. */
const mostItems = 200;
const levels = [0.5, 0.75, 0.95];

const say = (message: PlanMessage) => parentPort?.postMessage(message);

/** One item on its way through the past. */
interface Walked {
  item: PlanItemFacts;
  offer: PlanOffer;
  past: ItemPast;
  fixedLevels: FixedLevels & { byHand: boolean };
  steps: ReturnType<typeof replaySteps>;
  step: IteratorResult<ReplayMorning, ReplayResult> | null;
  shortages: number[];
}

/** Walks through the record as if the plan had been followed, week by week, and sets beside it what was done. */
async function replay(task: PlanTask): Promise<void> {
  // On Linux a priority is a thread's own; elsewhere it would be that of the whole service.
  if (process.platform === 'linux') setPriority(0, 10);
  const startedAt = performance.now();
  const snapshot = await openSnapshot(task.place);
  let facts: PlanFacts;
  let records: ReadonlyMap<string, ItemRecord>;
  let weeks: number;
  try {
    facts = await loadPlanFacts(snapshot.read, task);
    weeks = weeksToReplay(-facts.demand.recordedFrom);
    records = weeks === 0 ? new Map() : await loadItemRecords(snapshot.read, task, facts, -7 * weeks);
  } finally {
    await snapshot.close();
  }
  const summary = weeks === 0 ? tooShort(task, facts) : replayed(task, facts, records, weeks);
  summary.runningSeconds = Math.round((performance.now() - startedAt) / 100) / 10;
  say({ kind: 'done', factsDigest: null, summary });
}

function tooShort(task: PlanTask, facts: PlanFacts): ReplayResultView {
  const none = sumsOf([]);
  return {
    tooShort: { recordedDays: -facts.demand.recordedFrom, neededDays: DAYS_NEEDED },
    ...{ from: task.plan.plannedOn, until: task.plan.plannedOn, weeks: 0, currency: facts.currency },
    ...{ items: 0, itemsWithoutOffer: 0, itemsBeyondLimit: 0, plan: none, asOrdered: none, fixed: none },
    ...{ lines: [], calibration: [], calibrationWeeks: 0, assumptions: [], runningSeconds: 0 },
  };
}

function replayed(
  task: PlanTask,
  facts: PlanFacts,
  records: ReadonlyMap<string, ItemRecord>,
  weeks: number,
): ReplayResultView {
  const { plannedOn, seed } = task.plan;
  const firstDay = -7 * weeks;
  const paths = Math.min(mostPaths, task.paths);
  const needs = pastNeeds(
    facts.demand,
    [...facts.items, ...facts.goneItems].map(({ demand }) => demand),
  );
  const needed = facts.items.filter(({ demand }) =>
    (needs.get(demand.item)?.needs ?? []).some(({ day }) => day >= firstDay),
  );
  const offered = needed.flatMap((item) => {
    const offer = cheapestOffer(item.offers);
    return offer === undefined ? [] : [{ item, offer }];
  });
  const countOf = (item: PlanItemFacts) => needs.get(item.demand.item)?.needs.length ?? 0;
  const chosen = [...offered]
    .sort((one, other) => countOf(other.item) - countOf(one.item))
    .slice(0, mostItems);
  const walked = chosen.map(({ item, offer }): Walked => {
    const own = needs.get(item.demand.item)?.needs ?? [];
    const record = records.get(item.demand.item);
    const terms = usualTerms(offer, item.settings, reviewEveryDays);
    const past = pastOf(item, terms, own, record, firstDay);
    const before = own.filter(({ day }) => day < past.firstDay);
    const span = Math.min(-facts.demand.recordedFrom, 365) + past.firstDay;
    const since = past.firstDay - span;
    const perDay =
      span <= 0 ? 0 : before.reduce((sum, { day, units }) => sum + (day >= since ? units : 0), 0) / span;
    const usual = usualLevels(perDay, terms);
    const minimum = record?.minimumUnits ?? null;
    const fixedLevels =
      minimum === null
        ? { ...usual, byHand: false }
        : {
            minimumUnits: minimum,
            maximumUnits: minimum + usual.maximumUnits - usual.minimumUnits,
            byHand: true,
          };
    return { item, offer, past, fixedLevels, steps: replaySteps(past), step: null, shortages: [] };
  });
  // The forecasts are one step for each week as well.
  const steps = 2 * weeks;
  say({ kind: 'progress', done: 0, items: steps });
  const linked = linkedItems(facts, records, needs, firstDay);
  const successions = new Map<number, ReadonlyMap<string, ItemDemandFacts>>();
  const asOf = (demand: ItemDemandFacts, day: number) =>
    successions.get(day)?.get(demand.item) ?? itemFactsAsOf(demand, day);
  for (let week = 0; week < weeks; week++) {
    const day = firstDay + 7 * week;
    const studio = studioDemand({ ...factsAsOf(facts.demand, day), days: LONGEST_DAYS });
    if (linked.length > 0) successions.set(day, successionAsOf(studio, linked, day, HORIZON_DAYS));
    for (const each of walked) {
      if (each.past.firstDay > day) continue;
      each.step ??= each.steps.next();
      if (each.step.done) continue;
      const item = itemThen(each.item, asOf(each.item.demand, day));
      const decided = planThen(studio, item, each.offer, each.step.value, { plannedOn, seed, paths });
      each.shortages.push(decided.shortageMinor);
      each.step = each.steps.next(decided.packs);
    }
    say({ kind: 'progress', done: week + 1, items: steps });
  }
  const lines = walked.map((each) => lineOf(each, facts, plannedOn));
  const foretold = pastForecasts(
    facts.demand,
    walked.map(({ item }) => item.demand),
    { horizonDays: 7, mostOrigins: weeks, levels, paths, seed },
    asOf,
  );
  const ofDifference = (line: ReplayItemView) => Math.abs(line.plan.costMinor - line.asOrdered.costMinor);
  return {
    tooShort: null,
    from: dateOfDay(plannedOn, firstDay),
    until: dateOfDay(plannedOn, -1),
    weeks,
    currency: facts.currency,
    items: walked.length,
    itemsWithoutOffer: needed.length - offered.length,
    itemsBeyondLimit: offered.length - chosen.length,
    plan: sumsOf(lines.map(({ plan }) => plan)),
    asOrdered: sumsOf(lines.map(({ asOrdered }) => asOrdered)),
    fixed: sumsOf(lines.map(({ fixed }) => fixed)),
    lines: [...lines].sort((one, other) => ofDifference(other) - ofDifference(one)),
    calibration: calibrate(foretold).map(({ level, forecasts, enough, claimed, standardError, verdict }) => ({
      ...{ level, forecasts, verdict },
      enough: Math.round((enough ?? 0) * forecasts),
      claimed: rounded(claimed ?? 0),
      standardError: rounded(standardError ?? 0),
    })),
    calibrationWeeks: weeks,
    assumptions: replayAssumptions({
      paths,
      reviewEveryDays,
      amountsAssumed: walked.reduce(
        (sum, { item }) => sum + (needs.get(item.demand.item)?.amountsAssumed ?? 0),
        0,
      ),
    }),
    runningSeconds: 0,
  };
}

function linkedItems(
  { items, goneItems }: PlanFacts,
  records: ReadonlyMap<string, ItemRecord>,
  needs: ReadonlyMap<string, PastNeeds>,
  firstDay: number,
): LinkedItem[] {
  const all = [...items, ...goneItems];
  const names = linkedNames(all.map(({ demand }) => demand));
  return all
    .filter(({ demand }) => names.has(demand.item))
    .map(({ demand, stock: { openedLifeDays } }) => {
      const own = needs.get(demand.item)?.needs ?? [];
      const { stock = [], received = [] } = records.get(demand.item) ?? {};
      const past = { stock, received, needs: own, openedLifeDays };
      return { demand, needs: own, shelves: realShelves(past, firstDay, reviewEveryDays) };
    });
}

/** An item as it was planned then: what runs out since another takes its place did not before that one had come. */
function itemThen(item: PlanItemFacts, demand: ItemDemandFacts): PlanItemFacts {
  const isReplacedNow = item.demand.replacedFrom !== undefined;
  const wasReplaced = demand.replacedFrom !== undefined;
  if (!isReplacedNow || wasReplaced || item.settings.rangeChoice !== 'let run out')
    return { ...item, demand };
  return { ...item, demand, settings: { ...item.settings, rangeChoice: null } };
}

/** A newer item begins in the week in which it first came or was needed; its first goods come to all alike. */
function pastOf(
  item: PlanItemFacts,
  terms: ItemPast['terms'],
  needs: ItemPast['needs'],
  record: ItemRecord | undefined,
  firstDay: number,
): ItemPast {
  const stock = record?.stock ?? [];
  const received = (record?.received ?? []).filter(({ day }) => day < 0);
  const begun = stock.length > 0 || (needs[0]?.day ?? 0) < firstDay;
  const first = Math.min(needs[0]?.day ?? 0, ...received.map(({ day }) => day));
  const start = begun ? firstDay : firstDay + 7 * Math.floor((first - firstDay) / 7);
  return {
    firstDay: start,
    stock,
    needs: needs.filter(({ day }) => day >= start),
    arrivals: received.map(({ orderId, bought, orderedOn, day, batch }) => ({
      ...{ orderId, day, batch },
      orderedOn:
        bought && !(!begun && day === first)
          ? (orderedOn ?? day - terms.leadTimeDays)
          : // Nobody decided on it: it comes to all.
            start - 1,
    })),
    openedLifeDays: item.stock.openedLifeDays,
    terms,
  };
}

function lineOf(
  { item, past, fixedLevels, step, shortages }: Walked,
  facts: PlanFacts,
  plannedOn: string,
): ReplayItemView {
  if (!step?.done) throw new Error(`The replay of ${item.demand.item} did not come to its end.`);
  const shortageMinor = shortages.reduce((sum, each) => sum + each, 0) / Math.max(1, shortages.length);
  const { packMinor, packContainers, unitsEach } = past.terms;
  const unitMinor = packMinor / (packContainers * unitsEach);
  const outcome = (result: ReplayResult) => outcomeOf(result, shortageMinor, unitMinor);
  const { minimumUnits, maximumUnits, byHand } = fixedLevels;
  return {
    itemKind: item.kind,
    itemKey: item.key,
    label: facts.about.get(item.demand.item)?.item.label ?? item.key,
    unit: item.unit,
    from: dateOfDay(plannedOn, past.firstDay),
    neededUnits: step.value.neededUnits,
    fixedLevels: { minimumUnits, maximumUnits, byHand },
    plan: outcome(step.value),
    asOrdered: outcome(replayReal(past)),
    fixed: outcome(replayItem(past, orderBetween(fixedLevels, past.terms))),
  };
}

function outcomeOf(result: ReplayResult, shortageMinor: number, unitMinor: number): ReplayOutcomeView {
  const { shortDays, unmetUnits, wasteUnits, wasteMinor, orders, orderedUnits, endUnits, costMinor } = result;
  return {
    ...{ shortDays, unmetUnits, wasteUnits, endUnits },
    wasteMinor: Math.round(wasteMinor),
    endMinor: Math.round(endUnits * unitMinor),
    orders: orders.length,
    orderedUnits: Math.round(orderedUnits),
    costMinor: Math.round(costMinor + unmetUnits * shortageMinor),
  };
}

function sumsOf(outcomes: readonly ReplayOutcomeView[]): ReplaySumsView {
  const sum = (figure: (outcome: ReplayOutcomeView) => number) =>
    outcomes.reduce((total, outcome) => total + figure(outcome), 0);
  return {
    shortDays: sum(({ shortDays }) => shortDays),
    shortItems: outcomes.filter(({ shortDays }) => shortDays > 0).length,
    wasteMinor: sum(({ wasteMinor }) => wasteMinor),
    orders: sum(({ orders }) => orders),
    endMinor: sum(({ endMinor }) => endMinor),
    costMinor: sum(({ costMinor }) => costMinor),
  };
}

function rounded(share: number): number {
  return Math.round(share * 10_000) / 10_000;
}

void replay(workerData as PlanTask);
