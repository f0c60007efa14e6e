import { Injectable } from '@nestjs/common';
import { Temporal } from 'temporal-polyfill';
import { In } from 'typeorm';
import type { KnownClient } from '../clients/clients.service.js';
import { ShownClients } from '../clients/shown-clients.service.js';
import { People } from '../identity/people.service.js';
import type { Actor } from '../platform/actor.js';
import { Database } from '../platform/database/database.js';
import { notFound } from '../platform/problem.js';
import { BlendAncestry } from './blend-ancestry.service.js';
import { lotsInUse } from './lots-in-use.js';
import { MixReader } from './mix-reader.service.js';
import { Procedure } from './procedure.entity.js';
import { sealedAsBodyPlaceDetail, sealedAsComplications, sealedAsHealedResult } from './sealing-contexts.js';
import { Session } from './session.entity.js';
import type {
  BlendedPigmentView,
  ClientRecordView,
  HealedResultView,
  SessionView,
  UseView,
} from './session-record.views.js';
import { SessionThings } from './session-things.service.js';

/** Everything recorded of one session, its sealed fields opened. Read only: nothing of it is kept anywhere. */
@Injectable()
export class SessionRecord {
  constructor(
    private readonly database: Database,
    private readonly shownClients: ShownClients,
    private readonly people: People,
    private readonly things: SessionThings,
    private readonly mixReader: MixReader,
    private readonly ancestry: BlendAncestry,
  ) {}

  async show(
    actor: Actor,
    sessionId: string,
    what: 'session' | 'session record' = 'session',
  ): Promise<SessionView> {
    const { studioId } = actor;
    const session = await this.database.reader.manager.findOneBy(Session, { studioId, id: sessionId });
    if (!session) throw notFound('session', sessionId);
    const known = await this.shownClients.one(actor, session.clientId, what);
    const [view] = await this.of(known, [session]);
    if (!view) throw notFound('session', sessionId);
    return view;
  }

  /**
   * Sessions of one client, a fixed number of questions for any number of them.
   * @param known the client as they may be shown
   */
  async of(known: KnownClient, sessions: readonly Session[]): Promise<SessionView[]> {
    const { client, sealer } = known;
    const { studioId } = client;
    const ids = sessions.map((session) => session.id);
    if (ids.length === 0) return [];
    const procedures = await this.database.reader.manager.findBy(Procedure, {
      studioId,
      id: In([...new Set(sessions.map((session) => session.procedureId))]),
    });
    const procedureNames = new Map(procedures.map(({ id, name }) => [id, name]));
    const names = await this.people.namesOf(
      studioId,
      sessions.flatMap(({ artistId, signedBy }) => (signedBy === null ? [artistId] : [artistId, signedBy])),
    );
    const person = (id: string) => ({ id, name: names.get(id) ?? null });
    const open = (sealed: string | null, context: string) => sealer?.open(sealed, context) ?? null;
    const mixes = await this.mixReader.views(this.database.read, studioId, ids);
    const trays = await this.things.traysOf(studioId, ids);
    const uses = await this.things.usesOf(studioId, ids, sealer);
    const name = this.shownClients.nameOf(known);
    return sessions.map((session): SessionView => {
      const healed = open(session.healedResultSealed, sealedAsHealedResult(session.id));
      return {
        id: session.id,
        state: session.state,
        version: session.version,
        client: { id: client.id, reference: client.reference, name },
        artist: person(session.artistId),
        procedure: { id: session.procedureId, name: procedureNames.get(session.procedureId) ?? '' },
        visitKind: session.visitKind,
        bodyPlace: session.bodyPlace,
        bodyPlaceDetail: open(session.bodyPlaceDetailSealed, sealedAsBodyPlaceDetail(session.id)),
        bookedAt: session.bookedAt,
        plannedStart: session.plannedStart,
        plannedAt: session.plannedAt,
        inSetupAt: session.inSetupAt,
        completedAt: session.completedAt,
        cancelledAt: session.cancelledAt,
        notAttendedAt: session.notAttendedAt,
        followsSessionId: session.followsSessionId,
        recordedFrom: session.recordedFrom,
        signedBy: session.signedBy === null ? null : person(session.signedBy),
        signedAt: session.signedAt,
        complications: open(session.complicationsSealed, sealedAsComplications(session.id)),
        healedResult: healed === null ? null : (JSON.parse(healed) as HealedResultView),
        tray: trays.get(session.id) ?? [],
        mixes: (mixes.get(session.id) ?? []).filter((mix) => mix.parts.length > 0),
        uses: uses.get(session.id) ?? [],
      };
    });
  }

  /** The visit as a written client record asks for it. */
  async record(actor: Actor, sessionId: string): Promise<ClientRecordView> {
    const session = await this.show(actor, sessionId, 'session record');
    const standing = session.uses.filter((use) => use.reversal === null);
    const pigments = standing.filter((use) => use.kind === 'pigment');
    const blendedPigments = await this.blendedPigments(actor.studioId, pigments);
    const occurredAt = session.inSetupAt ?? session.completedAt ?? session.plannedStart;
    return {
      sessionId: session.id,
      client: session.client,
      occurredAt,
      localDateAndTime: occurredAt === null ? null : localDateAndTime(occurredAt, actor.timeZone),
      timeZone: actor.timeZone,
      visitKind: session.visitKind,
      procedureName: session.procedure.name,
      bodyPlace: session.bodyPlace,
      bodyPlaceDetail: session.bodyPlaceDetail,
      instruments: standing.filter((use) => use.kind === 'cartridge'),
      pigments,
      blendedPigments,
      others: standing.filter((use) => use.kind === 'consumable'),
      reversed: session.uses.filter((use) => use.reversal !== null),
      complications: session.complications,
      artist: session.artist,
      signature:
        session.signedBy === null
          ? null
          : { personId: session.signedBy.id, name: session.signedBy.name, signedAt: session.signedAt },
      recordedFrom: session.recordedFrom,
    };
  }

  /** What those of the pigments were made of that are house blends. */
  async blendedPigments(studioId: string, pigments: readonly UseView[]): Promise<BlendedPigmentView[]> {
    const pourings = await this.ancestry.pouringsInto(
      studioId,
      pigments.map((use) => use.lotId),
    );
    const lotsOf = lotsInUse(pourings);
    return pigments.flatMap((use) => {
      const lots = lotsOf(use).filter((lot) => !lot.direct);
      return lots.length === 0 ? [] : [{ useId: use.id, lots }];
    });
  }
}

function localDateAndTime(instant: string, timeZone: string): string {
  const local = Temporal.Instant.from(instant).toZonedDateTimeISO(timeZone);
  return `${local.toPlainDate()} ${local.toPlainTime().toString({ smallestUnit: 'minute' })}`;
}
