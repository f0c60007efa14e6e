import { Injectable } from '@nestjs/common';
import { In } from 'typeorm';
import { v7 as uuidv7 } from 'uuid';
import { Product } from '../../catalogue/product.entity.js';
import { Supplier } from '../../catalogue/supplier.entity.js';
import { Studio } from '../../identity/studio.entity.js';
import type { Actor } from '../../platform/actor.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Transactions } from '../../platform/database/transactions.js';
import { faultsProblem, invalidField, notFound, Problem } from '../../platform/problem.js';
import { OrderDueConditions } from '../plan/order-due-conditions.service.js';
import { Plan, PlanLine } from '../plan/plan.entity.js';
import { Offer } from '../supply/offer.entity.js';
import { type OfferOfLine, offeredPackPrice, orderedProducts } from './order-facts.service.js';
import { OrderRegister } from './order-register.service.js';
import { OrderViews } from './order-views.service.js';
import { PurchaseOrder, PurchaseOrderLine } from './purchase-order.entity.js';
import {
  type AddedOrderLineDto,
  type ChangeOrderDto,
  type DraftFromPlanDto,
  type DraftOrderDto,
  mostOrderLines,
} from './purchase-orders.dto.js';
import type { DraftedOrdersView, PurchaseOrderView } from './purchase-orders.views.js';

type NewLine = Omit<
  PurchaseOrderLine,
  'studioId' | 'chainId' | 'id' | 'orderId' | 'lineNumber' | 'removedAt'
>;

/** Drafts purchase orders and changes drafts. */
@Injectable()
export class OrderDrafting {
  constructor(
    private readonly transactions: Transactions,
    private readonly register: OrderRegister,
    private readonly views: OrderViews,
    private readonly orderDue: OrderDueConditions,
  ) {}

  /**
   * One order for each supplier of the chosen lines.
   * @throws Problem not-found; wrong-state while the plan is not done; invalid-fields for lines that say nothing to order;
   * already-exists for what stands in an order of this plan already, or in any that is not sent yet
   */
  fromPlan(actor: Actor, dto: DraftFromPlanDto): Promise<DraftedOrdersView> {
    const request = {
      id: dto.id,
      action: 'orders.draft-from-plan',
      subject: { kind: 'plan', id: dto.planId },
      content: dto,
    };
    return this.transactions.write(actor, request, async (transaction) => {
      await transaction.lockStudio();
      const { studioId, manager, recordedAt } = transaction;
      const { plan, lines } = await chosenLines(transaction, dto);
      const offers = await manager.findBy(Offer, { studioId, id: In(lines.map(({ offerId }) => offerId)) });
      const byId = new Map(offers.map((offer) => [offer.id, offer]));
      if (!dto.again) {
        const ordered = lines.map(({ lineNumber, offerId }) => {
          const productId = byId.get(offerId)?.productId;
          if (productId === undefined) throw notFound('offer', offerId);
          return { lineNumber, productId };
        });
        await refuseOrdered(transaction, plan, ordered);
      }
      const currency = await this.currency(transaction);
      const bySupplier = new Map<string, NewLine[]>();
      for (const { offerId, packs } of lines) {
        const offer = byId.get(offerId);
        if (!offer) throw notFound('offer', offerId);
        const ofSupplier = bySupplier.get(offer.supplierId) ?? [];
        bySupplier.set(offer.supplierId, [...ofSupplier, lineOfOffer(offer, packs, currency)]);
      }
      const suppliers = await manager.findBy(Supplier, {
        chainId: actor.chainId,
        id: In([...bySupplier.keys()]),
      });
      suppliers.sort((one, other) => (one.name < other.name ? -1 : 1));
      const orders: PurchaseOrderView[] = [];
      for (const { id: supplierId } of suppliers) {
        const order = { id: uuidv7(), supplierId, planId: dto.planId, currency };
        await this.insert(transaction, order, bySupplier.get(supplierId) ?? []);
        orders.push(await this.views.of(transaction.read, actor, order.id, recordedAt));
      }
      transaction.note({ orderIds: orders.map(({ id }) => id) });
      return { orders };
    });
  }

  /** @throws Problem not-found, invalid-fields */
  draft(actor: Actor, dto: DraftOrderDto): Promise<PurchaseOrderView> {
    const { id, supplierId, lines = [] } = dto;
    return this.register.write(actor, 'draft', id, dto, async (transaction) => {
      const key = { chainId: actor.chainId, id: supplierId };
      if (!(await transaction.manager.existsBy(Supplier, key))) throw notFound('supplier', supplierId);
      const currency = await this.currency(transaction);
      const order = { id, supplierId, planId: null, currency };
      await this.insert(transaction, order, await this.newLines(transaction, order, lines, 'lines'));
    });
  }

