import { stringify } from 'csv-stringify/sync';
import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { ClientView } from '../../src/clients/clients.views.js';
import type { StudioView } from '../../src/identity/studios.views.js';
import { bookingColumns } from '../../src/sessions/bookings/booking-columns.js';
import type { BookingsPreviewView, TakenInBookingsView } from '../../src/sessions/bookings/bookings.views.js';
import { PlainSql } from '../support/plain-sql.js';
import { makeSampleStudio, type SampleStudio } from '../support/sample-studio.js';
import { type ProblemBody, type RunningService, startService, usualEngine } from '../support/service.js';

type Refused = ProblemBody & { preview: BookingsPreviewView };

const csv = (rows: readonly object[]) =>
  stringify(rows as object[], {
    header: true,
    columns: bookingColumns.map(({ name }) => name),
    delimiter: ';',
  });
const calendar = (...events: string[][]) =>
  [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    ...events.flatMap((lines) => ['BEGIN:VEVENT', ...lines, 'END:VEVENT']),
    'END:VCALENDAR',
  ].join('\r\n');
/** A local day so many days ahead, YYYY-MM-DD. */
const ahead = (days: number) => new Date(Date.now() + days * 86_400_000).toISOString().slice(0, 10);
const basic = (day: string) => day.replaceAll('-', '');

