import { Injectable } from '@nestjs/common';
import { TreatedClients } from '../clients/treated-clients.service.js';
import { People } from '../identity/people.service.js';
import type { Actor } from '../platform/actor.js';
import { Transactions } from '../platform/database/transactions.js';
import { Problem } from '../platform/problem.js';
import { FollowedSessions } from './followed-sessions.service.js';
import { NewSessions, sealedDetail } from './new-sessions.service.js';
import { bookedTime, type PlanTime, plannedTime } from './plan-times.js';
import { Procedures } from './procedures.service.js';
import { ProspectJudge } from './prospects/prospect-judge.service.js';
import { Session } from './session.entity.js';
import { SessionClients } from './session-clients.service.js';
import { SessionLock } from './session-lock.service.js';
import type { ChangeSessionDto, PlanSessionDto } from './sessions.dto.js';
import type { WrittenSessionView } from './sessions.views.js';
import { writtenSession } from './written-session.js';

/** Plans sessions and changes plans. */
@Injectable()
export class SessionPlanning {
  constructor(
    private readonly transactions: Transactions,
    private readonly treatedClients: TreatedClients,
    private readonly people: People,
    private readonly procedures: Procedures,
    private readonly sessionClients: SessionClients,
    private readonly newSessions: NewSessions,
    private readonly followedSessions: FollowedSessions,
    private readonly lock: SessionLock,
    private readonly prospects: ProspectJudge,
  ) {}

  async plan(actor: Actor, dto: PlanSessionDto): Promise<WrittenSessionView> {
    const treated = await this.treatedClients.choose(actor.studioId, { clientId: dto.clientId });
    return this.transactions.write(
      actor,
      { id: dto.id, action: 'sessions.plan', subject: { kind: 'session', id: dto.id }, content: dto },
      async (transaction) => {
        const { recordedAt } = transaction;
        const procedure = await this.procedures.offered(transaction, dto.procedureId);
        await this.people.require(transaction, [dto.artistId], { atWork: true });
        const known = await this.treatedClients.inside(transaction, treated);
        const { session, followsBecause } = await this.newSessions.add(transaction, known, procedure, dto, {
          bookedAt: dto.bookedAt == null ? null : usableTime(bookedTime(dto.bookedAt, recordedAt)),
          plannedStart: usableTime(plannedTime(dto.plannedStart, recordedAt)),
        });
        await this.prospects.mark(transaction);
        return writtenSession(session, known.client.reference, followsBecause);
      },
    );
  }

  async change(actor: Actor, sessionId: string, dto: ChangeSessionDto): Promise<WrittenSessionView> {
    const { studioId } = actor;
    const known = await this.sessionClients.of(studioId, sessionId);
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'sessions.change-plan',
        subject: { kind: 'session', id: sessionId },
        content: { sessionId, ...dto },
      },
      async (transaction) => {
        const { recordedAt } = transaction;
        const present = await this.lock.row(transaction, sessionId);
        this.lock.decide('change plan', present.state);
        const { id: _, version, bodyPlaceDetail, bookedAt, plannedStart, followsSessionId, ...fields } = dto;
        if (fields.procedureId !== undefined) await this.procedures.offered(transaction, fields.procedureId);
        if (fields.artistId !== undefined) {
          await this.people.require(transaction, [fields.artistId], { atWork: true });
        }
        const changes: Partial<Session> = { ...fields };
        if (bodyPlaceDetail !== undefined) {
          changes.bodyPlaceDetailSealed = sealedDetail(known, sessionId, bodyPlaceDetail);
        }
        if (bookedAt !== undefined) {
          changes.bookedAt = bookedAt === null ? null : usableTime(bookedTime(bookedAt, recordedAt));
        }
        if (plannedStart !== undefined)
          changes.plannedStart = usableTime(plannedTime(plannedStart, recordedAt));
        let followsBecause: WrittenSessionView['followsBecause'] = null;
        if (followsSessionId === null) changes.followsSessionId = null;
        else if (followsSessionId !== undefined) {
          const visit = { ...present, sessionId, followsSessionId };
          const followed = await this.followedSessions.find(transaction, visit);
          changes.followsSessionId = followed.followsSessionId;
          followsBecause = followed.followsBecause;
        }
        const session = await transaction.change(
          Session,
          'session',
          { studioId, id: sessionId },
          version,
          changes,
        );
        transaction.note({ fields: Object.keys(dto).filter((field) => !['id', 'version'].includes(field)) });
        await this.prospects.mark(transaction);
        return writtenSession(session, known.client.reference, followsBecause);
      },
    );
  }
}

/** @throws Problem unusable-time */
export function usableTime(time: PlanTime): string {
  if ('error' in time) throw new Problem(400, 'unusable-time', time.error);
  return time.instant;
}
