import type { MigrationInterface, QueryRunner } from 'typeorm';
import { appendOnly, isDate, isInstant, neverDeleted, oneOf, run } from './support/dialect.js';

const recorded = `
        occurred_at TEXT NOT NULL ${isInstant('occurred_at')},
        recorded_at TEXT NOT NULL ${isInstant('recorded_at')},
        person_id TEXT,
        via TEXT NOT NULL ${oneOf('via', ['api', 'paper', 'system', 'cli'])},`;
const byPerson = 'FOREIGN KEY (studio_id, person_id) REFERENCES person (studio_id, id)';
const ofRecall = 'FOREIGN KEY (studio_id, recall_id) REFERENCES recall (studio_id, id)';
const ofLot = 'FOREIGN KEY (studio_id, lot_id) REFERENCES lot (studio_id, id)';
const ofHold = 'FOREIGN KEY (studio_id, hold_id) REFERENCES hold (studio_id, id)';
const ofStandingHold = 'FOREIGN KEY (studio_id, standing_hold_id) REFERENCES standing_hold (studio_id, id)';
const ofContainer = 'FOREIGN KEY (studio_id, container_id) REFERENCES container (studio_id, id)';
const withPhoto = 'FOREIGN KEY (studio_id, photo_id) REFERENCES photo (studio_id, id)';
const grade = oneOf('grade', ['certain', 'possible']);

