import { Injectable, Logger, type OnModuleInit } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import { isMorningDue } from '../../alerts/schedule/morning-due.js';
import { ScheduleStates } from '../../alerts/schedule/schedule-states.service.js';
import { Schedules } from '../../alerts/schedule/schedules.service.js';
import { localDay } from '../../identity/local-day.js';
import { StudioActors } from '../../identity/studio-actors.service.js';
import type { Actor } from '../../platform/actor.js';
import { Clock } from '../../platform/clock.js';
import { Database } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Transactions } from '../../platform/database/transactions.js';
import { nightlyStep } from './nightly-step.js';
import { PlanRequests } from './plan-requests.service.js';
import type { PlanState } from './vocabulary.js';

const purpose = 'plans';
/** By the studio's clock: nobody works, and it is there in the morning. */
const plannedAt = '03:00';
/** Of one day. */
const mostPlans = 100;

/**
 * Has a plan made each night in every studio with offers, unless one of that day was asked for already. The first one is
 * asked for by a person: from then on a studio has one every morning.
 */
@Injectable()
export class NightlyPlans implements OnModuleInit {
  private readonly logger = new Logger('plans');

  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly clock: Clock,
    private readonly states: ScheduleStates,
    private readonly studioActors: StudioActors,
    private readonly schedules: Schedules,
    private readonly requests: PlanRequests,
  ) {}

  onModuleInit(): void {
    this.schedules.register({ purpose, look: () => this.look() });
  }

  /** One studio's fault is not the others'; it is tried again at the next look. */
  async look(): Promise<void> {
    const done = await this.states.all(this.database.read, purpose);
    const planning = await this.database.read<{ studioId: string }>(
      `SELECT studio.id AS "studioId" FROM studio
       WHERE EXISTS (SELECT 1 FROM offer WHERE offer.studio_id = studio.id AND offer.ended_at IS NULL)
         AND EXISTS (SELECT 1 FROM plan
           WHERE plan.studio_id = studio.id AND plan.purpose = 'plan' AND plan.state = 'done')`,
    );
    const withOffers = new Set(planning.map(({ studioId }) => studioId));
    for (const actor of await this.studioActors.all()) {
      if (!withOffers.has(actor.studioId)) continue;
      if (!this.isDue(actor, done.get(actor.studioId) ?? null)) continue;
      try {
        await this.make(actor);
      } catch (error) {
        this.logger.error(`No plan of studio ${actor.studioId} could be asked for: ${String(error)}`);
      }
    }
  }

  private isDue({ timeZone }: Actor, doneAt: string | null): boolean {
    return isMorningDue(doneAt, this.clock.now(), plannedAt, timeZone);
  }

  private async make(actor: Actor): Promise<void> {
    const step = await this.transactions.quietly(actor, async (transaction) => {
      const found = await this.stepOf(transaction);
      // One that fails is not done: it is asked for again.
      if (found === 'rest') await this.states.noteDone(transaction, purpose, this.clock.now());
      return found;
    });
    if (step !== 'ask') return;
    const id = uuidv7();
    const subject = { kind: 'plan', id };
    const request = { id: null, action: 'reorder.make-plan', subject, content: null };
    await this.transactions.write(actor, request, async (transaction) => {
      await transaction.lockStudio();
      // Another process may have asked meanwhile; equal facts would only be found equal.
      if ((await this.stepOf(transaction)) === 'ask') await this.requests.put(transaction, id, 'plan', null);
    });
  }

  private async stepOf(transaction: Transaction): Promise<ReturnType<typeof nightlyStep>> {
    const { studioId, recordedAt, actor } = transaction;
    const plans = await transaction.query<{ state: PlanState }>(
      `SELECT state FROM plan WHERE studio_id = $1 AND purpose = 'plan' AND planned_on = $2
       ORDER BY asked_at DESC LIMIT ${mostPlans}`,
      [studioId, localDay(recordedAt, actor.timeZone)],
    );
    return nightlyStep(plans.map(({ state }) => state));
  }
}