describe.each(usualEngine)('bookings on %s', (engine) => {
  let service: RunningService;
  let sql: PlainSql;
  let studio: SampleStudio;
  let ids: { artistId: string; procedureId: string };

  beforeAll(async () => {
    service = await startService(engine);
    sql = await PlainSql.connect(service, 'read');
    studio = await makeSampleStudio(service);
    ids = { artistId: studio.ownerId, procedureId: studio.procedureId };
    const { version } = await service.seen<StudioView>('');
    await service.send('PATCH', '', { id: uuidv7(), version, timeZone: 'Europe/Vienna' });
  });
  afterAll(async () => {
    await sql?.close();
    await service?.dispose();
  });

  const preview = (text: string, more: object = {}) =>
    service.made<BookingsPreviewView>('/bookings/preview', { text, id: undefined, ...more });
  const takeIn = (text: string, more: object = {}) =>
    service.made<TakenInBookingsView>('/bookings', { text, ...more });
  const tables = ['client', 'data_key', 'session', 'accepted_request'];
  const counts = async () => {
    const counted: Record<string, number> = {};
    for (const table of tables) {
      const [row] = await sql.rows<{ count: number }>(`SELECT count(*) AS count FROM ${table}`);
      counted[table] = Number(row?.count);
    }
    return counted;
  };
  const sessions = () => sql.rows<{ id: string }>('SELECT id FROM session');

  it('previews without making anything, then plans sessions of clients known and new', async () => {
    const day = ahead(10);
    const [ida] = await service.seen<{ items: ClientView[] }>('/clients').then(({ items }) => items);
    const text = csv([
      {
        'client name': 'ida sommer',
        contact: '0043 1 5550100',
        procedure: 'POWDER BROWS',
        visit: 'first session',
        'planned start': `${day} 14:30`,
      },
      { 'client reference': ida?.reference, visit: 'touch-up', 'planned start': `${day} 17:00` },
      {
        'booking id': 'B-1',
        'client name': 'Pia Berg',
        contact: '=1+1',
        artist: 'Owner',
        visit: 'patch test',
        'planned start': `${day} 14:45`,
        'booked at': ahead(-1),
      },
    ]);
    const before = await counts();
    const seen = await preview(text);
    expect(seen).toMatchObject({
      usable: true,
      kind: 'table',
      counts: { rows: 3, sessions: 3, clients: 1, onRecord: 0 },
    });
    expect(
      seen.rows.map(({ clientReference, newClient, warnings }) => [clientReference, newClient, warnings]),
    ).toEqual([
      // A contact written otherwise is the same: 00 is +, spaces do not count.
      [ida?.reference, false, []],
      [ida?.reference, false, []],
      [null, true, ['The artist has another session 15 minutes before (row 2).']],
    ]);
    expect(await counts()).toEqual(before);

    const taken = await takeIn(text);
    expect(taken.counts).toEqual(seen.counts);
    expect(JSON.stringify(taken)).not.toMatch(/sommer|berg/i);
    const { items } = await service.seen<{ items: { id: string; plannedStart: string; state: string }[] }>(
      '/sessions',
    );
    expect(items.map(({ id }) => id).sort()).toEqual(taken.rows.map(({ sessionId }) => sessionId).sort());
    const pia = await service.seen<ClientView>(`/clients/${taken.rows[2]?.clientId}`);
    expect(pia).toMatchObject({ name: 'Pia Berg', contact: '=1+1' });
    // By the clocks of the studio.
    const start = items.find(({ id }) => id === taken.rows[0]?.sessionId)?.plannedStart ?? '';
    const local = new Intl.DateTimeFormat('en-GB', {
      timeZone: 'Europe/Vienna',
      timeStyle: 'short',
      dateStyle: 'short',
    });
    expect(local.format(new Date(start))).toContain('14:30');
    const accesses = await service.seen<{ items: { what: string }[] }>(`/clients/${ida?.id}/accesses`);
    expect(accesses.items.map(({ what }) => what)).toContain('client search');

    // The same file again makes nothing.
    const again = await takeIn(text);
    expect(again).toMatchObject({ counts: { sessions: 0, clients: 0, onRecord: 3 }, rows: [] });
  });

  it('takes in nothing of 500 rows when the last has a fault, and says which', async () => {
    const rows = Array.from({ length: 500 }, (_, index) => ({
      'client name': `Guest ${index}`,
      visit: 'first session',
      'planned start':
        index === 499
          ? '2027-03-28 02:30'
          : `${ahead(20 + (index % 90))} ${String(8 + (index % 10)).padStart(2, '0')}:00`,
    }));
    const before = await counts();
    const answer = await service.post<Refused>('/bookings', { text: csv(rows) });
    expect(answer.status).toBe(400);
    expect(answer.body).toMatchObject({
      code: 'unusable-file',
      faults: [{ field: 'row 501, planned start', message: expect.stringContaining('put forward') }],
      preview: { usable: false, counts: { rows: 500, faultyRows: 1 } },
    });
    expect(await counts()).toEqual(before);
    const mended = rows.map((row, index) =>
      index === 499 ? { ...row, 'planned start': '2027-03-28 03:30' } : row,
    );
    const taken = await takeIn(csv(mended));
    expect(taken.counts).toMatchObject({ sessions: 500, clients: 500, faultyRows: 0 });
  });

  it('gives a repeated request its first answer, also when it comes twice at once', async () => {
    const id = uuidv7();
    const text = csv([
      { 'client name': 'Once Only', visit: 'refresh', 'planned start': `${ahead(200)} 09:00` },
    ]);
    const answers = await Promise.all(
      [1, 2, 3].map(() => service.post<TakenInBookingsView>('/bookings', { id, text })),
    );
    for (const answer of answers) expect(answer).toMatchObject({ status: 201, body: answers[0]?.body });
    const other = await service.post<ProblemBody>('/bookings', { id, text: `${text}\n` });
    expect(other.body.code).toBe('request-id-reused');
    // Two requests with the same list make its sessions once.
    const list = csv([
      {
        'client name': 'Race Runner',
        'booking id': 'R-1',
        visit: 'refresh',
        'planned start': `${ahead(201)} 09:00`,
      },
    ]);
    const raced = await Promise.all(
      [1, 2].map(() => service.post<TakenInBookingsView>('/bookings', { text: list })),
    );
    expect(raced.map(({ body }) => body.counts.sessions).sort()).toEqual([0, 1]);
  });

  it('reads a calendar, and takes in no entry of it twice, whatever became of it', async () => {
    const day = ahead(30);
    const brows = [
      'UID:brows@studio.example',
      `DTSTART;TZID=Europe/Vienna:${basic(day)}T143000`,
      'SUMMARY:Lea Blum – Powder brows – first session',
    ];
    const weekly = [
      'UID:weekly@studio.example',
      `DTSTART:${basic(ahead(31))}T080000Z`,
      'RRULE:FREQ=WEEKLY;COUNT=3',
      'SUMMARY:Powder brows',
      'DESCRIPTION:Client: Lea Blum\\nVisit: touch-up',
    ];
    const lunch = ['UID:lunch', `DTSTART:${basic(day)}T120000`, 'SUMMARY:Lunch'];
    const past = ['UID:past', 'DTSTART:20200101T120000Z', 'SUMMARY:Lea Blum – Powder brows – first session'];
    const text = calendar(brows, weekly, lunch, past);
    const seen = await preview(text);
    expect(seen).toMatchObject({
      usable: true,
      kind: 'calendar',
      counts: { rows: 6, sessions: 4, clients: 1, leftOut: 2 },
    });
    expect(seen.rows.map(({ row, effect }) => [row, effect])).toEqual([
      [1, 'new session'],
      [2, 'new session'],
      [2, 'new session'],
      [2, 'new session'],
      [3, 'left out'],
      [4, 'left out'],
    ]);
    const taken = await takeIn(text);
    expect(taken.rows).toHaveLength(4);

    const all = (await sessions()).length;
    const [first] = taken.rows;
    await service.made(`/sessions/${first?.sessionId}/cancellation`);
    const moved = [brows[0] ?? '', `DTSTART;TZID=Europe/Vienna:${basic(day)}T160000`, brows[2] ?? ''];
    const fourth = weekly.map((line) => line.replace('COUNT=3', 'COUNT=4'));
    const again = await takeIn(calendar(moved, fourth));
    expect(again.counts).toMatchObject({ rows: 5, onRecord: 4, sessions: 1, clients: 0 });
    expect(await sessions()).toHaveLength(all + 1);
    // An id of a list is another than the same id of a calendar.
    const list = csv([
      {
        'booking id': 'brows@studio.example',
        'client name': 'Lea Blum',
        visit: 'refresh',
        'planned start': `${ahead(60)} 10:00`,
      },
    ]);
    expect((await takeIn(list)).counts.sessions).toBe(1);
  });

  it('refuses a calendar with a day without time or an endless repetition, naming each entry', async () => {
    const summary = 'SUMMARY:Mia Stern – Powder brows – refresh';
    const text = calendar(
      ['UID:a', `DTSTART;VALUE=DATE:${basic(ahead(40))}`, summary],
      ['UID:b', `DTSTART:${basic(ahead(40))}T080000Z`, 'RRULE:FREQ=DAILY', summary],
      ['UID:c', `DTSTART:${basic(ahead(40))}T080000Z`, 'SUMMARY:Mia Stern – refresh'],
    );
    const { body, status } = await service.post<Refused>('/bookings', { text, procedureId: ids.procedureId });
    expect(status).toBe(400);
    expect(body.faults?.map(({ field }) => field)).toEqual(['row 1, planned start', 'row 2, planned start']);
    expect(body.preview.rows[2]).toMatchObject({ effect: 'new session', newClient: true });
  });

  it('refuses an artist or a procedure that is not of this studio', async () => {
    for (const more of [{ artistId: uuidv7() }, { procedureId: uuidv7() }]) {
      for (const path of ['/bookings', '/bookings/preview']) {
        const body = { text: csv([]), ...more, ...(path === '/bookings' ? {} : { id: undefined }) };
        expect((await service.post<ProblemBody>(path, body)).status).toBe(404);
      }
    }
  });

  it('keeps no name in the clear, in no table', async () => {
    for (const table of await sql.tables()) {
      const rows = JSON.stringify(await sql.rows(`SELECT * FROM "${table}"`));
      for (const name of ['Pia Berg', 'Lea Blum', 'Guest 7', 'brows@studio.example']) {
        expect(rows.includes(name), `${table} ${name}`).toBe(false);
      }
    }
  });
});
