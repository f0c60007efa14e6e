import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import { ConfigurationPools } from '../catalogue/configuration-pools.service.js';
import type { Actor } from '../platform/actor.js';
import { Clock } from '../platform/clock.js';
import { Database } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/transaction.js';
import { Transactions } from '../platform/database/transactions.js';
import { notFound, Problem, staleVersion } from '../platform/problem.js';
import { containerCandidate } from './container-candidate.js';
import { type ContainerFact, ContainerFacts } from './container-facts.service.js';
import { summarySettings } from './container-views.service.js';
import { orderFirstExpired } from './first-expired.js';
import type { RemoveLevelDto, SetLevelDto } from './levels.dto.js';
import type { ConfigurationLevelView, LevelView, ProductLevelView, StockLevelsView } from './levels.views.js';
import { lastUsableDay } from './opened-life.js';
import { Reservations, type Reserved } from './reservations.service.js';
import { StockConditions } from './stock-conditions.service.js';
import { StockLevel } from './stock-level.entity.js';
import { type SummarySettings, summariseStock } from './stock-level-summary.js';

const maximumProducts = 2_000;
const maximumLevels = 4_000;
const maximumToTake = 10;

type ProductRow = Pick<ProductLevelView, 'productId' | 'productName' | 'shade' | 'makerName' | 'kind'>;
type Counted = Pick<ProductLevelView, 'quantities' | 'reservedPieces' | 'level' | 'low' | 'toTake'>;

/** What became of a minimum that a plan asked for. */
export interface TakenMinimum {
  /** Null: none was set. */
  before: number | null;
  outcome: 'set' | 'unchanged' | 'left, since it was set by hand';
}

