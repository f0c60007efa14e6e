import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/actor.js';
import { Database } from '../../platform/database/database.js';
import { RecallRegister } from '../recall-register.service.js';
import type { ObstacleView, ReadinessView } from './closing.views.js';
import { type Obstacle, obstaclesTo, obstacleWords } from './closing-obstacles.js';
import { RecallFigures } from './recall-figures.service.js';

/** Whether a recall can be closed. */
@Injectable()
export class Readiness {
  constructor(
    private readonly database: Database,
    private readonly register: RecallRegister,
    private readonly figures: RecallFigures,
  ) {}

  /** @throws Problem not-found */
  async of({ studioId }: Actor, recallId: string): Promise<ReadinessView> {
    const { kind, state } = await this.register.find(this.database.read, studioId, recallId);
    const figures = await this.figures.of(this.database.read, studioId, recallId);
    const obstacles = obstaclesTo(kind, figures);
    return {
      recallId,
      kind,
      state,
      ready: state === 'open' && (kind === 'drill' || obstacles.length === 0),
      obstacles: obstacles.map(obstacleView),
      figures,
    };
  }
}

export function obstacleView(obstacle: Obstacle): ObstacleView {
  return { ...obstacle, words: obstacleWords(obstacle) };
}
