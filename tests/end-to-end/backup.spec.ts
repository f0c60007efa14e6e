import { once } from 'node:events';
import {
  copyFileSync,
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  truncateSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { backUpBeforeMigrating } from '../../src/operations/backup/before-migration.service.js';
import { digestOf } from '../../src/platform/canonical-json.js';
import { readConfig } from '../../src/platform/config.js';
import { backupsIn } from '../support/backups.js';
import { CommandsInTurn, commandOutput, runCommand } from '../support/commands.js';
import {
  allMigrations,
  makeOlderRecord,
  migrationsApplied,
  olderMigrations,
} from '../support/older-record.js';
import { PlainSql } from '../support/plain-sql.js';
import { type RunningService, startInFolder, startProcess, startService } from '../support/service.js';
import { until } from '../support/waiting.js';

interface Status {
  lastGoodAt: string | null;
  kept: number;
  keptAtMost: number;
  nextDueAt: string | null;
  lastFailure: { at: string; cause: string } | null;
}

/** Nothing but zeros, which take no time to write. */
function makeLargeFile(file: string, bytes: number): void {
  writeFileSync(file, '');
  truncateSync(file, bytes);
}

const temporaryFolder = () => mkdtempSync(join(tmpdir(), 'lotward-backup-'));

describe('backups of a running service', () => {
  let service: RunningService;
  let away: string;
  let environment: { DATA_DIR: string; BACKUP_DIR: string };

  beforeAll(async () => {
    service = await startService('sqlite');
  });

  beforeEach(() => {
    away = temporaryFolder();
    environment = { DATA_DIR: service.dataFolder, BACKUP_DIR: join(away, 'backups') };
    return () => rmSync(away, { recursive: true });
  });

  const inTurn = new CommandsInTurn();
  afterAll(() => {
    inTurn.end();
    return service.dispose();
  });

  const backUp = async (given: Record<string, string>): Promise<string> => {
    const { code, out, err } = await inTurn.run(['backup'], given);
    expect([code, err]).toEqual([0, '']);
    return out;
  };

  it('hold the database, the files beside it and where the audit chains ended, for the owner of the folder only', async () => {
    const filesFolder = join(service.dataFolder, 'files');
    mkdirSync(join(filesFolder, '2026'), { recursive: true });
    writeFileSync(join(filesFolder, '2026', 'letter of advice.pdf'), 'not much');
    writeFileSync(join(filesFolder, 'empty'), '');

    const told = await commandOutput(['backup'], { environment });
    const [backup, ...more] = backupsIn(environment.BACKUP_DIR);
    expect(more).toEqual([]);
    expect(told).toContain(backup?.folder);
    expect(backup?.manifest.files.map(({ name, bytes }) => [name, bytes])).toEqual([
      ['database.sqlite', expect.any(Number)],
      ['files/2026/letter of advice.pdf', 8],
      ['files/empty', 0],
    ]);
    const sql = await PlainSql.connect(service, 'read');
    const [head] = await sql.rows<{ sequence: number }>('SELECT sequence FROM audit_head');
    await sql.close();
    expect(backup?.manifest.heads).toEqual([
      { studioId: service.studioId, sequence: head?.sequence, hash: expect.stringMatching(/^[0-9a-f]{64}$/) },
    ]);
    const names = readdirSync(backup?.folder ?? '', { recursive: true }).map(String);
    expect(names.some((name) => name.includes('master-keys'))).toBe(false);
    for (const name of ['.', ...names]) {
      expect(statSync(join(backup?.folder ?? '', name)).mode & 0o077, name).toBe(0);
    }
    rmSync(filesFolder, { recursive: true });
  });

  it('are told of by the service, whoever made them', async () => {
    const folder = join(service.dataFolder, 'backups');
    const before = await service.seen<Status>('/backups');
    expect(before).toMatchObject({ lastGoodAt: null, kept: 0, keptAtMost: 14, lastFailure: null });
    await backUp({ DATA_DIR: service.dataFolder });
    const [backup] = backupsIn(folder);
    const after = await service.seen<Status>('/backups');
    expect(after).toMatchObject({ lastGoodAt: backup?.manifest.madeAt, kept: 1 });
    const due = Date.parse(backup?.manifest.madeAt ?? '') + 24 * 3_600_000;
    expect(after.nextDueAt).toBe(new Date(due).toISOString());
    rmSync(folder, { recursive: true });
  });

  it('are kept so many, and nothing is removed that no backup made', async () => {
    const folder = environment.BACKUP_DIR;
    const strange = [
      'holiday.jpg',
      '20200101T000000Z-scheduled',
      '20200101T000000Z-by-hand',
      'erasures.jsonl',
    ];
    mkdirSync(folder);
    writeFileSync(join(folder, 'holiday.jpg'), 'sea');
    writeFileSync(join(folder, 'erasures.jsonl'), '');
    for (const name of strange.filter((each) => each.startsWith('2020'))) {
      mkdirSync(join(folder, name));
      writeFileSync(join(folder, name, 'note.txt'), 'mine');
    }
    const keepTwo = { ...environment, BACKUP_KEEP: '2' };
    const made: string[] = [];
    const told: string[] = [];
    for (let count = 0; count < 3; count += 1) {
      told.push(await backUp(keepTwo));
      made.push(...readdirSync(folder).filter((name) => !strange.includes(name) && !made.includes(name)));
    }
    expect(made).toHaveLength(3);
    expect(readdirSync(folder).sort()).toEqual([...strange, ...made.slice(1)].sort());
    expect(told[2]).toContain(`Removed the older ${made[0]}.`);
  });

  it('leave nothing by halves when the disk is full, and say so', async () => {
    await backUp(environment);
    const before = readdirSync(environment.BACKUP_DIR);
    const failed = await runCommand(['backup'], { environment, largestFileKibibytes: 200 });
    expect(failed.code).toBe(1);
    expect(failed.err).toMatch(
      /^The backup could not be made: the disk (does not take more|takes no larger file)\. /,
    );
    expect(failed.err).not.toContain('    at ');
    expect(readdirSync(environment.BACKUP_DIR)).toEqual(before);
  });

  it('are refused where the folder cannot be written to, with what to do', async () => {
    writeFileSync(join(away, 'a file'), '');
    const failed = await inTurn.run(['backup'], {
      ...environment,
      BACKUP_DIR: join(away, 'a file', 'backups'),
    });
    expect(failed.code).toBe(1);
    expect(failed.err).toContain('The backup could not be made: a part of its path is no folder.');
    expect(failed.err).toContain('it must be a folder that Lotward may write to');
  });

  it('are not made of nothing: a wrong data folder is told', async () => {
    const failed = await inTurn.run(['backup'], { DATA_DIR: join(away, 'elsewhere') });
    expect([failed.code, failed.err]).toEqual([1, expect.stringContaining('there is no database.')]);
    expect(existsSync(join(away, 'elsewhere'))).toBe(false);
  });

  it('that are killed leave the older ones good, and what they left is removed later', async () => {
    const folder = environment.BACKUP_DIR;
    await backUp(environment);
    const [good] = readdirSync(folder);
    // Large enough that the copying can be met.
    const filesFolder = join(service.dataFolder, 'files');
    mkdirSync(filesFolder);
    makeLargeFile(join(filesFolder, 'large'), 300_000_000);
    let kill: (signal: NodeJS.Signals) => void = () => undefined;
    const running = runCommand(['backup'], {
      environment,
      started: (killing) => {
        kill = killing;
      },
    });
    const unfinished = await until('an unfinished backup that is copying', () =>
      readdirSync(folder).find(
        (name) => name.endsWith('.unfinished') && existsSync(join(folder, name, 'files', 'large')),
      ),
    );
    kill('SIGKILL');
    expect((await running).code).toBe(null);
    rmSync(filesFolder, { recursive: true });
    expect(readdirSync(folder).sort()).toEqual([good, unfinished].sort());
    expect(backupsIn(folder).map(({ name }) => name)).toEqual([good]);

    // It might still be at work: only one that was not touched for long is taken for dead.
    await backUp(environment);
    expect(readdirSync(folder)).toContain(unfinished);
    const longAgo = new Date(Date.now() - 2 * 3_600_000);
    utimesSync(join(folder, unfinished), longAgo, longAgo);
    await backUp(environment);
    expect(readdirSync(folder)).not.toContain(unfinished);
    expect(readdirSync(folder)).toHaveLength(3);
  });
});

describe('a restore', () => {
  let service: RunningService;
  let away: string;
  let whole: string;
  let keyFile: string;

  beforeAll(async () => {
    service = await startService('sqlite');
    mkdirSync(join(service.dataFolder, 'files'));
    writeFileSync(join(service.dataFolder, 'files', 'letter.txt'), 'Dear Sir or Madam');
    await printed(['backup'], { DATA_DIR: service.dataFolder });
    whole = backupsIn(join(service.dataFolder, 'backups'))[0]?.folder ?? '';
    keyFile = join(service.dataFolder, 'master-keys.json');
  });

  beforeEach(() => {
    away = temporaryFolder();
    return () => rmSync(away, { recursive: true });
  });

  const inTurn = new CommandsInTurn();
  afterAll(() => {
    inTurn.end();
    return service.dispose();
  });

  async function printed(parameters: string[], environment: Record<string, string> = {}): Promise<string> {
    const { code, out, err } = await inTurn.run(parameters, environment);
    expect([code, err]).toEqual([0, '']);
    return out;
  }

  /** A copy of the backup with something done to it. */
  function changed(change: (folder: string) => void): string {
    const folder = join(away, 'backup');
    cpSync(whole, folder, { recursive: true });
    change(folder);
    return folder;
  }

  async function refusal(parameters: string[], environment: Record<string, string> = {}): Promise<string> {
    const into = join(away, 'fresh');
    const { code, err } = await inTurn.run(['restore', '--into', into, ...parameters], environment);
    expect(code).toBe(1);
    expect(err).not.toContain('    at ');
    // Nothing half there.
    expect(existsSync(into)).toBe(false);
    return err;
  }

  it('brings back the database and the files, and asks everybody to sign in again', async () => {
    const into = join(away, 'fresh');
    const told = await commandOutput(['restore', whole, '--into', into, '--keys', keyFile]);
    expect(told).toContain('Everybody has to sign in again');
    expect(readFileSync(join(into, 'files', 'letter.txt'), 'utf8')).toBe('Dear Sir or Madam');
    const sql = await PlainSql.connect({ dataFolder: into }, 'read');
    expect(await sql.rows('SELECT id FROM sign_in WHERE ended_at IS NULL')).toEqual([]);
    const entries = await sql.rows<{ payload: string }>(
      "SELECT payload FROM audit_entry WHERE action = 'record.restore'",
    );
    await sql.close();
    expect(entries).toHaveLength(1);
    expect(JSON.parse(entries[0]?.payload ?? '')).toMatchObject({
      backup: expect.stringMatching(/-by-command$/),
    });
  });

  it('brings back a record with faults too, since there may be no better one, and says so', async () => {
    const [faulty, into] = [join(away, 'faulty'), join(away, 'fresh')];
    await printed(['restore', whole, '--into', faulty, '--keys', keyFile]);
    const sql = await PlainSql.connect({ dataFolder: faulty }, 'write');
    await sql.rows(
      `INSERT INTO place (studio_id, id, name, kind, created_at)
       VALUES ('${service.studioId}', 'by hand', 'Cellar', 'shelf', '2026-01-01T08:00:00.000Z')`,
    );
    await sql.close();
    await printed(['backup'], { DATA_DIR: faulty });
    const backup = backupsIn(join(faulty, 'backups'))[0]?.folder ?? '';
    const { code, out } = await inTurn.run(['restore', backup, '--into', into, '--keys', keyFile]);
    expect(code).toBe(2);
    expect(out).toContain('place by hand');
    expect(out).toContain('It was put into place with these faults');
    expect(existsSync(join(into, 'lotward.sqlite'))).toBe(true);
  });

  it('takes the key file that lies in the folder already', async () => {
    const into = join(away, 'fresh');
    mkdirSync(into);
    copyFileSync(keyFile, join(into, 'master-keys.json'));
    await printed(['restore', whole, '--into', into]);
    expect(await printed(['people'], { DATA_DIR: into })).toContain('Owner');
  });

  it('erases again who was erased since the backup was made, wherever the list of them lies', async () => {
    const add = (name: string) => service.made<{ id: string }>('/clients', { name });
    const [kept, erased] = [await add('Nora Feld'), await add('Mira Anders')];
    await printed(['backup'], { DATA_DIR: service.dataFolder });
    const backup = backupsIn(join(service.dataFolder, 'backups')).at(-1)?.folder ?? '';
    await service.made(`/clients/${erased.id}/erasure`, {
      ground: 'consent withdrawn',
      overrides: ['no legal obligation applies'],
    });
    const restoredClients = async (into: string) => {
      const sql = await PlainSql.connect({ dataFolder: into }, 'read');
      const rows = await sql.rows<{ id: string; erased: number }>(
        `SELECT client.id, data_key.wrapped_key IS NULL AND client.name_sealed IS NULL AS erased
         FROM client JOIN data_key ON data_key.id = client.data_key_id`,
      );
      await sql.close();
      return Object.fromEntries(rows.map(({ id, erased: is }) => [id, is]));
    };

    const beside = join(away, 'beside');
    const told = await printed(['restore', backup, '--into', beside, '--keys', keyFile]);
    expect(told).toContain('Erased again: one client');
    expect(told).toContain('Everything fits together.');
    expect(await restoredClients(beside)).toMatchObject({ [kept.id]: 0, [erased.id]: 1 });
    // The next restore needs to know it too.
    const list = join(service.dataFolder, 'backups', 'erasures.jsonl');
    expect(readFileSync(join(beside, 'backups', 'erasures.jsonl'), 'utf8')).toBe(readFileSync(list, 'utf8'));

    const alone = join(away, 'alone');
    cpSync(backup, alone, { recursive: true });
    const without = await printed(['restore', alone, '--into', join(away, 'a'), '--keys', keyFile]);
    expect(without).toContain('No list of erasures (erasures.jsonl) lies beside the backup.');
    expect(await restoredClients(join(away, 'a'))).toMatchObject({ [erased.id]: 0 });
    const named = join(away, 'b');
    await printed(['restore', alone, '--into', named, '--keys', keyFile, '--erasures', list]);
    expect(await restoredClients(named)).toMatchObject({ [kept.id]: 0, [erased.id]: 1 });
  });

  it.each([
    [
      'cut short',
      'database.sqlite has',
      (folder: string) => truncateSync(join(folder, 'database.sqlite'), 100_000),
    ],
    [
      'with one changed byte',
      'database.sqlite was changed',
      (folder: string) => {
        const file = join(folder, 'database.sqlite');
        const bytes = readFileSync(file);
        bytes.writeUInt8(bytes.readUInt8(70_000) ^ 1, 70_000);
        writeFileSync(file, bytes);
      },
    ],
    [
      'without one of its files',
      'files/letter.txt is missing',
      (folder: string) => rmSync(join(folder, 'files', 'letter.txt')),
    ],
    [
      'without its manifest',
      'is no complete backup',
      (folder: string) => rmSync(join(folder, 'manifest.json')),
    ],
    [
      'with a changed manifest',
      'its digest is not that of its content',
      (folder: string) => {
        const file = join(folder, 'manifest.json');
        writeFileSync(file, readFileSync(file, 'utf8').replace(/"sequence": (\d+)/, '"sequence": 1$1'));
      },
    ],
  ])('refuses a backup %s and names what is wrong', async (_, words, change) => {
    expect(await refusal([changed(change), '--keys', keyFile])).toContain(words);
  });

  it('refuses a backup whose schema is newer than the program', async () => {
    const newer = changed((folder) => {
      const file = join(folder, 'manifest.json');
      const { digest: _, ...manifest } = JSON.parse(readFileSync(file, 'utf8'));
      manifest.migrations.push('Tomorrow9999999999999');
      writeFileSync(file, JSON.stringify({ ...manifest, digest: digestOf(manifest) }));
    });
    expect(await refusal([newer, '--keys', keyFile])).toContain(
      'made by a newer version of Lotward (it has Tomorrow9999999999999)',
    );
  });

  it('refuses to go without the key file, or with one that lacks the key, and names the key', async () => {
    const { current } = JSON.parse(readFileSync(keyFile, 'utf8')) as { current: string };
    expect(await refusal([whole])).toContain(`needs the master keys ${current}, and there is no key file`);
    const other = join(away, 'other-keys.json');
    writeFileSync(
      other,
      JSON.stringify({ current: 'other', keys: { other: Buffer.alloc(32, 7).toString('base64') } }),
    );
    expect(await refusal([whole, '--keys', other])).toContain(`lacks ${current}`);
  });

  it('refuses a folder that holds anything', async () => {
    const into = join(away, 'used');
    mkdirSync(into);
    writeFileSync(join(into, 'lotward.sqlite'), '');
    const { code, err } = await inTurn.run(['restore', whole, '--into', into, '--keys', keyFile]);
    expect([code, err]).toEqual([1, expect.stringContaining('is not empty: there is lotward.sqlite')]);
    expect(readdirSync(into)).toEqual(['lotward.sqlite']);
  });

  it('refuses to put a backup of SQLite into PostgreSQL', async () => {
    const DATABASE_URL = 'postgresql://nobody@127.0.0.1:9/none';
    expect(await refusal([whole, '--keys', keyFile], { DATABASE_URL })).toContain('Leave DATABASE_URL unset');
  });

  it('leaves the folder as it was when it fails on the way', async () => {
    const into = join(away, 'fresh');
    const failed = await runCommand(['restore', whole, '--into', into, '--keys', keyFile], {
      largestFileKibibytes: 200,
    });
    expect(failed.code).toBe(1);
    expect(readdirSync(into)).toEqual([]);
  });
});

describe('a scheduled backup', () => {
  it('that is under way when the service is stopped is broken off and leaves nothing', async () => {
    const dataFolder = temporaryFolder();
    const filesFolder = join(dataFolder, 'files');
    mkdirSync(filesFolder);
    for (let index = 0; index < 40; index += 1) {
      makeLargeFile(join(filesFolder, `photo ${index}`), 10_000_000);
    }
    const folder = join(dataFolder, 'backups');
    // After 1.8 seconds, again and again.
    const service = await startService('sqlite', {
      dataFolder,
      environment: { BACKUP_EVERY_HOURS: '0.0005' },
    });
    await until('a backup that is copying files', () =>
      existsSync(folder)
        ? readdirSync(folder).find(
            (name) => existsSync(join(folder, name, 'files', 'photo 1')) && name.endsWith('.unfinished'),
          )
        : undefined,
    );
    expect(await service.stop('SIGTERM')).toBe(0);
    expect(readdirSync(folder).filter((name) => name.endsWith('.unfinished'))).toEqual([]);
    expect(service.log.join('')).not.toContain('could not be made');
    await service.dispose();
  });
});

describe('scheduled backups that fail', () => {
  interface AlertRow {
    kind: string;
    facts: Record<string, unknown>;
    closedAt: string | null;
  }

  it('are logged and open an alert, which the next good one closes', async () => {
    const away = temporaryFolder();
    const blocked = join(away, 'blocked');
    writeFileSync(blocked, '');
    // Every 1.8 seconds.
    const service = await startService('sqlite', {
      environment: { BACKUP_DIR: join(blocked, 'backups'), BACKUP_EVERY_HOURS: '0.0005' },
    });
    const alerts = async () =>
      (await service.seen<{ items: AlertRow[] }>('/alerts')).items.filter(({ kind }) =>
        kind.startsWith('backup'),
      );
    try {
      // Where the machine is slow, one that is overdue may stand beside it already.
      const failed = await until('an alert', async () =>
        (await alerts()).find(({ kind }) => kind === 'backup failed'),
      );
      expect(failed).toMatchObject({
        kind: 'backup failed',
        facts: { cause: 'a part of its path is no folder', lastGoodAt: null },
        closedAt: null,
      });
      expect(service.log.join('')).toContain(
        'The backup could not be made: a part of its path is no folder.',
      );
      expect(await service.seen<Status>('/backups')).toMatchObject({
        lastGoodAt: null,
        lastFailure: { cause: 'a part of its path is no folder' },
      });
      await until('an overdue backup', async () => {
        await service.made('/alerts/sweep');
        return (await alerts()).find(({ kind }) => kind === 'backup overdue');
      });

      rmSync(blocked);
      await until('the end of the alerts', async () =>
        (await alerts()).every(({ closedAt }) => closedAt !== null) ? true : undefined,
      );
      expect(await service.seen<Status>('/backups')).toMatchObject({ kept: 1, lastFailure: null });
    } finally {
      await service.dispose();
      rmSync(away, { recursive: true });
    }
  });
});

describe('an update of the schema', () => {
  it('is made only after a backup of the record as it was', async () => {
    const dataFolder = temporaryFolder();
    await makeOlderRecord({ dataFolder });
    const { child } = await startInFolder(dataFolder);
    child.kill('SIGKILL');
    const backups = backupsIn(join(dataFolder, 'backups'));
    expect(backups.map(({ manifest }) => [manifest.reason, manifest.migrations])).toEqual([
      ['before-migration', olderMigrations],
    ]);
    expect(await migrationsApplied({ dataFolder })).toEqual(allMigrations);
    rmSync(dataFolder, { recursive: true });
  });

  it('that is tried again and again makes no second backup of the same record', async () => {
    const dataFolder = temporaryFolder();
    await makeOlderRecord({ dataFolder });
    const config = readConfig({ DATA_DIR: dataFolder });
    for (let start = 0; start < 3; start += 1) await backUpBeforeMigrating(config, ['Next1']);
    const [backup, ...more] = backupsIn(config.backupFolder);
    expect(more).toEqual([]);
    // One that is damaged will not do.
    truncateSync(join(backup?.folder ?? '', 'database.sqlite'), 10);
    await backUpBeforeMigrating(config, ['Next1']);
    expect(backupsIn(config.backupFolder)).toHaveLength(2);
    // Nor one of an older state.
    const sql = await PlainSql.connect({ dataFolder }, 'write');
    const hash = 'cd'.repeat(32);
    await sql.rows(
      `INSERT INTO audit_entry SELECT studio_id, 2, recorded_at, NULL, via, action, subject_kind, subject_id, payload, hash, '${hash}' FROM audit_entry`,
    );
    await sql.rows(`UPDATE audit_head SET sequence = 2, hash = '${hash}'`);
    await sql.close();
    await backUpBeforeMigrating(config, ['Next1']);
    expect(backupsIn(config.backupFolder)).toHaveLength(3);
    rmSync(dataFolder, { recursive: true });
  });

  it('is refused when that backup cannot be made, and changes nothing', async () => {
    const dataFolder = temporaryFolder();
    await makeOlderRecord({ dataFolder });
    writeFileSync(join(dataFolder, 'backups'), 'in the way');
    const { code, err } = await runCommand(['people'], { environment: { DATA_DIR: dataFolder } });
    expect(code).toBe(1);
    expect(err).toContain('but not without a backup, so nothing was changed.');
    expect(err).toContain('a file is in the way of the folder. BACKUP_DIR is ');
    expect(err).not.toContain('    at ');
    expect(await migrationsApplied({ dataFolder })).toEqual(olderMigrations);
    rmSync(dataFolder, { recursive: true });
  });

  it('of an empty database makes none', async () => {
    const { child, dataFolder } = await startProcess();
    expect(existsSync(join(dataFolder, 'backups'))).toBe(false);
    child.kill('SIGKILL');
    await once(child, 'exit');
    rmSync(dataFolder, { recursive: true });
  });
});
