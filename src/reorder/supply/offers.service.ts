import { Injectable } from '@nestjs/common';
import { Product } from '../../catalogue/product.entity.js';
import type { Actor } from '../../platform/actor.js';
import { Database, type Read, type SqlValue } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Transactions } from '../../platform/database/transactions.js';
import { defaultPageSize, pageOf, refuseUnknownStart } from '../../platform/page.js';
import { faultsProblem, invalidField, notFound, Problem } from '../../platform/problem.js';
import { Offer } from './offer.entity.js';
import type { AddOfferDto, ChangeOfferDto, EndOfferDto, OfferPageDto } from './offers.dto.js';
import type { OfferPageView, OfferView } from './offers.views.js';
import { priceListFaults } from './price-list-faults.js';

/** More than a studio can buy; so many are planned with. */
const mostOffers = 5_000;

const columns = `offer.id, offer.supplier_id AS "supplierId", supplier.name AS "supplierName",
  offer.product_id AS "productId", product.name AS "productName", product.shade, maker.name AS "makerName",
  product.stock_form AS "stockForm", CASE WHEN product.archived_at IS NULL THEN 0 ELSE 1 END AS "productArchived", offer.order_code AS "orderCode",
  offer.pack_containers AS "packContainers", offer.container_pieces AS "containerPieces",
  offer.minimum_packs AS "minimumPacks", offer.prices, offer.currency,
  CASE WHEN offer.currency = studio.currency THEN 1 ELSE 0 END AS "inStudioCurrency",
  offer.life_on_arrival_days AS "lifeOnArrivalDays", offer.lead_time_days AS "leadTimeDays", offer.version,
  offer.created_at AS "createdAt", offer.ended_at AS "endedAt"`;
const tables = `offer
  JOIN studio ON studio.id = offer.studio_id
  JOIN supplier ON supplier.chain_id = offer.chain_id AND supplier.id = offer.supplier_id
  JOIN product ON product.chain_id = offer.chain_id AND product.id = offer.product_id
  JOIN maker ON maker.chain_id = product.chain_id AND maker.id = product.maker_id`;
const byProduct = "lower(product.name), lower(coalesce(product.shade, '')), offer.id";
const ofState = { offered: 'AND offer.ended_at IS NULL', ended: 'AND offer.ended_at IS NOT NULL', all: '' };

type Row = Omit<OfferView, 'prices' | 'productArchived' | 'inStudioCurrency'> & {
  prices: string;
  productArchived: number;
  inStudioCurrency: number;
};

/** What suppliers offer. An offer is changed while it stands; once ended it stays as it was, for what was ordered by it. */
@Injectable()
export class Offers {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
  ) {}

  async list(actor: Actor, dto: OfferPageDto): Promise<OfferPageView> {
    const { supplierId, productId, state = 'offered', limit = defaultPageSize, after } = dto;
    const { studioId } = actor;
    await refuseUnknownStart(this.database.read, 'offer', studioId, after);
    const parameters: SqlValue[] = [studioId];
    const conditions: string[] = [];
    if (supplierId !== undefined) conditions.push(`AND offer.supplier_id = $${parameters.push(supplierId)}`);
    if (productId !== undefined) conditions.push(`AND offer.product_id = $${parameters.push(productId)}`);
    if (after !== undefined) {
      conditions.push(`AND (${byProduct}) > (
        SELECT ${byProduct.replaceAll('offer.', 'last.')} FROM offer AS last
        JOIN product ON product.chain_id = last.chain_id AND product.id = last.product_id
        WHERE last.studio_id = $1 AND last.id = $${parameters.push(after)})`);
    }
    const rows = await this.database.read<Row>(
      `SELECT ${columns} FROM ${tables} WHERE offer.studio_id = $1 ${ofState[state]} ${conditions.join(' ')}
       ORDER BY ${byProduct} LIMIT ${limit + 1}`,
      parameters,
    );
    const { shown, next } = pageOf(rows, limit, ({ id }) => id);
    return { items: shown.map(viewOf), next };
  }

  /** @throws Problem not-found */
  show(actor: Actor, id: string): Promise<OfferView> {
    return this.view(this.database.read, actor, id);
  }

  /** @throws Problem not-found; invalid-fields; already-exists; wrong-state */
  add(actor: Actor, dto: AddOfferDto): Promise<OfferView> {
    return this.write(actor, 'add', dto.id, dto, async (transaction) => {
      const { studioId, recordedAt } = transaction;
      const { id, supplierId, productId, packContainers, containerPieces, minimumPacks, prices } = dto;
      await requireSupplier(transaction, supplierId);
      const currency = await studioCurrency(transaction, dto.currency);
      const offer: Offer = {
        ...{ studioId, id, chainId: actor.chainId, supplierId, productId, orderCode: dto.orderCode ?? null },
        ...{ packContainers, containerPieces, minimumPacks, prices, currency },
        lifeOnArrivalDays: dto.lifeOnArrivalDays ?? null,
        leadTimeDays: dto.leadTimeDays ?? null,
        version: 1,
        createdAt: recordedAt,
        endedAt: null,
      };
      await this.check(transaction, offer);
      await refuseOneMore(transaction);
      await transaction.insert(Offer, offer);
    });
  }

  /** @throws Problem not-found; invalid-fields; already-exists; wrong-state when it has ended; stale-version */
  change(actor: Actor, id: string, dto: ChangeOfferDto): Promise<OfferView> {
    return this.write(actor, 'change', id, dto, async (transaction) => {
      const { id: _, version, currency, ...changes } = dto;
      const present = await open(transaction, id);
      // Prices of another currency are written anew, or stay out of plans.
      const restated = changes.prices !== undefined || currency !== undefined;
      const wanted: Offer = {
        ...present,
        ...changes,
        ...(restated && { currency: await studioCurrency(transaction, currency) }),
      };
      if (currency !== undefined && currency !== present.currency && changes.prices === undefined) {
        throw invalidField('prices', `The prices are in ${present.currency}. Write them in ${currency} too.`);
      }
      await this.check(transaction, wanted);
      const key = { studioId: transaction.studioId, id };
      const { studioId: __, id: ___, version: ____, ...all } = wanted;
      await transaction.change(Offer, 'offer', key, version, all);
      transaction.note({ fields: Object.keys(dto).filter((field) => !['id', 'version'].includes(field)) });
    });
  }

  /** @throws Problem not-found; wrong-state when it has ended already; stale-version */
  end(actor: Actor, id: string, dto: EndOfferDto): Promise<OfferView> {
    return this.write(actor, 'end', id, dto, async (transaction) => {
      await open(transaction, id);
      const { studioId, recordedAt } = transaction;
      await transaction.change(Offer, 'offer', { studioId, id }, dto.version, { endedAt: recordedAt });
    });
  }

  private write(
    actor: Actor,
    verb: string,
    offerId: string,
    dto: { id: string },
    work: (transaction: Transaction) => Promise<void>,
  ): Promise<OfferView> {
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: `reorder.${verb}-offer`,
        subject: { kind: 'offer', id: offerId },
        content: { ...dto, offerId },
      },
      async (transaction) => {
        // One at a time: whether the same offer stands already is read before it is written.
        await transaction.lockStudio();
        await work(transaction);
        return this.view(transaction.read, actor, offerId);
      },
    );
  }

  private async check(transaction: Transaction, offer: Offer): Promise<void> {
    const { chainId, productId, containerPieces, minimumPacks, prices } = offer;
    const product = await transaction.manager.findOneBy(Product, { chainId, id: productId });
    if (!product) throw notFound('product', productId);
    if (product.archivedAt !== null) {
      throw new Problem(
        409,
        'wrong-state',
        'This product is archived: nothing of it is ordered any more. Take it back into the register first, or choose the one that took its place.',
      );
    }
    if (product.stockForm === 'container' && containerPieces !== 1) {
      throw invalidField(
        'containerPieces',
        `Containers of this product are kept one by one, so each is 1 piece, not ${containerPieces}. Say in packContainers how many come in a pack.`,
      );
    }
    const faults = priceListFaults(prices, minimumPacks);
    if (faults.length > 0) throw faultsProblem(faults);
    await refuseSame(transaction, offer);
  }

  private async view(read: Read, { studioId }: Actor, id: string): Promise<OfferView> {
    const [row] = await read<Row>(
      `SELECT ${columns} FROM ${tables} WHERE offer.studio_id = $1 AND offer.id = $2`,
      [studioId, id],
    );
    if (!row) throw notFound('offer', id);
    return viewOf(row);
  }
}

