import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import fc from 'fast-check';
import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AuditEntry } from '../../src/platform/audit/audit-entry.entity.js';
import { firstPreviousHash, hashOfLink } from '../../src/platform/audit/audit-log.js';
import type { Transaction } from '../../src/platform/database/transaction.js';
import { Ledger } from '../../src/stock/ledger.service.js';
import { Place } from '../../src/stock/place.entity.js';
import { type BareStock, insertContainer, inTransaction, makeBareStock } from '../support/bare-stock.js';
import { propertySettings } from '../support/property-settings.js';
import { engines, makePostgresDatabase } from '../support/service.js';
import { Store } from '../support/store.js';

class Thrown extends Error {}

describe.each(engines)('transactions on %s', (engine) => {
  let store: Store;
  let folder: string;
  let stock: BareStock;

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'lotward-transactions-'));
    store = await Store.open(folder, engine === 'postgres' ? await makePostgresDatabase() : undefined);
    stock = await makeBareStock(store);
  });
  afterAll(async () => {
    await store.close();
    rmSync(folder, { recursive: true, force: true });
  });

  const insertPlace = (transaction: Transaction, id: string) =>
    transaction.insert(Place, {
      studioId: transaction.studioId,
      id,
      name: id,
      kind: 'shelf',
      createdAt: transaction.recordedAt,
      archivedAt: null,
    });
  const placesAmong = async (ids: readonly string[]) => {
    const rows = await store.database.read<{ id: string }>('SELECT id FROM place WHERE studio_id = $1', [
      stock.actor.studioId,
    ]);
    const known = new Set(rows.map(({ id }) => id));
    return ids.filter((id) => known.has(id));
  };

  it('leaves exactly what was acknowledged, however many run at once and some of them throw', async () => {
    /** Rows that one write inserts, how long it dawdles between them, and after which row it throws. */
    const plan = fc.record({
      pauses: fc.array(fc.integer({ min: 0, max: 2 }), { minLength: 1, maxLength: 4 }),
      throwsAfter: fc.option(fc.nat(3), { nil: null, freq: 2 }),
    });
    await fc.assert(
      fc.asyncProperty(fc.array(plan, { minLength: 2, maxLength: 12 }), async (plans) => {
        const writes = plans.map(({ pauses, throwsAfter }) => {
          const ids = pauses.map(() => uuidv7());
          const done = inTransaction(store, stock.actor, async (transaction) => {
            for (const [row, pause] of pauses.entries()) {
              await insertPlace(transaction, ids[row] ?? '');
              await wait(pause);
              if (row === throwsAfter) throw new Thrown();
            }
          });
          return { ids, done };
        });
        const settled = await Promise.allSettled(writes.map(({ done }) => done));
        const acknowledged = writes.flatMap(({ ids }, write) =>
          settled[write]?.status === 'fulfilled' ? ids : [],
        );
        for (const each of settled) {
          if (each.status === 'rejected') expect(each.reason).toBeInstanceOf(Thrown);
        }
        const all = writes.flatMap(({ ids }) => ids);
        expect((await placesAmong(all)).sort()).toEqual(acknowledged.sort());
      }),
      propertySettings(`transactions on ${engine}`, 25),
    );
  }, 600_000);

  it('shows no reader what is not committed', async () => {
    const id = uuidv7();
    let seenInside: string[] | undefined;
    await inTransaction(store, stock.actor, async (transaction) => {
      await insertPlace(transaction, id);
      seenInside = await placesAmong([id]);
    });
    expect(seenInside).toEqual([]);
    expect(await placesAmong([id])).toEqual([id]);
  });

  it('carries out a request once, however often it arrives at the same time', async () => {
    const id = uuidv7();
    let carriedOut = 0;
    const answers = await Promise.all(
      Array.from({ length: 8 }, () =>
        store.transactions.write(
          stock.actor,
          { id, action: 'test.once', subject: { kind: 'place', id }, content: { name: 'once' } },
          async (transaction) => {
            carriedOut += 1;
            await insertPlace(transaction, id);
            return { order: carriedOut };
          },
        ),
      ),
    );
    expect(carriedOut).toBe(1);
    expect(answers).toEqual(answers.map(() => ({ order: 1 })));
  });

  it('refuses a transaction inside a transaction, which would take the outer one with it', async () => {
    const nested = inTransaction(store, stock.actor, () =>
      inTransaction(store, stock.actor, async () => undefined),
    );
    await expect(nested).rejects.toThrow('inside a transaction');
    const quiet = inTransaction(store, stock.actor, () =>
      store.transactions.quietly(stock.actor, async () => undefined),
    );
    await expect(quiet).rejects.toThrow('inside a transaction');
  });

  it('lets the last pieces be taken once when many take them at the same time', async () => {
    const ledger = new Ledger();
    const box = await inTransaction(store, stock.actor, async (transaction) => {
      const ids = await insertContainer(transaction, stock);
      const occurredAt = transaction.recordedAt;
      await ledger.book(transaction, [{ ...ids, kind: 'received', pieces: 7, microlitres: 0, occurredAt }]);
      return ids;
    });
    const taken = await Promise.allSettled(
      Array.from({ length: 20 }, () =>
        inTransaction(store, stock.actor, (transaction) =>
          ledger.book(transaction, [
            { ...box, kind: 'wasted', pieces: 1, microlitres: 0, occurredAt: transaction.recordedAt },
          ]),
        ),
      ),
    );
    expect(taken.filter(({ status }) => status === 'fulfilled')).toHaveLength(7);
  });

  it('leaves a chain of audit entries without a gap or a fork', async () => {
    const entries = await store.database.reader.manager.find(AuditEntry, {
      where: { studioId: stock.actor.studioId },
      order: { sequence: 'ASC' },
    });
    expect(entries.length).toBeGreaterThan(20);
    let previousHash = firstPreviousHash;
    for (const [index, entry] of entries.entries()) {
      expect(entry.sequence).toBe(index + 1);
      expect(entry.previousHash).toBe(previousHash);
      expect(hashOfLink(entry)).toBe(entry.hash);
      previousHash = entry.hash;
    }
  });
});
