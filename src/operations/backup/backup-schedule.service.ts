import { Injectable, Logger, type OnApplicationBootstrap, type OnModuleDestroy } from '@nestjs/common';
import { Temporal } from 'temporal-polyfill';
import { Clock } from '../../platform/clock.js';
import { Config } from '../../platform/config.js';
import { ProcessRole } from '../../platform/process-role.js';
import { BackupConditions } from './backup-conditions.service.js';
import { BackupStatus } from './backup-status.service.js';
import { BackupThread } from './backup-thread.service.js';
import { nextBackup } from './next-backup.js';

const lookMilliseconds = 30_000;
const retryMilliseconds = 15 * 60_000;

/**
 * Makes a backup as soon as one is due. It is judged by the backups that lie there, so one made from the shell counts,
 * and a machine that was off makes up for it when it is on again. The clock is looked at anew every half minute.
 */
@Injectable()
export class BackupSchedule implements OnApplicationBootstrap, OnModuleDestroy {
  private readonly logger = new Logger('backup');
  private readonly intervalMilliseconds: number;
  private timer: NodeJS.Timeout | undefined;
  private looking: Promise<void> | undefined;
  private thread: BackupThread | undefined;

  constructor(
    private readonly role: ProcessRole,
    config: Config,
    private readonly clock: Clock,
    private readonly status: BackupStatus,
    private readonly conditions: BackupConditions,
  ) {
    this.intervalMilliseconds = config.BACKUP_EVERY_HOURS * 3_600_000;
  }

  onApplicationBootstrap(): void {
    if (!this.role.serving || this.intervalMilliseconds === 0) return;
    this.timer = setInterval(() => this.look(), Math.min(lookMilliseconds, this.intervalMilliseconds / 4));
    this.timer.unref();
    this.look();
  }

  async onModuleDestroy(): Promise<void> {
    clearInterval(this.timer);
    const { thread } = this;
    this.thread = undefined;
    await thread?.breakOff();
    await this.looking;
  }

  private look(): void {
    this.looking ??= this.backUpIfDue()
      .catch((error) => this.logger.error(`Whether a backup is due could not be found out: ${String(error)}`))
      .finally(() => {
        this.looking = undefined;
      });
  }

  private async backUpIfDue(): Promise<void> {
    if (!(await this.isDue())) return;
    const started = performance.now();
    const thread = new BackupThread('scheduled');
    this.thread = thread;
    const answer = await thread.answer;
    // Broken off since the service is being stopped: that is no failure.
    if (this.thread !== thread) return;
    this.thread = undefined;
    if ('made' in answer) {
      const seconds = ((performance.now() - started) / 1_000).toFixed(1);
      this.logger.log(`A backup was made in ${seconds} s: ${answer.made.folder}`);
      for (const fault of answer.made.removed.faults) this.logger.warn(`An older backup stays: ${fault}`);
      this.status.lastFailure = null;
    } else {
      this.logger.error(answer.failure.message);
      this.status.lastFailure = { at: this.clock.now(), cause: answer.failure.words };
    }
    await this.conditions.judge();
  }

  private async isDue(): Promise<boolean> {
    const times = await this.status.times();
    const now = this.clock.now();
    const due = nextBackup(times, now);
    if (due === null || Temporal.Instant.compare(now, due) < 0) return false;
    const { lastFailure } = this.status;
    if (lastFailure === null) return true;
    const waits = Math.min(retryMilliseconds, this.intervalMilliseconds);
    // A clock that was put back since tells nothing of how long ago it failed.
    return Math.abs(Date.parse(now) - Date.parse(lastFailure.at)) >= waits;
  }
}
