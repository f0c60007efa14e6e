import fc from 'fast-check';
import ical, { type VEvent } from 'node-ical';
import { describe, expect, it } from 'vitest';
import { CalendarWriter } from '../../src/alerts/calendar/calendar-writer.service.js';
import type { CalendarEntry } from '../../src/alerts/calendar/nearest-entries.js';
import type { Config } from '../../src/platform/config.js';
import { type ContentLine, contentLines, eventsOf, plainText } from '../support/calendar-lines.js';

// The service writes calendars with one library. Here they are read by another, written apart from it, and line by line
// by the words of RFC 5545 (3.1, 3.3.4, 3.3.11, 3.6, 3.6.1, 3.8.4.7 [S, quoted word by word at icalendar.org]).

const studioId = '0198a1b2-0000-7000-8000-000000000001';
const owner = { studioId, studioName: 'Salon Größe, "Ä"; 2', today: '2026-06-15' };
const writer = new CalendarWriter({ publicUrl: 'https://studio.example' } as Config);

const awkward = fc.constantFrom(
  ...'abc ,;:\\"\'=<>\t\n\r',
  '\r\n',
  '\u0000',
  '\u2028',
  '\u00ad',
  '\u202e',
  'ä',
  '漢',
  '🖋',
  '\ud800',
);
const anyText = fc.string({ unit: awkward, maxLength: 120 });
const anyDay = fc
  .date({ min: new Date('2020-01-01'), max: new Date('2040-12-31'), noInvalidDate: true })
  .map((date) => date.toISOString().slice(0, 10));
const anyEntry: fc.Arbitrary<CalendarEntry> = fc
  .record({
    id: fc.uuid(),
    days: fc.tuple(anyDay, anyDay),
    title: anyText.map((text) => `Use by: ${text}`),
    details: fc.array(anyText, { maxLength: 3 }),
    changes: fc.nat({ max: 50 }),
    recordedAt: fc
      .date({ min: new Date('2020-01-01'), max: new Date('2026-01-01'), noInvalidDate: true })
      .map((date) => date.toISOString()),
  })
  .map(({ id, days, ...rest }) => {
    const [firstDay = '', lastDay = ''] = [...days].sort();
    return { key: `use-by ${id}`, firstDay, lastDay, page: `/stock/lots/${id}`, ...rest };
  });
const anyEntries = fc.uniqueArray(anyEntry, { maxLength: 5, selector: ({ key }) => key });

function only(lines: readonly ContentLine[], name: string): ContentLine {
  const found = lines.filter((line) => line.name === name);
  const [line] = found;
  if (!line || found.length > 1) throw new Error(`${name} stands there ${found.length} times.`);
  return line;
}

const written = (entries: CalendarEntry[], more = 0) => writer.write(owner, { entries, more });
const asDate = (day: string) => day.replaceAll('-', '');
const dayAfter = (day: string) =>
  new Date(Date.parse(`${day}T00:00:00Z`) + 86_400_000).toISOString().slice(0, 10);

/** What stays of a text on one line: what nobody sees, and what would end the line, is not kept. */
const visible = (text: string) => text.replace(/[\p{Cc}\p{Zl}\p{Zp}\p{Cf}\p{Cs}\ufffd\s]/gu, '');

describe('a calendar by the words of RFC 5545', () => {
  it('keeps to lines, their length and ends, and has each property that is asked for once', () => {
    fc.assert(
      fc.property(anyEntries, (entries) => {
        const lines = contentLines(Buffer.from(written(entries), 'utf8'));
        expect([lines[0], lines.at(-1)]).toMatchObject([
          { name: 'BEGIN', value: 'VCALENDAR' },
          { name: 'END', value: 'VCALENDAR' },
        ]);
        expect(only(lines, 'VERSION').value).toBe('2.0');
        expect(only(lines, 'PRODID').value).not.toBe('');
        const events = eventsOf(lines);
        expect(events).toHaveLength(entries.length);
        events.forEach((event, index) => {
          const entry = entries[index] as CalendarEntry;
          expect(only(event, 'DTSTART')).toMatchObject({
            parameters: { VALUE: 'DATE' },
            value: asDate(entry.firstDay),
          });
          // 3.6.1: the end does not belong to it.
          expect(only(event, 'DTEND')).toMatchObject({
            parameters: { VALUE: 'DATE' },
            value: asDate(dayAfter(entry.lastDay)),
          });
          expect(only(event, 'DTSTAMP').value).toMatch(/^\d{8}T\d{6}Z$/);
          expect(only(event, 'SEQUENCE').value).toBe(String(entry.changes));
          expect(visible(plainText(only(event, 'SUMMARY').value))).toBe(visible(entry.title));
          const url = `https://studio.example/studios/${studioId}${entry.page}`;
          expect(only(event, 'URL').value).toBe(url);
          expect(plainText(only(event, 'DESCRIPTION').value).split('\n')).toHaveLength(
            entry.details.length + 1,
          );
        });
        const uids = events.map((event) => only(event, 'UID').value);
        expect(new Set(uids).size).toBe(entries.length);
        expect(
          eventsOf(contentLines(Buffer.from(written([...entries].reverse())))).map(
            (event) => only(event, 'UID').value,
          ),
        ).toEqual([...uids].reverse());
      }),
    );
  });

  it('says at its end when something was left out', () => {
    const entry = {
      key: 'use-by x',
      firstDay: '2027-01-01',
      lastDay: '2027-01-01',
      title: 'Umber',
      details: [],
    };
    const given = { ...entry, page: '/today', recordedAt: '2026-01-01T00:00:00.000Z', changes: 0 };
    const last = eventsOf(contentLines(Buffer.from(written([given], 17)))).at(-1) ?? [];
    expect(only(last, 'SUMMARY').value).toBe('17 more in Lotward');
    expect(only(last, 'DTSTART').value).toBe('20270101');
  });
});

describe('a calendar read by another library', () => {
  it('has the same events on the same days, with the same words', () => {
    fc.assert(
      fc.property(anyEntries, (entries) => {
        const read = Object.values(ical.sync.parseICS(written(entries))).filter(
          (each): each is VEvent => each?.type === 'VEVENT',
        );
        const shown = read.map(({ uid, summary, start, end, url, datetype }) => ({
          uid,
          title: visible(String(summary)),
          days: [localDay(start), localDay(end as Date)],
          url,
          datetype,
        }));
        expect(shown).toEqual(
          entries.map(({ key, title, firstDay, lastDay, page }) => ({
            uid: `${key.replace(' ', '-')}@lotward`,
            title: visible(title),
            days: [firstDay, dayAfter(lastDay)],
            url: `https://studio.example/studios/${studioId}${page}`,
            datetype: 'date',
          })),
        );
      }),
    );
  });
});

/** The library gives whole days as midnight where it runs. */
function localDay(date: Date): string {
  const two = (number: number) => String(number).padStart(2, '0');
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
}
