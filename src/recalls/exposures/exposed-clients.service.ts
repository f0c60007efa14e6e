import { Injectable } from '@nestjs/common';
import { localDay } from '../../identity/local-day.js';
import type { Actor } from '../../platform/actor.js';
import { Database, placeholders } from '../../platform/database/database.js';
import { defaultPageSize, pageOf } from '../../platform/page.js';
import { invalidField } from '../../platform/problem.js';
import { RecallRegister } from '../recall-register.service.js';
import { ContactStates } from './contact-states.service.js';
import type { ExposedClientsDto } from './exposures.dto.js';
import { Exposures } from './exposures.service.js';
import type { ExposedClientPageView } from './exposures.views.js';

/** The exposures of a recall client by client: whom to tell first, and how it stands with telling them. */
@Injectable()
export class ExposedClients {
  constructor(
    private readonly database: Database,
    private readonly register: RecallRegister,
    private readonly exposures: Exposures,
    private readonly contactStates: ContactStates,
  ) {}

  /** @throws Problem not-found; invalid-fields when `after` is no exposed client */
  async page(actor: Actor, recallId: string, dto: ExposedClientsDto): Promise<ExposedClientPageView> {
    const { read } = this.database;
    const { studioId, timeZone } = actor;
    const limit = dto.limit ?? defaultPageSize;
    await this.register.find(read, studioId, recallId);
    const found = await this.exposures.clientPage(read, studioId, recallId, { ...dto, limit: limit + 1 });
    if (found === null) throw notExposed(dto.after ?? '');
    const { shown, next } = pageOf(found, limit, ({ clientId }) => clientId);
    const ids = shown.map(({ clientId }) => clientId);
    const references = await this.references(studioId, ids);
    const contacts = await this.contactStates.of(read, studioId, recallId, shown);
    return {
      totals: await this.exposures.totals(read, studioId, recallId),
      items: shown.map(({ firstAt, lastAt, ...client }) => ({
        ...client,
        clientReference: references.get(client.clientId) ?? '',
        firstDay: localDay(firstAt, timeZone),
        lastDay: localDay(lastAt, timeZone),
        contactState: contacts.get(client.clientId)?.contactState ?? 'not tried',
        latestContact: contacts.get(client.clientId)?.latestContact ?? null,
      })),
      next,
    };
  }

  private async references(studioId: string, ids: readonly string[]): Promise<Map<string, string>> {
    if (ids.length === 0) return new Map();
    const rows = await this.database.read<{ id: string; reference: string }>(
      `SELECT id, reference FROM client WHERE studio_id = $1 AND id IN (${placeholders(ids)})`,
      [studioId, ...ids],
    );
    return new Map(rows.map(({ id, reference }) => [id, reference]));
  }
}

function notExposed(clientId: string) {
  return invalidField(
    'after',
    `The client ${clientId} is not among these exposures, or not any more. Read them anew from the first page.`,
  );
}
