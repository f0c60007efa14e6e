import type { MigrationInterface, QueryRunner } from 'typeorm';
import { isInstant, isPostgres, neverDeleted, oneOf, run } from './support/dialect.js';

/** Passkeys; treatment-room tablets, and the badges and PINs that work on them. */
export class Passkeys1795600000009 implements MigrationInterface {
  async up(runner: QueryRunner): Promise<void> {
    await run(runner, [
      'ALTER TABLE studio ADD COLUMN passkeys_required INTEGER CHECK (passkeys_required = 1)',
      `CREATE TABLE passkey (
        studio_id TEXT NOT NULL,
        id TEXT NOT NULL,
        account_id TEXT NOT NULL,
        credential_id TEXT NOT NULL UNIQUE,
        public_key TEXT NOT NULL,
        relying_party TEXT NOT NULL,
        transports TEXT NOT NULL,
        name_sealed TEXT NOT NULL,
        version INTEGER NOT NULL,
        created_at TEXT NOT NULL ${isInstant('created_at')},
        suspected_at TEXT ${isInstant('suspected_at')},
        removed_at TEXT ${isInstant('removed_at')},
        PRIMARY KEY (studio_id, id),
        FOREIGN KEY (studio_id, account_id) REFERENCES account (studio_id, id))`,
      'CREATE INDEX passkey_by_account ON passkey (account_id)',
      `CREATE TABLE tablet (
        studio_id TEXT NOT NULL REFERENCES studio (id),
        id TEXT NOT NULL,
        name TEXT NOT NULL,
        secret_hash TEXT NOT NULL UNIQUE,
        version INTEGER NOT NULL,
        created_at TEXT NOT NULL ${isInstant('created_at')},
        revoked_at TEXT ${isInstant('revoked_at')},
        PRIMARY KEY (studio_id, id))`,
      `CREATE TABLE tablet_credential (
        studio_id TEXT NOT NULL,
        id TEXT NOT NULL,
        person_id TEXT NOT NULL,
        kind TEXT NOT NULL ${oneOf('kind', ['badge', 'PIN'])},
        secret_hash TEXT NOT NULL UNIQUE,
        created_at TEXT NOT NULL ${isInstant('created_at')},
        ended_at TEXT ${isInstant('ended_at')},
        PRIMARY KEY (studio_id, id),
        FOREIGN KEY (studio_id, person_id) REFERENCES person (studio_id, id))`,
      `CREATE UNIQUE INDEX tablet_credential_once ON tablet_credential (studio_id, person_id, kind)
       WHERE ended_at IS NULL`,
      // No record but the state of signing in: one question a browser is being asked. It is cleared when it is old.
      `CREATE TABLE passkey_challenge (
        browser_hash TEXT NOT NULL,
        purpose TEXT NOT NULL ${oneOf('purpose', ['registration', 'sign-in'])},
        challenge TEXT NOT NULL,
        relying_party TEXT NOT NULL,
        origin TEXT NOT NULL,
        sign_in_id TEXT,
        expires_at TEXT NOT NULL ${isInstant('expires_at')},
        PRIMARY KEY (browser_hash, purpose))`,
    ]);
    // An authenticator counts to 2^32; SQLite's integers have 64 bits already.
    if (isPostgres(runner)) {
      await runner.query('ALTER TABLE credential_use ALTER COLUMN counter TYPE BIGINT');
    }
    await neverDeleted(runner, ['passkey', 'tablet', 'tablet_credential']);
  }

  async down(): Promise<void> {
    throw new Error('The record is never taken back; restore a backup instead.');
  }
}
