import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BookingCells } from './booking-columns.js';
import { bookingColumns, bookingExample } from './booking-columns.js';
import { readBookingRow } from './booking-row.js';

const zone = 'Europe/Vienna';
const now = '2026-11-25T08:00:00.000Z';
const booking: BookingCells = {
  'client name': 'Ida Sommer',
  contact: '+43 1 5550100',
  visit: 'First session',
  'planned start': '2026-12-03 14:30',
};
const read = (cells: BookingCells, given?: string) => readBookingRow(cells, given, null, zone, now);
const faultsOf = (cells: BookingCells) =>
  read(cells).faults.map(({ column, message }) => `${column} ${message}`);

describe('a booking', () => {
  it('is read by the clocks of the studio', () => {
    expect(read({ ...booking, 'booked at': '2026-11-20' })).toEqual({
      faults: [],
      row: {
        clientReference: null,
        clientName: 'Ida Sommer',
        contact: '+43 1 5550100',
        artist: null,
        procedure: null,
        visitKind: 'first session',
        plannedStart: '2026-12-03T13:30:00.000Z',
        bookedAt: '2026-11-19T23:00:00.000Z',
      },
    });
  });

  it('names a client by reference, with or without its hyphen, or by name', () => {
    const { 'client name': _, contact: __, ...rest } = booking;
    expect(read({ ...rest, 'client reference': '7kq2m4' }).row.clientReference).toBe('7KQ2-M4');
    expect(faultsOf({ ...rest, 'client reference': '7' })[0]).toContain('looks like 7KQ2-M4');
    expect(faultsOf(rest)).toEqual(['client name is empty; write who comes, or the client reference']);
  });

  it('is told every fault at once', () => {
    expect(
      read({
        'client name': 'x'.repeat(201),
        visit: 'visit',
        'planned start': '03/04/2027 14:30',
        'booked at': 'today',
      }).faults.map(({ column }) => column),
    ).toEqual(['client name', 'visit', 'planned start', 'booked at']);
    expect(faultsOf({})).toHaveLength(3);
  });

  it('starts at a time that the clocks show once, neither long ago nor years ahead', () => {
    expect(faultsOf({ ...booking, 'planned start': '2027-03-28 02:30' })[0]).toContain('put forward');
    expect(faultsOf({ ...booking, 'planned start': '2027-10-31 02:30' })[0]).toContain('comes twice');
    expect(read({ ...booking, 'planned start': '2027-10-31 02:30+01:00' }).row.plannedStart).toBe(
      '2027-10-31T01:30:00.000Z',
    );
    expect(faultsOf({ ...booking, 'planned start': '2026-09-03 14:30' })[0]).toContain('late record');
    expect(faultsOf({ ...booking, 'planned start': '2062-09-03 14:30' })[0]).toContain('Check the year');
    expect(faultsOf({ ...booking, 'booked at': '2026-11-26' })[0]).toContain('in the future');
  });

  it('takes its start from a calendar and its visit from what was chosen for all', () => {
    const { visit: _, 'planned start': __, ...rest } = booking;
    const { row, faults } = readBookingRow(rest, '2026-12-03T13:30:00.000Z', 'touch-up', zone, now);
    expect(faults).toEqual([]);
    expect(row).toMatchObject({ plannedStart: '2026-12-03T13:30:00.000Z', visitKind: 'touch-up' });
  });

  it('is judged whatever stands in it', () => {
    const cells = fc.dictionary(
      fc.constantFrom(...bookingColumns.map(({ name }) => name)),
      fc.string({ minLength: 1, maxLength: 300 }),
    );
    fc.assert(
      fc.property(cells, (row) => {
        const { faults, row: judged } = read(row);
        if (faults.length === 0) expect(judged.plannedStart).not.toBeNull();
      }),
    );
  });
});

describe('the columns of bookings', () => {
  it('have each a name of its own, and the example is without fault', () => {
    const names: string[] = bookingColumns.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
    for (const row of bookingExample) {
      for (const name of Object.keys(row)) expect(names).toContain(name);
      expect(readBookingRow(row, undefined, null, zone, '2027-03-02T08:00:00.000Z').faults).toEqual([]);
    }
  });
});
