import { createHash } from 'node:crypto';
import { setPriority } from 'node:os';
import { isDeepStrictEqual } from 'node:util';
import { parentPort, Worker, workerData } from 'node:worker_threads';
import { openSnapshot, type Snapshot } from '../../platform/database/snapshot.js';
import type { Basket } from '../decision/basket-result.js';
import { dateOfDay } from '../decision/plan-days.js';
import { type StudioDemand, studioDemand } from '../demand/demand-of-item.js';
import { NEVER } from '../projection/item-facts.js';
import { planningAssumptions } from '../settings/planning-assumptions.js';
import { daysWithin } from '../supply/lead-time.js';
import type { SupplierFacts } from '../supply/supply-facts.js';
import { type FinishedLine, finishedLines } from './finished-lines.js';
import { followedOrder } from './followed-order.js';
import { HORIZON_DAYS } from './item-horizon.js';
import {
  type ComputedItem,
  type FollowedItem,
  followItem,
  type PlanItemFacts,
  type PlanSetting,
  prepareItem,
} from './item-line.js';
import { keptAssumptions } from './kept-assumptions.js';
import type { KeptOffer, PlanLineContent, PlanSummary } from './plan-content.interface.js';
import { type ItemAbout, loadPlanFacts, type PlanFacts } from './plan-facts.query.js';
import {
  type AnsweredItem,
  type ItemsAnswer,
  type ItemsTask,
  type ItemsWork,
  linesWritten,
  type PlanMessage,
  type PlanTask,
  type WrittenLine,
} from './plan-task.interface.js';
import { itemName } from './planned-items.js';
import type { BasketView, MinimumChoiceView, WhatIfView } from './plans.views.js';
import { totalAssumptions } from './total-assumptions.js';

/** Items a thread is given at once: few, so that all end at about the same time. */
const itemsAtOnce = 4;
/** Lines that are written in one transaction: few, so that no scan waits for it. */
const linesAtOnce = 20;
const progressMilliseconds = 250;
const mostKnownLines = 20_000;
/** Of lines that are taken over, in one look-up. */
const linesReadAtOnce = 100;
/** Of the heap of each thread that computes items. */
const mostHeapMegabytes = 1_024;

const say = (message: PlanMessage) => parentPort?.postMessage(message);

interface Known {
  planId: string;
  lineNumber: number;
}

type Done = AnsweredItem & {
  computed: ComputedItem;
  takenOverFromId: string | null;
  /** Of the line that it was taken over from: with the order that a basket made of it then. */
  followedThen: FollowedItem | null;
};

/** Makes one plan: reads its facts in one moment, has its items computed in threads, and hands over its lines. */
async function make(task: PlanTask): Promise<void> {
  // On Linux a priority is a thread's own; elsewhere it would be that of the whole service.
  if (process.platform === 'linux') setPriority(0, 5);
  const startedAt = performance.now();
  const snapshot = await openSnapshot(task.place);
  try {
    const facts = await loadPlanFacts(snapshot.read, task);
    const { plannedOn, seed } = task.plan;
    const { paths } = task;
    const setting: PlanSetting = { plannedOn, seed, paths, bookingsPerMille: facts.bookingsPerMille };
    const factsDigest = digestOf(facts, setting, task.plan.whatIf);
    const same = await planOf(snapshot, task, factsDigest);
    if (same !== undefined) {
      say({ kind: 'same', factsDigest, planId: same });
      return;
    }
    if (facts.items.length === 0 && isOfOneItem(task)) {
      const words = 'This item is not planned here: nobody used, has, ordered, offers or lists it in a kit.';
      say({ kind: 'failed', words });
      return;
    }
    say({ kind: 'progress', done: 0, items: facts.items.length });
    const known = await knownLines(snapshot, task);
    const answers = await computed(task, facts, setting, new Set(known.keys()));
    for (const { kind, key, fault } of answers) {
      if (fault !== null) say({ kind: 'fault', words: `The ${kind} ${key} could not be computed: ${fault}` });
    }
    const done = await withKnown(snapshot, task, known, answers);
    await finish(task, facts, setting, done, factsDigest, startedAt);
  } finally {
    await snapshot.close();
  }
}

