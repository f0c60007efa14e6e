import { copyFileSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { Acknowledgements, backupsIn } from '../support/backups.js';
import { commandOutput } from '../support/commands.js';
import { inconsistencies } from '../support/consistency.js';
import { PlainSql } from '../support/plain-sql.js';
import { SeededRandom } from '../support/random.js';
import { makeSampleStudio } from '../support/sample-studio.js';
import { type RunningService, startService } from '../support/service.js';
import { type SentWrite, StudioLoad } from '../support/studio-load.js';
import { until, wait } from '../support/waiting.js';

const millisecondsOfWork = process.env.SOAK ? 60_000 : 500;
const workers = 4;

async function missingRows(sql: PlainSql, writes: readonly SentWrite[]): Promise<SentWrite[]> {
  const missing: SentWrite[] = [];
  for (const write of writes) {
    const rows = await sql.rows(`SELECT id FROM "${write.leaves.table}" WHERE id = $1`, [write.leaves.id]);
    const requests = await sql.rows('SELECT id FROM accepted_request WHERE id = $1', [write.body.id]);
    if (rows.length !== 1 || requests.length !== 1) missing.push(write);
  }
  return missing;
}

/** The drill of a lost machine: what is left is the folder of backups on another disk, and a copy of the key file. */
describe('a service that is lost while people write', () => {
  const random = SeededRandom.ofThisRun();
  const away = mkdtempSync(join(tmpdir(), 'lotward-away-'));
  const backupFolder = join(away, 'backups');
  const keyFile = join(away, 'copy of the keys.json');
  let service: RunningService;
  let acknowledged: Acknowledgements;

  beforeAll(async () => {
    process.stdout.write(`backup drill: SEED=${random.seed}\n`);
    // Every 3.6 seconds.
    const environment = { BACKUP_DIR: backupFolder, BACKUP_EVERY_HOURS: '0.001', BACKUP_KEEP: '50' };
    service = await startService('sqlite', { environment });
    const load = new StudioLoad(service, await makeSampleStudio(service), random);
    acknowledged = new Acknowledgements(load);
    const working = load.run(workers);
    await until('some work', () => load.acknowledged.length > 60 || undefined);
    await wait(millisecondsOfWork);
    const { dataFolder } = service;
    await commandOutput(['backup'], {
      environment: { DATA_DIR: dataFolder, BACKUP_DIR: backupFolder, BACKUP_KEEP: '50' },
    });
    const byCommand = backupsIn(backupFolder).at(-1)?.name ?? '';
    await until('a scheduled backup after the one by command', () =>
      backupsIn(backupFolder).find(({ name }) => name.endsWith('scheduled') && name > byCommand),
    );
    await wait(200);
    copyFileSync(join(dataFolder, 'master-keys.json'), keyFile);
    copyFileSync(join(dataFolder, 'token-of-tests'), join(away, 'token-of-tests'));
    await service.stop('SIGKILL');
    acknowledged.stop();
    await working;
    rmSync(dataFolder, { recursive: true });
  });

  afterAll(() => rmSync(away, { recursive: true }));

  it.each(['by-command', 'scheduled'])(
    'is there again from its last backup made %s, with everything acknowledged before that began and nothing by halves',
    async (reason) => {
      const backup = backupsIn(backupFolder).findLast(({ name }) => name.endsWith(reason));
      if (!backup) throw new Error(`There is no backup made ${reason}.`);
      const before = acknowledged.before(backup.manifest.madeAt);
      expect(before.length).toBeGreaterThan(20);

      const dataFolder = join(away, `restored ${reason}`);
      const told = await commandOutput(['restore', backup.folder, '--into', dataFolder, '--keys', keyFile]);
      expect(told).toContain('Everything fits together.');
      expect(told).toContain(`DATA_DIR=${dataFolder} npm start`);
      copyFileSync(join(away, 'token-of-tests'), join(dataFolder, 'token-of-tests'));

      const restored = await startService('sqlite', { dataFolder });
      try {
        const sql = await PlainSql.connect(restored, 'read');
        expect(await missingRows(sql, before)).toEqual([]);
        expect(await inconsistencies(sql)).toEqual([]);
        await sql.close();
        // The acknowledgement itself is kept, so whoever repeats a request is told the same.
        for (const write of before.slice(-5)) {
          const again = await restored.post(write.path, write.body);
          expect({ status: again.status, body: again.body }).toEqual({
            status: write.answer?.status,
            body: write.answer?.body,
          });
        }
        const people = await restored.seen<{ name: string }[]>('/people');
        expect(people.map(({ name }) => name)).toContain('Owner');
        // And it goes on from there.
        await restored.made('/people', { name: 'Vera Holm', role: 'artist' });
      } finally {
        await restored.stop();
      }
    },
  );
});
