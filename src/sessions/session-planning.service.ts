import { Injectable } from '@nestjs/common';
import { Temporal } from 'temporal-polyfill';
import { Clients, erased, type KnownClient } from '../clients/clients.service.js';
import { Person } from '../identity/person.entity.js';
import type { Actor } from '../platform/actor.js';
import { Database } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/transaction.js';
import { Transactions } from '../platform/database/transactions.js';
import { invalidField, notFound, Problem } from '../platform/problem.js';
import { whyNotFollowed } from './followed-session.js';
import { Procedure } from './procedure.entity.js';
import { Procedures } from './procedures.service.js';
import { bodyPlaceDetailPlace } from './sealed-places.js';
import { Session } from './session.entity.js';
import { decideStep } from './session-states.js';
import type { ChangeSessionDto, PlanSessionDto } from './sessions.dto.js';
import type { WrittenSessionView } from './sessions.views.js';
import type { VisitKind } from './vocabulary.js';

/** A session may be planned so far ahead; a refresh is due after one to three years. */
const maximumPlanAheadDays = 1_500;
/** A plan made while there was no network may arrive so much later. */
const maximumPlanLagDays = 31;

export interface Followed {
  followsSessionId: string | null;
  followsBecause: WrittenSessionView['followsBecause'];
}

/** Plans sessions and changes plans. */
@Injectable()
export class SessionPlanning {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly clients: Clients,
    private readonly procedures: Procedures,
  ) {}

  async plan(actor: Actor, dto: PlanSessionDto): Promise<WrittenSessionView> {
    const { studioId } = actor;
    const known = await this.clients.known(studioId, dto.clientId);
    if (!known.sealer) throw erased(dto.clientId);
    return this.transactions.write(
      actor,
      { id: dto.id, action: 'sessions.plan', subject: { kind: 'session', id: dto.id }, content: dto },
      async (transaction) => {
        const { recordedAt } = transaction;
        const procedure = await this.offered(transaction, dto.procedureId);
        await this.refuseAbsentArtist(transaction, dto.artistId);
        const followed = await this.followed(transaction, { ...dto, sessionId: dto.id });
        const session: Session = {
          ...blankSession(studioId, dto.id, recordedAt),
          clientId: dto.clientId,
          artistId: dto.artistId,
          procedureId: dto.procedureId,
          visitKind: dto.visitKind,
          bodyPlace: dto.bodyPlace ?? procedure.bodyPlace,
          bodyPlaceDetailSealed: sealDetail(known, dto.id, dto.bodyPlaceDetail ?? null),
          bookedAt: bookedInstant(dto.bookedAt ?? null, recordedAt),
          plannedStart: plannedInstant(dto.plannedStart, recordedAt),
          followsSessionId: followed.followsSessionId,
        };
        await transaction.insert(Session, session);
        return written(session, known.client.reference, followed.followsBecause);
      },
    );
  }

  async change(actor: Actor, sessionId: string, dto: ChangeSessionDto): Promise<WrittenSessionView> {
    const { studioId } = actor;
    const before = await this.database.reader.manager.findOneBy(Session, { studioId, id: sessionId });
    if (!before) throw notFound('session', sessionId);
    const known = await this.clients.known(studioId, before.clientId);
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'sessions.change-plan',
        subject: { kind: 'session', id: sessionId },
        content: { sessionId, ...dto },
      },
      async (transaction) => {
        const present = await lockedSession(transaction, sessionId);
        const decision = decideStep('change plan', { state: present.state, onTray: 0 });
        if (!decision.allowed) throw new Problem(409, 'wrong-state', decision.message);
        const { id: _, version, bodyPlaceDetail, bookedAt, plannedStart, followsSessionId, ...fields } = dto;
        if (fields.procedureId !== undefined) await this.offered(transaction, fields.procedureId);
        if (fields.artistId !== undefined) await this.refuseAbsentArtist(transaction, fields.artistId);
        const changes: Partial<Session> = { ...fields };
        if (bodyPlaceDetail !== undefined) {
          changes.bodyPlaceDetailSealed = sealDetail(known, sessionId, bodyPlaceDetail);
        }
        if (bookedAt !== undefined) changes.bookedAt = bookedInstant(bookedAt, transaction.recordedAt);
        if (plannedStart !== undefined) {
          changes.plannedStart = plannedInstant(plannedStart, transaction.recordedAt);
        }
        let followsBecause: Followed['followsBecause'] = null;
        if (followsSessionId !== undefined) {
          if (followsSessionId === null) changes.followsSessionId = null;
          else {
            const followed = await this.followed(transaction, { ...present, sessionId, followsSessionId });
            changes.followsSessionId = followed.followsSessionId;
            followsBecause = followed.followsBecause;
          }
        }
        const session = await transaction.change(
          Session,
          'session',
          { studioId, id: sessionId },
          version,
          changes,
        );
        transaction.note({ fields: Object.keys(dto).filter((field) => !['id', 'version'].includes(field)) });
        return written(session, known.client.reference, followsBecause);
      },
    );
  }

  /**
   * The procedure, provided it is still offered.
   * @throws Problem not-found, wrong-state
   */
  async offered(transaction: Transaction, procedureId: string): Promise<Procedure> {
    const procedure = await this.procedures.find(transaction, procedureId);
    if (procedure.archivedAt === null) return procedure;
    throw new Problem(
      409,
      'wrong-state',
      `"${procedure.name}" is no longer offered. Choose another procedure, or offer it again first.`,
    );
  }

  /** @throws Problem not-found, wrong-state when the person works here no more */
  async refuseAbsentArtist(transaction: Transaction, artistId: string): Promise<void> {
    const { studioId } = transaction;
    const artist = await transaction.manager.findOneBy(Person, { studioId, id: artistId });
    if (!artist) throw notFound('person', artistId);
    if (artist.state === 'active') return;
    throw new Problem(
      409,
      'wrong-state',
      'The artist named works here no more. Choose someone who does; what happened earlier goes in as a late record.',
    );
  }

  /**
   * The session that a visit follows: the one named, else, for a touch-up, the client's latest completed first session
   * of the procedure.
   * @throws Problem invalid-fields when the one named cannot be followed
   */
  async followed(
    transaction: Transaction,
    visit: {
      sessionId: string;
      clientId: string;
      procedureId: string;
      visitKind: VisitKind;
      followsSessionId?: string | null;
    },
  ): Promise<Followed> {
    const { studioId } = transaction;
    const { followsSessionId } = visit;
    if (followsSessionId) {
      const named = await transaction.manager.findOneBy(Session, { studioId, id: followsSessionId });
      const whyNot = named
        ? whyNotFollowed(visit, { sessionId: named.id, clientId: named.clientId, state: named.state })
        : `This studio has no session with the id ${followsSessionId}. Name one of this client, or leave it out.`;
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
      ? {
          followsSessionId: latest.id,
          followsBecause: 'latest completed first session of this procedure',
        }
      : { followsSessionId: null, followsBecause: null };
  }
}

