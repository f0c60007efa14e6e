import { Injectable } from '@nestjs/common';
import { In } from 'typeorm';
import type { Actor } from '../../platform/actor.js';
import { Database, type SqlValue } from '../../platform/database/database.js';
import { defaultPageSize } from '../../platform/page.js';
import { Problem } from '../../platform/problem.js';
import { StockLevel } from '../../stock/stock-level.entity.js';
import type { PlanLineContent } from './plan-content.interface.js';
import { type LineColumns, PlanLineViews } from './plan-line-views.service.js';
import type { PlanLinesDto } from './plans.dto.js';
import { Plans } from './plans.service.js';
import type { PlanLinePageView, PlanLineSummaryView, PlanLineView } from './plans.views.js';

/** The lines of a plan as they are shown. */
@Injectable()
export class PlanLines {
  constructor(
    private readonly database: Database,
    private readonly plans: Plans,
    private readonly views: PlanLineViews,
  ) {}

  /** @throws Problem not-found; wrong-state while the plan is not done */
  async list(
    actor: Actor,
    planId: string,
    { limit = defaultPageSize, afterLine = 0, decision, supplierId }: PlanLinesDto,
  ): Promise<PlanLinePageView> {
    const plan = await this.plans.withLines(actor, planId);
    const parameters: SqlValue[] = [actor.studioId, plan.id, afterLine];
    const conditions = ['studio_id = $1', 'plan_id = $2', 'line_number > $3'];
    if (decision !== undefined) conditions.push(`decision = $${parameters.push(decision)}`);
    if (supplierId !== undefined) conditions.push(`supplier_id = $${parameters.push(supplierId)}`);
    const rows = await this.database.read<LineRow>(
      `SELECT ${columns} FROM plan_line WHERE ${conditions.join(' AND ')} ORDER BY line_number LIMIT ${limit + 1}`,
      parameters,
    );
    const lines = await this.withLevels(actor.studioId, rows.slice(0, limit));
    return {
      planId: plan.id,
      items: lines.map(summaryOf),
      next: rows.length > limit ? (lines.at(-1)?.lineNumber ?? null) : null,
    };
  }

  /** @throws Problem not-found; wrong-state while the plan is not done */
  async show(actor: Actor, planId: string, lineNumber: number): Promise<PlanLineView> {
    const { studioId } = actor;
    const plan = await this.plans.withLines(actor, planId);
    const [row] = await this.database.read<LineRow>(
      `SELECT ${columns} FROM plan_line WHERE studio_id = $1 AND plan_id = $2 AND line_number = $3`,
      [studioId, plan.id, lineNumber],
    );
    if (!row) throw new Problem(404, 'not-found', `This plan has no line ${lineNumber}.`);
    const [line] = await this.withLevels(studioId, [row]);
    if (!line) throw new Error('A line of a plan was lost on its way.');
    return line;
  }

  /** With the minima of stock as they stand now. */
  private async withLevels(studioId: string, rows: readonly LineRow[]): Promise<PlanLineView[]> {
    const lines = rows.map(({ content, ...columns }) => {
      const kept = JSON.parse(content) as PlanLineContent;
      return { kept, view: this.views.viewOf(columns, kept) };
    });
    const levels = await this.database.reader.manager.findBy(StockLevel, {
      studioId,
      subjectId: In(lines.flatMap(({ kept }) => kept.levelKeys)),
    });
    return lines.map(({ kept, view }) => {
      const [level] = kept.levelKeys.flatMap(
        (key) =>
          levels.find(({ subjectKind, subjectId }) => subjectKind === view.item.kind && subjectId === key) ??
          [],
      );
      return {
        ...view,
        level: {
          minimumPieces: kept.computed.decision.reorderPoint?.pieces ?? null,
          currentPieces: level?.minimumPieces ?? null,
          setByHand: level !== undefined && level.planId === null,
        },
      };
    });
  }
}

const columns = `line_number AS "lineNumber", decision, order_on AS "orderOn", offer_id AS "offerId", packs,
  supplier_id AS "supplierId", content`;

type LineRow = LineColumns & { content: string };

function summaryOf(line: PlanLineView): PlanLineSummaryView {
  const { lineNumber, item, decision, orderOn, arrivesOn, arrivesLate, supplierId, supplierName } = line;
  const { offerId, productId, packs, containers, orderedUnits, costMinor, currency, stakeMinor } = line;
  const { usableUnits, unitsPerWeek, shortChance, shortOn, shortChanceAfter, expectedWasteMinor } = line;
  const { onTheWayUnits, coverDays, sentence, notes, level } = line;
  return {
    ...{ lineNumber, item, decision, orderOn, arrivesOn, arrivesLate, supplierId, supplierName },
    ...{ offerId, productId, packs, containers, orderedUnits, costMinor, currency, stakeMinor },
    ...{ usableUnits, unitsPerWeek, shortChance, shortOn, shortChanceAfter, expectedWasteMinor },
    ...{ onTheWayUnits, coverDays, sentence, notes, level },
  };
}