function isOfOneItem({ plan: { whatIf } }: PlanTask): boolean {
  return ((whatIf as WhatIfView | null)?.itemKey ?? null) !== null;
}

/** SHA-256 of all that the whole plan follows from. */
function digestOf(facts: PlanFacts, setting: PlanSetting, whatIf: object | null): string {
  const hash = createHash('sha256');
  const plain = (_: string, value: unknown) => (value instanceof Map ? [...value] : value);
  hash.update(JSON.stringify([setting, whatIf, facts.currency, facts.settings, facts.assumptions], plain));
  hash.update(JSON.stringify([...facts.suppliers], plain));
  for (const session of facts.demand.sessions) hash.update(JSON.stringify(session));
  hash.update(JSON.stringify({ ...facts.demand, sessions: [] }, plain));
  for (const item of facts.items) hash.update(JSON.stringify(item));
  // What is shown of it beside: names, labels, what was told of its supply.
  for (const about of facts.about.values()) hash.update(JSON.stringify(about, plain));
  return hash.digest('hex');
}

/** The plan that was made of equal facts. */
async function planOf(
  { read }: Snapshot,
  { studio, plan }: PlanTask,
  factsDigest: string,
): Promise<string | undefined> {
  const [row] = await read<{ id: string }>(
    `SELECT id FROM plan WHERE studio_id = $1 AND planned_on = $2 AND state = 'done' AND same_as_id IS NULL
       AND facts_digest = $3 ORDER BY asked_at DESC, id LIMIT 1`,
    [studio.studioId, plan.plannedOn, factsDigest],
  );
  return row?.id;
}

/** Lines of plans of this day, by what they were computed from. */
async function knownLines({ read }: Snapshot, { studio, plan }: PlanTask): Promise<Map<string, Known>> {
  const rows = await read<Known & { factsDigest: string }>(
    `SELECT plan_line.facts_digest AS "factsDigest", plan_line.plan_id AS "planId",
       plan_line.line_number AS "lineNumber"
     FROM plan JOIN plan_line ON plan_line.studio_id = plan.studio_id AND plan_line.plan_id = plan.id
     WHERE plan.studio_id = $1 AND plan.planned_on = $2 AND plan.state = 'done'
     ORDER BY plan.asked_at DESC, plan_line.line_number LIMIT ${mostKnownLines}`,
    [studio.studioId, plan.plannedOn],
  );
  return new Map(
    rows.map(({ factsDigest, planId, lineNumber }) => [factsDigest, { planId, lineNumber }] as const),
  );
}

/** What was computed before is read from where it stands, all at once. */
async function withKnown(
  { read }: Snapshot,
  { studio }: PlanTask,
  known: ReadonlyMap<string, Known>,
  answers: readonly AnsweredItem[],
): Promise<Done[]> {
  const wanted = answers.flatMap(({ computed, factsDigest }) =>
    computed === null ? (known.get(factsDigest) ?? []) : [],
  );
  const contents = new Map<string, string>();
  for (let at = 0; at < wanted.length; at += linesReadAtOnce) {
    const lines = wanted.slice(at, at + linesReadAtOnce);
    const which = lines.map(
      (_, index) => `(plan_id = $${2 * index + 2} AND line_number = $${2 * index + 3})`,
    );
    const rows = await read<Known & { content: string }>(
      `SELECT plan_id AS "planId", line_number AS "lineNumber", content FROM plan_line
       WHERE studio_id = $1 AND (${which.join(' OR ')})`,
      [studio.studioId, ...lines.flatMap(({ planId, lineNumber }) => [planId, lineNumber])],
    );
    for (const { planId, lineNumber, content } of rows) contents.set(`${planId} ${lineNumber}`, content);
  }
  return answers.map((answer): Done => {
    if (answer.computed !== null) {
      return { ...answer, computed: answer.computed, takenOverFromId: null, followedThen: null };
    }
    const line = known.get(answer.factsDigest);
    const content = contents.get(`${line?.planId} ${line?.lineNumber}`);
    if (content === undefined) throw new Error('A line that was to be taken over is not there.');
    const { computed, takenOverFromId, followed } = JSON.parse(content) as PlanLineContent;
    return {
      ...answer,
      computed,
      takenOverFromId: takenOverFromId ?? line?.planId ?? null,
      followedThen: followed ?? null,
    };
  });
}

