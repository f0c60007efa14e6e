import { readWrittenDayOrTime, readWrittenTime } from '../../identity/written-time.js';
import { bookedTime, plannedTime } from '../plan-times.js';
import { type VisitKind, visitKinds } from '../vocabulary.js';
import type { BookingCells, BookingColumn } from './booking-columns.js';

export interface BookingCellFault {
  column: BookingColumn | null;
  /** Words that follow the name of the column. */
  message: string;
}

/** One booking, read by itself. What is null is left out or at fault. */
export interface BookingRow {
  clientReference: string | null;
  clientName: string | null;
  contact: string | null;
  artist: string | null;
  procedure: string | null;
  visitKind: VisitKind | null;
  /** Instant in UTC with milliseconds. */
  plannedStart: string | null;
  bookedAt: string | null;
}

const longest: Partial<Record<BookingColumn, number>> = {
  'client name': 200,
  contact: 200,
  'booking id': 200,
};
const referenceShape = /^[0-9A-Z]{4}-?[0-9A-Z]{2}$/;

/**
 * Reads a booking by itself: every fault that needs no look at the record.
 *
 * @param cells texts without spaces around them; an empty cell is left out
 * @param given when it starts, where a calendar told that already; undefined: by the cell
 * @param visitKind what an empty cell means; null: nothing
 * @param timeZone of the studio, IANA
 * @param now instant of the server
 */
export function readBookingRow(
  cells: BookingCells,
  given: string | undefined,
  visitKind: VisitKind | null,
  timeZone: string,
  now: string,
): { row: BookingRow; faults: BookingCellFault[] } {
  const faults: BookingCellFault[] = [];
  const fault = (column: BookingColumn | null, message: string): null => {
    faults.push({ column, message });
    return null;
  };
  for (const [column, most] of Object.entries(longest) as [BookingColumn, number][]) {
    const length = cells[column]?.length ?? 0;
    if (length > most) fault(column, `has ${length} characters; at most ${most} are taken`);
  }
  const reference = cells['client reference']?.toUpperCase() ?? null;
  const soundReference =
    reference === null || referenceShape.test(reference)
      ? reference
      : fault(
          'client reference',
          `"${reference.slice(0, 20)}" is no client reference; it looks like 7KQ2-M4`,
        );
  if (cells['client reference'] === undefined && cells['client name'] === undefined) {
    fault('client name', 'is empty; write who comes, or the client reference');
  }
  const row: BookingRow = {
    clientReference: soundReference === null ? null : withHyphen(soundReference),
    clientName: cells['client name'] ?? null,
    contact: cells.contact ?? null,
    artist: cells.artist ?? null,
    procedure: cells.procedure ?? null,
    visitKind: visitOf(cells.visit, visitKind, fault),
    plannedStart: startOf(cells['planned start'], given, timeZone, now, fault),
    bookedAt: bookedOf(cells['booked at'], timeZone, now, fault),
  };
  return { row, faults };
}

type TellFault = (column: BookingColumn | null, message: string) => null;

function visitOf(cell: string | undefined, instead: VisitKind | null, fault: TellFault): VisitKind | null {
  const words = visitKinds.join(', ');
  if (cell === undefined) return instead ?? fault('visit', `is empty; write one of: ${words}`);
  const kind = visitKinds.find((each) => each === cell.toLowerCase());
  return kind ?? fault('visit', `"${cell.slice(0, 40)}" is none of: ${words}`);
}

function startOf(
  cell: string | undefined,
  given: string | undefined,
  timeZone: string,
  now: string,
  fault: TellFault,
): string | null {
  let instant = given;
  if (instant === undefined) {
    if (cell === undefined) return fault('planned start', 'is empty; write it as 2026-04-03 14:30');
    const read = readWrittenTime(cell, timeZone);
    if ('fault' in read) return fault('planned start', read.fault);
    instant = read.instant;
  }
  const planned = plannedTime(instant, now);
  return 'error' in planned ? fault('planned start', withoutName(planned.error)) : planned.instant;
}

function bookedOf(cell: string | undefined, timeZone: string, now: string, fault: TellFault): string | null {
  if (cell === undefined) return null;
  const read = readWrittenDayOrTime(cell, timeZone);
  if ('fault' in read) return fault('booked at', read.fault);
  const booked = bookedTime(read.instant, now);
  return 'error' in booked ? fault('booked at', withoutName(booked.error)) : booked.instant;
}

/** The name of the column stands before it already. */
function withoutName(message: string): string {
  return message.replace(/^(plannedStart|bookedAt) /, '').replace(/\.$/, '');
}

function withHyphen(reference: string): string {
  return reference.includes('-') ? reference : `${reference.slice(0, 4)}-${reference.slice(4)}`;
}
