import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Logger } from '@nestjs/common';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { ConditionEvaluators } from '../../src/alerts/condition-evaluators.service.js';
import { Sweep } from '../../src/alerts/schedule/sweep.service.js';
import { StudioActors } from '../../src/identity/studio-actors.service.js';
import type { Actor } from '../../src/platform/actor.js';
import { ProcessRole } from '../../src/platform/process-role.js';
import { alertsOf } from '../support/alerts-of.js';
import { MovedClock } from '../support/moved-clock.js';
import { Store } from '../support/store.js';

const lookMilliseconds = 30_000;

describe('the sweep', () => {
  let store: Store;
  let folder: string;
  let clock: MovedClock;
  let evaluators: ConditionEvaluators;
  let sweep: Sweep;
  let studios: Actor[];
  /** Studios in the order in which they were swept. */
  let swept: string[];
  /** Studios whose evaluation throws. */
  let broken: Set<string>;

  beforeEach(async () => {
    vi.useFakeTimers({ toFake: ['setInterval', 'clearInterval'] });
    Logger.overrideLogger(false);
    folder = mkdtempSync(join(tmpdir(), 'lotward-sweep-'));
    store = await Store.open(folder);
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
    sweep = new Sweep(
      store.database,
      store.transactions,
      clock,
      alertsOf(store, evaluators),
      new ProcessRole(true),
      new StudioActors(store.database),
    );
  });
  afterEach(async () => {
    await sweep.onModuleDestroy();
    await store.close();
    Logger.overrideLogger(['log', 'warn', 'error']);
    vi.useRealTimers();
    rmSync(folder, { recursive: true, force: true });
  });

  /** Lets the sweep look at the clock once, and do what is due. */
  const look = async () => {
    vi.advanceTimersByTime(lookMilliseconds);
    await sweep.settled();
  };
  const sorted = (ids: string[]) => [...ids].sort();
  const all = () => sorted(studios.map(({ studioId }) => studioId));

  it('judges every studio at start, then once each morning of its own', async () => {
    sweep.onApplicationBootstrap();
    await sweep.settled();
    expect(sorted(swept)).toEqual(all());
    await look();
    expect(swept).toHaveLength(2);
    clock.forward(26);
    await look();
    await look();
    expect(sorted(swept.slice(2))).toEqual(all());
    expect(swept).toHaveLength(4);
  });

  it('is not stopped in other studios by one that fails, and tries that one again', async () => {
    for (const each of studios) {
      swept = [];
      broken = new Set([each.studioId]);
      const fresh = new Sweep(
        store.database,
        store.transactions,
        clock,
        alertsOf(store, evaluators),
        new ProcessRole(true),
        new StudioActors(store.database),
      );
      fresh.onApplicationBootstrap();
      await fresh.settled();
      expect(sorted(swept)).toEqual(all());
      broken.clear();
      vi.advanceTimersByTime(lookMilliseconds);
      await fresh.settled();
      expect(swept.slice(2)).toEqual([each.studioId]);
      await fresh.onModuleDestroy();
    }
  });

  it('lets no two rooms evaluate one kind, since each would close what the other finds', () => {
    const again = { name: 'other', kinds: ['else', 'test'], evaluate: async () => [] };
    expect(() => evaluators.register(again)).toThrow('"test"');
  });
});
