import { type ChildProcess, spawn } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Queue } from 'bullmq';
import type { SweepView } from '../../src/alerts/alerts.views.js';
import { channelLimits } from '../../src/alerts/queue/channel-limits.js';
import { AlertStation } from '../support/alert-station.js';
import { lackMany } from '../support/many-alerts.js';
import { startPostgres } from '../support/postgres.js';
import { hasRedis, RedisServer } from '../support/redis.js';
import { wait } from '../support/waiting.js';
import { type ReceivedWebhook, WebhookReceiver } from '../support/webhook-receiver.js';
import type { BareQueueInput } from './bare-queue-worker.js';
import type { BenchSettings } from './bench-settings.js';
import { endWithBench, makeFolder, removeFolder } from './leave-nothing.js';
import { median } from './median.js';

/** The most that can be set, and above what any of them reaches, so that the limit that people set is not what is measured. */
const perSecondAllowed = 10_000;
const concurrency = channelLimits(perSecondAllowed).webhook.atOnce;

/** One way of delivering, against BullMQ alone on the same Redis with as many workers. */
export interface DeliveriesCompared {
  way: string;
  servicePerSecond: number;
  barePerSecond: number;
  ratios: number[];
  /** From the instant a delivery is recorded at until a webhook has it, one at a time; medians. */
  serviceMilliseconds: number;
  bareMilliseconds: number;
}

interface Way {
  name: string;
  engine: 'sqlite' | 'postgres';
  throughRedis: boolean;
  workers: number;
}

const inProcess: Way = { name: 'in-process, SQLite', engine: 'sqlite', throughRedis: false, workers: 1 };
const throughRedis = (workers: number): Way => ({
  name: `Redis, ${workers} ${workers === 1 ? 'worker' : 'workers'}, PostgreSQL`,
  engine: 'postgres',
  throughRedis: true,
  workers,
});

/** How many alerts opened by one sweep reach a webhook in a second, and how soon a single one does. */
export async function benchAlertDeliveries(settings: BenchSettings): Promise<DeliveriesCompared[]> {
  if (!hasRedis) return [];
  const postgres = process.env.LOTWARD_TEST_POSTGRES === undefined ? await startPostgres() : undefined;
  if (postgres) process.env.LOTWARD_TEST_POSTGRES = postgres.url;
  try {
    const compared: DeliveriesCompared[] = [];
    for (const way of [inProcess, ...settings.deliveryWorkers.map(throughRedis)]) {
      compared.push(await compareWay(way, settings));
    }
    return compared;
  } finally {
    await postgres?.stop();
  }
}

async function compareWay(way: Way, settings: BenchSettings): Promise<DeliveriesCompared> {
  // It ends with the bench by itself.
  const redis = await RedisServer.start();
  try {
    const station = await AlertStation.start(way.engine, way.throughRedis ? redis : undefined, {
      DELIVERIES_PER_SECOND: String(perSecondAllowed),
      // A clock that can be moved would take time from what is measured.
      NODE_OPTIONS: '',
    });
    endWithBench(station.service);
    try {
      return await compareOn(station, redis, way, settings);
    } finally {
      await station.dispose();
    }
  } finally {
    await redis.dispose();
  }
}

async function compareOn(
  station: AlertStation,
  redis: RedisServer,
  way: Way,
  settings: BenchSettings,
): Promise<DeliveriesCompared> {
  const folder = makeFolder();
  try {
    const webhook = await station.makeWebhook('/alerts');
    if (way.throughRedis) {
      for (let worker = 0; worker < way.workers; worker += 1) endWithBench(await station.startWorker());
    }
    const ofService: number[] = [];
    const ofBare: number[] = [];
    // What the service sends for one alert is what the other sends too.
    await station.open(1);
    await station.hook.came(1);
    const bare = await BareQueue.start(redis.port, way.workers, station.hook.received[0]?.body ?? '', folder);
    try {
      for (let round = 0; round <= settings.deliveryRounds; round += 1) {
        const both = [
          async () => ofService.push(await burstOfService(station, settings.deliveries)),
          async () => ofBare.push(await bare.burst(settings.deliveries)),
        ];
        for (const side of round % 2 === 0 ? both : both.reverse()) await side();
      }
      // The first round only warms up.
      ofService.shift();
      ofBare.shift();
      return {
        way: way.name,
        servicePerSecond: median(ofService),
        barePerSecond: median(ofBare),
        ratios: ofService.map((perSecond, index) => perSecond / (ofBare[index] ?? 0)),
        serviceMilliseconds: median(await singlesOfService(station, webhook.id, settings.singleDeliveries)),
        bareMilliseconds: median(await bare.singles(settings.singleDeliveries)),
      };
    } finally {
      await bare.stop();
    }
  } finally {
    removeFolder(folder);
  }
}

