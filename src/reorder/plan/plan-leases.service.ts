import { Injectable } from '@nestjs/common';
import { In } from 'typeorm';
import { Clock } from '../../platform/clock.js';
import { Database } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Transactions } from '../../platform/database/transactions.js';
import { Plan } from './plan.entity.js';
import { isPlanHeld, planLeaseEnd } from './plan-lease.js';

type PlanName = Pick<Plan, 'studioId' | 'id'>;

/**
 * Which process makes a plan. Several may serve on PostgreSQL: each says of its plans, again and again, that it is at them;
 * of whom nothing is heard any more, the plans were cut off. On SQLite one process serves, so that it knows by itself.
 */
@Injectable()
export class PlanLeases {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly clock: Clock,
  ) {}

  /** In the transaction in which the plan begins to be made. */
  async take(transaction: Transaction, planId: string): Promise<void> {
    await transaction.query(
      `INSERT INTO plan_lease (studio_id, plan_id, held_until) VALUES ($1, $2, $3)
       ON CONFLICT (studio_id, plan_id) DO UPDATE SET held_until = $3`,
      [transaction.studioId, planId, planLeaseEnd(transaction.recordedAt)],
    );
  }

  /** @returns false when the plan has ended: somebody stopped it, or it was taken for cut off */
  async renew({ studioId, id }: PlanName): Promise<boolean> {
    const renewed = await this.transactions.aside((query, now) =>
      query<{ planId: string }>(
        `UPDATE plan_lease SET held_until = $1 WHERE studio_id = $2 AND plan_id = $3
           AND EXISTS (SELECT 1 FROM plan WHERE studio_id = $2 AND id = $3 AND state = 'running')
         RETURNING plan_id AS "planId"`,
        [planLeaseEnd(now), studioId, id],
      ),
    );
    return renewed.length > 0;
  }

  async giveBack({ studioId, id }: PlanName): Promise<void> {
    await this.transactions.aside((query) =>
      query('DELETE FROM plan_lease WHERE studio_id = $1 AND plan_id = $2', [studioId, id]),
    );
  }

  /** Plans on record as being made, which nobody makes any more. @param isOwn whether this process makes it */
  async cutOff(isOwn: (planId: string) => boolean): Promise<Plan[]> {
    const { engine, read, reader } = this.database;
    const running = await read<{ id: string; heldUntil: string | null }>(
      `SELECT plan.id, plan_lease.held_until AS "heldUntil" FROM plan
         LEFT JOIN plan_lease ON plan_lease.studio_id = plan.studio_id AND plan_lease.plan_id = plan.id
       WHERE plan.state = 'running' ORDER BY plan.id`,
    );
    const now = this.clock.now();
    const ids = running
      .filter(({ id, heldUntil }) => !isOwn(id) && (engine === 'sqlite' || !isPlanHeld(heldUntil, now)))
      .map(({ id }) => id);
    return ids.length === 0 ? [] : reader.manager.find(Plan, { where: { id: In(ids), state: 'running' } });
  }
}
