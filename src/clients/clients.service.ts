import { randomBytes } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import { In } from 'typeorm';
import type { Actor } from '../platform/actor.js';
import { Database, placeholders } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/transaction.js';
import { Transactions } from '../platform/database/transactions.js';
import { DataKeys, type FieldSealer } from '../platform/encryption/data-keys.service.js';
import { StudioKeys } from '../platform/encryption/studio-keys.service.js';
import { notFound, Problem } from '../platform/problem.js';
import { Client } from './client.entity.js';
import { clientReferenceCharacters, makeClientReference } from './client-reference.js';
import type { AddClientDto, ChangeClientDto, NewClientDto } from './clients.dto.js';
import type { WrittenClientView } from './clients.views.js';
import { foldContact } from './contact-folding.js';
import { sealedAsContact, sealedAsName, sealedAsNote } from './sealing-contexts.js';

const referenceAttempts = 8;

/** A client with what seals and opens their fields; without a sealer the client was erased. */
export interface KnownClient {
  client: Client;
  sealer: FieldSealer | undefined;
}

/** Who was treated. Everything personal is sealed under the client's own data key; destroying it erases the client. */
@Injectable()
export class Clients {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly dataKeys: DataKeys,
    private readonly studioKeys: StudioKeys,
  ) {}

  async add(actor: Actor, dto: AddClientDto): Promise<WrittenClientView> {
    return this.transactions.write(
      actor,
      { id: dto.id, action: 'clients.add', subject: { kind: 'client', id: dto.id }, content: dto },
      async (transaction) => {
        const { client } = await this.make(transaction, dto.id, dto);
        return { id: client.id, reference: client.reference, version: client.version };
      },
    );
  }

  async change(actor: Actor, clientId: string, dto: ChangeClientDto): Promise<WrittenClientView> {
    const { studioId } = actor;
    // Keys are read before the transaction: inside it would need a second connection.
    const { sealer } = await this.known(studioId, clientId);
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'clients.change',
        subject: { kind: 'client', id: clientId },
        content: { clientId, ...dto },
      },
      async (transaction) => {
        if (!sealer) throw erased(clientId);
        await this.lock(transaction, clientId);
        const changes: Partial<Client> = {};
        if (dto.name !== undefined) {
          changes.nameSealed = sealer.seal(dto.name, sealedAsName(clientId));
          changes.nameHash = await this.studioKeys.searchHash(studioId, dto.name);
        }
        if (dto.contact !== undefined) {
          changes.contactSealed = sealer.seal(dto.contact, sealedAsContact(clientId));
          changes.contactHash = await this.contactHash(studioId, dto.contact);
        }
        if (dto.note !== undefined) changes.noteSealed = sealer.seal(dto.note, sealedAsNote(clientId));
        const client = await transaction.change(
          Client,
          'client',
          { studioId, id: clientId },
          dto.version,
          changes,
        );
        transaction.note({ fields: Object.keys(dto).filter((field) => !['id', 'version'].includes(field)) });
        return { id: client.id, reference: client.reference, version: client.version };
      },
    );
  }

  /** Makes a client with their own data key in the caller's transaction. */
  async make(
    transaction: Transaction,
    id: string,
    given: NewClientDto,
  ): Promise<{ client: Client; sealer: FieldSealer }> {
    const { studioId } = transaction;
    const sealer = await this.dataKeys.make(transaction);
    const client: Client = {
      studioId,
      id,
      reference: await this.freeReference(transaction),
      dataKeyId: sealer.dataKeyId,
      nameSealed: sealer.seal(given.name, sealedAsName(id)),
      contactSealed: sealer.seal(given.contact ?? null, sealedAsContact(id)),
      noteSealed: sealer.seal(given.note ?? null, sealedAsNote(id)),
      nameHash: await this.studioKeys.searchHash(studioId, given.name),
      contactHash: await this.contactHash(studioId, given.contact ?? null),
      version: 1,
      createdAt: transaction.recordedAt,
      erasedAt: null,
    };
    await transaction.insert(Client, client);
    return { client, sealer };
  }

  /**
   * A client and their sealer. Call before a transaction, not inside it.
   * @throws Problem not-found
   */
  async known(studioId: string, clientId: string): Promise<KnownClient> {
    const client = await this.database.reader.manager.findOneBy(Client, { studioId, id: clientId });
    if (!client) throw notFound('client', clientId);
    const [known] = await this.withSealers(studioId, [client]);
    return known ?? { client, sealer: undefined };
  }

  /** Clients and their sealers by client id, in two look-ups. */
  async knownOf(studioId: string, clientIds: readonly string[]): Promise<Map<string, KnownClient>> {
    const ids = [...new Set(clientIds)];
    if (ids.length === 0) return new Map();
    const clients = await this.database.reader.manager.find(Client, { where: { studioId, id: In(ids) } });
    const known = await this.withSealers(studioId, clients);
    return new Map(known.map((one) => [one.client.id, one] as const));
  }

  /** Clients with what opens their fields, in one look-up. */
  async withSealers(studioId: string, clients: readonly Client[]): Promise<KnownClient[]> {
    // A key that was destroyed meanwhile may still be remembered here.
    const living = clients.filter((client) => client.erasedAt === null);
    const sealers = await this.dataKeys.sealers(
      studioId,
      living.map((client) => client.dataKeyId),
    );
    return clients.map((client) => ({
      client,
      sealer: client.erasedAt === null ? sealers.get(client.dataKeyId) : undefined,
    }));
  }

  /**
   * Locks a client, who is then not erased until the end of the transaction. Clients are locked before sessions; a locked
   * session of theirs keeps them from being erased as well.
   * @throws Problem wrong-state
   */
  async lock(transaction: Transaction, clientId: string): Promise<void> {
    await transaction.lock('client', [clientId]);
    await this.refuseErased(transaction, clientId);
  }

  /**
   * Makes sure that nobody erased a client since their key was read: what would be sealed now could never be opened.
   * @throws Problem wrong-state
   */
  async refuseErased(transaction: Transaction, clientId: string): Promise<void> {
    if (await this.isErased(transaction, clientId)) throw erased(clientId);
  }

  async isErased(transaction: Transaction, clientId: string): Promise<boolean> {
    const rows = await transaction.query(
      'SELECT id FROM client WHERE studio_id = $1 AND id = $2 AND erased_at IS NOT NULL',
      [transaction.studioId, clientId],
    );
    return rows.length > 0;
  }

  private async contactHash(studioId: string, contact: string | null): Promise<string | null> {
    return contact === null ? null : this.studioKeys.searchHash(studioId, foldContact(contact));
  }

  private async freeReference(transaction: Transaction): Promise<string> {
    const candidates = Array.from({ length: referenceAttempts }, () =>
      makeClientReference(randomBytes(clientReferenceCharacters)),
    );
    const taken = await transaction.query<{ reference: string }>(
      `SELECT reference FROM client WHERE studio_id = $1 AND reference IN (${placeholders(candidates)})`,
      [transaction.studioId, ...candidates],
    );
    const free = candidates.find((candidate) => !taken.some(({ reference }) => reference === candidate));
    if (free === undefined) throw new Error(`${referenceAttempts} client references in a row were taken.`);
    return free;
  }
}

/** The client's data key was destroyed; nothing can be sealed or opened any more. */
export function erased(clientId: string): Problem {
  return new Problem(
    409,
    'wrong-state',
    `The client ${clientId} was erased; nothing personal can be written about them any more. Add them anew as a new client.`,
  );
}
