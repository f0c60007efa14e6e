import { rmSync } from 'node:fs';
import fc from 'fast-check';
import { v7 as uuidv7 } from 'uuid';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { MorningSummary } from '../../src/alerts/summaries/morning-summary.entity.js';
import { Passkey } from '../../src/identity/passkeys/passkey.entity.js';
import { Account } from '../../src/identity/sign-in/account.entity.js';
import { checkRecord } from '../../src/operations/verify/record.check.js';
import { uncoveredTables } from '../../src/operations/verify/record-tables.js';
import type { Finding, RememberedHead, VerifyReport } from '../../src/operations/verify/report-words.js';
import { type TableShape, tableShapes } from '../../src/operations/verify/table-shapes.query.js';
import { type Actor, systemActor } from '../../src/platform/actor.js';
import { type AuditLink, hashOfLink } from '../../src/platform/audit/audit-log.js';
import { rowDigest, type WrittenRow } from '../../src/platform/audit/row-digest.js';
import { canonicalJson } from '../../src/platform/canonical-json.js';
import { openSnapshot } from '../../src/platform/database/snapshot.js';
import { Lot } from '../../src/stock/lot.entity.js';
import { Attacker, type Cell } from '../support/attacker.js';
import { inTransaction } from '../support/bare-stock.js';
import { exportLog } from '../support/exported-log.js';
import { type DataPlace, databasePlace, type PlainRow, type PlainValue } from '../support/plain-sql.js';
import { propertySettings } from '../support/property-settings.js';
import { copyOfRecord } from '../support/record-copy.js';
import { type RunningService, startService, type TestedEngine, usualEngine } from '../support/service.js';
import { StockedStudio } from '../support/stocked-studio.js';
import { Store } from '../support/store.js';
import { markedTexts } from '../support/whole-life/texts.js';
import { liveWholeLife } from '../support/whole-life/whole-life.js';

/** Held against something else than an audit entry: entries against their hashes, heads and balances against sums. */
const coveredOtherwise = ['audit_entry', 'audit_head', 'balance'];
/** That a delivery was tried is no part of the record. */
const stateOfDelivery = ['state', 'attempts', 'begun', 'next_attempt_at', 'last_error', 'settled_at'];

async function verified(place: DataPlace, heads: RememberedHead[] = []): Promise<VerifyReport> {
  const snapshot = await openSnapshot(databasePlace(place));
  try {
    return await checkRecord(snapshot, { heads, unreadable: [] });
  } finally {
    await snapshot.close();
  }
}

function isCovered(table: string, column: string): boolean {
  if (table in uncoveredTables && !coveredOtherwise.includes(table)) return false;
  return !(table === 'outbox' && stateOfDelivery.includes(column));
}

/** The columns by which the attacker finds a row again. */
function keyOf(shape: KeyShape, row: PlainRow): PlainRow {
  const columns = shape.owner === null ? [shape.key] : [shape.owner, shape.key];
  return Object.fromEntries(columns.map((column) => [column, row[column] ?? null]));
}

type KeyShape = Pick<TableShape, 'owner' | 'key'>;

/** Of the tables that are covered otherwise. */
const otherKeys: Record<string, KeyShape> = {
  audit_entry: { owner: 'studio_id', key: 'sequence' },
  audit_head: { owner: null, key: 'studio_id' },
  balance: { owner: 'studio_id', key: 'container_id' },
};

/** The value with one bit of one byte the other way round; what is null becomes something. */
function flipped(value: PlainValue, byte: number, bit: number, isText: boolean): PlainValue | Buffer {
  if (value === null) return isText ? 'x' : 1;
  if (typeof value === 'number') return Number(BigInt(value) ^ (1n << BigInt(bit)));
  if (value === '') return 'x';
  const bytes = Buffer.from(value, 'utf8');
  const at = byte % bytes.length;
  bytes[at] = (bytes[at] ?? 0) ^ (1 << bit);
  return bytes;
}

