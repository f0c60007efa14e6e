import { Injectable } from '@nestjs/common';
import { In, IsNull } from 'typeorm';
import { Supplier } from '../../catalogue/supplier.entity.js';
import { Studio } from '../../identity/studio.entity.js';
import type { Actor } from '../../platform/actor.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Transactions } from '../../platform/database/transactions.js';
import { DataKeys } from '../../platform/encryption/data-keys.service.js';
import { invalidField, notFound, Problem, staleVersion } from '../../platform/problem.js';
import { Delivery, DeliveryLine } from '../../stock/delivery.entity.js';
import { Lot } from '../../stock/lot.entity.js';
import { orderedPieces } from '../purchase-orders/order-receipt.js';
import { PurchaseOrder, PurchaseOrderLine } from '../purchase-orders/purchase-order.entity.js';
import { sealedAsNote } from './claim-list.service.js';
import { claimRows, viewOfClaim } from './claim-rows.query.js';
import { type ClaimStep, claimStateAfter, claimStepsOf } from './claim-steps.js';
import type { ChangeClaimDto, OpenClaimDto, SettleClaimDto } from './claims.dto.js';
import type { ClaimView } from './claims.views.js';
import { SupplierClaim } from './supplier-claim.entity.js';

const what = 'claim';

type ClaimedGoods = Pick<SupplierClaim, 'orderLineId' | 'deliveryLineId' | 'lotId' | 'pieces'>;

/** Opens, changes and ends claims against suppliers. Notes are sealed, each under a key of its own. */
@Injectable()
export class Claims {
  constructor(
    private readonly transactions: Transactions,
    private readonly dataKeys: DataKeys,
  ) {}

  /**
   * @throws Problem not-found; invalid-fields when what it names does not belong together, or for more pieces than came or
   * were ordered; already-exists while the same is claimed already
   */
  open(actor: Actor, dto: OpenClaimDto): Promise<ClaimView> {
    const { id, supplierId, reason, pieces, amountMinor = null, note = null } = dto;
    return this.write(actor, 'open', id, dto, async (transaction) => {
      const named = await namedGoods(transaction, dto);
      await refuseTooMany(transaction, { ...named, pieces });
      if (!dto.again) await refuseStanding(transaction, { ...named, reason });
      await transaction.insert(SupplierClaim, {
        ...named,
        ...(await this.sealed(transaction, id, note)),
        studioId: actor.studioId,
        id,
        chainId: actor.chainId,
        supplierId,
        reason,
        pieces,
        amountMinor,
        currency: amountMinor === null ? null : await currencyOf(transaction),
        state: 'open',
        settledMinor: null,
        version: 1,
        createdAt: transaction.recordedAt,
        sentAt: null,
        endedAt: null,
      });
    });
  }

  /**
   * What was sent is open again, for the supplier was told of something else.
   * @throws Problem not-found, wrong-state, stale-version; invalid-fields for more pieces than came or were ordered
   */
  change(actor: Actor, id: string, dto: ChangeClaimDto): Promise<ClaimView> {
    return this.write(actor, 'change', id, dto, async (transaction) => {
      const { version, pieces, amountMinor, note } = dto;
      const claim = await this.forStep(transaction, id, 'change', version);
      if (pieces !== undefined) await refuseTooMany(transaction, { ...claim, pieces });
      const changes: Partial<SupplierClaim> = {
        state: claimStateAfter('change'),
        sentAt: null,
        ...(pieces !== undefined && { pieces }),
        ...(amountMinor !== undefined && {
          amountMinor,
          currency: amountMinor === null ? null : (claim.currency ?? (await currencyOf(transaction))),
        }),
        ...(note !== undefined && (await this.sealed(transaction, id, note))),
      };
      await transaction.change(SupplierClaim, what, { studioId: claim.studioId, id }, version, changes);
      transaction.note({ fields: ['pieces', 'amountMinor', 'note'].filter((field) => field in dto) });
    });
  }

  /** @throws Problem not-found, wrong-state, stale-version */
  step(
    actor: Actor,
    id: string,
    step: Exclude<ClaimStep, 'change'>,
    dto: SettleClaimDto,
  ): Promise<ClaimView> {
    return this.write(actor, step, id, dto, async (transaction) => {
      const claim = await this.forStep(transaction, id, step, dto.version);
      const { recordedAt } = transaction;
      const settledMinor = dto.settledMinor ?? null;
      await transaction.change(SupplierClaim, what, { studioId: claim.studioId, id }, dto.version, {
        state: claimStateAfter(step),
        ...(step === 'send' ? { sentAt: recordedAt } : { endedAt: recordedAt }),
        ...(settledMinor !== null && {
          settledMinor,
          currency: claim.currency ?? (await currencyOf(transaction)),
        }),
      });
    });
  }

  private write(
    actor: Actor,
    verb: string,
    claimId: string,
    dto: { id: string },
    work: (transaction: Transaction) => Promise<void>,
  ): Promise<ClaimView> {
    const request = {
      id: dto.id,
      action: `claims.${verb}`,
      subject: { kind: what, id: claimId },
      content: { ...dto, claimId },
    };
    return this.transactions.write(actor, request, async (transaction) => {
      await transaction.lockStudio();
      await work(transaction);
      const [row] = await claimRows(transaction.read, 'AND claim.id = $2', [actor.studioId, claimId]);
      if (!row) throw notFound(what, claimId);
      return viewOfClaim(row);
    });
  }

