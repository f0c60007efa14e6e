import { Injectable } from '@nestjs/common';
import type { Read } from '../../platform/database/database.js';
import type { LotScope } from '../../stock/lot-matching/lot-scope.js';
import { recallLots, recallReach } from '../recall-lots.query.js';
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
  ReportToldClientView,
} from './recall-report.views.js';
import type { TimelineFacts } from './report-timeline.js';
import { scopeWords } from './scope-words.js';

/** So many exposures, clients and containers a report lists; all are counted, and the spreadsheets have them all. */
export const mostListed = 20_000;

type ScopeRow = Omit<ReportScopeView, 'words'> & { scope: string; lots: number };
type LotRow = Omit<ReportLotView, 'reasons' | 'decision'> & {
  reasons: string;
  decision: 'affected' | 'not affected' | null;
  decisionReason: string | null;
  decidedAt: string | null;
  decidedBy: string | null;
};
type ExposureRow = Omit<ReportExposureView, 'day' | 'throughBlend' | 'certainty'> & {
  at: string;
  throughBlend: number;
  certain: number;
};

const lotCode = (lotId: string) => `(SELECT lot_code.code FROM lot_code
  WHERE lot_code.studio_id = $1 AND lot_code.lot_id = ${lotId} AND lot_code.superseded_at IS NULL
  ORDER BY CASE lot_code.kind WHEN 'lot' THEN 0 WHEN 'batch' THEN 1 ELSE 2 END, lot_code.code LIMIT 1)`;

const reached = `WITH RECURSIVE ${recallLots}, ${recallReach}`;

const notReversed = `NOT EXISTS (SELECT 1 FROM session_use_reversal AS reversal
  WHERE reversal.studio_id = $1 AND reversal.use_id = session_use.id)`;

