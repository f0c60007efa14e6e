import { Injectable } from '@nestjs/common';
import { Clock } from '../../platform/clock.js';
import { Config } from '../../platform/config.js';
import { Database, type Read } from '../../platform/database/database.js';
import type { FailedBackup } from './backup-conditions.js';
import { BackupShelf } from './backup-shelf.service.js';
import type { BackupStatusView } from './backups.views.js';
import { type BackupTimes, nextBackup } from './next-backup.js';

/** How it stands with the backups of this service: what lies in their folder, and what failed since the start. */
@Injectable()
export class BackupStatus {
  /** Since the start of the service. */
  lastFailure: FailedBackup | null = null;
  readonly startedAt: string;
  readonly shelf: BackupShelf;

  constructor(
    private readonly config: Config,
    private readonly database: Database,
    private readonly clock: Clock,
  ) {
    this.startedAt = clock.now();
    this.shelf = new BackupShelf(config.backupFolder);
  }

  /** @param read of the transaction, where there is one */
  async times(read: Read = this.database.read): Promise<BackupTimes> {
    const [first] = await read<{ at: string | null }>('SELECT min(created_at) AS at FROM studio');
    return {
      lastGoodAt: this.shelf.lastGood(this.clock.now())?.manifest.madeAt ?? null,
      recordBegan: first?.at ?? null,
      everyHours: this.config.BACKUP_EVERY_HOURS,
    };
  }

  async show(): Promise<BackupStatusView> {
    const times = await this.times();
    return {
      lastGoodAt: times.lastGoodAt,
      kept: this.shelf.backups().filter(({ whole }) => whole).length,
      keptAtMost: this.config.BACKUP_KEEP,
      nextDueAt: nextBackup(times, this.clock.now()),
      lastFailure: this.lastFailure,
    };
  }
}
