import { Injectable } from '@nestjs/common';
import type { OpenCondition } from '../alerts/open-condition.js';
import { placeholders } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/transaction.js';
import type { ContainerFact } from './container-facts.service.js';
import { heldOnHand } from './held-on-hand.js';
import type { NamedPlace } from './named-places.query.js';

/** Finds what is held and still here. */
@Injectable()
export class HeldStock {
  async standing(
    transaction: Transaction,
    containers: readonly ContainerFact[],
    places: ReadonlyMap<string, NamedPlace>,
  ): Promise<OpenCondition[]> {
    const held = containers.filter(({ holds }) => holds.length > 0);
    if (held.length === 0) return [];
    const placedAt = await this.placedAt(transaction, held);
    const byLot = new Map(held.map((container) => [container.lotId, container]));
    const conditions = heldOnHand(
      held.map((container) => {
        const place = places.get(container.placeId);
        return {
          ...container,
          place: place?.name ?? '',
          isSetAside: place?.kind === 'set aside',
          holds: container.holds.map((hold) => ({ ...hold, since: placedAt.get(hold.holdId) ?? '' })),
        };
      }),
    );
    return conditions.map((condition) => {
      const lot = byLot.get(condition.subjectId);
      const names = lot && { product: lot.productName, shade: lot.shade, maker: lot.makerName };
      const facts = { ...names, lotCode: lot?.code, productId: lot?.productId, ...condition.facts };
      return { ...condition, facts };
    });
  }

  private async placedAt(
    transaction: Transaction,
    held: readonly ContainerFact[],
  ): Promise<Map<string, string>> {
    const ids = [...new Set(held.flatMap(({ holds }) => holds.map(({ holdId }) => holdId)))];
    const rows = await transaction.query<{ id: string; at: string }>(
      `SELECT id, occurred_at AS at FROM hold WHERE studio_id = $1 AND id IN (${placeholders(ids)})`,
      [transaction.studioId, ...ids],
    );
    return new Map(rows.map(({ id, at }) => [id, at]));
  }
}
