import { Injectable } from '@nestjs/common';
import type { Actor } from '../platform/actor.js';
import { Clock } from '../platform/clock.js';
import { Database, type SqlValue } from '../platform/database/database.js';
import { defaultPageSize, pageOf, refuseUnknownStart } from '../platform/page.js';
import { notFound } from '../platform/problem.js';
import type { PageDto } from '../platform/request.dto.js';
import { ContainerViews } from './container-views.service.js';
import type { LotMovementPageDto } from './lot-list.dto.js';
import { LotList } from './lot-list.service.js';
import type {
  LotBlendView,
  LotCodeView,
  LotDeliveryView,
  LotHoldView,
  LotView,
  MassBalanceView,
  MovementView,
} from './lot-list.views.js';
import { ReleaseRequests } from './release-requests.service.js';
import { LotTransfers } from './transfers/lot-transfers.service.js';
import { movementKinds } from './vocabulary.js';

const maximumContainersOfLot = 1_000;
const maximumHoldsOfLot = 500;
const maximumCodesOfLot = 100;
const maximumBlendsOfLot = 200;
const maximumDeliveriesOfLot = 200;

/** All that is recorded of one lot. */
@Injectable()
export class LotHistory {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly lots: LotList,
    private readonly containerViews: ContainerViews,
    private readonly transfers: LotTransfers,
    private readonly releaseRequests: ReleaseRequests,
  ) {}

  async show(actor: Actor, lotId: string, page: LotMovementPageDto): Promise<LotView> {
    const summary = await this.lots.summary(actor, lotId);
    if (!summary) throw notFound('lot', lotId);
    const key = [actor.studioId, lotId];
    const codes = await this.database.read<LotCodeView>(
      `SELECT id, kind, code, recorded_at AS "recordedAt", superseded_at AS "supersededAt"
       FROM lot_code WHERE studio_id = $1 AND lot_id = $2 ORDER BY recorded_at, id LIMIT ${maximumCodesOfLot}`,
      key,
    );
    const holds = await this.database.read<Omit<LotHoldView, 'releaseRequest'>>(
      `SELECT hold.id, hold.kind, hold.reason, hold.note, hold.container_id AS "containerId",
         hold.occurred_at AS "occurredAt", hold_release.occurred_at AS "releasedAt",
         hold_release.reason AS "releaseReason"
       FROM hold
         LEFT JOIN hold_release ON hold_release.studio_id = hold.studio_id AND hold_release.hold_id = hold.id
       WHERE hold.studio_id = $1 AND (hold.lot_id = $2 OR hold.container_id IN (
         SELECT id FROM container WHERE studio_id = $1 AND lot_id = $2))
       ORDER BY hold.recorded_at DESC, hold.id DESC LIMIT ${maximumHoldsOfLot}`,
      key,
    );
    const asked = await this.releaseRequests.latest(
      this.database.read,
      actor.studioId,
      holds.filter(({ kind }) => kind === 'recall').map(({ id }) => id),
    );
    const deliveries = await this.database.read<LotDeliveryView>(
      `SELECT delivery.id AS "deliveryId", delivery.origin, supplier.name AS "supplierName", delivery.reference,
         delivery.occurred_at AS "occurredAt", sum(delivery_line.quantity_pieces) AS "quantityPieces"
       FROM delivery_line
         JOIN delivery ON delivery.studio_id = delivery_line.studio_id AND delivery.id = delivery_line.delivery_id
         LEFT JOIN supplier ON supplier.chain_id = delivery.chain_id AND supplier.id = delivery.supplier_id
       WHERE delivery_line.studio_id = $1 AND delivery_line.lot_id = $2
       GROUP BY delivery.id, delivery.origin, supplier.name, delivery.reference, delivery.occurred_at
       ORDER BY delivery.occurred_at DESC, delivery.id DESC LIMIT ${maximumDeliveriesOfLot}`,
      key,
    );
    const blends = (of: string, other: string) =>
      this.database.read<LotBlendView>(
        `SELECT ${other} AS "lotId", sum(microlitres) AS microlitres FROM blend_parent
         WHERE studio_id = $1 AND ${of} = $2 GROUP BY ${other} ORDER BY ${other} LIMIT ${maximumBlendsOfLot}`,
        key,
      );
    return {
      ...summary,
      codes,
      ...(await this.containers(actor, lotId, page.containersAfter)),
      holds: holds.map((hold) => ({ ...hold, releaseRequest: asked.get(hold.id) ?? null })),
      massBalance: await this.massBalance(actor, lotId),
      deliveries,
      blendedFrom: await blends('lot_id', 'parent_lot_id'),
      blendedInto: await blends('parent_lot_id', 'lot_id'),
      ...(await this.transfers.of(actor.studioId, lotId)),
      ...(await this.movements(actor, lotId, page)),
    };
  }

  private async containers(
    actor: Actor,
    lotId: string,
    after: string | undefined,
  ): Promise<Pick<LotView, 'containers' | 'nextContainer'>> {
    await refuseUnknownStart(this.database.read, 'container', actor.studioId, after);
    const rows = await this.database.read<{ id: string }>(
      `SELECT id FROM container WHERE studio_id = $1 AND lot_id = $2 ${after === undefined ? '' : 'AND id > $3'}
       ORDER BY id LIMIT ${maximumContainersOfLot + 1}`,
      [actor.studioId, lotId, ...(after === undefined ? [] : [after])],
    );
    const { shown, next } = pageOf(rows, maximumContainersOfLot, ({ id }) => id);
    const containers = await this.containerViews.load(
      this.database.read,
      actor,
      { containerIds: shown.map(({ id }) => id), ended: true },
      this.clock.now(),
    );
    return { containers, nextContainer: next };
  }

  private async massBalance(actor: Actor, lotId: string): Promise<MassBalanceView[]> {
    const rows = await this.database.read<MassBalanceView>(
      `SELECT kind, sum(pieces) AS pieces, sum(microlitres) AS microlitres FROM movement
       WHERE studio_id = $1 AND lot_id = $2 GROUP BY kind`,
      [actor.studioId, lotId],
    );
    return movementKinds.flatMap((kind) => rows.find((row) => row.kind === kind) ?? []);
  }

  private async movements(
    actor: Actor,
    lotId: string,
    { limit = defaultPageSize, after }: PageDto,
  ): Promise<Pick<LotView, 'movements' | 'nextMovement'>> {
    await refuseUnknownStart(this.database.read, 'movement', actor.studioId, after);
    const parameters: SqlValue[] = [actor.studioId, lotId];
    let earlier = '';
    if (after !== undefined) {
      parameters.push(after);
      earlier = 'AND movement.sequence < (SELECT sequence FROM movement WHERE studio_id = $1 AND id = $3)';
    }
    const rows = await this.database.read<MovementView>(
      `SELECT movement.id, movement.container_id AS "containerId", movement.kind, movement.pieces,
         movement.microlitres, movement.reverses_id AS "reversesId", reversal.id AS "reversedById",
         movement.session_id AS "sessionId", movement.reason, movement.occurred_at AS "occurredAt",
         movement.recorded_at AS "recordedAt", movement.person_id AS "personId"
       FROM movement
         LEFT JOIN movement AS reversal
           ON reversal.studio_id = movement.studio_id AND reversal.reverses_id = movement.id
       WHERE movement.studio_id = $1 AND movement.lot_id = $2 ${earlier}
       ORDER BY movement.sequence DESC LIMIT ${limit + 1}`,
      parameters,
    );
    const { shown, next } = pageOf(rows, limit, ({ id }) => id);
    return { movements: shown, nextMovement: next };
  }
}
