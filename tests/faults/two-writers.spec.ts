import { v7 as uuidv7 } from 'uuid';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Actor } from '../../src/platform/actor.js';
import { inconsistencies } from '../support/consistency.js';
import { PlainSql } from '../support/plain-sql.js';
import { SeededRandom } from '../support/random.js';
import { makeSampleStudio } from '../support/sample-studio.js';
import { type RunningService, startService } from '../support/service.js';
import { Store } from '../support/store.js';
import { StudioLoad } from '../support/studio-load.js';
import { wait } from '../support/waiting.js';

const writes = process.env.SOAK ? 1_000 : 60;

describe('a service and another process that write to the same SQLite file', { timeout: 300_000 }, () => {
  let service: RunningService;
  let store: Store;
  let actor: Actor;

  beforeEach(async () => {
    service = await startService('sqlite');
    store = await Store.open(service.dataFolder);
    const [studio] = await store.database.read<{ id: string; chainId: string; timeZone: string }>(
      'SELECT id, chain_id AS "chainId", time_zone AS "timeZone" FROM studio',
    );
    const { id: studioId, chainId, timeZone } = studio ?? { id: '', chainId: '', timeZone: '' };
    actor = { studioId, chainId, timeZone, personId: null, via: 'cli', seesClients: false };
  });

  afterEach(async () => {
    await store.close();
    await service.dispose();
  });

  it('wait for each other: none fails, though each reads before it writes', async () => {
    const random = SeededRandom.ofThisRun();
    process.stdout.write(`two writers: SEED=${random.seed}\n`);
    const load = new StudioLoad(service, await makeSampleStudio(service), random);
    const working = load.run(4);
    for (let index = 0; index < writes; index += 1) {
      const id = uuidv7();
      const request = {
        // Without an id, so that the register of requests does not write first.
        id: null,
        action: 'tests.write-beside',
        subject: { kind: 'studio', id: actor.studioId },
        content: null,
      };
      await store.transactions.write({ ...actor, via: 'system' }, request, async (transaction) => {
        const [head] = await transaction.query<{ sequence: number }>(
          'SELECT sequence FROM audit_head WHERE studio_id = $1',
          [actor.studioId],
        );
        // Time for the service to write in between, if it could.
        await wait(2);
        transaction.note({ id, seen: head?.sequence ?? null });
      });
      // Whoever waits looks now and then only; a writer that never pauses would keep it out.
      await wait(10);
    }
    const acknowledged = load.acknowledged.length;
    await service.stop('SIGKILL');
    await working;
    expect(acknowledged).toBeGreaterThan(10);
    const sql = await PlainSql.connect(service, 'read');
    try {
      const beside = await sql.rows<{ sequence: number; payload: string }>(
        "SELECT sequence, payload FROM audit_entry WHERE action = 'tests.write-beside'",
      );
      expect(beside).toHaveLength(writes);
      // What was read is what the entry follows.
      for (const { sequence, payload } of beside) {
        expect((JSON.parse(payload) as { seen: number }).seen).toBe(sequence - 1);
      }
      expect(await inconsistencies(sql)).toEqual([]);
    } finally {
      await sql.close();
    }
  });
});
