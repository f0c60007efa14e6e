import fc from 'fast-check';
import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import { isCalendar, maximumRepetitions, readCalendar } from './calendar-file.js';

const newYork = 'America/New_York';
const calendar = (...events: string[]) =>
  [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    ...events.map((event) => `BEGIN:VEVENT\r\n${event}\r\nEND:VEVENT`),
    'END:VCALENDAR',
  ].join('\r\n');
const event = (...lines: string[]) => calendar(['UID:1', ...lines].join('\r\n'));
const startsOf = (text: string, zone = 'Europe/Vienna') =>
  readCalendar(text, zone).entries.map(({ start }) => start);
const faultOf = (text: string) => readCalendar(text, 'Europe/Vienna').entries[0]?.faults[0];

/** RFC 5545, 3.3.5, "DATE-TIME", its own examples [S, quoted word by word in several implementations]. */
describe('a start by RFC 5545, 3.3.5', () => {
  it('in UTC is that instant', () => {
    expect(startsOf(event('DTSTART:19980119T070000Z'))).toEqual(['1998-01-19T07:00:00.000Z']);
  });

  it('with a time zone is by the clocks there', () => {
    expect(startsOf(event('DTSTART;TZID=America/New_York:19980119T020000'))).toEqual([
      '1998-01-19T07:00:00.000Z',
    ]);
  });

  it('without one is by the clocks of the studio', () => {
    expect(startsOf(event('DTSTART:19980118T230000'))).toEqual(['1998-01-18T22:00:00.000Z']);
    expect(startsOf(event('DTSTART:19980118T230000'), newYork)).toEqual(['1998-01-19T04:00:00.000Z']);
  });

  it('that comes twice is the first of the two, and says so', () => {
    const [entry] = readCalendar(event('DTSTART;TZID=America/New_York:20071104T013000'), 'UTC').entries;
    expect(entry?.start).toBe('2007-11-04T05:30:00.000Z');
    expect(entry?.remarks).toEqual([expect.stringContaining('comes twice')]);
  });

  it('that does not occur counts by the offset before the gap, and says so', () => {
    const [entry] = readCalendar(event('DTSTART;TZID=America/New_York:20070311T023000'), 'UTC').entries;
    expect(entry?.start).toBe('2007-03-11T07:30:00.000Z');
    expect(entry?.remarks).toEqual([expect.stringContaining('taken as 2007-03-11 03:30')]);
  });

  it('on a day without a time is a fault', () => {
    expect(faultOf(event('DTSTART;VALUE=DATE:19971102'))).toContain('a day without a time, 1997-11-02');
  });
});

