import type { MigrationInterface, QueryRunner } from 'typeorm';
import { isDate, isInstant, neverDeleted, oneOf, replaceCheck, run } from './support/dialect.js';

const rolesBefore = ['owner', 'manager', 'artist'];

/**
 * Accounts and what they sign in with; a person of a studio belongs to an account once somebody signs in as them.
 * It opens its own transactions, for SQLite can change a CHECK only while foreign keys are off.
 */
export class SignIn1795600000006 implements MigrationInterface {
  transaction = false;

  async up(runner: QueryRunner): Promise<void> {
    await replaceCheck(
      runner,
      'person',
      oneOf('role', rolesBefore),
      oneOf('role', [...rolesBefore, 'auditor', 'chain manager']),
    );
    // It was killed after the commit below and before it was noted as applied.
    if (await runner.hasTable('service_key')) return;
    await runner.startTransaction();
    await run(runner, [
      `CREATE TABLE service_key (
        id TEXT NOT NULL PRIMARY KEY CHECK (id = 'service'),
        master_key_id TEXT NOT NULL,
        wrapped_key TEXT NOT NULL)`,
      `CREATE TABLE account (
        studio_id TEXT NOT NULL REFERENCES studio (id),
        id TEXT NOT NULL UNIQUE,
        data_key_id TEXT NOT NULL,
        sign_in_name_sealed TEXT NOT NULL,
        sign_in_name_hash TEXT NOT NULL UNIQUE,
        password_hash TEXT,
        version INTEGER NOT NULL,
        created_at TEXT NOT NULL ${isInstant('created_at')},
        PRIMARY KEY (studio_id, id),
        FOREIGN KEY (studio_id, data_key_id) REFERENCES data_key (studio_id, id))`,
      'ALTER TABLE person ADD COLUMN account_id TEXT REFERENCES account (id)',
      `ALTER TABLE person ADD COLUMN until TEXT ${isDate('until')}`,
      'CREATE UNIQUE INDEX person_account_once ON person (studio_id, account_id) WHERE account_id IS NOT NULL',
      'CREATE INDEX person_by_account ON person (account_id) WHERE account_id IS NOT NULL',
      `CREATE TABLE one_time_link (
        studio_id TEXT NOT NULL,
        id TEXT NOT NULL,
        person_id TEXT NOT NULL,
        purpose TEXT NOT NULL ${oneOf('purpose', ['set-up', 'invitation'])},
        secret_hash TEXT NOT NULL UNIQUE,
        created_at TEXT NOT NULL ${isInstant('created_at')},
        expires_at TEXT NOT NULL ${isInstant('expires_at')},
        ended_at TEXT ${isInstant('ended_at')},
        PRIMARY KEY (studio_id, id),
        FOREIGN KEY (studio_id, person_id) REFERENCES person (studio_id, id))`,
      `CREATE TABLE api_token (
        studio_id TEXT NOT NULL,
        id TEXT NOT NULL,
        person_id TEXT NOT NULL,
        name TEXT NOT NULL,
        scopes TEXT NOT NULL,
        secret_hash TEXT NOT NULL UNIQUE,
        created_at TEXT NOT NULL ${isInstant('created_at')},
        expires_at TEXT NOT NULL ${isInstant('expires_at')},
        revoked_at TEXT ${isInstant('revoked_at')},
        PRIMARY KEY (studio_id, id),
        FOREIGN KEY (studio_id, person_id) REFERENCES person (studio_id, id))`,
      // What follows is no record but the state of signing in: it is cleared when it is old.
      `CREATE TABLE sign_in (
        id TEXT NOT NULL PRIMARY KEY,
        account_id TEXT NOT NULL REFERENCES account (id),
        method TEXT NOT NULL,
        secret_hash TEXT NOT NULL UNIQUE,
        secret_made_at TEXT NOT NULL ${isInstant('secret_made_at')},
        previous_secret_hash TEXT,
        previous_ends_at TEXT ${isInstant('previous_ends_at')},
        device TEXT NOT NULL,
        tablet_id TEXT,
        tablet_studio_id TEXT,
        created_at TEXT NOT NULL ${isInstant('created_at')},
        last_seen_at TEXT NOT NULL ${isInstant('last_seen_at')},
        expires_at TEXT NOT NULL ${isInstant('expires_at')},
        ended_at TEXT ${isInstant('ended_at')})`,
      'CREATE UNIQUE INDEX sign_in_by_previous ON sign_in (previous_secret_hash) WHERE previous_secret_hash IS NOT NULL',
      'CREATE INDEX sign_in_by_account ON sign_in (account_id, ended_at)',
      `CREATE TABLE failed_sign_in (
        subject TEXT NOT NULL PRIMARY KEY,
        failures INTEGER NOT NULL,
        last_failed_at TEXT NOT NULL ${isInstant('last_failed_at')})`,
      `CREATE TABLE credential_use (
        id TEXT NOT NULL PRIMARY KEY,
        last_used_at TEXT NOT NULL ${isInstant('last_used_at')},
        counter INTEGER NOT NULL)`,
    ]);
    await neverDeleted(runner, ['service_key', 'account', 'one_time_link', 'api_token']);
    await runner.commitTransaction();
  }

  async down(): Promise<void> {
    throw new Error('The record is never taken back; restore a backup instead.');
  }
}
