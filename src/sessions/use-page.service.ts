import { Injectable } from '@nestjs/common';
import { Database, type SqlValue } from '../platform/database/database.js';
import { pageOf, refuseUnknownStart } from '../platform/page.js';
import type { TraceTotalsView, TraceUseView } from './trace.views.js';

/** One use as the trace finds it. */
export type TracedUse = Omit<TraceUseView, 'through' | 'lots'>;

/** Whose uses: those of lots and of every blend made of them, at any depth; of a client; of a session. */
export type UseChoice = { lotIds: readonly string[] } | { clientId: string } | { sessionId: string };

export interface UsePageRequest {
  limit: number;
  /** The last use of the page before. */
  after?: string;
  /** Uses recorded after this instant are left out, so that the pages of one export belong together. */
  recordedUpTo?: string;
}

export interface UsePage {
  totals: TraceTotalsView;
  uses: TracedUse[];
  next: string | null;
  /** How many of the lots asked for exist. */
  foundLots: number;
  /** True when a blend was made of any of them. */
  blended: boolean;
}

interface TotalsRow extends TraceTotalsView {
  foundLots: number;
  pourings: number;
}

type PageRow = TotalsRow & Omit<TracedUse, 'againstRefusal'> & { againstRefusal: string | null };

const useColumns = `session_use.id, session_use.session_id AS "sessionId", session_use.client_id AS "clientId",
  client.reference AS "clientReference", session.artist_id AS "artistId",
  session.procedure_id AS "procedureId", procedure.name AS "procedureName",
  session.visit_kind AS "visitKind", session.body_place AS "bodyPlace",
  session.recorded_from AS "recordedFrom", session_use.occurred_at AS "occurredAt",
  session_use.recorded_at AS "recordedAt", session_use.lot_id AS "lotId", session_use.container_id AS "containerId",
  session_use.maker_name AS "makerName", session_use.product_name AS "productName", session_use.shade,
  session_use.lot_code AS "lotCode", session_use.use_by AS "useBy", session_use.known_by AS "knownBy", session_use.pieces,
  session_use.drops, session_use.microlitres, session_use.mix_id AS "mixId", session_use.against_refusal AS "againstRefusal",
  session_use_reversal.recorded_at AS "reversedAt"`;

/**
 * Finds uses with everything a trace tells of them, and how many there are in all, in one question however many there
 * are. Guarantee: no use is left out; what is not on a page is on the next, and the totals count all.
 */
@Injectable()
export class UsePages {
  constructor(private readonly database: Database) {}

  /** @throws Problem invalid-fields when `after` is no use of this studio */
  async page(studioId: string, choice: UseChoice, request: UsePageRequest): Promise<UsePage> {
    const parameters: SqlValue[] = [studioId];
    const put = (value: SqlValue) => `$${parameters.push(value)}`;
    const { reached, from, where } = clausesOf(choice, put);
    const upTo =
      request.recordedUpTo === undefined
        ? ''
        : ` AND session_use.recorded_at <= ${put(request.recordedUpTo)}`;
    const beyond =
      request.after === undefined
        ? ''
        : ` AND (session_use.occurred_at, session_use.id) > (
            SELECT last.occurred_at, last.id FROM session_use AS last
            WHERE last.studio_id = $1 AND last.id = ${put(request.after)})`;
    const rows = await this.database.read<PageRow | Nullish<PageRow>>(
      // The page is chosen before anything is joined to it: a lot may have touched thousands.
      `WITH RECURSIVE ${reached},
       totals AS (
         SELECT count(*) AS "uses", count(session_use_reversal.use_id) AS "reversedUses",
           count(DISTINCT CASE WHEN session_use_reversal.use_id IS NULL THEN session_use.session_id END) AS "sessions",
           count(DISTINCT CASE WHEN session_use_reversal.use_id IS NULL THEN session_use.client_id END) AS "clients"
         FROM ${from} LEFT JOIN session_use_reversal ON session_use_reversal.studio_id = $1
             AND session_use_reversal.use_id = session_use.id
         WHERE ${where}${upTo}),
       chosen (use_id) AS (
         SELECT session_use.id FROM ${from} WHERE ${where}${upTo}${beyond}
         ORDER BY session_use.occurred_at, session_use.id LIMIT ${put(request.limit + 1)})
       SELECT totals.*, ${useColumns},
         (SELECT count(*) FROM reached WHERE asked = 1) AS "foundLots",
         (SELECT count(*) FROM reached CROSS JOIN blend_parent
          WHERE blend_parent.studio_id = $1 AND blend_parent.parent_lot_id = reached.lot_id) AS "pourings"
       FROM totals
         LEFT JOIN chosen ON 1 = 1
         LEFT JOIN session_use ON session_use.studio_id = $1 AND session_use.id = chosen.use_id
         LEFT JOIN session ON session.studio_id = $1 AND session.id = session_use.session_id
         LEFT JOIN client ON client.studio_id = $1 AND client.id = session_use.client_id
         LEFT JOIN procedure ON procedure.studio_id = $1 AND procedure.id = session.procedure_id
         LEFT JOIN session_use_reversal ON session_use_reversal.studio_id = $1
           AND session_use_reversal.use_id = session_use.id
       ORDER BY session_use.occurred_at, session_use.id`,
      parameters,
    );
    return this.pageFrom(studioId, rows, request);
  }

