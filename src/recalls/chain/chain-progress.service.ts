import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/actor.js';
import { Database } from '../../platform/database/database.js';
import { explainedPieces, obstaclesTo } from '../closing/closing-obstacles.js';
import { obstacleView } from '../closing/readiness.service.js';
import { RecallFigures } from '../closing/recall-figures.service.js';
import { percent } from '../drills/drill-score.js';
import { RecallRegister } from '../recall-register.service.js';
import type { RecallState } from '../vocabulary.js';
import { ChainHeads } from './chain-heads.service.js';
import type { ChainProgressView, StudioProgressView } from './chain-progress.views.js';

/** How far the studios of a chain have come with a recall: numbers only, for whoever leads them all. */
@Injectable()
export class ChainProgress {
  constructor(
    private readonly database: Database,
    private readonly heads: ChainHeads,
    private readonly register: RecallRegister,
    private readonly figures: RecallFigures,
  ) {}

  /** @throws Problem not-found; not-allowed naming the studios that the person does not lead */
  async of(actor: Actor, recallId: string): Promise<ChainProgressView> {
    const studios = await this.heads.require(actor);
    const { title, kind } = await this.register.find(this.database.read, actor.studioId, recallId);
    const parts = await this.database.read<{ studioId: string; state: RecallState }>(
      'SELECT studio_id AS "studioId", state FROM recall WHERE chain_id = $1 AND id = $2',
      [actor.chainId, recallId],
    );
    const states = new Map(parts.map(({ studioId, state }) => [studioId, state]));
    const progress: StudioProgressView[] = [];
    for (const { studioId, name } of studios) {
      const { lots, clients, containers, balance, ...rest } = await this.figures.of(
        this.database.read,
        studioId,
        recallId,
      );
      progress.push({
        studioId,
        studioName: name,
        state: states.get(studioId) ?? null,
        lotsAffected: lots.affected,
        lotsUndecided: lots.undecided,
        containersToFind: containers.toFind,
        containersFound: containers.found,
        clientsExposed: clients.exposed,
        clientsSettled: clients.reached + clients.refused + clients.unreachable,
        balancedPercent: percent(explainedPieces({ balance }), balance.pieces),
        obstacles: obstaclesTo(kind, { lots, clients, containers, balance, ...rest }).map(obstacleView),
      });
    }
    return { recallId, title, kind, studios: progress };
  }
}
