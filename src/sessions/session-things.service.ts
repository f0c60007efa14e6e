import { Injectable } from '@nestjs/common';
import { Database, placeholders } from '../platform/database/database.js';
import type { FieldSealer } from '../platform/encryption/data-keys.service.js';
import { sealedAsUseReason, sealedAsUseReversalReason } from './sealing-contexts.js';
import type { SessionTrayLineView, UseView } from './session-record.views.js';

interface UseRow extends Omit<UseView, 'codes' | 'againstRefusal' | 'reason' | 'reversal'> {
  sessionId: string;
  codes: string;
  againstRefusal: string | null;
  reasonSealed: string | null;
  reversedBecause: string | null;
  reversedAt: string | null;
  reversedBy: string | null;
}

/** What lay on trays and touched clients, a fixed number of questions for any number of sessions. */
@Injectable()
export class SessionThings {
  constructor(private readonly database: Database) {}

  /** What lay on trays, by session id, in the order in which it was admitted. */
  async traysOf(
    studioId: string,
    sessionIds: readonly string[],
  ): Promise<Map<string, SessionTrayLineView[]>> {
    const trays = new Map<string, SessionTrayLineView[]>();
    if (sessionIds.length === 0) return trays;
    const rows = await this.database.read<SessionTrayLineView & { sessionId: string }>(
      `SELECT tray_line.id, tray_line.session_id AS "sessionId", tray_line.product_id AS "productId",
         product.name AS "productName", tray_line.lot_id AS "lotId", lot.code AS "lotCode",
         tray_line.container_id AS "containerId", tray_line.pieces, tray_line.serial,
         tray_line.known_by AS "knownBy", tray_line.admitted_at AS "admittedAt", tray_line.state,
         tray_line.settled_as AS "settledAs"
       FROM tray_line
         JOIN lot ON lot.studio_id = tray_line.studio_id AND lot.id = tray_line.lot_id
         JOIN product ON product.chain_id = lot.chain_id AND product.id = lot.product_id
       WHERE tray_line.studio_id = $1 AND tray_line.session_id IN (${placeholders(sessionIds)})
       ORDER BY tray_line.admitted_at, tray_line.id`,
      [studioId, ...sessionIds],
    );
    for (const { sessionId, ...line } of rows) {
      const tray = trays.get(sessionId) ?? [];
      trays.set(sessionId, tray);
      tray.push(line);
    }
    return trays;
  }

  /**
   * Uses of one client's sessions by session id, reversed ones too.
   * @param sealer the client's; undefined after erasure and for whoever is not shown clients: then no reason is told
   */
  async usesOf(
    studioId: string,
    sessionIds: readonly string[],
    sealer: FieldSealer | undefined,
  ): Promise<Map<string, UseView[]>> {
    const uses = new Map<string, UseView[]>();
    if (sessionIds.length === 0) return uses;
    const rows = await this.database.read<UseRow>(
      `SELECT session_use.id, session_use.session_id AS "sessionId", session_use.lot_id AS "lotId",
         session_use.container_id AS "containerId", lot.product_id AS "productId", product.kind,
         session_use.mix_id AS "mixId", session_use.maker_name AS "makerName",
         session_use.product_name AS "productName", session_use.shade, session_use.lot_code AS "lotCode",
         session_use.codes, session_use.use_by AS "useBy", session_use.known_by AS "knownBy",
         session_use.pieces, session_use.drops, session_use.microlitres,
         session_use.against_refusal AS "againstRefusal", session_use.reason_sealed AS "reasonSealed",
         session_use.applied_at AS "appliedAt", session_use.removed_at AS "removedAt",
         session_use.applied_by AS "appliedBy", session_use.occurred_at AS "occurredAt",
         session_use.recorded_at AS "recordedAt", session_use.person_id AS "personId",
         session_use_reversal.reason_sealed AS "reversedBecause", session_use_reversal.recorded_at AS "reversedAt",
         session_use_reversal.person_id AS "reversedBy"
       FROM session_use
         JOIN lot ON lot.studio_id = session_use.studio_id AND lot.id = session_use.lot_id
         JOIN product ON product.chain_id = lot.chain_id AND product.id = lot.product_id
         LEFT JOIN session_use_reversal ON session_use_reversal.studio_id = session_use.studio_id
           AND session_use_reversal.use_id = session_use.id
       WHERE session_use.studio_id = $1 AND session_use.session_id IN (${placeholders(sessionIds)})
       ORDER BY session_use.occurred_at, session_use.id`,
      [studioId, ...sessionIds],
    );
    for (const row of rows) {
      const { sessionId, reasonSealed, reversedBecause, reversedAt, reversedBy, ...use } = row;
      const ofSession = uses.get(sessionId) ?? [];
      uses.set(sessionId, ofSession);
      ofSession.push({
        ...use,
        reason: sealer?.open(reasonSealed, sealedAsUseReason(use.id)) ?? null,
        codes: JSON.parse(use.codes) as UseView['codes'],
        againstRefusal: use.againstRefusal === null ? null : (JSON.parse(use.againstRefusal) as string[]),
        reversal:
          reversedAt === null
            ? null
            : {
                reason: sealer?.open(reversedBecause, sealedAsUseReversalReason(use.id)) ?? null,
                recordedAt: reversedAt,
                personId: reversedBy,
              },
      });
    }
    return uses;
  }
}
