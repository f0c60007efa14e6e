import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/actor.js';
import { placeholders, type Read } from '../../platform/database/database.js';
import {
  type BookingsOnRecord,
  closeStartsMinutes,
  type KnownBooking,
  type KnownBookingClient,
  type ReadBooking,
} from './booking-plan.js';

const mostProcedures = 500;
const mostClients = 5_000;
const mostSessions = 20_000;

/** Looks up what a list of bookings may touch, in few queries however long it is. */
@Injectable()
export class BookingsOnRecordLookUp {
  /**
   * @param read of a transaction, or outside
   * @param people who works here, by name: names are opened before a transaction, never inside it
   */
  async find(
    read: Read,
    { studioId }: Actor,
    bookings: readonly ReadBooking[],
    people: BookingsOnRecord['people'],
  ): Promise<BookingsOnRecord> {
    return {
      procedures: await this.procedures(read, studioId),
      people,
      clients: await this.clients(read, studioId, bookings),
      sessions: await this.sessions(read, studioId, bookings),
    };
  }

  procedures(read: Read, studioId: string): Promise<{ id: string; name: string }[]> {
    return read(
      `SELECT id, name FROM procedure WHERE studio_id = $1 AND archived_at IS NULL
       ORDER BY lower(name), id LIMIT ${mostProcedures}`,
      [studioId],
    );
  }

  private async clients(
    read: Read,
    studioId: string,
    bookings: readonly ReadBooking[],
  ): Promise<KnownBookingClient[]> {
    const references = different(bookings.map(({ row }) => row.clientReference));
    const names = different(bookings.map(({ nameHash }) => nameHash));
    const conditions = [
      ...(references.length === 0 ? [] : [`reference IN (${placeholders(references)})`]),
      ...(names.length === 0 ? [] : [`name_hash IN (${placeholders(names, references.length + 2)})`]),
    ];
    if (conditions.length === 0) return [];
    const rows = await read<Omit<KnownBookingClient, 'erased'> & { erasedAt: string | null }>(
      `SELECT id, reference, name_hash AS "nameHash", contact_hash AS "contactHash", erased_at AS "erasedAt"
       FROM client WHERE studio_id = $1 AND (${conditions.join(' OR ')})
       ORDER BY created_at, id LIMIT ${mostClients}`,
      [studioId, ...references, ...names],
    );
    return rows.map(({ erasedAt, ...client }) => ({ ...client, erased: erasedAt !== null }));
  }

  /** Around the times of the list, and whatever came from it earlier. */
  private async sessions(
    read: Read,
    studioId: string,
    bookings: readonly ReadBooking[],
  ): Promise<KnownBooking[]> {
    const columns = `id, client_id AS "clientId", artist_id AS "artistId", procedure_id AS "procedureId",
      planned_start AS "plannedStart", state, booking_hash AS "bookingHash"`;
    const starts = different(bookings.map(({ row }) => row.plannedStart)).sort();
    const hashes = different(bookings.map(({ bookingHash }) => bookingHash));
    const [first] = starts;
    const last = starts.at(-1);
    const around =
      first === undefined || last === undefined
        ? []
        : await read<KnownBooking>(
            `SELECT ${columns} FROM session WHERE studio_id = $1 AND planned_start BETWEEN $2 AND $3
             ORDER BY planned_start, id LIMIT ${mostSessions}`,
            [studioId, shifted(first, -closeStartsMinutes), shifted(last, closeStartsMinutes)],
          );
    const same =
      hashes.length === 0
        ? []
        : await read<KnownBooking>(
            `SELECT ${columns} FROM session WHERE studio_id = $1 AND booking_hash IN (${placeholders(hashes)})
             ORDER BY id`,
            [studioId, ...hashes],
          );
    return [...new Map([...around, ...same].map((session) => [session.id, session])).values()];
  }
}

function different(values: readonly (string | null)[]): string[] {
  return [...new Set(values.filter((value) => value !== null))];
}

function shifted(instant: string, minutes: number): string {
  return new Date(Date.parse(instant) + minutes * 60_000).toISOString();
}
