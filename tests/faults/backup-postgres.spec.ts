import { copyFileSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { Acknowledgements, backupsIn } from '../support/backups.js';
import { CommandsInTurn } from '../support/commands.js';
import { inconsistencies } from '../support/consistency.js';
import { InstalledPostgres, installedPostgres } from '../support/installed-postgres.js';
import {
  allMigrations,
  makeOlderRecord,
  migrationsApplied,
  olderMigrations,
} from '../support/older-record.js';
import { PlainSql } from '../support/plain-sql.js';
import { SeededRandom } from '../support/random.js';
import { makeSampleStudio } from '../support/sample-studio.js';
import { engines, makePostgresDatabase, type RunningService, startService } from '../support/service.js';
import { StudioLoad } from '../support/studio-load.js';
import { until } from '../support/waiting.js';

const programs = installedPostgres();
if (programs === undefined) {
  const missing =
    'the system has no PostgreSQL with server and client (on Debian: apt-get install postgresql)';
  if (process.env.CI) throw new Error(`Backups of PostgreSQL cannot be tested: ${missing}.`);
  process.stdout.write(`\nSKIPPED: backups of PostgreSQL, since ${missing}\n\n`);
}

function isOlderThan(version: number): boolean {
  return programs !== undefined && Number(basename(dirname(programs))) < version;
}

/** The drill of a lost machine on the server and the client that the system's package manager installs. */
describe.skipIf(programs === undefined)('a record in PostgreSQL', { timeout: 240_000 }, () => {
  const random = SeededRandom.ofThisRun();
  const away = mkdtempSync(join(tmpdir(), 'lotward-away-'));
  const backupFolder = join(away, 'backups');
  const keyFile = join(away, 'copy of the keys.json');
  let postgres: InstalledPostgres;
  let settings: Record<string, string>;
  let service: RunningService;
  let acknowledged: Acknowledgements;
  const commands = new CommandsInTurn();
  /** What a command says, which succeeds. */
  const output = async (parameters: readonly string[], environment: Record<string, string>) => {
    const result = await commands.run(parameters, environment);
    expect(result).toMatchObject({ code: 0 });
    return result.out;
  };

  beforeAll(async () => {
    process.stdout.write(`backup drill on PostgreSQL: SEED=${random.seed}\n`);
    postgres = await InstalledPostgres.start(programs ?? '');
    settings = { BACKUP_DIR: backupFolder, POSTGRES_CLIENT_DIR: postgres.programs, BACKUP_KEEP: '50' };
    const databaseUrl = await postgres.makeDatabase('lost');
    service = await startService('postgres', {
      databaseUrl,
      environment: { ...settings, BACKUP_EVERY_HOURS: '0.001' },
    });
    const { dataFolder } = service;
    const load = new StudioLoad(service, await makeSampleStudio(service), random);
    acknowledged = new Acknowledgements(load);
    const working = load.run(4);
    await until('some work', () => load.acknowledged.length > 60 || undefined);
    await output(['backup'], { ...settings, DATA_DIR: dataFolder, DATABASE_URL: databaseUrl });
    const byCommand = backupsIn(backupFolder).at(-1)?.name ?? '';
    await until('a scheduled backup after the one by command', () =>
      backupsIn(backupFolder).find(({ name }) => name.endsWith('scheduled') && name > byCommand),
    );
    copyFileSync(join(dataFolder, 'master-keys.json'), keyFile);
    copyFileSync(join(dataFolder, 'token-of-tests'), join(away, 'token-of-tests'));
    await service.stop('SIGKILL');
    acknowledged.stop();
    await working;
    rmSync(dataFolder, { recursive: true });
  }, 240_000);

  afterAll(async () => {
    commands.end();
    await postgres?.stop();
    rmSync(away, { recursive: true });
  });

  const backupMade = (reason: string) => {
    const backup = backupsIn(backupFolder).findLast(({ name }) => name.endsWith(reason));
    if (!backup) throw new Error(`There is no backup made ${reason}.`);
    return backup;
  };

  it.each(['by-command', 'scheduled'])(
    'is there again from its last backup made %s, with everything acknowledged before that began and nothing by halves',
    async (reason) => {
      const backup = backupMade(reason);
      expect(backup.manifest).toMatchObject({ engine: 'postgres', files: [{ name: 'database.dump' }] });
      const before = acknowledged.before(backup.manifest.madeAt);
      expect(before.length).toBeGreaterThan(20);
      const databaseUrl = await postgres.makeDatabase(`restored_${reason.replace('-', '_')}`);
      const dataFolder = join(away, `restored ${reason}`);
      const told = await output(['restore', backup.folder, '--into', dataFolder, '--keys', keyFile], {
        ...settings,
        DATABASE_URL: databaseUrl,
      });
      expect(told).toContain('Everything fits together.');
      copyFileSync(join(away, 'token-of-tests'), join(dataFolder, 'token-of-tests'));
      const restored = await startService('postgres', { dataFolder, databaseUrl });
      try {
        const sql = await PlainSql.connect(restored, 'read');
        const requests = new Set(
          (await sql.rows<{ id: string }>('SELECT id FROM accepted_request')).map(({ id }) => id),
        );
        expect(before.filter(({ body }) => !requests.has(body.id))).toEqual([]);
        expect(await inconsistencies(sql)).toEqual([]);
        await sql.close();
        const people = await restored.seen<{ name: string }[]>('/people');
        expect(people.map(({ name }) => name)).toContain('Owner');
        await restored.made('/people', { name: 'Vera Holm', role: 'artist' });
      } finally {
        await restored.stop();
      }
    },
  );

  it('is restored only into an empty database', async () => {
    const databaseUrl = await postgres.makeDatabase('used');
    const sql = await PlainSql.connect({ dataFolder: '', databaseUrl }, 'write');
    await sql.rows('CREATE TABLE notes (text TEXT)');
    await sql.close();
    const into = join(away, 'fresh');
    const { folder } = backupMade('by-command');
    const failed = await commands.run(['restore', folder, '--into', into, '--keys', keyFile], {
      ...settings,
      DATABASE_URL: databaseUrl,
    });
    expect(failed.code).toBe(1);
    expect(failed.err).toContain('is not empty: there is a table public.notes');
    expect(existsSync(into)).toBe(false);
  });

  it('is not restored from a dump with one changed byte', async () => {
    const { folder } = backupMade('by-command');
    const file = join(folder, 'database.dump');
    const whole = readFileSync(file);
    const changed = Buffer.from(whole);
    const middle = whole.length >> 1;
    changed.writeUInt8(whole.readUInt8(middle) ^ 1, middle);
    writeFileSync(file, changed);
    const databaseUrl = await postgres.makeDatabase('untouched');
    const failed = await commands.run(['restore', folder, '--into', join(away, 'fresh'), '--keys', keyFile], {
      ...settings,
      DATABASE_URL: databaseUrl,
    });
    writeFileSync(file, whole);
    expect([failed.code, failed.err]).toEqual([1, expect.stringContaining('database.dump was changed')]);
    const sql = await PlainSql.connect({ dataFolder: '', databaseUrl }, 'read');
    expect(await sql.tables()).toEqual([]);
    await sql.close();
  });

  it('is not backed up without its client, which is said with what to install', async () => {
    const failed = await commands.run(['backup'], {
      ...settings,
      DATA_DIR: away,
      DATABASE_URL: await postgres.makeDatabase('alone'),
      POSTGRES_CLIENT_DIR: away,
    });
    expect(failed.code).toBe(1);
    expect(failed.err).toContain(`pg_dump was not found in ${away}, which POSTGRES_CLIENT_DIR names.`);
    expect(failed.err).toContain('postgresql-client');
    expect(failed.err).not.toContain('a%20secret');
  });

  it('is brought up to date only after a backup, and not at all without one', async () => {
    const dataFolder = join(away, 'older');
    const databaseUrl = await postgres.makeDatabase('older');
    await makeOlderRecord({ dataFolder, databaseUrl });
    const environment = { ...settings, DATA_DIR: dataFolder, DATABASE_URL: databaseUrl };
    const refused = await commands.run(['people'], { ...environment, POSTGRES_CLIENT_DIR: away });
    expect([refused.code, refused.err]).toEqual([1, expect.stringContaining('not without a backup')]);
    expect(refused.err).toContain('pg_dump was not found');
    expect(await migrationsApplied({ dataFolder, databaseUrl })).toEqual(olderMigrations);

    await output(['people'], environment);
    expect(backupMade('before-migration').manifest.migrations).toEqual(olderMigrations);
    expect(await migrationsApplied({ dataFolder, databaseUrl })).toEqual(allMigrations);
  });

  // The server that comes with the packages is newer than what most systems install.
  it.skipIf(!engines.includes('postgres') || !isOlderThan(18))(
    'is not backed up by a client older than its server',
    async () => {
      const failed = await commands.run(['backup'], {
        ...settings,
        DATA_DIR: away,
        DATABASE_URL: await makePostgresDatabase(),
      });
      expect(failed.code).toBe(1);
      expect(failed.err).toMatch(
        /pg_dump is of PostgreSQL \d+, and the server of PostgreSQL \d+\. Install the client/,
      );
      expect(backupsIn(backupFolder).length).toBeGreaterThan(1);
    },
  );
});
