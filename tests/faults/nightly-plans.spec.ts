import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { v7 as uuidv7 } from 'uuid';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { ConditionEvaluators } from '../../src/alerts/condition-evaluators.service.js';
import { InProcessQueue } from '../../src/alerts/queue/in-process-queue.service.js';
import { ScheduleStates } from '../../src/alerts/schedule/schedule-states.service.js';
import { Schedules } from '../../src/alerts/schedule/schedules.service.js';
import { SummaryLines } from '../../src/alerts/summaries/summary-lines.service.js';
import { ConfigurationPools } from '../../src/catalogue/configuration-pools.service.js';
import { Maker } from '../../src/catalogue/maker.entity.js';
import { Product } from '../../src/catalogue/product.entity.js';
import { ProductRegister } from '../../src/catalogue/product-register.service.js';
import { Supplier } from '../../src/catalogue/supplier.entity.js';
import { StudioActors } from '../../src/identity/studio-actors.service.js';
import type { Actor } from '../../src/platform/actor.js';
import { readConfig } from '../../src/platform/config.js';
import { ProcessRole } from '../../src/platform/process-role.js';
import { NightlyPlans } from '../../src/reorder/plan/nightly-plans.service.js';
import { NoPlanConditions } from '../../src/reorder/plan/no-plan-conditions.service.js';
import { OrderDueConditions } from '../../src/reorder/plan/order-due-conditions.service.js';
import { Plan } from '../../src/reorder/plan/plan.entity.js';
import { PlanLeases } from '../../src/reorder/plan/plan-leases.service.js';
import { PlanProgress } from '../../src/reorder/plan/plan-progress.service.js';
import { PlanRequests } from '../../src/reorder/plan/plan-requests.service.js';
import { PlanRunner } from '../../src/reorder/plan/plan-runner.service.js';
import { Plans } from '../../src/reorder/plan/plans.service.js';
import { KnownItems } from '../../src/reorder/settings/known-items.service.js';
import { Offer } from '../../src/reorder/supply/offer.entity.js';
import { alertsOf } from '../support/alerts-of.js';
import { MovedClock } from '../support/moved-clock.js';
import { Store } from '../support/store.js';

let store: Store;
let folder: string;
let clock: MovedClock;
let actor: Actor;
let nightly: NightlyPlans;

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'lotward-nightly-'));
  clock = new MovedClock();
  store = await Store.open(folder, undefined, clock);
  actor = await store.makeStudio('Europe/Vienna');
  const { database, transactions } = store;
  const [config, role, studioActors, evaluators] = [
    readConfig({}),
    new ProcessRole(true),
    new StudioActors(database),
    new ConditionEvaluators(),
  ];
  const alerts = alertsOf(store, evaluators);
  const orderDue = new OrderDueConditions(alerts, evaluators, new SummaryLines());
  const progress = new PlanProgress();
  const runner = new PlanRunner(
    database,
    transactions,
    studioActors,
    clock,
    config,
    role,
    progress,
    orderDue,
    new NoPlanConditions(alerts, evaluators),
    new PlanLeases(database, transactions, clock),
  );
  nightly = new NightlyPlans(
    database,
    transactions,
    clock,
    new ScheduleStates(),
    studioActors,
    new Schedules(new InProcessQueue(1), config, role),
    new PlanRequests(
      transactions,
      new Plans(database, clock, progress),
      runner,
      new KnownItems(new ProductRegister(), new ConfigurationPools()),
    ),
  );
});
afterEach(async () => {
  await store.close();
  rmSync(folder, { recursive: true, force: true });
});

const write = (work: Parameters<typeof store.transactions.write>[2]) =>
  store.transactions.write(
    { ...actor, via: 'system' },
    { id: null, action: 'test', subject: { kind: 'studio', id: actor.studioId }, content: null },
    work,
  );
const offerSomething = () =>
  write(async (transaction) => {
    const { chainId, studioId } = actor;
    const [makerId, productId, supplierId] = [uuidv7(), uuidv7(), uuidv7()];
    const made = { chainId, version: 1, createdAt: transaction.recordedAt };
    await transaction.insert(Maker, { ...made, id: makerId, name: 'Halden' });
    await transaction.insert(Supplier, { ...made, id: supplierId, name: 'Quill' });
    await transaction.insert(Product, {
      ...made,
      ...{ id: productId, makerId, kind: 'consumable', name: 'Film', stockForm: 'pieces', shade: null },
      ...{ pigmentRole: null, volumeMicrolitres: null, openedLife: null, dropMicrolitres: null },
      ...{ colourIndexNumbers: [], points: null, grouping: null, diameterHundredthsMillimetre: null },
      ...{ taper: null, machineFit: null, membrane: null, archivedAt: null },
    });
    await transaction.insert(Offer, {
      ...made,
      ...{
        studioId,
        id: uuidv7(),
        supplierId,
        productId,
        orderCode: null,
        packContainers: 1,
        containerPieces: 1,
      },
      ...{ minimumPacks: 1, prices: [{ fromPacks: 1, packPriceMinor: 100 }], currency: 'EUR' },
      ...{ lifeOnArrivalDays: null, leadTimeDays: null, endedAt: null },
    });
  });
const planOf = (plannedOn: string, state: Plan['state']) =>
  write((transaction) =>
    transaction.insert(Plan, {
      ...{ studioId: actor.studioId, id: uuidv7(), purpose: 'plan' as const, whatIf: null, state, plannedOn },
      ...{ seed: 1, factsDigest: null, sameAsId: null, summary: null, failure: null, personId: null },
      ...{ askedAt: `${plannedOn}T05:00:00.000Z`, endedAt: null, version: 1 },
    }),
  );
const waiting = () => store.database.reader.manager.findBy(Plan, { state: 'waiting' });
const endAll = async (state: Plan['state'] = 'done') => {
  for (const { studioId, id, version } of await waiting()) {
    await write((transaction) => transaction.change(Plan, 'plan', { studioId, id }, version, { state }));
  }
};

it('asks for a plan each night, once, in a studio that has offers and has planned before', async () => {
  await nightly.look();
  expect(await waiting()).toEqual([]);
  await offerSomething();
  await nightly.look();
  expect(await waiting()).toEqual([]);
  await planOf('2026-01-05', 'done');
  await Promise.all([nightly.look(), nightly.look()]);
  await nightly.look();
  expect(await waiting()).toMatchObject([{ purpose: 'plan', personId: null }]);
  // What fails is asked for again, not for ever; what is done is done.
  await endAll('failed');
  await nightly.look();
  expect(await waiting()).toHaveLength(1);
  await endAll();
  await nightly.look();
  expect(await waiting()).toEqual([]);
  clock.forward(26);
  await nightly.look();
  expect(await waiting()).toHaveLength(1);
});

it('asks for none when somebody had one made that day', async () => {
  await offerSomething();
  const today = new Date().toLocaleDateString('sv-SE', { timeZone: actor.timeZone });
  await planOf(today, 'done');
  await nightly.look();
  expect(await waiting()).toEqual([]);
});
