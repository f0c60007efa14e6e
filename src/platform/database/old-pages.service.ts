import { Injectable, Logger, type OnModuleDestroy } from '@nestjs/common';
import { Transactions } from './transactions.js';

const againAfterMilliseconds = 5_000;

/**
 * Gets rid of what a deleted value leaves behind in SQLite's files. The writer overwrites what it deletes (secure_delete),
 * but only in pages that are written back, and the write-ahead log keeps every older page until it is cut. While another
 * process reads, the log cannot be cut; it is tried again until it can.
 */
@Injectable()
export class OldPages implements OnModuleDestroy {
  private readonly logger = new Logger('database');
  private timer: NodeJS.Timeout | undefined;

  constructor(private readonly transactions: Transactions) {}

  /** @returns false when somebody reads just now; it is then done later by itself */
  async drop(): Promise<boolean> {
    const done = await this.transactions.cutLog();
    if (!done) this.tryAgain();
    return done;
  }

  onModuleDestroy(): void {
    clearTimeout(this.timer);
  }

  private tryAgain(): void {
    clearTimeout(this.timer);
    this.timer = setTimeout(() => {
      this.drop().catch((error: unknown) =>
        this.logger.error(`The write-ahead log cannot be cut: ${String(error)}`),
      );
    }, againAfterMilliseconds);
    this.timer.unref();
  }
}
