import { Injectable } from '@nestjs/common';
import { In } from 'typeorm';
import { productLabel } from '../catalogue/product-label.js';
import type { KnownClient } from '../clients/clients.service.js';
import { ShownClients } from '../clients/shown-clients.service.js';
import { localDay } from '../identity/local-day.js';
import type { Actor } from '../platform/actor.js';
import { Database } from '../platform/database/database.js';
import { notFound, Problem } from '../platform/problem.js';
import { containerCandidate } from '../stock/container-candidate.js';
import { type ContainerFact, ContainerFacts } from '../stock/container-facts.service.js';
import { assumedOpenedLife } from '../stock/container-views.service.js';
import { MixReader } from './mix-reader.service.js';
import { mixSums } from './mix-totals.js';
import type { MixPartView } from './mixes.views.js';
import { Procedure } from './procedure.entity.js';
import { sealedAsHealedResult } from './sealing-contexts.js';
import { Session } from './session.entity.js';
import type { HealedResultView } from './session-record.views.js';
import { SessionThings } from './session-things.service.js';
import type { FollowingVisitView, PigmentAtTouchUpView, TouchUpView } from './touch-up.views.js';
import { mixAtTouchUp, type PartOfMix, type TouchUpWindow, touchUpWindow } from './touch-up-window.js';

const maximumFirstSessions = 50;

type CompletedSession = Session & { completedAt: string };
type Pigment = Omit<MixPartView, 'isThinner'>;

interface Circumstances {
  window: TouchUpWindow;
  timeZone: string;
  assumedOpenedLife: string | null;
  facts: readonly ContainerFact[];
}

/** What a touch-up starts from: the earlier visit's mixes, and whether the same bottles last until then. */
@Injectable()
export class TouchUps {
  constructor(
    private readonly database: Database,
    private readonly shownClients: ShownClients,
    private readonly things: SessionThings,
    private readonly mixReader: MixReader,
    private readonly containerFacts: ContainerFacts,
  ) {}

  /** Of the session that the given one follows, else of the given one. */
  async ofSession(actor: Actor, sessionId: string): Promise<TouchUpView> {
    const { studioId } = actor;
    const { manager } = this.database.reader;
    const given = await manager.findOneBy(Session, { studioId, id: sessionId });
    if (!given) throw notFound('session', sessionId);
    const earlier =
      given.followsSessionId === null
        ? given
        : await manager.findOneBy(Session, { studioId, id: given.followsSessionId });
    if (!earlier || !isCompleted(earlier)) {
      throw new Problem(
        409,
        'wrong-state',
        `The session ${earlier?.id ?? sessionId} is ${earlier?.state ?? 'unknown'}. A touch-up is prepared from a completed session; complete it first.`,
      );
    }
    const known = await this.shownClients.one(actor, earlier.clientId, 'touch-up');
    const [view] = await this.views(actor, known, [earlier]);
    if (!view) throw notFound('session', sessionId);
    return view;
  }

  /** Of every completed first session of a client, the latest first. */
  async ofClient(actor: Actor, clientId: string): Promise<TouchUpView[]> {
    const { studioId } = actor;
    const known = await this.shownClients.one(actor, clientId, 'touch-up');
    const sessions = await this.database.reader.manager.find(Session, {
      where: { studioId, clientId, state: 'completed', visitKind: 'first session' },
      order: { completedAt: 'DESC', id: 'DESC' },
      take: maximumFirstSessions,
    });
    return this.views(actor, known, sessions.filter(isCompleted));
  }

