import { Injectable } from '@nestjs/common';
import { Clients, erased, type KnownClient } from '../clients/clients.service.js';
import { Database } from '../platform/database/database.js';
import type { FieldSealer } from '../platform/encryption/data-keys.service.js';
import { notFound } from '../platform/problem.js';

/** Whose sessions are. Keys are read before a transaction, never inside it: there they would need a second connection. */
@Injectable()
export class SessionClients {
  constructor(
    private readonly database: Database,
    private readonly clients: Clients,
  ) {}

  /**
   * The client of a session. Call before the transaction.
   * @throws Problem not-found
   */
  async of(studioId: string, sessionId: string): Promise<KnownClient> {
    const [session] = await this.database.read<{ clientId: string }>(
      'SELECT client_id AS "clientId" FROM session WHERE studio_id = $1 AND id = $2',
      [studioId, sessionId],
    );
    if (!session) throw notFound('session', sessionId);
    return this.clients.known(studioId, session.clientId);
  }
}

/** What seals a client's fields. @throws Problem wrong-state when the client was erased */
export function sealerOf({ client, sealer }: KnownClient): FieldSealer {
  if (!sealer) throw erased(client.id);
  return sealer;
}
