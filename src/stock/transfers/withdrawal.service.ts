import { Injectable } from '@nestjs/common';
import { In } from 'typeorm';
import { v7 as uuidv7 } from 'uuid';
import type { Actor } from '../../platform/actor.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Transactions } from '../../platform/database/transactions.js';
import { occurredAt as acceptedInstant } from '../../platform/occurred-at.js';
import { notFound, Problem } from '../../platform/problem.js';
import { Container } from '../container.entity.js';
import { ContainerOperation } from '../container-operation.service.js';
import { hasEnded, stateAfterReversal } from '../container-transitions.js';
import { Ledger } from '../ledger.service.js';
import { StandingPlaces } from '../standing-places.service.js';
import { StockConditions } from '../stock-conditions.service.js';
import { OtherEnds } from './other-ends.service.js';
import { lineState } from './transfer-balance.js';
import { TransferConditions } from './transfer-conditions.service.js';
import { TransferList } from './transfer-list.service.js';
import { TransferGoods, TransferOutcome } from './transfer-outcome.entity.js';
import { type KnownLine, type KnownTransfer, TransferRegister } from './transfer-register.service.js';
import type { WithdrawTransferDto } from './transfers.dto.js';
import type { TransferView } from './transfers.views.js';

/**
 * The sender calls goods back that did not leave, or that came back: the movements they went by are reversed, and they
 * stand on its shelf as what they were. Writes rows of the sending studio only.
 */
@Injectable()
export class Withdrawal {
  constructor(
    private readonly transactions: Transactions,
    private readonly register: TransferRegister,
    private readonly operation: ContainerOperation,
    private readonly places: StandingPlaces,
    private readonly ledger: Ledger,
    private readonly stockConditions: StockConditions,
    private readonly conditions: TransferConditions,
    private readonly otherEnds: OtherEnds,
    private readonly list: TransferList,
  ) {}

  /** @throws Problem not-found; wrong-state when anything of what is called back has arrived, or when it is not the sender's */
  async withdraw(actor: Actor, transferId: string, dto: WithdrawTransferDto): Promise<TransferView> {
    const view = await this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'stock.withdraw-transfer',
        subject: { kind: 'transfer', id: transferId },
        content: { ...dto, transferId },
      },
      async (transaction) => {
        const { studioId, read } = transaction;
        const sent = await this.register.known(read, studioId, transferId);
        refuseUnlessSender(studioId, sent);
        const containers = await this.operation.lockedAll(
          transaction,
          sent.lines.map(({ containerId }) => containerId),
        );
        await this.register.lockLines(transaction, sent);
        const transfer = await this.register.known(read, studioId, transferId);
        const lines = chosenLines(transfer, dto.lineIds);
        const at = acceptedInstant(dto.occurredAt, transaction.recordedAt);
        await this.putBack(transaction, transfer, lines, dto, at);
        await this.stockConditions.reevaluate(transaction, [
          ...new Set(containers.map(({ productId }) => productId)),
        ]);
        await this.conditions.reevaluate(transaction);
        return this.list.view(read, studioId, transferId);
      },
    );
    await this.otherEnds.judge([view.receiverId]);
    return view;
  }

  private async putBack(
    transaction: Transaction,
    { senderId, receiverId }: KnownTransfer,
    lines: readonly KnownLine[],
    { reason, placeId }: WithdrawTransferDto,
    occurredAt: string,
  ): Promise<void> {
    const { studioId, recordedAt, actor, manager } = transaction;
    const { personId, via } = actor;
    const containerIds = lines.map(({ containerId }) => containerId);
    const containers = await manager.findBy(Container, { studioId, id: In(containerIds) });
    const balances = await this.ledger.balances(transaction, containerIds);
    const gone = containers.filter(({ state }) => hasEnded(state));
    await this.places.checkPlaces(
      transaction,
      gone.map((container) => placeId ?? container.placeId),
    );
    const outcomes: TransferOutcome[] = [];
    const goods: TransferGoods[] = [];
    for (const { id: lineId, lotId, containerId, movementId, pieces, microlitres } of lines) {
      const reversal = await this.ledger.reverse(transaction, movementId, reason, occurredAt);
      const container = containers.find(({ id }) => id === containerId);
      if (!container) throw new Error(`The container ${containerId} of a line is gone.`);
      const present = (balances.get(containerId)?.pieces ?? 0) + pieces;
      const state = stateAfterReversal(container, 'transferred out', present);
      if (state !== container.state) {
        const key = { studioId, id: containerId };
        await transaction.change(Container, 'container', key, container.version, {
          ...{ state, endedAt: null, endedFrom: null },
          placeId: placeId ?? container.placeId,
        });
      }
      const outcome: TransferOutcome = {
        ...{ studioId, senderId, receiverId, lineId, reason, occurredAt, recordedAt, personId, via },
        id: uuidv7(),
        kind: 'withdrawn',
        lostPieces: 0,
        lostMicrolitres: 0,
      };
      outcomes.push(outcome);
      goods.push({
        ...{ studioId, lotId, containerId, pieces, microlitres, recordedAt },
        id: uuidv7(),
        outcomeId: outcome.id,
        movementId: reversal.id,
        surplusPieces: 0,
        fault: null,
      });
    }
    await transaction.insert(TransferOutcome, outcomes);
    await transaction.insert(TransferGoods, goods);
  }
}

function refuseUnlessSender(studioId: string, { senderId }: KnownTransfer): void {
  if (senderId === studioId) return;
  throw new Problem(
    409,
    'wrong-state',
    'This was sent to this studio, and only the studio that sent it can call it back. Record its arrival, or that it is missing.',
  );
}

/** @throws Problem not-found for a line of another transfer; wrong-state when any of them is not in transit any more */
function chosenLines({ lines }: KnownTransfer, lineIds: readonly string[] | undefined): KnownLine[] {
  const missing = lineIds?.find((id) => !lines.some((line) => line.id === id));
  if (missing !== undefined) throw notFound('line in this transfer', missing);
  const chosen = lineIds === undefined ? lines : lines.filter(({ id }) => lineIds.includes(id));
  const ended = chosen.find(({ balance }) => lineState(balance) !== 'in transit');
  if (ended === undefined) return chosen;
  const state = lineState(ended.balance);
  const todo =
    state === 'withdrawn'
      ? 'It was called back already.'
      : 'What arrived is sent back by a transfer from there. If some of the goods never left, name their lines alone.';
  throw new Problem(
    409,
    'wrong-state',
    `Line ${ended.lineNumber} is recorded as ${state}. ${todo} Nothing was called back.`,
    { lines: [{ lineNumber: ended.lineNumber, lineId: ended.id, state }] },
  );
}