  private async forStep(
    transaction: Transaction,
    id: string,
    step: ClaimStep,
    version: number,
  ): Promise<SupplierClaim> {
    const claim = await transaction.manager.findOneBy(SupplierClaim, { studioId: transaction.studioId, id });
    if (!claim) throw notFound(what, id);
    if (claim.version !== version) throw staleVersion(what, claim.version);
    const steps = claimStepsOf(claim.state);
    if (steps.includes(step)) return claim;
    const possible = steps.length === 0 ? 'nothing more' : steps.join(', ');
    throw new Problem(409, 'wrong-state', `This claim is ${claim.state}; what is possible now: ${possible}.`);
  }

  private async sealed(
    transaction: Transaction,
    id: string,
    note: string | null,
  ): Promise<Pick<SupplierClaim, 'dataKeyId' | 'noteSealed'>> {
    if (note === null) return { dataKeyId: null, noteSealed: null };
    const sealer = await this.dataKeys.make(transaction);
    return { dataKeyId: sealer.dataKeyId, noteSealed: sealer.seal(note, sealedAsNote(id)) };
  }
}

async function currencyOf({ manager, studioId }: Transaction): Promise<string> {
  const { currency } = await manager.findOneByOrFail(Studio, { id: studioId });
  return currency;
}

/** What a claim names, all of this studio and of the supplier. */
async function namedGoods(
  { studioId, actor, manager }: Transaction,
  { supplierId, orderLineId = null, deliveryLineId = null, lotId = null }: OpenClaimDto,
): Promise<Pick<SupplierClaim, 'orderLineId' | 'deliveryLineId' | 'lotId'>> {
  if (!(await manager.existsBy(Supplier, { chainId: actor.chainId, id: supplierId }))) {
    throw notFound('supplier', supplierId);
  }
  if (orderLineId !== null) {
    const line = await manager.findOneBy(PurchaseOrderLine, { studioId, id: orderLineId });
    if (!line) throw notFound('order line', orderLineId);
    const order = await manager.findOneByOrFail(PurchaseOrder, { studioId, id: line.orderId });
    if (order.supplierId !== supplierId) {
      throw invalidField(
        'orderLineId',
        `It is a line of order ${order.number}, which went to another supplier`,
      );
    }
  }
  if (lotId !== null && !(await manager.existsBy(Lot, { studioId, id: lotId }))) throw notFound('lot', lotId);
  let lot = lotId;
  if (deliveryLineId !== null) {
    const line = await manager.findOneBy(DeliveryLine, { studioId, id: deliveryLineId });
    if (!line) throw notFound('delivery line', deliveryLineId);
    const delivery = await manager.findOneByOrFail(Delivery, { studioId, id: line.deliveryId });
    if (delivery.supplierId !== null && delivery.supplierId !== supplierId) {
      throw invalidField('deliveryLineId', 'It is a line of a delivery of another supplier');
    }
    lot ??= line.lotId;
    if (lot !== line.lotId) throw invalidField('lotId', 'The line of the delivery brought another lot');
  }
  return { orderLineId, deliveryLineId, lotId: lot };
}

/**
 * The same goods are claimed once for each reason, until that claim ends.
 * @throws Problem already-exists
 */
async function refuseStanding(
  { studioId, manager }: Transaction,
  {
    orderLineId,
    deliveryLineId,
    lotId,
    reason,
  }: Omit<ClaimedGoods, 'pieces'> & Pick<SupplierClaim, 'reason'>,
): Promise<void> {
  const goods =
    deliveryLineId !== null
      ? { deliveryLineId }
      : orderLineId !== null
        ? { orderLineId, deliveryLineId: IsNull() }
        : lotId !== null && { lotId, orderLineId: IsNull(), deliveryLineId: IsNull() };
  if (goods === false) return;
  const standing = await manager.findOneBy(SupplierClaim, {
    ...{ studioId, reason, ...goods },
    state: In(['open', 'sent']),
  });
  if (!standing) return;
  throw new Problem(
    409,
    'already-exists',
    `These goods are claimed already for the same reason, ${standing.pieces} pieces. Change that claim, or open another on purpose.`,
    { claimId: standing.id },
  );
}

/** @throws Problem invalid-fields */
async function refuseTooMany(
  { studioId, manager }: Transaction,
  { orderLineId, deliveryLineId, pieces }: ClaimedGoods,
): Promise<void> {
  const came = deliveryLineId && (await manager.findOneBy(DeliveryLine, { studioId, id: deliveryLineId }));
  const ordered = orderLineId && (await manager.findOneBy(PurchaseOrderLine, { studioId, id: orderLineId }));
  if (!came && !ordered) return;
  const most = Math.max(came ? came.quantityPieces : 0, ordered ? orderedPieces(ordered) : 0);
  if (pieces > most) {
    throw invalidField('pieces', `No more than ${most} can be claimed: so many came or were ordered`);
  }
}
