import { Injectable } from '@nestjs/common';
import type { Actor } from '../platform/actor.js';
import type { Transaction } from '../platform/database/transaction.js';
import { maximumLateRecordDays, occurredAt } from '../platform/occurred-at.js';
import type { ContainerFact } from './container-facts.service.js';
import { ContainerOperation } from './container-operation.service.js';
import type { CorrectOpenedDateDto, OpenContainerDto } from './container-operations.dto.js';
import type { ContainerChangeView } from './container-operations.views.js';
import { openingWarnings } from './container-transitions.js';
import { assumedOpenedLife } from './container-views.service.js';
import { judgeShelfLife } from './shelf-life.js';
import { containerLife } from './stock-on-hand.js';

/** When a bottle was opened: from then on its opened life runs. */
@Injectable()
export class ContainerOpening {
  constructor(private readonly operation: ContainerOperation) {}

  /** Opening is a fact, also of what is held or expired: it is recorded, with warnings. */
  open(actor: Actor, containerId: string, dto: OpenContainerDto): Promise<ContainerChangeView> {
    return this.operation.record(
      actor,
      dto,
      { action: 'open', audit: 'stock.open', containerId, lagDays: maximumLateRecordDays },
      async ({ transaction, container, occurredAt: openedAt, state }) => ({
        changes: { state, openedAt, openedBy: actor.personId },
        warnings: await this.warnings(transaction, { ...container, openedAt }),
      }),
    );
  }

  correct(actor: Actor, containerId: string, dto: CorrectOpenedDateDto): Promise<ContainerChangeView> {
    return this.operation.record(
      actor,
      dto,
      { action: 'correct opened date', audit: 'stock.correct-opened-date', containerId },
      async ({ transaction, container }) => {
        const openedAt = occurredAt(dto.openedAt, transaction.recordedAt, maximumLateRecordDays);
        transaction.note({ openedAtBefore: container.openedAt, openedAt });
        return {
          changes: { openedAt },
          warnings: await this.warnings(transaction, { ...container, openedAt }),
        };
      },
    );
  }

  private async warnings(transaction: Transaction, container: ContainerFact): Promise<string[]> {
    const assumed = await assumedOpenedLife(
      (sql, parameters) => transaction.query(sql, parameters),
      transaction.studioId,
    );
    const { recordedAt, actor } = transaction;
    const { status } = judgeShelfLife(containerLife(container, assumed), recordedAt, actor.timeZone);
    const { form, state, openedAt, holds } = container;
    return openingWarnings({
      form,
      state,
      openedAt,
      lifeStatus: status,
      holdKinds: holds.map(({ kind }) => kind),
    });
  }
}
