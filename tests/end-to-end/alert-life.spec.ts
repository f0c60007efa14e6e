import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type {
  AlertDeliveryView,
  AlertHistoryView,
  AlertPageView,
  AlertView,
} from '../../src/alerts/alerts.views.js';
import type { HandingOnView } from '../../src/alerts/handing-on/handing-on.views.js';
import type {
  AlertPreferenceView,
  ToldPersonView,
} from '../../src/alerts/preferences/alert-preferences.views.js';
import type { Role } from '../../src/identity/permissions.js';
import { type ProblemBody, RunningService, strictestEngine } from '../support/service.js';
import { startStudio } from '../support/shared-service.js';
import { personOfRole, tokenOfPerson } from '../support/signing-in.js';
import { dayAhead, StockedStudio } from '../support/stocked-studio.js';

const usual = {
  toldFrom: 'urgent',
  urgentTurn: 'in turn',
  summary: 'daily',
  summaryAt: null,
  quietFrom: '20:00',
  quietUntil: '07:30',
  kindsLeftOut: [],
};

describe.each(strictestEngine)('what people do with alerts, on %s', (engine) => {
  let service: RunningService;
  let studio: StockedStudio;
  let ownerId: string;
  let artist: { id: string; sees: RunningService };
  let chainManager: { id: string; sees: RunningService };

  beforeAll(async () => {
    service = await startStudio(engine);
    studio = new StockedStudio(service);
    const [owner] = await service.seen<{ id: string }[]>('/people');
    ownerId = owner?.id ?? '';
    artist = await somebody('artist');
    chainManager = await somebody('chain manager');
  });
  afterAll(() => service.dispose());

  const somebody = async (role: Role) => {
    const { personId } = await personOfRole(service, role);
    const { url, dataFolder, databaseUrl, child, log, studioId } = service;
    const token = await tokenOfPerson(service, personId);
    const sees = new RunningService(url, dataFolder, databaseUrl, child, log, studioId, token);
    return { id: personId, sees };
  };
  const setMinimum = (productId: string, minimumPieces: number) =>
    service.put('/stock/levels', { subjectKind: 'product', subjectId: productId, minimumPieces });
  /** Low stock of a product of its own. */
  const lowStock = async (name: string) => {
    const productId = await studio.product({ name, kind: 'cartridge' });
    const boxId = await studio.receiveOne(productId, { code: name, quantity: 3 });
    await setMinimum(productId, 3);
    const { items } = await service.seen<AlertPageView>('/alerts?limit=200');
    const alert = items.find(({ subjectId }) => subjectId === productId);
    if (!alert) throw new Error(`No alert is open for ${name}.`);
    return { alert, productId, boxId, at: `/alerts/${alert.id}` };
  };
  const shown = (at: string, by = service) => by.seen<AlertHistoryView>(at);
  const listed = async (query: string, by = service) =>
    (await by.seen<AlertPageView>(`/alerts?limit=200&${query}`)).items.map(({ id }) => id);

  it('keeps every step with who did it, and shows a note only to who may see clients and who wrote it', async () => {
    const { at } = await lowStock('Noted liner');
    await service.made(`${at}/acknowledge`);
    const until = dayAhead(3);
    await artist.sees.made(`${at}/put-off`, { until });
    await service.made(`${at}/give`, { personId: artist.id });
    await chainManager.sees.made(`${at}/notes`, { note: 'asked the\nsupplier' });
    await service.made(`${at}/close`, { note: 'ordered by telephone' });
    const { alert, history, earlierSteps } = await shown(at);
    expect(history).toMatchObject([
      { event: 'opened', severity: 'warning', personId: null, hasNote: false },
      { event: 'acknowledged', personId: ownerId },
      { event: 'put off', personId: artist.id, until: expect.stringContaining('T') },
      { event: 'given', personId: ownerId, toPersonId: artist.id },
      { event: 'noted', personId: chainManager.id, note: 'asked the\nsupplier' },
      { event: 'closed', personId: ownerId, hasNote: true, note: 'ordered by telephone' },
    ]);
    expect(earlierSteps).toBe(0);
    expect(alert).toMatchObject({ givenTo: artist.id, closedBy: ownerId, acknowledgedBy: ownerId });
    const numbers = history.map(({ sequence }) => sequence ?? 0);
    expect(numbers).toEqual([...numbers].sort((one, other) => one - other));
    const notes = (await shown(at, chainManager.sees)).history.slice(4);
    expect(notes).toMatchObject([
      { hasNote: true, note: 'asked the\nsupplier' },
      { hasNote: true, note: null },
    ]);
  });

  it('keeps closed what was closed by hand while it stands, and opens it again when it is worse', async () => {
    const { alert, productId, boxId, at } = await lowStock('Stubborn liner');
    await service.made(`${at}/close`, { note: 'enough until spring' });
    await service.made('/alerts/sweep');
    await studio.record(boxId, 'waste', { pieces: 1, reason: 'dropped' });
    expect(await listed(`kind=low+stock`)).not.toContain(alert.id);
    const ofProduct = async () =>
      (await service.seen<AlertPageView>('/alerts?state=all&limit=200')).items.filter(
        ({ subjectId }) => subjectId === productId,
      );
    expect(await ofProduct()).toHaveLength(1);
    await studio.record(boxId, 'waste', { pieces: 2, reason: 'dropped' });
    const [worse] = await ofProduct();
    expect(worse).toMatchObject({ severity: 'urgent', closedAt: null, endsWhenAcknowledged: false });
    await studio.receive(productId, { code: 'Stubborn 2', quantity: 20 });
    expect((await shown(at)).history.at(-1)).toMatchObject({ event: 'ended', personId: null });
    expect((await shown(`/alerts/${worse?.id}`)).alert).toMatchObject({ closedBy: null });
  });

  it('lists what is put off, given to me, of a severity or of a kind', async () => {
    const [first, second] = [await lowStock('First liner'), await lowStock('Second liner')];
    await service.made(`${first.at}/put-off`, { until: dayAhead(2) });
    await service.made(`${second.at}/give`, { personId: artist.id });
    const [one, other] = [first.alert.id, second.alert.id];
    const has = async (query: string, by = service) => {
      const ids = await listed(query, by);
      return [ids.includes(one), ids.includes(other)];
    };
    expect(await has('putOff=yes')).toEqual([true, false]);
    expect(await has('putOff=no')).toEqual([false, true]);
    expect(await has('givenTo=me', artist.sees)).toEqual([false, true]);
    expect(await has('givenTo=me')).toEqual([false, false]);
    expect(await has('severity=warning&kind=low%20stock')).toEqual([true, true]);
    expect(await has('severity=urgent')).toEqual([false, false]);
    expect(await has('kind=use-by%20near')).toEqual([false, false]);
  });

  it('refuses days that are over or too far ahead, people who are not here, and empty notes', async () => {
    const { at } = await lowStock('Refused liner');
    const refused = async (path: string, body: object) => {
      const answer = await service.post<ProblemBody>(`${at}/${path}`, body);
      return [answer.status, answer.body.code];
    };
    expect(await refused('put-off', { until: dayAhead(-1) })).toEqual([400, 'unusable-date']);
    expect(await refused('put-off', { until: dayAhead(400) })).toEqual([400, 'unusable-date']);
    expect(await refused('put-off', { until: '2027-02-30' })).toEqual([400, 'invalid-fields']);
    expect(await refused('give', { personId: uuidv7() })).toEqual([404, 'not-found']);
    expect(await refused('close', {})).toEqual([400, 'invalid-fields']);
    expect(await refused('close', { note: '' })).toEqual([400, 'invalid-fields']);
    expect((await shown(at)).history.map(({ event }) => event)).toEqual(['opened']);
  });

  it('answers a repeated request as the first time, without the note', async () => {
    const { at } = await lowStock('Repeated liner');
    const note = { id: uuidv7(), note: 'once' };
    const first = await service.made<AlertView>(`${at}/notes`, note);
    expect(JSON.stringify(first)).not.toContain('once');
    expect(await service.made<AlertView>(`${at}/notes`, note)).toEqual(first);
    expect((await shown(at)).history.map(({ event }) => event)).toEqual(['opened', 'noted']);
  });

  it('assumes how somebody is told until they choose, each for oneself', async () => {
    const own = () => artist.sees.seen<AlertPreferenceView>('/alert-preferences/own');
    expect(await own()).toMatchObject({ toldFrom: 'urgent', isDefault: true, version: null });
    const put = (body: object) =>
      artist.sees.send<ProblemBody>('PUT', `${service.studio}/alert-preferences/own`, {
        id: uuidv7(),
        ...usual,
        ...body,
      });
    for (const wrong of [
      { quietFrom: '25:00' },
      { quietFrom: null },
      { quietUntil: '20:00' },
      { summaryAt: '7:00' },
      { toldFrom: 'sometimes' },
      { kindsLeftOut: ['low stock', 'low stock'] },
    ])
      expect(await put(wrong)).toMatchObject({ status: 400, body: { code: 'invalid-fields' } });
    expect(await put({ version: 1 })).toMatchObject({ status: 404 });
    expect(await put({})).toMatchObject({ status: 200, body: { quietFrom: '20:00', version: 1 } });
    expect(await put({})).toMatchObject({ status: 409, body: { code: 'stale-version' } });
    expect(await own()).toMatchObject({ quietUntil: '07:30', isDefault: false, version: 1 });
    const everybody = await service.seen<ToldPersonView[]>('/alert-preferences');
    expect(everybody.map(({ personId }) => personId)).toEqual([ownerId, artist.id, chainManager.id]);
    expect(everybody.map(({ preference }) => preference.toldFrom)).toEqual(['urgent', 'urgent', 'never']);
  });

  it('refuses a time zone that does not exist, by which no quiet hour and no morning could be told', async () => {
    const [{ version } = { version: 0 }] = await service
      .get<{ version: number }[]>(`${service.url}/api/v1/studios`)
      .then(({ body }) => body);
    for (const timeZone of ['Europe/Nowhere', '+01:00', '', 'Europe/Vienna\n'])
      expect(await service.patch<ProblemBody>('', { version, timeZone })).toMatchObject({
        status: 400,
        body: { code: 'invalid-fields' },
      });
  });

  it('promises an urgent alert to whoever is first in the order, and tells of it in the log', async () => {
    expect(await service.seen<HandingOnView>('/handing-on')).toMatchObject({
      afterMinutes: 60,
      order: [ownerId],
      isDefault: true,
    });
    const put = (body: object) =>
      service.send<ProblemBody>('PUT', `${service.studio}/handing-on`, {
        id: uuidv7(),
        afterMinutes: 15,
        personIds: [chainManager.id, ownerId],
        ...body,
      });
    expect(await put({ afterMinutes: 4 })).toMatchObject({ status: 400 });
    expect(await put({ personIds: [ownerId, ownerId] })).toMatchObject({ status: 400 });
    expect(await put({ personIds: [uuidv7()] })).toMatchObject({ status: 404 });
    expect(await put({})).toMatchObject({ status: 200, body: { order: [chainManager.id, ownerId] } });
    expect(await put({})).toMatchObject({ status: 409 });
    const address = `${uuidv7()}@studio.example`;
    await service.made('/alert-destinations/mail', { personId: chainManager.id, address });
    const { at, boxId } = await lowStock('Urgent liner');
    await studio.record(boxId, 'waste', { pieces: 3, reason: 'dropped' });
    const promised = await service.seen<AlertDeliveryView[]>(`${at}/deliveries`);
    expect(promised.map(({ event, channel }) => `${event} ${channel}`).sort()).toEqual([
      'opened log',
      'worse log',
      'worse mail',
    ]);
  });
});
