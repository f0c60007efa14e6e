import type { MigrationInterface, QueryRunner } from 'typeorm';
import { run } from './support/dialect.js';

/**
 * The index by which a lot's uses are found holds all that counting and ordering them needs, so that a trace touches
 * only the rows it shows.
 */
export class UsesOfALot1795600000006 implements MigrationInterface {
  async up(runner: QueryRunner): Promise<void> {
    await run(runner, [
      'DROP INDEX session_use_by_lot',
      `CREATE INDEX session_use_by_lot
         ON session_use (studio_id, lot_id, occurred_at, id, session_id, client_id)`,
    ]);
  }

  async down(): Promise<void> {
    throw new Error('The record is never taken back; restore a backup instead.');
  }
}
