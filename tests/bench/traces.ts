import { join } from 'node:path';
import BetterSqlite3 from 'better-sqlite3';
import { SeededRandom } from '../support/random.js';
import { startService } from '../support/service.js';
import type { BenchSettings } from './bench-settings.js';
import { endWithBench, makeFolder, removeFolder } from './leave-nothing.js';
import { median } from './median.js';
import { makeTraceData, type TraceData } from './trace-data.js';

export interface TraceComparison {
  data: TraceData;
  uses: number;
  serviceMilliseconds: number;
  rawMilliseconds: number;
  ratios: number[];
}

const lotsTraced = 5;
const pageSize = 200;

// What stands between the question and the file: every lot made of those asked for, all their uses counted, and the
// first page of them with what is shown of each. The page is chosen before anything is joined to it.
const reached = `WITH RECURSIVE reached (lot_id) AS (
    SELECT id FROM lot WHERE studio_id = @studioId AND id IN (SELECT value FROM json_each(@lotIds))
    UNION
    SELECT blend_parent.lot_id FROM reached CROSS JOIN blend_parent
    WHERE blend_parent.studio_id = @studioId AND blend_parent.parent_lot_id = reached.lot_id)`;
const ofReached = `reached CROSS JOIN session_use
    ON session_use.studio_id = @studioId AND session_use.lot_id = reached.lot_id`;
const reversal = `session_use_reversal AS reversal
    ON reversal.studio_id = @studioId AND reversal.use_id = session_use.id`;
const totals = `${reached}
  SELECT count(*) AS uses, count(reversal.use_id) AS reversed,
    count(DISTINCT CASE WHEN reversal.use_id IS NULL THEN session_id END) AS sessions,
    count(DISTINCT CASE WHEN reversal.use_id IS NULL THEN client_id END) AS clients
  FROM ${ofReached} LEFT JOIN ${reversal}`;
const page = `${reached},
  chosen AS (
    SELECT session_use.rowid AS number FROM ${ofReached}
    ORDER BY session_use.occurred_at, session_use.id LIMIT ${pageSize + 1})
  SELECT session_use.*, client.reference, session.artist_id, session.procedure_id, procedure.name,
    session.visit_kind, session.body_place, session.recorded_from, reversal.recorded_at AS reversed_at
  FROM chosen
    CROSS JOIN session_use ON session_use.rowid = chosen.number
    JOIN session ON session.studio_id = @studioId AND session.id = session_use.session_id
    JOIN client ON client.studio_id = @studioId AND client.id = session_use.client_id
    JOIN procedure ON procedure.studio_id = @studioId AND procedure.id = session.procedure_id
    LEFT JOIN ${reversal}
  ORDER BY session_use.occurred_at, session_use.id`;

/** Five lots traced in a long ledger: the service's answer over HTTP against the same question in bare SQL. */
export async function benchTraces(settings: BenchSettings): Promise<TraceComparison> {
  const random = new SeededRandom(settings.seed);
  const dataFolder = makeFolder();
  try {
    const data = await makeTraceData(dataFolder, settings, random);
    const service = endWithBench(await startService('sqlite', { dataFolder }));
    const database = new BetterSqlite3(join(dataFolder, 'lotward.sqlite'), { readonly: true });
    try {
      const [totalsStatement, pageStatement] = [totals, page].map((sql) => database.prepare(sql));
      const measured: { service: number; raw: number }[] = [];
      let uses = 0;
      for (let round = 0; round < settings.warmUpRounds + settings.rounds; round += 1) {
        const lotIds = random.pickSome(data.lotIds, lotsTraced);
        const raw = () => {
          const values = { studioId: data.studioId, lotIds: JSON.stringify(lotIds) };
          const found = totalsStatement?.get(values) as { uses: number };
          return { uses: found.uses, rows: Math.min(pageSize, pageStatement?.all(values).length ?? 0) };
        };
        const ask = async () => {
          const view = await service.send<{ totals: { uses: number }; items: object[] }>('POST', '/trace', {
            lotIds,
            limit: pageSize,
          });
          return { uses: view.body.totals.uses, rows: view.body.items.length };
        };
        // The first to ask reads the pages of these lots, each side into its own cache, so that is never timed.
        raw();
        await ask();
        const [ofService, ofRaw] = [await timed(ask), await timed(async () => raw())];
        if (ofService.result.uses !== ofRaw.result.uses || ofService.result.rows !== ofRaw.result.rows) {
          throw new Error(`The traces differ: ${JSON.stringify([ofService.result, ofRaw.result])}`);
        }
        uses = ofRaw.result.uses;
        measured.push({ service: ofService.milliseconds, raw: ofRaw.milliseconds });
      }
      const counted = measured.slice(settings.warmUpRounds);
      return {
        data,
        uses,
        serviceMilliseconds: median(counted.map((round) => round.service)),
        rawMilliseconds: median(counted.map((round) => round.raw)),
        ratios: counted.map((round) => round.service / round.raw),
      };
    } finally {
      database.close();
      await service.stop();
    }
  } finally {
    removeFolder(dataFolder);
  }
}

async function timed<Result>(task: () => Promise<Result>): Promise<{ result: Result; milliseconds: number }> {
  const startedAt = performance.now();
  const result = await task();
  return { result, milliseconds: performance.now() - startedAt };
}