  private async pageFrom(
    studioId: string,
    rows: (PageRow | Nullish<PageRow>)[],
    request: UsePageRequest,
  ): Promise<UsePage> {
    const [first] = rows;
    if (!first) throw new Error('The totals of a trace have no row.');
    const found = rows.filter((row): row is PageRow => row.id !== null);
    // What is not on the page may be because there is nothing to go on from.
    if (found.length === 0) {
      await refuseUnknownStart(this.database.read, 'session_use', studioId, request.after);
    }
    const { shown, next } = pageOf(found, request.limit, (row) => row.id);
    return {
      totals: {
        uses: first.uses ?? 0,
        reversedUses: first.reversedUses ?? 0,
        sessions: first.sessions ?? 0,
        clients: first.clients ?? 0,
      },
      uses: shown.map(useOf),
      next,
      foundLots: first.foundLots ?? 0,
      blended: (first.pourings ?? 0) > 0,
    };
  }
}

function useOf(row: PageRow): TracedUse {
  const { uses, reversedUses, sessions, clients, foundLots, pourings, againstRefusal, ...use } = row;
  return {
    ...use,
    againstRefusal: againstRefusal === null ? null : (JSON.parse(againstRefusal) as string[]),
  };
}

type Nullish<Row> = { [Column in keyof Row]: Row[Column] | null };

interface Clauses {
  /** `reached`: the lots in question, 1 where a lot was asked for itself. */
  reached: string;
  from: string;
  where: string;
}

function clausesOf(choice: UseChoice, put: (value: SqlValue) => string): Clauses {
  if ('lotIds' in choice) {
    return {
      reached: `asked_lot (lot_id) AS (
          SELECT id FROM lot WHERE studio_id = $1 AND id IN (${choice.lotIds.map(put).join(', ')})),
        made_of (lot_id) AS (
          SELECT lot_id FROM asked_lot
          UNION
          SELECT blend_parent.lot_id FROM made_of CROSS JOIN blend_parent
          WHERE blend_parent.studio_id = $1 AND blend_parent.parent_lot_id = made_of.lot_id),
        reached (lot_id, asked) AS (
          SELECT made_of.lot_id, CASE WHEN asked_lot.lot_id IS NULL THEN 0 ELSE 1 END
          FROM made_of LEFT JOIN asked_lot ON asked_lot.lot_id = made_of.lot_id)`,
      // SQLite keeps the order of a cross join: from the few lots to their uses, never over all uses of the studio.
      from: 'reached CROSS JOIN session_use',
      where: 'session_use.studio_id = $1 AND session_use.lot_id = reached.lot_id',
    };
  }
  return {
    reached: 'reached (lot_id, asked) AS (SELECT id, 1 FROM lot WHERE 1 = 0)',
    from: 'session_use',
    where:
      'clientId' in choice
        ? `session_use.studio_id = $1 AND session_use.client_id = ${put(choice.clientId)}`
        : `session_use.studio_id = $1 AND session_use.session_id = ${put(choice.sessionId)}`,
  };
}
