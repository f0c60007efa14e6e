import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ical, { type VEvent } from 'node-ical';
import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type {
  MadeCalendarAddressView,
  OwnCalendarAddressView,
} from '../../src/alerts/calendar/calendar-address.views.js';
import type { PersonView } from '../../src/identity/people.views.js';
import { contentLines } from '../support/calendar-lines.js';
import { makeSampleStudio, receive, type SampleStudio } from '../support/sample-studio.js';
import { type ProblemBody, type RunningService, startService, usualEngine } from '../support/service.js';
import { personOfRole, type SignedInPerson, signInOwner } from '../support/signing-in.js';
import { dayAhead, daysAgo } from '../support/stocked-studio.js';
import { makeTreatedClient, texts } from '../support/treated-client.js';

describe.each(usualEngine)('the calendar on %s', (engine) => {
  let service: RunningService;
  let studio: SampleStudio;
  let manager: SignedInPerson;
  let address: string;

  beforeAll(async () => {
    service = await startService(engine);
    studio = await makeSampleStudio(service);
    manager = await personOfRole(service, 'manager');
    address = await madeAddress(manager.cookie);
  });
  afterAll(() => service.dispose());

  const madeAddress = async (cookie: string) =>
    (await service.made<MadeCalendarAddressView>('/calendar-address', {}, { cookie })).url;
  const asked = (url: string, headers: Record<string, string> = {}) => fetch(url, { headers });
  const events = async (): Promise<VEvent[]> => {
    const read = ical.sync.parseICS(await (await asked(address)).text());
    return Object.values(read).filter((each): each is VEvent => each?.type === 'VEVENT');
  };
  const titled = async (title: string) =>
    (await events()).filter(({ summary }) => String(summary).startsWith(title));
  const dayOf = (date: unknown) => (date as Date).toLocaleDateString('sv-SE');
  const link = (page: string) =>
    `${service.url.replace('127.0.0.1', 'localhost')}/studios/${service.studioId}${page}`;

  it('tells when what is on the shelf ends, and of an opened bottle when its life does', async () => {
    const sealed = await receive(service, studio, {
      productId: studio.umberId,
      code: 'CAL-1',
      useBy: dayAhead(40),
    });
    const opened = await receive(service, studio, {
      productId: studio.gelId,
      code: 'CAL-2',
      useBy: dayAhead(400),
    });
    await service.made(`/containers/${opened.containers[0]?.id}/open`);
    const [useBy] = await titled('Use by: Halden Colour Works Umber Warm 02, lot CAL-1');
    expect([dayOf(useBy?.start), dayOf(useBy?.end)]).toEqual([dayAhead(40), dayAhead(41)]);
    expect([useBy?.datetype, useBy?.url]).toEqual(['date', link(`/stock/lots/${sealed.lot.id}`)]);
    const [life] = await titled('Opened life ends: Halden Colour Works Numbing gel, lot CAL-2');
    const inThreeMonths = new Date();
    inThreeMonths.setUTCMonth(inThreeMonths.getUTCMonth() + 3);
    // Three months on a day that the third month may not have.
    expect(Math.abs((life?.start?.getTime() ?? 0) - inThreeMonths.getTime())).toBeLessThan(4 * 86_400_000);
    expect(life?.url).toBe(link(`/stock/containers/${opened.containers[0]?.id}`));
  });

  it('moves with the record, under the same name', async () => {
    const { lot, containers } = await receive(service, studio, {
      productId: studio.umberId,
      code: 'CAL-3',
      useBy: dayAhead(50),
    });
    const [before] = await titled('Use by: Halden Colour Works Umber Warm 02, lot CAL-3');
    await service.patch(`/lots/${lot.id}`, { version: lot.version, useBy: dayAhead(60), reason: 'misread' });
    const [after] = await titled('Use by: Halden Colour Works Umber Warm 02, lot CAL-3');
    expect(dayOf(after?.start)).toBe(dayAhead(60));
    expect(after?.uid).toBe(before?.uid);
    await service.made(`/containers/${containers[0]?.id}/discard`, { reason: 'dropped' });
    expect(await titled('Use by: Halden Colour Works Umber Warm 02, lot CAL-3')).toEqual([]);
  });

  it('tells of deliveries until they came, and of touch-ups until one is planned', async () => {
    const supplier = await service.made<{ id: string }>('/suppliers', { name: 'Colour, Needle & Sons' });
    const expected = await service.made<{ id: string }>('/expected-deliveries', {
      supplierId: supplier.id,
      reference: 'PO-7',
      expectedOn: dayAhead(5),
    });
    const treated = await makeTreatedClient(service, studio);
    const [delivery] = await titled('Delivery expected: Colour, Needle & Sons');
    expect([dayOf(delivery?.start), dayOf(delivery?.end)]).toEqual([dayAhead(5), dayAhead(6)]);
    expect(String(delivery?.description)).toContain('PO-7');
    const [window] = await titled('Touch-up due: Powder brows');
    expect([dayOf(window?.start), dayOf(window?.end)]).toEqual([dayAhead(30), dayAhead(41)]);
    expect(window?.url).toBe(link(`/records/sessions/${treated.sessionId}`));

    await service.made(`/expected-deliveries/${expected.id}/call-off`);
    await service.made('/sessions', {
      clientId: treated.clientId,
      artistId: studio.ownerId,
      procedureId: studio.procedureId,
      visitKind: 'touch-up',
      plannedStart: new Date(Date.now() + 35 * 86_400_000).toISOString(),
    });
    expect(await titled('Delivery expected')).toEqual([]);
    expect(await titled('Touch-up due')).toEqual([]);
  });

  it('names no client, and neither does its address stand anywhere', async () => {
    const treated = await makeTreatedClient(service, studio);
    const text = await (await asked(address)).text();
    expect(text).toContain('Touch-up due');
    for (const said of [...Object.values(texts), treated.reference, treated.clientId])
      expect(text).not.toContain(said);
    const secret = address.split('/').at(-1)?.replace('.ics', '') ?? '';
    expect(secret).toMatch(/^[\w-]{43}$/);
    expect(service.log.join('')).not.toContain(secret);
    const files = readdirSync(service.dataFolder, { recursive: true, withFileTypes: true }).filter((each) =>
      each.isFile(),
    );
    expect(files.length).toBeGreaterThan(1);
    for (const file of files) {
      expect(readFileSync(join(file.parentPath, file.name)).includes(secret), file.name).toBe(false);
    }
  });

  it('is whole by the standard, with its kind, and not sent again while it is the same', async () => {
    const first = await asked(address);
    expect(first.headers.get('content-type')).toBe('text/calendar; charset=utf-8');
    expect(first.headers.get('cache-control')).toBe('private, no-cache');
    expect(first.headers.get('referrer-policy')).toBe('no-referrer');
    const octets = Buffer.from(await first.arrayBuffer());
    expect(contentLines(octets).length).toBeGreaterThan(10);
    const etag = first.headers.get('etag') ?? '';
    const same = await asked(address, { 'if-none-match': `"other", W/${etag}` });
    expect([same.status, await same.text()]).toEqual([304, '']);
    await receive(service, studio, { productId: studio.umberId, code: 'CAL-4', useBy: dayAhead(90) });
    expect((await asked(address, { 'if-none-match': etag })).status).toBe(200);
  });

  it('leaves out what ended long ago and what is for practice only', async () => {
    await receive(service, studio, {
      productId: studio.umberId,
      code: 'LONG-AGO',
      useBy: daysAgo(40).slice(0, 10),
    });
    await receive(service, studio, {
      productId: studio.umberId,
      code: 'LATELY',
      useBy: daysAgo(10).slice(0, 10),
    });
    const said = (await events()).map(({ summary }) => String(summary)).join();
    expect(said).not.toContain('LONG-AGO');
    expect(said).toContain('LATELY');
  });

  it('is made once for a person, shown once, and a new one ends the one before', async () => {
    const { cookie } = await personOfRole(service, 'artist');
    const none = await service.get<OwnCalendarAddressView>('/calendar-address', { cookie });
    expect(none.body).toEqual({ address: null });
    const id = uuidv7();
    const made = await service.made<MadeCalendarAddressView>('/calendar-address', { id }, { cookie });
    expect(await service.made('/calendar-address', { id }, { cookie })).toEqual(made);
    const own = await service.get<OwnCalendarAddressView>('/calendar-address', { cookie });
    expect(own.body).toEqual({ address: { id, createdAt: made.createdAt } });
    expect(
      (await service.post<ProblemBody>('/calendar-address', { id }, { cookie: manager.cookie })).body.code,
    ).toBe('request-id-reused');
    const second = await madeAddress(cookie);
    expect([(await asked(made.url)).status, (await asked(second)).status]).toEqual([404, 200]);
    await service.made('/calendar-address/remove', {}, { cookie });
    expect((await asked(second)).status).toBe(404);
    const again = await service.post<ProblemBody>('/calendar-address/remove', {}, { cookie });
    expect([again.status, again.body.code]).toEqual([409, 'wrong-state']);
  });

  it('is made by somebody at a browser of their own, never by a token', async () => {
    const refused = await service.post<ProblemBody>('/calendar-address');
    expect([refused.status, refused.body.code]).toEqual([403, 'not-allowed']);
  });

  it('ends with its person, and says nothing of whether it ever was', async () => {
    const { personId, cookie } = await personOfRole(service, 'artist');
    const url = await madeAddress(cookie);
    expect((await asked(url)).status).toBe(200);
    const people = await service.seen<PersonView[]>('/people');
    const version = people.find(({ id }) => id === personId)?.version;
    const left = await service.patch<PersonView>(`/people/${personId}`, { version, state: 'left' });
    const answers = await Promise.all(
      [
        url,
        url.replace(/.{43}\.ics/, `${'A'.repeat(43)}.ics`),
        url.replace('.ics', ''),
        url.replace(/.{44}\.ics/, '/x.ics'),
      ].map(async (each) => {
        const answer = await asked(each);
        return [answer.status, await answer.text()];
      }),
    );
    expect(answers[0]?.[0]).toBe(404);
    for (const answer of answers) expect(answer).toEqual(answers[0]);
    const back = await service.patch(`/people/${personId}`, { version: left.body.version, state: 'active' });
    expect([back.status, (await asked(url)).status]).toEqual([200, 404]);
  });

  it('is each studio’s own', async () => {
    const { studioId } = await service.made<{ studioId: string }>('/chain/studios', {
      name: 'Sister',
      timeZone: 'Europe/Vienna',
    });
    const cookie = await signInOwner(service);
    const made = await service.send<MadeCalendarAddressView>(
      'POST',
      `${service.url}/api/v1/studios/${studioId}/calendar-address`,
      { id: uuidv7() },
      { cookie },
    );
    const text = await (await asked(made.body.url)).text();
    expect(text).toContain('Sister');
    expect(text).not.toContain('VEVENT');
  });
});
