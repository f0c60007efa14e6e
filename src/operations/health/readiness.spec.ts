import { Logger } from '@nestjs/common';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Database } from '../../platform/database/database.js';
import { ProcessRole } from '../../platform/process-role.js';
import { Readiness } from './readiness.service.js';

function readiness(read: () => Promise<object[]>, role = new ProcessRole(true)): Promise<boolean> {
  const writer = { migrations: [{ name: 'First1' }, { name: 'Second2' }] };
  return new Readiness({ read, writer } as unknown as Database, role).isReady();
}

describe('the readiness of the service', () => {
  beforeAll(() => Logger.overrideLogger(false));
  afterAll(() => Logger.overrideLogger(['log', 'warn', 'error']));

  it('is there when the database answers with the schema of this version', async () => {
    expect(await readiness(async () => [{ name: 'Second2' }])).toBe(true);
  });

  it.each([
    ['fails', () => Promise.reject(new Error('the connection was refused'))],
    ['does not answer in time', () => new Promise<object[]>(() => undefined)],
    ['has no schema', async () => []],
    ['has the schema of an older version', async () => [{ name: 'First1' }]],
    ['has the schema of a newer version', async () => [{ name: 'Third3' }]],
  ])('is not there when the database %s', async (_, read) => {
    expect(await readiness(read)).toBe(false);
  });

  it('is over when the service ends', async () => {
    const role = new ProcessRole(true);
    role.ending = true;
    expect(await readiness(async () => [{ name: 'Second2' }], role)).toBe(false);
  });
});
