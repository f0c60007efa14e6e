import { Injectable, type OnModuleInit } from '@nestjs/common';
import { Alerts } from '../alerts/alerts.service.js';
import { ConditionEvaluators } from '../alerts/condition-evaluators.service.js';
import type { OpenCondition } from '../alerts/open-condition.js';
import { ConfigurationPools } from '../catalogue/configuration-pools.service.js';
import type { ProductName } from '../catalogue/product-label.js';
import { ProductRegister } from '../catalogue/product-register.service.js';
import type { Transaction } from '../platform/database/transaction.js';
import {
  type AlertCondition,
  alertConditions,
  type DateCondition,
  type StockLevel,
} from './alert-conditions.js';
import { type ContainerFact, ContainerFacts } from './container-facts.service.js';
import { productDays } from './date-thresholds/product-days.query.js';
import { HeldStock } from './held-stock.service.js';
import { type NamedPlace, namedPlaces } from './named-places.query.js';
import { StockFollowers } from './stock-followers.service.js';
import { stockOnHand } from './stock-on-hand.js';

const dateKinds = ['use-by near', 'opened life ending', 'expired on the shelf'];
const heldKind = 'held stock on hand';
const ofGoods = [...dateKinds, heldKind];
const kinds = ['low stock', ...ofGoods];

interface Settings {
  use_by_near_days: number;
  opened_life_ending_days: number;
  assumed_opened_life: string | null;
  time_zone: string;
}

/**
 * Low stock, dates running out, and what is held but still here. Whatever changes stock calls `reevaluate` at the end of
 * its transaction, so that an alert stands or falls with its cause; the daily sweep finds what only time has changed.
 */
@Injectable()
export class StockConditions implements OnModuleInit {
  constructor(
    private readonly alerts: Alerts,
    private readonly evaluators: ConditionEvaluators,
    private readonly containerFacts: ContainerFacts,
    private readonly pools: ConfigurationPools,
    private readonly register: ProductRegister,
    private readonly heldStock: HeldStock,
    private readonly followers: StockFollowers,
  ) {}

  onModuleInit(): void {
    this.evaluators.register({
      name: 'stock',
      kinds,
      evaluate: async (transaction) => {
        const levels = await this.levels(transaction);
        const containers = await this.containerFacts.load(transaction.read, transaction.studioId, {
          all: true,
        });
        return this.standing(transaction, containers, levels);
      },
    });
  }

  /** Opens and closes the alerts of these products and of the configuration pools they belong to. */
  async reevaluate(transaction: Transaction, productIds: readonly string[]): Promise<void> {
    if (productIds.length === 0) return;
    // Two that each take a last piece must not both see the other's as still there.
    await transaction.lockStudio();
    const changed = new Set(productIds);
    const levels = (await this.levels(transaction)).filter((level) =>
      level.productIds.some((productId) => changed.has(productId)),
    );
    // A pool is judged whole, so the other products of the pool are loaded, and thus judged, with it.
    const judged = [...new Set([...productIds, ...levels.flatMap((level) => level.productIds)])];
    const containers = await this.containerFacts.load(transaction.read, transaction.studioId, {
      productIds: judged,
    });
    const standing = await this.standing(transaction, containers, levels);
    const subjects = [
      ...standing.map(({ subjectKind, subjectId }) => ({ kind: subjectKind, id: subjectId })),
      ...levels.map(({ subjectKind, subjectId }) => ({ kind: subjectKind, id: subjectId })),
      ...(await this.subjectsOfOpenAlerts(transaction, judged)),
    ];
    await this.alerts.reconcile(transaction, { kinds, subjects }, standing);
    this.followers.tell(transaction.studioId);
  }

  /** Closes the alert of a level that is no more. */
  async forget(
    transaction: Transaction,
    level: Pick<StockLevel, 'subjectKind' | 'subjectId'>,
  ): Promise<void> {
    const subjects = [{ kind: level.subjectKind, id: level.subjectId }];
    await this.alerts.reconcile(transaction, { kinds: ['low stock'], subjects }, []);
  }

