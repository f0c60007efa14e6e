import { Injectable, Logger, type OnModuleInit } from '@nestjs/common';
import { isMorningDue } from '../../alerts/schedule/morning-due.js';
import { ScheduleStates } from '../../alerts/schedule/schedule-states.service.js';
import { Schedules } from '../../alerts/schedule/schedules.service.js';
import { localDay } from '../../identity/local-day.js';
import { StudioActors } from '../../identity/studio-actors.service.js';
import type { Actor } from '../../platform/actor.js';
import { Clock } from '../../platform/clock.js';
import { Database, type Read } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Transactions } from '../../platform/database/transactions.js';
import { ProcessRole } from '../../platform/process-role.js';
import { dayOfNumber } from './local-day-numbers.js';
import { Plan, PlanLine } from './plan.entity.js';

/** Lines of a plan from which nothing was ordered, and what an earlier replay came to, are kept so long. */
export const linesKeptDays = 30;

const purpose = 'old plan lines';
/** By the studio's clock: after the plan of the night, while nobody works. */
const removedAt = '04:00';
/** Lines that are removed in one transaction: few, so that no scan waits for it. */
const linesAtOnce = 50;
const plansAtOnce = 100;

/** Of a plan `plan`: it, or one that shows its lines, was drafted from. */
const isDraftedFrom = `EXISTS (SELECT 1 FROM purchase_order
  JOIN plan AS source ON source.studio_id = purchase_order.studio_id AND source.id = purchase_order.plan_id
  WHERE purchase_order.studio_id = plan.studio_id AND (source.id = plan.id OR source.same_as_id = plan.id))`;

/**
 * Removes lines of old plans each night. A line takes some kilobytes, and every night brings one for each item; a plan is
 * worked out from the record and is no part of what happened. What was drafted from stays, since it says why something was
 * ordered, and so does the latest plan. Of all plans stays what they came to: sums, baskets and assumptions. What a replay
 * came to is all of its lines: it goes as well, but for the latest, which alone is shown.
 */
