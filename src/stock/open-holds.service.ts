import { Injectable } from '@nestjs/common';
import type { Actor } from '../platform/actor.js';
import { Database, type SqlValue } from '../platform/database/database.js';
import { defaultPageSize, pageOf, refuseUnknownStart } from '../platform/page.js';
import type { PageDto } from '../platform/request.dto.js';
import type { OpenHoldPageView, OpenHoldView } from './holds.views.js';
import { ReleaseRequests } from './release-requests.service.js';

/** The holds that stand. One that was released meanwhile is still a place to go on from. */
@Injectable()
export class OpenHolds {
  constructor(
    private readonly database: Database,
    private readonly releaseRequests: ReleaseRequests,
  ) {}

  async page(actor: Actor, { limit = defaultPageSize, after }: PageDto): Promise<OpenHoldPageView> {
    await refuseUnknownStart(this.database.read, 'hold', actor.studioId, after);
    const parameters: SqlValue[] = [actor.studioId];
    let earlier = '';
    if (after !== undefined) {
      parameters.push(after);
      earlier = `AND (hold.recorded_at, hold.id) < (
        SELECT recorded_at, id FROM hold AS last WHERE last.studio_id = $1 AND last.id = $2)`;
    }
    const rows = await this.database.read<Omit<OpenHoldView, 'releaseRequest'>>(
      `SELECT hold.id, hold.kind, hold.reason, hold.note, lot.id AS "lotId",
         hold.container_id AS "containerId", container.label_code AS "labelCode", lot.code AS "lotCode",
         lot.product_id AS "productId", product.name AS "productName", product.shade,
         maker.name AS "makerName", hold.occurred_at AS "occurredAt"
       FROM hold
         LEFT JOIN container ON container.studio_id = hold.studio_id AND container.id = hold.container_id
         JOIN lot ON lot.studio_id = hold.studio_id AND lot.id = coalesce(hold.lot_id, container.lot_id)
         JOIN product ON product.chain_id = lot.chain_id AND product.id = lot.product_id
         JOIN maker ON maker.chain_id = product.chain_id AND maker.id = product.maker_id
       WHERE hold.studio_id = $1 AND NOT EXISTS (
         SELECT 1 FROM hold_release
         WHERE hold_release.studio_id = hold.studio_id AND hold_release.hold_id = hold.id) ${earlier}
       ORDER BY hold.recorded_at DESC, hold.id DESC LIMIT ${limit + 1}`,
      parameters,
    );
    const { shown, next } = pageOf(rows, limit, ({ id }) => id);
    const asked = await this.releaseRequests.latest(
      this.database.read,
      actor.studioId,
      shown.filter(({ kind }) => kind === 'recall').map(({ id }) => id),
    );
    return { items: shown.map((hold) => ({ ...hold, releaseRequest: asked.get(hold.id) ?? null })), next };
  }
}
