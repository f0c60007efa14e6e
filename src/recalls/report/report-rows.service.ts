import { Injectable } from '@nestjs/common';
import { placeholders, type Read } from '../../platform/database/database.js';
import type { LotScope } from '../../stock/lot-matching/lot-scope.js';
import { RecallAccounts } from '../balance/recall-accounts.service.js';
import { Recipients } from '../contacts/recipients.service.js';
import { reachedLots, recallContainers } from '../containers/recall-containers.query.js';
import { ExposedSessions } from '../exposures/exposed-sessions.service.js';
import { Exposures } from '../exposures/exposures.service.js';
import { recallLots } from '../recall-lots.query.js';
import type {
  ReportBalanceView,
  ReportContactsView,
  ReportContainerView,
  ReportDispositionView,
  ReportExposuresView,
  ReportExposureView,
  ReportLotView,
  ReportScopeView,
  ReportStudioView,
} from './recall-report.views.js';
import type { TimelineFacts } from './report-timeline.js';
import { scopeWords } from './scope-words.js';

/** So many exposures, clients and containers a report lists; all are counted, and the spreadsheets have them all. */
const mostListed = 20_000;
const usesAtOnce = 1_000;
const idsPerQuestion = 500;

type ScopeRow = Omit<ReportScopeView, 'words'> & { scope: string; lots: number };
type LotRow = Omit<ReportLotView, 'reasons' | 'decision'> & {
  reasons: string;
  decision: 'affected' | 'not affected' | null;
  decisionReason: string | null;
  decidedAt: string | null;
  decidedBy: string | null;
};
/** Reads what a report of a recall is drawn up from. Everything is looked up in whole sets. */
@Injectable()
export class ReportRows {
  constructor(
    private readonly totals: Exposures,
    private readonly exposedSessions: ExposedSessions,
    private readonly recipients: Recipients,
    private readonly accounts: RecallAccounts,
  ) {}

  async studio(read: Read, studioId: string): Promise<ReportStudioView> {
    const [studio] = await read<ReportStudioView>(
      'SELECT id, name, time_zone AS "timeZone" FROM studio WHERE id = $1',
      [studioId],
    );
    if (!studio) throw new Error(`There is no studio ${studioId}.`);
    return studio;
  }

  async openedBy(read: Read, studioId: string, recallId: string): Promise<string | null> {
    const [recall] = await read<{ openedBy: string | null }>(
      'SELECT opened_by AS "openedBy" FROM recall WHERE studio_id = $1 AND id = $2',
      [studioId, recallId],
    );
    return recall?.openedBy ?? null;
  }

  async scopes(
    read: Read,
    studioId: string,
    recallId: string,
  ): Promise<(ReportScopeView & { lots: number })[]> {
    const rows = await read<ScopeRow>(
      `SELECT recall_scope.number, recall_scope.recorded_at AS "recordedAt", recall_scope.person_id AS "personId",
         recall_scope.reason, recall_scope.issuer, recall_scope.reference, recall_scope.issued_on AS "issuedOn",
         recall_scope.classification, recall_scope.risk, recall_scope.remedy, recall_scope.scope,
         recall_notice.source AS "noticeSource", recall_notice.text_digest AS "noticeDigest", (
           SELECT count(*) FROM recall_lot
           WHERE recall_lot.studio_id = $1 AND recall_lot.recall_id = $2
             AND recall_lot.scope_number = recall_scope.number) AS lots
       FROM recall_scope LEFT JOIN recall_notice
         ON recall_notice.studio_id = recall_scope.studio_id AND recall_notice.id = recall_scope.notice_id
       WHERE recall_scope.studio_id = $1 AND recall_scope.recall_id = $2 ORDER BY recall_scope.number`,
      [studioId, recallId],
    );
    const scopes = rows.map(({ scope }) => JSON.parse(scope) as LotScope);
    const products = await this.productNames(
      read,
      studioId,
      scopes.flatMap(({ items }) => items.flatMap(({ productIds }) => productIds)),
    );
    return rows.map(({ scope: _, ...row }, index) => ({
      ...row,
      words: scopeWords(scopes[index] ?? { items: [] }, products),
    }));
  }

