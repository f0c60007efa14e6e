import type { SeededRandom } from '../support/random.js';
import { Store } from '../support/store.js';
import type { BenchSettings } from './bench-settings.js';
import { LedgerWriter, movementsInSession } from './ledger-writer.js';
import { firstDay, openForWriting, writeSessions } from './trace-data.js';

export interface ChainData {
  /** The studio in which the recall is opened, first. */
  studioIds: string[];
  lots: number;
  movements: number;
  sessions: number;
  seconds: number;
}

export const products = 50;
const clientsOfAStudio = 1_500;

/**
 * A chain whose studios hold the same products and lots, as if they were supplied by the same wholesaler, and years of
 * sessions in each.
 */
export async function makeChainData(
  dataFolder: string,
  { recallStudios, recallMovements, recallLots }: BenchSettings,
  random: SeededRandom,
): Promise<ChainData> {
  const store = await Store.open(dataFolder);
  const first = await store.makeStudio();
  const actors = [first];
  while (actors.length < recallStudios) actors.push(await store.makeStudio(undefined, first.chainId));
  await store.close();
  const startedAt = performance.now();
  const database = openForWriting(dataFolder);
  try {
    const sessions = Math.floor((recallMovements / recallStudios - recallLots) / movementsInSession);
    let productIds: string[] | undefined;
    for (const actor of actors) {
      const writer = new LedgerWriter(database, actor, new Date(firstDay).toISOString());
      const lots = database.transaction(() => {
        productIds ??= writer.register(products);
        return writer.lots(productIds, recallLots, clientsOfAStudio, random);
      })();
      await writeSessions(database, writer, lots, sessions, random);
    }
    database.pragma('wal_checkpoint(TRUNCATE)');
    return {
      studioIds: actors.map(({ studioId }) => studioId),
      lots: recallLots * recallStudios,
      movements: (recallLots + sessions * movementsInSession) * recallStudios,
      sessions: sessions * recallStudios,
      seconds: (performance.now() - startedAt) / 1_000,
    };
  } finally {
    database.close();
  }
}