/** Has all items computed by threads, some at a time for each. */
function computed(
  task: PlanTask,
  facts: PlanFacts,
  setting: PlanSetting,
  known: ReadonlySet<string>,
): Promise<AnsweredItem[]> {
  const waiting = [...facts.items];
  const answers: AnsweredItem[] = [];
  const count = Math.max(1, Math.min(task.threads, Math.ceil(waiting.length / itemsAtOnce)));
  const itemsTask: ItemsTask = { demand: facts.demand, setting, known };
  if (waiting.length === 0) return Promise.resolve(answers);
  let toldAt = performance.now();
  const workers: Worker[] = [];
  return new Promise<AnsweredItem[]>((resolve, reject) => {
    for (let index = 0; index < count; index += 1) {
      const worker = new Worker(new URL('./plan-items.worker.js', import.meta.url), {
        workerData: itemsTask,
        resourceLimits: { maxOldGenerationSizeMb: mostHeapMegabytes },
      });
      workers.push(worker);
      const give = () => {
        const items: PlanItemFacts[] = waiting.splice(0, itemsAtOnce);
        if (items.length > 0) worker.postMessage({ items } satisfies ItemsWork);
      };
      worker.on('message', (answer: ItemsAnswer) => {
        answers.push(...answer);
        if (performance.now() - toldAt >= progressMilliseconds) {
          toldAt = performance.now();
          say({ kind: 'progress', done: answers.length, items: facts.items.length });
        }
        if (answers.length === facts.items.length) resolve(answers);
        else give();
      });
      worker.once('error', reject);
      worker.once('exit', () => reject(new Error('A thread that computed items ended early.')));
      give();
    }
  }).finally(() => Promise.all(workers.map((worker) => worker.terminate())));
}

async function finish(
  task: PlanTask,
  facts: PlanFacts,
  setting: PlanSetting,
  done: readonly Done[],
  factsDigest: string,
  startedAt: number,
): Promise<void> {
  const { plannedOn } = task.plan;
  const byName = new Map(done.map((each) => [itemName(each), each]));
  const itemOf = new Map(facts.items.map((item) => [itemName(item), item]));
  const { lines, baskets } = finishedLines(
    done.map((each) => {
      const name = itemName(each);
      return { name, label: facts.about.get(name)?.item.label ?? name, decision: each.computed.decision };
    }),
    [...facts.suppliers.values()].map(
      ({ supplierId, minimumOrderMinor, deliveryCostMinor, freeDeliveryFromMinor }) => ({
        supplierId,
        minimumOrderMinor,
        deliveryCostMinor: deliveryCostMinor ?? planningAssumptions.deliveryCostMinor.value,
        freeDeliveryFromMinor,
      }),
    ),
    plannedOn,
    !isOfOneItem(task),
  );
  const studio = studioDemand(facts.demand);
  const contents = new Map<string, PlanLineContent>();
  for (const line of lines) {
    const each = byName.get(line.name);
    const about = facts.about.get(line.name);
    const item = itemOf.get(line.name);
    if (!each || !about || !item) throw new Error(`The line of ${line.name} was lost.`);
    const followed = followedBy(studio, setting, line, each, item);
    contents.set(line.name, contentOf(plannedOn, facts, line, each, about, item, followed));
  }
  const written = lines.map((line): WrittenLine => {
    const { kind: itemKind, key: itemKey, factsDigest: digest } = byName.get(line.name) as Done;
    return {
      lineNumber: line.lineNumber,
      itemKind,
      itemKey,
      decision: line.decision,
      orderOn: line.orderOn,
      offerId: line.offerId,
      packs: line.packs,
      supplierId: line.supplierId,
      factsDigest: digest,
      content: contents.get(line.name) as PlanLineContent,
    };
  });
  for (let at = 0; at < written.length; at += linesAtOnce) {
    say({ kind: 'lines', lines: written.slice(at, at + linesAtOnce) });
    await theyAreWritten();
  }
  const summary = summaryOf(task, facts, lines, baskets, contents, startedAt);
  say({ kind: 'done', factsDigest, summary });
}

