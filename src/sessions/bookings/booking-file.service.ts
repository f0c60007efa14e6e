import { Injectable } from '@nestjs/common';
import { foldContact } from '../../clients/contact-folding.js';
import { localDay } from '../../identity/local-day.js';
import type { Actor } from '../../platform/actor.js';
import { StudioKeys } from '../../platform/encryption/studio-keys.service.js';
import { type CalendarEntry, isCalendar, readCalendar } from '../../platform/files/calendar-file.js';
import { cellFault, readCsvTable } from '../../platform/files/csv-table.js';
import type { FileFaultView } from '../../platform/files/file-faults.views.js';
import type { VisitKind } from '../vocabulary.js';
import { type BookingCells, type BookingColumn, bookingColumns } from './booking-columns.js';
import type { ReadBooking } from './booking-plan.js';
import { type BookingCellFault, readBookingRow } from './booking-row.js';
import { bookingOfCalendar, type KnownWords } from './calendar-booking.js';

/** What a file says and nothing on record was asked for yet. */
export interface BookingFile {
  kind: 'table' | 'calendar';
  bookings: (ReadBooking & { number: number })[];
  faults: FileFaultView[];
}

interface Given {
  text: string;
  procedureId?: string;
  visitKind?: VisitKind;
}

/** What was read of one booking before its cells are judged. */
interface Found {
  number: number;
  place: string;
  cells: BookingCells;
  start: string | undefined;
  /** By what a calendar knows it. */
  key: string | null;
  faults: BookingCellFault[];
  warnings: string[];
  cancelled: boolean;
  leftOut: string | null;
}

/** Reads lists of bookings, and hashes under the studio's key by what clients and bookings are found. */
@Injectable()
export class BookingFiles {
  constructor(private readonly studioKeys: StudioKeys) {}

  /**
   * Call before a transaction, for keys are not read inside it.
   * @param known words by which entries of a calendar are understood
   * @param now instant of the server
   */
  async read(actor: Actor, given: Given, known: KnownWords, now: string): Promise<BookingFile> {
    const calendar = isCalendar(given.text);
    const { found, faults } = calendar ? this.ofCalendar(actor, given, known, now) : this.ofTable(given.text);
    const bookings: BookingFile['bookings'] = [];
    for (const each of found) bookings.push(await this.judge(actor, given, each, now));
    return { kind: calendar ? 'calendar' : 'table', bookings, faults };
  }

  private ofTable(text: string): { found: Found[]; faults: FileFaultView[] } {
    const { rows, faults } = readCsvTable(text, bookingColumns);
    const found = rows.map(
      ({ number, cells, faults }): Found => ({
        number,
        place: `row ${number}`,
        cells,
        start: undefined,
        key: null,
        faults: [...faults],
        warnings: [],
        cancelled: false,
        leftOut: null,
      }),
    );
    return { found, faults };
  }

  private ofCalendar(
    actor: Actor,
    { text, procedureId }: Given,
    known: KnownWords,
    now: string,
  ): { found: Found[]; faults: FileFaultView[] } {
    const { entries, faults } = readCalendar(text, actor.timeZone);
    const today = localDay(now, actor.timeZone);
    const found = entries.map((entry): Found => {
      const { cells, fault } = bookingOfCalendar(entry, known);
      const sound: BookingCells = {};
      const unreadable: BookingCellFault[] = [];
      for (const [column, cell] of Object.entries(cells) as [BookingColumn, string][]) {
        const message = cellFault(cell);
        if (message === null) sound[column] = cell;
        else unreadable.push({ column, message });
      }
      // When the entry was made is when it was booked, unless a line says otherwise or a clock was wrong.
      if (cells['booked at'] === undefined && entry.createdAt !== null && entry.createdAt <= now) {
        sound['booked at'] = entry.createdAt;
      }
      return {
        number: entry.number,
        place: `entry ${entry.number}`,
        cells: sound,
        start: entry.start ?? undefined,
        key: entry.key,
        faults: [
          ...entry.faults.map((message) => ({ column: 'planned start' as const, message })),
          ...(fault === null ? [] : [{ column: 'client name' as const, message: fault }]),
          ...unreadable,
        ],
        warnings: [...entry.remarks],
        cancelled: entry.cancelled,
        leftOut: this.leftOutOf(actor, entry, cells, procedureId, today),
      };
    });
    return { found, faults };
  }

  /** A calendar holds what is past and what is no booking; none of that stops the rest. */
  private leftOutOf(
    { timeZone }: Actor,
    { start }: CalendarEntry,
    cells: BookingCells,
    procedureId: string | undefined,
    today: string,
  ): string | null {
    if (start !== null && localDay(start, timeZone) < today) {
      return 'It lies before today. What took place already goes in as a late record.';
    }
    return cells.procedure === undefined && procedureId === undefined
      ? 'It names no procedure that is offered here, so it is taken for no booking.'
      : null;
  }

  private async judge(
    { studioId, timeZone }: Actor,
    { visitKind }: Given,
    found: Found,
    now: string,
  ): Promise<BookingFile['bookings'][number]> {
    const { cells, start, faults: unreadable, key, number, place, warnings, cancelled, leftOut } = found;
    const { row, faults } = readBookingRow(cells, start, visitKind ?? null, timeZone, now);
    // A cell that could not be read is not also empty, and of cells under no columns nothing can be said.
    const others = unreadable.some(({ column }) => column === null)
      ? []
      : faults.filter(({ column }) => !unreadable.some((fault) => fault.column === column));
    const hash = (value: string | null) =>
      value === null ? null : this.studioKeys.searchHash(studioId, value);
    const id = cells['booking id'];
    return {
      number,
      place,
      row,
      faults: [...unreadable, ...others],
      warnings,
      nameHash: await hash(row.clientName),
      contactHash: await hash(row.contact === null ? null : foldContact(row.contact)),
      bookingHash: await hash(key !== null ? `calendar\n${key}` : id === undefined ? null : `list\n${id}`),
      cancelled,
      leftOut,
    };
  }
}
