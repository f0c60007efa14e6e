import { Temporal } from 'temporal-polyfill';
import { localDay } from '../identity/local-day.js';
import { placeholders, type Read } from '../platform/database/database.js';
import { type TouchUpWindow, touchUpWindow, visitsWithTouchUp } from './touch-up-window.js';

const mostOwed = 5_000;

/** A completed visit whose touch-up is still owed: nothing took place after it yet. */
export interface OwedTouchUp {
  sessionId: string;
  procedureName: string;
  completedAt: string;
  window: TouchUpWindow;
  /** The studio's local day for which the touch-up is planned, not before the day asked for; null: it is not. */
  plannedOn: string | null;
  /** Whether a visit of any kind is planned to follow it, whenever. */
  isFollowed: boolean;
  /** The last of the studio's local days for which such a visit is planned; null: none has a day. */
  followedOn: string | null;
  version: number;
}

interface OwedRow {
  sessionId: string;
  procedureName: string;
  completedAt: string;
  fromDays: number;
  toDays: number;
  plannedVisits: number;
  plannedStart: string | null;
  lastPlannedStart: string | null;
  version: number;
}

/**
 * The visits after which a touch-up is expected, that nothing follows which took place or is being laid out, and whose
 * window has not closed before a day, or which are planned for that day or later. Of clients who were erased nothing is
 * owed.
 *
 * @param from the studio's local day, ISO `YYYY-MM-DD`
 */
export async function owedTouchUps(
  read: Read,
  { studioId, timeZone, from }: { studioId: string; timeZone: string; from: string },
): Promise<OwedTouchUp[]> {
  const [longest] = await read<{ days: number | null }>(
    'SELECT max(touch_up_to_days) AS days FROM procedure WHERE studio_id = $1',
    [studioId],
  );
  // No window reaches further; a day more, since the studio's day is not that of UTC.
  const earliest = Temporal.PlainDate.from(from).subtract({ days: (longest?.days ?? 0) + 1 });
  const kinds = [...visitsWithTouchUp];
  const rows = await read<OwedRow>(
    // What is planned to follow is gathered once for all: there is little of it.
    `SELECT session.id AS "sessionId", procedure.name AS "procedureName", session.completed_at AS "completedAt",
       procedure.touch_up_from_days AS "fromDays", procedure.touch_up_to_days AS "toDays", session.version,
       coalesce(planned.visits, 0) AS "plannedVisits", planned.touch_up_start AS "plannedStart",
       planned.last_start AS "lastPlannedStart"
     FROM session
       JOIN procedure ON procedure.studio_id = session.studio_id AND procedure.id = session.procedure_id
       JOIN client ON client.studio_id = session.studio_id AND client.id = session.client_id
       LEFT JOIN (
         SELECT client_id, follows_session_id, count(*) AS visits, max(planned_start) AS last_start,
           min(CASE WHEN visit_kind = 'touch-up' THEN planned_start END) AS touch_up_start
         FROM session WHERE studio_id = $1 AND state = 'planned' AND follows_session_id IS NOT NULL
         GROUP BY client_id, follows_session_id
       ) AS planned ON planned.client_id = session.client_id AND planned.follows_session_id = session.id
     WHERE session.studio_id = $1 AND session.state = 'completed' AND session.completed_at >= $2
       AND session.visit_kind IN (${placeholders(kinds, 3)}) AND client.erased_at IS NULL
       AND NOT EXISTS (
         SELECT 1 FROM session AS following
         WHERE following.studio_id = session.studio_id AND following.client_id = session.client_id
           AND following.follows_session_id = session.id AND following.state IN ('in setup', 'completed')
       )
     ORDER BY session.completed_at DESC, session.id LIMIT ${mostOwed}`,
    [studioId, `${earliest.toString()}T00:00:00.000Z`, ...kinds],
  );
  return rows.flatMap(({ fromDays, toDays, plannedVisits, plannedStart, lastPlannedStart, ...session }) => {
    const window = touchUpWindow(localDay(session.completedAt, timeZone), { fromDays, toDays });
    const plannedDay = plannedStart === null ? null : localDay(plannedStart, timeZone);
    // One that nobody came to, and nobody marked so, says nothing of the day.
    const plannedOn = plannedDay !== null && plannedDay >= from ? plannedDay : null;
    if (plannedOn === null && window.closesOn < from) return [];
    const followedOn = lastPlannedStart === null ? null : localDay(lastPlannedStart, timeZone);
    return [{ ...session, window, plannedOn, isFollowed: plannedVisits > 0, followedOn }];
  });
}
