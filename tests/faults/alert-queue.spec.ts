import { Logger, Module } from '@nestjs/common';
import { LazyModuleLoader, NestFactory } from '@nestjs/core';
import { Queue } from 'bullmq';
import { v7 as uuidv7 } from 'uuid';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import {
  type AlertQueue,
  closeLimitMilliseconds,
  type DeliveryJob,
  repeatMilliseconds,
} from '../../src/alerts/queue/alert-queue.interface.js';
import { InProcessQueue } from '../../src/alerts/queue/in-process-queue.service.js';
import { openRedisQueue } from '../../src/alerts/queue/open-redis-queue.service.js';
import { redisPrefix } from '../../src/alerts/queue/redis-queue.module.js';
import { scheduleQueue } from '../../src/alerts/queue/redis-queue.service.js';
import { hasRedis, RedisServer } from '../support/redis.js';
import { until } from '../support/waiting.js';

const perSecond = 8;
const studioId = uuidv7();

@Module({})
class Nothing {}

let redis: RedisServer | undefined;

/** Both implementations keep the same promises. */
const implementations = [
  { name: 'in this process', onRedis: false },
  ...(hasRedis ? [{ name: 'on Redis', onRedis: true }] : []),
];

describe.each(implementations)('the queue $name', { timeout: 30_000 }, ({ onRedis }) => {
  let queue: AlertQueue;
  let taken: string[];
  let end: () => Promise<void>;

  beforeAll(async () => {
    Logger.overrideLogger(false);
    redis = onRedis ? await RedisServer.start() : undefined;
  });
  afterAll(async () => {
    Logger.overrideLogger(['log', 'warn', 'error']);
    await redis?.dispose();
  });
  beforeEach(async () => {
    taken = [];
    if (redis === undefined) {
      queue = new InProcessQueue(perSecond);
      end = () => queue.close();
      return;
    }
    await redis.ask('FLUSHALL');
    const program = await NestFactory.createApplicationContext(Nothing, { logger: false });
    queue = await openRedisQueue(redis.url, perSecond, program.get(LazyModuleLoader));
    end = async () => {
      await queue.close();
      await program.close();
    };
    await until('Redis is reached', async () => (await queue.state()).awaySince === null || undefined);
  });
  afterEach(async () => {
    await end();
  });

  const jobs = (count: number): DeliveryJob[] =>
    Array.from({ length: count }, () => ({ studioId, deliveryId: uuidv7() }));
  const ids = (of: readonly DeliveryJob[]) => of.map(({ deliveryId }) => deliveryId).sort();
  const take = async ({ deliveryId }: DeliveryJob) => {
    taken.push(deliveryId);
  };
  const tookAll = (count: number) => vi.waitFor(() => expect(taken).toHaveLength(count), 10_000);

  it('hands on each job, once, however often it is put in while it waits', async () => {
    const some = jobs(20);
    for (let round = 0; round < 3; round += 1) await queue.add('log', some);
    queue.consume(take);
    await tookAll(20);
    await queue.add('log', [...jobs(1)]);
    await tookAll(21);
    expect(taken.slice(0, 20).sort()).toEqual(ids(some));
  });

  it('does not begin a job that is being done a second time, and takes it again when it was done', async () => {
    const [job] = jobs(1) as [DeliveryJob];
    let finish: () => void = () => undefined;
    queue.consume(async (each) => {
      taken.push(each.deliveryId);
      if (taken.length === 1) {
        await new Promise<void>((resolve) => {
          finish = resolve;
        });
      }
    });
    await queue.add('mail', [job]);
    await tookAll(1);
    await queue.add('mail', [job]);
    const [other] = jobs(1) as [DeliveryJob];
    await queue.add('mail', [other]);
    await tookAll(2);
    expect(taken).toEqual([job.deliveryId, other.deliveryId]);
    finish();
    await until('the job is taken again', async () => {
      await queue.add('mail', [job]);
      return taken.length > 2 || undefined;
    });
    expect(taken[2]).toBe(job.deliveryId);
  });

  it('does not repeat by itself what fails: the outbox row says when it is tried again', async () => {
    queue.consume(async (job) => {
      taken.push(job.deliveryId);
      throw new Error('this fails');
    });
    await queue.add('log', jobs(3));
    await tookAll(3);
    await queue.add('log', jobs(1));
    await tookAll(4);
    expect(new Set(taken).size).toBe(4);
  });

  it('begins no more in a second than a channel may, and holds up no other channel by it', async () => {
    const slow = jobs(10 * perSecond);
    const quick = jobs(30);
    const count = (of: readonly DeliveryJob[]) => {
      const all = new Set(taken);
      return of.filter(({ deliveryId }) => all.has(deliveryId)).length;
    };
    const startedAt = performance.now();
    queue.consume(take);
    await queue.add('webhook', slow);
    await queue.add('log', quick);
    await vi.waitFor(() => expect(count(quick)).toBe(30), 10_000);
    expect(count(slow)).toBeLessThan(slow.length);
    await vi.waitFor(() => expect(count(slow)).toBeGreaterThan(2 * perSecond), 10_000);
    expect(performance.now() - startedAt).toBeGreaterThan(1_900);
  });

  it('says how much room it has, and takes no more than that', async () => {
    expect(await queue.room('push')).toBe(1_000);
    await queue.add('push', jobs(400));
    expect(await queue.room('push')).toBe(600);
    expect(await queue.room('mail')).toBe(1_000);
  });

  it('fires each purpose', async () => {
    queue.repeat(['one', 'two'], async (purpose) => {
      taken.push(purpose);
    });
    await vi.waitFor(() => expect([...new Set(taken)].sort()).toEqual(['one', 'two']), 10_000);
  });

  it('ends in time though what it does never ends', async () => {
    queue.consume(() => {
      taken.push('');
      return new Promise(() => undefined);
    });
    await queue.add('mail', jobs(2));
    await tookAll(2);
    const startedAt = performance.now();
    await queue.close();
    expect(performance.now() - startedAt).toBeLessThan(closeLimitMilliseconds + 1_000);
    expect(await queue.room('mail')).toBe(0);
  });

  // What follows has no meaning without Redis.
  if (!onRedis) return;

  it('knows how many processes take from it', async () => {
    expect((await queue.state()).workers).toBe(0);
    const program = await NestFactory.createApplicationContext(Nothing, { logger: false });
    const other = await openRedisQueue(redis?.url ?? '', perSecond, program.get(LazyModuleLoader));
    other.consume(take);
    await until('the other is seen', async () => ((await queue.state()).workers === 1 ? true : undefined));
    await other.close();
    await until('it is seen no more', async () => ((await queue.state()).workers === 0 ? true : undefined));
    await program.close();
  });

  it('fires what a clock that was wrong had put far ahead', async () => {
    const wrong = new Queue(scheduleQueue, { connection: { url: redis?.url ?? '' }, prefix: redisPrefix });
    const startDate = Date.now() + 86_400_000;
    await wrong.upsertJobScheduler('one', { every: repeatMilliseconds, startDate }, { name: 'one' });
    expect((await wrong.getJobScheduler('one'))?.next).toBeGreaterThan(Date.now() + 3_600_000);
    await wrong.close();
    queue.repeat(['one'], async (purpose) => {
      taken.push(purpose);
    });
    await tookAll(1);
  });

  it('says that it is away, takes nothing and ends in time when Redis is not there', async () => {
    queue.consume(take);
    await redis?.kill();
    await until('it is known to be away', async () => (await queue.state()).awaySince ?? undefined);
    const startedAt = performance.now();
    await queue.add('log', jobs(5));
    expect(await queue.room('log')).toBe(0);
    await queue.close();
    expect(performance.now() - startedAt).toBeLessThan(closeLimitMilliseconds);
    await redis?.restart();
  });
});