/** How much usable stock there is, by product and by configuration, and the minimum below which it is low. */
@Injectable()
export class Levels {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly clock: Clock,
    private readonly containerFacts: ContainerFacts,
    private readonly pools: ConfigurationPools,
    private readonly conditions: StockConditions,
    private readonly reservations: Reservations,
  ) {}

  async show(actor: Actor): Promise<StockLevelsView> {
    const { studioId, chainId } = actor;
    const products = await this.database.read<ProductRow>(
      `SELECT product.id AS "productId", product.name AS "productName", product.shade,
         maker.name AS "makerName", product.kind
       FROM product JOIN maker ON maker.chain_id = product.chain_id AND maker.id = product.maker_id
       WHERE product.chain_id = $1 AND (product.archived_at IS NULL OR EXISTS (
         SELECT 1 FROM lot JOIN balance ON balance.studio_id = lot.studio_id AND balance.lot_id = lot.id
         WHERE lot.studio_id = $2 AND lot.product_id = product.id AND balance.pieces > 0) OR EXISTS (
         SELECT 1 FROM stock_level
         WHERE stock_level.studio_id = $2 AND stock_level.subject_kind = 'product'
           AND stock_level.subject_id = product.id))
       ORDER BY lower(product.name), lower(coalesce(product.shade, '')), product.id LIMIT ${maximumProducts}`,
      [chainId, studioId],
    );
    const byProduct = new Map<string, ContainerFact[]>();
    // All that is here counts, or the sums would be wrong; what is over is left out.
    const present = await this.containerFacts.load(this.database.read, studioId, { all: true });
    for (const fact of present) {
      const containers = byProduct.get(fact.productId);
      if (containers) containers.push(fact);
      else byProduct.set(fact.productId, [fact]);
    }
    const reserved = await this.reservations.ofAll(
      this.database.read,
      studioId,
      present.map(({ containerId }) => containerId),
    );
    const set = await this.database.reader.manager.find(StockLevel, {
      where: { studioId },
      order: { subjectKind: 'ASC', subjectId: 'ASC' },
      take: maximumLevels,
    });
    const levels = new Map(set.map((level) => [levelKey(level.subjectKind, level.subjectId), level]));
    const settings = await summarySettings(this.database.read, studioId);
    const count = (containers: ContainerFact[], level: StockLevel | undefined) =>
      this.count(actor, containers, level, settings, reserved);
    const pools = await this.pools.load(this.database.read, chainId);
    return {
      products: products.map((product) => ({
        ...product,
        ...count(byProduct.get(product.productId) ?? [], levels.get(levelKey('product', product.productId))),
      })),
      configurations: [
        ...pools
          .filter(({ poolKeys }) => poolKeys.length > 0)
          .flatMap(({ poolKeys, productIds }): ConfigurationLevelView[] => {
            const containers = productIds.flatMap((productId) => byProduct.get(productId) ?? []);
            const [level, ...further] = poolKeys.flatMap(
              (key) => levels.get(levelKey('configuration', key)) ?? [],
            );
            return [
              { keys: poolKeys, productIds, ...count(containers, level) },
              // Two configurations that each had a minimum were declared equivalent.
              ...further.map((other) => ({
                keys: [other.subjectId],
                productIds,
                ...count(containers, other),
              })),
            ];
          }),
        ...levelsOfNothing(set, pools).map((level) => ({
          keys: [level.subjectId],
          productIds: [],
          ...count([], level),
          low: false,
        })),
      ],
    };
  }

  /** @throws Problem not-found; stale-version when the level was set by someone else since it was read */
  remove(actor: Actor, levelId: string, dto: RemoveLevelDto): Promise<LevelView> {
    const { studioId } = actor;
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'stock.remove-level',
        subject: { kind: 'stock level', id: levelId },
        content: { levelId, ...dto },
      },
      async (transaction) => {
        const level = await transaction.manager.findOneBy(StockLevel, { studioId, id: levelId });
        if (!level) throw notFound('stock level', levelId);
        const { subjectKind, subjectId, minimumPieces } = level;
        const key = { studioId, id: levelId, version: dto.version };
        if (!(await transaction.remove(StockLevel, key))) throw staleVersion('stock level', level.version);
        transaction.note({ removed: { subjectKind, subjectId, minimumPieces } });
        await this.conditions.forget(transaction, {
          subjectKind: subjectKind === 'product' ? 'product' : 'configuration pool',
          subjectId,
        });
        return viewOf(level);
      },
    );
  }

  /** @throws Problem not-found; stale-version when the level was set by someone else since it was read */
  set(actor: Actor, dto: SetLevelDto): Promise<LevelView> {
    const { id, subjectKind, subjectId, minimumPieces, version } = dto;
    return this.transactions.write(
      actor,
      { id, action: 'stock.set-level', subject: { kind: subjectKind, id: subjectId }, content: dto },
      async (transaction) => {
        const productIds = await this.productsOf(transaction, dto);
        const { studioId, recordedAt } = transaction;
        const subject = { studioId, subjectKind, subjectId };
        const existing = await transaction.manager.findOneBy(StockLevel, subject);
        let level: StockLevel;
        if (existing) {
          if (version === undefined) throw staleVersion('stock level', existing.version);
          level = await transaction.change(
            StockLevel,
            'stock level',
            { studioId, id: existing.id },
            version,
            { minimumPieces, planId: null, updatedAt: recordedAt },
          );
          transaction.note({ from: { minimumPieces: existing.minimumPieces }, to: { minimumPieces } });
        } else {
          if (version !== undefined) {
            throw new Problem(
              404,
              'not-found',
              `No level is set for this ${subjectKind}, so it has no version ${version}. Leave the version out to set it.`,
            );
          }
          level = {
            ...subject,
            id: uuidv7(),
            minimumPieces,
            planId: null,
            version: 1,
            updatedAt: recordedAt,
          };
          await transaction.insert(StockLevel, level);
        }
        await this.conditions.reevaluate(transaction, productIds);
        return viewOf(level);
      },
    );
  }

  /**
   * Takes minima from a plan, inside the plan's own write. One that somebody set by hand is left, unless it was named.
   * @param named whether the minima were named one by one
   * @returns what became of each, in the order given
   */
  async takeFromPlan(
    transaction: Transaction,
    planId: string,
    minima: readonly Pick<StockLevel, 'subjectKind' | 'subjectId' | 'minimumPieces'>[],
    named: boolean,
  ): Promise<TakenMinimum[]> {
    const { studioId, recordedAt } = transaction;
    const standing = await transaction.manager.find(StockLevel, { where: { studioId } });
    const known = new Map(standing.map((level) => [levelKey(level.subjectKind, level.subjectId), level]));
    const pools = await this.pools.load(transaction.read, transaction.actor.chainId);
    // A configuration's minimum may stand under any key of its pool.
    const keysOf = new Map(pools.flatMap(({ poolKeys }) => poolKeys.map((key) => [key, poolKeys] as const)));
    const productIds = new Set<string>();
    const taken: TakenMinimum[] = [];
    for (const { subjectKind, subjectId, minimumPieces } of minima) {
      const keys = subjectKind === 'configuration' ? (keysOf.get(subjectId) ?? []) : [];
      const [level] = [subjectId, ...keys].flatMap((key) => known.get(levelKey(subjectKind, key)) ?? []);
      const before = level?.minimumPieces ?? null;
      if (level && level.planId === null && !named) {
        taken.push({ before, outcome: 'left, since it was set by hand' });
        continue;
      }
      if (before === minimumPieces) {
        taken.push({ before, outcome: 'unchanged' });
        continue;
      }
      if (level) {
        const key = { studioId, id: level.id };
        const changes = { minimumPieces, planId, updatedAt: recordedAt };
        await transaction.change(StockLevel, 'stock level', key, level.version, changes);
      } else {
        const subject = { studioId, subjectKind, subjectId };
        const fresh = { ...subject, id: uuidv7(), minimumPieces, planId, version: 1, updatedAt: recordedAt };
        await transaction.insert(StockLevel, fresh);
      }
      taken.push({ before, outcome: 'set' });
      for (const id of await this.productsOf(transaction, { subjectKind, subjectId })) productIds.add(id);
    }
    if (productIds.size > 0) await this.conditions.reevaluate(transaction, [...productIds]);
    return taken;
  }

  private async productsOf(
    transaction: Transaction,
    { subjectKind, subjectId }: Pick<SetLevelDto, 'subjectKind' | 'subjectId'>,
  ): Promise<string[]> {
    const { chainId } = transaction.actor;
    if (subjectKind === 'product') {
      const [product] = await transaction.query<{ id: string }>(
        'SELECT id FROM product WHERE chain_id = $1 AND id = $2',
        [chainId, subjectId],
      );
      if (!product) throw notFound('product', subjectId);
      return [product.id];
    }
    const pools = await this.pools.load(transaction.read, chainId);
    const pool = pools.find(({ poolKeys }) => poolKeys.includes(subjectId));
    if (!pool) {
      throw new Problem(
        404,
        'not-found',
        `No cartridge has the configuration "${subjectId}". Give a key from the list of configurations; a cartridge of which too little is known has none, so set the level of its product.`,
      );
    }
    return pool.productIds;
  }

  private count(
    actor: Actor,
    containers: ContainerFact[],
    level: StockLevel | undefined,
    settings: SummarySettings,
    reserved: ReadonlyMap<string, Reserved>,
  ): Counted {
    const at = this.clock.now();
    const { timeZone } = actor;
    const quantities = summariseStock(containers, settings, at, timeZone);
    const { order } = orderFirstExpired(
      containers.map((fact) => containerCandidate(fact, settings.assumedOpenedLife, timeZone)),
      at,
      timeZone,
    );
    return {
      quantities,
      reservedPieces: containers.reduce(
        (sum, fact) => sum + (reserved.get(fact.containerId)?.pieces ?? 0),
        0,
      ),
      level: level === undefined ? null : viewOf(level),
      low: level !== undefined && quantities.usablePieces <= level.minimumPieces,
      toTake: order.slice(0, maximumToTake).map((candidate) => {
        const { containerId, lotId, productId, form, openedAt, pieces } = candidate.container;
        const { lastDay } = lastUsableDay({ ...candidate, timeZone });
        return { containerId, lotId, productId, form, openedAt, lastDay, pieces };
      }),
    };
  }
}

function levelKey(subjectKind: StockLevel['subjectKind'], subjectId: string): string {
  return `${subjectKind} ${subjectId}`;
}

/** Levels of configurations that no cartridge has any more, such as after a correction of what machines it fits. */
function levelsOfNothing(
  levels: readonly StockLevel[],
  pools: readonly { poolKeys: readonly string[] }[],
): StockLevel[] {
  const known = new Set(pools.flatMap(({ poolKeys }) => poolKeys));
  return levels.filter(
    ({ subjectKind, subjectId }) => subjectKind === 'configuration' && !known.has(subjectId),
  );
}

function viewOf({ id, subjectKind, subjectId, minimumPieces, version }: StockLevel): LevelView {
  return { id, subjectKind, subjectId, minimumPieces, version };
}
