import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { engines, makePostgresDatabase } from '../support/service.js';
import { Store } from '../support/store.js';

/** Nothing answers there. */
const redisAway = 'redis://127.0.0.1:9';
const deadlineMilliseconds = 30_000;

function startWorker(environment: Record<string, string>) {
  return spawnSync(process.execPath, ['dist/service/worker.js'], {
    env: { PATH: process.env.PATH, ...environment },
    encoding: 'utf8',
    timeout: deadlineMilliseconds,
  });
}

describe('a worker', () => {
  it('does not start without PostgreSQL and Redis, and says why', () => {
    const { status, stderr } = startWorker({});
    expect(status).toBe(1);
    expect(stderr).toContain('DATABASE_URL is not set');
    expect(stderr).toContain('REDIS_URL is not set');
    expect(startWorker({ REDIS_URL: redisAway }).stderr).toMatch(
      /With SQLite the service delivers by itself/,
    );
  });
});

describe.runIf(engines.includes('postgres'))('a worker beside a schema that is not its own', () => {
  let folder: string;
  let url: string;

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'lotward-worker-'));
    url = await makePostgresDatabase();
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  const refusal = () => {
    const { status, stderr } = startWorker({ DATA_DIR: folder, DATABASE_URL: url, REDIS_URL: redisAway });
    expect(status).toBe(1);
    return stderr;
  };

  it('changes nothing and ends: the service brings the schema up to date', async () => {
    expect(refusal()).toMatch(/schema of an older version .* Start the service of this version first/);
    expect(existsSync(join(folder, 'master-keys.json'))).toBe(false);
    const store = await Store.open(folder, url);
    await store.transactions.aside((query) =>
      query(`INSERT INTO migrations (timestamp, name) VALUES (9000000000000, 'Later9000000000000')`),
    );
    await store.close();
    expect(refusal()).toMatch(/written by a newer version of Lotward/);
  });
});
