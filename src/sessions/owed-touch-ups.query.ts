import { Temporal } from 'temporal-polyfill';
import { localDay } from '../identity/local-day.js';
import { placeholders, type Read } from '../platform/database/database.js';
import { type TouchUpWindow, touchUpWindow, visitsWithTouchUp } from './touch-up-window.js';

const mostOwed = 5_000;

/** A completed visit whose touch-up is still owed. */
export interface OwedTouchUp {
  sessionId: string;
  procedureName: string;
  completedAt: string;
  window: TouchUpWindow;
  version: number;
}

interface OwedRow {
  sessionId: string;
  procedureName: string;
  completedAt: string;
  fromDays: number;
  toDays: number;
  version: number;
}

/**
 * The visits after which a touch-up is expected, that nothing follows which took place or still may, and whose window has
 * not closed before a day. Of clients who were erased nothing is owed.
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
    `SELECT session.id AS "sessionId", procedure.name AS "procedureName", session.completed_at AS "completedAt",
       procedure.touch_up_from_days AS "fromDays", procedure.touch_up_to_days AS "toDays", session.version
     FROM session
       JOIN procedure ON procedure.studio_id = session.studio_id AND procedure.id = session.procedure_id
       JOIN client ON client.studio_id = session.studio_id AND client.id = session.client_id
     WHERE session.studio_id = $1 AND session.state = 'completed' AND session.completed_at >= $2
       AND session.visit_kind IN (${placeholders(kinds, 3)}) AND client.erased_at IS NULL
       AND NOT EXISTS (
         SELECT 1 FROM session AS following
         WHERE following.studio_id = session.studio_id AND following.client_id = session.client_id
           AND following.follows_session_id = session.id
           AND following.state IN ('planned', 'in setup', 'completed'))
     ORDER BY session.completed_at DESC, session.id LIMIT ${mostOwed}`,
    [studioId, `${earliest.toString()}T00:00:00.000Z`, ...kinds],
  );
  return rows.flatMap(({ fromDays, toDays, ...session }) => {
    const window = touchUpWindow(localDay(session.completedAt, timeZone), { fromDays, toDays });
    return window.closesOn < from ? [] : [{ ...session, window }];
  });
}
