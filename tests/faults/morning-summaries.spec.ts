import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Logger } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { ConditionEvaluators } from '../../src/alerts/condition-evaluators.service.js';
import { AlertDestination } from '../../src/alerts/destinations/alert-destination.entity.js';
import { Promises } from '../../src/alerts/outbox/promises.service.js';
import { ToldPeople } from '../../src/alerts/preferences/told-people.service.js';
import { InProcessQueue } from '../../src/alerts/queue/in-process-queue.service.js';
import { Schedules } from '../../src/alerts/schedule/schedules.service.js';
import { MorningSummaries } from '../../src/alerts/summaries/morning-summaries.service.js';
import { SummaryLines } from '../../src/alerts/summaries/summary-lines.service.js';
import { SummaryReaders } from '../../src/alerts/summaries/summary-readers.service.js';
import { Person } from '../../src/identity/person.entity.js';
import { StudioActors } from '../../src/identity/studio-actors.service.js';
import type { Actor } from '../../src/platform/actor.js';
import { readConfig } from '../../src/platform/config.js';
import { Transactions } from '../../src/platform/database/transactions.js';
import { ProcessRole } from '../../src/platform/process-role.js';
import { alertsOf } from '../support/alerts-of.js';
import { inTransaction } from '../support/bare-stock.js';
import { MovedClock } from '../support/moved-clock.js';
import { makePostgresDatabase, strictestEngine } from '../support/service.js';
import { Store } from '../support/store.js';

describe.each(strictestEngine)('summaries of the morning that meet a fault, on %s', (engine) => {
  let store: Store;
  let folder: string;
  let clock: MovedClock;
  let transactions: Transactions;
  let evaluators: ConditionEvaluators;
  let studios: Actor[];
  /** Studios whose evaluation throws. */
  let broken: Set<string>;

  beforeEach(async () => {
    Logger.overrideLogger(false);
    folder = mkdtempSync(join(tmpdir(), 'lotward-summaries-'));
    store = await Store.open(folder, engine === 'postgres' ? await makePostgresDatabase() : undefined);
    studios = [await store.makeStudio('UTC'), await store.makeStudio('UTC')];
    for (const studio of studios) await addMailAddress(studio);
    clock = new MovedClock();
    // Tomorrow at noon.
    clock.forward(36 - new Date().getUTCHours());
    transactions = new Transactions(store.database, clock, store.studioKeys);
    broken = new Set();
    evaluators = new ConditionEvaluators();
    evaluators.register({
      name: 'test',
      kinds: ['test'],
      evaluate: async ({ studioId }) => {
        if (broken.has(studioId)) throw new Error('this studio cannot be judged');
        return [{ kind: 'test', subjectKind: 'test', subjectId: studioId, severity: 'warning', facts: {} }];
      },
    });
  });
  afterEach(async () => {
    await store.close();
    Logger.overrideLogger(['log', 'warn', 'error']);
    rmSync(folder, { recursive: true, force: true });
  });

  async function addMailAddress(studio: Actor): Promise<void> {
    const { studioId, personId } = studio;
    const { manager } = store.database.reader;
    const { dataKeyId } = await manager.findOneByOrFail(Person, { studioId, id: personId ?? '' });
    await inTransaction(store, studio, (transaction) =>
      transaction.insert(AlertDestination, {
        studioId,
        id: uuidv7(),
        kind: 'mail',
        personId,
        dataKeyId,
        settingsSealed: 'sealed',
        minimumSeverity: 'notice',
        state: 'active',
        stateReason: null,
        version: 1,
        createdAt: transaction.recordedAt,
      }),
    );
  }

  /** The summaries as one of several processes writes them. */
  const aProcess = (promises = new Promises(new ToldPeople())) =>
    new MorningSummaries(
      store.database,
      transactions,
      clock,
      new StudioActors(store.database),
      alertsOf(store, evaluators),
      new SummaryReaders(new ToldPeople()),
      new SummaryLines(),
      promises,
      new Schedules(new InProcessQueue(1), readConfig({}), new ProcessRole(true)),
    );
  const written = () =>
    store.database.read<{ studioId: string; day: string; deliveries: number }>(
      `SELECT studio_id AS "studioId", day,
         (SELECT count(*) FROM outbox WHERE outbox.studio_id = summary.studio_id AND summary_id = summary.id) AS deliveries
       FROM morning_summary AS summary ORDER BY studio_id`,
    );
  const oneOf = ({ studioId }: Actor) => ({ studioId, day: clock.now().slice(0, 10), deliveries: 1 });
  const oneEach = () => studios.map(oneOf).sort((one, other) => (one.studioId < other.studioId ? -1 : 1));

  it('are written once, however many look at the same moment', async () => {
    await Promise.all([aProcess().look(), aProcess().look(), aProcess().look()]);
    expect(await written()).toEqual(oneEach());
    await aProcess().look();
    expect(await written()).toEqual(oneEach());
  });

  it('leave one entry in the audit log, however many look at the same moment', async () => {
    await Promise.all([aProcess().look(), aProcess().look(), aProcess().look()]);
    const entries = await store.database.read<{ studioId: string }>(
      `SELECT studio_id AS "studioId" FROM audit_entry WHERE action = 'alerts.summarise' ORDER BY studio_id`,
    );
    expect(entries).toEqual(oneEach().map(({ studioId }) => ({ studioId })));
  });

  it('go on after a clock that was a month ahead was set back, once a day', async () => {
    const days = 30 * 24;
    clock.forward(days);
    await aProcess().look();
    clock.forward(-days);
    await aProcess().look();
    await aProcess().look();
    expect((await written()).filter(({ day }) => day === clock.now().slice(0, 10))).toEqual(oneEach());
    expect(await written()).toHaveLength(2 * studios.length);
  });

  it('are written where they can be, and where they cannot as soon as they can', async () => {
    const [one, other] = studios as [Actor, Actor];
    broken.add(one.studioId);
    await aProcess().look();
    expect(await written()).toEqual([oneOf(other)]);
    broken.clear();
    await aProcess().look();
    expect(await written()).toEqual(oneEach());
  });

  it('are not kept without the deliveries they promise', async () => {
    const breaking = new Promises(new ToldPeople());
    breaking.promise = () => Promise.reject(new Error('cut off here'));
    await aProcess(breaking).look();
    expect(await written()).toEqual([]);
    await aProcess().look();
    expect(await written()).toEqual(oneEach());
  });
});
