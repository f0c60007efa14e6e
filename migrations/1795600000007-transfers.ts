import type { MigrationInterface, QueryRunner } from 'typeorm';
import { appendOnly, isDate, isInstant, oneOf, run } from './support/dialect.js';

const recorded = `
        occurred_at TEXT NOT NULL ${isInstant('occurred_at')},
        recorded_at TEXT NOT NULL ${isInstant('recorded_at')},
        person_id TEXT,
        via TEXT NOT NULL ${oneOf('via', ['api', 'paper', 'system', 'cli'])},`;
const byPerson = 'FOREIGN KEY (studio_id, person_id) REFERENCES person (studio_id, id)';

/**
 * Goods on their way between studios of one chain. What was sent and what the sender knows of it are rows of the sending
 * studio; what became of a line is a row of the studio that says so, and a line ends once.
 */
export class Transfers1795600000007 implements MigrationInterface {
  async up(runner: QueryRunner): Promise<void> {
    await run(runner, [
      `CREATE TABLE transfer (
        studio_id TEXT NOT NULL,
        id TEXT NOT NULL UNIQUE,
        chain_id TEXT NOT NULL,
        receiver_id TEXT NOT NULL,
        reason TEXT NOT NULL,${recorded}
        PRIMARY KEY (studio_id, id),
        UNIQUE (studio_id, id, receiver_id),
        FOREIGN KEY (studio_id, chain_id) REFERENCES studio (id, chain_id),
        FOREIGN KEY (receiver_id, chain_id) REFERENCES studio (id, chain_id),
        ${byPerson},
        CHECK (receiver_id <> studio_id))`,
      'CREATE INDEX transfer_by_receiver ON transfer (receiver_id)',
      `CREATE TABLE transfer_line (
        studio_id TEXT NOT NULL,
        id TEXT NOT NULL,
        transfer_id TEXT NOT NULL,
        receiver_id TEXT NOT NULL,
        line_number INTEGER NOT NULL,
        chain_id TEXT NOT NULL,
        product_id TEXT NOT NULL,
        lot_id TEXT NOT NULL,
        container_id TEXT NOT NULL,
        movement_id TEXT NOT NULL,
        label_code TEXT NOT NULL CHECK (length(label_code) = 12),
        form TEXT NOT NULL ${oneOf('form', ['bottle', 'box'])},
        state TEXT NOT NULL ${oneOf('state', ['sealed', 'opened', 'practice only'])},
        pieces INTEGER NOT NULL CHECK (pieces > 0),
        microlitres INTEGER NOT NULL CHECK (microlitres >= 0),
        recorded_at TEXT NOT NULL ${isInstant('recorded_at')},
        PRIMARY KEY (studio_id, id),
        UNIQUE (studio_id, id, receiver_id),
        UNIQUE (studio_id, movement_id),
        UNIQUE (studio_id, transfer_id, line_number),
        FOREIGN KEY (studio_id, transfer_id, receiver_id) REFERENCES transfer (studio_id, id, receiver_id),
        FOREIGN KEY (studio_id, chain_id) REFERENCES studio (id, chain_id),
        FOREIGN KEY (chain_id, product_id) REFERENCES product (chain_id, id),
        FOREIGN KEY (studio_id, container_id, lot_id) REFERENCES container (studio_id, id, lot_id),
        FOREIGN KEY (studio_id, movement_id) REFERENCES movement (studio_id, id))`,
      'CREATE INDEX transfer_line_by_lot ON transfer_line (studio_id, lot_id)',
      'CREATE INDEX transfer_line_by_receiver ON transfer_line (receiver_id)',
      `CREATE TABLE transfer_line_facts (
        studio_id TEXT NOT NULL,
        id TEXT NOT NULL,
        line_id TEXT NOT NULL,
        revision INTEGER NOT NULL CHECK (revision > 0),
        code TEXT,
        code_state TEXT NOT NULL ${oneOf('code_state', ['printed', 'none printed', 'unreadable'])},
        codes TEXT NOT NULL,
        use_by TEXT ${isDate('use_by')},
        use_by_precision TEXT NOT NULL ${oneOf('use_by_precision', ['day', 'month', 'year', 'none printed'])},
        manufactured_on TEXT ${isDate('manufactured_on')},
        opened_at TEXT ${isInstant('opened_at')},
        usable_through TEXT CHECK (usable_through IS NULL OR length(usable_through) IN (10, 24)),
        holds TEXT NOT NULL,
        recorded_at TEXT NOT NULL ${isInstant('recorded_at')},
        PRIMARY KEY (studio_id, id),
        UNIQUE (studio_id, line_id, revision),
        FOREIGN KEY (studio_id, line_id) REFERENCES transfer_line (studio_id, id))`,
      `CREATE TABLE transfer_outcome (
        studio_id TEXT NOT NULL,
        id TEXT NOT NULL,
        sender_id TEXT NOT NULL,
        receiver_id TEXT NOT NULL,
        line_id TEXT NOT NULL,
        kind TEXT NOT NULL ${oneOf('kind', ['arrived', 'turned up', 'withdrawn'])},
        lost_pieces INTEGER NOT NULL,
        lost_microlitres INTEGER NOT NULL,
        reason TEXT,${recorded}
        PRIMARY KEY (studio_id, id),
        FOREIGN KEY (sender_id, line_id, receiver_id) REFERENCES transfer_line (studio_id, id, receiver_id),
        ${byPerson},
        CONSTRAINT said_by_the_right_end CHECK (studio_id = CASE kind WHEN 'withdrawn' THEN sender_id ELSE receiver_id END),
        CHECK (
          (kind = 'arrived' AND lost_pieces >= 0 AND lost_microlitres >= 0)
          OR (kind = 'turned up' AND lost_pieces < 0 AND lost_microlitres <= 0)
          OR (kind = 'withdrawn' AND lost_pieces = 0 AND lost_microlitres = 0)))`,
      `CREATE UNIQUE INDEX transfer_line_ends_once ON transfer_outcome (sender_id, line_id) WHERE kind <> 'turned up'`,
      'CREATE INDEX transfer_outcome_by_line ON transfer_outcome (sender_id, line_id)',
      `CREATE TABLE transfer_goods (
        studio_id TEXT NOT NULL,
        id TEXT NOT NULL,
        outcome_id TEXT NOT NULL,
        lot_id TEXT NOT NULL,
        container_id TEXT NOT NULL,
        movement_id TEXT,
        pieces INTEGER NOT NULL CHECK (pieces >= 0),
        microlitres INTEGER NOT NULL CHECK (microlitres >= 0),
        surplus_pieces INTEGER NOT NULL CHECK (surplus_pieces >= 0),
        fault TEXT ${oneOf('fault', ['broken seal', 'damaged package'])},
        recorded_at TEXT NOT NULL ${isInstant('recorded_at')},
        PRIMARY KEY (studio_id, id),
        UNIQUE (studio_id, movement_id),
        FOREIGN KEY (studio_id, outcome_id) REFERENCES transfer_outcome (studio_id, id),
        FOREIGN KEY (studio_id, container_id, lot_id) REFERENCES container (studio_id, id, lot_id),
        FOREIGN KEY (studio_id, movement_id) REFERENCES movement (studio_id, id),
        CHECK ((movement_id IS NULL) = (pieces = 0 AND microlitres = 0)))`,
      'CREATE INDEX transfer_goods_by_outcome ON transfer_goods (studio_id, outcome_id)',
      'CREATE INDEX transfer_goods_by_lot ON transfer_goods (studio_id, lot_id)',
      'ALTER TABLE container ADD COLUMN usable_through TEXT CHECK (usable_through IS NULL OR length(usable_through) IN (10, 24))',
    ]);
    await appendOnly(runner, [
      'transfer',
      'transfer_line',
      'transfer_line_facts',
      'transfer_outcome',
      'transfer_goods',
    ]);
  }

  async down(): Promise<void> {
    throw new Error('The record is never taken back; restore a backup instead.');
  }
}
