import { spawn } from 'node:child_process';
import { Queue } from 'bullmq';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import type { AlertDeliveryView, SweepView } from '../../src/alerts/alerts.views.js';
import { redisPrefix } from '../../src/alerts/queue/redis-queue.module.js';
import { scheduleQueue } from '../../src/alerts/queue/redis-queue.service.js';
import { stopLimitMilliseconds } from '../../src/platform/stopping.js';
import { AlertStation } from '../support/alert-station.js';
import { lackMany } from '../support/many-alerts.js';
import { PlainSql } from '../support/plain-sql.js';
import { SeededRandom } from '../support/random.js';
import { hasRedis, RedisServer } from '../support/redis.js';
import { engines } from '../support/service.js';
import { until, wait } from '../support/waiting.js';

/** What its container asks, by the files it has for itself; answers with the exit code. */
function healthCheck(temporaryFolder: string): Promise<number | null> {
  const check = spawn(process.execPath, ['docker/worker-health-check.mjs'], {
    env: { PATH: process.env.PATH, TMPDIR: temporaryFolder },
    stdio: 'ignore',
  });
  return new Promise((resolve) => check.once('exit', resolve));
}

const rounds = process.env.SOAK ? 60 : 2;
const atOnce = process.env.SOAK ? 10_000 : 300;
const longestMilliseconds = 600_000;
const firings = 8;
const hasServers = hasRedis && engines.includes('postgres');

describe.skipIf(!hasServers)(
  'alerts that workers send',
  { timeout: process.env.SOAK ? 1_800_000 : 180_000 },
  () => {
    let redis: RedisServer;
    let station: AlertStation;
    let webhookId: string;

    beforeAll(async () => {
      redis = await RedisServer.start({ appendOnly: true });
      station = await AlertStation.start('postgres', redis, { DELIVERIES_PER_SECOND: '10000' });
      webhookId = (await station.makeWebhook('/alerts')).id;
    });
    afterEach(async () => {
      station.hook.release();
      expect(await station.contradictions()).toEqual([]);
    });
    afterAll(async () => {
      try {
        await station?.dispose();
      } finally {
        await redis?.dispose();
      }
    });

    it('wait for a worker, and are sent under the same id when it was killed in mid-delivery', async () => {
      const ids = await station.open(3);
      // No worker was here yet.
      expect(await healthCheck(station.folder)).toBe(1);
      const killed = await station.startWorker();
      station.hook.usually = { held: true };
      await station.hook.came(1);
      await killed.end('SIGKILL');
      const cutOff = new Set(station.hook.received.map(({ id }) => id));
      station.hook.release();
      await station.startWorker();
      await station.settled({ overCutOff: true });
      const rows = await station.rowsTo(webhookId, ids);
      expect(rows.map(({ state }) => state)).toEqual(['sent', 'sent', 'sent']);
      const times = station.hook.timesById();
      for (const { id, alertId, begun, attempts } of rows) {
        // One more may have been begun that did not come before the kill.
        const unknown = begun - attempts;
        expect(times.get(id)).toBe(cutOff.has(id) ? 2 : 1);
        if (cutOff.has(id)) expect(unknown).toBe(1);
        const deliveries = await station.service.seen<AlertDeliveryView[]>(`/alerts/${alertId}/deliveries`);
        expect(deliveries.find((delivery) => delivery.id === id)).toMatchObject({ unknownAttempts: unknown });
      }
      expect(cutOff.size).toBeGreaterThan(0);
    });

    it('are swept for once a morning, however many workers there are', async () => {
      await station.startWorker();
      const sql = await PlainSql.connect(station.service, 'read');
      const sweeps = async () =>
        (await sql.rows("SELECT recorded_at FROM audit_entry WHERE action = 'alerts.sweep'")).length;
      const before = await sweeps();
      station.clock.forward({ hours: 26 });
      // All that is due at once, to whichever worker takes it, as after a while without any.
      const queue = new Queue(scheduleQueue, { connection: { url: redis.url }, prefix: redisPrefix });
      await queue.addBulk(Array.from({ length: firings }, () => ({ name: 'sweep', data: {} })));
      await until('all were taken', async () => (await queue.getJobCountByTypes('waiting', 'active')) === 0);
      await queue.close();
      expect(await sweeps()).toBe(before + 1);
      await sql.close();
    });

    it(`are each sent once when there are ${atOnce} at once`, async () => {
      const { service } = station;
      await station.settled();
      await lackMany(service, service.studioId, atOnce);
      const before = station.hook.received.length;
      const { opened } = await service.made<SweepView>('/alerts/sweep');
      // What the machine itself lacks may open beside them.
      expect(opened).toBeGreaterThanOrEqual(atOnce);
      await station.settled({ within: longestMilliseconds });
      const came = station.hook.received.slice(before).map(({ id }) => id);
      expect(came.length).toBeGreaterThanOrEqual(opened);
      expect(new Set(came).size).toBe(came.length);
      const rows = await station.rowsTo(webhookId);
      expect(rows.filter(({ state }) => state !== 'sent')).toEqual([]);
    });

    it('wait in the record while Redis is down; workers end then in time all the same', async () => {
      await redis.kill();
      const ids = await station.open(2);
      const running = station.workers.filter(({ isRunning }) => isRunning);
      expect(running).toHaveLength(2);
      for (const worker of running) {
        const startedAt = performance.now();
        expect(await worker.end('SIGTERM')).toBe(0);
        expect(performance.now() - startedAt).toBeLessThan(stopLimitMilliseconds);
      }
      const late = await station.startWorker();
      // It can work, although there is nothing to take yet.
      await until('a sign of life', async () => (await healthCheck(station.folder)) === 0 || undefined);
      await redis.restart('empty');
      await station.settled();
      expect((await station.rowsTo(webhookId, ids)).map(({ state }) => state)).toEqual(['sent', 'sent']);
      expect(await late.end('SIGTERM')).toBe(0);
    });

    it(`are all sent after ${rounds} faults, whichever come in whichever order`, async () => {
      const random = SeededRandom.ofThisRun();
      const faults: Record<string, () => Promise<void>> = {
        'a worker is killed': async () => {
          await station.workers.at(-1)?.end('SIGKILL');
          await station.startWorker();
        },
        'Redis is killed': async () => {
          await redis.kill();
          await redis.restart();
        },
        'Redis comes back empty': () => redis.restart('empty'),
        'Redis hangs': async () => {
          redis.pause();
          await wait(random.between(100, 7_000));
          redis.resume();
        },
        'Redis is full': async () => {
          await redis.limitMemory('1');
          await wait(random.between(100, 3_000));
          await redis.limitMemory('0');
        },
        'the service is killed': async () => {
          await station.service.stop('SIGKILL');
          await station.startAgain();
        },
      };
      await station.startWorker();
      const ids: string[] = [];
      const happened: string[] = [];
      for (let round = 1; round <= rounds; round += 1) {
        station.hook.usually = { held: true };
        ids.push(...(await station.open(random.between(1, 4))));
        await wait(random.between(0, 300));
        const fault = random.pick(Object.keys(faults));
        happened.push(fault);
        await faults[fault]?.();
        station.hook.release();
      }
      process.stdout.write(`alerts under faults, SEED=${random.seed}: ${happened.join(', ')}\n`);
      await station.settled({ overCutOff: true });
      const rows = await station.rowsTo(webhookId, ids);
      expect(rows.filter(({ state }) => state === 'sent')).toHaveLength(ids.length);
    });
  },
);