  /** @throws Problem not-found, wrong-state, stale-version, invalid-fields */
  change(actor: Actor, orderId: string, dto: ChangeOrderDto): Promise<PurchaseOrderView> {
    return this.register.write(actor, 'change', orderId, dto, async (transaction) => {
      const { studioId } = transaction;
      const { add = [], change = [], takeOff = [], deliveryCostMinor } = dto;
      const order = await this.register.forStep(transaction, orderId, 'change', dto.version);
      const lines = await transaction.manager.findBy(PurchaseOrderLine, { studioId, orderId });
      const standing = new Map(
        lines.filter(({ removedAt }) => removedAt === null).map((line) => [line.id, line]),
      );
      const named = [...change.map(({ lineId }) => lineId), ...takeOff];
      for (const lineId of named) if (!standing.has(lineId)) throw notFound('order line', lineId);
      if (new Set(named).size < named.length) {
        throw invalidField('change', 'A line is named twice: change it once, or take it off');
      }
      if (standing.size - takeOff.length + add.length > mostOrderLines) {
        throw invalidField('add', `An order has at most ${mostOrderLines} lines; begin another one`);
      }
      const offers = await offersOf(transaction, lines, order.currency);
      for (const { lineId, packs, packPriceMinor } of change) {
        const line = standing.get(lineId);
        if (!line) continue;
        const changes: Partial<PurchaseOrderLine> = {};
        if (packs !== undefined) changes.packs = packs;
        if (packPriceMinor !== undefined) changes.packPriceMinor = packPriceMinor;
        else if (packs !== undefined && packs !== line.packs && line.offerId !== null) {
          // A price of one's own stays; only the offer's follows the offer.
          const offer = offers.get(line.offerId) ?? null;
          if (line.packPriceMinor === offeredPackPrice(offer, line.packs)) {
            changes.packPriceMinor = offeredPackPrice(offer, packs);
          }
        }
        if (Object.keys(changes).length > 0)
          await transaction.update(PurchaseOrderLine, { studioId, id: lineId }, changes);
      }
      await transaction.updateAll(PurchaseOrderLine, takeOff, { removedAt: transaction.recordedAt });
      const added = await this.newLines(transaction, order, add, 'add');
      await this.insertLines(
        transaction,
        orderId,
        added,
        Math.max(0, ...lines.map(({ lineNumber }) => lineNumber)),
      );
      await this.register.change(transaction, order, {
        ...(deliveryCostMinor !== undefined && { deliveryCostMinor }),
      });
      transaction.note({ changed: change.length, takenOff: takeOff.length, added: added.length });
    });
  }

  private async insert(
    transaction: Transaction,
    order: Pick<PurchaseOrder, 'id' | 'supplierId' | 'planId' | 'currency'>,
    lines: readonly NewLine[],
  ): Promise<void> {
    const { studioId, actor, recordedAt } = transaction;
    // Counted under the studio's lock, so there are no gaps and no number twice.
    const [last] = await transaction.query<{ number: number | null }>(
      'SELECT MAX(number) AS number FROM purchase_order WHERE studio_id = $1',
      [studioId],
    );
    await transaction.insert(PurchaseOrder, {
      ...order,
      studioId,
      chainId: actor.chainId,
      number: (last?.number ?? 0) + 1,
      state: 'draft',
      deliveryCostMinor: null,
      approvedBy: null,
      approvedAt: null,
      sentAs: null,
      sentAt: null,
      expectedDeliveryId: null,
      endedAt: null,
      endedAs: null,
      version: 1,
      createdAt: recordedAt,
    });
    await this.insertLines(transaction, order.id, lines, 0);
    await this.orderDue.reevaluate(transaction);
  }

  private async insertLines(
    transaction: Transaction,
    orderId: string,
    lines: readonly NewLine[],
    lastNumber: number,
  ): Promise<void> {
    if (lines.length === 0) return;
    const { studioId, actor } = transaction;
    const rows = lines.map((line, index) => ({
      ...line,
      studioId,
      chainId: actor.chainId,
      id: uuidv7(),
      orderId,
      lineNumber: lastNumber + index + 1,
      removedAt: null,
    }));
    await transaction.insert(PurchaseOrderLine, rows);
  }

