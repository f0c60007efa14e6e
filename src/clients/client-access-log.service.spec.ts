import { beforeEach, describe, expect, it } from 'vitest';
import type { Actor } from '../platform/actor.js';
import type { Clock } from '../platform/clock.js';
import type { Transactions } from '../platform/database/transactions.js';
import type { ClientAccess } from './client-access.entity.js';
import { ClientAccessLog } from './client-access-log.service.js';

const actor = (personId: string, studioId = 'studio'): Actor => ({
  studioId,
  chainId: 'chain',
  timeZone: 'UTC',
  personId,
  via: 'api',
  seesClients: true,
});

/** Writes that end only when they are told to. */
class HeldWrites {
  readonly batches: ClientAccess[][] = [];
  readonly actors: Actor[] = [];
  private readonly ends: { done: () => void; failed: (error: Error) => void }[] = [];

  readonly write = async (by: Actor, _: unknown, work: (transaction: unknown) => Promise<unknown>) => {
    this.actors.push(by);
    await work({
      insert: async (_entity: unknown, rows: ClientAccess[]) => {
        this.batches.push(rows);
      },
    });
    await new Promise<void>((done, failed) => this.ends.push({ done, failed }));
  };

  async end(error?: Error): Promise<void> {
    await turn();
    const next = this.ends.shift();
    if (error) next?.failed(error);
    else next?.done();
    await turn();
  }
}

const turn = () => new Promise((resolve) => setImmediate(resolve));

describe('the log of accesses', () => {
  let now: number;
  let writes: HeldWrites;
  let log: ClientAccessLog;
  beforeEach(() => {
    now = Date.parse('2026-03-10T10:00:00.000Z');
    writes = new HeldWrites();
    const clock = { now: () => new Date(now).toISOString() } as Clock;
    log = new ClientAccessLog(writes as unknown as Transactions, clock);
  });
  const ended = (work: Promise<void>) => {
    const state = { ended: false };
    void work.then(() => {
      state.ended = true;
    });
    return state;
  };

  it('lets nobody read before it is written', async () => {
    const look = ended(log.note(actor('ida'), 'client', ['c1']));
    await turn();
    expect([look.ended, writes.batches.length]).toEqual([false, 1]);
    await writes.end();
    expect(look.ended).toBe(true);
    expect(writes.batches[0]).toMatchObject([
      {
        studioId: 'studio',
        clientId: 'c1',
        personId: 'ida',
        what: 'client',
        accessedAt: '2026-03-10T10:00:00.000Z',
      },
    ]);
    expect(writes.actors[0]).toMatchObject({ personId: null, via: 'system' });
  });

  it('writes all that was asked for meanwhile in one transaction, a studio at a time', async () => {
    const first = log.note(actor('ida'), 'client', ['c1']);
    await turn();
    const others = [
      log.note(actor('ida'), 'client list', ['c1', 'c2', 'c2']),
      log.note(actor('nora'), 'client', ['c1']),
      log.note(actor('nora'), 'client', ['c1']),
    ];
    const elsewhere = log.note(actor('ida', 'other'), 'client', ['c9']);
    await turn();
    expect(writes.batches.map((rows) => rows.map(({ clientId }) => clientId))).toEqual([['c1'], ['c9']]);
    for (let end = 0; end < 3; end += 1) await writes.end();
    await Promise.all([first, ...others, elsewhere]);
    expect(writes.batches.length).toBe(3);
    expect(writes.batches[2]?.map(({ clientId, personId, what }) => [clientId, personId, what])).toEqual([
      ['c1', 'ida', 'client list'],
      ['c1', 'nora', 'client'],
      ['c2', 'ida', 'client list'],
    ]);
  });

  it('takes a look within a minute for the same, and a later one for another', async () => {
    const look = async () => {
      const noted = log.note(actor('ida'), 'client', ['c1']);
      await writes.end();
      await noted;
    };
    await look();
    now += 59_999;
    await look();
    expect(writes.batches.length).toBe(1);
    now += 1;
    await look();
    expect(writes.batches.length).toBe(2);
  });

  it('tells everyone whose look could not be noted, and does not take it for noted', async () => {
    const both = Promise.allSettled([
      log.note(actor('ida'), 'client', ['c1']),
      log.note(actor('nora'), 'client', ['c1']),
    ]);
    await writes.end(new Error('the disk is full'));
    expect((await both).map(({ status }) => status)).toEqual(['rejected', 'rejected']);
    const again = log.note(actor('ida'), 'client', ['c1']);
    await writes.end();
    await again;
    expect(writes.batches.length).toBe(2);
  });
});