/** Holds on what is yet to arrive, releases by two, photos; recalls from the notice to the closing, and their drills. */
export class Recalls1795600000011 implements MigrationInterface {
  async up(runner: QueryRunner): Promise<void> {
    await run(runner, [
      'ALTER TABLE studio ADD COLUMN contact_point TEXT',
      `CREATE TABLE photo (
        studio_id TEXT NOT NULL,
        id TEXT NOT NULL,
        data_key_id TEXT NOT NULL,
        media_type TEXT NOT NULL ${oneOf('media_type', ['image/jpeg', 'image/png'])},
        content_sealed TEXT NOT NULL,${recorded}
        PRIMARY KEY (studio_id, id),
        FOREIGN KEY (studio_id, data_key_id) REFERENCES data_key (studio_id, id),
        ${byPerson})`,
      `CREATE TABLE standing_hold (
        studio_id TEXT NOT NULL REFERENCES studio (id),
        id TEXT NOT NULL,
        scope TEXT NOT NULL,
        note TEXT,${recorded}
        PRIMARY KEY (studio_id, id),
        ${byPerson})`,
      `CREATE TABLE standing_hold_end (
        studio_id TEXT NOT NULL,
        standing_hold_id TEXT NOT NULL,
        reason TEXT NOT NULL,${recorded}
        PRIMARY KEY (studio_id, standing_hold_id),
        ${ofStandingHold},
        ${byPerson})`,
      `CREATE TABLE standing_hold_catch (
        studio_id TEXT NOT NULL,
        standing_hold_id TEXT NOT NULL,
        lot_id TEXT NOT NULL,
        hold_id TEXT NOT NULL,
        grade TEXT NOT NULL ${grade},
        reasons TEXT NOT NULL,
        recorded_at TEXT NOT NULL ${isInstant('recorded_at')},
        PRIMARY KEY (studio_id, standing_hold_id, hold_id),
        ${ofStandingHold},
        ${ofLot},
        ${ofHold})`,
      `CREATE TABLE hold_release_request (
        studio_id TEXT NOT NULL,
        id TEXT NOT NULL,
        hold_id TEXT NOT NULL,
        reason TEXT NOT NULL,
        photo_id TEXT,${recorded}
        PRIMARY KEY (studio_id, id),
        ${ofHold},
        ${withPhoto},
        ${byPerson})`,
      'CREATE INDEX hold_release_request_by_hold ON hold_release_request (studio_id, hold_id)',
      // Which request a release by two answered.
      'ALTER TABLE hold_release ADD COLUMN request_id TEXT',
      `CREATE TABLE recall_notice (
        studio_id TEXT NOT NULL REFERENCES studio (id),
        id TEXT NOT NULL,
        source TEXT NOT NULL ${oneOf('source', ['pasted', 'entered', 'csv', 'enforcement json', 'safety gate xml', 'fetched'])},
        reference TEXT,
        text TEXT NOT NULL,
        text_digest TEXT NOT NULL,${recorded}
        PRIMARY KEY (studio_id, id),
        ${byPerson})`,
      'CREATE INDEX recall_notice_by_digest ON recall_notice (studio_id, text_digest)',
      `CREATE TABLE recall_notice_dismissal (
        studio_id TEXT NOT NULL,
        notice_id TEXT NOT NULL,
        reason TEXT NOT NULL,${recorded}
        PRIMARY KEY (studio_id, notice_id),
        FOREIGN KEY (studio_id, notice_id) REFERENCES recall_notice (studio_id, id),
        ${byPerson})`,
      `CREATE TABLE recall (
        studio_id TEXT NOT NULL,
        id TEXT NOT NULL,
        chain_id TEXT NOT NULL,
        kind TEXT NOT NULL ${oneOf('kind', ['recall', 'drill'])},
        title TEXT NOT NULL,
        chain_wide INTEGER NOT NULL CHECK (chain_wide IN (0, 1)),
        opened_in_studio_id TEXT NOT NULL,
        state TEXT NOT NULL ${oneOf('state', ['open', 'closed', 'withdrawn'])},
        opened_at TEXT NOT NULL ${isInstant('opened_at')},
        opened_by TEXT,
        ended_at TEXT ${isInstant('ended_at')},
        version INTEGER NOT NULL,
        PRIMARY KEY (studio_id, id),
        FOREIGN KEY (studio_id, chain_id) REFERENCES studio (id, chain_id),
        FOREIGN KEY (opened_in_studio_id, chain_id) REFERENCES studio (id, chain_id),
        FOREIGN KEY (studio_id, opened_by) REFERENCES person (studio_id, id),
        CHECK ((state = 'open') = (ended_at IS NULL)))`,
      `CREATE INDEX recall_chain_wide ON recall (chain_id, id) WHERE chain_wide = 1`,
      `CREATE INDEX recall_open ON recall (studio_id, id) WHERE state = 'open'`,
      `CREATE TABLE recall_scope (
        studio_id TEXT NOT NULL,
        id TEXT NOT NULL,
        recall_id TEXT NOT NULL,
        number INTEGER NOT NULL CHECK (number > 0),
        notice_id TEXT,
        scope TEXT NOT NULL,
        issuer TEXT,
        reference TEXT,
        issued_on TEXT ${isDate('issued_on')},
        classification TEXT,
        risk TEXT,
        remedy TEXT,
        reason TEXT,${recorded}
        PRIMARY KEY (studio_id, id),
        UNIQUE (studio_id, recall_id, number),
        ${ofRecall},
        FOREIGN KEY (studio_id, notice_id) REFERENCES recall_notice (studio_id, id),
        ${byPerson})`,
      `CREATE TABLE recall_lot (
        studio_id TEXT NOT NULL,
        id TEXT NOT NULL,
        recall_id TEXT NOT NULL,
        scope_number INTEGER NOT NULL,
        lot_id TEXT NOT NULL,
        item_index INTEGER,
        grade TEXT NOT NULL ${grade},
        reasons TEXT NOT NULL,
        recorded_at TEXT NOT NULL ${isInstant('recorded_at')},
        PRIMARY KEY (studio_id, id),
        UNIQUE (studio_id, recall_id, scope_number, lot_id, grade),
        FOREIGN KEY (studio_id, recall_id, scope_number) REFERENCES recall_scope (studio_id, recall_id, number),
        ${ofLot})`,
      'CREATE INDEX recall_lot_by_lot ON recall_lot (studio_id, lot_id)',
      `CREATE TABLE recall_lot_decision (
        studio_id TEXT NOT NULL,
        id TEXT NOT NULL,
        recall_id TEXT NOT NULL,
        lot_id TEXT NOT NULL,
        decision TEXT NOT NULL ${oneOf('decision', ['affected', 'not affected'])},
        reason TEXT NOT NULL,${recorded}
        PRIMARY KEY (studio_id, id),
        ${ofRecall},
        ${ofLot},
        ${byPerson})`,
      'CREATE INDEX recall_lot_decision_by_lot ON recall_lot_decision (studio_id, recall_id, lot_id, recorded_at)',
      `CREATE TABLE recall_hold (
        studio_id TEXT NOT NULL,
        recall_id TEXT NOT NULL,
        hold_id TEXT NOT NULL,
        lot_id TEXT NOT NULL,
        recorded_at TEXT NOT NULL ${isInstant('recorded_at')},
        PRIMARY KEY (studio_id, recall_id, hold_id),
        ${ofRecall},
        ${ofHold},
        ${ofLot})`,
      'CREATE INDEX recall_hold_by_hold ON recall_hold (studio_id, hold_id)',
      // What may have been another lot than it was recorded as; holds all that counting exposures needs of it.
      `CREATE INDEX session_use_picked
        ON session_use (studio_id, lot_id, occurred_at, id, session_id, client_id, movement_id)
        WHERE known_by = 'picked from a list'`,
      `CREATE TABLE recall_standing_hold (
        studio_id TEXT NOT NULL,
        recall_id TEXT NOT NULL,
        standing_hold_id TEXT NOT NULL,
        recorded_at TEXT NOT NULL ${isInstant('recorded_at')},
        PRIMARY KEY (studio_id, recall_id, standing_hold_id),
        ${ofRecall},
        ${ofStandingHold})`,
      'CREATE INDEX recall_standing_hold_by_hold ON recall_standing_hold (studio_id, standing_hold_id)',
      `CREATE TABLE recall_finding (
        studio_id TEXT NOT NULL,
        id TEXT NOT NULL,
        recall_id TEXT NOT NULL,
        container_id TEXT NOT NULL,
        result TEXT NOT NULL ${oneOf('result', ['found', 'not found'])},
        place_id TEXT,
        tag TEXT,
        photo_id TEXT,
        note TEXT,${recorded}
        PRIMARY KEY (studio_id, id),
        ${ofRecall},
        ${ofContainer},
        FOREIGN KEY (studio_id, place_id) REFERENCES place (studio_id, id),
        ${withPhoto},
        ${byPerson})`,
      'CREATE INDEX recall_finding_by_container ON recall_finding (studio_id, recall_id, container_id, recorded_at)',
      `CREATE TABLE recall_disposition (
        studio_id TEXT NOT NULL,
        id TEXT NOT NULL,
        recall_id TEXT NOT NULL,
        container_id TEXT NOT NULL,
        kind TEXT NOT NULL ${oneOf('kind', ['returned', 'destroyed'])},
        movement_id TEXT,
        pieces INTEGER NOT NULL CHECK (pieces >= 0),
        microlitres INTEGER NOT NULL CHECK (microlitres >= 0),
        witness_id TEXT,
        photo_id TEXT,
        reference TEXT NOT NULL,${recorded}
        PRIMARY KEY (studio_id, id),
        ${ofRecall},
        ${ofContainer},
        FOREIGN KEY (studio_id, movement_id) REFERENCES movement (studio_id, id),
        FOREIGN KEY (studio_id, witness_id) REFERENCES person (studio_id, id),
        ${withPhoto},
        ${byPerson},
        CHECK (witness_id IS NOT NULL OR photo_id IS NOT NULL))`,
      'CREATE INDEX recall_disposition_by_container ON recall_disposition (studio_id, recall_id, container_id)',
      `CREATE TABLE recall_contact (
        studio_id TEXT NOT NULL,
        id TEXT NOT NULL,
        recall_id TEXT NOT NULL,
        audience TEXT NOT NULL ${oneOf('audience', ['client', 'artist', 'supplier', 'authority'])},
        client_id TEXT,
        artist_id TEXT,
        company TEXT,
        channel TEXT NOT NULL ${oneOf('channel', ['telephone', 'e-mail', 'letter', 'message', 'in person'])},
        outcome TEXT NOT NULL ${oneOf('outcome', ['reached', 'refused', 'no answer', 'message left', 'unreachable'])},
        note_sealed TEXT,
        note TEXT,${recorded}
        PRIMARY KEY (studio_id, id),
        ${ofRecall},
        FOREIGN KEY (studio_id, client_id) REFERENCES client (studio_id, id),
        FOREIGN KEY (studio_id, artist_id) REFERENCES person (studio_id, id),
        ${byPerson},
        CHECK ((audience = 'client') = (client_id IS NOT NULL)),
        CHECK ((audience = 'artist') = (artist_id IS NOT NULL)),
        CHECK ((audience IN ('supplier', 'authority')) = (company IS NOT NULL)),
        CHECK (note IS NULL OR audience <> 'client'))`,
      'CREATE INDEX recall_contact_by_recall ON recall_contact (studio_id, recall_id, recorded_at, id)',
      'CREATE INDEX recall_contact_by_client ON recall_contact (studio_id, client_id) WHERE client_id IS NOT NULL',
      `CREATE TABLE recall_step (
        studio_id TEXT NOT NULL,
        id TEXT NOT NULL,
        recall_id TEXT NOT NULL,
        step TEXT NOT NULL,${recorded}
        PRIMARY KEY (studio_id, id),
        ${ofRecall},
        ${byPerson})`,
      'CREATE INDEX recall_step_by_recall ON recall_step (studio_id, recall_id, recorded_at)',
      `CREATE TABLE recall_closing (
        studio_id TEXT NOT NULL,
        id TEXT NOT NULL,
        recall_id TEXT NOT NULL,
        outcome TEXT NOT NULL ${oneOf('outcome', ['closed', 'withdrawn'])},
        reason TEXT,
        overrides TEXT NOT NULL,
        facts TEXT NOT NULL,
        signed_by TEXT,
        second_signed_by TEXT,${recorded}
        PRIMARY KEY (studio_id, id),
        ${ofRecall},
        FOREIGN KEY (studio_id, signed_by) REFERENCES person (studio_id, id),
        FOREIGN KEY (studio_id, second_signed_by) REFERENCES person (studio_id, id),
        ${byPerson},
        CHECK (outcome = 'withdrawn' OR signed_by IS NOT NULL),
        CHECK (second_signed_by IS NULL OR second_signed_by <> signed_by))`,
      'CREATE INDEX recall_closing_by_recall ON recall_closing (studio_id, recall_id, recorded_at)',
      `CREATE TABLE drill_schedule (
        studio_id TEXT NOT NULL PRIMARY KEY REFERENCES studio (id),
        every_months INTEGER CHECK (every_months > 0),
        next_on TEXT ${isDate('next_on')},
        version INTEGER NOT NULL,
        updated_at TEXT NOT NULL ${isInstant('updated_at')})`,
      `CREATE TABLE fetched_notice (
        digest TEXT NOT NULL PRIMARY KEY,
        seen_at TEXT NOT NULL ${isInstant('seen_at')})`,
      `CREATE TABLE notice_source_state (
        id TEXT NOT NULL PRIMARY KEY,
        kind TEXT NOT NULL,
        address TEXT NOT NULL,
        etag TEXT,
        last_modified TEXT,
        tried_at TEXT ${isInstant('tried_at')},
        read_at TEXT ${isInstant('read_at')},
        failures INTEGER NOT NULL CHECK (failures >= 0),
        last_error TEXT,
        next_attempt_at TEXT NOT NULL ${isInstant('next_attempt_at')})`,
    ]);
    await appendOnly(runner, [
      'photo',
      'standing_hold',
      'standing_hold_end',
      'standing_hold_catch',
      'hold_release_request',
      'recall_notice',
      'recall_notice_dismissal',
      'recall_scope',
      'recall_lot',
      'recall_lot_decision',
      'recall_hold',
      'recall_standing_hold',
      'recall_finding',
      'recall_disposition',
      'recall_contact',
      'recall_step',
      'recall_closing',
    ]);
    await neverDeleted(runner, ['recall']);
  }

  async down(): Promise<void> {
    throw new Error('The record is never taken back; restore a backup instead.');
  }
}