  private async productNames(
    read: Read,
    studioId: string,
    productIds: readonly string[],
  ): Promise<Map<string, string>> {
    const names = new Map<string, string>();
    const wanted = [...new Set(productIds)];
    for (let from = 0; from < wanted.length; from += idsPerQuestion) {
      const ids = wanted.slice(from, from + idsPerQuestion);
      const rows = await read<{ id: string; name: string; shade: string | null; makerName: string }>(
        `SELECT product.id, product.name, product.shade, maker.name AS "makerName"
         FROM product JOIN maker ON maker.chain_id = product.chain_id AND maker.id = product.maker_id
         WHERE product.chain_id = (SELECT chain_id FROM studio WHERE id = $1)
           AND product.id IN (${placeholders(ids)})`,
        [studioId, ...ids],
      );
      for (const { id, name, shade, makerName } of rows) {
        names.set(id, `${shade === null ? name : `${name} ${shade}`} by ${makerName}`);
      }
    }
    return names;
  }

  async lots(read: Read, studioId: string, recallId: string): Promise<ReportLotView[]> {
    const rows = await read<LotRow>(
      `WITH ${recallLots},
       decided AS (
         SELECT lot_id, decision, reason, recorded_at, person_id,
           row_number() OVER (PARTITION BY lot_id ORDER BY recorded_at DESC, id DESC) AS place
         FROM recall_lot_decision WHERE studio_id = $1 AND recall_id = $2)
       SELECT lot.id AS "lotId", maker.name AS "makerName", product.name AS "productName", product.shade,
         lot.code, lot.use_by AS "useBy", recall_lots.grade, recall_lots.reasons,
         recall_lots.standing, decided.decision, decided.reason AS "decisionReason",
         decided.recorded_at AS "decidedAt", decided.person_id AS "decidedBy"
       FROM recall_lots
         JOIN lot ON lot.studio_id = $1 AND lot.id = recall_lots.lot_id
         JOIN product ON product.chain_id = lot.chain_id AND product.id = lot.product_id
         JOIN maker ON maker.chain_id = product.chain_id AND maker.id = product.maker_id
         LEFT JOIN decided ON decided.lot_id = lot.id AND decided.place = 1
       ORDER BY product.name, coalesce(product.shade, ''), lot.code, lot.id`,
      [studioId, recallId],
    );
    return rows.map(({ reasons, decision, decisionReason, decidedAt, decidedBy, ...lot }) => ({
      ...lot,
      reasons: (JSON.parse(reasons) as { code: string; message?: string }[]).map(
        ({ code, message }) => message ?? code,
      ),
      decision:
        decision === null
          ? null
          : { decision, reason: decisionReason ?? '', at: decidedAt ?? '', personId: decidedBy },
    }));
  }

  /** Every session with every lot of the recall that was in it. */
  async exposures(
    read: Read,
    studioId: string,
    recallId: string,
    dayOf: (instant: string) => string,
  ): Promise<ReportExposuresView> {
    const { clients, certainClients, sessions, certainSessions, reversedUses } = await this.totals.totals(
      read,
      studioId,
      recallId,
    );
    const rows = new Map<string, ReportExposureView>();
    for await (const part of this.exposedSessions.all(read, studioId, recallId, usesAtOnce)) {
      for (const { session, use } of part) {
        for (const { lotId, lotCode, productName, shade, as } of use.lots) {
          const key = `${session.sessionId} ${lotId}`;
          const known = rows.get(key);
          if (known?.certainty === 'certain') continue;
          const { sessionId, clientId, clientReference, visitKind, bodyPlace } = session;
          const row = { lotId, lotCode, productName, shade, as, certainty: use.certainty };
          if (known) Object.assign(known, row);
          else {
            rows.set(key, {
              ...{ clientId, clientReference, sessionId, visitKind, bodyPlace },
              day: dayOf(session.occurredAt),
              ...row,
            });
          }
        }
      }
    }
    return {
      ...{ clients, certainClients, sessions, certainSessions, reversedUses },
      items: [...rows.values()].sort(byClientAndDay).slice(0, mostListed),
      leftOut: Math.max(0, rows.size - mostListed),
    };
  }