/** Per second, from the first that came to the last. */
async function burstOfService(station: AlertStation, count: number): Promise<number> {
  const { service, hook } = station;
  await station.settled();
  await lackMany(service, service.studioId, count);
  hook.forget();
  const { opened } = await service.made<SweepView>('/alerts/sweep');
  if (opened !== count) throw new Error(`The sweep opened ${opened} alerts instead of ${count}.`);
  return perSecond(await whole(hook, count));
}

/** By the button that tests a webhook, whose write takes no time of its own. */
async function singlesOfService(station: AlertStation, webhookId: string, count: number): Promise<number[]> {
  const { hook, service } = station;
  await station.settled();
  hook.forget();
  for (let number = 1; number <= count; number += 1) {
    await service.made(`/alert-destinations/${webhookId}/test`);
    await whole(hook, number);
  }
  return hook.received.map(
    ({ body, at }) =>
      performance.timeOrigin + at - Date.parse((JSON.parse(body) as { timestamp: string }).timestamp),
  );
}

function perSecond(received: readonly ReceivedWebhook[]): number {
  const [first, last] = [received[0], received.at(-1)];
  return ((received.length - 1) / ((last?.at ?? 0) - (first?.at ?? 0))) * 1_000;
}

/** Waits without looking often, which would take time from what is measured. */
async function whole(hook: WebhookReceiver, count: number): Promise<readonly ReceivedWebhook[]> {
  const deadline = Date.now() + 300_000;
  while (hook.received.length < count) {
    if (Date.now() > deadline) throw new Error(`${hook.received.length} of ${count} deliveries came.`);
    await wait(20);
  }
  if (hook.received.length > count) throw new Error(`${hook.received.length} came instead of ${count}.`);
  return hook.received;
}

/** BullMQ with workers whose jobs are the HTTP call alone. */
class BareQueue {
  private constructor(
    private readonly queue: Queue,
    private readonly hook: WebhookReceiver,
    private readonly workers: ChildProcess[],
  ) {}

  static async start(redisPort: number, workers: number, body: string, folder: string): Promise<BareQueue> {
    const hook = await WebhookReceiver.start();
    const input: BareQueueInput = {
      redisPort,
      queue: 'bare',
      address: hook.url(),
      body,
      concurrency,
    };
    const file = join(folder, 'bare-queue.json');
    writeFileSync(file, JSON.stringify(input));
    const started = await Promise.all(Array.from({ length: workers }, () => startBareWorker(file)));
    const queue = new Queue(input.queue, { connection: { host: '127.0.0.1', port: redisPort } });
    return new BareQueue(queue, hook, started);
  }

  async burst(count: number): Promise<number> {
    this.hook.forget();
    const data = { studioId: 'studio', deliveryId: 'delivery' };
    await this.queue.addBulk(
      Array.from({ length: count }, () => ({ name: 'deliver', data, opts: { removeOnComplete: true } })),
    );
    return perSecond(await whole(this.hook, count));
  }

  async singles(count: number): Promise<number[]> {
    this.hook.forget();
    const milliseconds: number[] = [];
    for (let number = 1; number <= count; number += 1) {
      const addedAt = performance.now();
      await this.queue.add('deliver', {}, { removeOnComplete: true });
      const received = await whole(this.hook, number);
      milliseconds.push((received.at(-1)?.at ?? 0) - addedAt);
    }
    return milliseconds;
  }

  async stop(): Promise<void> {
    await this.queue.close();
    for (const worker of this.workers) {
      const ended = new Promise((resolve) => worker.once('exit', resolve));
      worker.kill('SIGKILL');
      await ended;
    }
    await this.hook.stop();
  }
}

function startBareWorker(file: string): Promise<ChildProcess> {
  const program = fileURLToPath(new URL('bare-queue-worker.js', import.meta.url));
  const child = spawn(process.execPath, [program, file], { stdio: ['ignore', 'pipe', 'inherit'] });
  endWithBench({ child });
  return new Promise((resolve, reject) => {
    child.stdout.once('data', () => resolve(child));
    child.once('exit', (code) =>
      reject(new Error(`The bare worker ended with ${code} before it was ready.`)),
    );
  });
}
