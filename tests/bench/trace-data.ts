import { join } from 'node:path';
import { setImmediate } from 'node:timers/promises';
import BetterSqlite3 from 'better-sqlite3';
import type { SeededRandom } from '../support/random.js';
import { Store } from '../support/store.js';
import type { BenchSettings } from './bench-settings.js';
import { LedgerWriter, type LotOnShelf, movementsInSession } from './ledger-writer.js';

export interface TraceData {
  studioId: string;
  lotIds: string[];
  movements: number;
  seconds: number;
}

const mostClients = 20_000;
const movementsOfAClient = 20;
const productsPerMaker = 50;
/** Lots that are in use at the same time. */
const lotsAtHand = 20;
const sessionsPerTransaction = 1_000;
const years = 10;
export const firstDay = Date.UTC(2016, 0, 4);

/**
 * Writes years of sessions straight into a database made by the service's own migrations, with all its checks, keys and
 * triggers at work, in bounded transactions.
 */
export async function makeTraceData(
  dataFolder: string,
  settings: BenchSettings,
  random: SeededRandom,
): Promise<TraceData> {
  const store = await Store.open(dataFolder);
  const actor = await store.makeStudio();
  await store.close();
  const startedAt = performance.now();
  const database = openForWriting(dataFolder);
  try {
    const writer = new LedgerWriter(database, actor, new Date(firstDay).toISOString());
    const { traceLots, traceMovements } = settings;
    const clients = Math.min(mostClients, Math.ceil(traceMovements / movementsOfAClient));
    const lots = database.transaction(() =>
      writer.lots(writer.register(productsPerMaker), traceLots, clients, random),
    )();
    const sessions = Math.floor((traceMovements - lots.length) / movementsInSession);
    await writeSessions(database, writer, lots, sessions, random);
    database.pragma('wal_checkpoint(TRUNCATE)');
    return {
      studioId: actor.studioId,
      lotIds: lots.map(({ lotId }) => lotId),
      movements: lots.length + sessions * movementsInSession,
      seconds: (performance.now() - startedAt) / 1_000,
    };
  } finally {
    database.close();
  }
}

/** The database of a service that does not run, as fast as it can be written. */
export function openForWriting(dataFolder: string): BetterSqlite3.Database {
  const database = new BetterSqlite3(join(dataFolder, 'lotward.sqlite'));
  database.pragma('journal_mode = WAL');
  // Nobody's record: a power cut would only cost the bench its data.
  database.pragma('synchronous = OFF');
  database.pragma('foreign_keys = ON');
  database.pragma('cache_size = -1000000');
  return database;
}

/** Spreads sessions over the years; lots come into use one after the other. In bounded transactions. */
export async function writeSessions(
  database: BetterSqlite3.Database,
  writer: LedgerWriter,
  lots: readonly LotOnShelf[],
  sessions: number,
  random: SeededRandom,
): Promise<void> {
  for (let first = 0; first < sessions; first += sessionsPerTransaction) {
    // A pause in which the bench can be told to stop.
    await setImmediate();
    const last = Math.min(first + sessionsPerTransaction, sessions);
    database.transaction(() => {
      for (let index = first; index < last; index += 1) {
        const start = Math.floor((index / sessions) * Math.max(1, lots.length - lotsAtHand));
        const used = random.pickSome(lots.slice(start, start + lotsAtHand), movementsInSession);
        const at = firstDay + (index / sessions) * years * 365 * 86_400_000;
        writer.session(new Date(at).toISOString(), used, random);
      }
    })();
  }
}
