import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import BetterSqlite3 from 'better-sqlite3';
import { v7 as uuidv7 } from 'uuid';
import type { ChainProgressView } from '../../src/recalls/chain/chain-progress.views.js';
import type { NoticeReadingView, OpenedRecallView } from '../../src/recalls/recalls.views.js';
import { SeededRandom } from '../support/random.js';
import { type RunningService, startService } from '../support/service.js';
import type { BenchSettings } from './bench-settings.js';
import { endWithBench, makeFolder, removeFolder } from './leave-nothing.js';
import { makerName } from './ledger-writer.js';
import { median } from './median.js';
import { type ChainData, makeChainData, products } from './recall-data.js';

/** A whole recall of a chain, in milliseconds. */
interface Measured {
  readingMilliseconds: number;
  openingMilliseconds: number;
  /** Exposures, balance and containers of every studio. */
  answerMilliseconds: number;
  rawMilliseconds: number;
}

export interface RecallComparison extends Measured {
  data: ChainData;
  exposedClients: number;
  ratios: number[];
}

const recalledLots = 5;

/**
 * From a pasted notice to the holds in all studios of a chain, with exposures and balance ready: the service over HTTP
 * against the same statements in bare SQL. What the service does besides – the notice and the scope kept, every row
 * digested into the audit logs, alerts, standing holds, likenesses of codes – bare SQL leaves out.
 */
export async function benchRecalls(settings: BenchSettings): Promise<RecallComparison> {
  const random = new SeededRandom(settings.seed);
  const dataFolder = makeFolder();
  try {
    const data = await makeChainData(dataFolder, settings, random);
    const service = endWithBench(await startService('sqlite', { dataFolder }));
    try {
      leadAll(dataFolder, data);
      await sweptAll(dataFolder, data);
      const raw = new BareRecall(dataFolder, data);
      const measured: (Measured & { exposedClients: number })[] = [];
      for (let round = 0; round < settings.recallRounds; round += 1) {
        measured.push(await recallOnce(service, raw, round));
      }
      raw.close();
      // The first round warms both.
      const counted = measured.length > 1 ? measured.slice(1) : measured;
      const middle = (figure: keyof Measured) => median(counted.map((each) => each[figure]));
      return {
        data,
        exposedClients: counted.at(-1)?.exposedClients ?? 0,
        readingMilliseconds: middle('readingMilliseconds'),
        openingMilliseconds: middle('openingMilliseconds'),
        answerMilliseconds: middle('answerMilliseconds'),
        rawMilliseconds: middle('rawMilliseconds'),
        ratios: counted.map((each) => wholeOf(each) / each.rawMilliseconds),
      };
    } finally {
      await service.stop();
    }
  } finally {
    removeFolder(dataFolder);
  }
}

export function wholeOf({ readingMilliseconds, openingMilliseconds, answerMilliseconds }: Measured): number {
  return readingMilliseconds + openingMilliseconds + answerMilliseconds;
}

async function recallOnce(
  service: RunningService,
  raw: BareRecall,
  round: number,
): Promise<Measured & { exposedClients: number }> {
  // Lot L7 is of the eighth product, and so is every fiftieth from there on.
  const product = 7 + round;
  const codes = Array.from({ length: recalledLots }, (_, index) => `L${product + products * (index + 1)}`);
  const text = `Product safety recall\n${makerName} recalls Product ${product + 1}.\nLots: ${codes.join(', ')}\nStop using it.`;
  const reading = await timed(() =>
    service.made<NoticeReadingView>('/recalls/readings', { id: undefined, text }),
  );
  const read = reading.result.scope.items.flatMap(({ lots }) => lots.map((term) => term.code));
  if (read.join() !== codes.join())
    throw new Error(`Of ${codes.join()} the notice was read as ${read.join()}.`);
  const opening = await timed(() =>
    service.made<OpenedRecallView>('/recalls', {
      title: `Product ${product + 1}`,
      notice: { source: 'pasted', text },
      scope: {
        items: [
          {
            makerName,
            productName: `Product ${product + 1}`,
            gtins: [],
            productIds: [],
            lots: codes.map((code) => ({ kind: 'code', code })),
            openEnded: false,
          },
        ],
      },
      holdPossible: 'none',
      chainWide: true,
    }),
  );
  const answer = await timed(() => service.seen<ChainProgressView>(`/recalls/${opening.result.id}/studios`));
  const bare = await timed(async () => raw.recall(`Product ${product + 1}`, codes));
  const certain = answer.result.studios.reduce((sum, { lotsAffected }) => sum + lotsAffected, 0);
  if (certain !== bare.result.held)
    throw new Error(`${certain} lots are affected, bare SQL held ${bare.result.held}.`);
  return {
    readingMilliseconds: reading.milliseconds,
    openingMilliseconds: opening.milliseconds,
    answerMilliseconds: answer.milliseconds,
    rawMilliseconds: bare.milliseconds,
    exposedClients: bare.result.clients,
  };
}