/** A session of which nothing is known yet but when it was entered. */
export function blankSession(studioId: string, id: string, recordedAt: string) {
  return {
    studioId,
    id,
    bodyPlaceDetailSealed: null,
    state: 'planned' as const,
    bookedAt: null,
    plannedStart: null,
    plannedAt: recordedAt,
    inSetupAt: null,
    completedAt: null,
    cancelledAt: null,
    notAttendedAt: null,
    followsSessionId: null,
    recordedFrom: 'tray' as const,
    signedBy: null,
    signedAt: null,
    complicationsSealed: null,
    healedResultSealed: null,
    version: 1,
    createdAt: recordedAt,
  };
}

/**
 * The session, locked until the end of the transaction.
 * @throws Problem not-found
 */
export async function lockedSession(transaction: Transaction, sessionId: string): Promise<Session> {
  await transaction.lock('session', [sessionId]);
  const session = await transaction.manager.findOneBy(Session, {
    studioId: transaction.studioId,
    id: sessionId,
  });
  if (!session) throw notFound('session', sessionId);
  return session;
}

export function written(
  session: Session,
  clientReference: string,
  followsBecause: WrittenSessionView['followsBecause'] = null,
): WrittenSessionView {
  const { id, state, version, clientId, followsSessionId } = session;
  return { id, state, version, clientId, clientReference, followsSessionId, followsBecause };
}

/** @throws Problem wrong-state when the client was erased and there is something to seal */
export function sealDetail(
  { client, sealer }: KnownClient,
  sessionId: string,
  detail: string | null,
): string | null {
  if (detail === null) return null;
  if (!sealer) throw erased(client.id);
  return sealer.seal(detail, bodyPlaceDetailPlace(sessionId));
}

function bookedInstant(given: string | null, recordedAt: string): string | null {
  if (given === null) return null;
  const booked = instantOf('bookedAt', given);
  if (Temporal.Instant.compare(booked, recordedAt) > 0) {
    throw new Problem(400, 'unusable-time', `bookedAt ${given} lies in the future. Check the date.`);
  }
  return canonical(booked);
}

function plannedInstant(given: string, recordedAt: string): string {
  const planned = instantOf('plannedStart', given);
  const recorded = Temporal.Instant.from(recordedAt);
  if (Temporal.Instant.compare(planned, recorded.subtract({ hours: 24 * maximumPlanLagDays })) < 0) {
    throw new Problem(
      400,
      'unusable-time',
      `plannedStart ${given} lies more than ${maximumPlanLagDays} days back. What took place already goes in as a late record.`,
    );
  }
  if (Temporal.Instant.compare(planned, recorded.add({ hours: 24 * maximumPlanAheadDays })) > 0) {
    throw new Problem(
      400,
      'unusable-time',
      `plannedStart ${given} lies more than ${maximumPlanAheadDays} days ahead. Check the year.`,
    );
  }
  return canonical(planned);
}

function instantOf(field: string, given: string): Temporal.Instant {
  try {
    return Temporal.Instant.from(given);
  } catch {
    throw new Problem(
      400,
      'unusable-time',
      `${field} "${given}" is not an instant. Write it as 2026-03-01T09:30:00Z, with Z or an offset.`,
    );
  }
}

function canonical(instant: Temporal.Instant): string {
  return instant.toString({ fractionalSecondDigits: 3 });
}
