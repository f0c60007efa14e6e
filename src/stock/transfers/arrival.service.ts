import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import type { Actor } from '../../platform/actor.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Transactions } from '../../platform/database/transactions.js';
import { occurredAt as acceptedInstant } from '../../platform/occurred-at.js';
import { faultsProblem, notFound, Problem } from '../../platform/problem.js';
import { ContainerViews } from '../container-views.service.js';
import { StockConditions } from '../stock-conditions.service.js';
import { understandArrival } from './arrived-lines.js';
import { type ArrivedLine, GoodsPutAway, type PutAwayGoods } from './goods-put-away.service.js';
import { OtherEnds } from './other-ends.service.js';
import { SentGoods } from './sent-goods.service.js';
import { TransferConditions } from './transfer-conditions.service.js';
import { TransferList } from './transfer-list.service.js';
import { TransferGoods, TransferOutcome } from './transfer-outcome.entity.js';
import { type KnownTransfer, TransferRegister } from './transfer-register.service.js';
import type { RecordArrivalDto } from './transfers.dto.js';
import type { ArrivalView } from './transfers.views.js';

/**
 * Records what arrives of a transfer. Guarantees: only rows of the receiving studio are written; a line ends once, and
 * what is missing of it is lost visibly; what is held where it came from arrives on hold; an opened bottle arrives opened
 * with its date, and lasts no longer than it did there. What is true is never refused, only what contradicts the record,
 * with what to do about the record.
 */
@Injectable()
export class Arrival {
  constructor(
    private readonly transactions: Transactions,
    private readonly register: TransferRegister,
    private readonly putAway: GoodsPutAway,
    private readonly sentGoods: SentGoods,
    private readonly stockConditions: StockConditions,
    private readonly conditions: TransferConditions,
    private readonly otherEnds: OtherEnds,
    private readonly list: TransferList,
    private readonly containerViews: ContainerViews,
  ) {}

  /** @throws Problem not-found; wrong-state naming lines of which something else is recorded already */
  async record(actor: Actor, transferId: string, dto: RecordArrivalDto): Promise<ArrivalView> {
    const { studioId } = actor;
    const told: string[] = [];
    const view = await this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'stock.record-arrival',
        subject: { kind: 'transfer', id: transferId },
        content: { ...dto, transferId },
      },
      async (transaction) => {
        const { read, recordedAt } = transaction;
        const at = acceptedInstant(dto.occurredAt, recordedAt);
        const transfer = await this.locked(transaction, transferId);
        const lines = understood(transfer, dto);
        const here = lines.filter(({ containers }) => containers.length > 0);
        const goods = await this.putAway.put(transaction, here, at);
        await writeOutcomes(transaction, transfer, lines, goods, dto.reason ?? null, at);
        // Goods of these lots may have been sent on from here before, and a hold may have been placed on the lot.
        const lotIds = goods.map(({ lot }) => lot.lot.id);
        told.push(...(await this.sentGoods.follow(transaction, lotIds)));
        const productIds = lines.map(({ sent }) => sent.productId);
        await this.stockConditions.reevaluate(transaction, [...new Set(productIds)]);
        await this.conditions.reevaluate(transaction);
        const containerIds = goods.flatMap(({ made }) => made.map(({ container }) => container.id));
        return {
          transfer: await this.list.view(read, studioId, transferId),
          containers: await this.containerViews.load(read, actor, { containerIds }, recordedAt),
          warnings: [...tooEarly(transfer, at), ...goods.flatMap(({ warnings }) => warnings)],
        };
      },
    );
    await this.otherEnds.judge([view.transfer.senderId, ...told]);
    return view;
  }

  /** The transfer under lock, its products first as everywhere, so that no goods join their lots meanwhile. */
  private async locked(transaction: Transaction, transferId: string): Promise<KnownTransfer> {
    const { read, studioId } = transaction;
    const transfer = await this.register.known(read, studioId, transferId);
    if (transfer.receiverId !== studioId) {
      throw new Problem(
        409,
        'wrong-state',
        'This was sent from here; its arrival is recorded in the studio that receives it. If it never left or came back, call it back.',
      );
    }
    await transaction.lock(
      'product',
      transfer.lines.map(({ productId }) => productId),
    );
    await this.register.lockLines(transaction, transfer);
    return this.register.known(read, studioId, transferId);
  }
}

function understood({ lines }: KnownTransfer, dto: RecordArrivalDto): ArrivedLine[] {
  const { arrived, unknownLineIds, faults, refusals } = understandArrival(lines, dto.lines);
  const [unknown] = unknownLineIds;
  if (unknown !== undefined) throw notFound('line in this transfer', unknown);
  if (faults.length > 0) throw faultsProblem(faults);
  const [refusal] = refusals;
  if (refusal === undefined) return arrived;
  const detail =
    refusals.length === 1
      ? `Line ${refusal.lineNumber}: ${refusal.message}`
      : `${refusals.length} lines contradict the record; see lines.`;
  throw new Problem(409, 'wrong-state', `${detail} Nothing was recorded.`, { lines: refusals });
}

function tooEarly({ occurredAt: sentAt }: KnownTransfer, arrivedAt: string): string[] {
  if (arrivedAt >= sentAt) return [];
  return [
    `By the record it was sent at ${sentAt}, after it arrived at ${arrivedAt}. It is recorded as told; one of the two clocks was wrong.`,
  ];
}

async function writeOutcomes(
  transaction: Transaction,
  { senderId, receiverId }: KnownTransfer,
  lines: readonly ArrivedLine[],
  putAway: readonly PutAwayGoods[],
  reason: string | null,
  occurredAt: string,
): Promise<void> {
  const { studioId, recordedAt, actor } = transaction;
  const { personId, via } = actor;
  const outcomes: TransferOutcome[] = [];
  const goods: TransferGoods[] = [];
  for (const line of lines) {
    const { lost } = line.became;
    const outcome: TransferOutcome = {
      ...{ studioId, senderId, receiverId, reason, occurredAt, recordedAt, personId, via },
      id: uuidv7(),
      lineId: line.sent.id,
      kind: line.said.turnedUp ? 'turned up' : 'arrived',
      lostPieces: lost.pieces,
      lostMicrolitres: lost.microlitres,
    };
    outcomes.push(outcome);
    const made = putAway.find((one) => one.line === line)?.made ?? [];
    for (const [index, { container, came, surplusPieces, movementId }] of made.entries()) {
      goods.push({
        ...{ studioId, movementId, ...came, surplusPieces, recordedAt },
        id: uuidv7(),
        outcomeId: outcome.id,
        lotId: container.lotId,
        containerId: container.id,
        fault: line.containers[index]?.fault ?? null,
      });
    }
  }
  await transaction.insert(TransferOutcome, outcomes);
  if (goods.length > 0) await transaction.insert(TransferGoods, goods);
}
