import { Injectable } from '@nestjs/common';
import { In } from 'typeorm';
import type { Actor } from '../../platform/actor.js';
import { Clock } from '../../platform/clock.js';
import { Database, type SqlValue } from '../../platform/database/database.js';
import { defaultPageSize, pageOf, refuseUnknownStart } from '../../platform/page.js';
import { notFound, Problem } from '../../platform/problem.js';
import { linesKeptDays } from './old-plan-lines.service.js';
import { Plan } from './plan.entity.js';
import type { PlanSummary } from './plan-content.interface.js';
import { PlanProgress } from './plan-progress.service.js';
import type { PlanListDto } from './plans.dto.js';
import type { PlanDetailView, PlanPageView, PlanView, WhatIfView } from './plans.views.js';

/** Plans as they are shown. */
@Injectable()
export class Plans {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly progress: PlanProgress,
  ) {}

  async list(
    actor: Actor,
    { purpose, state, limit = defaultPageSize, after }: PlanListDto,
  ): Promise<PlanPageView> {
    const { studioId } = actor;
    await refuseUnknownStart(this.database.read, 'plan', studioId, after);
    const parameters: SqlValue[] = [studioId];
    const conditions = ['studio_id = $1', "purpose <> 'replay'"];
    if (purpose !== undefined) conditions.push(`purpose = $${parameters.push(purpose)}`);
    if (state !== undefined) conditions.push(`state = $${parameters.push(state)}`);
    if (after !== undefined) {
      const number = parameters.push(after);
      conditions.push(`(asked_at, id) < (
        SELECT asked_at, id FROM plan AS last WHERE last.studio_id = $1 AND last.id = $${number})`);
    }
    const rows = await this.database.read<{ id: string }>(
      `SELECT id FROM plan WHERE ${conditions.join(' AND ')} ORDER BY asked_at DESC, id DESC LIMIT ${limit + 1}`,
      parameters,
    );
    const { shown, next } = pageOf(rows, limit, ({ id }) => id);
    const plans = await this.find(
      studioId,
      shown.map(({ id }) => id),
    );
    const summaries = await this.summariesOf(studioId, plans);
    return { items: plans.map((plan) => this.viewOf(plan, summaries.get(plan.id) ?? null)), next };
  }

  /** @throws Problem not-found */
  async show(actor: Actor, planId: string): Promise<PlanDetailView> {
    const [plan] = await this.find(actor.studioId, [planId]);
    if (!plan) throw notFound('plan', planId);
    return this.detailOf(plan);
  }

  /** The latest that is done, what-ifs left aside. @throws Problem not-found */
  async latest(actor: Actor): Promise<PlanDetailView> {
    const plan = await this.latestOf(actor.studioId);
    if (plan) return this.detailOf(plan);
    throw new Problem(404, 'not-found', 'No plan is done yet. Have one made: POST …/plans.');
  }

  async latestOf(studioId: string): Promise<Plan | null> {
    return this.database.reader.manager.findOne(Plan, {
      where: { studioId, purpose: 'plan', state: 'done' },
      order: { askedAt: 'DESC', id: 'DESC' },
    });
  }

  /**
   * The plan whose lines are those of another.
   * @throws Problem not-found; wrong-state while it has none, and when they were removed
   */
  async withLines(actor: Actor, planId: string): Promise<Plan> {
    const [plan] = await this.find(actor.studioId, [planId]);
    if (!plan) throw notFound('plan', planId);
    if (plan.state !== 'done') {
      throw new Problem(
        409,
        'wrong-state',
        `This plan is ${plan.state}, so it has no lines. ${plan.state === 'waiting' || plan.state === 'running' ? 'Ask again when it is done.' : 'Have another made.'}`,
        { state: plan.state },
      );
    }
    if (plan.sameAsId === null) return this.withAllLines(plan);
    const [same] = await this.find(actor.studioId, [plan.sameAsId]);
    if (!same) throw notFound('plan', plan.sameAsId);
    return this.withAllLines(same);
  }

  /** Lines go some at a time: a part of them would look like a plan. */
  private async withAllLines(plan: Plan): Promise<Plan> {
    const [row] = await this.database.read<{ lines: number }>(
      'SELECT count(*) AS lines FROM plan_line WHERE studio_id = $1 AND plan_id = $2',
      [plan.studioId, plan.id],
    );
    const { sums } = (plan.summary ?? {}) as Partial<PlanSummary>;
    if ((row?.lines ?? 0) >= (sums?.lines ?? 0)) return plan;
    throw new Problem(
      409,
      'wrong-state',
      `Nothing was ordered from this plan within ${linesKeptDays} days, so its lines were removed. Have another made.`,
      { state: plan.state },
    );
  }

  viewOf(plan: Plan, summary: PlanSummary | null): PlanView {
    const isUnderWay = plan.state === 'waiting' || plan.state === 'running';
    const under = isUnderWay ? this.progress.of(plan.id) : undefined;
    const sums = summary?.sums ?? null;
    return {
      id: plan.id,
      purpose: plan.purpose,
      whatIf: plan.whatIf as WhatIfView | null,
      state: plan.state,
      plannedOn: plan.plannedOn,
      askedAt: plan.askedAt,
      personId: plan.personId,
      endedAt: plan.endedAt,
      failure: plan.failure,
      sameAsId: plan.sameAsId,
      itemsDone: under?.done ?? sums?.lines ?? null,
      items: under?.items ?? sums?.lines ?? null,
      runningSeconds: under ? this.secondsSince(under.startedAt) : (summary?.runningSeconds ?? null),
      dueToday: summary?.dueToday ?? null,
      version: plan.version,
    };
  }

  private secondsSince(instant: string): number {
    return Math.max(0, Math.round((Date.parse(this.clock.now()) - Date.parse(instant)) / 100) / 10);
  }

  private async detailOf(plan: Plan): Promise<PlanDetailView> {
    const summaries = await this.summariesOf(plan.studioId, [plan]);
    const summary = summaries.get(plan.id) ?? null;
    return {
      ...this.viewOf(plan, summary),
      sums: summary?.sums ?? null,
      baskets: summary?.baskets ?? [],
      assumptions: summary?.assumptions ?? [],
    };
  }

  /** By plan; of one whose facts were the same, that of the other. */
  private async summariesOf(studioId: string, plans: readonly Plan[]): Promise<Map<string, PlanSummary>> {
    const others = plans.flatMap(({ sameAsId }) => sameAsId ?? []);
    const known = new Map([...plans, ...(await this.find(studioId, others))].map((plan) => [plan.id, plan]));
    return new Map(
      plans.flatMap((plan): [string, PlanSummary][] => {
        const summary = (plan.summary ??
          known.get(plan.sameAsId ?? '')?.summary ??
          null) as PlanSummary | null;
        return summary === null ? [] : [[plan.id, summary]];
      }),
    );
  }

  private async find(studioId: string, ids: readonly string[]): Promise<Plan[]> {
    if (ids.length === 0) return [];
    return this.database.reader.manager.find(Plan, {
      where: { studioId, id: In([...new Set(ids)]), purpose: In(['plan', 'what if']) },
      order: { askedAt: 'DESC', id: 'DESC' },
    });
  }
}
