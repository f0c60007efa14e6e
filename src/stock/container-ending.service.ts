import { Injectable } from '@nestjs/common';
import type { Actor } from '../platform/actor.js';
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
import { Ledger } from './ledger.service.js';
import { StandingPlaces } from './standing-places.service.js';

/** Reason of the adjustment that takes an emptied bottle off the book. */
export const emptyReason = 'empty';

/** How what is here leaves: emptied, discarded, wasted, sent back, or put aside for practice skin. */
@Injectable()
export class ContainerEnding {
  constructor(
    private readonly operation: ContainerOperation,
    private readonly ledger: Ledger,
    private readonly places: StandingPlaces,
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
      (facts) => {
        const { form, pieces } = facts.container;
        if (dto.pieces === undefined || dto.pieces === pieces) {
          return this.takeAll(facts, 'returned', dto.reason);
        }
        if (form === 'bottle') {
          throw invalidField('pieces', 'A bottle goes back whole. Leave the pieces out.');
        }
        return this.takePieces(facts, 'returned', dto.pieces, dto.reason);
      },
    );
  }

  keepForPractice(actor: Actor, containerId: string, dto: KeepForPracticeDto): Promise<ContainerChangeView> {
    return this.operation.record(
      actor,
      dto,
      { action: 'keep for practice', audit: 'stock.keep-for-practice', containerId },
      async ({ transaction, state }) => {
        if (dto.placeId === undefined) return { changes: { state } };
        await this.places.checkPlace(transaction, dto.placeId);
        return { changes: { state, placeId: dto.placeId } };
      },
    );
  }

  private async takeAll(
    { transaction, container, occurredAt, state }: OperationFacts,
    kind: 'wasted' | 'returned',
    reason: string,
  ): Promise<OperationResult> {
    const { lotId, containerId, pieces, microlitres } = container;
    const movements = await this.ledger.book(transaction, [
      { lotId, containerId, kind, pieces, microlitres, reason, occurredAt },
    ]);
    return { changes: { state, endedAt: occurredAt }, movementIds: movements.map(({ id }) => id) };
  }

  private async takePieces(
    { transaction, container, occurredAt }: OperationFacts,
    kind: 'wasted' | 'returned',
    pieces: number,
    reason: string,
  ): Promise<OperationResult> {
    const { lotId, containerId } = container;
    checkPieces(container, pieces);
    const movements = await this.ledger.book(transaction, [
      { lotId, containerId, kind, pieces, microlitres: 0, reason, occurredAt },
    ]);
    return { movementIds: movements.map(({ id }) => id) };
  }
}

/** @throws Problem not-enough-stock */
export function checkPieces(container: ContainerFact, pieces: number): void {
  if (pieces <= container.pieces) return;
  throw new Problem(
    409,
    'not-enough-stock',
    `${pieces} pieces were named, but the book shows ${container.pieces} in this box. Count the box first, then record this again.`,
  );
}
