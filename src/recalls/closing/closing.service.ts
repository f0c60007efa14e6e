import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import { People } from '../../identity/people.service.js';
import type { Actor } from '../../platform/actor.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Transactions } from '../../platform/database/transactions.js';
import { occurredAt } from '../../platform/occurred-at.js';
import { invalidField, Problem } from '../../platform/problem.js';
import { DrillSchedules } from '../drills/drill-schedules.service.js';
import { RecallSteps } from '../drills/recall-steps.service.js';
import { Recall } from '../recall.entity.js';
import { RecallClosing } from '../recall-closing.entity.js';
import { RecallConditions } from '../recall-conditions.service.js';
import { type KnownRecall, RecallRegister } from '../recall-register.service.js';
import { RecallReports } from '../report/recall-reports.service.js';
import type { CloseRecallDto, ClosingOverrideDto } from './closing.dto.js';
import type { ClosingView } from './closing.views.js';
import { notOverridden, type Obstacle, obstaclesTo } from './closing-obstacles.js';
import { obstacleView } from './readiness.service.js';
import { RecallFigures } from './recall-figures.service.js';

/**
 * Closes recalls and drills. Guarantees: a recall closes only when nothing stands against it, or each obstacle is
 * overridden with a reason; what was known then is kept as the report, and never changes. Holds stay on what was not
 * disposed of, and standing holds stay in force, since more of these lots may arrive.
 */
@Injectable()
export class Closing {
  constructor(
    private readonly transactions: Transactions,
    private readonly register: RecallRegister,
    private readonly people: People,
    private readonly figures: RecallFigures,
    private readonly reports: RecallReports,
    private readonly steps: RecallSteps,
    private readonly schedules: DrillSchedules,
    private readonly conditions: RecallConditions,
  ) {}

  /**
   * @throws Problem not-found; wrong-state when it is not open; decision-needed with the obstacles that stand without a
   * reason; not-allowed when somebody else is to sign
   */
  close(actor: Actor, recallId: string, dto: CloseRecallDto): Promise<ClosingView> {
    const { signedBy, secondSignedBy = null, overrides } = dto;
    refuseForeignSignature(actor, signedBy, secondSignedBy);
    refuseTwice(overrides);
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'recalls.close',
        subject: { kind: 'recall', id: recallId },
        content: { recallId, ...dto },
      },
      async (transaction) => {
        const { studioId, recordedAt } = transaction;
        const recall = await this.register.lockOpen(transaction, recallId);
        const signers = secondSignedBy === null ? [signedBy] : [signedBy, secondSignedBy];
        await this.people.require(transaction, signers, { atWork: true });
        const at = occurredAt(dto.occurredAt, recordedAt);
        const obstacles = obstaclesTo(
          recall.kind,
          await this.figures.of(transaction.read, studioId, recallId),
        );
        refuseWhatStands(recall, obstacles, overrides);
        const standing = overrides.filter((override) =>
          obstacles.some(({ obstacle }) => obstacle === override.obstacle),
        );
        await this.steps.insert(transaction, recallId, uuidv7(), 'closed');
        const facts = await this.reports.draw(transaction.read, studioId, recall, recordedAt, [
          {
            at: recordedAt,
            personId: actor.personId,
            outcome: 'closed',
            reason: null,
            overridden: standing.length,
          },
        ]);
        await transaction.insert(RecallClosing, {
          studioId,
          id: dto.id,
          recallId,
          outcome: 'closed',
          reason: null,
          overrides: standing.map(({ obstacle, reason }) => ({ obstacle, reason })),
          facts,
          signedBy,
          secondSignedBy,
          occurredAt: at,
          recordedAt,
          personId: actor.personId,
          via: actor.via,
        });
        await transaction.change(Recall, 'recall', { studioId, id: recallId }, recall.version, {
          state: 'closed',
          endedAt: at,
        });
        if (recall.kind === 'drill') await this.schedules.moveOn(transaction);
        else await this.conditions.reevaluate(transaction, recallId);
        return {
          id: dto.id,
          recallId,
          outcome: 'closed',
          closedAt: at,
          signedBy,
          secondSignedBy,
          overridden: standing.map(({ obstacle }) => obstacle),
          ...(await this.staying(transaction, recallId)),
          score: facts.score,
        };
      },
    );
  }

  private async staying(
    { read, studioId }: Transaction,
    recallId: string,
  ): Promise<Pick<ClosingView, 'holdsStaying' | 'standingHoldsStaying'>> {
    const [row] = await read<{ holds: number; standing: number }>(
      `SELECT (
         SELECT count(*) FROM recall_hold WHERE studio_id = $1 AND recall_id = $2 AND NOT EXISTS (
           SELECT 1 FROM hold_release
           WHERE hold_release.studio_id = $1 AND hold_release.hold_id = recall_hold.hold_id)) AS holds, (
         SELECT count(*) FROM recall_standing_hold WHERE studio_id = $1 AND recall_id = $2 AND NOT EXISTS (
           SELECT 1 FROM standing_hold_end
           WHERE standing_hold_end.studio_id = $1
             AND standing_hold_end.standing_hold_id = recall_standing_hold.standing_hold_id)) AS standing`,
      [studioId, recallId],
    );
    return { holdsStaying: row?.holds ?? 0, standingHoldsStaying: row?.standing ?? 0 };
  }
}

function refuseForeignSignature(actor: Actor, signedBy: string, secondSignedBy: string | null): void {
  if (secondSignedBy === signedBy) {
    throw invalidField(
      'secondSignedBy',
      'The second signature is another person’s. Leave it out if only one signs.',
    );
  }
  if (actor.personId === signedBy || actor.personId === secondSignedBy) return;
  throw new Problem(
    403,
    'not-allowed',
    'Nobody signs for somebody else: one of the two signatures must be of whoever closes the recall. Sign yourself, and let the other person sign second.',
  );
}

function refuseTwice(overrides: readonly ClosingOverrideDto[]): void {
  const named = overrides.map(({ obstacle }) => obstacle);
  const twice = named.find((obstacle, index) => named.indexOf(obstacle) !== index);
  if (twice === undefined) return;
  throw invalidField('overrides', `"${twice}" is overridden twice. Give one reason for each obstacle.`);
}

/** A drill closes whatever was not done: that is its score. */
function refuseWhatStands(
  { kind }: Pick<KnownRecall, 'kind'>,
  obstacles: readonly Obstacle[],
  overrides: readonly ClosingOverrideDto[],
): void {
  if (kind === 'drill') return;
  const standing = notOverridden(
    obstacles,
    overrides.map(({ obstacle }) => obstacle),
  );
  if (standing.length === 0) return;
  const views = standing.map(obstacleView);
  throw new Problem(
    409,
    'decision-needed',
    `This recall cannot be closed yet: ${views.map(({ words }) => words).join(' ')} See to it, or override each with a reason.`,
    { obstacles: views },
  );
}
