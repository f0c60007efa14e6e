import type { MigrationInterface, QueryRunner } from 'typeorm';
import { appendOnly, isDate, isInstant, isPostgres, neverDeleted, oneOf, run } from './support/dialect.js';

const via = oneOf('via', ['api', 'paper', 'system', 'cli']);
const recorded = `
        occurred_at TEXT NOT NULL ${isInstant('occurred_at')},
        recorded_at TEXT NOT NULL ${isInstant('recorded_at')},
        person_id TEXT,
        via TEXT NOT NULL ${via},`;
const byPerson = 'FOREIGN KEY (studio_id, person_id) REFERENCES person (studio_id, id)';

/** Lots, containers, the movement ledger and its balance, holds, deliveries, blends and levels. */
export class Stock1795600000004 implements MigrationInterface {
  async up(runner: QueryRunner): Promise<void> {
    const sequence = isPostgres(runner)
      ? 'sequence BIGINT GENERATED ALWAYS AS IDENTITY PRIMARY KEY'
      : 'sequence INTEGER PRIMARY KEY AUTOINCREMENT';
    await run(runner, [
      `CREATE TABLE place (
        studio_id TEXT NOT NULL REFERENCES studio (id),
        id TEXT NOT NULL,
        name TEXT NOT NULL,
        kind TEXT NOT NULL ${oneOf('kind', ['shelf', 'treatment room', 'travelling case', 'practice shelf', 'set aside'])},
        created_at TEXT NOT NULL ${isInstant('created_at')},
        archived_at TEXT ${isInstant('archived_at')},
        PRIMARY KEY (studio_id, id))`,
      'CREATE UNIQUE INDEX place_name_once ON place (studio_id, lower(name)) WHERE archived_at IS NULL',
      `CREATE TABLE lot (
        studio_id TEXT NOT NULL,
        id TEXT NOT NULL,
        chain_id TEXT NOT NULL,
        product_id TEXT NOT NULL,
        code TEXT,
        code_state TEXT NOT NULL ${oneOf('code_state', ['printed', 'none printed', 'unreadable'])},
        use_by TEXT ${isDate('use_by')},
        use_by_precision TEXT NOT NULL ${oneOf('use_by_precision', ['day', 'month', 'year', 'none printed'])},
        manufactured_on TEXT ${isDate('manufactured_on')},
        origin TEXT NOT NULL ${oneOf('origin', ['delivery', 'blend', 'opening stock', 'late record', 'transfer'])},
        version INTEGER NOT NULL,
        created_at TEXT NOT NULL ${isInstant('created_at')},
        PRIMARY KEY (studio_id, id),
        FOREIGN KEY (studio_id, chain_id) REFERENCES studio (id, chain_id),
        FOREIGN KEY (chain_id, product_id) REFERENCES product (chain_id, id),
        CHECK ((code IS NOT NULL) = (code_state = 'printed')),
        CHECK ((use_by IS NULL) = (use_by_precision = 'none printed')))`,
      `CREATE UNIQUE INDEX lot_code_once ON lot (studio_id, product_id, code, coalesce(use_by, '')) WHERE code IS NOT NULL`,
      'CREATE INDEX lot_by_product ON lot (studio_id, product_id, use_by)',
      `CREATE TABLE lot_code (
        studio_id TEXT NOT NULL,
        id TEXT NOT NULL,
        lot_id TEXT NOT NULL,
        kind TEXT NOT NULL ${oneOf('kind', ['lot', 'batch', 'other'])},
        code TEXT NOT NULL,
        recorded_at TEXT NOT NULL ${isInstant('recorded_at')},
        superseded_at TEXT ${isInstant('superseded_at')},
        PRIMARY KEY (studio_id, id),
        FOREIGN KEY (studio_id, lot_id) REFERENCES lot (studio_id, id))`,
      'CREATE INDEX lot_code_by_code ON lot_code (studio_id, code)',
      'CREATE INDEX lot_code_by_lot ON lot_code (studio_id, lot_id)',
      `CREATE TABLE container (
        studio_id TEXT NOT NULL,
        id TEXT NOT NULL,
        lot_id TEXT NOT NULL,
        form TEXT NOT NULL ${oneOf('form', ['bottle', 'box'])},
        label_code TEXT NOT NULL CHECK (length(label_code) = 12),
        place_id TEXT NOT NULL,
        owner_id TEXT,
        state TEXT NOT NULL ${oneOf('state', ['sealed', 'opened', 'finished', 'discarded', 'practice only'])},
        opened_at TEXT ${isInstant('opened_at')},
        opened_by TEXT,
        opening_told_at TEXT ${isInstant('opening_told_at')},
        received_at TEXT NOT NULL ${isInstant('received_at')},
        ended_at TEXT ${isInstant('ended_at')},
        ended_from TEXT ${oneOf('ended_from', ['sealed', 'opened', 'practice only'])},
        version INTEGER NOT NULL,
        PRIMARY KEY (studio_id, id),
        UNIQUE (studio_id, label_code),
        UNIQUE (studio_id, id, lot_id),
        FOREIGN KEY (studio_id, lot_id) REFERENCES lot (studio_id, id),
        FOREIGN KEY (studio_id, place_id) REFERENCES place (studio_id, id),
        FOREIGN KEY (studio_id, owner_id) REFERENCES person (studio_id, id),
        FOREIGN KEY (studio_id, opened_by) REFERENCES person (studio_id, id),
        CHECK (state <> 'opened' OR opened_at IS NOT NULL),
        CHECK (state <> 'sealed' OR opened_at IS NULL),
        CHECK ((ended_from IS NOT NULL) = (state IN ('finished', 'discarded'))))`,
      'CREATE INDEX container_by_lot ON container (studio_id, lot_id, state)',
      'CREATE INDEX container_by_place ON container (studio_id, place_id, state)',
      `CREATE TABLE balance (
        studio_id TEXT NOT NULL,
        container_id TEXT NOT NULL,
        lot_id TEXT NOT NULL,
        pieces INTEGER NOT NULL CONSTRAINT pieces_never_below_zero CHECK (pieces >= 0),
        microlitres INTEGER NOT NULL CONSTRAINT microlitres_never_below_zero CHECK (microlitres >= 0),
        PRIMARY KEY (studio_id, container_id),
        FOREIGN KEY (studio_id, container_id, lot_id) REFERENCES container (studio_id, id, lot_id))`,
      'CREATE INDEX balance_by_lot ON balance (studio_id, lot_id)',
      `CREATE TABLE movement (
        ${sequence},
        studio_id TEXT NOT NULL,
        id TEXT NOT NULL,
        lot_id TEXT NOT NULL,
        container_id TEXT NOT NULL,
        kind TEXT NOT NULL ${oneOf('kind', ['received', 'produced', 'transferred in', 'adjusted', 'used', 'blended', 'wasted', 'returned', 'transferred out'])},
        pieces INTEGER NOT NULL,
        microlitres INTEGER NOT NULL,
        reverses_id TEXT,
        session_id TEXT,
        reason TEXT,${recorded}
        UNIQUE (studio_id, id),
        UNIQUE (studio_id, reverses_id),
        FOREIGN KEY (studio_id, container_id, lot_id) REFERENCES container (studio_id, id, lot_id),
        FOREIGN KEY (studio_id, reverses_id) REFERENCES movement (studio_id, id),
        ${byPerson},
        CHECK (pieces <> 0 OR microlitres <> 0),
        CONSTRAINT sign_of_kind CHECK (
          kind = 'adjusted'
          OR (pieces >= 0 AND microlitres >= 0 AND (kind IN ('received', 'produced', 'transferred in')) = (reverses_id IS NULL))
          OR (pieces <= 0 AND microlitres <= 0 AND (kind IN ('used', 'blended', 'wasted', 'returned', 'transferred out')) = (reverses_id IS NULL))))`,
      'CREATE INDEX movement_by_lot ON movement (studio_id, lot_id, sequence)',
      'CREATE INDEX movement_by_container ON movement (studio_id, container_id, sequence)',
      'CREATE INDEX movement_by_session ON movement (studio_id, session_id) WHERE session_id IS NOT NULL',
      `CREATE TABLE hold (
        studio_id TEXT NOT NULL,
        id TEXT NOT NULL,
        kind TEXT NOT NULL ${oneOf('kind', ['quarantine', 'recall', 'compliance'])},
        lot_id TEXT,
        container_id TEXT,
        reason TEXT NOT NULL,
        note TEXT,${recorded}
        PRIMARY KEY (studio_id, id),
        FOREIGN KEY (studio_id, lot_id) REFERENCES lot (studio_id, id),
        FOREIGN KEY (studio_id, container_id) REFERENCES container (studio_id, id),
        ${byPerson},
        CHECK ((lot_id IS NULL) <> (container_id IS NULL)))`,
      'CREATE INDEX hold_by_lot ON hold (studio_id, lot_id) WHERE lot_id IS NOT NULL',
      'CREATE INDEX hold_by_container ON hold (studio_id, container_id) WHERE container_id IS NOT NULL',
      `CREATE TABLE hold_release (
        studio_id TEXT NOT NULL,
        hold_id TEXT NOT NULL,
        reason TEXT NOT NULL,${recorded}
        PRIMARY KEY (studio_id, hold_id),
        FOREIGN KEY (studio_id, hold_id) REFERENCES hold (studio_id, id),
        ${byPerson})`,
      `CREATE TABLE delivery (
        studio_id TEXT NOT NULL,
        id TEXT NOT NULL,
        chain_id TEXT NOT NULL,
        supplier_id TEXT,
        origin TEXT NOT NULL ${oneOf('origin', ['purchase', 'gift or sample', 'opening stock'])},
        ordered_on TEXT ${isDate('ordered_on')},
        reference TEXT,${recorded}
        PRIMARY KEY (studio_id, id),
        FOREIGN KEY (studio_id, chain_id) REFERENCES studio (id, chain_id),
        FOREIGN KEY (chain_id, supplier_id) REFERENCES supplier (chain_id, id),
        ${byPerson})`,
      'CREATE INDEX delivery_by_time ON delivery (studio_id, occurred_at)',
      `CREATE TABLE delivery_line (
        studio_id TEXT NOT NULL,
        id TEXT NOT NULL,
        delivery_id TEXT NOT NULL,
        line_number INTEGER NOT NULL,
        lot_id TEXT NOT NULL,
        quantity_pieces INTEGER NOT NULL CHECK (quantity_pieces > 0),
        unit_cost_minor INTEGER CHECK (unit_cost_minor >= 0),
        currency TEXT,
        order_line_id TEXT,
        PRIMARY KEY (studio_id, id),
        UNIQUE (studio_id, delivery_id, line_number),
        FOREIGN KEY (studio_id, delivery_id) REFERENCES delivery (studio_id, id),
        FOREIGN KEY (studio_id, lot_id) REFERENCES lot (studio_id, id),
        CHECK ((unit_cost_minor IS NULL) = (currency IS NULL)))`,
      'CREATE INDEX delivery_line_by_lot ON delivery_line (studio_id, lot_id)',
      `CREATE TABLE blend (
        studio_id TEXT NOT NULL,
        id TEXT NOT NULL,
        lot_id TEXT NOT NULL,
        container_id TEXT NOT NULL,
        microlitres INTEGER NOT NULL CHECK (microlitres > 0),${recorded}
        PRIMARY KEY (studio_id, id),
        FOREIGN KEY (studio_id, container_id, lot_id) REFERENCES container (studio_id, id, lot_id),
        ${byPerson})`,
      `CREATE TABLE blend_parent (
        studio_id TEXT NOT NULL,
        id TEXT NOT NULL,
        blend_id TEXT NOT NULL,
        lot_id TEXT NOT NULL,
        parent_lot_id TEXT NOT NULL,
        parent_container_id TEXT NOT NULL,
        movement_id TEXT NOT NULL,
        microlitres INTEGER NOT NULL CHECK (microlitres > 0),
        recorded_at TEXT NOT NULL ${isInstant('recorded_at')},
        PRIMARY KEY (studio_id, id),
        FOREIGN KEY (studio_id, blend_id) REFERENCES blend (studio_id, id),
        FOREIGN KEY (studio_id, lot_id) REFERENCES lot (studio_id, id),
        FOREIGN KEY (studio_id, parent_container_id, parent_lot_id) REFERENCES container (studio_id, id, lot_id),
        FOREIGN KEY (studio_id, movement_id) REFERENCES movement (studio_id, id),
        CHECK (lot_id <> parent_lot_id))`,
      'CREATE INDEX blend_by_lot ON blend (studio_id, lot_id)',
      'CREATE INDEX blend_parent_by_lot ON blend_parent (studio_id, lot_id)',
      'CREATE INDEX blend_parent_by_parent ON blend_parent (studio_id, parent_lot_id)',
      `CREATE TABLE stock_level (
        studio_id TEXT NOT NULL REFERENCES studio (id),
        id TEXT NOT NULL,
        subject_kind TEXT NOT NULL ${oneOf('subject_kind', ['product', 'configuration'])},
        subject_id TEXT NOT NULL,
        minimum_pieces INTEGER NOT NULL CHECK (minimum_pieces >= 0),
        version INTEGER NOT NULL,
        updated_at TEXT NOT NULL ${isInstant('updated_at')},
        PRIMARY KEY (studio_id, id),
        UNIQUE (studio_id, subject_kind, subject_id))`,
    ]);
    await keepBalance(runner);
    await appendOnly(runner, [
      'movement',
      'hold',
      'hold_release',
      'delivery',
      'delivery_line',
      'blend',
      'blend_parent',
    ]);
    await neverDeleted(runner, ['lot', 'lot_code', 'container', 'balance', 'place']);
  }

