import { Injectable, Logger } from '@nestjs/common';
import { StudioActors } from '../../identity/studio-actors.service.js';
import { Clock } from '../../platform/clock.js';
import { Database } from '../../platform/database/database.js';
import { Transactions } from '../../platform/database/transactions.js';
import { TransferConditions, transferConditionKinds } from './transfer-conditions.service.js';

/**
 * Judges the conditions of another studio anew after something was written here that it should know of: a write touches
 * one studio, so the other's alerts open in a write of its own, by the service itself. What is missed, by a fault or the
 * end of the process, the other studio's next sweep finds.
 */
@Injectable()
export class OtherEnds {
  private readonly logger = new Logger('transfers');

  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly clock: Clock,
    private readonly conditions: TransferConditions,
    private readonly studioActors: StudioActors,
  ) {}

  /** Call it when the write here is done. Never throws. */
  async judge(studioIds: readonly string[]): Promise<void> {
    for (const studioId of new Set(studioIds)) {
      try {
        if (await this.hasNews(studioId)) await this.judgeOne(studioId);
      } catch (error) {
        this.logger.error(`The transfers of studio ${studioId} were not judged: ${String(error)}`);
      }
    }
  }

  /**
   * Whether what stands differs from what is open, so that nothing is written when nothing is new. What somebody closed by
   * hand is known too, until it is over.
   */
  private async hasNews(studioId: string): Promise<boolean> {
    const standing = await this.conditions.standing(this.database.read, studioId, this.clock.now());
    const known = await this.database.read<{ kind: string; subjectId: string; severity: string }>(
      `SELECT DISTINCT kind, subject_id AS "subjectId", severity FROM alert
       WHERE studio_id = $1 AND kind IN ($2, $3)
         AND (closed_at IS NULL OR (closed_by IS NOT NULL AND ended_at IS NULL))`,
      [studioId, ...transferConditionKinds],
    );
    const words = (one: { kind: string; subjectId: string; severity: string }) =>
      `${one.kind} ${one.subjectId} ${one.severity}`;
    const told = new Set(known.map(words));
    return standing.length !== told.size || standing.some((condition) => !told.has(words(condition)));
  }

  private async judgeOne(studioId: string): Promise<void> {
    const actor = await this.studioActors.of(studioId);
    if (!actor) return;
    const subject = { kind: 'studio', id: studioId };
    await this.transactions.write(
      actor,
      { id: null, action: 'stock.judge-transfers', subject, content: null },
      (transaction) => this.conditions.reevaluate(transaction),
    );
  }
}
