import { Injectable } from '@nestjs/common';
import type { Read, SqlValue } from '../../platform/database/database.js';
import { notFound } from '../../platform/problem.js';
import { type ContainerAtHand, daysAtHand, type TimeAtHand, timesOfProducts } from './days-at-hand.js';
import { exposedUses, reachedLotsOfRecall } from './exposed-uses.query.js';

/** What every question about the exposures of one recall begins with. */
export interface ExposureQuestion {
  /** `WITH RECURSIVE …` that ends with `exposed_use`; a comma and more may follow it. */
  tables: string;
  /** The studio is `$1`, the recall `$2`. More may be added. */
  parameters: SqlValue[];
  /** When lots of the recall were open or at hand, for each lot. */
  timesAtHand: TimeAtHand[];
}

type ContainerRow = Omit<ContainerAtHand, 'affected'> & { affected: number };

/**
 * Finds out on which days lots of a recall were at hand, and asks for exposures with it. The days are the studio's local
 * ones, which databases do not know, so they are turned into instants here; the rest is one question to the database.
 */
@Injectable()
export class ExposureQuestions {
  /** @throws Problem not-found when there is no such studio */
  async of(read: Read, studioId: string, recallId: string, clientId?: string): Promise<ExposureQuestion> {
    const [studio] = await read<{ timeZone: string }>(
      'SELECT time_zone AS "timeZone" FROM studio WHERE id = $1',
      [studioId],
    );
    if (!studio) throw notFound('studio', studioId);
    const containers = await this.containersAtHand(read, studioId, recallId);
    const timesAtHand = daysAtHand(containers, studio.timeZone);
    const parameters: SqlValue[] = [studioId, recallId];
    const put = (value: SqlValue) => `$${parameters.push(value)}`;
    const times = timesOfProducts(timesAtHand).map(
      ({ productId, from, before }) => [put(productId), put(from), put(before)] as const,
    );
    const client = clientId === undefined ? undefined : put(clientId);
    return { tables: `WITH RECURSIVE ${exposedUses(times, client)}`, parameters, timesAtHand };
  }

  /**
   * Containers of the recall's lots and of the blends made of them that could be taken in hand: opened bottles, and boxes
   * while they had pieces. A box was there when a piece of its lot was used, and one that is empty had its last pieces on
   * the day of its last movement. Products of which nothing else was picked from a list are left out: it does not matter.
   */
  private async containersAtHand(read: Read, studioId: string, recallId: string): Promise<ContainerAtHand[]> {
    const rows = await read<ContainerRow>(
      `WITH RECURSIVE ${reachedLotsOfRecall},
       reached_product (product_id) AS (
         SELECT DISTINCT lot.product_id FROM reached_lot CROSS JOIN lot
         WHERE lot.studio_id = $1 AND lot.id = reached_lot.lot_id),
       picked_product (product_id) AS (
         SELECT product_id FROM reached_product WHERE EXISTS (
           SELECT 1 FROM lot CROSS JOIN session_use
           WHERE lot.studio_id = $1 AND lot.product_id = reached_product.product_id
             AND lot.id NOT IN (SELECT lot_id FROM reached_lot)
             AND session_use.studio_id = $1 AND session_use.lot_id = lot.id
             AND session_use.known_by = 'picked from a list')),
       standing AS (
         SELECT lot.id AS lot_id, lot.product_id, reached_lot.affected, container.id, container.form,
           container.opened_at, container.received_at, container.ended_at, balance.pieces
         FROM reached_lot CROSS JOIN lot CROSS JOIN container CROSS JOIN balance
         WHERE lot.studio_id = $1 AND lot.id = reached_lot.lot_id
           AND lot.product_id IN (SELECT product_id FROM picked_product)
           AND container.studio_id = $1 AND container.lot_id = lot.id
           AND balance.studio_id = $1 AND balance.container_id = container.id)
       SELECT lot_id AS "lotId", product_id AS "productId", affected, opened_at AS since, ended_at AS until
       FROM standing WHERE form = 'bottle' AND opened_at IS NOT NULL
       UNION ALL
       SELECT lot_id, product_id, affected, received_at,
         CASE WHEN ended_at IS NOT NULL THEN ended_at WHEN pieces = 0 THEN coalesce((
           SELECT max(movement.occurred_at) FROM movement
           WHERE movement.studio_id = $1 AND movement.container_id = standing.id), received_at) END
       FROM standing WHERE form = 'box'
       UNION ALL
       SELECT lot_id, product_id, affected, first_used_at, received_at
       FROM (
         SELECT lot_id, product_id, affected, min(received_at) AS received_at, (
           SELECT min(session_use.occurred_at) FROM session_use
           WHERE session_use.studio_id = $1 AND session_use.lot_id = standing.lot_id) AS first_used_at
         FROM standing WHERE form = 'box' GROUP BY lot_id, product_id, affected) AS box
       WHERE first_used_at < received_at`,
      [studioId, recallId],
    );
    return rows.map((row) => ({ ...row, affected: row.affected === 1 }));
  }
}
