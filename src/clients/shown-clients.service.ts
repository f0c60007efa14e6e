import { Injectable } from '@nestjs/common';
import { MoreThan } from 'typeorm';
import type { Actor } from '../platform/actor.js';
import { Database } from '../platform/database/database.js';
import { StudioKeys } from '../platform/encryption/studio-keys.service.js';
import { defaultPageSize, pageOf, refuseUnknownStart } from '../platform/page.js';
import type { PageDto } from '../platform/request.dto.js';
import { Client } from './client.entity.js';
import type { AccessKind } from './client-access.entity.js';
import { ClientAccessLog } from './client-access-log.service.js';
import type { SearchClientsDto } from './clients.dto.js';
import { Clients, type KnownClient } from './clients.service.js';
import type { ClientPageView, ClientView } from './clients.views.js';
import { foldContact } from './contact-folding.js';
import { sealedAsContact, sealedAsName, sealedAsNote } from './sealing-contexts.js';

const maximumFound = 50;

/**
 * Clients as an actor is shown them: the one way from a sealed field to a screen. Guarantees: whoever may not be shown
 * who clients are gets no sealer, and so nothing but references; whatever is shown was noted before.
 */
@Injectable()
export class ShownClients {
  constructor(
    private readonly database: Database,
    private readonly clients: Clients,
    private readonly studioKeys: StudioKeys,
    private readonly accessLog: ClientAccessLog,
  ) {}

  /** @throws Problem not-found */
  async one(actor: Actor, clientId: string, what: AccessKind): Promise<KnownClient> {
    const known = await this.clients.known(actor.studioId, clientId);
    // Also without a name it is this client's record that is read.
    await this.accessLog.note(actor, what, [clientId]);
    return asShownTo(actor, known);
  }

  /** Of a list, by client id. */
  async many(
    actor: Actor,
    clientIds: readonly string[],
    what: AccessKind,
  ): Promise<Map<string, KnownClient>> {
    const known = await this.clients.knownOf(actor.studioId, clientIds);
    if (actor.seesClients) await this.accessLog.note(actor, what, [...known.keys()]);
    return new Map([...known].map(([id, client]) => [id, asShownTo(actor, client)] as const));
  }

  /** A client's name; null after erasure and for those who are not shown it. */
  nameOf({ client, sealer }: KnownClient): string | null {
    return sealer?.open(client.nameSealed, sealedAsName(client.id)) ?? null;
  }

  async show(actor: Actor, clientId: string): Promise<ClientView> {
    return clientView(await this.one(actor, clientId, 'client'));
  }

  async list(actor: Actor, page: PageDto): Promise<ClientPageView> {
    const { studioId } = actor;
    const limit = page.limit ?? defaultPageSize;
    await refuseUnknownStart(this.database.read, 'client', studioId, page.after);
    const clients = await this.database.reader.manager.find(Client, {
      where: { studioId, ...(page.after && { id: MoreThan(page.after) }) },
      order: { id: 'ASC' },
      take: limit + 1,
    });
    const { shown, next } = pageOf(clients, limit, (client) => client.id);
    return { items: await this.views(actor, shown, 'client list'), next };
  }

  /**
   * Clients whose whole name, contact or reference is the text; the oldest first. Whoever is not shown names finds by
   * reference only: else a search would tell whose name is known here.
   */
  async search(actor: Actor, dto: SearchClientsDto): Promise<ClientView[]> {
    const { studioId } = actor;
    const { text } = dto;
    const clients = await this.database.reader.manager.find(Client, {
      where: [
        ...(actor.seesClients
          ? [
              { studioId, nameHash: await this.studioKeys.searchHash(studioId, text) },
              { studioId, contactHash: await this.studioKeys.searchHash(studioId, foldContact(text)) },
            ]
          : []),
        { studioId, reference: text.toUpperCase() },
      ],
      order: { createdAt: 'ASC', id: 'ASC' },
      take: maximumFound,
    });
    return this.views(actor, clients, 'client search');
  }

  private async views(actor: Actor, clients: Client[], what: AccessKind): Promise<ClientView[]> {
    const known = await this.clients.withSealers(actor.studioId, clients);
    if (actor.seesClients) {
      await this.accessLog.note(
        actor,
        what,
        clients.map((client) => client.id),
      );
    }
    return known.map((client) => clientView(asShownTo(actor, client)));
  }
}

function asShownTo(actor: Actor, known: KnownClient): KnownClient {
  return actor.seesClients ? known : { client: known.client, sealer: undefined };
}

/** @param known as they may be shown */
export function clientView({ client, sealer }: KnownClient): ClientView {
  const open = (sealed: string | null, place: string) => sealer?.open(sealed, place) ?? null;
  return {
    id: client.id,
    reference: client.reference,
    name: open(client.nameSealed, sealedAsName(client.id)),
    contact: open(client.contactSealed, sealedAsContact(client.id)),
    note: open(client.noteSealed, sealedAsNote(client.id)),
    erasedAt: client.erasedAt,
    createdAt: client.createdAt,
    version: client.version,
  };
}
