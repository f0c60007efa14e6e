import { describe, expect, it } from 'vitest';
import { bookingOfCalendar, type CalendarTexts } from './calendar-booking.js';

const known = { procedures: ['Powdered brows', 'Lip blush'], people: ['Mara Lindqvist'] };
const cellsOf = (texts: Partial<CalendarTexts>) =>
  bookingOfCalendar({ summary: '', description: '', attendees: [], ...texts }, known);

describe('an entry of a calendar', () => {
  it('names procedure, visit, artist and client in its summary, in any order, between dashes', () => {
    const expected = {
      cells: {
        procedure: 'powdered brows',
        visit: 'touch-up',
        artist: 'Mara Lindqvist',
        'client name': 'Ida Sommer',
      },
      fault: null,
    };
    expect(cellsOf({ summary: 'Ida Sommer – powdered brows – touch-up – Mara Lindqvist' })).toEqual(expected);
    expect(cellsOf({ summary: 'Mara Lindqvist - touch-up - powdered brows - Ida Sommer' })).toEqual(expected);
    expect(cellsOf({ summary: '7KQ2-M4 – Lip blush' }).cells).toEqual({
      'client reference': '7KQ2-M4',
      procedure: 'Lip blush',
    });
    // A hyphen inside a name is no dash between parts.
    expect(cellsOf({ summary: 'Anna-Lena Berg' }).cells).toEqual({ 'client name': 'Anna-Lena Berg' });
  });

  it('takes the one person who was invited for the client', () => {
    const attendees = [{ name: 'Ida Sommer', address: 'ida@example.org' }];
    expect(cellsOf({ summary: 'Lip blush', attendees }).cells).toEqual({
      'client name': 'Ida Sommer',
      contact: 'ida@example.org',
      procedure: 'Lip blush',
    });
    const artist = { name: 'Mara Lindqvist', address: 'mara@studio.example' };
    expect(cellsOf({ attendees: [artist, ...attendees] }).cells['client name']).toBe('Ida Sommer');
    const two = [...attendees, { name: 'Jo Berg', address: 'jo@example.org' }];
    expect(cellsOf({ summary: 'Pia Berg – Lip blush', attendees: two }).cells).toEqual({
      'client name': 'Pia Berg',
      procedure: 'Lip blush',
    });
    expect(
      cellsOf({ summary: 'Ida', attendees: [{ name: null, address: 'ida@example.org' }] }).cells,
    ).toEqual({
      'client name': 'Ida',
      contact: 'ida@example.org',
    });
  });

  it('says in lines of its description what counts before all else', () => {
    const description =
      'Client: Ida Sommer\ncontact : +43 1 5550100\nProcedure: Lip blush\nVisit: refresh\nBooked: 2026-11-20\nBring: photos';
    expect(cellsOf({ summary: 'Powdered brows – somebody', description })).toEqual({
      cells: {
        'client name': 'Ida Sommer',
        contact: '+43 1 5550100',
        procedure: 'Lip blush',
        visit: 'refresh',
        'booked at': '2026-11-20',
      },
      fault: null,
    });
  });

  it('does not guess who the client is among several parts', () => {
    expect(cellsOf({ summary: 'Ida – brwos' }).fault).toContain('"Ida", "brwos"');
  });
});