async function open(transaction: Transaction, id: string): Promise<Offer> {
  const found = await transaction.manager.findOneBy(Offer, { studioId: transaction.studioId, id });
  if (!found) throw notFound('offer', id);
  if (found.endedAt === null) return found;
  throw new Problem(409, 'wrong-state', `This offer ended on ${found.endedAt}. Record a new one instead.`);
}

async function requireSupplier(transaction: Transaction, supplierId: string): Promise<void> {
  const rows = await transaction.query('SELECT id FROM supplier WHERE chain_id = $1 AND id = $2', [
    transaction.actor.chainId,
    supplierId,
  ]);
  if (rows.length === 0) throw notFound('supplier', supplierId);
}

/** @throws Problem invalid-fields when another one was given */
async function studioCurrency(transaction: Transaction, given: string | undefined): Promise<string> {
  const [studio] = await transaction.query<{ currency: string }>(
    'SELECT currency FROM studio WHERE id = $1',
    [transaction.studioId],
  );
  const currency = studio?.currency ?? '';
  if (given === undefined || given === currency) return currency;
  throw invalidField(
    'currency',
    `The prices are in ${given}, but the studio counts in ${currency}, and sums of both would mean nothing. Write them in ${currency}.`,
  );
}

/** @throws Problem already-exists */
async function refuseSame(transaction: Transaction, offer: Offer): Promise<void> {
  const { studioId, id, supplierId, productId, packContainers, containerPieces } = offer;
  const [same] = await transaction.query<{ id: string }>(
    `SELECT id FROM offer WHERE studio_id = $1 AND supplier_id = $2 AND product_id = $3 AND pack_containers = $4
       AND container_pieces = $5 AND ended_at IS NULL AND id <> $6 LIMIT 1`,
    [studioId, supplierId, productId, packContainers, containerPieces, id],
  );
  if (!same) return;
  throw new Problem(
    409,
    'already-exists',
    'This supplier offers this product in packs of this size already. Change that offer instead, or end it first.',
    { existing: { kind: 'offer', id: same.id } },
  );
}

async function refuseOneMore(transaction: Transaction): Promise<void> {
  const [standing] = await transaction.query<{ count: number }>(
    'SELECT count(*) AS count FROM offer WHERE studio_id = $1 AND ended_at IS NULL',
    [transaction.studioId],
  );
  if ((standing?.count ?? 0) < mostOffers) return;
  throw new Problem(
    409,
    'wrong-state',
    `The studio has ${standing?.count} offers already, as many as are planned with. End those that are not used first.`,
  );
}

function viewOf({ prices, productArchived, inStudioCurrency, ...row }: Row): OfferView {
  return {
    ...row,
    prices: JSON.parse(prices) as OfferView['prices'],
    productArchived: productArchived === 1,
    inStudioCurrency: inStudioCurrency === 1,
  };
}
