import 'reflect-metadata';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { schema } from '../src/app.module.js';
import { readConfig } from '../src/platform/config.js';
import { Database } from '../src/platform/database/database.js';
import { type DataPlace, type PlainRow, PlainSql } from './support/plain-sql.js';
import { engines, makePostgresDatabase, startService } from './support/service.js';

/** What was recorded there is neither changed nor deleted. */
const appendOnly = [
  'alert_entry',
  'audit_entry',
  'blend',
  'blend_parent',
  'client_access',
  'delivery',
  'delivery_line',
  'erasure_request',
  'hold',
  'hold_release',
  'hold_release_request',
  'legal_claim',
  'legal_claim_end',
  'mix',
  'mix_component',
  'morning_summary',
  'movement',
  'photo',
  'recall_closing',
  'recall_contact',
  'recall_disposition',
  'recall_finding',
  'recall_hold',
  'recall_lot',
  'recall_lot_decision',
  'recall_notice',
  'recall_notice_dismissal',
  'recall_scope',
  'recall_standing_hold',
  'recall_step',
  'scan',
  'session_use',
  'session_use_reversal',
  'standing_hold',
  'standing_hold_catch',
  'standing_hold_end',
  'transfer',
  'transfer_goods',
  'transfer_line',
  'transfer_line_facts',
  'transfer_outcome',
  'unmet_demand',
];

/** Their rows have a state that moves on, but stay. */
const neverDeleted = [
  'accepted_request',
  'account',
  'alert',
  'alert_destination',
  'api_token',
  'audit_head',
  'balance',
  'calendar_address',
  'chain',
  'client',
  'configuration_equivalence',
  'container',
  'data_key',
  'expected_delivery',
  'lot',
  'lot_code',
  'maker',
  'offer',
  'one_time_link',
  'outbox',
  'passkey',
  'person',
  'place',
  'plan',
  'procedure',
  'product',
  'purchase_order',
  'purchase_order_line',
  'purchase_order_mail',
  'recall',
  'service_key',
  'session',
  'studio',
  'studio_key',
  'supplier',
  'supplier_claim',
  'tablet',
  'tablet_credential',
  'training_course',
  'tray_line',
];

/**
 * Settings and names, and what is worked out from the record: no record of what happened; or held by the foreign keys of what was recorded; or the state of signing
 * in, which is cleared when it is old.
 */
const unguarded = [
  'alert_preference',
  'artist_planning',
  'credential_use',
  'date_threshold',
  'drill_schedule',
  'failed_sign_in',
  'fetched_notice',
  'handing_on',
  'item_planning',
  'kit_list',
  'notice_source_state',
  'passkey_challenge',
  'plan_lease',
  'plan_line',
  'planning_settings',
  'product_gtin',
  'schedule_state',
  'sign_in',
  'stock_level',
  'supplier_terms',
];

/** Written by SQL alone, since their rows are no part of the record. */
const withoutEntity = [
  'credential_use',
  'failed_sign_in',
  'fetched_notice',
  'notice_source_state',
  'passkey_challenge',
  'plan_lease',
  'schedule_state',
  'sign_in',
];

/**
 * A row for each table whose every text is `x`, so that all rows refer to each other; here is what a check wants to be
 * otherwise. Tables whose rows must refer to two different things get a second row, `y`, first.
 */
