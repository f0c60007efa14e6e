import { Injectable, type OnModuleInit } from '@nestjs/common';
import { v5 as uuidv5 } from 'uuid';
import { Alerts } from '../../alerts/alerts.service.js';
import { ConditionEvaluators } from '../../alerts/condition-evaluators.service.js';
import type { OpenCondition } from '../../alerts/open-condition.js';
import { localDay } from '../../identity/local-day.js';
import { StudioActors } from '../../identity/studio-actors.service.js';
import type { Actor } from '../../platform/actor.js';
import { Clock } from '../../platform/clock.js';
import { Database } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Transactions } from '../../platform/database/transactions.js';
import { Problem, staleVersion } from '../../platform/problem.js';
import { ChainHeads } from '../chain/chain-heads.service.js';
import { DrillSchedule } from '../drill-schedule.entity.js';
import { type DrillRhythm, drillDue, nextDrillOn } from './drill-due.js';
import type { SetChainDrillScheduleDto, SetDrillScheduleDto } from './drills.dto.js';
import type { ChainDrillScheduleView, DrillScheduleView } from './drills.views.js';

const kind = 'drill due';

/** When the next drill is due, and the alert that says so. */
@Injectable()
export class DrillSchedules implements OnModuleInit {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly clock: Clock,
    private readonly alerts: Alerts,
    private readonly evaluators: ConditionEvaluators,
    private readonly chainHeads: ChainHeads,
    private readonly studioActors: StudioActors,
  ) {}

  onModuleInit(): void {
    this.evaluators.register({
      name: 'drills',
      kinds: [kind],
      evaluate: (transaction, day) => this.standing(transaction, day),
    });
  }

  async show({ studioId, timeZone }: Actor): Promise<DrillScheduleView> {
    const schedule = await this.database.reader.manager.findOneBy(DrillSchedule, { studioId });
    return viewOf(schedule, localDay(this.clock.now(), timeZone));
  }

  /** @throws Problem stale-version when it was set by someone else since it was read */
  set(actor: Actor, dto: SetDrillScheduleDto): Promise<DrillScheduleView> {
    const { id, version, ...rhythm } = dto;
    return this.transactions.write(actor, this.requestOf(actor, id, dto), async (transaction) => {
      await transaction.lockStudio();
      const known = await this.known(transaction);
      if ((known?.version ?? undefined) !== version) {
        if (known) throw staleVersion('drill schedule', known.version);
        throw new Problem(
          404,
          'not-found',
          `No drill schedule is set here, so it has no version ${version}. Leave the version out to set it.`,
        );
      }
      const day = localDay(transaction.recordedAt, actor.timeZone);
      return viewOf(await this.write(transaction, known, rhythm), day);
    });
  }

  /**
   * Sets it in every studio of the chain: a write in each, so that one which fails is repeated with the same request.
   * @throws Problem not-allowed naming the studios that the person does not lead
   */
  async setInChain(actor: Actor, dto: SetChainDrillScheduleDto): Promise<ChainDrillScheduleView> {
    const studios = await this.chainHeads.require(actor);
    const { id, everyMonths, nextOn } = dto;
    for (const { studioId } of studios) {
      const here = studioId === actor.studioId ? actor : await this.studioActors.of(studioId);
      if (!here) continue;
      // The ids of requests are the studio's; one made of the request's own repeats with it.
      const ownId = studioId === actor.studioId ? id : uuidv5(studioId, id);
      await this.transactions.write(here, this.requestOf(here, ownId, dto), async (transaction) => {
        await transaction.lockStudio();
        await this.write(transaction, await this.known(transaction), { everyMonths, nextOn });
        transaction.note({ setInStudioId: actor.studioId, setByPersonId: actor.personId });
      });
    }
    return { studioIds: studios.map(({ studioId }) => studioId), everyMonths, nextOn };
  }

  /** Moves the next drill on, after one was closed; its alert closes with it. */
  async moveOn(transaction: Transaction): Promise<void> {
    await transaction.lockStudio();
    const known = await this.known(transaction);
    if (!known) return;
    const day = localDay(transaction.recordedAt, transaction.actor.timeZone);
    const nextOn = nextDrillOn(known, day);
    if (nextOn === known.nextOn) return;
    await this.write(transaction, known, { everyMonths: known.everyMonths, nextOn });
  }

  private known({ manager, studioId }: Transaction): Promise<DrillSchedule | null> {
    return manager.findOneBy(DrillSchedule, { studioId });
  }

  private async write(
    transaction: Transaction,
    known: DrillSchedule | null,
    rhythm: DrillRhythm,
  ): Promise<DrillSchedule> {
    const { studioId, recordedAt } = transaction;
    const { everyMonths, nextOn } = rhythm;
    const schedule: DrillSchedule = {
      studioId,
      everyMonths,
      nextOn,
      version: (known?.version ?? 0) + 1,
      updatedAt: recordedAt,
    };
    if (known) {
      const { studioId: _, ...changes } = schedule;
      await transaction.update(DrillSchedule, { studioId }, changes);
    } else await transaction.insert(DrillSchedule, schedule);
    transaction.note({
      from: known && { everyMonths: known.everyMonths, nextOn: known.nextOn },
      to: { everyMonths, nextOn },
    });
    const day = localDay(recordedAt, transaction.actor.timeZone);
    await this.alerts.reconcile(
      transaction,
      { kinds: [kind], subjects: 'all' },
      await this.standing(transaction, day),
    );
    return schedule;
  }

  private async standing(transaction: Transaction, day: string): Promise<OpenCondition[]> {
    const schedule = await this.known(transaction);
    const due = schedule && drillDue(schedule, day);
    if (!due) return [];
    const { severity, dueOn } = due;
    return [{ kind, subjectKind: 'studio', subjectId: transaction.studioId, severity, facts: { dueOn } }];
  }

  private requestOf(actor: Actor, id: string, content: object) {
    return {
      id,
      action: 'recalls.set-drill-schedule',
      subject: { kind: 'studio', id: actor.studioId },
      content,
    };
  }
}

function viewOf(schedule: DrillSchedule | null, day: string): DrillScheduleView {
  const { everyMonths = null, nextOn = null, version = null } = schedule ?? {};
  return { everyMonths, nextOn, due: drillDue({ nextOn }, day) !== null, version };
}
