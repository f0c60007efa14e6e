import type { MigrationInterface, QueryRunner } from 'typeorm';
import { run } from './support/dialect.js';

/** By what a session that came from a list of bookings is known again when the list is brought again. */
export class Bookings1795600000010 implements MigrationInterface {
  async up(runner: QueryRunner): Promise<void> {
    await run(runner, [
      'ALTER TABLE session ADD COLUMN booking_hash TEXT',
      'CREATE UNIQUE INDEX session_booking_once ON session (studio_id, booking_hash) WHERE booking_hash IS NOT NULL',
    ]);
  }

  async down(): Promise<void> {
    throw new Error('The record is never taken back; restore a backup instead.');
  }
}
