import { spawn } from 'node:child_process';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import type { AlertDeliveryView } from '../../src/alerts/alerts.views.js';
import { stopLimitMilliseconds } from '../../src/platform/stopping.js';
import { AlertStation, WorkerProcess } from '../support/alert-station.js';
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
      station = await AlertStation.start('postgres', redis);
      webhookId = (await station.makeWebhook('/alerts')).id;
    });
    afterEach(async () => {
      station.hook.release();
      expect(await station.contradictions()).toEqual([]);
    });
    afterAll(async () => {
      await station.dispose();
      await redis.dispose();
    });

    it('need a worker that has PostgreSQL and Redis, and says so', async () => {
      const worker = WorkerProcess.spawn({ DATA_DIR: station.service.dataFolder });
      expect(await worker.ended()).toBe(1);
      expect(worker.log.join('')).toMatch(/DATABASE_URL is not set.*REDIS_URL is not set/s);
      expect(await healthCheck(station.folder)).toBe(1);
    });

    it('wait for a worker, and are sent under the same id when it was killed in mid-delivery', async () => {
      const ids = await station.open(3);
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
      await until('a sweep', async () => (await sweeps()) > before || undefined);
      await wait(2_000);
      expect(await sweeps()).toBe(before + 1);
      await sql.close();
    });

    it('wait in the record while Redis is down; workers end then in time all the same', async () => {
      await redis.kill();
      const ids = await station.open(2);
      for (const worker of station.workers) {
        const startedAt = performance.now();
        await worker.end('SIGTERM');
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
      const random = SeededRandom.fromEnvironment();
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