/** @returns null: it is ordered as it would be by itself */
function followedBy(
  studio: StudioDemand,
  setting: PlanSetting,
  line: FinishedLine,
  { computed: { decision }, followedThen }: Done,
  item: PlanItemFacts,
): FollowedItem | null {
  const order = followedOrder(setting.plannedOn, line, decision.order);
  if (order === null) return null;
  if (followedThen !== null && isDeepStrictEqual(followedThen.order, order)) return followedThen;
  try {
    return followItem(prepareItem(studio, item, setting), decision, order);
  } catch (error) {
    // One item is no reason to have no plan: what was found of it by itself is shown.
    const fault = error instanceof Error ? (error.stack ?? error.message) : String(error);
    say({ kind: 'fault', words: `What a basket made of ${line.name} could not be reckoned: ${fault}` });
    return null;
  }
}

function theyAreWritten(): Promise<void> {
  return new Promise((resolve) => {
    parentPort?.once('message', (message) => {
      if (message === linesWritten) resolve();
    });
  });
}

function contentOf(
  plannedOn: string,
  facts: PlanFacts,
  line: FinishedLine,
  { computed: each, takenOverFromId, fault }: Done,
  { item, counts, onTheWayUnits, assumptions }: ItemAbout,
  planItem: PlanItemFacts,
  followed: FollowedItem | null,
): PlanLineContent {
  const [first, ...others] = item.products;
  const only = others.length === 0 ? first : undefined;
  const offer = planItem.offers.find(({ offerId }) => offerId === line.offerId);
  const containers = (offer?.packContainers ?? 0) * line.packs;
  const arrival = (share: number) =>
    dateOfDay(line.orderOn ?? plannedOn, offer === undefined ? 0 : daysWithin(offer.leadTime, share));
  return {
    item: {
      kind: item.kind,
      key: item.key,
      unit: item.unit,
      label: item.label,
      productIds: item.products.map(({ productId }) => productId),
      productName: only?.productName ?? null,
      shade: only?.shade ?? null,
      makerName: only?.makerName ?? null,
    },
    levelKeys: [...item.keys],
    plannedOn,
    currency: facts.currency,
    computed: each,
    counts,
    onTheWayUnits,
    offers: planItem.offers.map((own): KeptOffer => {
      const { offerId, productId, supplierId, packContainers, unitsEach, minimumPacks, prices, leadTime } =
        own;
      return {
        ...{ offerId, productId, supplierId, packContainers, unitsEach, minimumPacks },
        supplierName: facts.suppliers.get(supplierId)?.name ?? '',
        prices: [...prices],
        leadTime: { days: [...leadTime.days], weights: [...leadTime.weights] },
        lifeDays: own.lifeDays >= NEVER ? null : own.lifeDays,
      };
    }),
    assumptions: keptAssumptions(
      each,
      fault === null ? assumptions : [{ code: 'cannot be computed', figures: {} }, ...assumptions],
    ),
    serviceTargetPerMille: planItem.settings.serviceTargetPerMille,
    weeksOfHistory: Math.floor(-facts.demand.recordedFrom / 7),
    stakeMinor: line.stakeMinor,
    order:
      line.order === null
        ? null
        : {
            ...line.order,
            containers,
            units: containers * (offer?.unitsEach ?? 0),
            arrivesOn: arrival(0.5),
            arrivesLate: arrival(0.95),
          },
    followed,
    takenOverFromId,
  };
}

