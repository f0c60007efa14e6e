import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/actor.js';
import { placeholders, type SqlValue } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Transactions } from '../../platform/database/transactions.js';
import { invalidField, Problem } from '../../platform/problem.js';
import { Levels } from '../../stock/levels.service.js';
import type { PlanLineContent } from './plan-content.interface.js';
import type { TakeLevelsDto } from './plans.dto.js';
import { Plans } from './plans.service.js';
import type { LevelsTakenView, LevelTakenView } from './plans.views.js';

interface TakenLine {
  lineNumber: number;
  label: string;
  subjectKind: 'product' | 'configuration';
  subjectId: string;
  minimumPieces: number;
}

/** Takes a plan's reorder points for the minima of stock. */
@Injectable()
export class PlanLevels {
  constructor(
    private readonly transactions: Transactions,
    private readonly plans: Plans,
    private readonly levels: Levels,
  ) {}

  /**
   * @throws Problem not-found; wrong-state while the plan is not done, and of a what-if; invalid-fields when a line has no
   * reorder point
   */
  async take(actor: Actor, planId: string, dto: TakeLevelsDto): Promise<LevelsTakenView> {
    const plan = await this.plans.withLines(actor, planId);
    if (plan.purpose !== 'plan') {
      throw new Problem(
        409,
        'wrong-state',
        'This is a what-if, and its reorder points are of what is only supposed. Take them from a plan.',
      );
    }
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'reorder.take-levels',
        subject: { kind: 'plan', id: planId },
        content: { planId, ...dto },
      },
      async (transaction) => {
        const lines = await this.linesOf(transaction, plan.id, dto.lineNumbers);
        const outcomes = await this.levels.takeFromPlan(
          transaction,
          plan.id,
          lines.map(({ subjectKind, subjectId, minimumPieces }) => ({
            subjectKind,
            subjectId,
            minimumPieces,
          })),
          dto.lineNumbers !== undefined,
        );
        const items = lines.map(
          ({ lineNumber, label, subjectKind, subjectId, minimumPieces }, index): LevelTakenView => {
            const outcome = outcomes[index];
            return {
              ...{ lineNumber, subjectKind, subjectId, label },
              before: outcome?.before ?? null,
              after:
                outcome?.outcome === 'left, since it was set by hand' ? (outcome.before ?? 0) : minimumPieces,
              outcome: outcome?.outcome ?? 'unchanged',
            };
          },
        );
        transaction.note({ planId: plan.id, set: items.filter(({ outcome }) => outcome === 'set').length });
        return { planId: plan.id, items };
      },
    );
  }

  private async linesOf(
    transaction: Transaction,
    planId: string,
    lineNumbers: readonly number[] | undefined,
  ): Promise<TakenLine[]> {
    const parameters: SqlValue[] = [transaction.studioId, planId];
    let which = '';
    if (lineNumbers !== undefined) {
      which = `AND line_number IN (${placeholders(lineNumbers, 3)})`;
      parameters.push(...lineNumbers);
    }
    const rows = await transaction.query<{ lineNumber: number; content: string }>(
      `SELECT line_number AS "lineNumber", content FROM plan_line
       WHERE studio_id = $1 AND plan_id = $2 ${which} ORDER BY line_number`,
      parameters,
    );
    const lines = rows.flatMap(({ lineNumber, content }): TakenLine[] => {
      const { item, computed } = JSON.parse(content) as PlanLineContent;
      const reorderPointPieces = computed.decision.reorderPoint?.pieces ?? null;
      if (reorderPointPieces === null) return [];
      return [
        {
          lineNumber,
          label: item.label,
          subjectKind: item.kind,
          subjectId: item.key,
          minimumPieces: reorderPointPieces,
        },
      ];
    });
    const found = new Set(lines.map(({ lineNumber }) => lineNumber));
    const missing = lineNumbers?.find((number) => !found.has(number));
    if (missing === undefined) return lines;
    throw invalidField(
      'lineNumbers',
      `Line ${missing} of this plan is not there, or has no reorder point. Name lines that have one, or leave them out for all.`,
    );
  }
}
