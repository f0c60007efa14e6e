import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Alerts } from '../../src/alerts/alerts.service.js';
import { ConditionEvaluators } from '../../src/alerts/condition-evaluators.service.js';
import type { AlertQueue, QueueState } from '../../src/alerts/queue/alert-queue.interface.js';
import { QueueHealth } from '../../src/alerts/queue/queue-health.service.js';
import { StudioActors } from '../../src/identity/studio-actors.service.js';
import type { Actor } from '../../src/platform/actor.js';
import { readConfig } from '../../src/platform/config.js';
import { ProcessRole } from '../../src/platform/process-role.js';
import { alertsOf } from '../support/alerts-of.js';
import { inTransaction } from '../support/bare-stock.js';
import { MovedClock } from '../support/moved-clock.js';
import { Store } from '../support/store.js';

describe('a queue that does not carry what is to be told', () => {
  let store: Store;
  let folder: string;
  let clock: MovedClock;
  let actor: Actor;
  let evaluators: ConditionEvaluators;
  let alerts: Alerts;
  let health: QueueHealth;
  let state: QueueState;

  beforeEach(async () => {
    folder = mkdtempSync(join(tmpdir(), 'lotward-queue-'));
    store = await Store.open(folder);
    actor = await store.makeStudio();
    clock = new MovedClock();
    evaluators = new ConditionEvaluators();
    alerts = alertsOf(store, evaluators);
    state = { awaySince: null, workers: 1 };
    health = new QueueHealth(
      { state: async () => state } as unknown as AlertQueue,
      readConfig({ REDIS_URL: 'redis://127.0.0.1', DATABASE_URL: 'postgresql://127.0.0.1/lotward' }),
      store.database,
      store.transactions,
      clock,
      alerts,
      evaluators,
      new StudioActors(store.database),
      new ProcessRole(true),
    );
    health.onModuleInit();
  });
  afterEach(async () => {
    await store.close();
    rmSync(folder, { recursive: true, force: true });
  });

  const standing = async () => {
    const open = await store.database.read<{ facts: string }>(
      `SELECT facts FROM alert WHERE kind = 'queue unhealthy' AND closed_at IS NULL`,
    );
    return open.map(({ facts }) => (JSON.parse(facts) as { cause: string }).cause);
  };
  const entries = async () =>
    (
      await store.database.read<{ sequence: number }>(
        'SELECT sequence FROM audit_head WHERE studio_id = $1',
        [actor.studioId],
      )
    )[0]?.sequence;

  it('is told once while Redis is away, and no more once it is back', async () => {
    await health.judge();
    expect(await standing()).toEqual([]);
    state = { awaySince: clock.now(), workers: null };
    await health.judge();
    expect(await standing()).toEqual([]);
    clock.forward(0.1);
    await health.judge();
    expect(await standing()).toEqual(['Redis is not reached']);
    const before = await entries();
    for (let look = 0; look < 3; look += 1) await health.judge();
    expect(await entries()).toBe(before);
    state = { awaySince: null, workers: 1 };
    await health.judge();
    expect(await standing()).toEqual([]);
  });

  it('is told when no worker is seen for a while', async () => {
    state = { awaySince: null, workers: 0 };
    await health.judge();
    clock.forward(0.1);
    await health.judge();
    expect(await standing()).toEqual(['no worker is seen']);
    expect(await health.isWell()).toBe(false);
  });

  it('is told when deliveries are late, but not of those that wait for what comes before them', async () => {
    const condition = {
      kind: 'test',
      subjectKind: 'test',
      subjectId: 'one',
      severity: 'warning' as const,
      facts: {},
    };
    await inTransaction(store, actor, (transaction) => alerts.raise(transaction, [condition]));
    await health.judge();
    expect(await standing()).toEqual([]);
    clock.forward(0.2);
    await health.judge();
    expect(await standing()).toEqual(['deliveries are late']);
    // The alert itself is promised too: it is not late yet, and is told of no second time.
    await store.transactions.aside((query) =>
      query(`UPDATE outbox SET next_attempt_at = $1 WHERE event = 'opened'`, [
        new Date(Date.now() + 86_400_000).toISOString(),
      ]),
    );
    await inTransaction(store, actor, (transaction) =>
      alerts.reconcile(transaction, { kinds: ['test'], subjects: 'all' }, []),
    );
    clock.forward(0.5);
    await health.judge();
    expect(await standing()).toEqual([]);
  });

  it('stands through a sweep, which may be done by a worker that sees the queue otherwise', async () => {
    state = { awaySince: '2020-01-01T00:00:00.000Z', workers: null };
    await health.judge();
    await inTransaction(store, actor, (transaction) => alerts.reconcileAll(transaction));
    expect(await standing()).toEqual(['Redis is not reached']);
  });
});
