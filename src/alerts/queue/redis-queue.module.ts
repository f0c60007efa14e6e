import { BullModule } from '@nestjs/bullmq';
import { type DynamicModule, Module } from '@nestjs/common';
import type { Redis } from 'ioredis';

/** What every queue of Lotward is called by in Redis, and its keys begin with. */
export const redisPrefix = 'lotward';

/**
 * The queues on Redis, for putting in. It is loaded only when REDIS_URL is set, so that without it nothing of it is read
 * or made.
 */
@Module({})
export class RedisQueueModule {
  /** @param connection one that fails at once while Redis is away, instead of waiting for it */
  static for(names: readonly string[], connection: Redis): DynamicModule {
    const queues = BullModule.registerQueue(
      ...names.map((name) => ({
        name,
        connection,
        prefix: redisPrefix,
        // What became of a job stands in the outbox row; Redis keeps nothing of it.
        defaultJobOptions: { attempts: 1, removeOnComplete: true, removeOnFail: true },
      })),
    );
    return { module: RedisQueueModule, imports: [queues], exports: [queues] };
  }
}
