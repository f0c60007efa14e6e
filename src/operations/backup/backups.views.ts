export class FailedBackupView {
  at: string;
  /** In a few words, such as `no space is left on the disk`. */
  cause: string;
}

/** The backups of the whole service, of which the studio is a part. */
export class BackupStatusView {
  /** The instant of which the last good backup shows the record; null: there is none. */
  lastGoodAt: string | null;
  /** How many good ones there are. */
  kept: number;
  /** How many of them are kept before the oldest is removed. */
  keptAtMost: number;
  /** When the next one is made; null: none is scheduled. */
  nextDueAt: string | null;
  /** The last one that failed since the service was started. */
  lastFailure: FailedBackupView | null;
}
