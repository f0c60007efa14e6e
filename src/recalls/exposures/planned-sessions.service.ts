import { Injectable } from '@nestjs/common';
import { localDay } from '../../identity/local-day.js';
import { People } from '../../identity/people.service.js';
import type { Actor } from '../../platform/actor.js';
import { Clock } from '../../platform/clock.js';
import { Database, placeholders } from '../../platform/database/database.js';
import { defaultPageSize, pageOf } from '../../platform/page.js';
import { invalidField } from '../../platform/problem.js';
import type { PageDto } from '../../platform/request.dto.js';
import { instantsOfDays } from '../../sessions/day-range.js';
import { RecallRegister } from '../recall-register.service.js';
import { reachedLotsOfRecall } from './exposed-uses.query.js';
import { ExposureQuestions } from './exposure-question.service.js';
import { type LotName, LotNames } from './lot-names.service.js';
import { type KitLineOfSession, PlannedKits } from './planned-kits.service.js';
import type {
  FollowedExposureView,
  PlannedLotView,
  PlannedReason,
  PlannedSessionsView,
  PlannedSessionView,
} from './planned-sessions.views.js';

/** So many sessions to come are looked through for their kit lists, the next ones first. */
const mostPlanned = 1_000;
const sessionsPerRead = 500;

interface ReachedLot {
  lotId: string;
  productId: string;
  affected: number;
}

interface LaidOut {
  sessionId: string;
  trayLineId: string | null;
  containerId: string;
  lotId: string;
  microlitresInMixes: number;
}

interface Followed {
  sessionId: string;
  followsSessionId: string;
  firstAt: string;
  certain: number;
}

type SessionRow = Omit<
  PlannedSessionView,
  'day' | 'artistName' | 'reasons' | 'onTray' | 'follows' | 'kitLines'
>;

/** All that was found of sessions in setup and planned, by session. */
interface Found {
  laidOut: LaidOut[];
  followed: Followed[];
  kitLines: KitLineOfSession[];
}

