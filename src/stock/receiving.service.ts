import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import { localDay } from '../identity/local-day.js';
import type { Actor } from '../platform/actor.js';
import type { Transaction } from '../platform/database/transaction.js';
import { Transactions } from '../platform/database/transactions.js';
import { occurredAt as acceptedInstant, maximumLateRecordDays } from '../platform/occurred-at.js';
import { invalidField, notFound, Problem } from '../platform/problem.js';
import { BlendDates } from './blend-dates.service.js';
import { Container } from './container.entity.js';
import { Delivery, DeliveryLine } from './delivery.entity.js';
import { ExpectedDeliveries } from './expected-deliveries/expected-deliveries.service.js';
import { LabelCodes } from './label-codes.service.js';
import { type Booking, Ledger } from './ledger.service.js';
import { type LotAtReceipt, LotsAtReceipt } from './lots-at-receipt.service.js';
import { OrderFollowers } from './order-followers.service.js';
import { ReceiptHolds } from './receipt-holds.service.js';
import { type ReceivedLine, ReceivedLines } from './received-lines.service.js';
import type { ReceiveDeliveryDto } from './receiving.dto.js';
import type { ReceiptView, ReceivedHoldView, ReceivedLineView } from './receiving.views.js';
import { StockConditions } from './stock-conditions.service.js';
import { OtherEnds } from './transfers/other-ends.service.js';
import { SentGoods } from './transfers/sent-goods.service.js';
import { isCalendarDay } from './use-by.js';

/** A line with everything that was made for it. */
export interface PutAwayLine {
  line: ReceivedLine;
  lot: LotAtReceipt;
  containers: Container[];
}

/** Records what arrives: lots, containers with their label codes, the ledger's first movements, and what is put aside. */
@Injectable()
export class Receiving {
  constructor(
    private readonly transactions: Transactions,
    private readonly lines: ReceivedLines,
    private readonly lots: LotsAtReceipt,
    private readonly labelCodes: LabelCodes,
    private readonly holds: ReceiptHolds,
    private readonly ledger: Ledger,
    private readonly blendDates: BlendDates,
    private readonly conditions: StockConditions,
    private readonly sentGoods: SentGoods,
    private readonly otherEnds: OtherEnds,
    private readonly expected: ExpectedDeliveries,
    private readonly orders: OrderFollowers,
  ) {}

  async receive(actor: Actor, dto: ReceiveDeliveryDto): Promise<ReceiptView> {
    const told: string[] = [];
    const view = await this.transactions.write(
      actor,
      { id: dto.id, action: 'stock.receive', subject: { kind: 'delivery', id: dto.id }, content: dto },
      (transaction) => this.inside(transaction, dto, told),
    );
    await this.otherEnds.judge(told);
    return view;
  }

  /**
   * Receives in the caller's transaction.
   * @param told takes up whom the other ends of transfers must be told of, by `OtherEnds.judge` once it is committed
   */
  async inside(transaction: Transaction, dto: ReceiveDeliveryDto, told: string[]): Promise<ReceiptView> {
    const receivedAt = acceptedInstant(dto.occurredAt, transaction.recordedAt, maximumLateRecordDays);
    await this.refuseUnusablePurchase(transaction, dto, receivedAt);
    const lines = await this.lines.understand(transaction, dto.lines, receivedAt);
    const productIds = [...new Set(lines.map((line) => line.product.id))];
    await transaction.lock('product', productIds);
    const lots = await this.lots.decide(
      transaction,
      lines,
      dto.origin === 'opening stock' ? 'opening stock' : 'delivery',
    );

    await this.lots.write(transaction, lots);
    const blendProductIds = await this.blendDates.follow(transaction, { lotIds: redatedLotIds(lots) });
    const putAway = await this.putAway(transaction, lines, lots, receivedAt);
    const holds = await this.holds.place(transaction, putAway, receivedAt);
    const joinedIds = lots.filter(({ isNew }) => !isNew).map(({ lot }) => lot.id);
    told.push(...(await this.sentGoods.follow(transaction, joinedIds)));
    const delivery = this.delivery(transaction, dto, receivedAt);
    await transaction.insert(Delivery, delivery);
    const answered = await this.orders.answered(transaction, {
      expectedDeliveryId: dto.expectedDeliveryId ?? null,
      lines: lines.map(({ product, quantityPieces, dto: line }) => ({
        productId: product.id,
        pieces: quantityPieces,
        orderLineId: line.orderLineId,
      })),
    });
    const deliveryLines = await this.deliveryLines(transaction, delivery.id, putAway, answered);
    await transaction.insert(DeliveryLine, deliveryLines);
    await this.conditions.reevaluate(transaction, [...productIds, ...blendProductIds]);
    if (dto.expectedDeliveryId != null) {
      await this.expected.cameWith(transaction, dto.expectedDeliveryId, delivery.id);
    }
    await this.orders.received(transaction, {
      id: delivery.id,
      occurredAt: receivedAt,
      expectedDeliveryId: dto.expectedDeliveryId ?? null,
      orderLineIds: answered.flatMap((orderLineId) => orderLineId ?? []),
    });
    return viewOf(delivery, deliveryLines, putAway, holds);
  }

