import { Injectable } from '@nestjs/common';
import type { Read } from '../../platform/database/database.js';
import type { ContainerStanding } from '../containers/container-standing.js';
import { reachedLots, recallContainers } from '../containers/recall-containers.query.js';
import {
  type BalanceAccount,
  type BalanceFigure,
  balanceAccount,
  nothing,
  type OnHandFacts,
  type Quantity,
  sumOfAccounts,
} from './balance-account.js';
import type { BalanceTotalsView } from './recall-balance.views.js';
import { bookedFigures } from './recall-figures.query.js';

/** The account of one lot of a recall, or of a house blend in which one is. */
export interface LotAccount {
  lotId: string;
  isBlend: boolean;
  standing: 'affected' | 'undecided';
  account: BalanceAccount;
  /** How many movements are behind each figure. */
  movements: Map<BalanceFigure, number>;
}

interface Row extends Quantity {
  lotId: string;
}

type FigureRow = Row & { figure: BalanceFigure; movements: number };
type OnHandRow = Row & { standing: ContainerStanding; ended: number };

/** Draws the accounts of a recall from the ledger: four questions, however many lots and movements there are. */
@Injectable()
export class RecallAccounts {
  /** Lots first, house blends after them, each by their ids. */
  async of(read: Read, studioId: string, recallId: string): Promise<LotAccount[]> {
    const key = [studioId, recallId];
    const lots = await read<{ lotId: string; undecided: number; isBlend: number }>(
      `WITH RECURSIVE ${reachedLots}
       SELECT lot_id AS "lotId", undecided, is_blend AS "isBlend" FROM reached_lots ORDER BY is_blend, lot_id`,
      key,
    );
    if (lots.length === 0) return [];
    const figures = byLot(
      await read<FigureRow>(
        `WITH RECURSIVE ${reachedLots}, ${bookedFigures}
         SELECT lot_id AS "lotId", figure, count(*) AS movements, sum(pieces) AS pieces,
           sum(microlitres) AS microlitres
         FROM booked GROUP BY lot_id, figure`,
        key,
      ),
    );
    const onHand = byLot(
      await read<OnHandRow>(
        `WITH RECURSIVE ${reachedLots}, ${recallContainers}
         SELECT lot_id AS "lotId", standing, ended, sum(pieces) AS pieces, sum(microlitres) AS microlitres
         FROM (
           SELECT lot_id, standing, pieces, microlitres,
             CASE WHEN state IN ('finished', 'discarded') THEN 1 ELSE 0 END AS ended
           FROM recall_containers) AS stock
         GROUP BY lot_id, standing, ended`,
        key,
      ),
    );
    const lost = byLot(
      await read<Row>(
        `WITH RECURSIVE ${reachedLots}
         SELECT line.lot_id AS "lotId", sum(outcome.lost_pieces) AS pieces,
           sum(outcome.lost_microlitres) AS microlitres
         FROM reached_lots CROSS JOIN transfer_line AS line
           JOIN transfer_outcome AS outcome ON outcome.sender_id = line.studio_id AND outcome.line_id = line.id
         WHERE line.studio_id = $1 AND line.lot_id = reached_lots.lot_id
         GROUP BY line.lot_id`,
        key,
      ),
    );
    return lots.map(({ lotId, undecided, isBlend }) => {
      const booked = figures.get(lotId) ?? [];
      return {
        lotId,
        isBlend: isBlend === 1,
        standing: undecided === 1 ? 'undecided' : 'affected',
        account: balanceAccount({
          figures: booked,
          onHand: onHandFacts(onHand.get(lotId) ?? []),
          lostOnTheWay: lost.get(lotId)?.[0] ?? nothing,
        }),
        movements: new Map(booked.map(({ figure, movements }) => [figure, movements])),
      };
    });
  }

  /** The sums over the lots of a recall, and over the house blends in which they are. */
  async totals(
    read: Read,
    studioId: string,
    recallId: string,
  ): Promise<{ totals: BalanceTotalsView; blendTotals: BalanceTotalsView }> {
    return totalsOf(await this.of(read, studioId, recallId));
  }
}

export function totalsOf(accounts: readonly LotAccount[]): {
  totals: BalanceTotalsView;
  blendTotals: BalanceTotalsView;
} {
  const over = (chosen: readonly LotAccount[]): BalanceTotalsView => ({
    lots: chosen.length,
    ...sumOfAccounts(chosen.map(({ account }) => account)),
  });
  return {
    totals: over(accounts.filter(({ isBlend }) => !isBlend)),
    blendTotals: over(accounts.filter(({ isBlend }) => isBlend)),
  };
}

function onHandFacts(rows: readonly OnHandRow[]): OnHandFacts {
  const facts: OnHandFacts = { found: nothing, notFound: nothing, notLookedFor: nothing, onEnded: nothing };
  for (const { standing, ended, pieces, microlitres } of rows) {
    const part = ended === 1 ? 'onEnded' : partOf[standing];
    const before = facts[part];
    facts[part] = { pieces: before.pieces + pieces, microlitres: before.microlitres + microlitres };
  }
  return facts;
}

/** What is disposed of or gone has nothing left, so it adds nothing anywhere. */
const partOf = {
  found: 'found',
  'not found': 'notFound',
  'not looked for': 'notLookedFor',
  disposed: 'notLookedFor',
  gone: 'notLookedFor',
} as const satisfies Record<ContainerStanding, keyof OnHandFacts>;

function byLot<Each extends Row>(rows: readonly Each[]): Map<string, Each[]> {
  const groups = new Map<string, Each[]>();
  for (const row of rows) {
    const known = groups.get(row.lotId);
    if (known) known.push(row);
    else groups.set(row.lotId, [row]);
  }
  return groups;
}
