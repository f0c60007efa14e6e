import { Injectable } from '@nestjs/common';
import { Clients, erased, type KnownClient } from '../clients/clients.service.js';
import { Database } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/transaction.js';
import type { FieldSealer } from '../platform/encryption/data-keys.service.js';
import { notFound, Problem } from '../platform/problem.js';

/** Seals texts about a client; about one who was erased only that there is none. */
export interface Sealing {
  erased: boolean;
  seal: FieldSealer['seal'];
}

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

  /**
   * What seals a client's fields. Call once their session is locked, which keeps them from being erased meanwhile.
   * @throws Problem wrong-state when the client was erased
   */
  async sealer(transaction: Transaction, known: KnownClient): Promise<FieldSealer> {
    const sealer = sealerOf(known);
    await this.clients.refuseErased(transaction, known.client.id);
    return sealer;
  }

  /** As `sealer`, for what is recorded of an erased client all the same: what touched them does not change by it. */
  async sealing(transaction: Transaction, known: KnownClient): Promise<Sealing> {
    const { client, sealer } = known;
    if (!sealer || (await this.clients.isErased(transaction, client.id))) {
      return { erased: true, seal: withoutText };
    }
    return { erased: false, seal: (plain, place) => sealer.seal(plain, place) };
  }
}

/** What is recorded of stock alone is recorded of an erased client too, but no text can be kept with it. */
function withoutText(plain: string | null): null {
  if (plain === null) return null;
  throw new Problem(
    409,
    'wrong-state',
    'The client was erased, so no text about this visit can be kept any more. Leave the reason out and send it again.',
  );
}

/** What seals a client's fields. @throws Problem wrong-state when the client was erased */
export function sealerOf({ client, sealer }: KnownClient): FieldSealer {
  if (!sealer) throw erased(client.id);
  return sealer;
}
