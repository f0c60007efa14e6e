import { Injectable, Logger, type OnApplicationBootstrap, type OnModuleDestroy } from '@nestjs/common';
import { Clock } from '../../platform/clock.js';
import { Database } from '../../platform/database/database.js';
import { ProcessRole } from '../../platform/process-role.js';
import { InProcessQueue } from '../queue/in-process-queue.service.js';
import { Deliver } from './deliver.service.js';

const pollMilliseconds = 1_000;
const maximumRowsPerPoll = 200;

/**
 * Brings due outbox rows to the queue. It looks at the rows themselves, again and again, so whatever was committed is
 * found: after a commit, after a failure whose wait is over, and after a restart. What closes an alert waits until its
 * opening is settled, so that nobody hears of them the wrong way round.
 */
@Injectable()
export class Relay implements OnApplicationBootstrap, OnModuleDestroy {
  private readonly logger = new Logger('alert relay');
  private timer: NodeJS.Timeout | undefined;
  private looking: Promise<void> | undefined;
  private failing = false;

  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly queue: InProcessQueue,
    private readonly deliver: Deliver,
    private readonly role: ProcessRole,
  ) {}

  onApplicationBootstrap(): void {
    if (!this.role.serving) return;
    this.queue.handle((job) => this.deliver.deliver(job));
    this.timer = setInterval(() => this.poll(), pollMilliseconds);
    this.timer.unref();
  }

  async onModuleDestroy(): Promise<void> {
    clearInterval(this.timer);
    await this.looking;
    await this.queue.close();
  }

  private poll(): void {
    this.looking ??= this.look().finally(() => {
      this.looking = undefined;
    });
  }

  private async look(): Promise<void> {
    try {
      const due = await this.database.read<{ studio_id: string; id: string }>(
        `SELECT studio_id, id FROM outbox
         WHERE state = 'pending' AND next_attempt_at <= $1 AND (event = 'opened' OR NOT EXISTS (
           SELECT 1 FROM outbox AS earlier
           WHERE earlier.studio_id = outbox.studio_id AND earlier.alert_id = outbox.alert_id
             AND earlier.channel = outbox.channel AND earlier.event = 'opened' AND earlier.state = 'pending'))
         ORDER BY next_attempt_at, id LIMIT ${maximumRowsPerPoll}`,
        [this.clock.now()],
      );
      for (const row of due) {
        if (!this.queue.add({ studioId: row.studio_id, deliveryId: row.id })) break;
      }
      this.failing = false;
    } catch (error) {
      if (!this.failing) this.logger.error(`The outbox cannot be read, trying on: ${String(error)}`);
      this.failing = true;
    }
  }
}
