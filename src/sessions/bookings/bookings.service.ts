import { Injectable } from '@nestjs/common';
import { In } from 'typeorm';
import { v7 as uuidv7 } from 'uuid';
import { Client } from '../../clients/client.entity.js';
import { ClientAccessLog } from '../../clients/client-access-log.service.js';
import { Clients, erased, type KnownClient } from '../../clients/clients.service.js';
import { People } from '../../identity/people.service.js';
import type { Actor } from '../../platform/actor.js';
import { Clock } from '../../platform/clock.js';
import { Database } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Transactions } from '../../platform/database/transactions.js';
import { unusableFile } from '../../platform/files/unusable-file.js';
import { notFound } from '../../platform/problem.js';
import { NewSessions } from '../new-sessions.service.js';
import { Procedure } from '../procedure.entity.js';
import { ProspectJudge } from '../prospects/prospect-judge.service.js';
import { type BookingFile, BookingFiles } from './booking-file.service.js';
import { type BookingsOnRecord, type PlannedBooking, planBookings } from './booking-plan.js';
import type { JudgeBookingsDto, TakeInBookingsDto } from './bookings.dto.js';
import type {
  BookingCountsView,
  BookingRowView,
  BookingsPreviewView,
  TakenInBookingsView,
  TakenInBookingView,
} from './bookings.views.js';
import { BookingsOnRecordLookUp } from './bookings-on-record.service.js';

type Given = Pick<JudgeBookingsDto, 'text' | 'artistId' | 'procedureId' | 'visitKind'>;

interface Judged {
  planned: PlannedBooking[];
  preview: BookingsPreviewView;
}

/**
 * Bookings from a list or a calendar. Guarantees: a preview makes no session and no client; a list is taken in whole or
 * not at all, judged again under the write's own locks; a booking that is on record is taken in no second time; names and
 * contacts are sealed like any client's, and only whoever brought the file is told them again.
 */
@Injectable()
export class Bookings {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly clock: Clock,
    private readonly people: People,
    private readonly files: BookingFiles,
    private readonly record: BookingsOnRecordLookUp,
    private readonly clients: Clients,
    private readonly accessLog: ClientAccessLog,
    private readonly newSessions: NewSessions,
    private readonly prospects: ProspectJudge,
  ) {}

  async preview(actor: Actor, dto: JudgeBookingsDto): Promise<BookingsPreviewView> {
    const people = await this.peopleAtWork(actor);
    const file = await this.read(actor, dto, people);
    const record = await this.record.find(this.database.read, actor, file.bookings, people);
    const { preview, planned } = judge(file, record, dto);
    // That a name is a client's is told as a search would tell it.
    await this.accessLog.note(actor, 'client search', knownClientIds(planned));
    return preview;
  }

  async takeIn(actor: Actor, dto: TakeInBookingsDto): Promise<TakenInBookingsView> {
    const people = await this.peopleAtWork(actor);
    const file = await this.read(actor, dto, people);
    const told: string[] = [];
    try {
      return await this.transactions.write(
        actor,
        {
          id: dto.id,
          action: 'sessions.take-in-bookings',
          subject: { kind: 'bookings', id: dto.id },
          content: dto,
        },
        async (transaction) => {
          // One list at a time, so that a client or booking that is new in two of them is made once.
          await transaction.lockStudio();
          const record = await this.record.find(transaction.read, actor, file.bookings, people);
          const { preview, planned } = judge(file, record, dto);
          told.push(...knownClientIds(planned));
          if (!preview.usable) throw unusableFile(preview);
          const rows = await this.write(transaction, planned, file);
          await this.prospects.mark(transaction);
          return { recordedAt: transaction.recordedAt, counts: preview.counts, rows };
        },
      );
    } finally {
      await this.accessLog.note(actor, 'client search', told);
    }
  }

  private async read(actor: Actor, given: Given, people: BookingsOnRecord['people']): Promise<BookingFile> {
    const procedures = await this.record.procedures(this.database.read, actor.studioId);
    refuseUnknown('person', given.artistId, people);
    refuseUnknown('procedure', given.procedureId, procedures);
    const known = {
      procedures: procedures.map(({ name }) => name),
      people: people.map(({ name }) => name),
    };
    return this.files.read(actor, given, known, this.clock.now());
  }

  private async write(
    transaction: Transaction,
    planned: readonly PlannedBooking[],
    file: BookingFile,
  ): Promise<TakenInBookingView[]> {
    const { studioId, manager } = transaction;
    const artistIds = planned.flatMap(({ artistId }) => artistId ?? []);
    // Names were read before the transaction; somebody may have left since.
    await this.people.require(transaction, artistIds, { atWork: true });
    const ids = [...new Set(knownClientIds(planned.filter(({ effect }) => effect === 'new session')))];
    await transaction.lock('client', ids);
    const known = ids.length === 0 ? [] : await manager.find(Client, { where: { studioId, id: In(ids) } });
    const gone = known.find(({ erasedAt }) => erasedAt !== null);
    if (gone !== undefined) throw erased(gone.id);
    const clients = new Map<string, KnownClient>(
      // Nothing is sealed under the key of a client on record.
      known.map((client) => [client.id, { client, sealer: undefined }]),
    );
    const procedures = await this.procedures(transaction, planned);
    const made = new Map<number, KnownClient>();
    const rows: TakenInBookingView[] = [];
    for (const [
      index,
      { read, effect, client: meant, artistId, procedureId, makesClient },
    ] of planned.entries()) {
      if (effect !== 'new session' || meant === null) continue;
      const { clientName, contact, plannedStart, bookedAt, visitKind } = read.row;
      if (makesClient && clientName !== null) {
        made.set(index, await this.clients.make(transaction, uuidv7(), { name: clientName, contact }));
      }
      const client = 'id' in meant ? clients.get(meant.id) : made.get(meant.madeBy);
      const procedure = procedures.get(procedureId ?? '');
      if (!client || !procedure || artistId === null || visitKind === null || plannedStart === null) {
        throw new Error('A booking without faults does not say what is planned.');
      }
      const { session } = await this.newSessions.add(
        transaction,
        client,
        procedure,
        { id: uuidv7(), artistId, visitKind },
        { plannedStart, bookedAt, bookingHash: read.bookingHash },
      );
      const { id: clientId, reference: clientReference } = client.client;
      const row = file.bookings[index]?.number ?? 0;
      rows.push({
        row,
        sessionId: session.id,
        plannedStart,
        clientId,
        clientReference,
        newClient: 'madeBy' in meant,
      });
    }
    return rows;
  }

  private async procedures(
    transaction: Transaction,
    planned: readonly PlannedBooking[],
  ): Promise<Map<string, Procedure>> {
    const ids = [...new Set(planned.flatMap(({ procedureId }) => procedureId ?? []))];
    if (ids.length === 0) return new Map();
    const { studioId, manager } = transaction;
    const procedures = await manager.find(Procedure, { where: { studioId, id: In(ids) } });
    return new Map(procedures.map((procedure) => [procedure.id, procedure]));
  }

  private async peopleAtWork(actor: Actor): Promise<BookingsOnRecord['people']> {
    const people = await this.people.list(actor);
    return people.flatMap(({ id, name, state, role }) =>
      state === 'active' && role !== 'auditor' && name !== null ? [{ id, name }] : [],
    );
  }
}

