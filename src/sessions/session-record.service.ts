import { Injectable } from '@nestjs/common';
import { Temporal } from 'temporal-polyfill';
import { Clients } from '../clients/clients.service.js';
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
import type { ClientRecordView, HealedResultView, SessionView } from './session-record.views.js';
import { SessionThings } from './session-things.service.js';

/** Everything recorded of one session, its sealed fields opened. Read only: nothing of it is kept anywhere. */
@Injectable()
export class SessionRecord {
  constructor(
    private readonly database: Database,
    private readonly clients: Clients,
    private readonly people: People,
    private readonly things: SessionThings,
    private readonly mixReader: MixReader,
    private readonly ancestry: BlendAncestry,
  ) {}

  async show(actor: Actor, sessionId: string): Promise<SessionView> {
    const { studioId } = actor;
    const { manager } = this.database.reader;
    const session = await manager.findOneBy(Session, { studioId, id: sessionId });
    if (!session) throw notFound('session', sessionId);
    const known = await this.clients.known(studioId, session.clientId);
    const procedure = await manager.findOneBy(Procedure, { studioId, id: session.procedureId });
    const names = await this.people.namesOf(
      studioId,
      session.signedBy === null ? [session.artistId] : [session.artistId, session.signedBy],
    );
    const person = (id: string) => ({ id, name: names.get(id) ?? null });
    const open = (sealed: string | null, context: string) => known.sealer?.open(sealed, context) ?? null;
    const mixes =
      (await this.mixReader.views(this.database.read, studioId, [sessionId])).get(sessionId) ?? [];
    const healed = open(session.healedResultSealed, sealedAsHealedResult(sessionId));
    const { client } = known;
    return {
      id: session.id,
      state: session.state,
      version: session.version,
      client: { id: client.id, reference: client.reference, name: this.clients.nameOf(known) },
      artist: person(session.artistId),
      procedure: { id: session.procedureId, name: procedure?.name ?? '' },
      visitKind: session.visitKind,
      bodyPlace: session.bodyPlace,
      bodyPlaceDetail: open(session.bodyPlaceDetailSealed, sealedAsBodyPlaceDetail(sessionId)),
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
      complications: open(session.complicationsSealed, sealedAsComplications(sessionId)),
      healedResult: healed === null ? null : (JSON.parse(healed) as HealedResultView),
      tray: await this.things.trayOf(studioId, sessionId),
      mixes: mixes.filter((mix) => mix.parts.length > 0),
      uses: (await this.things.usesOf(studioId, [sessionId], known.sealer)).get(sessionId) ?? [],
    };
  }

  /** The visit as a written client record asks for it. */
  async record(actor: Actor, sessionId: string): Promise<ClientRecordView> {
    const session = await this.show(actor, sessionId);
    const standing = session.uses.filter((use) => use.reversal === null);
    const pigments = standing.filter((use) => use.kind === 'pigment');
    const pourings = await this.ancestry.pouringsInto(
      actor.studioId,
      pigments.map((use) => use.lotId),
    );
    const lotsOf = lotsInUse(pourings);
    const blendedPigments = pigments.flatMap((use) => {
      const lots = lotsOf(use).filter((lot) => !lot.direct);
      return lots.length === 0 ? [] : [{ useId: use.id, lots }];
    });
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
}

function localDateAndTime(instant: string, timeZone: string): string {
  const local = Temporal.Instant.from(instant).toZonedDateTimeISO(timeZone);
  return `${local.toPlainDate()} ${local.toPlainTime().toString({ smallestUnit: 'minute' })}`;
}
