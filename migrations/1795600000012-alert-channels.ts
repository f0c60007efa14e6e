import type { MigrationInterface, QueryRunner } from 'typeorm';
import { appendOnly, isDate, isInstant, isPostgres, neverDeleted, oneOf, run } from './support/dialect.js';

const ofStudio = 'studio_id TEXT NOT NULL REFERENCES studio (id)';
const ofPerson = 'FOREIGN KEY (studio_id, person_id) REFERENCES person (studio_id, id)';
const ofAlert = 'FOREIGN KEY (studio_id, alert_id) REFERENCES alert (studio_id, id)';
const ofDataKey = 'FOREIGN KEY (studio_id, data_key_id) REFERENCES data_key (studio_id, id)';
const isLocalTime = (column: string) =>
  `CHECK (${column} IS NULL OR (length(${column}) = 5 AND ${column} LIKE '__:__'))`;

const outboxEvents = ['opened', 'worse', 'due again', 'handed on', 'given', 'closed', 'summary', 'test'];
const outboxColumns =
  'studio_id, id, alert_id, event, channel, state, attempts, next_attempt_at, last_error, created_at, settled_at';

/**
 * What a person does with an alert, and its history; where alerts go and who wants which; summaries of a morning;
 * calendars; deliveries that are expected; thresholds of a product.
 */
