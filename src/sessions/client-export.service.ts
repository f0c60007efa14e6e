import { Injectable } from '@nestjs/common';
import { MoreThan } from 'typeorm';
import type { KnownClient } from '../clients/clients.service.js';
import { Erasures } from '../clients/erasures.service.js';
import type { ErasureAnswerView } from '../clients/erasures.views.js';
import { LegalClaims } from '../clients/legal-claims.service.js';
import { retentionEnd } from '../clients/retention-end.js';
import { clientView, ShownClients } from '../clients/shown-clients.service.js';
import { StandingOfClients } from '../clients/standing-of-clients.service.js';
import { Studios } from '../identity/studios.service.js';
import type { Actor } from '../platform/actor.js';
import { Clock } from '../platform/clock.js';
import { Database } from '../platform/database/database.js';
import { maximumPageSize } from '../platform/request.dto.js';
import type { ClientExportView, ExportedAccessView, ExportedRetentionView } from './client-export.views.js';
import { Session } from './session.entity.js';
import { SessionRecord } from './session-record.service.js';
import type { SessionView } from './session-record.views.js';

const sessionsPerRead = 100;

/** Puts together everything that is kept of one client, for the client. Nothing is left out and nothing is kept of it. */
@Injectable()
export class ClientExports {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly studios: Studios,
    private readonly shownClients: ShownClients,
    private readonly standing: StandingOfClients,
    private readonly records: SessionRecord,
    private readonly claims: LegalClaims,
    private readonly erasures: Erasures,
  ) {}

  /** @throws Problem not-found */
  async of(actor: Actor, clientId: string): Promise<ClientExportView> {
    const known = await this.shownClients.one(actor, clientId, 'export');
    const { id, name, timeZone } = await this.studios.get(actor.studioId);
    const sessions = await this.sessionsOf(known);
    const pigments = sessions.flatMap(({ uses }) =>
      uses.filter((use) => use.kind === 'pigment' && use.reversal === null),
    );
    const exportedAt = this.clock.now();
    return {
      format: 'lotward client export',
      formatVersion: 1,
      exportedAt,
      studio: { id, name, timeZone },
      client: clientView(known),
      retention: await this.retentionOf(actor, known, exportedAt),
      sessions,
      blendedPigments: await this.records.blendedPigments(actor.studioId, pigments),
      legalClaims: await this.claims.all(known),
      erasureAnswers: await this.answersTo(actor, clientId),
      accesses: await this.accessesTo(actor.studioId, clientId),
    };
  }

  private async sessionsOf(known: KnownClient): Promise<SessionView[]> {
    const { studioId, id: clientId } = known.client;
    const views: SessionView[] = [];
    for (let after = ''; ; ) {
      const sessions = await this.database.reader.manager.find(Session, {
        where: { studioId, clientId, id: MoreThan(after) },
        order: { id: 'ASC' },
        take: sessionsPerRead,
      });
      views.push(...(await this.records.of(known, sessions)));
      const last = sessions.at(-1);
      if (last === undefined || sessions.length < sessionsPerRead) return views;
      after = last.id;
    }
  }

  private async retentionOf(
    actor: Actor,
    { client }: KnownClient,
    at: string,
  ): Promise<ExportedRetentionView> {
    const [standing] = await this.standing.of(this.database.read, actor, [client], at);
    const policy = standing?.facts.policy ?? null;
    const lastRecordOn = standing?.facts.lastRecordOn ?? null;
    const span = policy === null || lastRecordOn === null ? null : retentionEnd(lastRecordOn, policy.years);
    return { policy, lastRecordOn, keptThrough: span?.keptThrough ?? null };
  }

  private async answersTo(actor: Actor, clientId: string): Promise<ErasureAnswerView[]> {
    const answers: ErasureAnswerView[] = [];
    for (let after: string | undefined; ; ) {
      const page = await this.erasures.answers(actor, clientId, { limit: maximumPageSize, after });
      answers.push(...page.items);
      if (page.next === null) return answers;
      after = page.next;
    }
  }

  private accessesTo(studioId: string, clientId: string): Promise<ExportedAccessView[]> {
    return this.database.read<ExportedAccessView>(
      `SELECT client_access.accessed_at AS "accessedAt", client_access.what, person.role,
         client_access.person_id AS "personId"
       FROM client_access LEFT JOIN person
         ON person.studio_id = client_access.studio_id AND person.id = client_access.person_id
       WHERE client_access.studio_id = $1 AND client_access.client_id = $2
       ORDER BY client_access.accessed_at DESC, client_access.id DESC`,
      [studioId, clientId],
    );
  }
}
