import { randomBytes } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Database } from '../database/database.js';
import { DataKeys } from './data-keys.service.js';
import { MasterKeys } from './master-keys.js';
import { seal } from './sealing.js';

/** A database with one data key, which another process may destroy. */
class OneKey {
  questions = 0;
  destroyed = false;

  constructor(
    private readonly masterKeyId: string,
    private readonly wrappedKey: string,
  ) {}

  readonly read = async () => {
    this.questions += 1;
    return [
      { id: 'key', master_key_id: this.masterKeyId, wrapped_key: this.destroyed ? null : this.wrappedKey },
    ];
  };
}

describe('a data key in memory', () => {
  const folder = mkdtempSync(join(tmpdir(), 'lotward-keys-'));
  let row: OneKey;
  let keys: DataKeys;
  beforeEach(() => {
    vi.useFakeTimers({ toFake: ['performance'] });
    const masterKeys = MasterKeys.load(join(folder, 'master-keys.json'), true);
    const { currentId } = masterKeys;
    row = new OneKey(currentId, seal(masterKeys.get(currentId), randomBytes(32), 'data_key:key'));
    keys = new DataKeys(row as unknown as Database, masterKeys);
  });
  afterEach(() => {
    vi.useRealTimers();
    rmSync(folder, { recursive: true, force: true });
  });

  it('is not looked up again within a minute', async () => {
    const first = await keys.sealer('studio', 'key');
    vi.advanceTimersByTime(59_000);
    expect(await keys.sealer('studio', 'key')).toBe(first);
    expect(row.questions).toBe(1);
  });

  it('is gone a minute after another process destroyed it, at the latest', async () => {
    await keys.sealer('studio', 'key');
    row.destroyed = true;
    vi.advanceTimersByTime(60_000);
    expect(await keys.sealer('studio', 'key')).toBeUndefined();
  });

  it('is gone at once also when it was being looked up just then', async () => {
    const lookedUp = keys.sealer('studio', 'key');
    row.destroyed = true;
    keys.forget('studio', 'key');
    await lookedUp;
    expect(await keys.sealer('studio', 'key')).toBeUndefined();
  });

  it('is gone at once when this process destroys it', async () => {
    await keys.sealer('studio', 'key');
    row.destroyed = true;
    keys.forget('studio', 'key');
    expect(await keys.sealer('studio', 'key')).toBeUndefined();
  });
});
