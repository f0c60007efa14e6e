import { Injectable, Logger } from '@nestjs/common';
import { Database } from '../../platform/database/database.js';
import { ProcessRole } from '../../platform/process-role.js';

/** A database that takes longer does not answer. */
const longestAnswerMilliseconds = 3_000;

/** Whether the service can work at this moment. */
@Injectable()
export class Readiness {
  private readonly logger = new Logger('readiness');

  constructor(
    private readonly database: Database,
    private readonly role: ProcessRole,
  ) {}

  async isReady(): Promise<boolean> {
    if (this.role.ending) return false;
    let timer: NodeJS.Timeout | undefined;
    const tooLate = new Promise<never>((_, reject) => {
      const late = new Error(`The database did not answer within ${longestAnswerMilliseconds} ms.`);
      timer = setTimeout(() => reject(late), longestAnswerMilliseconds);
    });
    try {
      return await Promise.race([this.hasItsSchema(), tooLate]);
    } catch (error) {
      this.logger.error(`Not ready: ${error instanceof Error ? error.message : String(error)}`);
      return false;
    } finally {
      clearTimeout(timer);
    }
  }

  /** Beside a newer version, which brought the schema further, this one is of no use any more. */
  private async hasItsSchema(): Promise<boolean> {
    const [last] = await this.database.read<{ name: string }>(
      'SELECT name FROM migrations ORDER BY timestamp DESC, id DESC LIMIT 1',
    );
    const expected = this.database.writer.migrations.at(-1);
    return last !== undefined && last.name === (expected?.name ?? expected?.constructor.name);
  }
}
