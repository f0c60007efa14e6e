import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Logger } from '@nestjs/common';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { ConditionEvaluators } from '../../src/alerts/condition-evaluators.service.js';
import { InProcessQueue } from '../../src/alerts/queue/in-process-queue.service.js';
import { ScheduleStates } from '../../src/alerts/schedule/schedule-states.service.js';
import { Schedules } from '../../src/alerts/schedule/schedules.service.js';
import { Sweep } from '../../src/alerts/schedule/sweep.service.js';
import { StudioActors } from '../../src/identity/studio-actors.service.js';
import type { Actor } from '../../src/platform/actor.js';
import { readConfig } from '../../src/platform/config.js';
import { ProcessRole } from '../../src/platform/process-role.js';
import { alertsOf } from '../support/alerts-of.js';
import { MovedClock } from '../support/moved-clock.js';
import { makePostgresDatabase, strictestEngine } from '../support/service.js';
import { Store } from '../support/store.js';

describe.each(strictestEngine)('the sweep, on %s', (engine) => {
  let store: Store;
  let folder: string;
  let databaseUrl: string | undefined;
  let clock: MovedClock;
  let evaluators: ConditionEvaluators;
  let sweep: Sweep;
  let studios: Actor[];
  /** Studios in the order in which they were swept. */
  let swept: string[];
  /** Studios whose evaluation throws. */
  let broken: Set<string>;

  beforeEach(async () => {
    Logger.overrideLogger(false);
    folder = mkdtempSync(join(tmpdir(), 'lotward-sweep-'));
    databaseUrl = engine === 'postgres' ? await makePostgresDatabase() : undefined;
    store = await Store.open(folder, databaseUrl);
    studios = [await store.makeStudio('Europe/Vienna'), await store.makeStudio('America/New_York')];
    clock = new MovedClock();
    swept = [];
    broken = new Set();
    evaluators = new ConditionEvaluators();
    evaluators.register({
      name: 'test',
      kinds: ['test'],
      evaluate: async ({ studioId }) => {
        swept.push(studioId);
        if (broken.has(studioId)) throw new Error('this studio cannot be judged');
        return [];
      },
    });
    sweep = anotherProcess();
  });
  afterEach(async () => {
    await store.close();
    Logger.overrideLogger(['log', 'warn', 'error']);
    rmSync(folder, { recursive: true, force: true });
  });

  /** The sweep as another process, or the same after a restart, does it. */
  const anotherProcess = (its = store) =>
    new Sweep(
      its.database,
      its.transactions,
      clock,
      alertsOf(its, evaluators),
      new ScheduleStates(),
      new StudioActors(its.database),
      new Schedules(new InProcessQueue(1), readConfig({}), new ProcessRole(true)),
    );
  const sorted = (ids: string[]) => [...ids].sort();
  const all = () => sorted(studios.map(({ studioId }) => studioId));

  it('judges every studio at the first look, then once each morning of its own', async () => {
    await sweep.look();
    expect(sorted(swept)).toEqual(all());
    await sweep.look();
    expect(swept).toHaveLength(2);
    clock.forward(26);
    await sweep.look();
    await sweep.look();
    expect(sorted(swept.slice(2))).toEqual(all());
    expect(swept).toHaveLength(4);
  });

  it('is not done again by a restart, nor when two processes look at the same time', async () => {
    // With SQLite there is one process: a second one in this thread would keep the first from ending.
    const others = databaseUrl === undefined ? [] : [await Store.open(folder, databaseUrl)];
    const looking = [sweep, anotherProcess(), ...others.map(anotherProcess)].map((each) => each.look());
    await Promise.all(looking);
    for (const other of others) await other.close();
    expect(sorted(swept)).toEqual(all());
    await anotherProcess().look();
    expect(swept).toHaveLength(2);
    const entries = await store.database.read<{ count: number }>(
      `SELECT count(*) AS count FROM audit_entry WHERE action = 'alerts.sweep'`,
    );
    expect(entries.map(({ count }) => Number(count))).toEqual([2]);
  });

  it('is done no second time by a clock that is set back, and misses no morning by one that was ahead', async () => {
    await sweep.look();
    clock.forward(-20);
    await sweep.look();
    expect(swept).toHaveLength(2);
    clock.forward(24 * 400);
    await sweep.look();
    expect(swept).toHaveLength(4);
    clock.forward(-24 * 400);
    await sweep.look();
    await sweep.look();
    expect(sorted(swept.slice(4))).toEqual(all());
    expect(swept).toHaveLength(6);
  });

  it('is not stopped in other studios by one that fails, and tries that one again', async () => {
    for (const [round, each] of studios.entries()) {
      clock.forward(26 * round);
      swept = [];
      broken = new Set([each.studioId]);
      await sweep.look();
      expect(sorted(swept)).toEqual(all());
      broken.clear();
      await sweep.look();
      expect(swept.slice(2)).toEqual([each.studioId]);
    }
  });

  it('lets no two rooms evaluate one kind, since each would close what the other finds', () => {
    const again = { name: 'other', kinds: ['else', 'test'], evaluate: async () => [] };
    expect(() => evaluators.register(again)).toThrow('"test"');
  });
});