/** The same where only text may be stored: the last bit of an ASCII character, so that one of them comes out. */
function flippedText(value: PlainValue, isText: boolean): PlainValue {
  if (typeof value !== 'string' || value === '') return flipped(value, 0, 0, isText) as PlainValue;
  const at = [...value].findIndex((character) => character.charCodeAt(0) < 128);
  return value.slice(0, at) + String.fromCharCode(value.charCodeAt(at) ^ 1) + value.slice(at + 1);
}

function names(findings: readonly Finding[], table: string, ids: readonly string[]): boolean {
  return findings.some((finding) => finding.table === table && ids.includes(finding.id ?? ''));
}

/** A studio that lived a whole life, and whose log was exported last. */
async function wholeLife(engine: TestedEngine): Promise<DataPlace> {
  // Nothing listens there: a mail is promised, and nobody gets it.
  const environment = { SMTP_URL: 'smtp://127.0.0.1:9', MAIL_FROM: 'orders@lotward.example' };
  const service = await startService(engine, { environment });
  await liveWholeLife(service, markedTexts('Larkmoor'));
  await askInVain(service);
  await addPasskey(service);
  await addSummary(service);
  await exportLog(service);
  await service.stop();
  const { dataFolder, databaseUrl } = service;
  return { dataFolder, databaseUrl };
}

/** Somebody wants what is not there. */
async function askInVain(service: RunningService): Promise<void> {
  const productId = await new StockedStudio(service).product({ name: 'Slate' });
  const [artist] = await service.seen<{ id: string }[]>('/people');
  const [procedure] = await service.seen<{ id: string }[]>('/procedures');
  const session = await service.made<{ id: string }>('/sessions/walk-in', {
    client: { name: 'Nora Feld' },
    artistId: artist?.id,
    procedureId: procedure?.id,
    visitKind: 'first session',
  });
  await service.made(`/sessions/${session.id}/scans`, { productId });
}

/** A passkey, which only a browser with an authenticator can make: its row, written as the service writes it. */
async function addPasskey({ dataFolder, databaseUrl, studioId }: RunningService): Promise<void> {
  const store = await Store.open(dataFolder, databaseUrl);
  const actor = systemActor({ id: studioId, chainId: '', timeZone: 'UTC' });
  const account = await store.database.reader.manager.findOneByOrFail(Account, { studioId });
  await inTransaction(store, actor, (transaction) =>
    transaction.insert(Passkey, {
      studioId,
      id: uuidv7(),
      accountId: account.id,
      credentialId: 'AAECAw',
      publicKey: 'pQECAyYg',
      relyingParty: 'localhost',
      transports: ['internal'],
      nameSealed: 'sealed',
      version: 1,
      createdAt: transaction.recordedAt,
      suspectedAt: null,
      removedAt: null,
    }),
  );
  await store.close();
}

/** A summary of a morning, which only time brings: its row, written as the service writes it. */
async function addSummary({ dataFolder, databaseUrl, studioId }: RunningService): Promise<void> {
  const store = await Store.open(dataFolder, databaseUrl);
  const { personId, ...studio } = await store.ownerOf(studioId);
  await inTransaction(store, { ...studio, personId: null, via: 'system' }, (transaction) =>
    transaction.insert(MorningSummary, {
      studioId,
      id: uuidv7(),
      personId: personId ?? '',
      day: '2026-06-15',
      content: { day: '2026-06-15', parts: [] },
      createdAt: transaction.recordedAt,
    }),
  );
  await store.close();
}

interface Attempt {
  cell: Cell;
  other: PlainValue | Buffer;
  /** By what a finding may name the row: as it was, and as it became. */
  ids: string[];
  /** Whether the row is still the same one, so that nothing else is wrong. */
  isSameRow: boolean;
}

