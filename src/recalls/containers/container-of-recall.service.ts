import { Injectable } from '@nestjs/common';
import type { Transaction } from '../../platform/database/transaction.js';
import { notFound, Problem } from '../../platform/problem.js';
import { hasEnded } from '../../stock/container-transitions.js';
import type { ContainerForm, ContainerState } from '../../stock/vocabulary.js';

/** A container that something of a recall is recorded of, locked. */
export interface ContainerOfRecall {
  containerId: string;
  lotId: string;
  form: ContainerForm;
  state: ContainerState;
  placeId: string;
  /** Left by the book. */
  pieces: number;
  microlitres: number;
  /** Whether the record says that it is gone. */
  isGone: boolean;
}

/** Finds and locks the container that something of a recall is recorded of. */
@Injectable()
export class ContainersOfRecall {
  /**
   * Every lot that any scope of the recall met, and every blend of it: what was looked for before a decision is still
   * recorded after it.
   * @throws Problem not-found; wrong-state when it is of no lot of the recall
   */
  async lock(transaction: Transaction, recallId: string, containerId: string): Promise<ContainerOfRecall> {
    const { studioId } = transaction;
    const [row] = await transaction.query<{ lotId: string; productId: string; met: number }>(
      `WITH RECURSIVE met (lot_id) AS (
         SELECT lot_id FROM recall_lot WHERE studio_id = $1 AND recall_id = $2
         UNION
         SELECT blend_parent.lot_id FROM met CROSS JOIN blend_parent
         WHERE blend_parent.studio_id = $1 AND blend_parent.parent_lot_id = met.lot_id)
       SELECT container.lot_id AS "lotId", lot.product_id AS "productId",
         CASE WHEN container.lot_id IN (SELECT lot_id FROM met) THEN 1 ELSE 0 END AS met
       FROM container JOIN lot ON lot.studio_id = container.studio_id AND lot.id = container.lot_id
       WHERE container.studio_id = $1 AND container.id = $3`,
      [studioId, recallId, containerId],
    );
    if (!row) throw notFound('container', containerId);
    if (row.met === 0) {
      throw new Problem(
        409,
        'wrong-state',
        'This container is of no lot of this recall. Look at its label again; if its lot is meant, widen the recall first.',
      );
    }
    await transaction.lock('product', [row.productId]);
    await transaction.lock('lot', [row.lotId]);
    await transaction.lock('container', [containerId]);
    const [container] = await transaction.query<Omit<ContainerOfRecall, 'isGone'>>(
      `SELECT container.id AS "containerId", container.lot_id AS "lotId", container.form, container.state,
         container.place_id AS "placeId", balance.pieces, balance.microlitres
       FROM container JOIN balance
         ON balance.studio_id = container.studio_id AND balance.container_id = container.id
       WHERE container.studio_id = $1 AND container.id = $2`,
      [studioId, containerId],
    );
    if (!container) throw notFound('container', containerId);
    return { ...container, isGone: hasEnded(container.state) };
  }
}
