import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { Logger } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Alerts } from '../../src/alerts/alerts.service.js';
import type { AlertChannels } from '../../src/alerts/channels/alert-channels.service.js';
import { SendFailure } from '../../src/alerts/channels/send-failure.js';
import { AlertDestination } from '../../src/alerts/destinations/alert-destination.entity.js';
import { deliveryBackoff } from '../../src/alerts/outbox/backoff.js';
import { Deliver } from '../../src/alerts/outbox/deliver.service.js';
import { DeliveryList } from '../../src/alerts/outbox/delivery-list.service.js';
import { OutboxRow } from '../../src/alerts/outbox/outbox-row.entity.js';
import { OutboxStates } from '../../src/alerts/outbox/outbox-states.service.js';
import { Relay } from '../../src/alerts/outbox/relay.service.js';
import { InProcessQueue } from '../../src/alerts/queue/in-process-queue.service.js';
import { StudioActors } from '../../src/identity/studio-actors.service.js';
import type { Actor } from '../../src/platform/actor.js';
import { readConfig } from '../../src/platform/config.js';
import { ProcessRole } from '../../src/platform/process-role.js';
import { alertsOf } from '../support/alerts-of.js';
import { inTransaction } from '../support/bare-stock.js';
import { MovedClock } from '../support/moved-clock.js';
import { engines, makePostgresDatabase } from '../support/service.js';
import { Store } from '../support/store.js';

/** Remembers what it was handed, and fails as often as it is told to. */
class FaultyChannels implements Pick<AlertChannels, 'send'> {
  readonly handed: { deliveryId: string; event: string; begun: number | null }[] = [];
  failures = 0;
  failure: Error = new Error('the line is dead');
  /** What happens while it is sent. */
  meanwhile: () => Promise<void> = async () => undefined;

  async send({ id: deliveryId, event, begun }: OutboxRow): Promise<void> {
    this.handed.push({ deliveryId, event, begun });
    await this.meanwhile();
    if (this.failures > 0) {
      this.failures -= 1;
      throw this.failure;
    }
  }
}

