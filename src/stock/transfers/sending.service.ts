import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import type { Actor } from '../../platform/actor.js';
import { placeholders } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Transactions } from '../../platform/database/transactions.js';
import { occurredAt as acceptedInstant } from '../../platform/occurred-at.js';
import { invalidField, notFound, Problem } from '../../platform/problem.js';
import { Container } from '../container.entity.js';
import type { ContainerFact } from '../container-facts.service.js';
import { ContainerOperation } from '../container-operation.service.js';
import { hasEnded } from '../container-transitions.js';
import { assumedOpenedLife } from '../container-views.service.js';
import { type HoldInForce, HoldsInForce } from '../holds-in-force.service.js';
import { Ledger } from '../ledger.service.js';
import { Reservations } from '../reservations.service.js';
import { judgeShelfLife } from '../shelf-life.js';
import { StockConditions } from '../stock-conditions.service.js';
import { containerLife } from '../stock-on-hand.js';
import { SentGoods } from './sent-goods.service.js';
import { Transfer, TransferLine, TransferLineFacts } from './transfer.entity.js';
import { refusalToSend } from './transfer-admission.js';
import { partOf, type Quantity } from './transfer-balance.js';
import { TransferConditions } from './transfer-conditions.service.js';
import { TransferList } from './transfer-list.service.js';
import type { SendTransferDto, SentLineDto } from './transfers.dto.js';
import type { TransferView } from './transfers.views.js';

/** A line that may go, with what of its container goes. */
interface AdmittedLine {
  container: ContainerFact;
  quantity: Quantity;
  whole: boolean;
}

/**
 * Sends goods to another studio of the chain: they leave the ledger here and are in transit, on neither's shelf, until one
 * of the two says what became of them. Writes rows of the sending studio only.
 */
@Injectable()
export class Sending {
  constructor(
    private readonly transactions: Transactions,
    private readonly operation: ContainerOperation,
    private readonly reservations: Reservations,
    private readonly holdsInForce: HoldsInForce,
    private readonly ledger: Ledger,
    private readonly sentGoods: SentGoods,
    private readonly stockConditions: StockConditions,
    private readonly conditions: TransferConditions,
    private readonly list: TransferList,
  ) {}

  /**
   * @throws Problem not-found for a container or receiver that is not here or of another chain; wrong-state or
   * not-enough-stock naming every line that may not go, with why
   */
  send(actor: Actor, dto: SendTransferDto): Promise<TransferView> {
    refuseTwice(dto.lines);
    const transferId = uuidv7();
    return this.transactions.write(
      actor,
      { id: dto.id, action: 'stock.send', subject: { kind: 'transfer', id: transferId }, content: dto },
      async (transaction) => {
        await checkReceiver(transaction, dto.receiverId);
        const at = acceptedInstant(dto.occurredAt, transaction.recordedAt);
        const containers = await this.operation.lockedAll(
          transaction,
          dto.lines.map(({ containerId }) => containerId),
        );
        const lines = await this.admit(transaction, dto.lines, containers, at);
        const transfer = newTransfer(transaction, transferId, dto, at);
        await transaction.insert(Transfer, transfer);
        await this.writeLines(transaction, transfer, lines);
        await this.endWhatWentWhole(transaction, lines, at);
        await this.stockConditions.reevaluate(transaction, [
          ...new Set(containers.map(({ productId }) => productId)),
        ]);
        await this.conditions.reevaluate(transaction);
        return this.list.view(transaction.read, actor.studioId, transferId);
      },
    );
  }

  private async admit(
    transaction: Transaction,
    given: readonly SentLineDto[],
    containers: readonly ContainerFact[],
    at: string,
  ): Promise<AdmittedLine[]> {
    const { studioId, read, actor } = transaction;
    const ids = containers.map(({ containerId }) => containerId);
    const assumed = await assumedOpenedLife(read, studioId);
    const reserved = await this.reservations.ofAll(read, studioId, ids);
    const holds = await this.holdsAt(transaction, ids, at);
    const blends = await blendLots(
      transaction,
      containers.map(({ lotId }) => lotId),
    );
    const refusals: { lineNumber: number; containerId: string; message: string }[] = [];
    const lines = containers.map((container, index): AdmittedLine => {
      const { containerId, form, state } = container;
      const pieces = given[index]?.pieces ?? container.pieces;
      if (form === 'bottle' && pieces !== container.pieces) {
        throw invalidField(`lines.${index}.pieces`, 'A bottle goes whole. Leave the pieces out.');
      }
      const { status } = judgeShelfLife(containerLife(container, assumed), at, actor.timeZone);
      const message = refusalToSend(
        {
          ...{ form, state, lifeStatus: status, pieces: container.pieces },
          holdKinds: (holds.get(containerId) ?? []).map(({ kind }) => kind),
          isBlend: blends.has(container.lotId),
          onTrays: reserved.get(containerId) ?? { lines: 0, pieces: 0 },
        },
        pieces,
      );
      if (message !== null) refusals.push({ lineNumber: index + 1, containerId, message });
      return {
        container,
        quantity: partOf(container, pieces),
        whole: pieces >= container.pieces,
      };
    });
    if (refusals.length > 0) throw refused(refusals);
    return lines;
  }

