import { Injectable } from '@nestjs/common';
import type { KnownClient } from '../clients/clients.service.js';
import type { Transaction } from '../platform/database/transaction.js';
import { FollowedSessions } from './followed-sessions.service.js';
import type { Procedure } from './procedure.entity.js';
import { sealedAsBodyPlaceDetail } from './sealing-contexts.js';
import { Session } from './session.entity.js';
import { sealerOf } from './session-clients.service.js';
import type { WrittenSessionView } from './sessions.views.js';
import type { BodyPlace, VisitKind } from './vocabulary.js';

/** What is told of every session, however it comes to be recorded. */
interface VisitGiven {
  id: string;
  artistId: string;
  visitKind: VisitKind;
  bodyPlace?: BodyPlace;
  bodyPlaceDetail?: string | null;
  followsSessionId?: string | null;
}

/** Puts a session on record: planned, walked in, or told afterwards. */
@Injectable()
export class NewSessions {
  constructor(private readonly followedSessions: FollowedSessions) {}

  /**
   * @param course where in its life the session is, and when it got there
   * @throws Problem invalid-fields when the session it is to follow cannot be followed
   */
  async add(
    transaction: Transaction,
    { client, sealer }: KnownClient,
    procedure: Procedure,
    given: VisitGiven,
    course: Partial<Session>,
  ): Promise<{ session: Session; followsBecause: WrittenSessionView['followsBecause'] }> {
    const { studioId, recordedAt } = transaction;
    const { followsSessionId, followsBecause } = await this.followedSessions.find(transaction, {
      sessionId: given.id,
      clientId: client.id,
      procedureId: procedure.id,
      visitKind: given.visitKind,
      followsSessionId: given.followsSessionId,
    });
    const session: Session = {
      studioId,
      id: given.id,
      clientId: client.id,
      artistId: given.artistId,
      procedureId: procedure.id,
      visitKind: given.visitKind,
      bodyPlace: given.bodyPlace ?? procedure.bodyPlace,
      bodyPlaceDetailSealed: sealedDetail({ client, sealer }, given.id, given.bodyPlaceDetail ?? null),
      state: 'planned',
      bookedAt: null,
      plannedStart: null,
      plannedAt: recordedAt,
      inSetupAt: null,
      completedAt: null,
      cancelledAt: null,
      notAttendedAt: null,
      followsSessionId,
      recordedFrom: 'tray',
      signedBy: null,
      signedAt: null,
      complicationsSealed: null,
      healedResultSealed: null,
      version: 1,
      createdAt: recordedAt,
      bookingHash: null,
      ...course,
    };
    await transaction.insert(Session, session);
    return { session, followsBecause };
  }
}

/** @throws Problem wrong-state when the client was erased and there is something to seal */
export function sealedDetail(client: KnownClient, sessionId: string, detail: string | null): string | null {
  return detail === null ? null : sealerOf(client).seal(detail, sealedAsBodyPlaceDetail(sessionId));
}
