import { v7 as uuidv7 } from 'uuid';
import type { Actor } from '../../src/platform/actor.js';
import type { SeededRandom } from '../support/random.js';
import { Store } from '../support/store.js';
import { LedgerWriter, movementsInSession } from './ledger-writer.js';
import { openForWriting } from './trace-data.js';

export interface PlanData {
  actor: Actor;
  items: number;
  sessions: number;
}

const day = 86_400_000;
const years = 3;
const clients = 2_000;
const suppliers = 5;
const sessionsPerTransaction = 500;

/**
 * A studio that planning has much to do with: every product was used, some far oftener than others, is nearly out or not,
 * and is offered with a price break.
 */
export async function makePlanData(
  dataFolder: string,
  items: number,
  sessions: number,
  random: SeededRandom,
): Promise<PlanData> {
  const store = await Store.open(dataFolder);
  const actor = await store.makeStudio();
  await store.close();
  const database = openForWriting(dataFolder);
  const { studioId, chainId } = actor;
  const at = new Date(Date.now() - years * 365 * day).toISOString();
  try {
    const writer = new LedgerWriter(database, actor, at);
    const { lots, productIds } = database.transaction(() => {
      const productIds = writer.register(items);
      return { productIds, lots: writer.lots(productIds, items, clients, random) };
    })();
    for (let first = 0; first < sessions; first += sessionsPerTransaction) {
      database.transaction(() => {
        for (let index = first; index < Math.min(first + sessionsPerTransaction, sessions); index += 1) {
          const ago = Math.floor((1 - index / sessions) * years * 365 * day) + day;
          // The square lets a few be used often and most be used rarely.
          const taken = new Set<number>();
          while (taken.size < Math.min(movementsInSession, items)) {
            taken.add(Math.floor(items * (random.below(1_000_000) / 1_000_000) ** 2));
          }
          writer.session(
            new Date(Date.now() - ago).toISOString(),
            [...taken].flatMap((each) => lots[each] ?? []),
            random,
          );
        }
      })();
    }
    const adjust = database.prepare(
      `INSERT INTO movement (studio_id, id, lot_id, container_id, kind, pieces, microlitres, occurred_at, recorded_at, via)
       SELECT studio_id, ?, lot_id, container_id, 'adjusted', ? - pieces, 0, ?, ?, 'system' FROM balance
       WHERE studio_id = ? AND container_id = ?`,
    );
    const supply = database.prepare(
      'INSERT INTO supplier (chain_id, id, name, version, created_at) VALUES (?, ?, ?, 1, ?)',
    );
    const offer = database.prepare(
      `INSERT INTO offer (studio_id, id, chain_id, supplier_id, product_id, pack_containers, container_pieces,
         minimum_packs, prices, currency, life_on_arrival_days, lead_time_days, version, created_at)
       SELECT id, ?, chain_id, ?, ?, 1, 20, 1, ?, currency, 540, ?, 1, ? FROM studio WHERE id = ?`,
    );
    database.transaction(() => {
      const now = new Date().toISOString();
      for (const { containerId } of lots)
        adjust.run(uuidv7(), 2 + random.below(80), now, now, studioId, containerId);
      const supplierIds = Array.from({ length: suppliers }, () => uuidv7());
      for (const [index, id] of supplierIds.entries()) supply.run(chainId, id, `Supplier ${index + 1}`, at);
      const prices = '[{"fromPacks":1,"packPriceMinor":1800},{"fromPacks":5,"packPriceMinor":1600}]';
      for (const [index, productId] of productIds.entries()) {
        const supplierId = supplierIds[index % suppliers];
        offer.run(uuidv7(), supplierId, productId, prices, 3 + (index % 12), at, studioId);
      }
    })();
    database.pragma('wal_checkpoint(TRUNCATE)');
    return { actor, items, sessions };
  } finally {
    database.close();
  }
}