const particulars: Record<string, PlainRow> = {
  alert: { severity: 'notice', put_off_until: null, given_to: null, closed_by: null },
  alert_destination: { kind: 'mail', minimum_severity: 'notice', state: 'active' },
  alert_entry: { event: 'opened', severity: 'notice', until: null },
  alert_preference: {
    told_from: 'urgent',
    urgent_turn: 'in turn',
    summary: 'daily',
    summary_at: '07:00',
    quiet_from: '20:00',
    quiet_until: '07:00',
  },
  blend_parent: { parent_lot_id: 'y', parent_container_id: 'y' },
  client: {},
  configuration_equivalence: { other_product_id: 'y' },
  container: { form: 'bottle', state: 'opened', ended_from: null, usable_through: null },
  data_key: { destroyed_at: null },
  delivery: { origin: 'purchase' },
  expected_delivery: { ended_as: 'received' },
  erasure_request: { answer: 'refused' },
  hold: { kind: 'quarantine', container_id: null },
  lot: { code_state: 'printed', use_by_precision: 'day', origin: 'delivery' },
  lot_code: { kind: 'lot' },
  morning_summary: { day: '2026-03-01' },
  movement: { kind: 'received', reverses_id: null },
  outbox: { event: 'opened', state: 'sent', not_before: null },
  one_time_link: { purpose: 'set-up' },
  artist_planning: { leaves_on: '2026-03-01' },
  item_planning: { item_kind: 'product', range_choice: 'keep in stock' },
  offer: { currency: 'EUR' },
  plan: { purpose: 'plan', state: 'done', planned_on: '2026-03-01' },
  plan_lease: { held_until: '2026-03-01T09:30:00.000Z' },
  plan_line: { item_kind: 'product', decision: 'enough', order_on: null },
  purchase_order: { state: 'draft', currency: 'EUR', sent_as: null, ended_as: null },
  purchase_order_mail: { state: 'waiting', expected_on: null },
  supplier_claim: { reason: 'other', state: 'open', currency: 'EUR' },
  supplier_terms: { currency: 'EUR' },
  training_course: { held_on: '2026-03-01' },
  passkey_challenge: { purpose: 'sign-in' },
  person: { role: 'owner', state: 'active', account_id: null, until: null },
  place: { kind: 'shelf' },
  procedure: { body_place: 'brows' },
  product: {
    kind: 'pigment',
    stock_form: 'container',
    pigment_role: 'colour',
    points: null,
    membrane: 'yes',
  },
  service_key: { id: 'service' },
  photo: { media_type: 'image/png' },
  recall: { kind: 'recall', chain_wide: 0, state: 'closed' },
  recall_closing: { outcome: 'closed', second_signed_by: null },
  recall_contact: {
    audience: 'client',
    artist_id: null,
    company: null,
    channel: 'letter',
    outcome: 'reached',
    note: null,
  },
  recall_disposition: { kind: 'returned' },
  recall_finding: { result: 'found' },
  recall_lot: { grade: 'certain' },
  recall_lot_decision: { decision: 'affected' },
  recall_notice: { source: 'pasted' },
  scan: { verdict: 'admitted' },
  session: { visit_kind: 'first session', body_place: 'brows', state: 'completed', recorded_from: 'tray' },
  standing_hold_catch: { grade: 'certain' },
  stock_level: { subject_kind: 'product' },
  studio: { house_blends: 'off', passkeys_required: null, currency: 'EUR', morning: '07:00' },
  tablet_credential: { kind: 'badge' },
  transfer: { receiver_id: 'y' },
  transfer_goods: { fault: null },
  transfer_line: { receiver_id: 'y', form: 'bottle', state: 'sealed' },
  transfer_line_facts: { code_state: 'printed', use_by_precision: 'day', usable_through: '2026-03-01' },
  transfer_outcome: {
    receiver_id: 'y',
    kind: 'withdrawn',
    sender_id: 'x',
    lost_pieces: 0,
    lost_microlitres: 0,
  },
  tray_line: { state: 'settled', settled_as: 'used' },
};

const second: Record<string, PlainRow> = {
  studio: { id: 'y' },
  product: { id: 'y', name: 'y' },
  lot: { id: 'y', code: 'y' },
  container: { id: 'y', lot_id: 'y', label_code: 'y'.repeat(12) },
};

function ordinaryValue(column: { name: string; type: 'text' | 'integer' }): string | number {
  const { name, type } = column;
  if (type === 'integer') return 1;
  if (name.endsWith('_at') || name === 'planned_start') return '2026-03-01T09:30:00.000Z';
  if (name.endsWith('_on') || name === 'use_by') return '2026-03-01';
  if (name === 'hash' || name === 'previous_hash') return '0'.repeat(64);
  if (name === 'gtin') return '09501101530003';
  if (name === 'label_code') return 'x'.repeat(12);
  if (name === 'via') return 'api';
  if (name === 'known_by') return 'typed';
  return 'x';
}

async function insertRow(sql: PlainSql, table: string, differing: PlainRow): Promise<void> {
  const columns = (await sql.columns(table)).filter(
    ({ name }) => !(table === 'movement' && name === 'sequence'),
  );
  const values = columns.map((column) => {
    const given = { ...particulars[table], ...differing }[column.name];
    return given === undefined ? ordinaryValue(column) : given;
  });
  await sql.rows(
    `INSERT INTO ${table} (${columns.map(({ name }) => `"${name}"`).join(', ')})
     VALUES (${columns.map((_, index) => `$${index + 1}`).join(', ')})`,
    values,
  );
}