  async contacts(read: Read, studioId: string, recallId: string): Promise<ReportContactsView> {
    const counts = await read<ReportContactsView['counts'][number]>(
      `SELECT audience, outcome, count(*) AS attempts FROM recall_contact
       WHERE studio_id = $1 AND recall_id = $2 GROUP BY audience, outcome ORDER BY audience, outcome`,
      [studioId, recallId],
    );
    const everybody = await this.recipients.everybody(read, studioId, recallId, 'client');
    const listed = everybody.slice(0, mostListed);
    const references = await this.references(
      read,
      studioId,
      listed.map(({ id }) => id),
    );
    return {
      counts,
      clients: listed.map(({ id, certainty, erased, attempts, standing, lastAt }) => ({
        clientId: id,
        clientReference: references.get(id) ?? '',
        ...{ certainty, erased, attempts, standing, lastAt },
      })),
      leftOut: everybody.length - listed.length,
    };
  }

  private async references(
    read: Read,
    studioId: string,
    clientIds: readonly string[],
  ): Promise<Map<string, string>> {
    const references = new Map<string, string>();
    for (let from = 0; from < clientIds.length; from += idsPerQuestion) {
      const ids = clientIds.slice(from, from + idsPerQuestion);
      const rows = await read<{ id: string; reference: string }>(
        `SELECT id, reference FROM client WHERE studio_id = $1 AND id IN (${placeholders(ids)})`,
        [studioId, ...ids],
      );
      for (const { id, reference } of rows) references.set(id, reference);
    }
    return references;
  }

  async balance(read: Read, studioId: string, recallId: string): Promise<ReportBalanceView[]> {
    const accounts = await this.accounts.of(read, studioId, recallId);
    const names = await read<Pick<ReportBalanceView, 'lotId' | 'code' | 'productName' | 'shade'>>(
      `WITH RECURSIVE ${reachedLots}
       SELECT lot.id AS "lotId", lot.code, product.name AS "productName", product.shade
       FROM reached_lots JOIN lot ON lot.studio_id = $1 AND lot.id = reached_lots.lot_id
         JOIN product ON product.chain_id = lot.chain_id AND product.id = lot.product_id`,
      [studioId, recallId],
    );
    const named = new Map(names.map((name) => [name.lotId, name]));
    return accounts.flatMap(({ lotId, isBlend, standing, account }) => {
      const name = named.get(lotId);
      if (!name) return [];
      const { figures, cameIn, found, notAccounted, onHand, unexplained, balancedPercent } = account;
      return [
        {
          ...name,
          ...{ isBlend, standing, unexplained, balancedPercent },
          cameInPieces: cameIn.pieces,
          usedPieces: figures.used.pieces,
          emptiedPieces: figures.emptied.pieces,
          blendedPieces: figures.blended.pieces,
          wastedPieces: figures.wasted.pieces,
          returnedPieces: figures.returned.pieces,
          transferredOutPieces: figures['transferred out'].pieces,
          foundPieces: found.pieces,
          notAccountedPieces: notAccounted.pieces,
          onHandPieces: onHand.pieces,
          cameInMicrolitres: cameIn.microlitres,
          usedMicrolitres: figures.used.microlitres,
          onHandMicrolitres: onHand.microlitres,
        },
      ];
    });
  }

  async containers(read: Read, studioId: string, recallId: string): Promise<ReportContainerView[]> {
    return read<ReportContainerView>(
      `WITH RECURSIVE ${reachedLots}, ${recallContainers}
       SELECT container.id AS "containerId", container.label_code AS "labelCode", container.lot_id AS "lotId",
         lot.code AS "lotCode", product.name AS "productName", container.form, recall_containers.standing,
         recall_containers.pieces, looked.recorded_at AS "foundAt", looked.person_id AS "personId", looked.tag
       FROM recall_containers
         JOIN container ON container.studio_id = $1 AND container.id = recall_containers.id
         JOIN lot ON lot.studio_id = $1 AND lot.id = recall_containers.lot_id
         JOIN product ON product.chain_id = lot.chain_id AND product.id = lot.product_id
         LEFT JOIN recall_finding AS looked
           ON looked.studio_id = $1 AND looked.id = recall_containers.finding_id
       WHERE recall_containers.listed = 1
       ORDER BY product.name, lot.code, container.label_code LIMIT ${mostListed}`,
      [studioId, recallId],
    );
  }

