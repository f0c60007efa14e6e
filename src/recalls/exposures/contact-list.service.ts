import type { Readable } from 'node:stream';
import { Injectable, Logger } from '@nestjs/common';
import { clientView, ShownClients } from '../../clients/shown-clients.service.js';
import { localDay } from '../../identity/local-day.js';
import type { Actor } from '../../platform/actor.js';
import { csvOf } from '../../platform/csv.js';
import { Database } from '../../platform/database/database.js';
import { RecallRegister } from '../recall-register.service.js';
import { ContactStates } from './contact-states.service.js';
import { type ExposedClient, Exposures } from './exposures.service.js';

/** Clients whose names are read, and whose access is noted, at once. */
const clientsPerRead = 200;

const columns = [
  'client_reference',
  'client_id',
  'name',
  'contact',
  'certainty',
  'exposed_sessions',
  'first_exposed_on',
  'last_exposed_on',
  'contact_state',
  'contact_at_utc',
] as const;

type Row = Record<(typeof columns)[number], string | number | null>;

/**
 * Writes the names and contacts of everyone a recall exposed, for those who tell them. Guarantee: of each client it is
 * noted who was shown them before they are written.
 */
@Injectable()
export class ContactList {
  private readonly logger = new Logger('recalls');

  constructor(
    private readonly database: Database,
    private readonly register: RecallRegister,
    private readonly exposures: Exposures,
    private readonly contactStates: ContactStates,
    private readonly shownClients: ShownClients,
  ) {}

  /** @throws Problem not-found before anything is written */
  async csv(actor: Actor, recallId: string): Promise<Readable> {
    const { read } = this.database;
    await this.register.find(read, actor.studioId, recallId);
    const clients = await this.exposures.clients(read, actor.studioId, recallId);
    return csvOf(columns, this.rows(actor, recallId, clients), (error) =>
      this.logger.error(`A list of contacts could not be written to its end: ${error.message}`),
    );
  }

  private async *rows(
    actor: Actor,
    recallId: string,
    clients: readonly ExposedClient[],
  ): AsyncGenerator<Row> {
    const { studioId, timeZone } = actor;
    for (let from = 0; from < clients.length; from += clientsPerRead) {
      const part = clients.slice(from, from + clientsPerRead);
      const ids = part.map(({ clientId }) => clientId);
      const shown = await this.shownClients.many(actor, ids, 'recall');
      const contacts = await this.contactStates.of(this.database.read, studioId, recallId, part);
      for (const { clientId, certainty, sessions, firstAt, lastAt } of part) {
        const known = shown.get(clientId);
        const view = known && clientView(known);
        const state = contacts.get(clientId);
        yield {
          client_reference: view?.reference ?? null,
          client_id: clientId,
          name: view?.name ?? null,
          contact: view?.contact ?? null,
          certainty,
          exposed_sessions: sessions,
          first_exposed_on: localDay(firstAt, timeZone),
          last_exposed_on: localDay(lastAt, timeZone),
          contact_state: state?.contactState ?? 'not tried',
          contact_at_utc: state?.latestContact?.occurredAt ?? null,
        };
      }
    }
  }
}