/** Until every studio has had its morning: the service judges all conditions when it starts. */
async function sweptAll(dataFolder: string, { studioIds }: ChainData): Promise<void> {
  const database = new BetterSqlite3(join(dataFolder, 'lotward.sqlite'), { readonly: true });
  const swept = database.prepare(
    `SELECT count(DISTINCT studio_id) AS studios FROM audit_entry WHERE action = 'alerts.sweep'`,
  );
  while ((swept.get() as { studios: number }).studios < studioIds.length) await setTimeout(200);
  database.close();
}

/** Whoever opens a recall for a chain leads all its studios. */
function leadAll(dataFolder: string, { studioIds }: ChainData): void {
  const database = new BetterSqlite3(join(dataFolder, 'lotward.sqlite'), { timeout: 10_000 });
  database
    .prepare(
      `UPDATE person SET account_id = (SELECT account_id FROM person WHERE studio_id = @first AND account_id IS NOT NULL)
       WHERE studio_id <> @first AND role = 'owner'`,
    )
    .run({ first: studioIds[0] });
  database.close();
}

/** The same questions and rows in bare SQL; the holds go to a table of its own, committed studio by studio. */
class BareRecall {
  private readonly database: BetterSqlite3.Database;

  constructor(
    dataFolder: string,
    private readonly data: ChainData,
  ) {
    this.database = new BetterSqlite3(join(dataFolder, 'bare.sqlite'));
    this.database.pragma('journal_mode = WAL');
    this.database.pragma('synchronous = FULL');
    this.database.exec(
      'CREATE TABLE held (studio_id TEXT, id TEXT, lot_id TEXT, PRIMARY KEY (studio_id, id))',
    );
    this.database.prepare('ATTACH ? AS record').run(join(dataFolder, 'lotward.sqlite'));
  }

  recall(productName: string, codes: readonly string[]): { held: number; clients: number } {
    const lots = this.database.prepare(
      `SELECT lot.id FROM record.lot JOIN record.product
         ON product.chain_id = lot.chain_id AND product.id = lot.product_id
       WHERE lot.studio_id = @studioId AND product.name = @productName
         AND lot.code IN (SELECT value FROM json_each(@codes))`,
    );
    const hold = this.database.prepare('INSERT INTO held VALUES (?, ?, ?)');
    const exposures = this.database.prepare(
      `SELECT count(DISTINCT session_id) AS sessions, count(DISTINCT client_id) AS clients, count(*) AS uses
       FROM record.session_use WHERE studio_id = @studioId AND lot_id IN (SELECT value FROM json_each(@lotIds))`,
    );
    const balance = this.database.prepare(
      `SELECT lot_id, kind, sum(pieces) AS pieces, sum(microlitres) AS microlitres, count(*) AS movements
       FROM record.movement WHERE studio_id = @studioId AND lot_id IN (SELECT value FROM json_each(@lotIds))
       GROUP BY lot_id, kind`,
    );
    let held = 0;
    let clients = 0;
    for (const studioId of this.data.studioIds) {
      const values = { studioId, productName, codes: JSON.stringify(codes) };
      const lotIds = (lots.all(values) as { id: string }[]).map(({ id }) => id);
      this.database.transaction(() => {
        for (const lotId of lotIds) hold.run(studioId, uuidv7(), lotId);
      })();
      held += lotIds.length;
      const asked = { studioId, lotIds: JSON.stringify(lotIds) };
      clients += (exposures.get(asked) as { clients: number }).clients;
      balance.all(asked);
    }
    return { held, clients };
  }

  close(): void {
    this.database.close();
  }
}

async function timed<Result>(task: () => Promise<Result>): Promise<{ result: Result; milliseconds: number }> {
  const startedAt = performance.now();
  const result = await task();
  return { result, milliseconds: performance.now() - startedAt };
}
