import { copyFileSync, mkdtempSync, readFileSync, rmSync, utimesSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readConfig } from '../../src/platform/config.js';
import { MasterKeys } from '../../src/platform/encryption/master-keys.js';
import { backupsIn } from '../support/backups.js';
import { CommandsInTurn, runCommand, settingsOf } from '../support/commands.js';
import { inconsistencies } from '../support/consistency.js';
import { PlainSql } from '../support/plain-sql.js';
import { SeededRandom } from '../support/random.js';
import { makeSampleStudio } from '../support/sample-studio.js';
import { type RunningService, startService, usualEngine } from '../support/service.js';
import { StudioLoad } from '../support/studio-load.js';
import { until, wait } from '../support/waiting.js';

const tablesOfKeys = ['data_key', 'service_key', 'studio_key'];

const commands = new CommandsInTurn();
afterAll(() => commands.end());

/** What a command of them says, which succeeds. */
async function output(parameters: readonly string[], environment: Record<string, string>): Promise<string> {
  const result = await commands.run(parameters, environment);
  expect(result).toMatchObject({ code: 0 });
  return result.out;
}

/** As if the last rotation were long over: before that, dropping waits for writes that might still use an older key. */
function setLongAgo(keyFile: string): void {
  const longAgo = new Date(Date.now() - 60_000);
  utimesSync(keyFile, longAgo, longAgo);
}

describe.each(usualEngine)('the rotation of the master key on %s', { timeout: 240_000 }, (engine) => {
  const random = SeededRandom.ofThisRun();
  let service: RunningService;
  let environment: Record<string, string>;
  let keyFile: string;

  beforeAll(async () => {
    process.stdout.write(`rotation: SEED=${random.seed}\n`);
    service = await startService(engine);
    environment = settingsOf(service);
    keyFile = readConfig({ DATA_DIR: service.dataFolder }).masterKeyFile;
  });

  afterAll(() => service.dispose());

  const rotate = (...options: string[]) => output(['rotate-master-key', ...options], environment);
  const currentKey = () => MasterKeys.load(keyFile, false).currentId;

  async function bySql<Result>(look: (sql: PlainSql) => Promise<Result>): Promise<Result> {
    const sql = await PlainSql.connect(service, 'read');
    try {
      return await look(sql);
    } finally {
      await sql.close();
    }
  }

  /** How many keys each master key wraps, in all tables that hold any. */
  const wrapped = () =>
    bySql(async (sql) => {
      const counts: Record<string, number> = {};
      for (const table of await sql.tables()) {
        const columns = await sql.columns(table);
        if (!columns.some(({ name }) => name === 'wrapped_key')) continue;
        expect(tablesOfKeys, 'a table of keys that no test knows').toContain(table);
        const rows = await sql.rows<{ id: string; count: number }>(
          `SELECT master_key_id AS id, count(*) AS count FROM ${table} WHERE wrapped_key IS NOT NULL GROUP BY master_key_id`,
        );
        for (const { id, count } of rows) counts[id] = (counts[id] ?? 0) + count;
      }
      return counts;
    });

  const names = async () =>
    (await service.seen<{ name: string }[]>('/people')).map(({ name }) => name).sort();

  /** Adds people, each with a key of their own. */
  async function addPeople(count: number): Promise<void> {
    const all = Array.from({ length: count }, (_, index) => `Person ${index}`);
    while (all.length > 0) {
      await Promise.all(all.splice(0, 20).map((name) => service.made('/people', { name, role: 'artist' })));
    }
  }

  it('goes on beside a service under load, which wraps by the new key from then on', async () => {
    const old = currentKey();
    const load = new StudioLoad(service, await makeSampleStudio(service), random);
    // Throws when the service answers that something went wrong on its side.
    const working = load.run(3);
    await wait(1_000);
    const told = await rotate();
    const current = currentKey();
    expect(current).not.toBe(old);
    expect(told).toContain(`The new master key ${current} is the current one in ${keyFile}`);
    expect(told).toContain('Copy the file now');
    expect(told).toContain(old);
    const before = load.acknowledged.length;
    await until('work that went on', () => load.acknowledged.length > before + 10 || undefined);
    await service.stop('SIGKILL');
    await working;
    // What took the old key for the current one just then may be wrapped by it still; the next call sees to that.
    const counts = await wrapped();
    expect(counts[current]).toBeGreaterThan(3);
    expect(await bySql(inconsistencies)).toEqual([]);

    service = await startService(engine, {
      dataFolder: service.dataFolder,
      databaseUrl: service.databaseUrl,
    });
    await service.made('/people', { name: 'Vera Holm', role: 'artist' });
    expect(await names()).toContain('Vera Holm');
    expect(await names()).toContain('Owner');
  });

  it('drops the old keys only on demand, and only when nothing is wrapped by them', async () => {
    const everybody = await names();
    const old = MasterKeys.load(keyFile, false).ids;
    await rotate();
    const current = currentKey();
    expect(MasterKeys.load(keyFile, false).ids).toEqual(expect.arrayContaining([...old, current]));
    setLongAgo(keyFile);
    const told = await rotate('--drop-old');
    expect(told).toContain(`Dropped from ${keyFile}: ${old.join(', ')}.`);
    expect(MasterKeys.load(keyFile, false).ids).toEqual([current]);
    expect(await names()).toEqual(everybody);
    await service.made('/people', { name: 'Ida Holm', role: 'artist' });
    expect(await names()).toEqual([...everybody, 'Ida Holm'].sort());
    setLongAgo(keyFile);
    expect(await rotate('--drop-old')).toContain('There was no older key to drop');
  });

  it('carries on where it was killed, with everything readable meanwhile', async () => {
    await addPeople(500);
    const everybody = await names();
    let broken: { current: string; counts: Record<string, number> } | undefined;
    for (let attempt = 0; attempt < 5 && broken === undefined; attempt += 1) {
      let kill: (signal: NodeJS.Signals) => void = () => undefined;
      const running = runCommand(['rotate-master-key'], {
        environment,
        started: (killing) => {
          kill = killing;
        },
      });
      let ended = false;
      void running.finally(() => {
        ended = true;
      });
      await until('a first batch', async () => ended || Object.keys(await wrapped()).length > 1 || undefined);
      kill('SIGKILL');
      await running;
      const counts = await wrapped();
      if (Object.keys(counts).length > 1) broken = { current: currentKey(), counts };
    }
    if (broken === undefined) throw new Error('The rotation was never met in its middle.');
    expect(await names()).toEqual(everybody);
    expect(await bySql(inconsistencies)).toEqual([]);

    const told = await rotate();
    expect(told).toContain('A rotation that was broken off was finished');
    const total = Object.values(broken.counts).reduce((sum, count) => sum + count, 0);
    expect(await wrapped()).toEqual({ [broken.current]: total });
    expect(currentKey()).toBe(broken.current);
    expect(await names()).toEqual(everybody);

    expect(await rotate()).toContain('The new master key');
    expect(await wrapped()).toEqual({ [currentKey()]: total });
    expect(await bySql(inconsistencies)).toEqual([]);
  });
});