  /** The holds that stood when it was sent: what really left is recorded, and a hold placed since goes after it. */
  private holdsAt(
    { read, studioId, recordedAt }: Transaction,
    containerIds: readonly string[],
    at: string,
  ): Promise<Map<string, HoldInForce[]>> {
    const past = at < recordedAt ? at : undefined;
    return this.holdsInForce.reachingContainers(read, studioId, containerIds, past);
  }

  private async writeLines(
    transaction: Transaction,
    transfer: Transfer,
    lines: readonly AdmittedLine[],
  ): Promise<void> {
    const { studioId, chainId, receiverId, reason, occurredAt } = transfer;
    const rows = lines.map(({ container, quantity }, index): TransferLine => {
      const { productId, lotId, containerId, labelCode, form, state } = container;
      if (hasEnded(state)) throw new Error(`The ${form} ${containerId} was admitted though it is ${state}.`);
      return {
        ...{ studioId, chainId, receiverId, productId, lotId, containerId, labelCode, form, state },
        id: uuidv7(),
        transferId: transfer.id,
        lineNumber: index + 1,
        movementId: uuidv7(),
        ...quantity,
        recordedAt: transaction.recordedAt,
      };
    });
    await this.ledger.book(
      transaction,
      rows.map(({ movementId, lotId, containerId, pieces, microlitres }) => ({
        ...{ id: movementId, lotId, containerId, pieces, microlitres, reason, occurredAt },
        kind: 'transferred out',
      })),
    );
    await transaction.insert(TransferLine, rows);
    const told = await this.sentGoods.toldOf(
      transaction,
      rows.map(({ containerId }) => containerId),
    );
    await transaction.insert(
      TransferLineFacts,
      rows.flatMap(({ id, containerId }) => {
        const facts = told.get(containerId);
        return facts === undefined ? [] : [this.sentGoods.firstFacts(transaction, id, facts)];
      }),
    );
  }

  /** What goes whole stands here no more; it comes back as what it was when it is called back. */
  private async endWhatWentWhole(
    transaction: Transaction,
    lines: readonly AdmittedLine[],
    endedAt: string,
  ): Promise<void> {
    for (const { container, whole } of lines) {
      const { containerId: id, version, state } = container;
      if (!whole || hasEnded(state)) continue;
      const key = { studioId: transaction.studioId, id };
      const changes = { state: 'discarded' as const, endedAt, endedFrom: state };
      await transaction.change(Container, 'container', key, version, changes);
    }
  }
}

function refuseTwice(lines: readonly SentLineDto[]): void {
  const ids = lines.map(({ containerId }) => containerId);
  const index = ids.findIndex((id, position) => ids.indexOf(id) !== position);
  if (index === -1) return;
  throw invalidField(
    `lines.${index}.containerId`,
    'This container is named twice. Name each once, with all that goes of it.',
  );
}

/** @throws Problem not-found for a studio of another chain, as if there were none */
async function checkReceiver(transaction: Transaction, receiverId: string): Promise<void> {
  const { studioId, actor } = transaction;
  if (receiverId === studioId) {
    throw invalidField(
      'receiverId',
      'This is the sending studio itself. To put goods elsewhere in it, move them.',
    );
  }
  const [studio] = await transaction.query('SELECT id FROM studio WHERE id = $1 AND chain_id = $2', [
    receiverId,
    actor.chainId,
  ]);
  if (!studio) throw notFound('other studio in its chain', receiverId);
}

/** Of these lots, those that were poured here. */
async function blendLots(transaction: Transaction, lotIds: readonly string[]): Promise<Set<string>> {
  const rows = await transaction.query<{ lot_id: string }>(
    `SELECT DISTINCT lot_id FROM blend WHERE studio_id = $1 AND lot_id IN (${placeholders(lotIds)})`,
    [transaction.studioId, ...lotIds],
  );
  return new Set(rows.map((row) => row.lot_id));
}

function refused(refusals: readonly { lineNumber: number; containerId: string; message: string }[]): Problem {
  const [first] = refusals;
  const detail =
    refusals.length === 1
      ? `Line ${first?.lineNumber}: ${first?.message}`
      : `${refusals.length} lines may not be sent; see lines.`;
  return new Problem(409, 'wrong-state', `${detail} Nothing was recorded.`, { lines: refusals });
}

function newTransfer(
  { studioId, actor, recordedAt }: Transaction,
  id: string,
  { receiverId, reason }: SendTransferDto,
  occurredAt: string,
): Transfer {
  const { chainId, personId, via } = actor;
  return { studioId, id, chainId, receiverId, reason, occurredAt, recordedAt, personId, via };
}
