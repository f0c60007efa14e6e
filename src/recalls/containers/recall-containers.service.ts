import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/actor.js';
import { Database, placeholders, type Read, type SqlValue } from '../../platform/database/database.js';
import { defaultPageSize, pageOf, refuseUnknownStart } from '../../platform/page.js';
import { RecallRegister } from '../recall-register.service.js';
import type { ContainerStanding } from './container-standing.js';
import type { RecallContainerPageDto } from './recall-containers.dto.js';
import { reachedLots, recallContainers } from './recall-containers.query.js';
import type {
  ContainerFindingView,
  DispositionView,
  RecallContainerPageView,
  RecallContainerTotalsView,
  RecallContainerView,
  RecallTrayView,
} from './recall-containers.views.js';

const maximumOfContainer = 100;

interface ContainerRow
  extends Omit<RecallContainerView, 'throughBlend' | 'finding' | 'dispositions' | 'trays'> {
  isBlend: number;
  findingId: string | null;
}

/** The containers of a recall: what has to be found, what was, and what became of it. */
@Injectable()
export class RecallContainers {
  constructor(
    private readonly database: Database,
    private readonly recalls: RecallRegister,
  ) {}

  async page(
    { studioId }: Actor,
    recallId: string,
    { limit = defaultPageSize, after, standing }: RecallContainerPageDto,
  ): Promise<RecallContainerPageView> {
    const { read } = this.database;
    await this.recalls.find(read, studioId, recallId);
    await refuseUnknownStart(read, 'container', studioId, after);
    const parameters: SqlValue[] = [studioId, recallId];
    const conditions = ['listed = 1'];
    if (standing !== undefined) conditions.push(`standing = $${parameters.push(standing)}`);
    if (after !== undefined) conditions.push(`recall_containers.id > $${parameters.push(after)}`);
    const rows = await read<ContainerRow>(
      `WITH RECURSIVE ${reachedLots}, ${recallContainers}, chosen AS (
         SELECT * FROM recall_containers WHERE ${conditions.join(' AND ')}
         ORDER BY recall_containers.id LIMIT ${limit + 1})
       SELECT chosen.id AS "containerId", container.label_code AS "labelCode", container.form, container.state,
         lot.product_id AS "productId", product.name AS "productName", product.shade, maker.name AS "makerName",
         lot.id AS "lotId", lot.code AS "lotCode", lot.use_by AS "useBy",
         CASE chosen.undecided WHEN 1 THEN 'undecided' ELSE 'affected' END AS "lotStanding",
         chosen.is_blend AS "isBlend", place.id AS "placeId", place.name AS "placeName", place.kind AS "placeKind",
         container.owner_id AS "ownerId", container.opened_at AS "openedAt", chosen.pieces, chosen.microlitres,
         chosen.standing, chosen.finding_id AS "findingId"
       FROM chosen
         JOIN container ON container.studio_id = $1 AND container.id = chosen.id
         JOIN lot ON lot.studio_id = $1 AND lot.id = chosen.lot_id
         JOIN product ON product.chain_id = lot.chain_id AND product.id = lot.product_id
         JOIN maker ON maker.chain_id = product.chain_id AND maker.id = product.maker_id
         JOIN place ON place.studio_id = $1 AND place.id = container.place_id
       ORDER BY chosen.id`,
      parameters,
    );
    const { shown, next } = pageOf(rows, limit, ({ containerId }) => containerId);
    const ids = shown.map(({ containerId }) => containerId);
    const findings = await this.findings(
      studioId,
      shown.flatMap(({ findingId }) => findingId ?? []),
    );
    const dispositions = await this.dispositions(studioId, recallId, ids);
    const trays = await this.trays(studioId, ids);
    const items = shown.map(({ isBlend, findingId, ...row }) => ({
      ...row,
      throughBlend: isBlend === 1,
      finding: findings.get(findingId ?? '') ?? null,
      dispositions: (dispositions.get(row.containerId) ?? []).slice(0, maximumOfContainer),
      trays: (trays.get(row.containerId) ?? []).slice(0, maximumOfContainer),
    }));
    return { items, next, totals: await this.totals(read, studioId, recallId) };
  }

  /** Of all containers of a recall, by how they stand. */
  async totals(read: Read, studioId: string, recallId: string): Promise<RecallContainerTotalsView> {
    const rows = await read<{
      standing: ContainerStanding;
      containers: number;
      pieces: number;
      microlitres: number;
    }>(
      `WITH RECURSIVE ${reachedLots}, ${recallContainers}
       SELECT standing, count(*) AS containers, sum(pieces) AS pieces, sum(microlitres) AS microlitres
       FROM recall_containers WHERE listed = 1 GROUP BY standing`,
      [studioId, recallId],
    );
    const count = (wanted: ContainerStanding) =>
      rows.find(({ standing }) => standing === wanted)?.containers ?? 0;
    const all = (of: (row: (typeof rows)[number]) => number) => rows.reduce((sum, row) => sum + of(row), 0);
    return {
      containers: all((row) => row.containers),
      notLookedFor: count('not looked for'),
      found: count('found'),
      notFound: count('not found'),
      disposed: count('disposed'),
      gone: count('gone'),
      piecesLeft: all((row) => row.pieces),
      microlitresLeft: all((row) => row.microlitres),
    };
  }

  private async findings(
    studioId: string,
    ids: readonly string[],
  ): Promise<Map<string, ContainerFindingView>> {
    if (ids.length === 0) return new Map();
    const rows = await this.database.read<ContainerFindingView>(
      `SELECT id, result, place_id AS "placeId", tag, photo_id AS "photoId", note, occurred_at AS "occurredAt",
         person_id AS "personId"
       FROM recall_finding WHERE studio_id = $1 AND id IN (${placeholders(ids)})`,
      [studioId, ...ids],
    );
    return new Map(rows.map((row) => [row.id, row]));
  }

  private async dispositions(
    studioId: string,
    recallId: string,
    containerIds: readonly string[],
  ): Promise<Map<string, DispositionView[]>> {
    if (containerIds.length === 0) return new Map();
    const rows = await this.database.read<DispositionView & { containerId: string }>(
      `SELECT container_id AS "containerId", id, kind, movement_id AS "movementId", pieces, microlitres,
         witness_id AS "witnessId", photo_id AS "photoId", reference, occurred_at AS "occurredAt",
         person_id AS "personId"
       FROM recall_disposition
       WHERE studio_id = $1 AND recall_id = $2 AND container_id IN (${placeholders(containerIds, 3)})
       ORDER BY recorded_at, id`,
      [studioId, recallId, ...containerIds],
    );
    return grouped(rows);
  }

  private async trays(
    studioId: string,
    containerIds: readonly string[],
  ): Promise<Map<string, RecallTrayView[]>> {
    if (containerIds.length === 0) return new Map();
    const rows = await this.database.read<RecallTrayView & { containerId: string }>(
      `SELECT container_id AS "containerId", session_id AS "sessionId", sum(pieces) AS pieces FROM tray_line
       WHERE studio_id = $1 AND state = 'on tray' AND container_id IN (${placeholders(containerIds)})
       GROUP BY container_id, session_id ORDER BY container_id, session_id`,
      [studioId, ...containerIds],
    );
    return grouped(rows);
  }
}

function grouped<Row>(rows: readonly (Row & { containerId: string })[]): Map<string, Row[]> {
  const groups = new Map<string, Row[]>();
  for (const { containerId, ...row } of rows) {
    const known = groups.get(containerId);
    if (known) known.push(row as Row);
    else groups.set(containerId, [row as Row]);
  }
  return groups;
}
