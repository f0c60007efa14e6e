import { Injectable } from '@nestjs/common';
import type { Actor } from '../platform/actor.js';
import type { Transaction } from '../platform/database/transaction.js';
import { maximumLateRecordDays, occurredAt } from '../platform/occurred-at.js';
import { Problem } from '../platform/problem.js';
import type { ContainerFact } from './container-facts.service.js';
import { ContainerOperation } from './container-operation.service.js';
import type { CorrectOpenedDateDto, OpenContainerDto, UndoOpeningDto } from './container-operations.dto.js';
import type { ContainerChangeView } from './container-operations.views.js';
import { type OpeningFacts, openingWarnings, undoOpening } from './container-transitions.js';
import { assumedOpenedLife } from './container-views.service.js';
import { Reservations } from './reservations.service.js';
import { judgeShelfLife } from './shelf-life.js';
import { containerLife } from './stock-on-hand.js';
import type { MovementKind } from './vocabulary.js';

const arrivals: ReadonlySet<MovementKind> = new Set(['received', 'produced', 'transferred in']);

/** When a bottle was opened: from then on its opened life runs. */
@Injectable()
export class ContainerOpening {
  constructor(
    private readonly operation: ContainerOperation,
    private readonly reservations: Reservations,
  ) {}

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
        transaction.note({ reason: dto.reason, openedAtBefore: container.openedAt, openedAt });
        return {
          changes: { openedAt },
          warnings: await this.warnings(transaction, { ...container, openedAt }),
        };
      },
    );
  }

  /** An opening recorded by mistake; it is sealed again. */
  undo(actor: Actor, containerId: string, dto: UndoOpeningDto): Promise<ContainerChangeView> {
    return this.operation.record(
      actor,
      dto,
      { action: null, audit: 'stock.undo-opening', containerId },
      async ({ transaction, container }) => {
        const { form, state, microlitres, openedAt } = container;
        const { lines: trays } = await this.reservations.of(
          transaction.read,
          transaction.studioId,
          containerId,
        );
        const decision = undoOpening({
          ...{ form, state, microlitres, trays },
          ...(await this.takenSince(transaction, containerId)),
        });
        if (!decision.allowed) throw new Problem(409, 'wrong-state', decision.message);
        transaction.note({ reason: dto.reason, openedAtBefore: openedAt });
        return { changes: { state: decision.state, openedAt: null, openedBy: null, usableThrough: null } };
      },
    );
  }

  private async takenSince(
    transaction: Transaction,
    containerId: string,
  ): Promise<Pick<OpeningFacts, 'isBlend' | 'wasUsed' | 'arrivedMicrolitres'>> {
    const kinds = await transaction.query<{ kind: MovementKind; microlitres: number; standing: number }>(
      `SELECT movement.kind, sum(movement.microlitres) AS microlitres,
         sum(CASE WHEN movement.reverses_id IS NULL THEN 1 ELSE -1 END) AS standing
       FROM movement WHERE movement.studio_id = $1 AND movement.container_id = $2 GROUP BY movement.kind`,
      [transaction.studioId, containerId],
    );
    const standing = kinds.filter((row) => row.standing > 0);
    return {
      isBlend: standing.some(({ kind }) => kind === 'produced'),
      wasUsed: standing.some(({ kind }) => kind === 'used' || kind === 'blended'),
      arrivedMicrolitres: kinds
        .filter(({ kind }) => arrivals.has(kind))
        .reduce((sum, row) => sum + row.microlitres, 0),
    };
  }

  private async warnings(transaction: Transaction, container: ContainerFact): Promise<string[]> {
    const assumed = await assumedOpenedLife(transaction.read, transaction.studioId);
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