  async down(): Promise<void> {
    throw new Error('The record is never taken back; restore a backup instead.');
  }
}

/** Each movement changes its container's balance in the same statement; a balance below zero fails both. */
async function keepBalance(runner: QueryRunner): Promise<void> {
  if (isPostgres(runner)) {
    await runner.query(`CREATE FUNCTION keep_balance() RETURNS trigger LANGUAGE plpgsql AS $$
      BEGIN
        UPDATE balance SET pieces = pieces + NEW.pieces, microlitres = microlitres + NEW.microlitres
          WHERE studio_id = NEW.studio_id AND container_id = NEW.container_id;
        RETURN NULL;
      END $$`);
    await runner.query(
      'CREATE TRIGGER movement_keeps_balance AFTER INSERT ON movement FOR EACH ROW EXECUTE FUNCTION keep_balance()',
    );
    await runner.query(`CREATE FUNCTION start_balance() RETURNS trigger LANGUAGE plpgsql AS $$
      BEGIN
        INSERT INTO balance (studio_id, container_id, lot_id, pieces, microlitres)
          VALUES (NEW.studio_id, NEW.id, NEW.lot_id, 0, 0);
        RETURN NULL;
      END $$`);
    await runner.query(
      'CREATE TRIGGER container_starts_balance AFTER INSERT ON container FOR EACH ROW EXECUTE FUNCTION start_balance()',
    );
    return;
  }
  await runner.query(`CREATE TRIGGER movement_keeps_balance AFTER INSERT ON movement
    BEGIN
      UPDATE balance SET pieces = pieces + NEW.pieces, microlitres = microlitres + NEW.microlitres
        WHERE studio_id = NEW.studio_id AND container_id = NEW.container_id;
    END`);
  await runner.query(`CREATE TRIGGER container_starts_balance AFTER INSERT ON container
    BEGIN
      INSERT INTO balance (studio_id, container_id, lot_id, pieces, microlitres)
        VALUES (NEW.studio_id, NEW.id, NEW.lot_id, 0, 0);
    END`);
}
