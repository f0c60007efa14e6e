import { Injectable } from '@nestjs/common';
import { ShownClients } from '../clients/shown-clients.service.js';
import { People } from '../identity/people.service.js';
import type { Actor } from '../platform/actor.js';
import { Database, type SqlValue } from '../platform/database/database.js';
import { defaultPageSize, pageOf, refuseUnknownStart } from '../platform/page.js';
import { Problem } from '../platform/problem.js';
import { instantsOfDays } from './day-range.js';
import { Session } from './session.entity.js';
import type { ListSessionsDto } from './sessions.dto.js';
import type { SessionListItemView, SessionPageView } from './sessions.views.js';

const firstDay = '1900-01-01';
const lastDay = '2999-12-31';

type SessionRow = Omit<SessionListItemView, 'clientReference' | 'clientName' | 'artistName'>;

/** The sessions of a studio in the order in which they start. */
@Injectable()
export class SessionList {
  constructor(
    private readonly database: Database,
    private readonly shownClients: ShownClients,
    private readonly people: People,
  ) {}

  async list(actor: Actor, dto: ListSessionsDto): Promise<SessionPageView> {
    const { studioId } = actor;
    const limit = dto.limit ?? defaultPageSize;
    const parameters: SqlValue[] = [studioId];
    const put = (value: SqlValue) => `$${parameters.push(value)}`;
    const conditions = ['session.studio_id = $1'];
    if (dto.from !== undefined || dto.to !== undefined) {
      const { from, before } = daysOf(dto, actor.timeZone);
      conditions.push(`session.planned_start >= ${put(from)}`, `session.planned_start < ${put(before)}`);
    }
    if (dto.state !== undefined) conditions.push(`session.state = ${put(dto.state)}`);
    if (dto.artistId !== undefined) conditions.push(`session.artist_id = ${put(dto.artistId)}`);
    if (dto.clientId !== undefined) conditions.push(`session.client_id = ${put(dto.clientId)}`);
    if (dto.after !== undefined) {
      const last = await this.startOf(studioId, dto.after);
      conditions.push(
        `(session.planned_start > ${put(last.start)} OR (session.planned_start = ${put(last.start)} AND session.id > ${put(last.id)}))`,
      );
    }
    const rows = await this.database.read<SessionRow>(
      `SELECT session.id, session.state, session.version, session.client_id AS "clientId",
         session.artist_id AS "artistId", session.procedure_id AS "procedureId",
         procedure.name AS "procedureName", session.visit_kind AS "visitKind",
         session.body_place AS "bodyPlace", session.booked_at AS "bookedAt",
         session.planned_start AS "plannedStart", session.in_setup_at AS "inSetupAt",
         session.completed_at AS "completedAt", session.follows_session_id AS "followsSessionId",
         session.recorded_from AS "recordedFrom"
       FROM session
         JOIN procedure ON procedure.studio_id = session.studio_id AND procedure.id = session.procedure_id
       WHERE ${conditions.join(' AND ')}
       ORDER BY session.planned_start, session.id LIMIT ${put(limit + 1)}`,
      parameters,
    );
    const { shown, next } = pageOf(rows, limit, (row) => row.id);
    const known = await this.shownClients.many(
      actor,
      shown.map((row) => row.clientId),
      'session list',
    );
    const artists = await this.people.namesOf(
      studioId,
      shown.map((row) => row.artistId),
    );
    return {
      items: shown.map((row) => {
        const client = known.get(row.clientId);
        return {
          ...row,
          clientReference: client?.client.reference ?? '',
          clientName: client ? this.shownClients.nameOf(client) : null,
          artistName: artists.get(row.artistId) ?? null,
        };
      }),
      next,
    };
  }

  private async startOf(studioId: string, sessionId: string): Promise<{ id: string; start: string }> {
    await refuseUnknownStart(this.database.read, 'session', studioId, sessionId);
    const session = await this.database.reader.manager.findOneBy(Session, { studioId, id: sessionId });
    return { id: sessionId, start: session?.plannedStart ?? '' };
  }
}

function daysOf(dto: ListSessionsDto, timeZone: string): { from: string; before: string } {
  const range = instantsOfDays(dto.from ?? firstDay, dto.to ?? lastDay, timeZone);
  if (range !== null) return range;
  throw new Problem(
    400,
    'unusable-date',
    `The days ${dto.from ?? 'left open'} to ${dto.to ?? 'left open'} were asked for. Both must exist in the calendar, the first not after the last. Correct them, as in 2026-03-01.`,
  );
}
