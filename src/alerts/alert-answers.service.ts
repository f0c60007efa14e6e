import { Injectable } from '@nestjs/common';
import { MoreThanOrEqual } from 'typeorm';
import { People } from '../identity/people.service.js';
import { roleMay } from '../identity/permissions.js';
import { Person } from '../identity/person.entity.js';
import { Studio } from '../identity/studio.entity.js';
import type { Actor } from '../platform/actor.js';
import type { Transaction } from '../platform/database/transaction.js';
import { Transactions } from '../platform/database/transactions.js';
import { faultsProblem, invalidField, notFound, Problem } from '../platform/problem.js';
import type { WriteDto } from '../platform/request.dto.js';
import { Alert } from './alert.entity.js';
import { AlertEntry } from './alert-entry.entity.js';
import { viewOfAlert } from './alert-history.service.js';
import { AlertSteps } from './alert-steps.service.js';
import type { CloseDto, GiveDto, NoteDto, PutOffDto } from './alerts.dto.js';
import type { AlertView } from './alerts.views.js';
import { ConditionEvaluators } from './condition-evaluators.service.js';
import { putOffUntil } from './put-off-until.js';

/**
 * What people do with alerts. Guarantees: when two do something at once, both are in the history; who acknowledged it
 * first stays, and who closed it first.
 */
@Injectable()
export class AlertAnswers {
  constructor(
    private readonly transactions: Transactions,
    private readonly evaluators: ConditionEvaluators,
    private readonly steps: AlertSteps,
    private readonly people: People,
  ) {}

  /**
   * Notes who has seen to an alert. What happened once cannot end by itself: with this it is over.
   * @throws Problem not-found
   */
  acknowledge(actor: Actor, alertId: string, dto: WriteDto): Promise<AlertView> {
    return this.answer(actor, 'acknowledge', alertId, dto, async (transaction, alert) => {
      const { personId } = actor;
      const { studioId, recordedAt } = transaction;
      if (alert.acknowledgedAt !== null) {
        const key = {
          studioId,
          alertId,
          event: 'acknowledged' as const,
          personId: personId ?? undefined,
          // What was acknowledged before it got worse or came back is another matter.
          recordedAt: MoreThanOrEqual(alert.acknowledgedAt),
        };
        const isNoted =
          alert.acknowledgedBy === personId || (await transaction.manager.existsBy(AlertEntry, key));
        if (!isNoted) await this.steps.follow(transaction, [stepOf(alert, 'acknowledged', personId)]);
        return alert;
      }
      const seen = await this.change(transaction, alert, {
        acknowledgedAt: recordedAt,
        acknowledgedBy: personId,
      });
      await this.steps.follow(transaction, [stepOf(alert, 'acknowledged', personId)]);
      if (alert.closedAt !== null || this.evaluators.finds(alert.kind)) return seen;
      await this.steps.close(transaction, [seen]);
      return { ...seen, closedAt: recordedAt };
    });
  }

  /** @throws Problem not-found, unusable-date, or wrong-state when it is closed */
  putOff(actor: Actor, alertId: string, dto: PutOffDto): Promise<AlertView> {
    return this.answer(actor, 'put-off', alertId, dto, async (transaction, alert) => {
      refuseClosed(alert, 'put off');
      const studio = await transaction.manager.findOneByOrFail(Studio, { id: actor.studioId });
      const day = putOffUntil(dto.until, transaction.recordedAt, studio.morning, studio.timeZone);
      if ('fault' in day)
        throw faultsProblem([{ field: 'until', message: day.fault, code: 'unusable-date' }]);
      const changed = await this.change(transaction, alert, { putOffUntil: day.until });
      const step = { ...stepOf(alert, 'put off', actor.personId), until: day.until };
      await this.steps.follow(transaction, [step]);
      return changed;
    });
  }

