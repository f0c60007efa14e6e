import { getQueueToken } from '@nestjs/bullmq';
import type { LazyModuleLoader } from '@nestjs/core';
import type { Queue } from 'bullmq';
import { RedisConnection } from './redis-connection.service.js';
import { RedisQueueModule } from './redis-queue.module.js';
import { type QueueName, queueNames, RedisQueue } from './redis-queue.service.js';

/** The queue on Redis, which need not be there yet. */
export async function openRedisQueue(
  url: string,
  perSecond: number,
  loader: LazyModuleLoader,
): Promise<RedisQueue> {
  const connection = new RedisConnection(url);
  const module = await loader.load(() => RedisQueueModule.for(queueNames, connection.producing), {
    logger: false,
  });
  const queues = Object.fromEntries(
    queueNames.map((name) => [name, module.get<Queue>(getQueueToken(name), { strict: false })]),
  ) as Record<QueueName, Queue>;
  return new RedisQueue(connection, queues, perSecond);
}