function refuseUnknown(
  what: 'person' | 'procedure',
  id: string | undefined,
  known: readonly { id: string }[],
): void {
  if (id !== undefined && !known.some((each) => each.id === id)) throw notFound(what, id);
}

function knownClientIds(planned: readonly PlannedBooking[]): string[] {
  return planned.flatMap(({ client }) => (client !== null && 'id' in client ? [client.id] : []));
}

function judge(file: BookingFile, record: BookingsOnRecord, { artistId, procedureId }: Given): Judged {
  const planned = planBookings(file.bookings, record, {
    artistId: artistId ?? null,
    procedureId: procedureId ?? null,
  });
  const names = new Map([...record.people, ...record.procedures].map(({ id, name }) => [id, name]));
  const rows = planned.map((each, index): BookingRowView => {
    const { read, faults, warnings, effect, client, clientReference, sessionId } = each;
    const { row } = read;
    return {
      row: file.bookings[index]?.number ?? 0,
      clientName: row.clientName,
      clientReference: clientReference ?? row.clientReference,
      newClient: client !== null && 'madeBy' in client,
      artist: each.artistId === null ? row.artist : (names.get(each.artistId) ?? null),
      procedure: each.procedureId === null ? row.procedure : (names.get(each.procedureId) ?? null),
      visitKind: row.visitKind,
      plannedStart: row.plannedStart,
      effect,
      sessionId,
      faults,
      warnings,
    };
  });
  const counts = countsOf(planned);
  const usable = file.faults.length === 0 && counts.faultyRows === 0;
  return { planned, preview: { usable, kind: file.kind, counts, faults: file.faults, rows } };
}

function countsOf(planned: readonly PlannedBooking[]): BookingCountsView {
  const having = (effect: PlannedBooking['effect']) =>
    planned.filter((each) => each.effect === effect).length;
  return {
    rows: planned.length,
    faultyRows: planned.filter(({ faults }) => faults.length > 0).length,
    sessions: having('new session'),
    clients: planned.filter(({ effect, makesClient }) => effect !== null && makesClient).length,
    onRecord: having('on record already'),
    leftOut: having('left out'),
  };
}