describe.each(engines)('delivering alerts on %s', (engine) => {
  let store: Store;
  let folder: string;
  let actor: Actor;
  let clock: MovedClock;
  let channel: FaultyChannels;
  let deliver: Deliver;
  let alerts: Alerts;
  const condition = {
    kind: 'test',
    subjectKind: 'test',
    subjectId: 'one',
    severity: 'warning' as const,
    facts: {},
  };

  beforeAll(async () => {
    Logger.overrideLogger(false);
    folder = mkdtempSync(join(tmpdir(), 'lotward-delivery-'));
    store = await Store.open(folder, engine === 'postgres' ? await makePostgresDatabase() : undefined);
    alerts = alertsOf(store);
  });
  beforeEach(async () => {
    actor = await store.makeStudio();
    clock = new MovedClock();
    channel = new FaultyChannels();
    deliver = anotherProcess();
  });
  afterAll(async () => {
    Logger.overrideLogger(['log', 'warn', 'error']);
    await store.close();
    rmSync(folder, { recursive: true, force: true });
  });

  /** The delivery as another process, or the same after a restart, does it. */
  const anotherProcess = () =>
    new Deliver(
      store.database,
      store.transactions,
      clock,
      new OutboxStates(store.transactions),
      channel as unknown as AlertChannels,
      new StudioActors(store.database),
    );
  const relayBy = (by: Deliver, queue = new InProcessQueue(1_000)) =>
    new Relay(store.database, store.transactions, clock, readConfig({}), queue, by, new ProcessRole(true));
  /** The relay looks at all studios, those of other tests included. */
  const nothingElseWaits = () =>
    store.transactions.aside((query, now) =>
      query(`UPDATE outbox SET state = 'undeliverable', settled_at = $1 WHERE state = 'pending'`, [now]),
    );
  const open = () => inTransaction(store, actor, (transaction) => alerts.raise(transaction, [condition]));
  const close = () =>
    inTransaction(store, actor, (transaction) =>
      alerts.reconcile(transaction, { kinds: ['test'], subjects: 'all' }, []),
    );
  const rows = () =>
    store.database.reader.manager.find(OutboxRow, {
      where: { studioId: actor.studioId },
      order: { createdAt: 'ASC', id: 'ASC' },
    });
  const promised = async () => {
    const [row] = await rows();
    if (!row) throw new Error('Nothing was promised.');
    return row;
  };
  const attempt = async () =>
    deliver.deliver({ studioId: actor.studioId, deliveryId: (await promised()).id });
  /** Begins an attempt that is cut off: for the record it comes to no end, here it does when the test is over. */
  const cutOff = async () => {
    let end: () => void = () => undefined;
    channel.meanwhile = () =>
      new Promise((resolve) => {
        end = resolve;
      });
    const held = attempt();
    await vi.waitFor(() => expect(channel.handed).toHaveLength(1));
    channel.meanwhile = async () => undefined;
    heldBack.push(() => {
      end();
      return held;
    });
  };
  const heldBack: (() => Promise<void>)[] = [];
  afterEach(async () => {
    for (const release of heldBack.splice(0)) await release();
  });

  it('promises nothing when the cause is rolled back', async () => {
    const failing = inTransaction(store, actor, async (transaction) => {
      await alerts.raise(transaction, [condition]);
      throw new Error('the cause did not happen');
    });
    await expect(failing).rejects.toThrow('did not happen');
    expect(await rows()).toEqual([]);
  });

  it('tries again later after a failure, not at once, until it is sent', async () => {
    await open();
    channel.failures = 2;
    await attempt();
    expect(await promised()).toMatchObject({ state: 'pending', attempts: 1, lastError: 'the line is dead' });
    await attempt();
    expect(channel.handed).toHaveLength(1);
    clock.forward(1);
    await attempt();
    clock.forward(1);
    await attempt();
    expect(await promised()).toMatchObject({ state: 'sent', attempts: 3, begun: 3, lastError: null });
  });

  it('ends visibly as undeliverable, and the alert still stands', async () => {
    await open();
    channel.failures = Number.POSITIVE_INFINITY;
    for (let count = 0; count < deliveryBackoff.maximumAttempts + 5; count += 1) {
      await attempt();
      clock.forward(2);
    }
    expect(channel.handed).toHaveLength(deliveryBackoff.maximumAttempts);
    expect(await promised()).toMatchObject({
      state: 'undeliverable',
      attempts: deliveryBackoff.maximumAttempts,
      lastError: 'the line is dead',
      settledAt: expect.any(String),
    });
    const [alert] = await store.database.read('SELECT id FROM alert WHERE closed_at IS NULL');
    expect(alert).toBeDefined();
  });

  it('sends again under the same id when it was cut off, counts that, and not before its lease is over', async () => {
    await open();
    await cutOff();
    const { id } = await promised();
    const next = anotherProcess();
    await next.deliver({ studioId: actor.studioId, deliveryId: id });
    expect(channel.handed).toHaveLength(1);
    expect(await promised()).toMatchObject({ state: 'pending', attempts: 0, begun: 1 });
    clock.forward(1);
    await next.deliver({ studioId: actor.studioId, deliveryId: id });
    expect(await promised()).toMatchObject({ state: 'sent', attempts: 1, begun: 2 });
    expect(channel.handed.map(({ deliveryId }) => deliveryId)).toEqual([id, id]);
  });

  it('counts the end of an attempt that lost its lease, and takes nothing back that another settled', async () => {
    await open();
    let end: () => void = () => undefined;
    channel.meanwhile = () =>
      new Promise((resolve) => {
        end = resolve;
      });
    channel.failures = 1;
    const slow = attempt();
    await vi.waitFor(() => expect(channel.handed).toHaveLength(1));
    channel.meanwhile = async () => undefined;
    channel.failures = 0;
    clock.forward(1);
    await attempt();
    expect(await promised()).toMatchObject({ state: 'sent', attempts: 1, begun: 2 });
    channel.failures = 1;
    end();
    await slow;
    expect(await promised()).toMatchObject({ state: 'sent', attempts: 2, begun: 2, lastError: null });
  });

  it('gives up at once what would end the same, and waits as long as the receiver asks', async () => {
    await open();
    channel.failures = 1;
    const retryAt = new Date(Date.now() + 7_200_000).toISOString();
    channel.failure = new SendFailure('busy', false, retryAt);
    await attempt();
    expect(await promised()).toMatchObject({ state: 'pending', nextAttemptAt: retryAt, lastError: 'busy' });
    clock.forward(3);
    channel.failures = 1;
    channel.failure = new SendFailure('no such address', true);
    await attempt();
    expect(await promised()).toMatchObject({
      state: 'undeliverable',
      attempts: 2,
      lastError: 'no such address',
    });
  });

  it('tries anew under the same id when somebody wants it sent again, unknown attempts still counted', async () => {
    await open();
    await cutOff();
    clock.forward(1);
    channel.failures = 1;
    channel.failure = new SendFailure('no such address', true);
    await attempt();
    const list = new DeliveryList(store.database, store.transactions, relayBy(deliver), clock);
    const [item] = (await list.page(actor, {})).items;
    expect(item).toMatchObject({
      state: 'undeliverable',
      attempts: 1,
      unknownAttempts: 1,
      lastError: 'no such address',
      alert: { kind: 'test' },
      destination: null,
    });
    const { id } = await promised();
    const again = await list.sendAgain(actor, id, { id: uuidv7() });
    expect(again).toMatchObject({ id, state: 'pending', attempts: 0, unknownAttempts: 1, settledAt: null });
    await attempt();
    expect(await promised()).toMatchObject({ id, state: 'sent', attempts: 1, begun: 2 });
    await expect(list.sendAgain(actor, id, { id: uuidv7() })).rejects.toThrow('sent already');
    expect((await list.page(actor, {})).items).toEqual([]);
  });

  describe('to a destination', () => {
    const destinationId = uuidv7();
    beforeEach(async () => {
      await inTransaction(store, actor, async (transaction) => {
        const key = await store.dataKeys.make(transaction);
        await transaction.insert(AlertDestination, {
          studioId: actor.studioId,
          id: destinationId,
          kind: 'webhook',
          personId: null,
          dataKeyId: key.dataKeyId,
          settingsSealed: '-',
          minimumSeverity: 'notice',
          state: 'active',
          stateReason: null,
          version: 1,
          createdAt: transaction.recordedAt,
        });
      });
    });
    const toWebhook = async () => {
      const found = (await rows()).find((row) => row.destinationId === destinationId);
      if (!found) throw new Error('Nothing was promised to the webhook.');
      return found;
    };
    const tryIt = async () =>
      deliver.deliver({ studioId: actor.studioId, deliveryId: (await toWebhook()).id });
    const put = (state: AlertDestination['state'], stateReason: string | null) =>
      inTransaction(store, actor, (transaction) =>
        transaction.update(
          AlertDestination,
          { studioId: actor.studioId, id: destinationId },
          {
            state,
            stateReason,
            ...(state === 'removed' && { settingsSealed: null }),
          },
        ),
      );

    it('waits while it is paused', async () => {
      await open();
      await put('paused', null);
      await tryIt();
      expect(await toWebhook()).toMatchObject({ state: 'pending', begun: null });
      await put('active', null);
      await tryIt();
      expect((await toWebhook()).state).toBe('sent');
    });

    it.each(['removed', 'stopped'] as const)('ends visibly when it was %s meanwhile', async (state) => {
      await open();
      await put(state, 'its receiver is no more');
      await tryIt();
      expect(channel.handed).toEqual([]);
      expect(await toWebhook()).toMatchObject({
        state: 'undeliverable',
        attempts: 0,
        lastError: expect.stringContaining(state),
      });
    });

    it('is not among what can still be acted on once it leads nowhere, or its alert is over', async () => {
      const list = new DeliveryList(store.database, store.transactions, relayBy(deliver), clock);
      const listed = async () => (await list.page(actor, { actionable: true })).items.map(({ id }) => id);
      await open();
      channel.failures = 1;
      channel.failure = new SendFailure('no such address', true);
      await tryIt();
      const { id } = await toWebhook();
      expect(await listed()).toEqual([id]);
      await put('paused', null);
      expect(await listed()).toEqual([id]);
      await put('stopped', 'its receiver is no more');
      expect(await listed()).toEqual([]);
      await put('active', null);
      expect(await listed()).toEqual([id]);
      await close();
      expect(await listed()).toEqual([]);
      expect((await list.page(actor, {})).items.map((item) => item.id)).toEqual([id]);
    });

    it('is one attempt at a time after a failure, a few at a time else, what is urgent first', async () => {
      await nothingElseWaits();
      const many = Array.from({ length: 30 }, (_, index) => ({ ...condition, subjectId: String(index) }));
      await inTransaction(store, actor, (transaction) => alerts.raise(transaction, many));
      const urgent = { ...condition, subjectId: 'urgent', severity: 'urgent' as const };
      await inTransaction(store, actor, (transaction) => alerts.raise(transaction, [urgent]));
      const all = (await rows()).filter((row) => row.destinationId === destinationId);
      const urgentId = all.at(-1)?.id;
      const brought = async () => {
        const queue = new InProcessQueue(1_000);
        // It takes jobs, and nobody does them.
        queue.consume = () => undefined;
        const added = vi.spyOn(queue, 'add');
        const relay = relayBy(deliver, queue);
        relay.onApplicationBootstrap();
        const ofWebhooks = () => added.mock.calls.find(([name]) => name === 'webhook')?.[1];
        const jobs = await vi.waitFor(() => ofWebhooks() ?? Promise.reject(new Error('none yet')), 10_000);
        await relay.onModuleDestroy();
        return jobs.map(({ deliveryId }) => deliveryId);
      };
      const first = await brought();
      expect(first).toHaveLength(20);
      expect(first[0]).toBe(urgentId);
      channel.failures = 1;
      await deliver.deliver({ studioId: actor.studioId, deliveryId: all[0]?.id ?? '' });
      expect(await brought()).toEqual([urgentId]);
    });

    it('stops it when its receiver says that it is no more', async () => {
      await open();
      channel.failures = 1;
      channel.failure = new SendFailure('410 Gone', true, null, true);
      await tryIt();
      expect(await toWebhook()).toMatchObject({ state: 'undeliverable', lastError: '410 Gone' });
      const stopped = await store.database.reader.manager.findOneBy(AlertDestination, {
        studioId: actor.studioId,
        id: destinationId,
      });
      expect(stopped).toMatchObject({ state: 'stopped', stateReason: '410 Gone', version: 2 });
    });
  });

  it('tells nobody after their quiet hours of what was over by then', async () => {
    await open();
    const { alertId } = await promised();
    const mail = { id: uuidv7(), destinationId: uuidv7() };
    await inTransaction(store, actor, async (transaction) => {
      const { studioId, recordedAt } = transaction;
      const key = await store.dataKeys.make(transaction);
      await transaction.insert(AlertDestination, {
        studioId,
        id: mail.destinationId,
        kind: 'mail',
        personId: actor.personId,
        dataKeyId: key.dataKeyId,
        settingsSealed: '-',
        minimumSeverity: 'notice',
        state: 'active',
        stateReason: null,
        version: 1,
        createdAt: recordedAt,
      });
      await transaction.insert(OutboxRow, {
        ...(await promised()),
        ...mail,
        alertId,
        channel: 'mail',
        notBefore: recordedAt,
      });
    });
    await close();
    await deliver.deliver({ studioId: actor.studioId, deliveryId: mail.id });
    expect(channel.handed).toEqual([]);
    expect((await rows()).find(({ id }) => id === mail.id)).toMatchObject({
      state: 'undeliverable',
      attempts: 0,
      lastError: 'It was over before it was to be told.',
    });
  });

  it('sends nothing that is settled, or that is nowhere', async () => {
    await open();
    await attempt();
    await attempt();
    await deliver.deliver({ studioId: actor.studioId, deliveryId: uuidv7() });
    expect(channel.handed).toHaveLength(1);
  });

  it('is settled once when two deliver the same row at the same time', async () => {
    await open();
    await Promise.all([attempt(), attempt(), attempt()]);
    expect(await promised()).toMatchObject({ state: 'sent', attempts: 1 });
  });

  it('leaves no entry in the audit log for its attempts', async () => {
    await open();
    const count = () => store.database.read('SELECT count(*) AS count FROM audit_entry');
    const before = await count();
    await attempt();
    expect(await count()).toEqual(before);
  });

  // Its planner takes a table that was filled just now for small.
  if (engine === 'postgres') {
    it('finds what to relay at once among thousands that were promised a moment ago', async () => {
      await nothingElseWaits();
      const many = Array.from({ length: 4_000 }, (_, index) => ({ ...condition, subjectId: String(index) }));
      await inTransaction(store, actor, (transaction) => alerts.raise(transaction, many));
      const queue = new InProcessQueue(1_000);
      const added = vi.spyOn(queue, 'add');
      const relay = relayBy(deliver, queue);
      channel.meanwhile = () => new Promise(() => undefined);
      relay.onApplicationBootstrap();
      // By comparing all with all it would take a hundred times as long as the tenths of a second that it takes.
      await vi.waitFor(() => expect(added).toHaveBeenCalled(), { timeout: 10_000, interval: 5 });
      expect(added.mock.calls[0]?.[1]).toHaveLength(1_000);
      await relay.onModuleDestroy();
    });
  }

  it('relays what is due, and never a closing before its opening', async () => {
    await nothingElseWaits();
    channel.failures = 1;
    await open();
    await close();
    const relay = relayBy(deliver);
    relay.onApplicationBootstrap();
    try {
      await vi.waitFor(() => expect(channel.handed).toHaveLength(1), 10_000);
      await wait(1_500);
      expect(channel.handed.map(({ event }) => event)).toEqual(['opened']);
      clock.forward(1);
      await vi.waitFor(async () => {
        expect((await rows()).map(({ state }) => state)).toEqual(['sent', 'sent']);
      }, 10_000);
      expect(channel.handed.map(({ event }) => event)).toEqual(['opened', 'opened', 'closed']);
    } finally {
      await relay.onModuleDestroy();
    }
  });
});
