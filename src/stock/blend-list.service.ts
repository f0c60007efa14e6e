import { Injectable } from '@nestjs/common';
import type { Actor } from '../platform/actor.js';
import { Database, placeholders, type SqlValue } from '../platform/database/database.js';
import { defaultPageSize, pageOf, refuseUnknownStart } from '../platform/page.js';
import { notFound } from '../platform/problem.js';
import type { BlendPageDto } from './blends.dto.js';
import type { BlendPageView, BlendView } from './blends.views.js';

const columns = `blend.id, lot.product_id AS "productId", blend.lot_id AS "lotId",
  blend.container_id AS "containerId", lot.code, container.label_code AS "labelCode", lot.use_by AS "useBy",
  blend.microlitres, blend.occurred_at AS "occurredAt"`;
const tables = `blend
  JOIN lot ON lot.studio_id = blend.studio_id AND lot.id = blend.lot_id
  JOIN container ON container.studio_id = blend.studio_id AND container.id = blend.container_id`;

/** Shows house blends and what they were made of. */
@Injectable()
export class BlendList {
  constructor(private readonly database: Database) {}

  async page(actor: Actor, { limit = defaultPageSize, after }: BlendPageDto): Promise<BlendPageView> {
    await refuseUnknownStart(this.database.read, 'blend', actor.studioId, after);
    const parameters: SqlValue[] = [actor.studioId];
    let earlier = '';
    if (after !== undefined) {
      parameters.push(after);
      earlier = `AND (blend.recorded_at, blend.id) < (
        SELECT recorded_at, id FROM blend AS last WHERE last.studio_id = $1 AND last.id = $2)`;
    }
    const rows = await this.database.read<Omit<BlendView, 'parents'>>(
      `SELECT ${columns} FROM ${tables} WHERE blend.studio_id = $1 ${earlier}
       ORDER BY blend.recorded_at DESC, blend.id DESC LIMIT ${limit + 1}`,
      parameters,
    );
    const { shown, next } = pageOf(rows, limit, ({ id }) => id);
    return { items: await this.withParents(actor, shown), next };
  }

  async show(actor: Actor, blendId: string): Promise<BlendView> {
    const rows = await this.database.read<Omit<BlendView, 'parents'>>(
      `SELECT ${columns} FROM ${tables} WHERE blend.studio_id = $1 AND blend.id = $2`,
      [actor.studioId, blendId],
    );
    const [blend] = await this.withParents(actor, rows);
    if (!blend) throw notFound('blend', blendId);
    return blend;
  }

  private async withParents(actor: Actor, blends: Omit<BlendView, 'parents'>[]): Promise<BlendView[]> {
    if (blends.length === 0) return [];
    const parents = await this.database.read<{
      blendId: string;
      containerId: string;
      lotId: string;
      microlitres: number;
    }>(
      `SELECT blend_id AS "blendId", parent_container_id AS "containerId", parent_lot_id AS "lotId", microlitres
       FROM blend_parent
       WHERE studio_id = $1 AND blend_id IN (${placeholders(blends)}) ORDER BY id`,
      [actor.studioId, ...blends.map(({ id }) => id)],
    );
    return blends.map((blend) => ({
      ...blend,
      parents: parents
        .filter(({ blendId }) => blendId === blend.id)
        .map(({ containerId, lotId, microlitres }) => ({ containerId, lotId, microlitres })),
    }));
  }
}
