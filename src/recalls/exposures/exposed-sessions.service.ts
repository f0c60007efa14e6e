import { Injectable } from '@nestjs/common';
import { localDay } from '../../identity/local-day.js';
import { People } from '../../identity/people.service.js';
import type { Actor } from '../../platform/actor.js';
import { Database, type Read, type SqlValue } from '../../platform/database/database.js';
import { defaultPageSize, pageOf } from '../../platform/page.js';
import { invalidField } from '../../platform/problem.js';
import { RecallRegister } from '../recall-register.service.js';
import { type DescribedUse, ExposedUses, type FoundUse, type UseSession } from './exposed-uses.service.js';
import { worst } from './exposure-certainty.js';
import { ExposureQuestions } from './exposure-question.service.js';
import type { ExposuresDto } from './exposures.dto.js';
import { Exposures, exposedSessionsAndClients } from './exposures.service.js';
import type { ExposedSessionView, ExposedUseView, ExposurePageView } from './exposures.views.js';

type FoundRow = FoundUse & { sessionId: string };

/** The exposures of a recall session by session, with every use. */
@Injectable()
export class ExposedSessions {
  constructor(
    private readonly database: Database,
    private readonly register: RecallRegister,
    private readonly exposures: Exposures,
    private readonly questions: ExposureQuestions,
    private readonly exposedUses: ExposedUses,
    private readonly people: People,
  ) {}

  /** @throws Problem not-found; invalid-fields when `after` is no exposed session */
  async page(actor: Actor, recallId: string, dto: ExposuresDto): Promise<ExposurePageView> {
    const { read } = this.database;
    const { studioId } = actor;
    const limit = dto.limit ?? defaultPageSize;
    await this.register.find(read, studioId, recallId);
    const { found, timesAtHand } = await this.foundOn(read, studioId, recallId, dto, limit + 1);
    if (found.length === 0 && dto.after !== undefined) {
      const { found: start } = await this.foundOn(read, studioId, recallId, { clientId: dto.clientId }, null);
      if (!start.some(({ sessionId }) => sessionId === dto.after)) throw notExposed(dto.after);
    }
    const sessionIds = [...new Set(found.map(({ sessionId }) => sessionId))];
    const { shown, next } = pageOf(sessionIds, limit, (id) => id);
    const onPage = new Set(shown);
    const describe = await this.exposedUses.describer(read, studioId, recallId, timesAtHand);
    const uses = await describe(found.filter(({ sessionId }) => onPage.has(sessionId)));
    return {
      totals: await this.exposures.totals(read, studioId, recallId),
      items: await this.views(actor, uses),
      next,
    };
  }

  /** Uses of the sessions of a page, or of all (limit null), the sessions in the order in which they happened. */
  private async foundOn(
    read: Read,
    studioId: string,
    recallId: string,
    { clientId, after }: { clientId?: string; after?: string },
    limit: number | null,
  ) {
    const { tables, parameters, timesAtHand } = await this.questions.of(read, studioId, recallId, clientId);
    const put = (value: SqlValue) => `$${parameters.push(value)}`;
    const beyond =
      after === undefined
        ? ''
        : `WHERE (first_at, session_id) > (
             SELECT last.first_at, last.session_id FROM exposed_session AS last WHERE last.session_id = ${put(after)})`;
    const found = await read<FoundRow>(
      `${tables}, ${exposedSessionsAndClients},
       chosen AS (
         SELECT session_id, first_at FROM exposed_session ${beyond}
         ORDER BY first_at, session_id ${limit === null ? '' : `LIMIT ${put(limit)}`})
       SELECT exposed_use.id, exposed_use.session_id AS "sessionId", exposed_use.by_open_lot AS "byOpenLot"
       FROM chosen CROSS JOIN exposed_use WHERE exposed_use.session_id = chosen.session_id
       ORDER BY chosen.first_at, chosen.session_id, exposed_use.occurred_at, exposed_use.id`,
      parameters,
    );
    return { found, timesAtHand };
  }

  /**
   * Every use, a part at a time, by what was found at the beginning: what is recorded or decided meanwhile stays out, so
   * that the parts of one file belong together.
   */
  async *all(
    read: Read,
    studioId: string,
    recallId: string,
    usesAtOnce: number,
  ): AsyncGenerator<DescribedUse[]> {
    const { found, timesAtHand } = await this.foundOn(read, studioId, recallId, {}, null);
    const describe = await this.exposedUses.describer(read, studioId, recallId, timesAtHand);
    for (let from = 0; from < found.length; from += usesAtOnce) {
      yield await describe(found.slice(from, from + usesAtOnce));
    }
  }

  private async views(
    { studioId, timeZone }: Actor,
    uses: readonly DescribedUse[],
  ): Promise<ExposedSessionView[]> {
    const artists = await this.people.namesOf(
      studioId,
      uses.map(({ session }) => session.artistId),
    );
    const sessions = new Map<string, { session: UseSession; uses: ExposedUseView[] }>();
    for (const { session, use } of uses) {
      const known = sessions.get(session.sessionId);
      if (known) known.uses.push(use);
      else sessions.set(session.sessionId, { session, uses: [use] });
    }
    return [...sessions.values()].map(({ session, uses: ofSession }) => ({
      ...session,
      day: localDay(session.occurredAt, timeZone),
      artistName: artists.get(session.artistId) ?? null,
      ...worst(ofSession.map(({ reasons }) => reasons)),
      uses: ofSession,
    }));
  }
}

function notExposed(sessionId: string) {
  return invalidField(
    'after',
    `The session ${sessionId} is not among these exposures, or not any more. Read them anew from the first page.`,
  );
}
