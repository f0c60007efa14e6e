import { Injectable } from '@nestjs/common';
import type { Transaction } from '../platform/database/transaction.js';
import { invalidField, notFound } from '../platform/problem.js';
import { whyNotFollowed } from './followed-session.js';
import { Session } from './session.entity.js';
import type { WrittenSessionView } from './sessions.views.js';
import type { VisitKind } from './vocabulary.js';

/** A visit that may follow an earlier one. */
interface FollowingVisit {
  sessionId: string;
  clientId: string;
  procedureId: string;
  visitKind: VisitKind;
  /** The one named; null or undefined: none was. */
  followsSessionId?: string | null;
}

export type Followed = Pick<WrittenSessionView, 'followsSessionId' | 'followsBecause'>;

/** Finds the session that a visit follows. */
@Injectable()
export class FollowedSessions {
  /**
   * The one named, else, for a touch-up, the client's latest completed first session of the procedure.
   * @throws Problem not-found when there is none of the id named; invalid-fields when that one cannot be followed
   */
  async find(transaction: Transaction, visit: FollowingVisit): Promise<Followed> {
    const { studioId } = transaction;
    const { followsSessionId } = visit;
    if (followsSessionId) {
      const named = await transaction.manager.findOneBy(Session, { studioId, id: followsSessionId });
      if (!named) throw notFound('session', followsSessionId);
      const { id: sessionId, clientId, state } = named;
      const whyNot = whyNotFollowed(visit, { sessionId, clientId, state });
      if (whyNot !== null) throw invalidField('followsSessionId', whyNot);
      return { followsSessionId, followsBecause: 'named' };
    }
    if (visit.visitKind !== 'touch-up') return { followsSessionId: null, followsBecause: null };
    const [latest] = await transaction.query<{ id: string }>(
      `SELECT id FROM session
       WHERE studio_id = $1 AND client_id = $2 AND procedure_id = $3 AND id <> $4
         AND visit_kind = 'first session' AND state = 'completed'
       ORDER BY completed_at DESC, id DESC LIMIT 1`,
      [studioId, visit.clientId, visit.procedureId, visit.sessionId],
    );
    return latest
      ? { followsSessionId: latest.id, followsBecause: 'latest completed first session of this procedure' }
      : { followsSessionId: null, followsBecause: null };
  }
}