  /** Understands lines written by hand; all faults are told together. */
  private async newLines(
    transaction: Transaction,
    { supplierId, currency }: Pick<PurchaseOrder, 'supplierId' | 'currency'>,
    lines: readonly AddedOrderLineDto[],
    field: string,
  ): Promise<NewLine[]> {
    if (lines.length === 0) return [];
    const { studioId, actor, manager } = transaction;
    const faults: { field: string; message: string }[] = [];
    const offers = await manager.findBy(Offer, {
      studioId,
      id: In(lines.flatMap(({ offerId }) => offerId ?? [])),
    });
    const products = await manager.findBy(Product, {
      chainId: actor.chainId,
      id: In(lines.flatMap(({ productId }) => productId ?? [])),
    });
    const understood = lines.flatMap((line, index): NewLine[] => {
      const { offerId, productId, packs, packPriceMinor } = line;
      if ((offerId === undefined) === (productId === undefined)) {
        faults.push({ field: `${field}.${index}.offerId`, message: 'name either an offer or a product' });
        return [];
      }
      if (offerId !== undefined) {
        const offer = offers.find(({ id }) => id === offerId);
        if (!offer) throw notFound('offer', offerId);
        if (offer.supplierId !== supplierId) {
          faults.push({ field: `${field}.${index}.offerId`, message: 'it is an offer of another supplier' });
        }
        for (const given of ['orderCode', 'packContainers', 'containerPieces'] as const) {
          if (line[given] !== undefined) {
            faults.push({ field: `${field}.${index}.${given}`, message: 'the offer says it; leave it out' });
          }
        }
        const ofOffer = lineOfOffer(offer, packs, currency);
        return [packPriceMinor === undefined ? ofOffer : { ...ofOffer, packPriceMinor }];
      }
      const product = products.find(({ id }) => id === productId);
      if (!product) throw notFound('product', productId ?? '');
      return [
        {
          productId: product.id,
          offerId: null,
          orderCode: line.orderCode ?? null,
          packs,
          packContainers: line.packContainers ?? 1,
          containerPieces: line.containerPieces ?? 1,
          packPriceMinor: packPriceMinor ?? null,
        },
      ];
    });
    if (faults.length > 0) throw faultsProblem(faults);
    return understood;
  }

  private async currency(transaction: Transaction): Promise<string> {
    const { currency } = await transaction.manager.findOneByOrFail(Studio, { id: transaction.studioId });
    return currency;
  }
}

/** The lines of a plan that are to be ordered, each with its offer. Equal facts are not computed twice: see `sameAsId`. */
async function chosenLines(
  transaction: Transaction,
  { planId, lineNumbers }: DraftFromPlanDto,
): Promise<{ plan: Plan; lines: { lineNumber: number; offerId: string; packs: number }[] }> {
  const { studioId, manager } = transaction;
  const plan = await manager.findOneBy(Plan, { studioId, id: planId });
  if (!plan || plan.purpose === 'replay') throw notFound('plan', planId);
  if (plan.purpose === 'what if') {
    throw new Problem(
      409,
      'wrong-state',
      'This plan supposes what is not so. Orders are drafted from a plan of the record as it stands; ask for one.',
    );
  }
  if (plan.state !== 'done') {
    throw new Problem(
      409,
      'wrong-state',
      `This plan is ${plan.state}. Orders are drafted from one that is done.`,
    );
  }
  const rows = await manager.findBy(PlanLine, {
    studioId,
    planId: plan.sameAsId ?? planId,
    lineNumber: In([...new Set(lineNumbers)]),
  });
  const byNumber = new Map(rows.map((row) => [row.lineNumber, row]));
  const faults: { field: string; message: string }[] = [];
  const lines = [...new Set(lineNumbers)].flatMap((lineNumber) => {
    const { offerId = null, packs = 0 } = byNumber.get(lineNumber) ?? {};
    if (offerId !== null && packs > 0) return [{ lineNumber, offerId, packs }];
    const said = byNumber.has(lineNumber) ? 'says nothing to order' : 'is not there';
    faults.push({
      field: `lineNumbers.${lineNumbers.indexOf(lineNumber)}`,
      message: `line ${lineNumber} of the plan ${said}`,
    });
    return [];
  });
  if (faults.length > 0) throw faultsProblem(faults);
  return { plan, lines };
}

/** @throws Problem already-exists */
async function refuseOrdered(
  { read, studioId }: Transaction,
  { id, sameAsId }: Plan,
  lines: readonly { lineNumber: number; productId: string }[],
): Promise<void> {
  const ordered = await orderedProducts(read, studioId, sameAsId === null ? [id] : [id, sameAsId]);
  for (const { lineNumber, productId } of lines) {
    const order = ordered.get(productId);
    if (!order) continue;
    throw new Problem(
      409,
      'already-exists',
      `The product of line ${lineNumber} of the plan stands in order ${order.number} already. Change that one, or draft it again on purpose.`,
      { orderId: order.orderId, lineNumber },
    );
  }
}

function lineOfOffer(offer: Offer, packs: number, currency: string): NewLine {
  const { id: offerId, productId, orderCode, packContainers, containerPieces } = offer;
  const packPriceMinor = offeredPackPrice(offerOfLine(offer, currency), packs);
  return { productId, offerId, orderCode, packs, packContainers, containerPieces, packPriceMinor };
}

function offerOfLine(offer: Offer, currency: string): OfferOfLine {
  const { endedAt, minimumPacks, prices, leadTimeDays } = offer;
  return {
    ended: endedAt !== null,
    minimumPacks,
    prices,
    leadTimeDays,
    sameCurrency: offer.currency === currency,
  };
}

async function offersOf(
  { studioId, manager }: Transaction,
  lines: readonly PurchaseOrderLine[],
  currency: string,
): Promise<Map<string, OfferOfLine>> {
  const ids = lines.flatMap(({ offerId }) => offerId ?? []);
  const offers = await manager.findBy(Offer, { studioId, id: In(ids) });
  return new Map(offers.map((offer) => [offer.id, offerOfLine(offer, currency)]));
}
