import { Injectable } from '@nestjs/common';
import { placeholders, type Read } from '../platform/database/database.js';
import { notFound } from '../platform/problem.js';
import type { KitItem } from './kit-list.entity.js';
import type { BodyPlace, SessionState, VisitKind } from './vocabulary.js';

/** The session a tray belongs to, with what its rules ask about. */
export interface TraySession {
  id: string;
  clientId: string;
  artistId: string;
  procedureId: string;
  visitKind: VisitKind;
  bodyPlace: BodyPlace;
  state: SessionState;
  version: number;
  plannedStart: string | null;
  inSetupAt: string | null;
  completedAt: string | null;
  touchUpFromDays: number;
  touchUpToDays: number;
  assumedOpenedLife: string | null;
  /** The artist's own kit list, else the procedure's; null when there is none. */
  kitItems: KitItem[] | null;
}

/** Loads the session of a tray with the settings that judge it, in one look-up. */
@Injectable()
export class TraySessions {
  /** @throws Problem not-found */
  async load(read: Read, studioId: string, sessionId: string): Promise<TraySession> {
    const session = (await this.many(read, studioId, [sessionId])).get(sessionId);
    if (!session) throw notFound('session', sessionId);
    return session;
  }

  /** @returns by id; those that are not there are left out */
  async many(read: Read, studioId: string, sessionIds: readonly string[]): Promise<Map<string, TraySession>> {
    if (sessionIds.length === 0) return new Map();
    const rows = await read<Omit<TraySession, 'kitItems'> & { kitItems: string | null }>(
      `SELECT session.id, session.client_id AS "clientId", session.artist_id AS "artistId",
         session.procedure_id AS "procedureId", session.visit_kind AS "visitKind", session.body_place AS "bodyPlace",
         session.state, session.version, session.planned_start AS "plannedStart",
         session.in_setup_at AS "inSetupAt", session.completed_at AS "completedAt",
         procedure.touch_up_from_days AS "touchUpFromDays", procedure.touch_up_to_days AS "touchUpToDays",
         studio.assumed_opened_life AS "assumedOpenedLife",
         (SELECT kit_list.items FROM kit_list
          WHERE kit_list.studio_id = session.studio_id AND kit_list.procedure_id = session.procedure_id
            AND (kit_list.artist_id = session.artist_id OR kit_list.artist_id IS NULL)
          ORDER BY CASE WHEN kit_list.artist_id IS NULL THEN 1 ELSE 0 END LIMIT 1) AS "kitItems"
       FROM session
         JOIN procedure ON procedure.studio_id = session.studio_id AND procedure.id = session.procedure_id
         JOIN studio ON studio.id = session.studio_id
       WHERE session.studio_id = $1 AND session.id IN (${placeholders(sessionIds)})`,
      [studioId, ...sessionIds],
    );
    return new Map(
      rows.map((row) => [
        row.id,
        { ...row, kitItems: row.kitItems === null ? null : (JSON.parse(row.kitItems) as KitItem[]) },
      ]),
    );
  }
}
