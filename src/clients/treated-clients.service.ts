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
   * @throws Problem invalid-fields when neither or both are given; not-found
   */
  async choose(
    studioId: string,
    { clientId, client }: { clientId?: string; client?: NewClientDto },
  ): Promise<TreatedClient> {
    if (clientId === undefined && client !== undefined) return { fresh: client };
    if (clientId !== undefined && client === undefined) {
      return { known: await this.clients.known(studioId, clientId) };
    }
    throw invalidField(
      'clientId',
      `${client === undefined ? 'Neither' : 'Both'} clientId and client were given. Give exactly one: the id of a known client, or the name of a new one.`,
    );
  }

  /**
   * The client, made now when they are new, else locked.
   * @throws Problem wrong-state when the client was erased
   */
  async inside(transaction: Transaction, treated: TreatedClient): Promise<KnownClient> {
    if ('fresh' in treated) return this.clients.make(transaction, uuidv7(), treated.fresh);
    const { known } = treated;
    if (!known.sealer) throw erased(known.client.id);
    await this.clients.lock(transaction, known.client.id);
    return known;
  }
}
