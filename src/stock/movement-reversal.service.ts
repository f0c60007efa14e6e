import { Injectable } from '@nestjs/common';
import type { Actor } from '../platform/actor.js';
import { Transactions } from '../platform/database/transactions.js';
import { occurredAt } from '../platform/occurred-at.js';
import { notFound, Problem } from '../platform/problem.js';
import { Container } from './container.entity.js';
import { ContainerOperation } from './container-operation.service.js';
import type { ReverseMovementDto } from './container-operations.dto.js';
import type { ContainerChangeView } from './container-operations.views.js';
import { hasEnded, stateAfterReversal } from './container-transitions.js';
import { Ledger } from './ledger.service.js';
import { StockConditions } from './stock-conditions.service.js';
import type { ContainerState, MovementKind } from './vocabulary.js';

/** Undoes a movement that was a mistake by one that names it; both stay visible. */
@Injectable()
export class MovementReversal {
  constructor(
    private readonly transactions: Transactions,
    private readonly operation: ContainerOperation,
    private readonly ledger: Ledger,
    private readonly conditions: StockConditions,
  ) {}

  /**
   * @throws Problem not-found; wrong-state when it belongs to a session, is half of a transfer or part of a blend, or is
   * reversed already; not-enough-stock when what it brought in is no longer there
   */
  reverse(actor: Actor, movementId: string, dto: ReverseMovementDto): Promise<ContainerChangeView> {
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'stock.reverse',
        subject: { kind: 'movement', id: movementId },
        content: { ...dto, movementId },
      },
      async (transaction) => {
        const [movement] = await transaction.query<{
          container_id: string;
          kind: MovementKind;
          session_id: string | null;
          transfer_id: string | null;
        }>(
          `SELECT container_id, kind, session_id, coalesce(
             (SELECT line.transfer_id FROM transfer_line AS line
              WHERE line.studio_id = movement.studio_id AND line.movement_id = movement.id),
             (SELECT line.transfer_id
              FROM transfer_goods AS goods
                JOIN transfer_outcome AS outcome
                  ON outcome.studio_id = goods.studio_id AND outcome.id = goods.outcome_id
                JOIN transfer_line AS line ON line.studio_id = outcome.sender_id AND line.id = outcome.line_id
              WHERE goods.studio_id = movement.studio_id AND goods.movement_id = movement.id)) AS transfer_id
           FROM movement WHERE studio_id = $1 AND id = $2`,
          [actor.studioId, movementId],
        );
        if (!movement) throw notFound('movement', movementId);
        const containerId = movement.container_id;
        refuseWhatBelongsElsewhere(movement.kind, movement.session_id, movement.transfer_id);
        const container = await this.operation.locked(transaction, containerId);
        const at = occurredAt(dto.occurredAt, transaction.recordedAt);
        const reversal = await this.ledger.reverse(transaction, movementId, dto.reason, at);
        const pieces = container.pieces + reversal.pieces;
        const { endedFrom } = await transaction.manager.findOneByOrFail(Container, {
          studioId: actor.studioId,
          id: containerId,
        });
        const state = stateAfterReversal({ state: container.state, endedFrom }, movement.kind, pieces);
        if (state !== container.state) {
          await transaction.change(
            Container,
            'container',
            { studioId: actor.studioId, id: containerId },
            container.version,
            endOf(container.state, state, at),
          );
        }
        await this.conditions.reevaluate(transaction, [container.productId]);
        return this.operation.answer(transaction, containerId, { movementIds: [reversal.id] });
      },
    );
  }
}

/** The state with when and from what it ended, which is over when the container is back. */
function endOf(before: ContainerState, state: ContainerState, at: string): Partial<Container> {
  if (!hasEnded(state)) return { state, endedAt: null, endedFrom: null };
  return { state, endedAt: at, ...(hasEnded(before) ? {} : { endedFrom: before }) };
}

function refuseWhatBelongsElsewhere(
  kind: MovementKind,
  sessionId: string | null,
  transferId: string | null,
): void {
  const refuse = (message: string) => new Problem(409, 'wrong-state', message);
  if (sessionId !== null && kind === 'wasted') {
    throw refuse(
      `The session ${sessionId} recorded this as opened, and what was opened is not put back. If it was recorded by mistake, count the box: the count corrects the book. The volume of a bottle is an estimate; it is settled when the bottle is finished.`,
    );
  }
  if (sessionId !== null) {
    throw refuse(
      `This movement belongs to the session ${sessionId}. Amend the session instead: it reverses what it booked.`,
    );
  }
  if (transferId !== null) {
    throw refuse(
      `This belongs to the transfer ${transferId}. While nothing has arrived the sending studio calls it back; what arrived is sent back by another transfer.`,
    );
  }
  if (kind === 'transferred out' || kind === 'transferred in') {
    throw refuse('This is one half of a move between boxes. Move the pieces back instead.');
  }
  if (kind === 'blended' || kind === 'produced') {
    throw refuse(
      'This belongs to a house blend, which cannot be poured apart. If the blend is not to be used, discard it; if a volume was wrong, count or finish the bottle.',
    );
  }
}