/** RFC 5545, 3.8.5.3, "Recurrence Rule", its own examples [S]; New York has daylight time until 1997-10-26. */
describe('a repetition by RFC 5545, 3.8.5.3', () => {
  const startAt9 = 'DTSTART;TZID=America/New_York:19970902T090000';

  it('goes on daily for ten occurrences', () => {
    const starts = startsOf(event(startAt9, 'RRULE:FREQ=DAILY;COUNT=10'));
    expect(starts).toEqual(
      Array.from({ length: 10 }, (_, day) => `1997-09-${String(day + 2).padStart(2, '0')}T13:00:00.000Z`),
    );
  });

  it('goes on weekly on Tuesday and Thursday for five weeks', () => {
    const days = ['09-02', '09-04', '09-09', '09-11', '09-16', '09-18', '09-23', '09-25', '09-30', '10-02'];
    const expected = days.map((day) => `1997-${day}T13:00:00.000Z`);
    expect(startsOf(event(startAt9, 'RRULE:FREQ=WEEKLY;UNTIL=19971007T000000Z;WKST=SU;BYDAY=TU,TH'))).toEqual(
      expected,
    );
    expect(startsOf(event(startAt9, 'RRULE:FREQ=WEEKLY;COUNT=10;WKST=SU;BYDAY=TU,TH'))).toEqual(expected);
  });

  it('goes on monthly on the first Friday, at nine by the clock in summer and winter', () => {
    const rule = 'RRULE:FREQ=MONTHLY;COUNT=10;BYDAY=1FR';
    expect(startsOf(event('DTSTART;TZID=America/New_York:19970905T090000', rule))).toEqual([
      '1997-09-05T13:00:00.000Z',
      '1997-10-03T13:00:00.000Z',
      '1997-11-07T14:00:00.000Z',
      '1997-12-05T14:00:00.000Z',
      '1998-01-02T14:00:00.000Z',
      '1998-02-06T14:00:00.000Z',
      '1998-03-06T14:00:00.000Z',
      '1998-04-03T14:00:00.000Z',
      '1998-05-01T13:00:00.000Z',
      '1998-06-05T13:00:00.000Z',
    ]);
  });

  it('ends with the time that UNTIL names, whose clock is another', () => {
    // The last time, 1997-09-16 09:00 EDT, is 13:00 in UTC.
    const starts = startsOf(event(startAt9, 'RRULE:FREQ=WEEKLY;UNTIL=19970916T130000Z'));
    expect(starts).toEqual([
      '1997-09-02T13:00:00.000Z',
      '1997-09-09T13:00:00.000Z',
      '1997-09-16T13:00:00.000Z',
    ]);
    expect(startsOf(event(startAt9, 'RRULE:FREQ=WEEKLY;UNTIL=19970916T125959Z'))).toHaveLength(2);
  });

  it('leaves out times that are taken out, in whichever zone they are written, and takes those added', () => {
    const rule = 'RRULE:FREQ=DAILY;COUNT=4';
    const starts = startsOf(
      event(
        startAt9,
        rule,
        'EXDATE;TZID=America/New_York:19970903T090000',
        'EXDATE:19970904T130000Z',
        'RDATE;TZID=America/New_York:19970910T100000',
      ),
    );
    expect(starts).toEqual([
      '1997-09-02T13:00:00.000Z',
      '1997-09-05T13:00:00.000Z',
      '1997-09-10T14:00:00.000Z',
    ]);
  });

  it('has the times that other entries replace where they were moved to, under the keys they had', () => {
    const text = calendar(
      ['UID:1', startAt9, 'RRULE:FREQ=DAILY;COUNT=3'].join('\r\n'),
      [
        'UID:1',
        'RECURRENCE-ID;TZID=America/New_York:19970903T090000',
        'DTSTART;TZID=America/New_York:19970903T150000',
      ].join('\r\n'),
    );
    expect(readCalendar(text, 'UTC').entries.map(({ key, start }) => [key, start])).toEqual([
      ['1\n1997-09-02T13:00:00.000Z', '1997-09-02T13:00:00.000Z'],
      ['1\n1997-09-04T13:00:00.000Z', '1997-09-04T13:00:00.000Z'],
      ['1\n1997-09-03T13:00:00.000Z', '1997-09-03T19:00:00.000Z'],
    ]);
  });

  it('without an end, too often, or by a rule that may never meet a day is refused by its entry', () => {
    expect(faultOf(event(startAt9, 'RRULE:FREQ=DAILY'))).toContain('without an end');
    expect(faultOf(event(startAt9, `RRULE:FREQ=DAILY;COUNT=${maximumRepetitions + 1}`))).toContain(
      'more than 60 times',
    );
    for (const rule of [
      'FREQ=SECONDLY;COUNT=3;BYMONTH=12',
      'FREQ=DAILY;COUNT=5;BYMONTH=2;BYMONTHDAY=30',
      'FREQ=DAILY;INTERVAL=7;COUNT=2;BYDAY=MO',
      'FREQ=YEARLY;COUNT=2;BYWEEKNO=20',
      'FREQ=MONTHLY;COUNT=2;BYDAY=6MO',
      'FREQ=MONTHLY;INTERVAL=48;COUNT=2;BYDAY=5MO',
      'FREQ=MONTHLY;INTERVAL=12;COUNT=3;BYMONTHDAY=30',
    ]) {
      expect(faultOf(event(startAt9, `RRULE:${rule}`)), rule).toMatch(/repeats by a rule/);
    }
  });
});