export class AlertChannels1795600000012 implements MigrationInterface {
  async up(runner: QueryRunner): Promise<void> {
    await run(runner, [
      `ALTER TABLE alert ADD COLUMN put_off_until TEXT ${isInstant('put_off_until')}`,
      'ALTER TABLE alert ADD COLUMN given_to TEXT',
      'ALTER TABLE alert ADD COLUMN closed_by TEXT',
      `ALTER TABLE alert ADD COLUMN ended_at TEXT ${isInstant('ended_at')}`,
      'ALTER TABLE alert ADD COLUMN turn INTEGER',
      `ALTER TABLE alert ADD COLUMN turn_at TEXT ${isInstant('turn_at')}`,
      // What somebody closed while it stood is known again until it has ended.
      `CREATE INDEX alert_closed_standing ON alert (studio_id, kind) WHERE closed_by IS NOT NULL AND ended_at IS NULL`,
      `CREATE TABLE alert_entry (
        studio_id TEXT NOT NULL,
        id TEXT NOT NULL,
        sequence INTEGER NOT NULL,
        alert_id TEXT NOT NULL,
        event TEXT NOT NULL ${oneOf('event', ['opened', 'worse', 'milder', 'acknowledged', 'put off', 'due again', 'given', 'handed on', 'noted', 'closed', 'ended'])},
        severity TEXT NOT NULL ${oneOf('severity', ['notice', 'warning', 'urgent'])},
        person_id TEXT,
        to_person_id TEXT,
        until TEXT ${isInstant('until')},
        data_key_id TEXT,
        note_sealed TEXT,
        recorded_at TEXT NOT NULL ${isInstant('recorded_at')},
        PRIMARY KEY (studio_id, id),
        UNIQUE (studio_id, sequence),
        ${ofAlert},
        ${ofPerson},
        ${ofDataKey},
        FOREIGN KEY (studio_id, to_person_id) REFERENCES person (studio_id, id),
        CHECK ((note_sealed IS NULL) = (data_key_id IS NULL)))`,
      'CREATE INDEX alert_entry_by_alert ON alert_entry (studio_id, alert_id, sequence)',
      `CREATE TABLE alert_destination (
        ${ofStudio},
        id TEXT NOT NULL,
        kind TEXT NOT NULL ${oneOf('kind', ['mail', 'webhook', 'push'])},
        person_id TEXT,
        data_key_id TEXT NOT NULL,
        settings_sealed TEXT,
        minimum_severity TEXT NOT NULL ${oneOf('minimum_severity', ['notice', 'warning', 'urgent'])},
        state TEXT NOT NULL ${oneOf('state', ['active', 'paused', 'stopped', 'removed'])},
        state_reason TEXT,
        version INTEGER NOT NULL,
        created_at TEXT NOT NULL ${isInstant('created_at')},
        PRIMARY KEY (studio_id, id),
        ${ofPerson},
        ${ofDataKey},
        CHECK ((kind = 'webhook') = (person_id IS NULL)),
        CHECK ((state = 'removed') = (settings_sealed IS NULL)))`,
      'CREATE INDEX alert_destination_of_person ON alert_destination (studio_id, person_id)',
      `CREATE TABLE alert_preference (
        studio_id TEXT NOT NULL,
        person_id TEXT NOT NULL,
        told_from TEXT NOT NULL ${oneOf('told_from', ['notice', 'warning', 'urgent', 'never'])},
        urgent_turn TEXT NOT NULL ${oneOf('urgent_turn', ['at once', 'in turn'])},
        summary TEXT NOT NULL ${oneOf('summary', ['daily', 'never'])},
        summary_at TEXT ${isLocalTime('summary_at')},
        quiet_from TEXT ${isLocalTime('quiet_from')},
        quiet_until TEXT ${isLocalTime('quiet_until')},
        kinds_left_out TEXT NOT NULL,
        version INTEGER NOT NULL,
        updated_at TEXT NOT NULL ${isInstant('updated_at')},
        PRIMARY KEY (studio_id, person_id),
        ${ofPerson},
        CHECK ((quiet_from IS NULL) = (quiet_until IS NULL)))`,
      `CREATE TABLE handing_on (
        ${ofStudio},
        after_minutes INTEGER,
        person_ids TEXT NOT NULL,
        version INTEGER NOT NULL,
        updated_at TEXT NOT NULL ${isInstant('updated_at')},
        PRIMARY KEY (studio_id))`,
      `CREATE TABLE morning_summary (
        studio_id TEXT NOT NULL,
        id TEXT NOT NULL,
        person_id TEXT NOT NULL,
        day TEXT NOT NULL ${isDate('day')},
        content TEXT NOT NULL,
        created_at TEXT NOT NULL ${isInstant('created_at')},
        PRIMARY KEY (studio_id, id),
        UNIQUE (studio_id, person_id, day),
        ${ofPerson})`,
      `CREATE TABLE calendar_address (
        studio_id TEXT NOT NULL,
        id TEXT NOT NULL,
        person_id TEXT NOT NULL,
        token_hash TEXT NOT NULL UNIQUE,
        created_at TEXT NOT NULL ${isInstant('created_at')},
        removed_at TEXT ${isInstant('removed_at')},
        PRIMARY KEY (studio_id, id),
        ${ofPerson})`,
      `CREATE UNIQUE INDEX calendar_address_of_person ON calendar_address (studio_id, person_id) WHERE removed_at IS NULL`,
      `CREATE TABLE schedule_state (
        ${ofStudio},
        purpose TEXT NOT NULL,
        done_at TEXT NOT NULL ${isInstant('done_at')},
        PRIMARY KEY (studio_id, purpose))`,
      `CREATE TABLE expected_delivery (
        studio_id TEXT NOT NULL,
        id TEXT NOT NULL,
        chain_id TEXT NOT NULL,
        supplier_id TEXT NOT NULL,
        reference TEXT,
        ordered_on TEXT ${isDate('ordered_on')},
        expected_on TEXT NOT NULL ${isDate('expected_on')},
        ended_at TEXT ${isInstant('ended_at')},
        ended_as TEXT ${oneOf('ended_as', ['received', 'called off'])},
        delivery_id TEXT,
        version INTEGER NOT NULL,
        created_at TEXT NOT NULL ${isInstant('created_at')},
        PRIMARY KEY (studio_id, id),
        FOREIGN KEY (studio_id, chain_id) REFERENCES studio (id, chain_id),
        FOREIGN KEY (chain_id, supplier_id) REFERENCES supplier (chain_id, id),
        FOREIGN KEY (studio_id, delivery_id) REFERENCES delivery (studio_id, id),
        CHECK ((ended_as IS NULL) = (ended_at IS NULL)))`,
      'CREATE INDEX expected_delivery_open ON expected_delivery (studio_id, expected_on) WHERE ended_at IS NULL',
      // What is owed a touch-up is looked for among the visits of the last weeks.
      `CREATE INDEX session_completed ON session (studio_id, completed_at) WHERE state = 'completed'`,
      `CREATE TABLE date_threshold (
        studio_id TEXT NOT NULL,
        product_id TEXT NOT NULL,
        chain_id TEXT NOT NULL,
        use_by_near_days INTEGER,
        opened_life_ending_days INTEGER,
        version INTEGER NOT NULL,
        updated_at TEXT NOT NULL ${isInstant('updated_at')},
        PRIMARY KEY (studio_id, product_id),
        FOREIGN KEY (studio_id, chain_id) REFERENCES studio (id, chain_id),
        FOREIGN KEY (chain_id, product_id) REFERENCES product (chain_id, id))`,
    ]);
    await widenOutbox(runner);
    await appendOnly(runner, ['alert_entry', 'morning_summary']);
    await neverDeleted(runner, ['outbox', 'alert_destination', 'calendar_address', 'expected_delivery']);
  }