  async dispositions(read: Read, studioId: string, recallId: string): Promise<ReportDispositionView[]> {
    return read<ReportDispositionView>(
      `SELECT container.id AS "containerId", container.label_code AS "labelCode", container.lot_id AS "lotId",
         disposed.kind, disposed.pieces, disposed.microlitres, disposed.reference,
         disposed.witness_id AS "witnessId", disposed.photo_id AS "photoId",
         disposed.recorded_at AS at, disposed.person_id AS "personId"
       FROM recall_disposition AS disposed
         JOIN container ON container.studio_id = disposed.studio_id AND container.id = disposed.container_id
       WHERE disposed.studio_id = $1 AND disposed.recall_id = $2
       ORDER BY disposed.recorded_at, disposed.id LIMIT ${mostListed}`,
      [studioId, recallId],
    );
  }

  /** What the timeline tells of besides scopes and steps. */
  async events(
    read: Read,
    studioId: string,
    recallId: string,
  ): Promise<
    Pick<
      TimelineFacts,
      'holds' | 'releases' | 'decisions' | 'findings' | 'contacts' | 'dispositions' | 'closings'
    >
  > {
    const both = [studioId, recallId];
    const recorded = 'recorded_at AS at, person_id AS "personId"';
    return {
      holds: await read(
        `SELECT hold.recorded_at AS at, hold.person_id AS "personId", count(*) AS lots
         FROM recall_hold JOIN hold ON hold.studio_id = recall_hold.studio_id AND hold.id = recall_hold.hold_id
         WHERE recall_hold.studio_id = $1 AND recall_hold.recall_id = $2 GROUP BY hold.recorded_at, hold.person_id`,
        both,
      ),
      releases: await read(
        `SELECT released.recorded_at AS at, released.person_id AS "personId", count(*) AS lots
         FROM recall_hold JOIN hold_release AS released
           ON released.studio_id = recall_hold.studio_id AND released.hold_id = recall_hold.hold_id
         WHERE recall_hold.studio_id = $1 AND recall_hold.recall_id = $2
         GROUP BY released.recorded_at, released.person_id`,
        both,
      ),
      decisions: await read(
        `SELECT ${recorded}, decision, reason, coalesce((
           SELECT lot.code FROM lot WHERE lot.studio_id = $1 AND lot.id = decided.lot_id), 'without a code') AS lot
         FROM recall_lot_decision AS decided WHERE studio_id = $1 AND recall_id = $2 ORDER BY recorded_at, id`,
        both,
      ),
      findings: await read(
        `SELECT ${recorded}, result FROM recall_finding WHERE studio_id = $1 AND recall_id = $2`,
        both,
      ),
      contacts: await read(
        `SELECT ${recorded}, audience, outcome FROM recall_contact WHERE studio_id = $1 AND recall_id = $2`,
        both,
      ),
      dispositions: await read(
        `SELECT ${recorded}, kind, pieces FROM recall_disposition WHERE studio_id = $1 AND recall_id = $2`,
        both,
      ),
      closings: (
        await read<TimelineFacts['closings'][number] & { overrides: string }>(
          `SELECT ${recorded}, outcome, reason, overrides FROM recall_closing
           WHERE studio_id = $1 AND recall_id = $2 ORDER BY recorded_at, id`,
          both,
        )
      ).map(({ overrides, ...closing }) => ({
        ...closing,
        overridden: (JSON.parse(overrides) as unknown[]).length,
      })),
    };
  }
}

function byClientAndDay(one: ReportExposureView, other: ReportExposureView): number {
  const [a, b] = [one, other].map(({ clientReference, clientId, day, sessionId, lotId }) =>
    [clientReference, clientId, day, sessionId, lotId].join(' '),
  ) as [string, string];
  return a < b ? -1 : 1;
}
