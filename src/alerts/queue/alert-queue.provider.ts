import type { Provider } from '@nestjs/common';
import { LazyModuleLoader } from '@nestjs/core';
import { Config } from '../../platform/config.js';
import { ProcessRole } from '../../platform/process-role.js';
import { AlertQueue } from './alert-queue.interface.js';
import { InProcessQueue } from './in-process-queue.service.js';

/** The queue of this process: on Redis when REDIS_URL is set, else inside it. A command from the shell delivers nothing. */
export const alertQueue: Provider = {
  provide: AlertQueue,
  inject: [Config, ProcessRole, LazyModuleLoader],
  useFactory: async (config: Config, role: ProcessRole, loader: LazyModuleLoader): Promise<AlertQueue> => {
    if (config.REDIS_URL === undefined || !(role.serving || role.working)) {
      return new InProcessQueue(config.DELIVERIES_PER_SECOND);
    }
    const { openRedisQueue } = await import('./open-redis-queue.service.js');
    return openRedisQueue(config.REDIS_URL, config.DELIVERIES_PER_SECOND, loader);
  },
};
