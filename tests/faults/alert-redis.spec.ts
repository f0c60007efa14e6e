import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import type { AlertDestinationPageView } from '../../src/alerts/destinations/alert-destinations.views.js';
import { answerMilliseconds } from '../../src/alerts/queue/redis-connection.service.js';
import { stopLimitMilliseconds } from '../../src/platform/stopping.js';
import { AlertStation } from '../support/alert-station.js';
import { hasRedis, RedisServer } from '../support/redis.js';
import { until, wait } from '../support/waiting.js';

/** The relay looks every second. */
const someLooks = 2_500;

/** With SQLite the service itself takes the jobs from Redis. */
describe.skipIf(!hasRedis)('alerts while Redis fails', { timeout: 120_000 }, () => {
  let redis: RedisServer;
  let station: AlertStation;
  let webhookId: string;

  beforeAll(async () => {
    redis = await RedisServer.start({ appendOnly: true }, false);
    station = await AlertStation.start('sqlite', redis);
    webhookId = (await station.makeWebhook('/alerts')).id;
  });
  afterEach(async () => {
    station.hook.release();
    station.mail.release();
    expect(await station.contradictions()).toEqual([]);
  });
  afterAll(async () => {
    try {
      await station?.dispose();
    } finally {
      await redis?.dispose();
    }
  });

  const isReady = async () => (await fetch(`${station.service.url}/health/ready`)).status === 200;
  const allSent = async (alertIds: readonly string[]) => {
    await station.settled();
    const rows = await station.rowsTo(webhookId, alertIds);
    expect(rows).toHaveLength(alertIds.length);
    expect(rows.every(({ state }) => state === 'sent')).toBe(true);
    return rows;
  };

  it('commits them while Redis is down since the start, and sends them once it is there', async () => {
    expect(await isReady()).toBe(true);
    const ids = await station.open(3);
    await wait(someLooks);
    expect(station.hook.received).toHaveLength(0);
    await redis.restart();
    const rows = await allSent(ids);
    expect(rows.map(({ attempts }) => attempts)).toEqual([1, 1, 1]);
    expect(station.hook.received).toHaveLength(3);
  });

  it('sends all when Redis is killed in mid-delivery, and holds nothing but ids', async () => {
    station.hook.usually = { held: true };
    const before = station.hook.received.length;
    const ids = await station.open(5);
    await station.hook.came(before + 1);
    const held = await redis.everything();
    expect((await station.rowsTo(webhookId, ids)).some(({ id }) => held.includes(id))).toBe(true);
    expect(held).not.toMatch(/liner|whsec|127\.0\.0\.1|studio\.example/i);
    await redis.kill();
    await wait(someLooks);
    expect(await isReady()).toBe(true);
    station.hook.release();
    await redis.restart();
    await allSent(ids);
  });

  it('sends all when Redis comes back empty', async () => {
    station.hook.usually = { held: true };
    const before = station.hook.received.length;
    const ids = await station.open(5);
    await station.hook.came(before + 1);
    await redis.restart('empty');
    station.hook.release();
    await allSent(ids);
  });

  it('sends all when Redis was out of memory', async () => {
    await redis.limitMemory('1');
    const ids = await station.open(2);
    await wait(someLooks);
    expect((await station.rowsTo(webhookId, ids)).map(({ state }) => state)).toEqual(['pending', 'pending']);
    expect(await isReady()).toBe(true);
    await redis.limitMemory('0');
    await allSent(ids);
  });

  it('sends all when Redis neither answered nor closed its connections for a while', async () => {
    redis.pause();
    const startedAt = performance.now();
    const ids = await station.open(4);
    // Had each of them waited for a single answer of Redis, it would have taken so long.
    expect(performance.now() - startedAt).toBeLessThan(answerMilliseconds * ids.length);
    await wait(someLooks);
    expect(await isReady()).toBe(true);
    redis.resume();
    await allSent(ids);
  });

  it('sends through it what receivers refuse as without it: later, to others, or never again', async () => {
    const { id: busyId } = await station.makeWebhook('/busy');
    const { id: goneId } = await station.makeWebhook('/gone');
    const mailboxId = await station.makeMailbox('owner@studio.example');
    station.hook.answerAt('/busy', { status: 429, headers: { 'retry-after': '240' } });
    station.hook.answerAt('/gone', { status: 410 });
    station.mail.answer = { refusesRecipient: 550 };
    const [alertId = ''] = await station.open(1);
    const askedAt = station.clock.now();
    const rowTo = async (destinationId: string) => (await station.rowsTo(destinationId, [alertId]))[0];
    const states = async () =>
      (await Promise.all([webhookId, busyId, goneId, mailboxId].map(rowTo))).map(
        (row) => `${row?.state} after ${row?.attempts}`,
      );
    await until('an attempt at each', async () => (await states()).every((each) => !/ 0$/.test(each)));
    expect(await states()).toEqual([
      'sent after 1',
      'pending after 1',
      'undeliverable after 1',
      'undeliverable after 1',
    ]);
    const ahead = Date.parse((await rowTo(busyId))?.nextAttemptAt ?? '') - Date.parse(askedAt);
    expect(ahead).toBeGreaterThan(235_000);
    const { items } = await station.service.seen<AlertDestinationPageView>('/alert-destinations');
    expect(items.find(({ id }) => id === goneId)).toMatchObject({ state: 'stopped' });
    expect(station.hook.at('/busy')).toHaveLength(1);
    station.hook.answerAt('/busy', {});
    await station.settled();
    expect(await states()).toContain('sent after 2');
    expect(station.hook.at('/gone')).toHaveLength(1);
  });

  it('ends in order and in time while Redis is down, and sends later what it committed then', async () => {
    const stopsInTime = async () => {
      const startedAt = performance.now();
      expect(await station.service.stop('SIGTERM')).toBe(0);
      expect(performance.now() - startedAt).toBeLessThan(stopLimitMilliseconds);
    };
    await redis.kill();
    const ids = await station.open(1);
    await stopsInTime();
    // It has not seen Redis since its start.
    await station.startAgain();
    ids.push(...(await station.open(1)));
    await stopsInTime();
    await station.startAgain();
    await redis.restart('empty');
    await allSent(ids);
    redis.pause();
    await stopsInTime();
    redis.resume();
  });
});
