import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import type { Actor } from '../platform/actor.js';
import type { Transaction } from '../platform/database/transaction.js';
import { invalidField, Problem } from '../platform/problem.js';
import { Container } from './container.entity.js';
import {
  ContainerOperation,
  type OperationFacts,
  type OperationResult,
} from './container-operation.service.js';
import type { MoveContainerDto } from './container-operations.dto.js';
import type { ContainerChangeView } from './container-operations.views.js';
import { LabelCodes } from './label-codes.service.js';
import { refusalToTake } from './laid-out-pieces.js';
import { Ledger } from './ledger.service.js';
import { Reservations } from './reservations.service.js';
import { StandingPlaces } from './standing-places.service.js';

/** Another place or another owner. What is opened stays opened on its day; part of a box becomes a box of its own. */
@Injectable()
export class ContainerMove {
  constructor(
    private readonly operation: ContainerOperation,
    private readonly labelCodes: LabelCodes,
    private readonly ledger: Ledger,
    private readonly places: StandingPlaces,
    private readonly reservations: Reservations,
  ) {}

  move(actor: Actor, containerId: string, dto: MoveContainerDto): Promise<ContainerChangeView> {
    if (dto.placeId === undefined && dto.ownerId === undefined) {
      throw invalidField('placeId', 'Name the place it goes to, or whose it becomes, or both.');
    }
    return this.operation.record(actor, dto, { action: 'move', audit: 'stock.move', containerId }, (facts) =>
      this.moveTo(facts, dto),
    );
  }

  /**
   * Puts a whole container elsewhere, as a part of the caller's transaction.
   * @throws Problem not-found; wrong-state when it is gone by the record, or the place is no longer used
   */
  async putAside(
    transaction: Transaction,
    containerId: string,
    { placeId, occurredAt }: { placeId: string; occurredAt?: string | undefined },
  ): Promise<void> {
    await this.operation.recordIn(transaction, { action: 'move', containerId, occurredAt }, (facts) =>
      this.moveTo(facts, { placeId }),
    );
  }

  private async moveTo(
    facts: OperationFacts,
    to: Pick<MoveContainerDto, 'placeId' | 'ownerId' | 'pieces'>,
  ): Promise<OperationResult> {
    const { transaction, container } = facts;
    if (to.placeId !== undefined) await this.places.checkPlaces(transaction, [to.placeId]);
    if (to.ownerId != null) await this.places.checkOwners(transaction, [to.ownerId]);
    const target = {
      placeId: to.placeId ?? container.placeId,
      ownerId: to.ownerId === undefined ? container.ownerId : to.ownerId,
    };
    const { placeId, ownerId } = container;
    transaction.note({ from: { placeId, ownerId }, to: target });
    if (to.pieces === undefined || to.pieces === container.pieces) return { changes: target };
    if (container.form === 'bottle') {
      throw invalidField('pieces', 'A bottle moves whole. Leave the pieces out.');
    }
    return this.movePart(facts, to.pieces, target);
  }

  private async movePart(
    { transaction, container, occurredAt }: OperationFacts,
    pieces: number,
    target: { placeId: string; ownerId: string | null },
  ): Promise<OperationResult> {
    const { pieces: onTrays } = await this.reservations.of(
      transaction.read,
      transaction.studioId,
      container.containerId,
    );
    const refusal = refusalToTake({ booked: container.pieces, onTrays }, pieces);
    if (refusal !== null) throw new Problem(409, 'not-enough-stock', refusal);
    if (container.holds.some(({ on }) => on === 'container')) {
      throw new Problem(
        409,
        'wrong-state',
        'This box is on hold by itself, and a new box would not be. Move it whole, or release it first.',
      );
    }
    const { lotId, containerId, receivedAt, state, form } = container;
    const [labelCode = ''] = await this.labelCodes.make(transaction, 1);
    const newBox: Container = {
      studioId: transaction.studioId,
      id: uuidv7(),
      lotId,
      form,
      labelCode,
      ...target,
      state,
      openedAt: container.openedAt,
      openedBy: null,
      receivedAt,
      endedAt: null,
      openingToldAt: null,
      usableThrough: null,
      endedFrom: null,
      version: 1,
    };
    await transaction.insert(Container, newBox);
    const moved = { lotId, pieces, microlitres: 0, occurredAt };
    const movements = await this.ledger.book(transaction, [
      { ...moved, containerId, kind: 'transferred out', reason: `into ${newBox.labelCode}` },
      { ...moved, containerId: newBox.id, kind: 'transferred in', reason: `from ${container.labelCode}` },
    ]);
    return { newContainerId: newBox.id, movementIds: movements.map(({ id }) => id) };
  }
}