  private async refuseUnusablePurchase(
    transaction: Transaction,
    { origin, supplierId, orderedOn }: ReceiveDeliveryDto,
    receivedAt: string,
  ): Promise<void> {
    if (origin !== 'purchase') {
      for (const [field, given] of Object.entries({ supplierId, orderedOn })) {
        if (given == null) continue;
        throw invalidField(
          field,
          `A delivery of the origin "${origin}" has no ${field}. Leave it out, or make it a purchase.`,
        );
      }
    }
    if (orderedOn != null) {
      const day = localDay(receivedAt, transaction.actor.timeZone);
      if (!isCalendarDay(orderedOn)) {
        throw new Problem(
          400,
          'unusable-date',
          `"${orderedOn}" is not a day of the calendar. Write the day of the order as YYYY-MM-DD.`,
          { faults: [{ field: 'orderedOn', message: 'not a day of the calendar' }] },
        );
      }
      if (orderedOn > day) {
        throw new Problem(
          400,
          'unusable-date',
          `Ordered on ${orderedOn} lies after the day of receipt, ${day}. Compare with the order.`,
          { faults: [{ field: 'orderedOn', message: 'after the day of receipt' }] },
        );
      }
    }
    if (supplierId == null) return;
    const [supplier] = await transaction.query('SELECT id FROM supplier WHERE chain_id = $1 AND id = $2', [
      transaction.actor.chainId,
      supplierId,
    ]);
    if (!supplier) throw notFound('supplier', supplierId);
  }

  private async putAway(
    transaction: Transaction,
    lines: readonly ReceivedLine[],
    lots: readonly LotAtReceipt[],
    receivedAt: string,
  ): Promise<PutAwayLine[]> {
    const count = lines.reduce((sum, line) => sum + line.containers.length, 0);
    const codes = await this.labelCodes.make(transaction, count);
    const bookings: Booking[] = [];
    const putAway = lines.map((line, index): PutAwayLine => {
      const lot = lots[index];
      if (!lot) throw new Error(`Line ${line.lineNumber} has no lot.`);
      const containers = line.containers.map((planned): Container => {
        const container: Container = {
          studioId: transaction.studioId,
          id: uuidv7(),
          lotId: lot.lot.id,
          form: planned.form,
          labelCode: codes.pop() ?? '',
          placeId: line.dto.placeId,
          ownerId: line.dto.ownerId ?? null,
          state: line.openedAt === null ? 'sealed' : 'opened',
          openedAt: line.openedAt,
          openedBy: null,
          receivedAt,
          endedAt: null,
          openingToldAt: null,
          usableThrough: null,
          endedFrom: null,
          version: 1,
        };
        bookings.push({
          lotId: lot.lot.id,
          containerId: container.id,
          kind: 'received',
          pieces: planned.pieces,
          microlitres: microlitresOf(line, planned.pieces),
          occurredAt: receivedAt,
        });
        return container;
      });
      return { line, lot, containers };
    });
    await transaction.insert(
      Container,
      putAway.flatMap(({ containers }) => containers),
    );
    await this.ledger.book(transaction, bookings);
    return putAway;
  }

