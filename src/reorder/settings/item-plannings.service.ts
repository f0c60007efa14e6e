import { Injectable } from '@nestjs/common';
import { ProductRegister } from '../../catalogue/product-register.service.js';
import type { Actor } from '../../platform/actor.js';
import { Database, type Read, type SqlValue } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Transactions } from '../../platform/database/transactions.js';
import { defaultPageSize, pageOf } from '../../platform/page.js';
import { invalidField, notFound, Problem, refuseOtherVersion, staleVersion } from '../../platform/problem.js';
import type { ItemKind } from '../item.js';
import { KnownItems } from './known-items.service.js';
import type {
  ItemPlanningPageDto,
  RemoveItemPlanningDto,
  SetItemPlanningDto,
} from './planning-settings.dto.js';
import { ItemPlanning } from './planning-settings.entity.js';
import { itemPlannings } from './planning-settings.query.js';
import type { ItemPlanningPageView, ItemPlanningView } from './planning-settings.views.js';
import { isReplacedInACircle } from './replacement-circle.js';

type Standing = Omit<ItemPlanning, 'studioId' | 'updatedAt'>;

/** How single items are planned, where they differ from the studio. */
@Injectable()
export class ItemPlannings {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly register: ProductRegister,
    private readonly knownItems: KnownItems,
  ) {}

  async list(
    actor: Actor,
    { limit = defaultPageSize, after }: ItemPlanningPageDto,
  ): Promise<ItemPlanningPageView> {
    const parameters: SqlValue[] = [actor.studioId];
    if (after !== undefined) parameters.push(...placeOf(after));
    const rows = await this.database.read<Standing>(
      `SELECT item_kind AS "itemKind", item_key AS "itemKey", service_target_per_mille AS "serviceTargetPerMille",
         shortage_cost_minor AS "shortageCostMinor", range_choice AS "rangeChoice",
         replaces_product_id AS "replacesProductId", version
       FROM item_planning WHERE studio_id = $1 ${after === undefined ? '' : 'AND (item_kind, item_key) > ($2, $3)'}
       ORDER BY item_kind, item_key LIMIT ${limit + 1}`,
      parameters,
    );
    const { shown, next } = pageOf(rows, limit, ({ itemKind, itemKey }) => `${itemKind} ${itemKey}`);
    return { items: await this.views(this.database.read, actor.chainId, shown), next };
  }

  /** @throws Problem not-found; invalid-fields; stale-version when somebody else set it since it was read */
  set(actor: Actor, dto: SetItemPlanningDto): Promise<ItemPlanningView> {
    const { itemKind, itemKey, version } = dto;
    return this.write(actor, 'set', dto, async (transaction) => {
      const settings = {
        serviceTargetPerMille: dto.serviceTargetPerMille ?? null,
        shortageCostMinor: dto.shortageCostMinor ?? null,
        rangeChoice: dto.rangeChoice ?? null,
        replacesProductId: dto.replacesProductId ?? null,
      };
      if (Object.values(settings).every((value) => value === null)) {
        throw invalidField(
          'serviceTargetPerMille',
          'Nothing is given in which this item differs. Say at least one thing, or remove it so that it is planned as the studio plans.',
        );
      }
      await this.knownItems.require(transaction, itemKind, itemKey);
      await this.refuseUnusablePredecessor(transaction, dto);
      const { studioId, recordedAt: updatedAt } = transaction;
      const key = { studioId, itemKind, itemKey };
      const present = await transaction.manager.findOneBy(ItemPlanning, key);
      refuseOtherVersion('planning of this item', present?.version ?? null, version);
      if (present === null) {
        const planning: ItemPlanning = { ...key, ...settings, version: 1, updatedAt };
        await transaction.insert(ItemPlanning, planning);
        return planning;
      }
      const where = { ...key, version: present.version };
      const changes = { ...settings, version: present.version + 1, updatedAt };
      const changed = await transaction.update(ItemPlanning, where, changes);
      if (!changed) throw staleVersion('planning of this item', present.version);
      return changed;
    });
  }

  /** @throws Problem not-found; stale-version when somebody else set it since it was read */
  remove(actor: Actor, dto: RemoveItemPlanningDto): Promise<ItemPlanningView> {
    const { itemKind, itemKey, version } = dto;
    return this.write(actor, 'remove', dto, async (transaction) => {
      const key = { studioId: transaction.studioId, itemKind, itemKey };
      const present = await transaction.manager.findOneBy(ItemPlanning, key);
      if (!present) {
        throw new Problem(404, 'not-found', `Nothing is set for the ${itemKind} "${itemKey}".`);
      }
      if (!(await transaction.remove(ItemPlanning, { ...key, version }))) {
        throw staleVersion('planning of this item', present.version);
      }
      const { studioId: _, itemKind: __, itemKey: ___, updatedAt: ____, ...removed } = present;
      transaction.note({ removed });
      return present;
    });
  }

  private write(
    actor: Actor,
    verb: string,
    dto: { id: string; itemKind: ItemKind; itemKey: string },
    work: (transaction: Transaction) => Promise<Standing>,
  ): Promise<ItemPlanningView> {
    const subject = { kind: dto.itemKind, id: dto.itemKey };
    const request = { id: dto.id, action: `reorder.${verb}-item-planning`, subject, content: dto };
    return this.transactions.write(actor, request, async (transaction) => {
      // One at a time, so that two who set the first one do not meet in the key.
      await transaction.lockStudio();
      const [view] = await this.views(transaction.read, actor.chainId, [await work(transaction)]);
      if (!view) throw new Error('A row was given, and none came back.');
      return view;
    });
  }

  private async refuseUnusablePredecessor(
    transaction: Transaction,
    { itemKind, itemKey, replacesProductId }: SetItemPlanningDto,
  ): Promise<void> {
    if (replacesProductId === undefined || replacesProductId === null) return;
    if (itemKind !== 'product') {
      throw invalidField(
        'replacesProductId',
        'Only a product takes the place of another; cartridges of one configuration stand for each other anyway.',
      );
    }
    const { chainId } = transaction.actor;
    const known = await this.register.names(transaction.read, chainId, [replacesProductId]);
    if (!known.has(replacesProductId)) throw notFound('product', replacesProductId);
    const replaced = new Map<string, string>();
    for (const item of await itemPlannings(transaction.read, transaction.studioId)) {
      if (item.itemKind === 'product' && item.replacesProductId !== null) {
        replaced.set(item.itemKey, item.replacesProductId);
      }
    }
    if (!isReplacedInACircle(replaced.set(itemKey, replacesProductId), itemKey)) return;
    throw invalidField(
      'replacesProductId',
      'The two would take the place of each other, directly or through others. Say of the newer one only what it replaces.',
    );
  }

  private async views(read: Read, chainId: string, rows: readonly Standing[]): Promise<ItemPlanningView[]> {
    const labels = await this.register.labels(
      read,
      chainId,
      rows.flatMap(({ itemKind, itemKey, replacesProductId }) => [
        ...(itemKind === 'product' ? [itemKey] : []),
        ...(replacesProductId === null ? [] : [replacesProductId]),
      ]),
    );
    const nameOf = (id: string | null) => (id === null ? null : (labels.get(id) ?? null));
    return rows.map((row) => {
      const { itemKind, itemKey, serviceTargetPerMille, shortageCostMinor, rangeChoice } = row;
      const { replacesProductId, version } = row;
      return {
        ...{
          itemKind,
          itemKey,
          serviceTargetPerMille,
          shortageCostMinor,
          rangeChoice,
          replacesProductId,
          version,
        },
        itemName: itemKind === 'product' ? nameOf(itemKey) : null,
        replacesProductName: nameOf(replacesProductId),
      };
    });
  }
}

/** @throws Problem invalid-fields */
function placeOf(after: string): [string, string] {
  const [, kind, key] = /^(product|configuration) (.+)$/.exec(after) ?? [];
  if (kind !== undefined && key !== undefined) return [kind, key];
  throw invalidField(
    'after',
    'It names no item to go on from. Give the "next" of the page before, or leave it out.',
  );
}
