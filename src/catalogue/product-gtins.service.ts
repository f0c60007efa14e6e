import { Injectable } from '@nestjs/common';
import type { Actor } from '../platform/actor.js';
import { Transactions } from '../platform/database/transactions.js';
import { invalidField, notFound, Problem, staleVersion } from '../platform/problem.js';
import { gtin14 } from './gs1/check-digit.js';
import { ProductGtin } from './product-gtin.entity.js';
import { ProductRegister } from './product-register.service.js';
import type { AddGtinDto, CorrectGtinDto } from './products.dto.js';
import type { ProductView } from './products.views.js';

/** The numbers under which products are traded; one number serves one product. */
@Injectable()
export class ProductGtins {
  constructor(
    private readonly transactions: Transactions,
    private readonly register: ProductRegister,
  ) {}

  async add(actor: Actor, productId: string, dto: AddGtinDto): Promise<ProductView> {
    const gtin = gtin14(dto.gtin);
    if (gtin === undefined) throw invalidField('gtin', faultOf(dto.gtin));
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'catalogue.add-gtin',
        subject: { kind: 'product', id: productId },
        content: { productId, ...dto },
      },
      async (transaction) => {
        const { manager } = transaction;
        await transaction.lockChain();
        const [product] = await this.register.views(manager, actor.chainId, [productId]);
        if (!product) throw notFound('product', productId);
        const taken = (await this.register.gtins(manager, actor.chainId, [gtin])).get(gtin);
        if (taken) {
          const labels = await this.register.labels(transaction.read, actor.chainId, [taken.productId]);
          throw new Problem(
            409,
            'already-exists',
            `The GTIN ${gtin} already stands for ${labels.get(taken.productId)} (content ${taken.contentCount}). A GTIN serves one product; compare the number with the package.`,
            { existing: { kind: 'product', id: taken.productId } },
          );
        }
        const contentCount = dto.contentCount ?? 1;
        await transaction.insert(ProductGtin, {
          chainId: actor.chainId,
          gtin,
          productId,
          contentCount,
          version: 1,
          createdAt: transaction.recordedAt,
        });
        const [view] = await this.register.views(manager, actor.chainId, [productId]);
        return view ?? product;
      },
    );
  }

  /**
   * Corrects a slip. What was received under the number stays as it was counted.
   * @returns the product that the number stands for now
   */
  async correct(actor: Actor, productId: string, text: string, dto: CorrectGtinDto): Promise<ProductView> {
    const gtin = gtin14(text);
    if (gtin === undefined) throw notFound('GTIN of this product', text.slice(0, 20));
    if (dto.productId === undefined && dto.contentCount === undefined) {
      throw invalidField('contentCount', 'Nothing is corrected. Give contentCount, productId or both.');
    }
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'catalogue.correct-gtin',
        subject: { kind: 'product', id: productId },
        content: { gtin, fromProductId: productId, ...dto },
      },
      async (transaction) => {
        const { manager } = transaction;
        await transaction.lockChain();
        const recorded = (await this.register.gtins(manager, actor.chainId, [gtin])).get(gtin);
        if (recorded?.productId !== productId) throw notFound('GTIN of this product', gtin);
        const corrected = {
          productId: dto.productId ?? productId,
          contentCount: dto.contentCount ?? recorded.contentCount,
        };
        const [owner] = await this.register.views(manager, actor.chainId, [corrected.productId]);
        if (!owner) throw notFound('product', corrected.productId);
        const { version } = dto;
        const key = { chainId: actor.chainId, gtin, version };
        const written = await transaction.update(ProductGtin, key, { ...corrected, version: version + 1 });
        if (!written) throw staleVersion('GTIN', recorded.version);
        const { contentCount } = recorded;
        transaction.note({ gtin, from: { productId, contentCount }, to: corrected });
        const [view] = await this.register.views(manager, actor.chainId, [corrected.productId]);
        return view ?? owner;
      },
    );
  }
}

function faultOf(text: string): string {
  if (!/^\d+$/.test(text) || ![8, 12, 13, 14].includes(text.length)) {
    return `"${text.slice(0, 20)}" is not a GTIN: allowed are 8, 12, 13 or 14 digits. Copy the number below the bars.`;
  }
  return `The check digit of ${text} is wrong. Compare the number with the package; one digit is mistyped.`;
}