  private async standing(
    transaction: Transaction,
    containers: readonly ContainerFact[],
    levels: readonly StockLevel[],
  ): Promise<OpenCondition[]> {
    const [settings] = await transaction.query<Settings>(
      'SELECT use_by_near_days, opened_life_ending_days, assumed_opened_life, time_zone FROM studio WHERE id = $1',
      [transaction.studioId],
    );
    if (!settings) throw new Error(`The studio ${transaction.studioId} is gone.`);
    const conditions = alertConditions(
      stockOnHand(containers, settings.assumed_opened_life),
      levels,
      {
        useByNearDays: settings.use_by_near_days,
        openedLifeEndingDays: settings.opened_life_ending_days,
        ofProducts: await productDays(transaction.read, transaction.studioId),
      },
      transaction.recordedAt,
      settings.time_zone,
    );
    const places = await namedPlaces(transaction.read, transaction.studioId);
    return [
      ...(await this.named(transaction, conditions, containers, levels, places)),
      ...(await this.heldStock.standing(transaction, containers, places)),
    ];
  }

  /** Adds to each condition what a reader knows things by. */
  private async named(
    transaction: Transaction,
    conditions: readonly AlertCondition[],
    containers: readonly ContainerFact[],
    levels: readonly StockLevel[],
    places: ReadonlyMap<string, NamedPlace>,
  ): Promise<OpenCondition[]> {
    const byContainer = new Map(containers.map((container) => [container.containerId, container]));
    const byLot = new Map<string, ContainerFact[]>();
    for (const container of containers) {
      const ofLot = byLot.get(container.lotId);
      if (ofLot) ofLot.push(container);
      else byLot.set(container.lotId, [container]);
    }
    const productsOf = new Map(levels.map((level) => [level.subjectId, level.productIds]));
    const low = conditions.filter(({ kind }) => kind === 'low stock');
    const names = await this.register.names(
      transaction.read,
      transaction.actor.chainId,
      low.flatMap(({ subjectId }) => productsOf.get(subjectId) ?? []),
    );
    return conditions.map((condition): OpenCondition => {
      const { kind, subjectKind, subjectId, severity } = condition;
      if (condition.kind === 'low stock') {
        const productIds = productsOf.get(subjectId) ?? [];
        const facts =
          condition.subjectKind === 'product'
            ? { ...nameFacts(names.get(subjectId)), ...condition.facts }
            : { configuration: subjectId, productIds: [...productIds], ...condition.facts };
        return { kind, subjectKind, subjectId, severity, facts };
      }
      const ofLot = subjectKind === 'lot' ? byLot.get(subjectId) : undefined;
      const container = ofLot?.[0] ?? byContainer.get(subjectId);
      if (!container) throw new Error(`The ${subjectKind} ${subjectId} was judged but not loaded.`);
      const meant = ofLot?.filter(isLikeTheRest) ?? [container];
      const named = [...new Set(meant.map(({ placeId }) => places.get(placeId)?.name ?? ''))].sort();
      const facts = dateFacts(condition, container, named);
      return { kind, subjectKind, subjectId, severity, facts };
    });
  }

  /**
   * A level counts what is left of archived products too, but means nothing once all of its products are archived: then
   * it has none.
   */
  private async withoutWhatIsArchived(
    transaction: Transaction,
    levels: readonly StockLevel[],
  ): Promise<StockLevel[]> {
    const named = levels.flatMap(({ productIds }) => productIds);
    const products = await this.register.products(transaction.manager, transaction.actor.chainId, named);
    const isOffered = (productId: string) => products.get(productId)?.archivedAt === null;
    return levels.map((level) => (level.productIds.some(isOffered) ? level : { ...level, productIds: [] }));
  }

