import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { ConditionEvaluators } from '../../src/alerts/condition-evaluators.service.js';
import { SummaryLines } from '../../src/alerts/summaries/summary-lines.service.js';
import { StudioActors } from '../../src/identity/studio-actors.service.js';
import type { Actor } from '../../src/platform/actor.js';
import { readConfig } from '../../src/platform/config.js';
import type { Transaction } from '../../src/platform/database/transaction.js';
import { ProcessRole } from '../../src/platform/process-role.js';
import { NoPlanConditions } from '../../src/reorder/plan/no-plan-conditions.service.js';
import { OrderDueConditions } from '../../src/reorder/plan/order-due-conditions.service.js';
import { Plan } from '../../src/reorder/plan/plan.entity.js';
import { PlanLeases } from '../../src/reorder/plan/plan-leases.service.js';
import { PlanProgress } from '../../src/reorder/plan/plan-progress.service.js';
import { PlanRunner } from '../../src/reorder/plan/plan-runner.service.js';
import { alertsOf } from '../support/alerts-of.js';
import { MovedClock } from '../support/moved-clock.js';
import { makePostgresDatabase, strictestEngine } from '../support/service.js';
import { Store } from '../support/store.js';

/** Several processes serve on PostgreSQL alone. */
describe.each(strictestEngine)('plans of several processes that serve, on %s', (engine) => {
  let store: Store;
  let folder: string;
  let clock: MovedClock;
  let actor: Actor;
  let leases: PlanLeases;

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'lotward-plan-leases-'));
    clock = new MovedClock();
    store = await Store.open(folder, engine === 'postgres' ? await makePostgresDatabase() : undefined, clock);
    leases = new PlanLeases(store.database, store.transactions, clock);
  });
  beforeEach(async () => {
    actor = { ...(await store.makeStudio('Europe/Vienna')), via: 'system' };
  });
  afterAll(async () => {
    await store.close();
    rmSync(folder, { recursive: true, force: true });
  });

  const write = <Answer>(work: (transaction: Transaction) => Promise<Answer>) =>
    store.transactions.write(
      actor,
      { id: null, action: 'test', subject: { kind: 'studio', id: actor.studioId }, content: null },
      work,
    );
  const put = (state: Plan['state'], day = '2026-03-02') =>
    write(async (transaction) => {
      const { recordedAt } = transaction;
      const id = uuidv7();
      await transaction.insert(Plan, {
        ...{ studioId: actor.studioId, id, purpose: 'plan' as const, whatIf: null, state, plannedOn: day },
        ...{ seed: 1, factsDigest: null, sameAsId: null, summary: null, personId: null, version: 1 },
        ...{ failure: state === 'failed' ? 'It failed.' : null, askedAt: recordedAt },
        endedAt: state === 'failed' || state === 'done' ? recordedAt : null,
      });
      if (state === 'running') await leases.take(transaction, id);
      return id;
    });
  const planOf = (id: string) => store.database.reader.manager.findOneByOrFail(Plan, { id });
  const openAlerts = () =>
    store.database.read<{ facts: string }>(
      "SELECT facts FROM alert WHERE studio_id = $1 AND kind = 'no plan made' AND closed_at IS NULL",
      [actor.studioId],
    );
  const conditions = () => {
    const evaluators = new ConditionEvaluators();
    const alerts = alertsOf(store, evaluators);
    return {
      orderDue: new OrderDueConditions(alerts, evaluators, new SummaryLines()),
      noPlan: new NoPlanConditions(alerts, evaluators),
    };
  };
  /** A process that begins to serve, and ends. */
  const serve = async () => {
    const { database, transactions } = store;
    const { orderDue, noPlan } = conditions();
    const [studioActors, config, role] = [new StudioActors(database), readConfig({}), new ProcessRole(true)];
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
      noPlan,
      leases,
    );
    await runner.onApplicationBootstrap();
    await runner.onModuleDestroy();
  };

  it('leaves a plan to the process that makes it, and ends it when nothing is heard of that one', async () => {
    const id = await put('running');
    const plan = await planOf(id);
    await serve();
    expect(await planOf(id)).toMatchObject({ state: 'running' });
    clock.forward(1 / 60);
    expect(await leases.renew(plan)).toBe(true);
    clock.forward(1 / 60);
    await serve();
    expect(await planOf(id)).toMatchObject({ state: 'running' });
    clock.forward(1 / 60);
    await serve();
    const ended = await planOf(id);
    expect(ended.state).toBe('failed');
    expect(ended.failure).toMatch(/was interrupted/);
    expect(await leases.renew(plan)).toBe(false);
  });

  it('ends what was given back without having ended, at once', async () => {
    const id = await put('running');
    await leases.giveBack(await planOf(id));
    await serve();
    expect(await planOf(id)).toMatchObject({ state: 'failed' });
  });

  it('tells of a day whose plan failed three times, until one is done', async () => {
    await put('failed', '2026-03-01');
    await put('failed');
    const second = await put('running');
    await leases.giveBack(await planOf(second));
    await serve();
    expect(await openAlerts()).toEqual([]);
    const third = await put('running');
    await leases.giveBack(await planOf(third));
    await serve();
    const [alert, ...others] = await openAlerts();
    expect(others).toEqual([]);
    expect(JSON.parse(alert?.facts ?? '')).toEqual({
      day: '2026-03-02',
      cause: expect.stringContaining('interrupted'),
    });
    await put('done', '2026-03-03');
    await write((transaction) => conditions().noPlan.reevaluate(transaction));
    expect(await openAlerts()).toEqual([]);
  });
});