  private async views(
    actor: Actor,
    known: KnownClient,
    sessions: CompletedSession[],
  ): Promise<TouchUpView[]> {
    if (sessions.length === 0) return [];
    const { studioId, timeZone } = actor;
    const ids = sessions.map((session) => session.id);
    const assumed = await assumedOpenedLife(this.database.read, studioId);
    const procedures = await this.proceduresOf(studioId, sessions);
    const mixes = await this.mixReader.views(this.database.read, studioId, ids);
    const uses = await this.things.usesOf(studioId, ids, known.sealer);
    const visits = await this.visitsAfter(studioId, ids);
    const lotIds = [...uses.values()].flatMap((ofSession) => ofSession.map(({ lotId }) => lotId));
    const facts = await this.containerFacts.load(this.database.read, studioId, {
      lotIds: [...new Set(lotIds)],
      ended: true,
    });
    return sessions.flatMap((session) => {
      const procedure = procedures.get(session.procedureId);
      if (!procedure) return [];
      const completedOn = localDay(session.completedAt, timeZone);
      const window = touchUpWindow(completedOn, {
        fromDays: procedure.touchUpFromDays,
        toDays: procedure.touchUpToDays,
      });
      const circumstances = { window, timeZone, assumedOpenedLife: assumed, facts };
      const standing = (uses.get(session.id) ?? []).filter((use) => use.reversal === null);
      // What was poured into a cup is no memory of the visit unless it was used.
      const mixed = mixSums(
        standing.flatMap((use) => (use.mixId === null ? [] : [{ ...pigmentOf(use), mixId: use.mixId }])),
      );
      const healed = known.sealer?.open(session.healedResultSealed, sealedAsHealedResult(session.id)) ?? null;
      return [
        {
          sessionId: session.id,
          clientId: session.clientId,
          artistId: session.artistId,
          procedureId: session.procedureId,
          procedureName: procedure.name,
          visitKind: session.visitKind,
          completedOn,
          window,
          mixes: (mixes.get(session.id) ?? []).flatMap(({ id, label }) => {
            const parts = mixed.filter((part) => part.mixId === id).map(pigmentOf);
            return parts.length === 0 ? [] : [{ id, label, parts: atTouchUp(parts, circumstances) }];
          }),
          pigments: atTouchUp(
            standing.filter((use) => use.kind === 'pigment' && use.mixId === null).map(pigmentOf),
            circumstances,
          ),
          instruments: standing
            .filter((use) => use.kind === 'cartridge')
            .map(({ productId, makerName, productName, pieces }) => ({
              productId,
              makerName,
              productName,
              pieces,
            })),
          healedResult: healed === null ? null : (JSON.parse(healed) as HealedResultView),
          visits: visits.get(session.id) ?? [],
        },
      ];
    });
  }

  private async proceduresOf(studioId: string, sessions: Session[]): Promise<Map<string, Procedure>> {
    const ids = [...new Set(sessions.map((session) => session.procedureId))];
    const procedures = await this.database.reader.manager.findBy(Procedure, { studioId, id: In(ids) });
    return new Map(procedures.map((procedure) => [procedure.id, procedure]));
  }

  private async visitsAfter(studioId: string, ids: string[]): Promise<Map<string, FollowingVisitView[]>> {
    const sessions = await this.database.reader.manager.find(Session, {
      where: { studioId, followsSessionId: In(ids) },
      order: { plannedStart: 'ASC', id: 'ASC' },
    });
    const visits = new Map<string, FollowingVisitView[]>();
    for (const { id, visitKind, state, plannedStart, completedAt, followsSessionId } of sessions) {
      if (followsSessionId === null) continue;
      const visit = { sessionId: id, visitKind, state, plannedStart, completedAt };
      visits.set(followsSessionId, [...(visits.get(followsSessionId) ?? []), visit]);
    }
    return visits;
  }
}

function isCompleted(session: Session): session is CompletedSession {
  return session.state === 'completed' && session.completedAt !== null;
}

function pigmentOf(used: Pigment): Pigment {
  const { productId, makerName, productName, shade, lotId, lotCode, containerId, drops, microlitres } = used;
  return { productId, makerName, productName, shade, lotId, lotCode, containerId, drops, microlitres };
}

function atTouchUp(pigments: readonly Pigment[], circumstances: Circumstances): PigmentAtTouchUpView[] {
  const { window, timeZone, assumedOpenedLife, facts } = circumstances;
  const partOf = (fact: ContainerFact): PartOfMix => ({
    ...containerCandidate(fact, assumedOpenedLife, timeZone),
    lotId: fact.lotId,
    containerId: fact.containerId,
    label: productLabel(fact) + (fact.code === null ? '' : ` lot ${fact.code}`),
  });
  return pigments.flatMap((pigment) => {
    const itself = facts.find((fact) => fact.containerId === pigment.containerId);
    if (!itself) return [];
    const others = facts.filter((fact) => fact.lotId === pigment.lotId && fact !== itself);
    const [judged, ...otherJudged] = mixAtTouchUp([itself, ...others].map(partOf), window, timeZone);
    if (!judged) return [];
    const { usableAtStart, usableAtEnd, lastDay, openedLifeFrom, whyNot } = judged;
    return [
      {
        ...pigment,
        usableAtStart,
        usableAtEnd,
        lastDay,
        openedLifeFrom,
        whyNot,
        otherContainerIds: otherJudged.flatMap((other) =>
          other.usableAtStart === 'no' || other.containerId === null ? [] : [other.containerId],
        ),
      },
    ];
  });
}
