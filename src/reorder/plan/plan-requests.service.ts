import { Injectable } from '@nestjs/common';
import { localDay } from '../../identity/local-day.js';
import type { Actor } from '../../platform/actor.js';
import { placeholders } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Transactions } from '../../platform/database/transactions.js';
import { type FieldFault, faultsProblem, notFound, Problem } from '../../platform/problem.js';
import { KnownItems } from '../settings/known-items.service.js';
import { Plan } from './plan.entity.js';
import { PlanRunner } from './plan-runner.service.js';
import { seedOfDay } from './plan-seed.js';
import type { CancelPlanDto, MakePlanDto, WhatIfDto } from './plans.dto.js';
import { Plans } from './plans.service.js';
import type { PlanView, WhatIfView } from './plans.views.js';

/** So many of a studio wait or run at most. */
const mostUnderWay = 5;

/** Asking for plans, and ending them. */
@Injectable()
export class PlanRequests {
  constructor(
    private readonly transactions: Transactions,
    private readonly plans: Plans,
    private readonly runner: PlanRunner,
    private readonly knownItems: KnownItems,
  ) {}

  /** @throws Problem invalid-fields; not-found; too-many-requests while many wait already */
  make(actor: Actor, dto: MakePlanDto): Promise<PlanView> {
    const { id, purpose } = dto;
    return this.transactions.write(
      actor,
      { id, action: 'reorder.make-plan', subject: { kind: 'plan', id }, content: dto },
      async (transaction) => {
        const today = localDay(transaction.recordedAt, actor.timeZone);
        await this.refuseFaults(transaction, dto, today);
        await this.refuseTooMany(transaction);
        const plan = await this.put(
          transaction,
          id,
          purpose,
          purpose === 'plan' ? null : supposed(dto.whatIf),
        );
        return this.plans.viewOf(plan, null);
      },
    );
  }

  /** Has a plan wait its turn, inside a write. */
  async put(
    transaction: Transaction,
    id: string,
    purpose: Plan['purpose'],
    whatIf: WhatIfView | null,
  ): Promise<Plan> {
    const { studioId, recordedAt, actor } = transaction;
    const plannedOn = localDay(recordedAt, actor.timeZone);
    const plan: Plan = {
      studioId,
      id,
      purpose,
      whatIf,
      state: 'waiting',
      plannedOn,
      seed: seedOfDay(plannedOn),
      factsDigest: null,
      sameAsId: null,
      summary: null,
      failure: null,
      askedAt: recordedAt,
      personId: actor.personId,
      endedAt: null,
      version: 1,
    };
    await transaction.insert(Plan, plan);
    return plan;
  }

  /** @throws Problem not-found; wrong-state when it has ended */
  async cancel(actor: Actor, planId: string, dto: CancelPlanDto): Promise<PlanView> {
    const answer = await this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'reorder.cancel-plan',
        subject: { kind: 'plan', id: planId },
        content: { planId },
      },
      async (transaction) => {
        const { studioId, recordedAt } = transaction;
        const plan = await transaction.manager.findOneBy(Plan, { studioId, id: planId });
        if (!plan) throw notFound('plan', planId);
        if (plan.state !== 'waiting' && plan.state !== 'running') {
          throw new Problem(409, 'wrong-state', `This plan is ${plan.state}: there is nothing to end.`, {
            state: plan.state,
          });
        }
        const ended = await transaction.change(Plan, 'plan', { studioId, id: planId }, plan.version, {
          state: 'cancelled',
          endedAt: recordedAt,
        });
        return this.plans.viewOf(ended, null);
      },
    );
    await this.runner.stop(planId);
    return answer;
  }

  private async refuseFaults(
    transaction: Transaction,
    { purpose, whatIf }: MakePlanDto,
    today: string,
  ): Promise<void> {
    const faults: FieldFault[] = [];
    if (purpose === 'plan' && whatIf !== undefined) {
      faults.push({ field: 'whatIf', message: 'is for the purpose "what if" only: leave it out' });
    }
    if (purpose === 'what if' && isAsItIs(whatIf)) {
      faults.push({ field: 'whatIf', message: 'must name something that is supposed to be different' });
    }
    if ((whatIf?.itemKind === undefined) !== (whatIf?.itemKey === undefined)) {
      faults.push({ field: 'whatIf.itemKey', message: 'is given with itemKind, or neither of them' });
    }
    const extra = whatIf?.extraSessions ?? [];
    for (const [index, { on }] of extra.entries()) {
      if (on >= today) continue;
      const field = `whatIf.extraSessions.${index}.on`;
      faults.push({ field, message: `must not be before today, ${today}` });
    }
    if (faults.length > 0) throw faultsProblem(faults);
    const ids = extra.map(({ procedureId }) => procedureId);
    const known = await this.knownProcedures(transaction, ids);
    const unknown = ids.find((id) => !known.has(id));
    if (unknown !== undefined) throw notFound('procedure', unknown);
    const { itemKind, itemKey } = whatIf ?? {};
    if (itemKind !== undefined && itemKey !== undefined) {
      await this.knownItems.require(transaction, itemKind, itemKey);
    }
  }

  private async knownProcedures(transaction: Transaction, ids: readonly string[]): Promise<Set<string>> {
    if (ids.length === 0) return new Set();
    const rows = await transaction.query<{ id: string }>(
      `SELECT id FROM procedure WHERE studio_id = $1 AND id IN (${placeholders(ids)})`,
      [transaction.studioId, ...ids],
    );
    return new Set(rows.map(({ id }) => id));
  }

  /** @throws Problem too-many-requests while many wait already */
  async refuseTooMany(transaction: Transaction): Promise<void> {
    const [row] = await transaction.query<{ count: number }>(
      `SELECT count(*) AS count FROM plan WHERE studio_id = $1 AND state IN ('waiting', 'running')`,
      [transaction.studioId],
    );
    if ((row?.count ?? 0) < mostUnderWay) return;
    throw new Problem(
      409,
      'too-many-requests',
      `${mostUnderWay} plans of this studio wait or run already. Wait for one, or end one: POST …/plans/{planId}/cancel.`,
    );
  }
}

function isAsItIs(whatIf: WhatIfDto | undefined): boolean {
  if (whatIf === undefined) return true;
  const { itemKind: _, itemKey: __, extraSessions = [], ...changes } = whatIf;
  return extraSessions.length === 0 && Object.values(changes).every((value) => value === undefined);
}

function supposed(whatIf: WhatIfDto | undefined): WhatIfView {
  return {
    itemKind: whatIf?.itemKind ?? null,
    itemKey: whatIf?.itemKey ?? null,
    serviceTargetPerMille: whatIf?.serviceTargetPerMille ?? null,
    leadTimePerMille: whatIf?.leadTimePerMille ?? null,
    leadTimeExtraDays: whatIf?.leadTimeExtraDays ?? null,
    pricePerMille: whatIf?.pricePerMille ?? null,
    bookingsPerMille: whatIf?.bookingsPerMille ?? null,
    extraSessions: (whatIf?.extraSessions ?? []).map(({ procedureId, on, sessions }) => ({
      procedureId,
      on,
      sessions,
    })),
  };
}
