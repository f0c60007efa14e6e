import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import type { Transaction } from '../platform/database/transaction.js';
import { invalidField } from '../platform/problem.js';
import type { NewClientDto } from './clients.dto.js';
import { Clients, erased, type KnownClient } from './clients.service.js';

/** A client who is known, or one who becomes a client by this very write. */
export type TreatedClient = { known: KnownClient } | { fresh: NewClientDto };

/** Who is treated: a client on record, or someone who is put on record in the same write. */
@Injectable()
export class TreatedClients {
  constructor(private readonly clients: Clients) {}

  /**
   * Call before the transaction, for keys are not read inside it.
   * @throws Problem invalid-fields when neither or both are given; not-found; wrong-state when the client was erased
   */
  async choose(
    studioId: string,
    { clientId, client }: { clientId?: string; client?: NewClientDto },
  ): Promise<TreatedClient> {
    if (clientId === undefined && client !== undefined) return { fresh: client };
    if (clientId !== undefined && client === undefined) {
      const known = await this.clients.known(studioId, clientId);
      if (!known.sealer) throw erased(clientId);
      return { known };
    }
    throw invalidField(
      'clientId',
      `${client === undefined ? 'Neither' : 'Both'} clientId and client were given. Give exactly one: the id of a known client, or the name of a new one.`,
    );
  }

  /** The client, made now when they are new. */
  async inside(transaction: Transaction, treated: TreatedClient): Promise<KnownClient> {
    return 'known' in treated ? treated.known : this.clients.make(transaction, uuidv7(), treated.fresh);
  }
}
