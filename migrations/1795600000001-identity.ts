import type { MigrationInterface, QueryRunner } from 'typeorm';
import { appendOnly, isInstant, neverDeleted, oneOf, run } from './support/dialect.js';

/** Studios, people, their keys, the audit chain and the register of accepted requests. */
export class Identity1795600000001 implements MigrationInterface {
  async up(runner: QueryRunner): Promise<void> {
    await run(runner, [
      `CREATE TABLE chain (
        id TEXT NOT NULL PRIMARY KEY,
        name TEXT NOT NULL,
        created_at TEXT NOT NULL ${isInstant('created_at')})`,
      `CREATE TABLE studio (
        id TEXT NOT NULL PRIMARY KEY,
        chain_id TEXT NOT NULL REFERENCES chain (id),
        name TEXT NOT NULL,
        time_zone TEXT NOT NULL,
        currency TEXT NOT NULL CHECK (length(currency) = 3),
        morning TEXT NOT NULL CHECK (length(morning) = 5),
        use_by_near_days INTEGER NOT NULL CHECK (use_by_near_days >= 0),
        opened_life_ending_days INTEGER NOT NULL CHECK (opened_life_ending_days >= 0),
        assumed_opened_life TEXT,
        house_blends TEXT NOT NULL ${oneOf('house_blends', ['off', 'allowed'])},
        version INTEGER NOT NULL,
        created_at TEXT NOT NULL ${isInstant('created_at')},
        UNIQUE (id, chain_id))`,
      `CREATE TABLE studio_key (
        studio_id TEXT NOT NULL PRIMARY KEY REFERENCES studio (id),
        master_key_id TEXT NOT NULL,
        wrapped_key TEXT NOT NULL)`,
      `CREATE TABLE data_key (
        studio_id TEXT NOT NULL REFERENCES studio (id),
        id TEXT NOT NULL,
        master_key_id TEXT NOT NULL,
        wrapped_key TEXT,
        created_at TEXT NOT NULL ${isInstant('created_at')},
        destroyed_at TEXT ${isInstant('destroyed_at')},
        PRIMARY KEY (studio_id, id),
        CHECK ((wrapped_key IS NULL) = (destroyed_at IS NOT NULL)))`,
      `CREATE TABLE person (
        studio_id TEXT NOT NULL REFERENCES studio (id),
        id TEXT NOT NULL,
        data_key_id TEXT NOT NULL,
        name_sealed TEXT NOT NULL,
        role TEXT NOT NULL ${oneOf('role', ['owner', 'manager', 'artist'])},
        state TEXT NOT NULL ${oneOf('state', ['active', 'left'])},
        version INTEGER NOT NULL,
        created_at TEXT NOT NULL ${isInstant('created_at')},
        PRIMARY KEY (studio_id, id),
        FOREIGN KEY (studio_id, data_key_id) REFERENCES data_key (studio_id, id))`,
      `CREATE TABLE accepted_request (
        studio_id TEXT NOT NULL REFERENCES studio (id),
        id TEXT NOT NULL,
        action TEXT NOT NULL,
        digest TEXT NOT NULL,
        person_id TEXT,
        accepted_at TEXT NOT NULL ${isInstant('accepted_at')},
        answer TEXT,
        PRIMARY KEY (studio_id, id))`,
      `CREATE TABLE audit_head (
        studio_id TEXT NOT NULL PRIMARY KEY REFERENCES studio (id),
        sequence INTEGER NOT NULL,
        hash TEXT NOT NULL CHECK (length(hash) = 64))`,
      `CREATE TABLE audit_entry (
        studio_id TEXT NOT NULL REFERENCES studio (id),
        sequence INTEGER NOT NULL CHECK (sequence > 0),
        recorded_at TEXT NOT NULL ${isInstant('recorded_at')},
        person_id TEXT,
        via TEXT NOT NULL ${oneOf('via', ['api', 'paper', 'system', 'cli'])},
        action TEXT NOT NULL,
        subject_kind TEXT NOT NULL,
        subject_id TEXT NOT NULL,
        payload TEXT NOT NULL,
        previous_hash TEXT NOT NULL CHECK (length(previous_hash) = 64),
        hash TEXT NOT NULL CHECK (length(hash) = 64),
        PRIMARY KEY (studio_id, sequence),
        FOREIGN KEY (studio_id, person_id) REFERENCES person (studio_id, id))`,
      'CREATE INDEX audit_entry_subject ON audit_entry (studio_id, subject_kind, subject_id, sequence)',
    ]);
    await appendOnly(runner, ['audit_entry']);
    await neverDeleted(runner, [
      'chain',
      'studio',
      'studio_key',
      'person',
      'data_key',
      'accepted_request',
      'audit_head',
    ]);
  }

  async down(): Promise<void> {
    throw new Error('The record is never taken back; restore a backup instead.');
  }
}
