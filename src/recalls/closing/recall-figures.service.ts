import { Injectable } from '@nestjs/common';
import type { Read } from '../../platform/database/database.js';
import { recallLots, recallReach } from '../recall-lots.query.js';
import type { ClosingFacts } from './closing-obstacles.js';

interface LotCounts {
  affected: number | null;
  notAffected: number | null;
  undecided: number | null;
}

interface ContainerCounts {
  toFind: number;
  found: number | null;
  notFound: number | null;
  notLookedFor: number | null;
  remaining: number | null;
  remainingPieces: number | null;
  remainingMicrolitres: number | null;
}

interface UseCounts {
  uses: number;
  traced: number | null;
}

/** The lots reached, each once. */
const reached = `WITH RECURSIVE ${recallLots}, ${recallReach}, reached AS (SELECT DISTINCT lot_id FROM recall_reach)`;

/** How far a recall has come in one studio, in numbers: what readiness, closing, a drill's score and a chain's view share. */
@Injectable()
export class RecallFigures {
  async of(read: Read, studioId: string, recallId: string): Promise<ClosingFacts> {
    const lots = await this.lots(read, studioId, recallId);
    const containers = await this.containers(read, studioId, recallId);
    return {
      lots,
      clients: await this.clients(read, studioId, recallId),
      containers: {
        toFind: containers.toFind,
        found: containers.found ?? 0,
        notFound: containers.notFound ?? 0,
        notLookedFor: containers.notLookedFor ?? 0,
      },
      remaining: {
        containers: containers.remaining ?? 0,
        pieces: containers.remainingPieces ?? 0,
        microlitres: containers.remainingMicrolitres ?? 0,
      },
      balance: { lots: lots.affected, ...(await this.pieces(read, studioId, recallId)) },
    };
  }

  /** Uses of the affected lots and their blends, and how many of them have a lot that was read or typed. */
  async uses(read: Read, studioId: string, recallId: string): Promise<{ uses: number; tracedUses: number }> {
    const [row] = await read<UseCounts>(
      `WITH RECURSIVE ${recallLots}, ${recallReach},
         reached AS (SELECT DISTINCT lot_id FROM recall_reach WHERE standing = 'affected')
       SELECT count(*) AS uses, sum(CASE WHEN session_use.known_by = 'picked from a list' THEN 0 ELSE 1 END) AS traced
       FROM reached CROSS JOIN session_use
       WHERE session_use.studio_id = $1 AND session_use.lot_id = reached.lot_id AND ${notReversed}`,
      [studioId, recallId],
    );
    return { uses: row?.uses ?? 0, tracedUses: row?.traced ?? 0 };
  }

  private async lots(read: Read, studioId: string, recallId: string): Promise<ClosingFacts['lots']> {
    const [row] = await read<LotCounts>(
      `WITH ${recallLots}
       SELECT sum(CASE WHEN standing = 'affected' THEN 1 ELSE 0 END) AS affected,
         sum(CASE WHEN standing = 'not affected' THEN 1 ELSE 0 END) AS "notAffected",
         sum(CASE WHEN standing = 'undecided' THEN 1 ELSE 0 END) AS undecided
       FROM recall_lots`,
      [studioId, recallId],
    );
    const { affected, notAffected, undecided } = row ?? {};
    return { affected: affected ?? 0, notAffected: notAffected ?? 0, undecided: undecided ?? 0 };
  }

  private async clients(read: Read, studioId: string, recallId: string): Promise<ClosingFacts['clients']> {
    const rows = await read<{ outcome: string | null; erased: number; clients: number }>(
      `${reached},
       exposed AS (
         SELECT DISTINCT session_use.client_id FROM reached CROSS JOIN session_use
         WHERE session_use.studio_id = $1 AND session_use.lot_id = reached.lot_id AND ${notReversed}),
       told AS (
         SELECT CASE WHEN client.erased_at IS NULL THEN 0 ELSE 1 END AS erased, (
           SELECT contact.outcome FROM recall_contact AS contact
           WHERE contact.studio_id = $1 AND contact.recall_id = $2 AND contact.client_id = exposed.client_id
           ORDER BY contact.recorded_at DESC, contact.id DESC LIMIT 1) AS outcome
         FROM exposed CROSS JOIN client WHERE client.studio_id = $1 AND client.id = exposed.client_id)
       SELECT outcome, erased, count(*) AS clients FROM told GROUP BY outcome, erased`,
      [studioId, recallId],
    );
    const counts = {
      exposed: 0,
      reached: 0,
      refused: 0,
      unreachable: 0,
      triedInVain: 0,
      notTried: 0,
      erased: 0,
    };
    for (const { outcome, erased, clients } of rows) {
      counts.exposed += clients;
      if (outcome === 'reached' || outcome === 'refused' || outcome === 'unreachable') {
        counts[outcome] += clients;
      } else if (erased === 1) counts.erased += clients;
      else if (outcome === null) counts.notTried += clients;
      else counts.triedInVain += clients;
    }
    return counts;
  }