  /** @throws Problem not-found, or wrong-state when it is closed or the person works here no more */
  give(actor: Actor, alertId: string, dto: GiveDto): Promise<AlertView> {
    return this.answer(actor, 'give', alertId, dto, async (transaction, alert) => {
      refuseClosed(alert, 'given to anybody');
      const { personId } = dto;
      await this.people.require(transaction, [personId], { atWork: true });
      const key = { studioId: actor.studioId, id: personId };
      const { role } = await transaction.manager.findOneByOrFail(Person, key);
      if (!roleMay(role, 'see alerts'))
        throw invalidField(
          'personId',
          `A person who is ${role} may not see alerts; choose somebody who does.`,
        );
      // Whoever it is given to is told of it, so it is their turn; after them the order begins anew.
      const given = { by: actor.personId };
      const turn = await this.steps.turn(transaction, alert.severity, personId, given);
      const changed = await this.change(transaction, alert, { givenTo: personId, ...turn });
      const step = { ...stepOf(changed, 'given', actor.personId), toPersonId: personId };
      await this.steps.follow(transaction, [step]);
      return changed;
    });
  }

  /** Adds a note, also to one that is closed. @throws Problem not-found */
  note(actor: Actor, alertId: string, dto: NoteDto): Promise<AlertView> {
    return this.answer(actor, 'note', alertId, dto, async (transaction, alert) => {
      const step = { ...stepOf(alert, 'noted', actor.personId), note: dto.note };
      await this.steps.follow(transaction, [step]);
      return alert;
    });
  }

  /**
   * Closes it by hand. While its condition stands and gets no worse it does not open anew. Somebody else may have closed
   * it a moment before: then the note is added to the history.
   * @throws Problem not-found
   */
  close(actor: Actor, alertId: string, dto: CloseDto): Promise<AlertView> {
    return this.answer(actor, 'close', alertId, dto, async (transaction, alert) => {
      const isClosed = alert.closedAt !== null;
      const event = isClosed ? 'noted' : 'closed';
      const changed = isClosed ? alert : await this.closeByHand(transaction, alert, actor.personId);
      const step = { ...stepOf(alert, event, actor.personId), note: dto.note };
      await this.steps.follow(transaction, [step]);
      return changed;
    });
  }

  private closeByHand(transaction: Transaction, alert: Alert, personId: string | null): Promise<Alert> {
    const { recordedAt } = transaction;
    // What happened once has no condition that could stand on.
    const endedAt = this.evaluators.finds(alert.kind) ? null : recordedAt;
    return this.change(transaction, alert, { closedAt: recordedAt, closedBy: personId, endedAt });
  }

  private async change(transaction: Transaction, alert: Alert, changes: Partial<Alert>): Promise<Alert> {
    const { studioId, id } = alert;
    return (await transaction.update(Alert, { studioId, id }, changes)) ?? alert;
  }

  private answer(
    actor: Actor,
    verb: string,
    alertId: string,
    dto: WriteDto,
    work: (transaction: Transaction, alert: Alert) => Promise<Alert>,
  ): Promise<AlertView> {
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: `alerts.${verb}`,
        subject: { kind: 'alert', id: alertId },
        content: { ...dto, alertId },
      },
      async (transaction) => {
        await transaction.lockStudio();
        const key = { studioId: actor.studioId, id: alertId };
        const alert = await transaction.manager.findOneBy(Alert, key);
        if (!alert) throw notFound('alert', alertId);
        return viewOfAlert(await work(transaction, alert), !this.evaluators.finds(alert.kind));
      },
    );
  }
}

function stepOf(alert: Alert, event: AlertEntry['event'], personId: string | null) {
  return { alert, event, severity: alert.severity, personId };
}

function refuseClosed({ closedAt }: Alert, done: string): void {
  if (closedAt === null) return;
  throw new Problem(
    409,
    'wrong-state',
    `This alert is closed since ${closedAt}, so it cannot be ${done}. A note can still be added.`,
  );
}