/** Sessions in setup or planned that would use a lot of a recall: it is on the tray, was in the mix before, or is next on the shelf. */
@Injectable()
export class PlannedSessions {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly register: RecallRegister,
    private readonly questions: ExposureQuestions,
    private readonly kits: PlannedKits,
    private readonly lotNames: LotNames,
    private readonly people: People,
  ) {}

  /** @throws Problem not-found; invalid-fields when `after` is none of these sessions */
  async list(actor: Actor, recallId: string, page: PageDto): Promise<PlannedSessionsView> {
    const { read } = this.database;
    const { studioId } = actor;
    await this.register.find(read, studioId, recallId);
    const reached = await this.reached(studioId, recallId);
    const { planned, more } = await this.planned(actor);
    const now = this.clock.now();
    const products = new Map(reached.map(({ lotId, productId }) => [lotId, productId]));
    const found: Found = {
      laidOut: await this.laidOut(studioId, recallId),
      followed: await this.followed(studioId, recallId),
      kitLines: await this.kits.lines(read, actor, products, planned, now),
    };
    const sessions = await this.sessions(studioId, found);
    const start =
      page.after === undefined ? 0 : sessions.findIndex(({ sessionId }) => sessionId === page.after) + 1;
    if (start === 0 && page.after !== undefined) {
      throw invalidField(
        'after',
        `The session ${page.after} is not among these, or not any more. Read them anew from the first page.`,
      );
    }
    const { shown, next } = pageOf(
      sessions.slice(start),
      page.limit ?? defaultPageSize,
      ({ sessionId }) => sessionId,
    );
    return {
      sessions: sessions.length,
      items: await this.views(actor, shown, found, reached),
      next,
      morePlanned: more,
    };
  }

  private reached(studioId: string, recallId: string): Promise<ReachedLot[]> {
    return this.database.read<ReachedLot>(
      `WITH RECURSIVE ${reachedLotsOfRecall}
       SELECT lot.id AS "lotId", lot.product_id AS "productId", reached_lot.affected
       FROM reached_lot CROSS JOIN lot WHERE lot.studio_id = $1 AND lot.id = reached_lot.lot_id`,
      [studioId, recallId],
    );
  }

  /** Planned from today on, or without a day; those that should have been before were not held, and nobody said so. */
  private async planned({ studioId, timeZone }: Actor): Promise<{ planned: string[]; more: boolean }> {
    const today = localDay(this.clock.now(), timeZone);
    const from = instantsOfDays(today, today, timeZone)?.from ?? '';
    const rows = await this.database.read<{ id: string }>(
      `SELECT id FROM session
       WHERE studio_id = $1 AND state = 'planned' AND (planned_start IS NULL OR planned_start >= $2)
       ORDER BY CASE WHEN planned_start IS NULL THEN 1 ELSE 0 END, planned_start, id LIMIT ${mostPlanned + 1}`,
      [studioId, from],
    );
    return { planned: rows.slice(0, mostPlanned).map(({ id }) => id), more: rows.length > mostPlanned };
  }

  /** On trays, and in cups although it was taken off the tray again. */
  private laidOut(studioId: string, recallId: string): Promise<LaidOut[]> {
    return this.database.read<LaidOut>(
      `WITH RECURSIVE ${reachedLotsOfRecall},
       laid (session_id, tray_line_id, container_id, lot_id) AS (
         SELECT session_id, id, container_id, lot_id FROM tray_line
         WHERE studio_id = $1 AND state = 'on tray' AND lot_id IN (SELECT lot_id FROM reached_lot)),
       mixed (session_id, container_id, lot_id, microlitres) AS (
         SELECT mix_component.session_id, mix_component.container_id, mix_component.lot_id,
           sum(mix_component.microlitres)
         FROM session CROSS JOIN mix_component
         WHERE session.studio_id = $1 AND session.state = 'in setup' AND mix_component.studio_id = $1
           AND mix_component.session_id = session.id
           AND mix_component.lot_id IN (SELECT lot_id FROM reached_lot)
         GROUP BY mix_component.session_id, mix_component.container_id, mix_component.lot_id)
       SELECT laid.session_id AS "sessionId", laid.tray_line_id AS "trayLineId", laid.container_id AS "containerId",
         laid.lot_id AS "lotId", coalesce(mixed.microlitres, 0) AS "microlitresInMixes"
       FROM laid LEFT JOIN mixed
         ON mixed.session_id = laid.session_id AND mixed.container_id = laid.container_id
       UNION ALL
       SELECT mixed.session_id, NULL, mixed.container_id, mixed.lot_id, mixed.microlitres FROM mixed
       WHERE mixed.microlitres > 0 AND NOT EXISTS (
         SELECT 1 FROM laid WHERE laid.session_id = mixed.session_id AND laid.container_id = mixed.container_id)
       ORDER BY 1, 4, 3, 2`,
      [studioId, recallId],
    );
  }

  /** Sessions to come that follow one in which a pigment of the recall was used: its mix is where they begin. */
  private async followed(studioId: string, recallId: string): Promise<Followed[]> {
    const { tables, parameters } = await this.questions.of(this.database.read, studioId, recallId);
    return this.database.read<Followed>(
      `${tables}
       SELECT session.id AS "sessionId", session.follows_session_id AS "followsSessionId",
         min(exposed_use.occurred_at) AS "firstAt", max(exposed_use.certain) AS certain
       FROM session
         JOIN exposed_use ON exposed_use.session_id = session.follows_session_id
         JOIN session_use ON session_use.studio_id = $1 AND session_use.id = exposed_use.id
         JOIN lot ON lot.studio_id = $1 AND lot.id = session_use.lot_id
         JOIN product ON product.chain_id = lot.chain_id AND product.id = lot.product_id
       WHERE session.studio_id = $1 AND session.state IN ('planned', 'in setup') AND product.kind = 'pigment'
       GROUP BY session.id, session.follows_session_id`,
      parameters,
    );
  }

  /** Those in setup first, then as they are planned. */
  private async sessions(studioId: string, { laidOut, followed, kitLines }: Found): Promise<SessionRow[]> {
    const ids = [...new Set([...laidOut, ...followed, ...kitLines].map(({ sessionId }) => sessionId))];
    const sessions: SessionRow[] = [];
    for (let from = 0; from < ids.length; from += sessionsPerRead) {
      const part = ids.slice(from, from + sessionsPerRead);
      sessions.push(
        ...(await this.database.read<SessionRow>(
          `SELECT session.id AS "sessionId", session.client_id AS "clientId",
             client.reference AS "clientReference", session.state, session.planned_start AS "plannedStart",
             session.visit_kind AS "visitKind", session.procedure_id AS "procedureId",
             procedure.name AS "procedureName", session.body_place AS "bodyPlace",
             session.artist_id AS "artistId"
           FROM session
             JOIN client ON client.studio_id = $1 AND client.id = session.client_id
             JOIN procedure ON procedure.studio_id = $1 AND procedure.id = session.procedure_id
           WHERE session.studio_id = $1 AND session.state IN ('planned', 'in setup')
             AND session.id IN (${placeholders(part)})`,
          [studioId, ...part],
        )),
      );
    }
    const place = ({ state, plannedStart, sessionId }: SessionRow) =>
      `${state === 'in setup' ? 0 : 1} ${plannedStart ?? '~'} ${sessionId}`;
    return sessions.sort((one, other) => (place(one) < place(other) ? -1 : 1));
  }

  private async views(
    { studioId, timeZone }: Actor,
    shown: readonly SessionRow[],
    { laidOut, followed, kitLines }: Found,
    reached: readonly ReachedLot[],
  ): Promise<PlannedSessionView[]> {
    const ids = new Set(shown.map(({ sessionId }) => sessionId));
    const names = new Map<string, LotName>();
    await this.lotNames.learn(
      this.database.read,
      studioId,
      [
        ...laidOut.filter(({ sessionId }) => ids.has(sessionId)).map(({ lotId }) => lotId),
        ...kitLines.filter(({ sessionId }) => ids.has(sessionId)).flatMap(({ lotIds }) => lotIds),
      ],
      names,
    );
    const affected = new Map(reached.map((lot) => [lot.lotId, lot.affected === 1]));
    const lotView = (lotId: string): PlannedLotView[] => {
      const name = names.get(lotId);
      return name ? [{ ...name, standing: affected.get(lotId) ? 'affected' : 'undecided' }] : [];
    };
    const artists = await this.people.namesOf(
      studioId,
      shown.map(({ artistId }) => artistId),
    );
    return shown.map((session) => {
      const own = <Item extends { sessionId: string }>(items: readonly Item[]) =>
        items.filter(({ sessionId }) => sessionId === session.sessionId);
      const onTray = own(laidOut).flatMap(({ trayLineId, containerId, lotId, microlitresInMixes }) =>
        lotView(lotId).map((lot) => ({ trayLineId, containerId, lot, inMix: microlitresInMixes > 0 })),
      );
      const [follows] = own(followed);
      const lines = own(kitLines).map(({ sessionId: _, quantity, lotIds, ...line }) => ({
        ...line,
        quantityPieces: quantity,
        lots: lotIds.flatMap(lotView),
      }));
      const reasons: PlannedReason[] = [];
      if (onTray.length > 0) reasons.push('on the tray');
      if (follows) reasons.push('follows an exposed session');
      if (lines.length > 0) reasons.push('kit list');
      const { plannedStart } = session;
      return {
        ...session,
        day: plannedStart === null ? null : localDay(plannedStart, timeZone),
        artistName: artists.get(session.artistId) ?? null,
        reasons,
        onTray,
        follows: follows ? followedView(follows, timeZone) : null,
        kitLines: lines,
      };
    });
  }
}

function followedView(
  { followsSessionId, firstAt, certain }: Followed,
  timeZone: string,
): FollowedExposureView {
  return {
    sessionId: followsSessionId,
    day: localDay(firstAt, timeZone),
    certainty: certain === 1 ? 'certain' : 'possible',
  };
}
