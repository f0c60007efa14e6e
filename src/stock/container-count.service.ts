import { Injectable } from '@nestjs/common';
import type { Actor } from '../platform/actor.js';
import { invalidField } from '../platform/problem.js';
import {
  ContainerOperation,
  type OperationFacts,
  type OperationResult,
} from './container-operation.service.js';
import type { CountContainerDto } from './container-operations.dto.js';
import type { ContainerChangeView } from './container-operations.views.js';
import { countedPieces } from './laid-out-pieces.js';
import { Ledger } from './ledger.service.js';
import { Reservations } from './reservations.service.js';

/** Reason of the adjustment to what was counted. */
const countReason = 'count';

/** Counting: the book follows what is really here. A count without a difference moves nothing but is audited. */
@Injectable()
export class ContainerCount {
  constructor(
    private readonly operation: ContainerOperation,
    private readonly ledger: Ledger,
    private readonly reservations: Reservations,
  ) {}

  count(actor: Actor, containerId: string, dto: CountContainerDto): Promise<ContainerChangeView> {
    return this.operation.record(
      actor,
      dto,
      { action: 'count', audit: 'stock.count', containerId },
      (facts) =>
        facts.container.form === 'box' ? this.countBox(facts, dto) : this.lookForBottle(facts, dto),
    );
  }

  private async countBox(facts: OperationFacts, { pieces }: CountContainerDto): Promise<OperationResult> {
    if (pieces === undefined) throw invalidField('pieces', 'This is a box: give the pieces counted in it.');
    const { transaction, container } = facts;
    const { pieces: onTrays } = await this.reservations.of(
      transaction.read,
      transaction.studioId,
      container.containerId,
    );
    const booked = container.pieces;
    const { present, warnings } = countedPieces({ booked, onTrays }, pieces);
    transaction.note({ booked, counted: pieces, onTrays });
    return { movementIds: await this.adjust(facts, present - booked, 0), warnings };
  }

  private async lookForBottle(
    facts: OperationFacts,
    { bottle }: CountContainerDto,
  ): Promise<OperationResult> {
    if (bottle === undefined) {
      throw invalidField('bottle', 'This is a bottle: say whether it is still there or missing.');
    }
    const { container, transaction, occurredAt } = facts;
    transaction.note({ found: bottle });
    if (bottle === 'still there') return {};
    return {
      changes: { state: 'discarded', endedAt: occurredAt },
      movementIds: await this.adjust(facts, -container.pieces, -container.microlitres),
    };
  }

  private async adjust(
    { transaction, container, occurredAt }: OperationFacts,
    pieces: number,
    microlitres: number,
  ): Promise<string[]> {
    const { lotId, containerId } = container;
    const movements = await this.ledger.book(transaction, [
      { lotId, containerId, kind: 'adjusted', pieces, microlitres, reason: countReason, occurredAt },
    ]);
    return movements.map(({ id }) => id);
  }
}
