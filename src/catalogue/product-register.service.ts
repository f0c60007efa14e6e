import { Injectable } from '@nestjs/common';
import { type EntityManager, In } from 'typeorm';
import { placeholders, type Read } from '../platform/database/database.js';
import { printCartridge } from './cartridge-notation.js';
import { Maker } from './maker.entity.js';
import { Product } from './product.entity.js';
import { ProductGtin } from './product-gtin.entity.js';
import { type ProductName, productLabel } from './product-label.js';
import type { ProductView } from './products.views.js';

/** The chain's products as this and later rooms look them up, in few queries however many there are. */
@Injectable()
export class ProductRegister {
  /** Products by id, archived ones too; an id of another chain is not found. */
  async products(
    manager: EntityManager,
    chainId: string,
    ids: readonly string[],
  ): Promise<Map<string, Product>> {
    const wanted = [...new Set(ids)];
    if (wanted.length === 0) return new Map();
    const products = await manager.find(Product, { where: { chainId, id: In(wanted) } });
    return new Map(products.map((product) => [product.id, product]));
  }

  /** What products are called, by id; an id of another chain is not found. */
  async names(read: Read, chainId: string, ids: readonly string[]): Promise<Map<string, ProductName>> {
    const wanted = [...new Set(ids)];
    if (wanted.length === 0) return new Map();
    const rows = await read<ProductName & { id: string }>(
      `SELECT product.id, product.name AS "productName", product.shade, maker.name AS "makerName"
       FROM product JOIN maker ON maker.chain_id = product.chain_id AND maker.id = product.maker_id
       WHERE product.chain_id = $1 AND product.id IN (${placeholders(wanted)})`,
      [chainId, ...wanted],
    );
    return new Map(rows.map(({ id, ...name }) => [id, name]));
  }

  /** Products in words, by id. */
  async labels(read: Read, chainId: string, ids: readonly string[]): Promise<Map<string, string>> {
    const names = await this.names(read, chainId, ids);
    return new Map([...names].map(([id, name]) => [id, productLabel(name)]));
  }

  /** What GTINs of 14 digits stand for; one that is not registered has no entry. */
  async gtins(
    manager: EntityManager,
    chainId: string,
    gtins: readonly string[],
  ): Promise<Map<string, ProductGtin>> {
    const wanted = [...new Set(gtins)];
    if (wanted.length === 0) return new Map();
    const found = await manager.find(ProductGtin, { where: { chainId, gtin: In(wanted) } });
    return new Map(found.map((row) => [row.gtin, row]));
  }

  /** Products as they are shown, in the order of the ids given. */
  async views(manager: EntityManager, chainId: string, ids: readonly string[]): Promise<ProductView[]> {
    const products = await this.products(manager, chainId, ids);
    if (products.size === 0) return [];
    const makerIds = [...new Set([...products.values()].map((product) => product.makerId))];
    const makers = await manager.find(Maker, { where: { chainId, id: In(makerIds) } });
    const makerNames = new Map(makers.map((maker) => [maker.id, maker.name]));
    const gtins = await manager.find(ProductGtin, {
      where: { chainId, productId: In([...products.keys()]) },
      order: { contentCount: 'ASC', gtin: 'ASC' },
    });
    return ids.flatMap((id) => {
      const product = products.get(id);
      if (!product) return [];
      const own = gtins.filter((row) => row.productId === id);
      return [viewOf(product, makerNames.get(product.makerId) ?? '', own)];
    });
  }
}

function viewOf(product: Product, makerName: string, gtins: ProductGtin[]): ProductView {
  const { chainId: _, createdAt: __, archivedAt, points, grouping, ...rest } = product;
  const { diameterHundredthsMillimetre, taper } = product;
  return {
    ...rest,
    points,
    grouping,
    makerName,
    notation:
      points === null || grouping === null
        ? null
        : printCartridge({ points, grouping, diameterHundredthsMillimetre, taper }),
    gtins: gtins.map(({ gtin, contentCount, version }) => ({ gtin, contentCount, version })),
    archived: archivedAt !== null,
  };
}