describe('a calendar', () => {
  it('is known by how it begins', () => {
    expect(isCalendar('\uFEFFBEGIN:VCALENDAR\r\n')).toBe(true);
    expect(isCalendar('maker,product')).toBe(false);
  });

  it('may define its time zones itself, under any name', () => {
    const zone = [
      'BEGIN:VTIMEZONE',
      'TZID:Studio time',
      'BEGIN:STANDARD',
      'DTSTART:19701025T030000',
      'TZOFFSETFROM:+0200',
      'TZOFFSETTO:+0100',
      'RRULE:FREQ=YEARLY;BYMONTH=10;BYDAY=-1SU',
      'END:STANDARD',
      'BEGIN:DAYLIGHT',
      'DTSTART:19700329T020000',
      'TZOFFSETFROM:+0100',
      'TZOFFSETTO:+0200',
      'RRULE:FREQ=YEARLY;BYMONTH=3;BYDAY=-1SU',
      'END:DAYLIGHT',
      'END:VTIMEZONE',
    ].join('\r\n');
    const text = (start: string) =>
      event(`DTSTART;TZID=Studio time:${start}`).replace('VERSION:2.0', `VERSION:2.0\r\n${zone}`);
    expect(startsOf(text('20260703T143000'))).toEqual(['2026-07-03T12:30:00.000Z']);
    expect(startsOf(text('20261203T143000'))).toEqual(['2026-12-03T13:30:00.000Z']);
    expect(faultOf(event('DTSTART;TZID=Studio time:20260703T143000'))).toContain('not known and not defined');
  });

  it('gives the texts, who was invited, and what was cancelled', () => {
    const [entry] = readCalendar(
      event(
        'DTSTART:20260703T143000Z',
        'SUMMARY:Ida Sommer\\, brows – Powder brows',
        'DESCRIPTION:Contact: +43 1 5550100\\nVisit: touch-up',
        'ORGANIZER;CN=Mara:mailto:mara@studio.example',
        'ATTENDEE;CN=Mara:mailto:mara@studio.example',
        'ATTENDEE;CUTYPE=ROOM;CN=Room 1:mailto:room@studio.example',
        'ATTENDEE;CN="Sommer, Ida":mailto:ida@example.org',
        'CREATED:20260601T080000Z',
        'STATUS:CANCELLED',
      ),
      'UTC',
    ).entries;
    expect(entry).toEqual({
      number: 1,
      key: '1',
      start: '2026-07-03T14:30:00.000Z',
      summary: 'Ida Sommer, brows – Powder brows',
      description: 'Contact: +43 1 5550100\nVisit: touch-up',
      attendees: [{ name: 'Sommer, Ida', address: 'ida@example.org' }],
      createdAt: '2026-06-01T08:00:00.000Z',
      cancelled: true,
      faults: [],
      remarks: [],
    });
  });

  it('that cannot be read, is empty or too long is a fault of the file', () => {
    expect(readCalendar('BEGIN:VCALENDAR\r\nBEGIN:VEVENT', 'UTC').faults).toHaveLength(1);
    expect(readCalendar('BEGIN:VCALENDAR\r\nnonsense\r\nEND:VCALENDAR', 'UTC').faults).toHaveLength(1);
    expect(readCalendar(calendar(), 'UTC').faults[0]?.message).toContain('no entries');
    expect(faultOf(event('SUMMARY:x'))).toContain('no start');
    const many = Array.from({ length: 1_001 }, (_, index) => `UID:${index}\r\nDTSTART:20260703T143000Z`);
    expect(readCalendar(calendar(...many), 'UTC').faults[0]?.message).toContain('more than 1000');
  });

  it('that another writer wrote gives back its texts, whatever they are', () => {
    const text = fc
      .string({ unit: 'grapheme', maxLength: 60 })
      .map((value) => value.replace(/[\p{Cc}\p{Cs}\uFEFF]/gu, '').trim());
    fc.assert(
      fc.property(fc.array(fc.tuple(text, text), { minLength: 1, maxLength: 5 }), (events) => {
        const written = new ICAL.Component('vcalendar');
        for (const [index, [summary, description]] of events.entries()) {
          const each = new ICAL.Component('vevent');
          each.addPropertyWithValue('uid', `${index}`);
          each.addPropertyWithValue('summary', summary);
          each.addPropertyWithValue('description', description);
          each.addPropertyWithValue('dtstart', ICAL.Time.fromDateTimeString('2026-07-03T14:30:00Z'));
          written.addSubcomponent(each);
        }
        const { entries } = readCalendar(written.toString(), 'UTC');
        expect(entries.map((entry) => [entry.summary, entry.description])).toEqual(events);
      }),
    );
  });
});