describe.each(usualEngine)(
  'a record that somebody changed past the service, on %s',
  { timeout: 300_000 },
  (engine) => {
    let original: DataPlace;
    let place: DataPlace;
    let attacker: Attacker;

    beforeAll(async () => {
      original = await wholeLife(engine);
      expect((await verified(original)).findings).toEqual([]);
    });

    afterAll(() => {
      if (original) rmSync(original.dataFolder, { recursive: true, force: true });
    });

    beforeEach(async () => {
      place = await copyOfRecord(original);
      attacker = await Attacker.at(place);
    });

    afterEach(async () => {
      await attacker?.close();
      if (place) rmSync(place.dataFolder, { recursive: true, force: true });
    });

    /** Every cell that is covered, with a row of which table it is. */
    async function coveredCells(): Promise<{ cell: Cell; row: PlainRow; isText: boolean }[]> {
      const cells: { cell: Cell; row: PlainRow; isText: boolean }[] = [];
      const snapshot = await openSnapshot(databasePlace(place));
      const shapes = new Map((await tableShapes(snapshot)).map((shape) => [shape.name, shape]));
      await snapshot.close();
      for (const table of await attacker.sql.tables()) {
        const shape = otherKeys[table] ?? shapes.get(table);
        if (!shape) continue;
        const types = new Map((await attacker.sql.columns(table)).map(({ name, type }) => [name, type]));
        for (const row of await attacker.sql.rows(`SELECT * FROM "${table}"`)) {
          for (const [column, value] of Object.entries(row)) {
            if (!isCovered(table, column)) continue;
            const cell = { table, key: keyOf(shape, row), column, value };
            cells.push({ cell, row, isText: types.get(column) === 'text' });
          }
        }
      }
      return cells;
    }

    function attempt(cell: Cell, row: PlainRow, other: PlainValue | Buffer): Attempt {
      const { column, key } = cell;
      const after = Buffer.isBuffer(other) ? other.toString('utf8') : other;
      const [named = ''] = Object.keys(key).slice(-1);
      const ids = [row, { ...row, [column]: after }].map((state) => String(state[named]));
      return { cell, other, ids, isSameRow: !(column in key) };
    }

    /** What is not seen of some attempts made at once; the record is put back. */
    async function unseen(attempts: readonly Attempt[]): Promise<string[]> {
      const putBack = [];
      for (const { cell, other } of attempts) putBack.push(await attacker.overwrite(cell, other));
      const { findings } = await verified(place);
      for (const undo of putBack) await undo();
      const isFirst = attempts.length === 1 && attempts[0]?.isSameRow;
      return attempts
        .filter(({ cell, ids }) => !names(isFirst ? findings.slice(0, 1) : findings, cell.table, ids))
        .map(({ cell }) => `${cell.table}.${cell.column}: ${findings[0]?.message ?? 'nothing was found'}`);
    }

    it('has a row in every covered table, so that none goes untried', async () => {
      const filled = new Set((await coveredCells()).map(({ cell }) => cell.table));
      const tables = await attacker.sql.tables();
      expect(tables.filter((table) => isCovered(table, '') && !filled.has(table))).toEqual([]);
    });

    it('shows whichever column of whichever table was changed, and names the row', async () => {
      // Each column once where it holds something, and once where it is null.
      const kinds = new Map<string, Attempt>();
      for (const { cell, row, isText } of await coveredCells()) {
        const kind = `${cell.table}.${cell.column}${cell.value === null ? ' null' : ''}`;
        if (!kinds.has(kind)) kinds.set(kind, attempt(cell, row, flippedText(cell.value, isText)));
      }
      expect(kinds.size).toBeGreaterThan(300);
      const faults: string[] = [];
      for (const attempts of inRounds([...kinds.values()], engine)) faults.push(...(await unseen(attempts)));
      expect(faults).toEqual([]);
      expect((await verified(place)).findings).toEqual([]);
    });

    it.runIf(engine === 'sqlite')('shows any bit of any byte of any cell', async () => {
      const cells = await coveredCells();
      await fc.assert(
        fc.asyncProperty(fc.nat(), fc.nat(), fc.nat(7), async (which, byte, bit) => {
          const chosen = cells[which % cells.length];
          if (!chosen) throw new Error('Nothing is covered.');
          const { cell, row, isText } = chosen;
          try {
            expect(await unseen([attempt(cell, row, flipped(cell.value, byte, bit, isText))])).toEqual([]);
          } catch (error) {
            // Two rows of one key: the database itself refuses.
            fc.pre(!/UNIQUE constraint failed/.test(String(error)));
            throw error;
          }
        }),
        propertySettings('any bit of any byte', 100),
      );
    });

    const one = async (table: string, where = 'TRUE'): Promise<PlainRow> => {
      const [row] = await attacker.sql.rows(`SELECT * FROM "${table}" WHERE ${where} LIMIT 1`);
      if (!row) throw new Error(`There is no such row of ${table}.`);
      return row;
    };
    const found = async (heads: RememberedHead[] = []) => {
      const { findings } = await verified(place, heads);
      return findings.map(({ message }) => message);
    };

    it.each([
      ['movement', "kind = 'wasted'"],
      ['scan', 'TRUE'],
      ['person', "role = 'artist'"],
      ['hold', 'lot_id IS NOT NULL'],
    ])('shows a row of %s that was removed', async (table, where) => {
      const { id = '' } = await one(table, where);
      await attacker.run(`DELETE FROM "${table}" WHERE id = $1`, [id]);
      expect((await found())[0]).toMatch(
        new RegExp(`^${table} ${id} of .* is gone; audit entry \\d+ .* was the last`),
      );
    });

    it('shows a row that was put in', async () => {
      await attacker.run(
        `INSERT INTO lot_code (studio_id, id, lot_id, kind, code, recorded_at)
       SELECT studio_id, 'slipped in', id, 'lot', 'L9', created_at FROM lot LIMIT 1`,
      );
      expect((await found())[0]).toMatch(
        /^lot_code slipped in of .* is in no audit entry: it was put there past/,
      );
    });

    it('shows a whole table that was dropped', async () => {
      const { id } = await one('mix_component');
      await attacker.run('DROP TABLE mix_component');
      const all = await found();
      expect(all.filter((message) => message.startsWith(`mix_component ${id} of `))).toHaveLength(1);
    });

    it('shows two balances that were swapped', async () => {
      const fullest = (form: string) =>
        attacker.sql.rows(
          `SELECT container_id, balance.pieces FROM balance JOIN container ON container.id = balance.container_id
         WHERE form = $1 AND state NOT IN ('finished', 'discarded') ORDER BY balance.pieces DESC LIMIT 1`,
          [form],
        );
      const [[fuller], [emptier]] = [await fullest('box'), await fullest('bottle')];
      const set = (row: PlainRow | undefined, pieces: PlainValue | undefined) =>
        attacker.run('UPDATE balance SET pieces = $1 WHERE container_id = $2', [
          pieces ?? 0,
          row?.container_id ?? '',
        ]);
      await set(fuller, emptier?.pieces);
      await set(emptier, fuller?.pieces);
      const all = await found();
      for (const row of [fuller, emptier]) {
        expect(
          all.some((message) => message.startsWith(`The balance of container ${row?.container_id}`)),
        ).toBe(true);
      }
      expect(
        all.some((message) => /^Of product .* pieces .* on hand; the ledger comes to/.test(message)),
      ).toBe(true);
    });

    it('shows two movements that were given the place of each other in the ledger', async () => {
      const [first, second] = await attacker.sql.rows(
        'SELECT id, sequence FROM movement ORDER BY sequence LIMIT 2',
      );
      const set = (row: PlainRow | undefined, sequence: PlainValue | undefined) =>
        attacker.run('UPDATE movement SET sequence = $1 WHERE id = $2', [sequence ?? 0, row?.id ?? '']);
      await set(first, 1_000_000);
      await set(second, first?.sequence);
      await set(first, second?.sequence);
      const all = await found();
      expect(all).toHaveLength(2);
      expect(all.join(' ')).toMatch(
        new RegExp(`movement ${first?.id} .* has the number ${second?.sequence}, but audit`),
      );
    });

    it('shows a row that was changed, even after the service changed it again', async () => {
      const { studio_id, id, version } = await one('lot', "code IS NOT NULL AND origin = 'delivery'");
      await attacker.run("UPDATE lot SET use_by = '2099-01-01' WHERE id = $1", [id ?? '']);
      const store = await Store.open(place.dataFolder, place.databaseUrl);
      const actor = systemActor({ id: String(studio_id), chainId: '', timeZone: 'UTC' });
      await inTransaction(store, actor, (transaction) =>
        transaction.change(Lot, 'lot', { studioId: actor.studioId, id: String(id) }, Number(version), {
          manufacturedOn: '2024-01-01',
        }),
      );
      await store.close();
      expect(await found()).toEqual([
        expect.stringMatching(
          new RegExp(`^lot ${id} of .* was not as audit entry .* had left it when audit entry .* changed it`),
        ),
      ]);
    });

    it('shows a row that stands as an earlier entry left it', async () => {
      const { id, code } = await one('lot', "code LIKE '%read again%'");
      await attacker.run("UPDATE lot SET code = 'forged' WHERE id = $1", [id ?? '']);
      expect((await found())[0]).toMatch(/left it\.$/);
      await attacker.run('UPDATE lot SET code = $1 WHERE id = $2', [code ?? null, id ?? '']);
      expect(await found()).toEqual([]);
    });

    /** The end of the chain of the studio in which most happened. */
    const head = async (): Promise<RememberedHead> => {
      const [row] = await attacker.sql.rows(
        'SELECT studio_id, sequence, hash FROM audit_head ORDER BY sequence DESC',
      );
      return {
        from: 'the log kept elsewhere',
        studioId: String(row?.studio_id),
        sequence: Number(row?.sequence),
        hash: String(row?.hash),
      };
    };
    const setHead = ({ studioId, sequence, hash }: Omit<RememberedHead, 'from'>) =>
      attacker.run('UPDATE audit_head SET sequence = $1, hash = $2 WHERE studio_id = $3', [
        sequence,
        hash,
        studioId,
      ]);

    it('shows a head that was edited', async () => {
      const end = await head();
      await setHead({ ...end, hash: 'f'.repeat(64) });
      expect(await found()).toEqual([
        expect.stringMatching(/^The head of the audit chain .* another hash than its last/),
      ]);
      await setHead({ ...end, sequence: end.sequence + 3 });
      expect(await found()).toEqual([
        expect.stringMatching(/names entry \d+, but the last entry is \d+\. The end .* cut off/),
      ]);
    });

    it('shows an end that was cut off by what remembers the head, and by nothing else', async () => {
      const end = await head();
      // The last entry is that of an export: no row tells of it.
      const before = await one(
        'audit_entry',
        `studio_id = '${end.studioId}' AND sequence = ${end.sequence - 1}`,
      );
      await attacker.run('DELETE FROM audit_entry WHERE studio_id = $1 AND sequence = $2', [
        end.studioId,
        end.sequence,
      ]);
      await setHead({ studioId: end.studioId, sequence: end.sequence - 1, hash: String(before.hash) });
      expect(await found()).toEqual([]);
      expect(await found([end])).toEqual([
        `The audit chain of studio ${end.studioId} ends with entry ${end.sequence - 1}, but the log kept elsewhere knows entry ${end.sequence}: its end was cut off, or an older backup was restored.`,
      ]);
    });

    it('shows a chain that was computed anew by what remembers the head, and by nothing else', async () => {
      const end = await head();
      const waste = await one('movement', "kind = 'wasted' AND reason IS NOT NULL");
      const forged = { ...waste, reason: 'it was never there' };
      await attacker.run('UPDATE movement SET reason = $1 WHERE id = $2', [forged.reason, waste.id ?? '']);
      const digest = rowDigest('movement', forged);
      await computeAnew(attacker, end.studioId, ({ rows, ...notes }) => ({
        ...notes,
        rows: rows.map((row) => (row.id === waste.id ? { ...row, digest } : row)),
      }));
      expect(await found()).toEqual([]);
      expect(await found([end])).toEqual([
        expect.stringMatching(
          /^Audit entry \d+ of studio .* is another one than the log kept elsewhere knows/,
        ),
      ]);
    });

    it('takes entries of earlier versions, which told less of their rows', async () => {
      for (const { studio_id } of await attacker.sql.rows('SELECT studio_id FROM audit_head')) {
        await computeAnew(attacker, String(studio_id), ({ rows, ...notes }) => ({
          ...notes,
          rows: rows
            // That a level was removed did not stand among the rows; other tables lose no rows, or came later.
            .filter(({ table, digest }) => digest !== null || table !== 'stock_level')
            .map(({ table, id, studioId, digest }) => ({ table, id, digest, ...(studioId && { studioId }) })),
        }));
      }
      expect(await found()).toEqual([]);
    });

    it('shows an entry whose own hash was computed anew', async () => {
      const { studioId } = await head();
      const entry = await one('audit_entry', `studio_id = '${studioId}' AND sequence = 5`);
      const forged = { ...linkOf(entry), action: 'stock.nothing' };
      await attacker.run(
        'UPDATE audit_entry SET action = $1, hash = $2 WHERE studio_id = $3 AND sequence = 5',
        [forged.action, hashOfLink(forged), studioId],
      );
      expect(await found()).toEqual([
        `Audit entry 6 of studio ${studioId} does not follow on from the entry before it.`,
      ]);
    });

    it.each([
      ['hold', 'lot_id IS NOT NULL', 'note'],
      ['studio', "name LIKE '%studio'", 'name'],
    ])('shows a row of %s that the chain of another studio accounts for', async (table, where, column) => {
      const row = await one(table, where);
      const forged = { ...row, [column]: 'never mind' };
      const store = await Store.open(place.dataFolder, place.databaseUrl);
      const other = await store.makeStudio();
      await store.close();
      await attacker.run(`UPDATE "${table}" SET "${column}" = 'never mind' WHERE id = $1`, [row.id ?? '']);
      const written = { table, id: row.id, before: rowDigest(table, row), digest: rowDigest(table, forged) };
      await append(other, [written]);
      const changed = expect.stringMatching(new RegExp(`^${table} ${row.id} .*is not as audit entry`));
      const all = await found();
      expect(all[0]).toEqual(changed);
      expect(all.length).toBeGreaterThan(1);
    });

    it('shows an entry that names a row of another studio, and does not believe it', async () => {
      const row = await one('hold', 'lot_id IS NOT NULL');
      const forged = { ...row, note: 'never mind' };
      const store = await Store.open(place.dataFolder, place.databaseUrl);
      const other = await store.makeStudio();
      await store.close();
      await attacker.run("UPDATE hold SET note = 'never mind' WHERE id = $1", [row.id ?? '']);
      const digests = { before: rowDigest('hold', row), digest: rowDigest('hold', forged) };
      await append(other, [{ table: 'hold', id: row.id, studioId: row.studio_id, ...digests }]);
      expect(await found()).toEqual([
        expect.stringMatching(
          /^Audit entry \d+ of .* does not say, or not as entries may, which rows it wrote/,
        ),
        expect.stringMatching(new RegExp(`^hold ${row.id} of ${row.studio_id} is not as audit entry`)),
      ]);
    });

    /** Appends an entry that is right in itself to a studio's chain. */
    async function append({ studioId, personId }: Actor, rows: object[]): Promise<void> {
      const [end] = await attacker.sql.rows('SELECT sequence, hash FROM audit_head WHERE studio_id = $1', [
        studioId,
      ]);
      const link: AuditLink = {
        studioId,
        sequence: Number(end?.sequence) + 1,
        recordedAt: '2026-03-01T09:30:00.000Z',
        personId,
        via: 'api',
        action: 'stock.nothing',
        subjectKind: 'nothing',
        subjectId: studioId,
        payload: canonicalJson({ rows }),
        previousHash: String(end?.hash),
      };
      const hash = hashOfLink(link);
      const columns = Object.keys({ ...link, hash }).map((name) =>
        name.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`),
      );
      await attacker.run(
        `INSERT INTO audit_entry (${columns.join(', ')}) VALUES (${columns.map((_, index) => `$${index + 1}`).join(', ')})`,
        Object.values({ ...link, hash }),
      );
      await setHead({ studioId, sequence: link.sequence, hash });
    }

    it('shows an entry whose list of rows cannot be read', async () => {
      const { studioId } = await head();
      await attacker.run('UPDATE audit_entry SET payload = $1 WHERE studio_id = $2 AND sequence = 5', [
        '{}',
        studioId,
      ]);
      const all = await found();
      expect(all.slice(0, 2)).toEqual([
        expect.stringMatching(/^Audit entry 5 .* its hash is not that of its content/),
        expect.stringMatching(/^Audit entry 5 .* does not say, or not as entries may, which rows it wrote/),
      ]);
    });
  },
);

/**
 * In the soak all of them one by one, unless each look takes its time; else as many tables at once as there are. What
 * becomes another row, or what others hang on, is always alone.
 */
function inRounds(attempts: readonly Attempt[], engine: TestedEngine): Attempt[][] {
  const isOneByOne = process.env.SOAK !== undefined && engine === 'sqlite';
  const isAlone = ({ cell, isSameRow }: Attempt) =>
    isOneByOne || !isSameRow || ['audit_entry', 'balance', 'chain', 'studio'].includes(cell.table);
  const rounds: Attempt[][] = [];
  for (const attempt of attempts) {
    const round = isAlone(attempt)
      ? undefined
      : rounds.find((some) =>
          some.every((other) => !isAlone(other) && other.cell.table !== attempt.cell.table),
        );
    if (round) round.push(attempt);
    else rounds.push([attempt]);
  }
  return rounds;
}

function linkOf(row: PlainRow): AuditLink {
  const camel = (name: string) => name.replace(/_([a-z])/g, (_, letter: string) => letter.toUpperCase());
  const { hash: _, ...link } = Object.fromEntries(
    Object.entries(row).map(([name, value]) => [camel(name), value]),
  );
  return link as unknown as AuditLink;
}

interface Payload {
  rows: WrittenRow[];
}

/** What a patient forger does: changes what entries say, and computes every hash after it. */
async function computeAnew(
  { sql }: Attacker,
  studioId: string,
  change: (payload: Payload) => Payload,
): Promise<void> {
  let previousHash = '0'.repeat(64);
  let sequence = 0;
  const entries = await sql.rows('SELECT * FROM audit_entry WHERE studio_id = $1 ORDER BY sequence', [
    studioId,
  ]);
  for (const row of entries) {
    const payload = canonicalJson(change(JSON.parse(String(row.payload)) as Payload));
    const link = { ...linkOf(row), payload, previousHash };
    previousHash = hashOfLink(link);
    sequence = link.sequence;
    await sql.rows(
      'UPDATE audit_entry SET payload = $1, previous_hash = $2, hash = $3 WHERE studio_id = $4 AND sequence = $5',
      [link.payload, link.previousHash, previousHash, studioId, sequence],
    );
  }
  await sql.rows('UPDATE audit_head SET hash = $1 WHERE studio_id = $2', [previousHash, studioId]);
}
