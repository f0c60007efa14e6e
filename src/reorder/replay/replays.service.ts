import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/actor.js';
import { Database } from '../../platform/database/database.js';
import { Transactions } from '../../platform/database/transactions.js';
import { Problem } from '../../platform/problem.js';
import { Plan } from '../plan/plan.entity.js';
import { PlanProgress } from '../plan/plan-progress.service.js';
import { PlanRequests } from '../plan/plan-requests.service.js';
import type { MakeReplayDto } from './replays.dto.js';
import type { ReplayResultView, ReplaysView, ReplayView } from './replays.views.js';

const purpose = 'replay';

/** What had come of it if plans had been followed: asking for it, and the latest answer. */
@Injectable()
export class Replays {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly requests: PlanRequests,
    private readonly progress: PlanProgress,
  ) {}

  /** @throws Problem wrong-state while one waits or runs; too-many-requests */
  make(actor: Actor, dto: MakeReplayDto): Promise<ReplayView> {
    const { id } = dto;
    return this.transactions.write(
      actor,
      { id, action: 'reorder.make-replay', subject: { kind: 'plan', id }, content: dto },
      async (transaction) => {
        const { studioId } = transaction;
        const [underWay] = await transaction.query<{ id: string; state: string }>(
          `SELECT id, state FROM plan WHERE studio_id = $1 AND purpose = 'replay' AND state IN ('waiting', 'running')
           ORDER BY asked_at, id LIMIT 1`,
          [studioId],
        );
        if (underWay) {
          throw new Problem(
            409,
            'wrong-state',
            `A replay is ${underWay.state} already. Wait for it, or end it: POST …/plans/${underWay.id}/cancel.`,
            { state: underWay.state },
          );
        }
        await this.requests.refuseTooMany(transaction);
        return this.viewOf(await this.requests.put(transaction, id, purpose, null));
      },
    );
  }

  async latest({ studioId }: Actor): Promise<ReplaysView> {
    const { manager } = this.database.reader;
    const order = { askedAt: 'DESC', id: 'DESC' } as const;
    const run = await manager.findOne(Plan, { where: { studioId, purpose }, order });
    const done = await manager.findOne(Plan, { where: { studioId, purpose, state: 'done' }, order });
    return {
      run: run && this.viewOf(run),
      done: done && this.viewOf(done),
      result: done && (done.summary as ReplayResultView | null),
    };
  }

  private viewOf({ id, state, plannedOn, askedAt, endedAt, failure, version }: Plan): ReplayView {
    const under = state === 'waiting' || state === 'running' ? this.progress.of(id) : undefined;
    const stepsDone = under?.done ?? null;
    return {
      id,
      state,
      plannedOn,
      askedAt,
      endedAt,
      failure,
      stepsDone,
      steps: under?.items ?? null,
      version,
    };
  }
}
