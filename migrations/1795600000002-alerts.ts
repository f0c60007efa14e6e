import type { MigrationInterface, QueryRunner } from 'typeorm';
import { isInstant, neverDeleted, oneOf, run } from './support/dialect.js';

/** Open conditions and the outbox of their deliveries. */
export class Alerts1795600000002 implements MigrationInterface {
  async up(runner: QueryRunner): Promise<void> {
    await run(runner, [
      `CREATE TABLE alert (
        studio_id TEXT NOT NULL REFERENCES studio (id),
        id TEXT NOT NULL,
        kind TEXT NOT NULL,
        subject_kind TEXT NOT NULL,
        subject_id TEXT NOT NULL,
        severity TEXT NOT NULL ${oneOf('severity', ['notice', 'warning', 'urgent'])},
        facts TEXT NOT NULL,
        opened_at TEXT NOT NULL ${isInstant('opened_at')},
        acknowledged_at TEXT ${isInstant('acknowledged_at')},
        acknowledged_by TEXT,
        closed_at TEXT ${isInstant('closed_at')},
        PRIMARY KEY (studio_id, id),
        FOREIGN KEY (studio_id, acknowledged_by) REFERENCES person (studio_id, id))`,
      `CREATE UNIQUE INDEX alert_open_once ON alert (studio_id, kind, subject_kind, subject_id) WHERE closed_at IS NULL`,
      'CREATE INDEX alert_by_time ON alert (studio_id, opened_at)',
      `CREATE TABLE outbox (
        studio_id TEXT NOT NULL,
        id TEXT NOT NULL,
        alert_id TEXT NOT NULL,
        event TEXT NOT NULL ${oneOf('event', ['opened', 'closed'])},
        channel TEXT NOT NULL,
        state TEXT NOT NULL ${oneOf('state', ['pending', 'sent', 'undeliverable'])},
        attempts INTEGER NOT NULL CHECK (attempts >= 0),
        next_attempt_at TEXT NOT NULL ${isInstant('next_attempt_at')},
        last_error TEXT,
        created_at TEXT NOT NULL ${isInstant('created_at')},
        settled_at TEXT ${isInstant('settled_at')},
        PRIMARY KEY (studio_id, id),
        FOREIGN KEY (studio_id, alert_id) REFERENCES alert (studio_id, id),
        CHECK ((state = 'pending') = (settled_at IS NULL)))`,
      `CREATE INDEX outbox_pending ON outbox (next_attempt_at) WHERE state = 'pending'`,
      'CREATE INDEX outbox_by_alert ON outbox (studio_id, alert_id)',
    ]);
    await neverDeleted(runner, ['alert', 'outbox']);
  }

  async down(): Promise<void> {
    throw new Error('The record is never taken back; restore a backup instead.');
  }
}