  /** The levels of the studio, each with the products it counts. */
  private async levels(transaction: Transaction): Promise<StockLevel[]> {
    const rows = await transaction.query<{
      subject_kind: 'product' | 'configuration';
      subject_id: string;
      minimum_pieces: number;
    }>(
      'SELECT subject_kind, subject_id, minimum_pieces FROM stock_level WHERE studio_id = $1 ORDER BY subject_kind, subject_id',
      [transaction.studioId],
    );
    const pools = rows.some((row) => row.subject_kind === 'configuration')
      ? await this.pools.load(transaction.read, transaction.actor.chainId)
      : [];
    const levels = rows.map(
      (row): StockLevel => ({
        subjectKind: row.subject_kind === 'product' ? 'product' : 'configuration pool',
        subjectId: row.subject_id,
        productIds:
          row.subject_kind === 'product'
            ? [row.subject_id]
            : (pools.find(({ poolKeys }) => poolKeys.includes(row.subject_id))?.productIds ?? []),
        minimumPieces: row.minimum_pieces,
      }),
    );
    return this.withoutWhatIsArchived(transaction, levels);
  }

  /**
   * What of these products an alert is open for, so that it can close when it is gone from the shelf; or was closed for by
   * hand, so that it is known to have ended and opens anew when it comes back.
   */
  private async subjectsOfOpenAlerts(
    transaction: Transaction,
    productIds: readonly string[],
  ): Promise<{ kind: string; id: string }[]> {
    const list = (first: number, values: readonly string[]) =>
      values.map((_, index) => `$${index + first}`).join(', ');
    const kinds = `alert.kind IN (${list(2, ofGoods)})`;
    const products = `lot.product_id IN (${list(2 + ofGoods.length, productIds)})`;
    // Each half finds its own index.
    const halves = ['alert.closed_at IS NULL', 'alert.closed_by IS NOT NULL AND alert.ended_at IS NULL'];
    const selects = halves.flatMap((half) => {
      const known = `alert.studio_id = $1 AND ${half} AND ${kinds} AND ${products}`;
      return [
        `SELECT alert.subject_kind AS kind, alert.subject_id AS id
         FROM alert JOIN lot ON lot.studio_id = alert.studio_id AND lot.id = alert.subject_id
         WHERE ${known} AND alert.subject_kind = 'lot'`,
        `SELECT alert.subject_kind, alert.subject_id
         FROM alert
           JOIN container ON container.studio_id = alert.studio_id AND container.id = alert.subject_id
           JOIN lot ON lot.studio_id = container.studio_id AND lot.id = container.lot_id
         WHERE ${known} AND alert.subject_kind = 'container'`,
      ];
    });
    return transaction.query<{ kind: string; id: string }>(selects.join(' UNION '), [
      transaction.studioId,
      ...ofGoods,
      ...productIds,
    ]);
  }
}

function nameFacts(name: ProductName | undefined): Record<string, unknown> {
  return name === undefined ? {} : { product: name.productName, shade: name.shade, maker: name.makerName };
}

/** Whether it belongs to the sealed remainder of its lot: anything else is told of by itself. */
function isLikeTheRest({ state, pieces, holds }: ContainerFact): boolean {
  return state === 'sealed' && pieces > 0 && !holds.some(({ on }) => on === 'container');
}

function dateFacts(
  condition: DateCondition,
  container: ContainerFact,
  places: string[],
): Record<string, unknown> {
  const { productName, shade, makerName, code, useBy, labelCode, openedAt, placeId } = container;
  // The days left change every day by themselves; the last day says the same and stands still.
  const { daysLeft: _, ...facts } = condition.facts;
  const single = condition.subjectKind === 'container' ? { labelCode, openedAt, placeId } : {};
  return {
    product: productName,
    shade,
    maker: makerName,
    lotCode: code,
    useBy,
    places,
    ...single,
    ...facts,
  };
}
