import { Injectable } from '@nestjs/common';
import { ConfigurationPools } from '../../catalogue/configuration-pools.service.js';
import { ProductRegister } from '../../catalogue/product-register.service.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { notFound, Problem } from '../../platform/problem.js';
import type { ItemKind } from '../item.js';

/** Which items there are to plan. */
@Injectable()
export class KnownItems {
  constructor(
    private readonly register: ProductRegister,
    private readonly pools: ConfigurationPools,
  ) {}

  /** @throws Problem not-found when no product of the chain, and no cartridge's configuration, is the item */
  async require(transaction: Transaction, kind: ItemKind, key: string): Promise<void> {
    const { chainId } = transaction.actor;
    if (kind === 'product') {
      if (!(await this.register.names(transaction.read, chainId, [key])).has(key))
        throw notFound('product', key);
      return;
    }
    const pools = await this.pools.load(transaction.read, chainId);
    if (pools.some(({ poolKeys }) => poolKeys.includes(key))) return;
    throw new Problem(
      404,
      'not-found',
      `No cartridge has the configuration "${key}". Give a key from the list of configurations; a cartridge of which too little is known has none, so set its product.`,
    );
  }
}