@Injectable()
export class OldPlanLines implements OnModuleInit {
  private readonly logger = new Logger('plans');

  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly clock: Clock,
    private readonly role: ProcessRole,
    private readonly states: ScheduleStates,
    private readonly studioActors: StudioActors,
    private readonly schedules: Schedules,
  ) {}

  onModuleInit(): void {
    this.schedules.register({ purpose, look: () => this.look() });
  }

  /** One studio's fault is not the others'; it is tried again at the next look. */
  async look(): Promise<void> {
    const done = await this.states.all(this.database.read, purpose);
    for (const actor of await this.studioActors.all()) {
      const doneAt = done.get(actor.studioId) ?? null;
      if (!isMorningDue(doneAt, this.clock.now(), removedAt, actor.timeZone)) continue;
      try {
        if ((await this.removeOf(actor)) && (await this.clearReplays(actor))) await this.noteDone(actor);
      } catch (error) {
        this.logger.error(`Old lines of plans of studio ${actor.studioId} were left: ${String(error)}`);
      }
    }
  }

  /** @returns false when the service ends before all are removed */
  private async removeOf(actor: Actor): Promise<boolean> {
    for (let plans = await this.old(actor); plans.length > 0; plans = await this.old(actor)) {
      for (const planId of plans) {
        let removed = linesAtOnce;
        while (removed === linesAtOnce) {
          if (this.role.ending) return false;
          removed = await this.removeSome(actor, planId);
        }
      }
    }
    return true;
  }

  /** Plans whose lines are to go, the oldest first. */
  private async old({ studioId, timeZone }: Actor): Promise<string[]> {
    const today = localDay(this.clock.now(), timeZone);
    const rows = await this.database.read<{ id: string }>(
      `SELECT id FROM plan
       WHERE studio_id = $1 AND planned_on < $2 AND state IN ('done', 'cancelled', 'failed') AND id <> $3
         AND EXISTS (SELECT 1 FROM plan_line WHERE plan_line.studio_id = $1 AND plan_line.plan_id = plan.id)
         AND NOT ${isDraftedFrom}
       ORDER BY planned_on, id LIMIT ${plansAtOnce}`,
      [studioId, dayOfNumber(-linesKeptDays, today), await latestOf(this.database.read, studioId)],
    );
    return rows.map(({ id }) => id);
  }

  private removeSome(actor: Actor, planId: string): Promise<number> {
    const subject = { kind: 'plan', id: planId };
    const request = { id: null, action: 'reorder.remove-plan-lines', subject, content: null };
    return this.transactions.write(actor, request, async (transaction) => {
      // Orders are drafted under the same lock.
      await transaction.lockStudio();
      const ids = await someLines(transaction, planId);
      for (const id of ids) {
        await transaction.remove(PlanLine, { studioId: transaction.studioId, id });
      }
      transaction.note({ planId, linesRemoved: ids.length, keptDays: linesKeptDays });
      return ids.length;
    });
  }

  /** @returns false when the service ends before all are cleared */
  private async clearReplays(actor: Actor): Promise<boolean> {
    for (
      let replays = await this.oldReplays(actor);
      replays.length > 0;
      replays = await this.oldReplays(actor)
    ) {
      for (const id of replays) {
        if (this.role.ending) return false;
        await this.clearReplay(actor, id);
      }
    }
    return true;
  }

  /** Earlier replays with what they came to, the oldest first. */
  private async oldReplays({ studioId, timeZone }: Actor): Promise<string[]> {
    const today = localDay(this.clock.now(), timeZone);
    const rows = await this.database.read<{ id: string }>(
      `SELECT id FROM plan
       WHERE studio_id = $1 AND purpose = 'replay' AND planned_on < $2 AND summary IS NOT NULL
         AND EXISTS (SELECT 1 FROM plan AS later
           WHERE later.studio_id = $1 AND later.purpose = 'replay' AND later.state = 'done'
             AND (later.asked_at, later.id) > (plan.asked_at, plan.id))
       ORDER BY planned_on, id LIMIT ${plansAtOnce}`,
      [studioId, dayOfNumber(-linesKeptDays, today)],
    );
    return rows.map(({ id }) => id);
  }

  private clearReplay(actor: Actor, id: string): Promise<void> {
    const { studioId } = actor;
    const request = {
      id: null,
      action: 'reorder.clear-replay',
      subject: { kind: 'plan', id },
      content: null,
    };
    return this.transactions.write(actor, request, async (transaction) => {
      await transaction.lockStudio();
      const replay = await transaction.manager.findOneBy(Plan, { studioId, id });
      // Another process may have been here.
      if (!replay || replay.summary === null) return;
      await transaction.change(Plan, 'plan', { studioId, id }, replay.version, { summary: null });
    });
  }

  private noteDone(actor: Actor): Promise<void> {
    return this.transactions.quietly(actor, (transaction) =>
      this.states.noteDone(transaction, purpose, this.clock.now()),
    );
  }
}

/** The plan that holds the lines of the latest one; empty when none is done. */
async function latestOf(read: Read, studioId: string): Promise<string> {
  const [latest] = await read<{ id: string }>(
    `SELECT coalesce(same_as_id, id) AS id FROM plan
     WHERE studio_id = $1 AND purpose = 'plan' AND state = 'done' ORDER BY asked_at DESC, id DESC LIMIT 1`,
    [studioId],
  );
  return latest?.id ?? '';
}

/** None when an order was drafted from the plan meanwhile. */
async function someLines({ read, studioId }: Transaction, planId: string): Promise<string[]> {
  const rows = await read<{ id: string }>(
    `SELECT plan_line.id FROM plan
       JOIN plan_line ON plan_line.studio_id = plan.studio_id AND plan_line.plan_id = plan.id
     WHERE plan.studio_id = $1 AND plan.id = $2 AND NOT ${isDraftedFrom}
     ORDER BY plan_line.line_number DESC LIMIT ${linesAtOnce}`,
    [studioId, planId],
  );
  return rows.map(({ id }) => id);
}
