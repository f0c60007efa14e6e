import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { inconsistencies } from '../support/consistency.js';
import { PlainSql } from '../support/plain-sql.js';
import { SeededRandom } from '../support/random.js';
import { startService } from '../support/service.js';

const kills = process.env.SOAK ? 200 : 6;
const longestStartMilliseconds = 1_500;

/** Starts the service on a folder and kills it after a while, wherever it then is. */
async function startAndKill(dataFolder: string, milliseconds: number): Promise<void> {
  const child = spawn(process.execPath, ['dist/service/main.js'], {
    env: { PATH: process.env.PATH, TZ: 'UTC', PORT: '0', DATA_DIR: dataFolder },
    stdio: 'ignore',
  });
  const ended = once(child, 'exit');
  setTimeout(() => child.kill('SIGKILL'), milliseconds);
  await ended;
}

describe('a service that is killed during its first start', () => {
  const random = SeededRandom.ofThisRun();
  process.stdout.write(`kill during the first start: SEED=${random.seed}\n`);

  it.each(Array.from({ length: kills }, (_, index) => index + 1))(
    'starts the next time with one studio and a whole record: kill %i',
    async () => {
      const dataFolder = mkdtempSync(join(tmpdir(), 'lotward-test-'));
      await startAndKill(dataFolder, random.between(100, longestStartMilliseconds));
      const service = await startService('sqlite', { dataFolder });
      const sql = await PlainSql.connect(service, 'read');
      expect(await inconsistencies(sql)).toEqual([]);
      expect(await sql.rows('SELECT id FROM studio')).toEqual([{ id: service.studioId }]);
      expect(await sql.rows('SELECT role FROM person')).toEqual([{ role: 'owner' }]);
      await sql.close();
      // Names are readable only when the key file and the database belong together.
      expect(await service.seen('/people')).toMatchObject([{ name: 'Owner' }]);
      await service.dispose();
    },
  );
});
