import { Injectable } from '@nestjs/common';
import { ProductRegister } from '../../catalogue/product-register.service.js';
import type { Actor } from '../../platform/actor.js';
import { Database, type Read, type SqlValue } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Transactions } from '../../platform/database/transactions.js';
import { defaultPageSize, pageOf } from '../../platform/page.js';
import { invalidField, notFound, staleVersion } from '../../platform/problem.js';
import type { PageDto } from '../../platform/request.dto.js';
import { StockConditions } from '../stock-conditions.service.js';
import { DateThreshold } from './date-threshold.entity.js';
import type { RemoveDateThresholdDto, SetDateThresholdDto } from './date-thresholds.dto.js';
import type { DateThresholdPageView, DateThresholdView } from './date-thresholds.views.js';

/** Days of warning of single products: a slow mover wants a longer one than the studio's. */
@Injectable()
export class DateThresholds {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly register: ProductRegister,
    private readonly conditions: StockConditions,
  ) {}

  async list(actor: Actor, { limit = defaultPageSize, after }: PageDto): Promise<DateThresholdPageView> {
    const parameters: SqlValue[] = [actor.studioId];
    if (after !== undefined) {
      await this.refuseUnknownProduct(actor, after);
      parameters.push(after);
    }
    const rows = await this.database.read<Omit<DateThreshold, 'studioId' | 'chainId' | 'updatedAt'>>(
      `SELECT product_id AS "productId", use_by_near_days AS "useByNearDays",
         opened_life_ending_days AS "openedLifeEndingDays", version
       FROM date_threshold WHERE studio_id = $1 ${after === undefined ? '' : 'AND product_id > $2'}
       ORDER BY product_id LIMIT ${limit + 1}`,
      parameters,
    );
    const { shown, next } = pageOf(rows, limit, ({ productId }) => productId);
    return { items: await this.views(this.database.read, actor.chainId, shown), next };
  }

  /** @throws Problem not-found; invalid-fields; stale-version when somebody else set them since they were read */
  set(actor: Actor, productId: string, dto: SetDateThresholdDto): Promise<DateThresholdView> {
    const { useByNearDays = null, openedLifeEndingDays = null, version } = dto;
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'stock.set-date-threshold',
        subject: { kind: 'product', id: productId },
        content: { ...dto, productId },
      },
      async (transaction) => {
        const { studioId, recordedAt } = transaction;
        if (useByNearDays === null && openedLifeEndingDays === null) {
          throw invalidField(
            'useByNearDays',
            "Neither of the two is given. Say at least one number of days, or remove them so that the studio's count.",
          );
        }
        const products = await this.register.products(transaction.manager, actor.chainId, [productId]);
        if (!products.has(productId)) throw notFound('product', productId);
        // One at a time, so that two who set the first one do not meet in the key.
        await transaction.lockStudio();
        const key = { studioId, productId };
        const present = await transaction.manager.findOneBy(DateThreshold, key);
        const days = { useByNearDays, openedLifeEndingDays };
        let threshold: DateThreshold;
        if (present) {
          threshold = await this.change(transaction, present, version, { ...days, updatedAt: recordedAt });
          transaction.note({ from: daysOf(present), to: days });
        } else {
          if (version !== undefined) throw nothingSet(productId);
          threshold = { ...key, ...days, chainId: actor.chainId, version: 1, updatedAt: recordedAt };
          await transaction.insert(DateThreshold, threshold);
        }
        await this.conditions.reevaluate(transaction, [productId]);
        return this.view(transaction, threshold);
      },
    );
  }

  /** @throws Problem not-found; stale-version when somebody else set them since they were read */
  remove(actor: Actor, productId: string, dto: RemoveDateThresholdDto): Promise<DateThresholdView> {
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'stock.remove-date-threshold',
        subject: { kind: 'product', id: productId },
        content: { ...dto, productId },
      },
      async (transaction) => {
        await transaction.lockStudio();
        const key = { studioId: transaction.studioId, productId };
        const present = await transaction.manager.findOneBy(DateThreshold, key);
        if (!present) throw nothingSet(productId);
        if (!(await transaction.remove(DateThreshold, { ...key, version: dto.version }))) {
          throw staleVersion('threshold', present.version);
        }
        transaction.note({ removed: daysOf(present) });
        await this.conditions.reevaluate(transaction, [productId]);
        return this.view(transaction, present);
      },
    );
  }

  private async change(
    transaction: Transaction,
    present: DateThreshold,
    version: number | undefined,
    changes: Partial<DateThreshold>,
  ): Promise<DateThreshold> {
    if (version !== undefined) {
      const where = { studioId: present.studioId, productId: present.productId, version };
      const changed = await transaction.update(DateThreshold, where, { ...changes, version: version + 1 });
      if (changed) return changed;
    }
    throw staleVersion('threshold', present.version);
  }

  private async refuseUnknownProduct({ chainId }: Actor, after: string): Promise<void> {
    const known = await this.register.names(this.database.read, chainId, [after]);
    if (known.has(after)) return;
    throw invalidField(
      'after',
      `There is no product with the id ${after} to go on from. Give the "next" of the page before, or leave it out.`,
    );
  }

  private async view(transaction: Transaction, threshold: DateThreshold): Promise<DateThresholdView> {
    const [view] = await this.views(transaction.read, transaction.actor.chainId, [threshold]);
    if (!view) throw new Error(`The product ${threshold.productId} is gone.`);
    return view;
  }

  private async views(
    read: Read,
    chainId: string,
    thresholds: readonly Omit<DateThreshold, 'studioId' | 'chainId' | 'updatedAt'>[],
  ): Promise<DateThresholdView[]> {
    const ids = thresholds.map(({ productId }) => productId);
    const names = await this.register.names(read, chainId, ids);
    return thresholds.flatMap(({ productId, useByNearDays, openedLifeEndingDays, version }) => {
      const name = names.get(productId);
      return name ? [{ productId, ...name, useByNearDays, openedLifeEndingDays, version }] : [];
    });
  }
}

function daysOf({ useByNearDays, openedLifeEndingDays }: DateThreshold) {
  return { useByNearDays, openedLifeEndingDays };
}

function nothingSet(productId: string) {
  return notFound('days of warning of its own for the product', productId);
}
