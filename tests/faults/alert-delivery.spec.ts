import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { v7 as uuidv7 } from 'uuid';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Alerts } from '../../src/alerts/alerts.service.js';
import type { AlertAnnouncement } from '../../src/alerts/channels/alert-words.js';
import { LogChannel } from '../../src/alerts/channels/log/log-channel.service.js';
import { deliveryBackoff } from '../../src/alerts/outbox/backoff.js';
import { Deliver } from '../../src/alerts/outbox/deliver.service.js';
import { OutboxRow } from '../../src/alerts/outbox/outbox-row.entity.js';
import { Relay } from '../../src/alerts/outbox/relay.service.js';
import { InProcessQueue } from '../../src/alerts/queue/in-process-queue.service.js';
import type { Actor } from '../../src/platform/actor.js';
import { ProcessRole } from '../../src/platform/process-role.js';
import { alertsOf } from '../support/alerts-of.js';
import { inTransaction } from '../support/bare-stock.js';
import { MovedClock } from '../support/moved-clock.js';
import { engines, makePostgresDatabase } from '../support/service.js';
import { Store } from '../support/store.js';

/** Remembers what it was handed, and fails as often as it is told to. */
class FaultyChannel extends LogChannel {
  readonly handed: { deliveryId: string; event: string }[] = [];
  failures = 0;
  override async send(deliveryId: string, { event }: AlertAnnouncement): Promise<void> {
    this.handed.push({ deliveryId, event });
    if (this.failures > 0) {
      this.failures -= 1;
      throw new Error('the line is dead');
    }
  }
}

describe.each(engines)('delivering alerts on %s', (engine) => {
  let store: Store;
  let folder: string;
  let actor: Actor;
  let clock: MovedClock;
  let channel: FaultyChannel;
  let deliver: Deliver;
  let alerts: Alerts;
  const condition = {
    kind: 'test',
    subjectKind: 'test',
    subjectId: 'one',
    severity: 'warning' as const,
    facts: {},
  };

  beforeEach(async () => {
    folder = mkdtempSync(join(tmpdir(), 'lotward-delivery-'));
    store = await Store.open(folder, engine === 'postgres' ? await makePostgresDatabase() : undefined);
    alerts = alertsOf(store);
    actor = await store.makeStudio();
    clock = new MovedClock();
    channel = new FaultyChannel();
    deliver = new Deliver(store.database, store.transactions, clock, channel);
  });
  afterEach(async () => {
    await store.close();
    rmSync(folder, { recursive: true, force: true });
  });

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
    expect(await promised()).toMatchObject({ state: 'sent', attempts: 3, lastError: null });
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

  it('sends again under the same id when it stopped between sending and noting it', async () => {
    await open();
    vi.spyOn(store.transactions, 'quietly').mockRejectedValueOnce(new Error('stopped'));
    await expect(attempt()).rejects.toThrow('stopped');
    expect((await promised()).state).toBe('pending');
    await attempt();
    expect((await promised()).state).toBe('sent');
    expect(channel.handed).toHaveLength(2);
    expect(new Set(channel.handed.map(({ deliveryId }) => deliveryId)).size).toBe(1);
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

  it('relays what is due, and never a closing before its opening', async () => {
    channel.failures = 1;
    await open();
    await close();
    const relay = new Relay(store.database, clock, new InProcessQueue(), deliver, new ProcessRole(true));
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
