import { Injectable } from '@nestjs/common';
import type { Read } from '../../platform/database/database.js';
import { RecallAccounts } from '../balance/recall-accounts.service.js';
import { Recipients } from '../contacts/recipients.service.js';
import { isOutstanding, tellTotals } from '../contacts/tell-totals.js';
import type { ContainerStanding } from '../containers/container-standing.js';
import { reachedLots, recallContainers } from '../containers/recall-containers.query.js';
import { recallLots, recallReach } from '../recall-lots.query.js';
import type { ClosingFacts } from './closing-obstacles.js';

interface ContainerCounts {
  standing: ContainerStanding;
  undecided: number;
  containers: number;
  pieces: number;
  microlitres: number;
}

/** How far a recall has come in one studio, in numbers: what readiness, closing, a drill's score and a chain's view share. */
@Injectable()
export class RecallFigures {
  constructor(
    private readonly recipients: Recipients,
    private readonly accounts: RecallAccounts,
  ) {}

  /** Works inside a transaction and outside. */
  async of(read: Read, studioId: string, recallId: string): Promise<ClosingFacts> {
    return {
      lots: await this.lots(read, studioId, recallId),
      clients: await this.clients(read, studioId, recallId),
      ...(await this.containers(read, studioId, recallId)),
      balance: await this.balance(read, studioId, recallId),
    };
  }

  /** Uses of the affected lots and their blends, and how many of them have a lot that was read or typed. */
  async uses(read: Read, studioId: string, recallId: string): Promise<{ uses: number; tracedUses: number }> {
    const [row] = await read<{ uses: number; traced: number | null }>(
      `WITH RECURSIVE ${recallLots}, ${recallReach},
         affected AS (SELECT DISTINCT lot_id FROM recall_reach WHERE standing = 'affected')
       SELECT count(*) AS uses, sum(CASE WHEN session_use.known_by = 'picked from a list' THEN 0 ELSE 1 END) AS traced
       FROM affected CROSS JOIN session_use
       WHERE session_use.studio_id = $1 AND session_use.lot_id = affected.lot_id AND NOT EXISTS (
         SELECT 1 FROM session_use_reversal AS reversal
         WHERE reversal.studio_id = $1 AND reversal.use_id = session_use.id)`,
      [studioId, recallId],
    );
    return { uses: row?.uses ?? 0, tracedUses: row?.traced ?? 0 };
  }

  private async lots(read: Read, studioId: string, recallId: string): Promise<ClosingFacts['lots']> {
    const rows = await read<{ standing: string; lots: number }>(
      `WITH ${recallLots} SELECT standing, count(*) AS lots FROM recall_lots GROUP BY standing`,
      [studioId, recallId],
    );
    const count = (wanted: string) => rows.find(({ standing }) => standing === wanted)?.lots ?? 0;
    return {
      affected: count('affected'),
      notAffected: count('not affected'),
      undecided: count('undecided'),
    };
  }

  private async clients(read: Read, studioId: string, recallId: string): Promise<ClosingFacts['clients']> {
    const everybody = await this.recipients.everybody(read, studioId, recallId, 'client');
    const { toTell: exposed, reached, refused, unreachable, erased } = tellTotals(everybody);
    const outstanding = everybody.filter(isOutstanding);
    const notTried = outstanding.filter(({ standing }) => standing === 'not tried').length;
    const triedInVain = outstanding.length - notTried;
    return { exposed, reached, refused, unreachable, triedInVain, notTried, erased };
  }

  private async containers(
    read: Read,
    studioId: string,
    recallId: string,
  ): Promise<Pick<ClosingFacts, 'containers' | 'remaining'>> {
    const rows = await read<ContainerCounts>(
      `WITH RECURSIVE ${reachedLots}, ${recallContainers}
       SELECT standing, undecided, count(*) AS containers, sum(pieces) AS pieces, sum(microlitres) AS microlitres
       FROM recall_containers WHERE listed = 1 GROUP BY standing, undecided`,
      [studioId, recallId],
    );
    const sum = (part: readonly ContainerCounts[], of: 'containers' | 'pieces' | 'microlitres') =>
      part.reduce((total, row) => total + row[of], 0);
    const count = (wanted: ContainerStanding) =>
      sum(
        rows.filter(({ standing }) => standing === wanted),
        'containers',
      );
    const remaining = rows.filter(
      ({ standing, undecided }) => undecided === 0 && (standing === 'found' || standing === 'not looked for'),
    );
    return {
      containers: {
        toFind: sum(rows, 'containers'),
        found: count('found') + count('disposed') + count('gone'),
        notFound: count('not found'),
        notLookedFor: count('not looked for'),
      },
      remaining: {
        containers: sum(remaining, 'containers'),
        pieces: sum(remaining, 'pieces'),
        microlitres: sum(remaining, 'microlitres'),
      },
    };
  }

  private async balance(read: Read, studioId: string, recallId: string): Promise<ClosingFacts['balance']> {
    const { totals, blendTotals } = await this.accounts.totals(read, studioId, recallId);
    const unexplained = [...totals.unexplained, ...blendTotals.unexplained];
    const pieces = (missing: boolean) =>
      unexplained
        .filter(({ reason }) => (reason === 'not found' || reason === 'not looked for') === missing)
        .reduce((sum, part) => sum + part.pieces, 0);
    return {
      lots: totals.lots + blendTotals.lots,
      pieces: totals.cameIn.pieces + blendTotals.cameIn.pieces,
      missingPieces: pieces(true),
      unexplainedPieces: pieces(false),
    };
  }
}
