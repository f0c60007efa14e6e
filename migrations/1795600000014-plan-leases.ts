import type { MigrationInterface, QueryRunner } from 'typeorm';
import { isInstant, run } from './support/dialect.js';

/** Who makes a plan just now, and whether a person named the day on which goods are expected. */
export class PlanLeases1795600000014 implements MigrationInterface {
  async up(runner: QueryRunner): Promise<void> {
    await run(runner, [
      `CREATE TABLE plan_lease (
        studio_id TEXT NOT NULL,
        plan_id TEXT NOT NULL,
        held_until TEXT NOT NULL ${isInstant('held_until')},
        PRIMARY KEY (studio_id, plan_id),
        FOREIGN KEY (studio_id, plan_id) REFERENCES plan (studio_id, id))`,
      // Null: of a time when nobody noted it.
      'ALTER TABLE expected_delivery ADD COLUMN day_said INTEGER CHECK (day_said IN (0, 1))',
    ]);
  }

  async down(): Promise<void> {
    throw new Error('The record is never taken back; restore a backup instead.');
  }
}
