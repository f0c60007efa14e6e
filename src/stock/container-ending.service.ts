import { Injectable } from '@nestjs/common';
import type { Actor } from '../platform/actor.js';
import type { Transaction } from '../platform/database/transaction.js';
import { invalidField, Problem } from '../platform/problem.js';
import type { ContainerFact } from './container-facts.service.js';
import {
  ContainerOperation,
  type OperationFacts,
  type OperationResult,
} from './container-operation.service.js';
import type {
  DiscardContainerDto,
  FinishContainerDto,
  KeepForPracticeDto,
  ReturnContainerDto,
  WastePiecesDto,
} from './container-operations.dto.js';
import type { ContainerChangeView } from './container-operations.views.js';
import { refusalToTake, warningsOfWaste } from './laid-out-pieces.js';
import { Ledger } from './ledger.service.js';
import { Reservations } from './reservations.service.js';
import { StandingPlaces } from './standing-places.service.js';

/** Reason of the adjustment that takes an emptied bottle off the book. */
export const emptyReason = 'empty';

/** What is taken for good: of a box so many pieces, or all. */
export interface Taken {
  kind: 'wasted' | 'returned';
  reason: string;
  pieces?: number | undefined;
}

/** How what is here leaves: emptied, discarded, wasted, sent back, or put aside for practice skin. */
@Injectable()
export class ContainerEnding {
  constructor(
    private readonly operation: ContainerOperation,
    private readonly ledger: Ledger,
    private readonly places: StandingPlaces,
    private readonly reservations: Reservations,
  ) {}

  /** The bottle is empty: what the book still shows was an estimate too high and is written off. */
  finish(actor: Actor, containerId: string, dto: FinishContainerDto): Promise<ContainerChangeView> {
    return this.operation.record(
      actor,
      dto,
      { action: 'finish', audit: 'stock.finish', containerId },
      async ({ transaction, container, occurredAt, state }) => {
        const movements = await this.ledger.book(transaction, [
          {
            lotId: container.lotId,
            containerId,
            kind: 'adjusted',
            pieces: -container.pieces,
            microlitres: -container.microlitres,
            reason: emptyReason,
            occurredAt,
          },
        ]);
        return {
          changes: { state, endedAt: occurredAt },
          movementIds: movements.map(({ id }) => id),
        };
      },
    );
  }

  discard(actor: Actor, containerId: string, dto: DiscardContainerDto): Promise<ContainerChangeView> {
    return this.operation.record(
      actor,
      dto,
      { action: 'discard', audit: 'stock.discard', containerId },
      (facts) => this.takeAll(facts, 'wasted', dto.reason),
    );
  }

  waste(actor: Actor, containerId: string, dto: WastePiecesDto): Promise<ContainerChangeView> {
    return this.operation.record(
      actor,
      dto,
      { action: 'waste pieces', audit: 'stock.waste', containerId },
      (facts) => this.takePieces(facts, 'wasted', dto.pieces, dto.reason),
    );
  }

  giveBack(actor: Actor, containerId: string, dto: ReturnContainerDto): Promise<ContainerChangeView> {
    return this.operation.record(
      actor,
      dto,
      { action: 'return', audit: 'stock.return', containerId },
      (facts) => this.take(facts, { kind: 'returned', reason: dto.reason, pieces: dto.pieces }),
    );
  }

  /**
   * Takes a container, or some pieces of a box, off the shelf for good, as a part of the caller's transaction.
   * @throws Problem not-found; wrong-state when it is gone by the record; not-enough-stock
   */
  disposeOf(
    transaction: Transaction,
    containerId: string,
    taken: Taken & { occurredAt?: string | undefined },
  ): Promise<OperationResult> {
    const action = taken.kind === 'returned' ? 'return' : 'discard';
    const { occurredAt } = taken;
    return this.operation.recordIn(transaction, { action, containerId, occurredAt }, (facts) =>
      this.take(facts, taken),
    );
  }

  keepForPractice(actor: Actor, containerId: string, dto: KeepForPracticeDto): Promise<ContainerChangeView> {
    return this.operation.record(
      actor,
      dto,
      { action: 'keep for practice', audit: 'stock.keep-for-practice', containerId },
      async ({ transaction, container, state }) => {
        if (dto.placeId === undefined) return { changes: { state } };
        await this.places.checkPlaces(transaction, [dto.placeId]);
        transaction.note({ from: { placeId: container.placeId }, to: { placeId: dto.placeId } });
        return { changes: { state, placeId: dto.placeId } };
      },
    );
  }

  private take(facts: OperationFacts, { kind, reason, pieces }: Taken): Promise<OperationResult> {
    const { container } = facts;
    if (pieces === undefined || pieces === container.pieces) return this.takeAll(facts, kind, reason);
    if (container.form === 'bottle') {
      throw invalidField(
        'pieces',
        kind === 'returned'
          ? 'A bottle goes back whole. Leave the pieces out.'
          : 'A bottle is destroyed whole. Leave the pieces out.',
      );
    }
    return this.takePieces(facts, kind, pieces, reason);
  }

  private async takeAll(
    { transaction, container, occurredAt, state }: OperationFacts,
    kind: 'wasted' | 'returned',
    reason: string,
  ): Promise<OperationResult> {
    const { lotId, containerId, pieces, microlitres } = container;
    const warnings = await this.leaving(transaction, container, kind, pieces);
    const movements = await this.ledger.book(transaction, [
      { lotId, containerId, kind, pieces, microlitres, reason, occurredAt },
    ]);
    const movementIds = movements.map(({ id }) => id);
    return { changes: { state, endedAt: occurredAt }, movementIds, warnings };
  }

  private async takePieces(
    { transaction, container, occurredAt }: OperationFacts,
    kind: 'wasted' | 'returned',
    pieces: number,
    reason: string,
  ): Promise<OperationResult> {
    const { lotId, containerId } = container;
    const warnings = await this.leaving(transaction, container, kind, pieces);
    const movements = await this.ledger.book(transaction, [
      { lotId, containerId, kind, pieces, microlitres: 0, reason, occurredAt },
    ]);
    return { movementIds: movements.map(({ id }) => id), warnings };
  }

  /**
   * What is to be known of pieces that leave a box, of which some may lie on trays.
   * @throws Problem not-enough-stock
   */
  private async leaving(
    transaction: Transaction,
    { form, containerId, pieces: booked }: ContainerFact,
    kind: 'wasted' | 'returned',
    pieces: number,
  ): Promise<string[]> {
    if (form === 'bottle') return [];
    const reserved = await this.reservations.of(transaction.read, transaction.studioId, containerId);
    const onTrays = reserved.pieces;
    const refusal = refusalToTake({ booked, onTrays: kind === 'wasted' ? 0 : onTrays }, pieces);
    if (refusal !== null) throw new Problem(409, 'not-enough-stock', refusal);
    return kind === 'wasted' ? warningsOfWaste({ booked, onTrays }, pieces) : [];
  }
}