/** Reads what a report of a recall is drawn up from. Everything is looked up in whole sets. */
@Injectable()
export class ReportRows {
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
    return rows.map(({ scope, ...row }) => ({ ...row, words: scopeWords(JSON.parse(scope) as LotScope) }));
  }

  async lots(read: Read, studioId: string, recallId: string): Promise<ReportLotView[]> {
    const rows = await read<LotRow>(
      `WITH ${recallLots},
       decided AS (
         SELECT lot_id, decision, reason, recorded_at, person_id,
           row_number() OVER (PARTITION BY lot_id ORDER BY recorded_at DESC, id DESC) AS place
         FROM recall_lot_decision WHERE studio_id = $1 AND recall_id = $2)
       SELECT lot.id AS "lotId", maker.name AS "makerName", product.name AS "productName", product.shade,
         ${lotCode('lot.id')} AS code, lot.use_by AS "useBy", recall_lots.grade, recall_lots.reasons,
         recall_lots.standing, decided.decision, decided.reason AS "decisionReason",
         decided.recorded_at AS "decidedAt", decided.person_id AS "decidedBy"
       FROM recall_lots
         JOIN lot ON lot.studio_id = $1 AND lot.id = recall_lots.lot_id
         JOIN product ON product.chain_id = lot.chain_id AND product.id = lot.product_id
         JOIN maker ON maker.chain_id = product.chain_id AND maker.id = product.maker_id
         LEFT JOIN decided ON decided.lot_id = lot.id AND decided.place = 1
       ORDER BY product.name, coalesce(product.shade, ''), code, lot.id`,
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

  async exposures(
    read: Read,
    studioId: string,
    recallId: string,
    dayOf: (instant: string) => string,
  ): Promise<ReportExposuresView> {
    const rows = await read<ExposureRow>(
      `${reached},
       sources AS (
         SELECT lot_id, source_lot_id, standing, max(depth) AS depth FROM recall_reach
         GROUP BY lot_id, source_lot_id, standing),
       exposed AS (
         SELECT session_use.session_id, session_use.client_id, sources.source_lot_id,
           max(CASE WHEN sources.standing = 'affected' AND session_use.known_by <> 'picked from a list'
             THEN 1 ELSE 0 END) AS certain,
           min(sources.depth) AS through_blend, min(session_use.occurred_at) AS at
         FROM sources CROSS JOIN session_use
         WHERE session_use.studio_id = $1 AND session_use.lot_id = sources.lot_id AND ${notReversed}
         GROUP BY session_use.session_id, session_use.client_id, sources.source_lot_id)
       SELECT exposed.client_id AS "clientId", client.reference AS "clientReference",
         exposed.session_id AS "sessionId", exposed.at, session.visit_kind AS "visitKind",
         session.body_place AS "bodyPlace", exposed.source_lot_id AS "lotId",
         ${lotCode('exposed.source_lot_id')} AS "lotCode", product.name AS "productName", product.shade,
         exposed.certain, exposed.through_blend AS "throughBlend"
       FROM exposed
         JOIN client ON client.studio_id = $1 AND client.id = exposed.client_id
         JOIN session ON session.studio_id = $1 AND session.id = exposed.session_id
         JOIN lot ON lot.studio_id = $1 AND lot.id = exposed.source_lot_id
         JOIN product ON product.chain_id = lot.chain_id AND product.id = lot.product_id
       ORDER BY client.reference, exposed.at, exposed.session_id, exposed.source_lot_id`,
      [studioId, recallId],
    );
    const certain = new Set(rows.filter((row) => row.certain === 1).map(({ sessionId }) => sessionId));
    const sessions = new Set(rows.map(({ sessionId }) => sessionId));
    return {
      clients: new Set(rows.map(({ clientId }) => clientId)).size,
      sessions: sessions.size,
      certain: certain.size,
      possible: sessions.size - certain.size,
      items: rows.slice(0, mostListed).map(({ at, certain: surely, throughBlend, ...row }) => ({
        ...row,
        day: dayOf(at),
        certainty: surely === 1 ? 'certain' : 'possible',
        throughBlend: throughBlend > 0,
      })),
      leftOut: Math.max(0, rows.length - mostListed),
    };
  }

  async contacts(read: Read, studioId: string, recallId: string): Promise<ReportContactsView> {
    const counts = await read<ReportContactsView['counts'][number]>(
      `SELECT audience, outcome, count(*) AS attempts FROM recall_contact
       WHERE studio_id = $1 AND recall_id = $2 GROUP BY audience, outcome ORDER BY audience, outcome`,
      [studioId, recallId],
    );
    const clients = await read<ReportToldClientView>(
      `${reached},
       exposed AS (
         SELECT DISTINCT session_use.client_id
         FROM (SELECT DISTINCT lot_id FROM recall_reach) AS reached CROSS JOIN session_use
         WHERE session_use.studio_id = $1 AND session_use.lot_id = reached.lot_id AND ${notReversed}),
       attempts AS (
         SELECT client_id, outcome, recorded_at, count(*) OVER (PARTITION BY client_id) AS attempts,
           row_number() OVER (PARTITION BY client_id ORDER BY recorded_at DESC, id DESC) AS place
         FROM recall_contact WHERE studio_id = $1 AND recall_id = $2 AND client_id IS NOT NULL),
       concerned AS (SELECT client_id FROM exposed UNION SELECT client_id FROM attempts)
       SELECT client.id AS "clientId", client.reference AS "clientReference",
         coalesce(attempts.attempts, 0) AS attempts, attempts.outcome, attempts.recorded_at AS "lastAt"
       FROM concerned JOIN client ON client.studio_id = $1 AND client.id = concerned.client_id
         LEFT JOIN attempts ON attempts.client_id = concerned.client_id AND attempts.place = 1
       ORDER BY client.reference, client.id`,
      [studioId, recallId],
    );
    return {
      counts,
      clients: clients.slice(0, mostListed),
      leftOut: Math.max(0, clients.length - mostListed),
    };
  }

  async balance(read: Read, studioId: string, recallId: string): Promise<ReportBalanceView[]> {
    const sum = (kind: string, column = 'pieces') =>
      `coalesce(sum(CASE WHEN movement.kind = '${kind}' THEN movement.${column} ELSE 0 END), 0)`;
    const rows = await read<Omit<ReportBalanceView, 'blend'> & { blend: number }>(
      `${reached},
       concerned AS (SELECT lot_id, max(depth) AS blend FROM recall_reach WHERE standing = 'affected' GROUP BY lot_id)
       SELECT concerned.lot_id AS "lotId", concerned.blend, ${lotCode('concerned.lot_id')} AS code,
         product.name AS "productName", product.shade,
         ${sum('received')} AS "receivedPieces", ${sum('produced')} AS "producedPieces",
         ${sum('transferred in')} AS "transferredInPieces", ${sum('adjusted')} AS "adjustedPieces",
         -${sum('used')} AS "usedPieces", -${sum('blended')} AS "blendedPieces",
         -${sum('wasted')} AS "wastedPieces", -${sum('returned')} AS "returnedPieces",
         -${sum('transferred out')} AS "transferredOutPieces",
         coalesce(sum(movement.pieces), 0) AS "onHandPieces",
         ${sum('received', 'microlitres')} + ${sum('produced', 'microlitres')} AS "receivedMicrolitres",
         -${sum('used', 'microlitres')} AS "usedMicrolitres",
         coalesce(sum(movement.microlitres), 0) AS "onHandMicrolitres"
       FROM concerned
         JOIN lot ON lot.studio_id = $1 AND lot.id = concerned.lot_id
         JOIN product ON product.chain_id = lot.chain_id AND product.id = lot.product_id
         LEFT JOIN movement ON movement.studio_id = $1 AND movement.lot_id = concerned.lot_id
       GROUP BY concerned.lot_id, concerned.blend, product.name, product.shade
       ORDER BY concerned.blend, product.name, coalesce(product.shade, ''), concerned.lot_id`,
      [studioId, recallId],
    );
    return rows.map((row) => ({ ...row, blend: row.blend > 0 }));
  }

  async containers(read: Read, studioId: string, recallId: string): Promise<ReportContainerView[]> {
    return read<ReportContainerView>(
      `${reached},
       looked AS (
         SELECT container_id, result, recorded_at, person_id, tag,
           row_number() OVER (PARTITION BY container_id ORDER BY recorded_at DESC, id DESC) AS place
         FROM recall_finding WHERE studio_id = $1 AND recall_id = $2)
       SELECT container.id AS "containerId", container.label_code AS "labelCode", container.lot_id AS "lotId",
         ${lotCode('container.lot_id')} AS "lotCode", product.name AS "productName", container.form,
         coalesce(looked.result, 'not looked for') AS found, looked.recorded_at AS "foundAt",
         looked.person_id AS "personId", looked.tag
       FROM (SELECT DISTINCT lot_id FROM recall_reach) AS reached
         JOIN container ON container.studio_id = $1 AND container.lot_id = reached.lot_id
         JOIN lot ON lot.studio_id = $1 AND lot.id = reached.lot_id
         JOIN product ON product.chain_id = lot.chain_id AND product.id = lot.product_id
         LEFT JOIN balance ON balance.studio_id = $1 AND balance.container_id = container.id
         LEFT JOIN looked ON looked.container_id = container.id AND looked.place = 1
       WHERE container.state NOT IN ('finished', 'discarded') OR balance.pieces > 0 OR balance.microlitres > 0
         OR looked.result IS NOT NULL
       ORDER BY product.name, "lotCode", container.label_code LIMIT ${mostListed}`,
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
        `SELECT ${recorded}, coalesce(${lotCode('decided.lot_id')}, 'without a code') AS lot, decision, reason
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