function summaryOf(
  task: PlanTask,
  facts: PlanFacts,
  lines: readonly FinishedLine[],
  baskets: readonly Basket[],
  contents: ReadonlyMap<string, PlanLineContent>,
  startedAt: number,
): PlanSummary {
  const { plannedOn } = task.plan;
  const today = lines.filter(({ orderOn, packs }) => orderOn !== null && orderOn <= plannedOn && packs > 0);
  const counts = new Map<FinishedLine['decision'], number>();
  for (const { decision } of lines) counts.set(decision, (counts.get(decision) ?? 0) + 1);
  const all = [...contents.values()];
  const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
  const dueBaskets = baskets.filter(({ on }) => on <= plannedOn);
  const orderTodayMinor = sum(today.map(({ order }) => order?.costMinor ?? 0));
  return {
    sums: {
      lines: lines.length,
      decisions: [...counts].map(([decision, count]) => ({ decision, lines: count })),
      currency: facts.currency,
      orderTodayMinor,
      orderTodayWithDeliveryMinor:
        orderTodayMinor + sum(dueBaskets.map(({ deliveryMinor }) => deliveryMinor)),
      expectedWasteMinor: Math.round(
        sum(
          all.map(
            ({ computed, followed }) => (followed?.after ?? computed.decision.after).expectedWasteMinor,
          ),
        ),
      ),
      heldContainers: facts.heldContainers,
      itemsLeftOut: facts.itemsLeftOut,
      candidates: sum(all.map(({ computed: { decision } }) => decision.effort.candidates)),
      linesTakenOver: all.filter(({ takenOverFromId }) => takenOverFromId !== null).length,
      paths: task.paths,
      days: HORIZON_DAYS,
    },
    baskets: baskets.map((basket) => basketView(basket, facts, lines)),
    assumptions: totalAssumptions(
      facts.settings,
      facts.assumptions,
      all.map(({ assumptions }) => assumptions),
      facts.currency,
    ),
    runningSeconds: Math.round((performance.now() - startedAt) / 100) / 10,
    dueToday: today.length,
  };
}

function basketView(basket: Basket, facts: PlanFacts, lines: readonly FinishedLine[]): BasketView {
  const numberOf = new Map(lines.map(({ name, lineNumber }) => [name, lineNumber]));
  const supplier: SupplierFacts | undefined = facts.suppliers.get(basket.supplierId);
  const { minimum, freeDelivery } = basket;
  return {
    supplierId: basket.supplierId,
    supplierName: supplier?.name ?? '',
    on: basket.on,
    lines: basket.lines.map(({ key, ...line }) => ({
      ...line,
      lineNumber: numberOf.get(key) ?? 0,
      label: facts.about.get(key)?.item.label ?? key,
    })),
    goodsMinor: basket.goodsMinor,
    deliveryMinor: basket.deliveryMinor,
    totalMinor: basket.totalMinor,
    currency: facts.currency,
    minimumState: minimum.state,
    minimumMinor: minimum.minimumMinor,
    minimumMissingMinor: minimum.missingMinor,
    minimumChoices: minimum.choices.map(
      (choice): MinimumChoiceView => ({
        choice: choice.choice,
        missingMinor: choice.choice === 'order anyway' ? choice.missingMinor : null,
        until: choice.choice === 'wait' ? choice.until : null,
        lineNumber: choice.choice === 'add' ? (numberOf.get(choice.key) ?? null) : null,
        packs: choice.choice === 'add' ? choice.packs : null,
        priceMinor: choice.choice === 'add' ? choice.priceMinor : null,
        extraMinor: choice.choice === 'order anyway' ? null : choice.extraMinor,
      }),
    ),
    freeDeliveryFromMinor: freeDelivery?.fromMinor ?? null,
    freeDeliveryMissingMinor: freeDelivery?.missingMinor ?? null,
  };
}

void make(workerData as PlanTask);
