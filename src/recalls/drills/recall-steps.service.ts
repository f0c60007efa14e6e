import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/actor.js';
import { Clock } from '../../platform/clock.js';
import { Database, type Read } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Transactions } from '../../platform/database/transactions.js';
import { type ClosingFacts, explainedPieces } from '../closing/closing-obstacles.js';
import { RecallFigures } from '../closing/recall-figures.service.js';
import { type KnownRecall, RecallRegister } from '../recall-register.service.js';
import { RecallStep } from '../recall-step.entity.js';
import { type DrillScore, drillScore } from './drill-score.js';
import { type DoneStep, type DrillStep, timedSteps } from './drill-steps.js';
import type { NoteStepDto } from './drills.dto.js';
import type { DrillScoreView, RecallStepsView } from './drills.views.js';

/** When the steps of a recall or drill were done, by the service's clock, and how a drill stands. */
@Injectable()
export class RecallSteps {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly clock: Clock,
    private readonly register: RecallRegister,
    private readonly figures: RecallFigures,
  ) {}

  /** @throws Problem not-found */
  async show({ studioId }: Actor, recallId: string): Promise<RecallStepsView> {
    const { read } = this.database;
    return this.view(read, studioId, await this.register.find(read, studioId, recallId), this.clock.now());
  }

  /** @throws Problem not-found; wrong-state when the recall is not open any more */
  note(actor: Actor, recallId: string, dto: NoteStepDto): Promise<RecallStepsView> {
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'recalls.note-step',
        subject: { kind: 'recall', id: recallId },
        content: { recallId, ...dto },
      },
      async (transaction) => {
        const recall = await this.register.lockOpen(transaction, recallId);
        await this.insert(transaction, recallId, dto.id, dto.step);
        return this.view(transaction.read, actor.studioId, recall, transaction.recordedAt);
      },
    );
  }

  /** Notes a step in the caller's transaction. */
  async insert(transaction: Transaction, recallId: string, id: string, step: DrillStep): Promise<void> {
    const { studioId, recordedAt, actor } = transaction;
    await transaction.insert(RecallStep, {
      studioId,
      id,
      recallId,
      step,
      occurredAt: recordedAt,
      recordedAt,
      personId: actor.personId,
      via: actor.via,
    });
  }

  async done(read: Read, studioId: string, recallId: string): Promise<DoneStep[]> {
    return read<DoneStep>(
      `SELECT step, recorded_at AS "doneAt", person_id AS "personId" FROM recall_step
       WHERE studio_id = $1 AND recall_id = $2 ORDER BY recorded_at, id`,
      [studioId, recallId],
    );
  }

  /** How a drill stands at an instant. */
  async score(
    read: Read,
    studioId: string,
    recall: KnownRecall,
    facts: ClosingFacts,
    at: string,
  ): Promise<DrillScore> {
    return drillScore({
      ...(await this.figures.uses(read, studioId, recall.id)),
      pieces: facts.balance.pieces,
      explainedPieces: explainedPieces(facts),
      containersToFind: facts.containers.toFind,
      containersFound: facts.containers.found,
      startedAt: recall.openedAt,
      closedAt: at,
    });
  }

  /** The score as the latest closing keeps it. */
  private async keptScore(read: Read, studioId: string, recallId: string): Promise<DrillScoreView | null> {
    const [row] = await read<{ facts: string }>(
      `SELECT facts FROM recall_closing WHERE studio_id = $1 AND recall_id = $2
       ORDER BY recorded_at DESC, id DESC LIMIT 1`,
      [studioId, recallId],
    );
    return row ? ((JSON.parse(row.facts) as { score?: DrillScoreView | null }).score ?? null) : null;
  }

  private async view(
    read: Read,
    studioId: string,
    recall: KnownRecall,
    now: string,
  ): Promise<RecallStepsView> {
    const { id, kind, state, openedAt, endedAt } = recall;
    let score: DrillScoreView | null = null;
    if (kind === 'drill') {
      score =
        state === 'open'
          ? await this.score(read, studioId, recall, await this.figures.of(read, studioId, id), now)
          : await this.keptScore(read, studioId, id);
    }
    return {
      recallId: id,
      startedAt: openedAt,
      endedAt,
      steps: timedSteps(openedAt, await this.done(read, studioId, id)),
      score,
    };
  }
}
