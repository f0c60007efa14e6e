import { Injectable } from '@nestjs/common';
import { IsNull } from 'typeorm';
import { Alerts } from '../alerts/alerts.service.js';
import type { Actor } from '../platform/actor.js';
import { Database } from '../platform/database/database.js';
import { Transactions } from '../platform/database/transactions.js';
import { invalidField, notFound, Problem } from '../platform/problem.js';
import { ConfigurationEquivalence } from './configuration-equivalence.entity.js';
import { ConfigurationPools, maximumEquivalences } from './configuration-pools.service.js';
import type { DeclareEquivalenceDto, WithdrawEquivalenceDto } from './configurations.dto.js';
import type { ConfigurationView, EquivalenceView } from './configurations.views.js';
import { ProductRegister } from './product-register.service.js';

/** Which cartridges stand for each other: by what is known and equal, or because a person said so. */
@Injectable()
export class Configurations {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly register: ProductRegister,
    private readonly alerts: Alerts,
    private readonly pools: ConfigurationPools,
  ) {}

  /** Cartridges that are offered, by configuration; an archived one may still hold others together. */
  async list(actor: Actor): Promise<ConfigurationView[]> {
    const { manager } = this.database.reader;
    const { chainId } = actor;
    const pools = await this.pools.load(this.database.read, chainId);
    const views = await this.register.views(
      manager,
      chainId,
      pools.flatMap((pool) => pool.productIds),
    );
    const offered = new Map(views.filter((view) => !view.archived).map((view) => [view.id, view]));
    const equivalences = await manager.find(ConfigurationEquivalence, {
      where: { chainId, withdrawnAt: IsNull() },
      order: { declaredAt: 'ASC', id: 'ASC' },
      take: maximumEquivalences,
    });
    return pools
      .map((pool): ConfigurationView => {
        const members = new Set(pool.productIds);
        return {
          keys: pool.poolKeys,
          declared: pool.declared,
          products: pool.productIds.flatMap((productId) => {
            const view = offered.get(productId);
            if (!view) return [];
            const { id, makerName, name, notation, machineFit, membrane } = view;
            return [{ id, makerName, name, notation, machineFit, membrane }];
          }),
          equivalences: equivalences
            .filter(({ productId, otherProductId }) => members.has(productId) || members.has(otherProductId))
            .map(viewOf),
        };
      })
      .filter(({ products }) => products.length > 0);
  }

  async declare(actor: Actor, dto: DeclareEquivalenceDto): Promise<EquivalenceView> {
    const { id, productId, otherProductId, reason } = dto;
    if (productId === otherProductId) {
      throw invalidField(
        'otherProductId',
        'A product always stands for itself. Name two different products.',
      );
    }
    return this.transactions.write(
      actor,
      {
        id,
        action: 'catalogue.declare-equivalence',
        subject: { kind: 'configuration equivalence', id },
        content: dto,
      },
      async (transaction) => {
        await transaction.lockChain();
        const products = await this.register.products(transaction.manager, actor.chainId, [
          productId,
          otherProductId,
        ]);
        for (const [field, named] of Object.entries({ productId, otherProductId })) {
          const product = products.get(named);
          if (!product) throw notFound('product', named);
          if (product.kind !== 'cartridge') {
            throw invalidField(field, `"${product.name}" is a ${product.kind}; only cartridges are pooled.`);
          }
        }
        const [same] = await transaction.query<{ id: string }>(
          `SELECT id FROM configuration_equivalence WHERE chain_id = $1 AND withdrawn_at IS NULL
             AND ((product_id = $2 AND other_product_id = $3) OR (product_id = $3 AND other_product_id = $2))`,
          [actor.chainId, productId, otherProductId],
        );
        if (same) {
          throw new Problem(
            409,
            'already-exists',
            'These two are declared equivalent already; nothing was changed.',
            { existing: { kind: 'configuration equivalence', id: same.id } },
          );
        }
        const equivalence: ConfigurationEquivalence = {
          chainId: actor.chainId,
          id,
          productId,
          otherProductId,
          reason,
          declaredInStudioId: actor.studioId,
          declaredBy: actor.personId,
          declaredAt: transaction.recordedAt,
          withdrawnAt: null,
        };
        await transaction.insert(ConfigurationEquivalence, equivalence);
        await this.alerts.reconcileAll(transaction);
        return viewOf(equivalence);
      },
    );
  }

  async withdraw(actor: Actor, equivalenceId: string, dto: WithdrawEquivalenceDto): Promise<EquivalenceView> {
    const key = { chainId: actor.chainId, id: equivalenceId };
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'catalogue.withdraw-equivalence',
        subject: { kind: 'configuration equivalence', id: equivalenceId },
        content: { equivalenceId, ...dto },
      },
      async (transaction) => {
        const withdrawn = await transaction.update(
          ConfigurationEquivalence,
          { ...key, withdrawnAt: null },
          { withdrawnAt: transaction.recordedAt },
        );
        if (withdrawn) {
          await this.alerts.reconcileAll(transaction);
          return viewOf(withdrawn);
        }
        const earlier = await transaction.manager.findOneBy(ConfigurationEquivalence, key);
        if (!earlier) throw notFound('configuration equivalence', equivalenceId);
        throw new Problem(409, 'wrong-state', `This was withdrawn already, at ${earlier.withdrawnAt}.`);
      },
    );
  }
}

function viewOf(equivalence: ConfigurationEquivalence): EquivalenceView {
  const { id, productId, otherProductId, reason, declaredAt, withdrawnAt } = equivalence;
  return { id, productId, otherProductId, reason, declaredAt, withdrawnAt };
}
