import { Injectable } from '@nestjs/common';
import { Clients } from '../../clients/clients.service.js';
import { ShownClients } from '../../clients/shown-clients.service.js';
import { refuseWithout, type StudioActor } from '../../identity/actor.guard.js';
import { People } from '../../identity/people.service.js';
import type { Actor } from '../../platform/actor.js';
import { Database, type SqlValue } from '../../platform/database/database.js';
import { Transactions } from '../../platform/database/transactions.js';
import { occurredAt } from '../../platform/occurred-at.js';
import { defaultPageSize, pageOf, refuseUnknownStart } from '../../platform/page.js';
import { faultsProblem, Problem } from '../../platform/problem.js';
import { RecallContact } from '../recall-contact.entity.js';
import { RecallRegister } from '../recall-register.service.js';
import { readAddressee } from './addressee.js';
import type { ContactPageDto, RecordContactDto } from './contacts.dto.js';
import type { ContactPageView, ContactView, RecordedContactView } from './contacts.views.js';

/** As what the note of an attempt to tell a client is sealed. */
const sealedAsContactNote = (contactId: string) => `recall_contact.note:${contactId}`;

type ContactRow = ContactView & { noteSealed: string | null };

/**
 * Attempts to tell people of a recall. Recording never refuses: a recall that is closed, a client who is not exposed or was
 * erased, a further attempt after somebody was reached are all recorded. Only in a drill nobody is told.
 */
@Injectable()
export class RecallContacts {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly register: RecallRegister,
    private readonly clients: Clients,
    private readonly shownClients: ShownClients,
    private readonly people: People,
  ) {}

  async record(actor: StudioActor, recallId: string, dto: RecordContactDto): Promise<RecordedContactView> {
    const { studioId, personId, via } = actor;
    const { audience, channel, outcome } = dto;
    if (audience === 'client') refuseWithout(actor, 'tell clients of recalls');
    const read = readAddressee(dto);
    if ('faults' in read) throw faultsProblem(read.faults);
    const { clientId, artistId, company } = read.addressee;
    const recall = await this.register.find(this.database.read, studioId, recallId);
    if (recall.kind === 'drill') throw nobodyIsToldInADrill();
    // Keys are read before the transaction: inside it would need a second connection.
    const sealer = clientId === null ? undefined : (await this.clients.known(studioId, clientId)).sealer;
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'recalls.record-contact',
        subject: { kind: 'recall', id: recallId },
        content: { recallId, ...dto },
      },
      async (transaction) => {
        const { recordedAt } = transaction;
        if (artistId !== null) await this.people.require(transaction, [artistId]);
        let noteSealed: string | null = null;
        if (clientId !== null) {
          await transaction.lock('client', [clientId]);
          // What would be sealed now for a client who was erased could never be opened; the attempt itself is kept.
          const erased = await this.clients.isErased(transaction, clientId);
          if (!erased && sealer) noteSealed = sealer.seal(dto.note ?? null, sealedAsContactNote(dto.id));
        }
        const contact: RecallContact = {
          ...{ studioId, id: dto.id, recallId, audience, clientId, artistId, company, channel, outcome },
          noteSealed,
          note: clientId === null ? (dto.note ?? null) : null,
          occurredAt: occurredAt(dto.occurredAt, recordedAt),
          ...{ recordedAt, personId, via },
        };
        await transaction.insert(RecallContact, contact);
        transaction.note({ audience, channel, outcome, ...(clientId !== null && { clientId }) });
        return { id: dto.id, audience, outcome, occurredAt: contact.occurredAt, recordedAt };
      },
    );
  }

  /** The latest recorded first. */
  async list(
    actor: Actor,
    recallId: string,
    { audience, clientId, limit = defaultPageSize, after }: ContactPageDto,
  ): Promise<ContactPageView> {
    const { read } = this.database;
    const { studioId } = actor;
    await this.register.find(read, studioId, recallId);
    await refuseUnknownStart(read, 'recall_contact', studioId, after);
    const parameters: SqlValue[] = [studioId, recallId];
    const put = (value: SqlValue) => `$${parameters.push(value)}`;
    const conditions = [
      audience === undefined ? '' : ` AND contact.audience = ${put(audience)}`,
      clientId === undefined ? '' : ` AND contact.client_id = ${put(clientId)}`,
      after === undefined
        ? ''
        : ` AND (contact.recorded_at, contact.id) < (SELECT last.recorded_at, last.id FROM recall_contact AS last
            WHERE last.studio_id = $1 AND last.id = ${put(after)})`,
    ].join('');
    const rows = await read<ContactRow>(
      `SELECT contact.id, contact.audience, contact.client_id AS "clientId",
         client.reference AS "clientReference", contact.artist_id AS "artistId", contact.company,
         contact.channel, contact.outcome, contact.note_sealed AS "noteSealed", contact.note,
         contact.occurred_at AS "occurredAt", contact.recorded_at AS "recordedAt",
         contact.person_id AS "personId"
       FROM recall_contact AS contact
         LEFT JOIN client ON client.studio_id = contact.studio_id AND client.id = contact.client_id
       WHERE contact.studio_id = $1 AND contact.recall_id = $2${conditions}
       ORDER BY contact.recorded_at DESC, contact.id DESC LIMIT ${put(limit + 1)}`,
      parameters,
    );
    const { shown, next } = pageOf(rows, limit, ({ id }) => id);
    const withNotes = shown.flatMap((row) => (row.noteSealed === null ? [] : (row.clientId ?? [])));
    const clients = await this.shownClients.many(actor, withNotes, 'recall');
    return {
      items: shown.map(({ noteSealed, ...row }) => {
        if (row.clientId === null) return row;
        const sealer = clients.get(row.clientId)?.sealer;
        return { ...row, note: sealer?.open(noteSealed, sealedAsContactNote(row.id)) ?? null };
      }),
      next,
    };
  }
}

function nobodyIsToldInADrill(): Problem {
  return new Problem(
    409,
    'wrong-state',
    'This is a drill: nobody is told, so no attempt is recorded. Messages can be prepared and read.',
  );
}