  private async containers(read: Read, studioId: string, recallId: string): Promise<ContainerCounts> {
    const [row] = await read<ContainerCounts>(
      `${reached},
       here AS (
         SELECT container.state, coalesce(balance.pieces, 0) AS pieces,
           coalesce(balance.microlitres, 0) AS microlitres, (
             SELECT finding.result FROM recall_finding AS finding
             WHERE finding.studio_id = $1 AND finding.recall_id = $2 AND finding.container_id = container.id
             ORDER BY finding.recorded_at DESC, finding.id DESC LIMIT 1) AS finding,
           CASE WHEN EXISTS (
             SELECT 1 FROM recall_disposition AS disposition
             WHERE disposition.studio_id = $1 AND disposition.recall_id = $2
               AND disposition.container_id = container.id) THEN 1 ELSE 0 END AS disposed
         FROM reached CROSS JOIN container
           LEFT JOIN balance ON balance.studio_id = $1 AND balance.container_id = container.id
         WHERE container.studio_id = $1 AND container.lot_id = reached.lot_id),
       counted AS (
         SELECT here.*, CASE WHEN state IN ('finished', 'discarded') THEN 0 ELSE 1 END AS present,
           CASE WHEN finding = 'found' OR disposed = 1 THEN 'found'
             WHEN finding = 'not found' THEN 'not found' ELSE 'not looked for' END AS found_as
         FROM here)
       SELECT count(*) AS "toFind",
         sum(CASE WHEN found_as = 'found' THEN 1 ELSE 0 END) AS found,
         sum(CASE WHEN found_as = 'not found' THEN 1 ELSE 0 END) AS "notFound",
         sum(CASE WHEN found_as = 'not looked for' THEN 1 ELSE 0 END) AS "notLookedFor",
         sum(CASE WHEN present = 1 AND found_as <> 'not found' THEN 1 ELSE 0 END) AS remaining,
         sum(CASE WHEN present = 1 AND found_as <> 'not found' THEN pieces ELSE 0 END) AS "remainingPieces",
         sum(CASE WHEN present = 1 AND found_as <> 'not found' THEN microlitres ELSE 0 END) AS "remainingMicrolitres"
       FROM counted
       WHERE present = 1 OR pieces > 0 OR microlitres > 0 OR finding IS NOT NULL OR disposed = 1`,
      [studioId, recallId],
    );
    if (!row) throw new Error('A count was answered without a row.');
    return row;
  }

  /** Of the affected lots: pieces that came in, and those that a count or a look for them did not find any more. */
  private async pieces(
    read: Read,
    studioId: string,
    recallId: string,
  ): Promise<{ pieces: number; unexplainedPieces: number }> {
    const [row] = await read<{ pieces: number | null; lost: number | null; missing: number | null }>(
      `WITH RECURSIVE ${recallLots}, affected AS (SELECT lot_id FROM recall_lots WHERE standing = 'affected')
       SELECT
         sum(CASE WHEN movement.kind IN ('received', 'produced', 'transferred in') OR
           (movement.kind = 'adjusted' AND movement.pieces > 0) THEN movement.pieces ELSE 0 END) AS pieces,
         sum(CASE WHEN movement.kind = 'adjusted' AND movement.pieces < 0 THEN -movement.pieces ELSE 0 END) AS lost,
         (SELECT sum(balance.pieces) FROM affected CROSS JOIN balance
          WHERE balance.studio_id = $1 AND balance.lot_id = affected.lot_id AND 'not found' = (
            SELECT finding.result FROM recall_finding AS finding
            WHERE finding.studio_id = $1 AND finding.recall_id = $2
              AND finding.container_id = balance.container_id
            ORDER BY finding.recorded_at DESC, finding.id DESC LIMIT 1)) AS missing
       FROM affected CROSS JOIN movement
       WHERE movement.studio_id = $1 AND movement.lot_id = affected.lot_id`,
      [studioId, recallId],
    );
    return { pieces: row?.pieces ?? 0, unexplainedPieces: (row?.lost ?? 0) + (row?.missing ?? 0) };
  }
}

const notReversed = `NOT EXISTS (SELECT 1 FROM session_use_reversal AS reversal
  WHERE reversal.studio_id = $1 AND reversal.use_id = session_use.id)`;