/** Fills every table, each once what it refers to is there. */
async function fill(sql: PlainSql): Promise<void> {
  let waiting = (await sql.tables()).filter((table) => table !== 'balance');
  while (waiting.length > 0) {
    const refused: { table: string; error: unknown }[] = [];
    for (const table of waiting) {
      try {
        const other = second[table];
        if (other) await insertRow(sql, table, other);
        await insertRow(sql, table, {});
      } catch (error) {
        refused.push({ table, error });
        if (second[table] && !(error instanceof Error && /foreign key/i.test(error.message))) throw error;
      }
    }
    if (refused.length === waiting.length) {
      throw new Error(`No row fits ${refused.map(({ table, error }) => `${table} (${error})`).join(', ')}`);
    }
    waiting = refused.map(({ table }) => table);
  }
}

async function newPlace(engine: 'sqlite' | 'postgres'): Promise<DataPlace> {
  return {
    dataFolder: mkdtempSync(join(tmpdir(), 'lotward-schema-')),
    databaseUrl: engine === 'postgres' ? await makePostgresDatabase() : undefined,
  };
}

describe.each(engines)('the schema on %s', (engine) => {
  let place: DataPlace;
  let database: Database;
  let sql: PlainSql;

  beforeAll(async () => {
    place = await newPlace(engine);
    const config = readConfig({ DATA_DIR: place.dataFolder, DATABASE_URL: place.databaseUrl });
    database = await Database.open(config, schema);
    sql = await PlainSql.connect(place, 'write');
    await fill(sql);
  });

  afterAll(async () => {
    await sql.close();
    await database.close();
    rmSync(place.dataFolder, { recursive: true, force: true });
  });

  it('has a table for each entity and an entity for each table, with equal columns', async () => {
    const fromEntities = database.writer.entityMetadatas
      .map((entity) => ({
        table: entity.tableName,
        columns: entity.columns
          .map((column) => ({
            name: column.databaseName,
            nullable: column.isNullable,
            type: /int/.test(String(column.type)) ? 'integer' : 'text',
          }))
          .sort((one, other) => (one.name < other.name ? -1 : 1)),
      }))
      .sort((one, other) => (one.table < other.table ? -1 : 1));
    const fromTables = [];
    for (const table of await sql.tables()) {
      if (withoutEntity.includes(table)) continue;
      fromTables.push({
        table,
        columns: (await sql.columns(table)).map(({ name, nullable, type }) => ({ name, nullable, type })),
      });
    }
    expect(fromTables).toEqual(fromEntities);
  });

  it('says of each table whether its rows may be changed or deleted', async () => {
    expect(await sql.tables()).toEqual([...appendOnly, ...neverDeleted, ...unguarded].sort());
  });

  it.each(appendOnly)('refuses to change what was recorded in %s', async (table) => {
    const before = await sql.rows(`SELECT * FROM ${table}`);
    expect(before.length).toBeGreaterThan(0);
    for (const { name } of await sql.columns(table)) {
      await expect(sql.rows(`UPDATE ${table} SET "${name}" = "${name}"`), name).rejects.toThrow(
        // PostgreSQL guards the ledger's own numbering before any trigger is asked.
        name === 'sequence' ? /is append-only|can only be updated to DEFAULT/ : `${table} is append-only`,
      );
    }
    expect(await sql.rows(`SELECT * FROM ${table}`)).toEqual(before);
  });

  it.each(appendOnly)('refuses to delete what was recorded in %s', async (table) => {
    const before = await sql.rows(`SELECT * FROM ${table}`);
    expect(before.length).toBeGreaterThan(0);
    await expect(sql.rows(`DELETE FROM ${table}`)).rejects.toThrow(`${table} is append-only`);
    expect(await sql.rows(`SELECT * FROM ${table}`)).toEqual(before);
  });

  it.each(neverDeleted)('refuses to delete from %s', async (table) => {
    const before = await sql.rows(`SELECT * FROM ${table}`);
    expect(before.length).toBeGreaterThan(0);
    await expect(sql.rows(`DELETE FROM ${table}`)).rejects.toThrow(
      `${table} is part of the record: nothing is deleted`,
    );
    expect(await sql.rows(`SELECT * FROM ${table}`)).toEqual(before);
  });

  it.each([...appendOnly, ...neverDeleted])('refuses the ways round deleting from %s', async (table) => {
    const before = await sql.rows(`SELECT * FROM ${table}`);
    // What REPLACE deletes fires triggers on the service's own connection only: it is a setting of the connection.
    const way =
      engine === 'postgres'
        ? `TRUNCATE ${table} CASCADE`
        : `INSERT OR REPLACE INTO ${table} SELECT * FROM ${table}`;
    await expect(database.writer.query(way)).rejects.toThrow(/append-only|is part of the record/);
    expect(await sql.rows(`SELECT * FROM ${table}`)).toEqual(before);
  });

  it.each([
    ['pieces', -2, 0],
    ['microlitres', 0, -2],
  ])(
    'refuses a movement that takes %s below zero, and keeps no trace of it',
    async (quantity, pieces, microlitres) => {
      const state = async () => ({
        movements: await sql.rows('SELECT * FROM movement ORDER BY id'),
        balances: await sql.rows('SELECT * FROM balance ORDER BY container_id'),
      });
      const before = await state();
      expect(before.balances.map((balance) => balance[quantity])).toEqual([1, 0]);
      await expect(
        insertRow(sql, 'movement', { id: 'too much', kind: 'used', pieces, microlitres }),
      ).rejects.toThrow(`${quantity}_never_below_zero`);
      expect(await state()).toEqual(before);
    },
  );

  it.each(['pieces', 'microlitres'])('refuses a balance of %s set below zero by hand', async (quantity) => {
    await expect(sql.rows(`UPDATE balance SET ${quantity} = -1 WHERE container_id = 'y'`)).rejects.toThrow(
      `${quantity}_never_below_zero`,
    );
  });

  it('refuses a second reversal of one movement', async () => {
    const reversal = { kind: 'received', pieces: -1, microlitres: -1, reverses_id: 'x' };
    await insertRow(sql, 'movement', { ...reversal, id: 'reversal' });
    await insertRow(sql, 'movement', { id: 'more', pieces: 5, microlitres: 5 });
    await expect(insertRow(sql, 'movement', { ...reversal, id: 'reversal again' })).rejects.toThrow(
      /unique/i,
    );
  });

  it('refuses a second end of one line of a transfer, whoever says it', async () => {
    const arrival = { id: 'again', kind: 'arrived', studio_id: 'y', person_id: null };
    await expect(insertRow(sql, 'transfer_outcome', { id: 'again' })).rejects.toThrow(/unique/i);
    await expect(insertRow(sql, 'transfer_outcome', arrival)).rejects.toThrow(/unique/i);
  });

  it.each([
    ['arrived', 'x'],
    ['withdrawn', 'y'],
  ])('refuses that a line has %s by the wrong end', async (kind, studio_id) => {
    const row = { id: 'wrong end', kind, studio_id, person_id: null };
    await expect(insertRow(sql, 'transfer_outcome', row)).rejects.toThrow('said_by_the_right_end');
  });

  it('refuses a transfer to a studio of another chain', async () => {
    await insertRow(sql, 'chain', { id: 'z' });
    await insertRow(sql, 'studio', { id: 'z', chain_id: 'z' });
    await expect(insertRow(sql, 'transfer', { id: 'far', receiver_id: 'z' })).rejects.toThrow(/foreign key/i);
  });

  it.each([
    ['received', -1],
    ['used', 1],
  ])('refuses a movement "%s" of %i pieces that reverses nothing', async (kind, pieces) => {
    await expect(
      insertRow(sql, 'movement', { id: 'wrong sign', kind, pieces, microlitres: 0 }),
    ).rejects.toThrow('sign_of_kind');
  });
});

describe.each(engines)('a schema newer than the program on %s', (engine) => {
  it('is refused at start, and left as it is', async () => {
    const place = await newPlace(engine);
    const first = await startService(engine, place);
    await first.stop();
    const sql = await PlainSql.connect(place, 'write');
    const name = 'FromTheFuture4102444800000';
    await sql.rows('INSERT INTO migrations ("timestamp", name) VALUES ($1, $2)', [4_102_444_800_000, name]);
    const before = await sql.rows('SELECT * FROM migrations');
    await expect(startService(engine, place)).rejects.toThrow(
      `written by a newer version of Lotward (it has ${name})`,
    );
    expect(await sql.rows('SELECT * FROM migrations')).toEqual(before);
    await sql.close();
    rmSync(place.dataFolder, { recursive: true, force: true });
  });
});
