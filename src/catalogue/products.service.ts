import { Injectable } from '@nestjs/common';
import { Alerts } from '../alerts/alerts.service.js';
import type { Actor } from '../platform/actor.js';
import { Database, type SqlValue } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/transaction.js';
import { Transactions } from '../platform/database/transactions.js';
import { defaultPageSize, pageOf, refuseUnknownStart } from '../platform/page.js';
import { faultsProblem, notFound, Problem } from '../platform/problem.js';
import { Product } from './product.entity.js';
import { changedFields, type ProductFieldsDecision, productFields } from './product-fields.js';
import { ProductRegister } from './product-register.service.js';
import type { AddProductDto, ArchiveProductDto, ChangeProductDto, ProductsQueryDto } from './products.dto.js';
import type { ProductPageView, ProductView } from './products.views.js';

/** Further words of a search are not looked for. */
const maximumWords = 8;

/** The chain's product register. */
@Injectable()
export class Products {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly register: ProductRegister,
    private readonly alerts: Alerts,
  ) {}

  /** A page of products, ordered by maker, name and shade. */
  async list(actor: Actor, query: ProductsQueryDto): Promise<ProductPageView> {
    const { limit = defaultPageSize, after } = query;
    await refuseUnknownStart(this.database.read, 'product', actor.chainId, after);
    const parameters: SqlValue[] = [actor.chainId];
    const parameter = (value: SqlValue) => `$${parameters.push(value)}`;
    const conditions = ['product.chain_id = $1'];
    if (query.archived !== 'shown') conditions.push('product.archived_at IS NULL');
    if (query.kind !== undefined) conditions.push(`product.kind = ${parameter(query.kind)}`);
    for (const word of (query.text ?? '').split(/\s+/).filter(Boolean).slice(0, maximumWords)) {
      const pattern = parameter(`%${word.replace(/[\\%_]/g, '\\$&')}%`);
      conditions.push(
        `(${['product.name', `coalesce(product.shade, '')`, 'maker.name']
          .map((column) => `lower(${column}) LIKE lower(${pattern}) ESCAPE '\\'`)
          .join(' OR ')})`,
      );
    }
    if (after !== undefined) {
      conditions.push(`(${sortColumns.join(', ')}) > (
        SELECT ${sortColumns.join(', ')} FROM product
          JOIN maker ON maker.chain_id = product.chain_id AND maker.id = product.maker_id
        WHERE product.chain_id = $1 AND product.id = ${parameter(after)})`);
    }
    const rows = await this.database.read<{ id: string }>(
      `SELECT product.id FROM product
       JOIN maker ON maker.chain_id = product.chain_id AND maker.id = product.maker_id
       WHERE ${conditions.join(' AND ')} ORDER BY ${sortColumns.join(', ')} LIMIT ${parameter(limit + 1)}`,
      parameters,
    );
    const { shown, next } = pageOf(rows, limit, ({ id }) => id);
    const ids = shown.map(({ id }) => id);
    return { items: await this.register.views(this.database.reader.manager, actor.chainId, ids), next };
  }

  async show(actor: Actor, productId: string): Promise<ProductView> {
    const [view] = await this.register.views(this.database.reader.manager, actor.chainId, [productId]);
    if (!view) throw notFound('product', productId);
    return view;
  }

  async add(actor: Actor, dto: AddProductDto): Promise<ProductView> {
    const { id, kind, makerId, name, ...given } = dto;
    const { fields, stockForm } = accepted(productFields(kind, given));
    return this.transactions.write(
      actor,
      { id, action: 'catalogue.add-product', subject: { kind: 'product', id }, content: dto },
      async (transaction) => {
        await transaction.lockChain();
        await this.refuseUnknownMaker(transaction, makerId);
        await this.refuseSameName(transaction, { id, makerId, name, shade: fields.shade });
        await transaction.insert(Product, {
          chainId: actor.chainId,
          id,
          makerId,
          kind,
          name,
          stockForm,
          ...fields,
          version: 1,
          createdAt: transaction.recordedAt,
          archivedAt: null,
        });
        return this.viewIn(transaction, id);
      },
    );
  }

  async change(actor: Actor, productId: string, dto: ChangeProductDto): Promise<ProductView> {
    const { id, version, makerId, name, ...given } = dto;
    return this.transactions.write(
      actor,
      {
        id,
        action: 'catalogue.change-product',
        subject: { kind: 'product', id: productId },
        content: { productId, ...dto },
      },
      async (transaction) => {
        await transaction.lockChain();
        const product = await this.find(transaction, productId);
        const { fields, stockForm } = accepted(
          productFields(product.kind, changedFields(knownFields(product), given)),
        );
        if (stockForm !== product.stockForm) {
          throw new Problem(
            409,
            'wrong-state',
            `This product is kept ${product.stockForm === 'pieces' ? 'in pieces, so it cannot have an opened life' : 'in containers, so it needs its opened life'}. Archive it and add it anew as what it is.`,
          );
        }
        if (makerId !== undefined) await this.refuseUnknownMaker(transaction, makerId);
        const renamed = { makerId: makerId ?? product.makerId, name: name ?? product.name };
        if (product.archivedAt === null) {
          await this.refuseSameName(transaction, { id: productId, ...renamed, shade: fields.shade });
        }
        await transaction.change(Product, 'product', { chainId: actor.chainId, id: productId }, version, {
          ...fields,
          ...renamed,
        });
        transaction.note({ changes: differences(product, { ...fields, ...renamed }) });
        // Its opened life, and what it stands for, decide what is low or runs out.
        await this.alerts.reconcileAll(transaction);
        return this.viewIn(transaction, productId);
      },
    );
  }

  /** Hides a product from choosing; what is in stock of it stays. */
  archive(actor: Actor, productId: string, dto: ArchiveProductDto): Promise<ProductView> {
    return this.setArchived(actor, productId, dto, true);
  }

  restore(actor: Actor, productId: string, dto: ArchiveProductDto): Promise<ProductView> {
    return this.setArchived(actor, productId, dto, false);
  }

  private setArchived(
    actor: Actor,
    productId: string,
    dto: ArchiveProductDto,
    archived: boolean,
  ): Promise<ProductView> {
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: archived ? 'catalogue.archive-product' : 'catalogue.restore-product',
        subject: { kind: 'product', id: productId },
        content: { productId, ...dto },
      },
      async (transaction) => {
        await transaction.lockChain();
        const product = await this.find(transaction, productId);
        if ((product.archivedAt !== null) === archived) {
          throw new Problem(
            409,
            'wrong-state',
            `This product is ${archived ? 'archived already' : 'not archived'}; nothing was changed.`,
          );
        }
        if (!archived) await this.refuseSameName(transaction, product);
        await transaction.change(Product, 'product', { chainId: actor.chainId, id: productId }, dto.version, {
          archivedAt: archived ? transaction.recordedAt : null,
        });
        await this.alerts.reconcileAll(transaction);
        return this.viewIn(transaction, productId);
      },
    );
  }

  private async find(transaction: Transaction, productId: string): Promise<Product> {
    const products = await this.register.products(transaction.manager, transaction.actor.chainId, [
      productId,
    ]);
    const product = products.get(productId);
    if (!product) throw notFound('product', productId);
    return product;
  }

  private async viewIn(transaction: Transaction, productId: string): Promise<ProductView> {
    const [view] = await this.register.views(transaction.manager, transaction.actor.chainId, [productId]);
    if (!view) throw notFound('product', productId);
    return view;
  }

  private async refuseUnknownMaker(transaction: Transaction, makerId: string): Promise<void> {
    const [maker] = await transaction.query('SELECT id FROM maker WHERE chain_id = $1 AND id = $2', [
      transaction.actor.chainId,
      makerId,
    ]);
    if (!maker) throw notFound('maker', makerId);
  }

  private async refuseSameName(
    transaction: Transaction,
    product: Pick<Product, 'id' | 'makerId' | 'name' | 'shade'>,
  ): Promise<void> {
    const [same] = await transaction.query<{ id: string; name: string; shade: string | null }>(
      `SELECT id, name, shade FROM product
       WHERE chain_id = $1 AND maker_id = $2 AND lower(name) = lower($3)
         AND lower(coalesce(shade, '')) = lower($4) AND id <> $5 AND archived_at IS NULL`,
      [transaction.actor.chainId, product.makerId, product.name, product.shade ?? '', product.id],
    );
    if (!same) return;
    const called = same.shade === null ? `"${same.name}"` : `"${same.name}" in the shade "${same.shade}"`;
    throw new Problem(
      409,
      'already-exists',
      `This maker already has a product named ${called}. Use that one, or tell them apart by name or shade.`,
      { existing: { kind: 'product', id: same.id } },
    );
  }
}

const sortColumns = [
  'lower(maker.name)',
  'lower(product.name)',
  `lower(coalesce(product.shade, ''))`,
  'product.id',
];

function accepted(decision: ProductFieldsDecision): Exclude<ProductFieldsDecision, { faults: unknown }> {
  if ('faults' in decision) throw faultsProblem(decision.faults);
  return decision;
}

function differences(before: Product, after: Partial<Product>): object[] {
  return Object.entries(after).flatMap(([field, to]) => {
    const from = before[field as keyof Product];
    return JSON.stringify(from) === JSON.stringify(to) ? [] : [{ field, from, to }];
  });
}

function knownFields(product: Product): Parameters<typeof changedFields>[0] {
  const { shade, pigmentRole, volumeMicrolitres, openedLife, dropMicrolitres, colourIndexNumbers } = product;
  const { points, grouping, diameterHundredthsMillimetre, taper, machineFit, membrane } = product;
  return {
    shade,
    pigmentRole,
    volumeMicrolitres,
    openedLife,
    dropMicrolitres,
    colourIndexNumbers,
    points,
    grouping,
    diameterHundredthsMillimetre,
    taper,
    machineFit,
    membrane,
  };
}
