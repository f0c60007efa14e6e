import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import BetterSqlite3 from 'better-sqlite3';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { copySqlite } from '../../src/operations/backup/sqlite-copy.service.js';
import { allMigrations, makeOlderRecord, olderMigrations } from '../support/older-record.js';

const filledMegabytes = 60;
const longestMilliseconds = 20_000;

/** Writes without a pause until it is told to stop, and tells how often it has written. */
const writer = `
  import BetterSqlite3 from 'better-sqlite3';
  const database = new BetterSqlite3(process.argv[1], { timeout: 10000 });
  const write = database.prepare('UPDATE filling SET count = count + 1 WHERE id = 1');
  process.stdout.write('writing');
  setInterval(() => { for (let index = 0; index < 50; index += 1) write.run(); }, 0);
`;

describe('the copy of an SQLite database', () => {
  const dataFolder = mkdtempSync(join(tmpdir(), 'lotward-copy-'));
  const source = join(dataFolder, 'lotward.sqlite');

  beforeAll(async () => {
    await makeOlderRecord({ dataFolder });
    const database = new BetterSqlite3(source);
    database.exec('CREATE TABLE filling (id INTEGER PRIMARY KEY, count INTEGER NOT NULL, text TEXT)');
    const fill = database.prepare('INSERT INTO filling (count, text) VALUES (0, ?)');
    database.transaction(() => {
      for (let index = 0; index < filledMegabytes; index += 1) fill.run('x'.repeat(1_000_000));
    })();
    database.close();
  });

  afterAll(() => rmSync(dataFolder, { recursive: true }));

  it('comes to its end while another process writes without a pause, and stands by itself', async () => {
    const writing = spawn(process.execPath, ['--input-type=module', '-e', writer, source], {
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    await once(writing.stdout, 'data');
    const look = new BetterSqlite3(source, { readonly: true, timeout: 10_000 });
    const count = () =>
      (look.prepare('SELECT count FROM filling WHERE id = 1').get() as { count: number }).count;
    try {
      const target = join(dataFolder, 'copy.sqlite');
      const before = count();
      const abort = AbortSignal.timeout(longestMilliseconds);
      const facts = await copySqlite(source, target, abort);
      const after = count();
      expect(facts).toEqual({
        migrations: olderMigrations,
        heads: [{ studioId: 'studio', sequence: 1, hash: 'ab'.repeat(32) }],
        masterKeyIds: [],
      });
      expect(allMigrations.length).toBeGreaterThan(olderMigrations.length);
      const copy = new BetterSqlite3(target, { readonly: true });
      const copied = (copy.prepare('SELECT count FROM filling WHERE id = 1').get() as { count: number })
        .count;
      copy.close();
      expect(copied).toBeGreaterThanOrEqual(before);
      expect(after).toBeGreaterThan(copied);
      expect(readdirSync(dataFolder).filter((name) => name.startsWith('copy'))).toEqual(['copy.sqlite']);
    } finally {
      look.close();
      writing.kill('SIGKILL');
      await once(writing, 'exit');
    }
  });

  it.each([
    [
      'a head that is not the end of its chain',
      `UPDATE audit_head SET hash = '${'cd'.repeat(32)}'`,
      'does not end with entry 1',
    ],
    [
      'a row that refers to what is not there',
      "INSERT INTO studio_key VALUES ('nobody', 'a', 'b')",
      'of studio_key refers to what is not there',
    ],
  ])('is refused for %s', async (_, damage, words) => {
    const database = new BetterSqlite3(source);
    database.pragma('foreign_keys = OFF');
    database.exec(`SAVEPOINT before; ${damage}; RELEASE before`);
    database.close();
    const target = join(dataFolder, `damaged ${words}.sqlite`);
    await expect(copySqlite(source, target, undefined)).rejects.toMatchObject({
      code: 'DAMAGED_RECORD',
      message: expect.stringContaining(words),
    });
  });
});