describe('a backup from before a rotation', () => {
  it('is readable with the old key, and no more once that was dropped, which is said', async () => {
    const service = await startService('sqlite');
    const environment = { DATA_DIR: service.dataFolder };
    const keyFile = join(service.dataFolder, 'master-keys.json');
    const away = mkdtempSync(join(tmpdir(), 'lotward-away-'));
    const oldCopy = join(away, 'old copy of the keys.json');
    try {
      copyFileSync(keyFile, oldCopy);
      const { current: old } = JSON.parse(readFileSync(keyFile, 'utf8')) as { current: string };
      await output(['backup'], environment);
      const [backup] = backupsIn(join(service.dataFolder, 'backups'));
      const restore = (into: string, keys: string) =>
        commands.run(['restore', backup?.folder ?? '', '--into', join(away, into), '--keys', keys]);

      await output(['rotate-master-key'], environment);
      expect(await restore('with both keys', keyFile)).toMatchObject({ code: 0 });

      setLongAgo(keyFile);
      const told = await output(['rotate-master-key', '--drop-old'], environment);
      expect(told).toContain(`can be restored only with an older copy of the key file:\n  ${backup?.name}`);
      const refused = await restore('with the new key', keyFile);
      expect(refused).toMatchObject({ code: 1, err: expect.stringContaining(`lacks ${old}`) });
      expect(refused.err).toContain('A key that was dropped on purpose does not come back');

      expect(await restore('with the old key', oldCopy)).toMatchObject({ code: 0 });
      const people = await output(['people'], { DATA_DIR: join(away, 'with the old key') });
      expect(people).toContain('Owner');
    } finally {
      await service.dispose();
      rmSync(away, { recursive: true });
    }
  }, 120_000);
});
