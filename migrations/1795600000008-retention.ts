import type { MigrationInterface, QueryRunner } from 'typeorm';
import { appendOnly, isInstant, oneOf, run } from './support/dialect.js';

const recorded = `
        recorded_at TEXT NOT NULL ${isInstant('recorded_at')},
        person_id TEXT,
        via TEXT NOT NULL ${oneOf('via', ['api', 'paper', 'system', 'cli'])},`;
const byPerson = 'FOREIGN KEY (studio_id, person_id) REFERENCES person (studio_id, id)';
const ofClient = 'FOREIGN KEY (studio_id, client_id) REFERENCES client (studio_id, id)';

/** How long a studio keeps records, who looked at which client, legal claims, and what erasure was asked for. */
export class Retention1795600000008 implements MigrationInterface {
  async up(runner: QueryRunner): Promise<void> {
    await run(runner, [
      'ALTER TABLE studio ADD COLUMN retention_preset TEXT',
      'ALTER TABLE studio ADD COLUMN retention_years INTEGER CHECK (retention_years >= 0)',
      'ALTER TABLE studio ADD COLUMN retention_law TEXT',
      `CREATE TABLE client_access (
        studio_id TEXT NOT NULL,
        id TEXT NOT NULL,
        client_id TEXT NOT NULL,
        person_id TEXT,
        what TEXT NOT NULL,
        accessed_at TEXT NOT NULL ${isInstant('accessed_at')},
        PRIMARY KEY (studio_id, id),
        ${ofClient},
        ${byPerson})`,
      'CREATE INDEX client_access_by_client ON client_access (studio_id, client_id, accessed_at, id)',
      `CREATE TABLE legal_claim (
        studio_id TEXT NOT NULL,
        id TEXT NOT NULL,
        client_id TEXT NOT NULL,
        reason_sealed TEXT NOT NULL,${recorded}
        PRIMARY KEY (studio_id, id),
        ${ofClient},
        ${byPerson})`,
      'CREATE INDEX legal_claim_by_client ON legal_claim (studio_id, client_id)',
      `CREATE TABLE legal_claim_end (
        studio_id TEXT NOT NULL,
        claim_id TEXT NOT NULL,
        reason_sealed TEXT NOT NULL,${recorded}
        PRIMARY KEY (studio_id, claim_id),
        FOREIGN KEY (studio_id, claim_id) REFERENCES legal_claim (studio_id, id),
        ${byPerson})`,
      `CREATE TABLE erasure_request (
        studio_id TEXT NOT NULL,
        id TEXT NOT NULL,
        client_id TEXT NOT NULL,
        ground TEXT NOT NULL,
        answer TEXT NOT NULL ${oneOf('answer', ['erased', 'refused'])},
        obstacles TEXT NOT NULL,
        overrides TEXT NOT NULL,
        data_key_id TEXT NOT NULL,${recorded}
        PRIMARY KEY (studio_id, id),
        ${ofClient},
        FOREIGN KEY (studio_id, data_key_id) REFERENCES data_key (studio_id, id),
        ${byPerson})`,
      'CREATE INDEX erasure_request_by_client ON erasure_request (studio_id, client_id, recorded_at, id)',
    ]);
    await appendOnly(runner, ['client_access', 'legal_claim', 'legal_claim_end', 'erasure_request']);
  }

  async down(): Promise<void> {
    throw new Error('The record is never taken back; restore a backup instead.');
  }
}