  private delivery(transaction: Transaction, dto: ReceiveDeliveryDto, receivedAt: string): Delivery {
    const { studioId, chainId, personId, via } = transaction.actor;
    return {
      studioId,
      id: dto.id,
      chainId,
      supplierId: dto.supplierId ?? null,
      origin: dto.origin,
      orderedOn: dto.orderedOn ?? null,
      reference: dto.reference ?? null,
      occurredAt: receivedAt,
      recordedAt: transaction.recordedAt,
      personId,
      via,
    };
  }

  private async deliveryLines(
    transaction: Transaction,
    deliveryId: string,
    putAway: readonly PutAwayLine[],
    orderLineIds: readonly (string | null)[],
  ): Promise<DeliveryLine[]> {
    const { studioId } = transaction;
    const [studio] = await transaction.query<{ currency: string }>(
      'SELECT currency FROM studio WHERE id = $1',
      [studioId],
    );
    return putAway.map(({ line, lot }, index): DeliveryLine => {
      const unitCostMinor = line.dto.unitCostMinor ?? null;
      return {
        studioId,
        id: uuidv7(),
        deliveryId,
        lineNumber: line.lineNumber,
        lotId: lot.lot.id,
        quantityPieces: line.quantityPieces,
        unitCostMinor,
        currency: unitCostMinor === null ? null : (studio?.currency ?? null),
        orderLineId: orderLineIds[index] ?? null,
      };
    });
  }
}

/** Lots on record whose use-by this delivery corrected. */
function redatedLotIds(lots: readonly LotAtReceipt[]): string[] {
  const redated = lots.filter(({ corrections }) => corrections.some(({ field }) => field === 'useBy'));
  return [...new Set(redated.map(({ lot }) => lot.id))];
}

/**
 * Pigments are also kept by volume, as an estimate from the label, or of what is left in a bottle that comes opened: what
 * was taken from it before it came is no movement here. Everything else is kept by pieces only.
 */
function microlitresOf({ product, dto }: ReceivedLine, pieces: number): number {
  if (product.kind !== 'pigment') return 0;
  return (dto.remainingMicrolitres ?? product.volumeMicrolitres ?? 0) * pieces;
}

function viewOf(
  delivery: Delivery,
  deliveryLines: readonly DeliveryLine[],
  putAway: readonly PutAwayLine[],
  holds: ReadonlyMap<number, ReceivedHoldView[]>,
): ReceiptView {
  const { id, origin, supplierId, orderedOn, reference, occurredAt, recordedAt } = delivery;
  const lines = putAway.map(({ line, lot, containers }, index): ReceivedLineView => {
    const { lineNumber, quantityPieces, warnings } = line;
    const { studioId: _, chainId: __, origin: ___, createdAt: ____, ...facts } = lot.lot;
    return {
      lineNumber,
      quantityPieces,
      unitCostMinor: deliveryLines[index]?.unitCostMinor ?? null,
      currency: deliveryLines[index]?.currency ?? null,
      orderLineId: deliveryLines[index]?.orderLineId ?? null,
      lot: { ...facts, codes: lot.codes, isNew: lot.isNew },
      containers: containers.map((container, place) => {
        const pieces = line.containers[place]?.pieces ?? 0;
        const { labelCode, form, placeId, ownerId } = container;
        const state = container.openedAt === null ? 'sealed' : 'opened';
        const microlitres = microlitresOf(line, pieces);
        return { id: container.id, labelCode, form, state, pieces, microlitres, placeId, ownerId };
      }),
      holds: holds.get(lineNumber) ?? [],
      warnings,
    };
  });
  return { id, origin, supplierId, orderedOn, reference, occurredAt, recordedAt, lines };
}
