import { spawnSync } from 'node:child_process';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { PlainSql } from '../support/plain-sql.js';
import { engines, type ProblemBody, type RunningService, startService } from '../support/service.js';

describe.each(engines)('the health of the service on %s', (engine) => {
  let service: RunningService;
  beforeAll(async () => {
    service = await startService(engine);
  });
  afterAll(() => service.dispose());

  const ask = async (path: string) => {
    const answer = await fetch(`${service.url}${path}`);
    return { status: answer.status, body: (await answer.json()) as ProblemBody };
  };

  it('is told to anybody, without details', async () => {
    expect(await ask('/health/live')).toEqual({ status: 200, body: { status: 'live' } });
    expect(await ask('/health/ready')).toEqual({ status: 200, body: { status: 'ready', failing: [] } });
  });

  it('is in the description of the API', async () => {
    const { body } = await service.get<{ paths: Record<string, unknown> }>(`${service.url}/api/openapi.json`);
    expect(Object.keys(body.paths)).toEqual(expect.arrayContaining(['/health/live', '/health/ready']));
  });

  it('is what the container is asked for', () => {
    const check = (environment: Record<string, string>) =>
      spawnSync(process.execPath, ['docker/health-check.mjs'], {
        env: { PATH: process.env.PATH, DATA_DIR: service.dataFolder, ...environment },
      }).status;
    const { port } = new URL(service.url);
    expect(check({ PORT: port })).toBe(0);
    expect(check({ PORT: port, HOST: '0.0.0.0' })).toBe(0);
    expect(check({ PORT: '9' })).toBe(1);
  });

  it('is not ready beside a newer version that changed the schema, and says no more', async () => {
    const sql = await PlainSql.connect(service, 'write');
    await sql.rows(
      "INSERT INTO migrations (timestamp, name) VALUES (9999999999999, 'Later9999999999999') RETURNING name",
    );
    const answer = await ask('/health/ready');
    expect([answer.status, answer.body.code]).toEqual([503, 'not-ready']);
    expect(JSON.stringify(answer.body)).not.toMatch(/Later|migration|sqlite|postgres/i);
    expect((await ask('/health/live')).status).toBe(200);
    await sql.rows("DELETE FROM migrations WHERE name = 'Later9999999999999' RETURNING name");
    await sql.close();
    expect((await ask('/health/ready')).status).toBe(200);
  });
});