  async down(): Promise<void> {
    throw new Error('The record is never taken back; restore a backup instead.');
  }
}

/**
 * An outbox row may now promise a summary or a test, goes to one destination, and counts the attempts that were begun
 * beside those whose end is known. SQLite cannot loosen a column, so there the table is made anew with the same rows.
 */
async function widenOutbox(runner: QueryRunner): Promise<void> {
  const references = [
    ofAlert,
    'FOREIGN KEY (studio_id, destination_id) REFERENCES alert_destination (studio_id, id)',
    'FOREIGN KEY (studio_id, summary_id) REFERENCES morning_summary (studio_id, id)',
  ];
  const added = [
    'destination_id TEXT',
    'summary_id TEXT',
    'begun INTEGER',
    `not_before TEXT ${isInstant('not_before')}`,
  ];
  if (isPostgres(runner)) {
    await run(runner, [
      'ALTER TABLE outbox ALTER COLUMN alert_id DROP NOT NULL',
      'ALTER TABLE outbox DROP CONSTRAINT outbox_event_check',
      `ALTER TABLE outbox ADD CONSTRAINT outbox_event_check ${oneOf('event', outboxEvents)}`,
      ...added.map((column) => `ALTER TABLE outbox ADD COLUMN ${column}`),
      ...references.slice(1).map((reference) => `ALTER TABLE outbox ADD ${reference}`),
      'DROP INDEX outbox_pending',
      'DROP TRIGGER outbox_refuses_delete ON outbox',
      'DROP TRIGGER outbox_refuses_truncate ON outbox',
    ]);
  } else {
    await run(runner, [
      'DROP TRIGGER outbox_refuses_delete',
      'ALTER TABLE outbox RENAME TO outbox_before',
      `CREATE TABLE outbox (
        studio_id TEXT NOT NULL REFERENCES studio (id),
        id TEXT NOT NULL,
        alert_id TEXT,
        event TEXT NOT NULL ${oneOf('event', outboxEvents)},
        channel TEXT NOT NULL,
        state TEXT NOT NULL ${oneOf('state', ['pending', 'sent', 'undeliverable'])},
        attempts INTEGER NOT NULL CHECK (attempts >= 0),
        next_attempt_at TEXT NOT NULL ${isInstant('next_attempt_at')},
        last_error TEXT,
        created_at TEXT NOT NULL ${isInstant('created_at')},
        settled_at TEXT ${isInstant('settled_at')},
        ${added.join(',\n        ')},
        PRIMARY KEY (studio_id, id),
        ${references.join(',\n        ')},
        CHECK ((state = 'pending') = (settled_at IS NULL)))`,
      `INSERT INTO outbox (${outboxColumns}) SELECT ${outboxColumns} FROM outbox_before`,
      'DROP TABLE outbox_before',
      'CREATE INDEX outbox_by_alert ON outbox (studio_id, alert_id)',
    ]);
  }
  await run(runner, [
    `CREATE INDEX outbox_pending ON outbox (channel, studio_id, next_attempt_at, id) WHERE state = 'pending'`,
    `CREATE INDEX outbox_unsettled ON outbox (studio_id, alert_id, destination_id) WHERE state = 'pending'`,
    `CREATE INDEX outbox_by_destination ON outbox (studio_id, destination_id, created_at)`,
    'CREATE INDEX outbox_by_summary ON outbox (studio_id, summary_id) WHERE summary_id IS NOT NULL',
    `CREATE INDEX outbox_undeliverable ON outbox (studio_id, settled_at) WHERE state = 'undeliverable'`,
  ]);
}
