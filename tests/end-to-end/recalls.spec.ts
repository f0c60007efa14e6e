import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { AlertHistoryView, AlertPageView } from '../../src/alerts/alerts.views.js';
import type {
  MatchedLotsView,
  NoticeReadingView,
  OpenedRecallView,
  RecallLotPageView,
  RecallView,
} from '../../src/recalls/recalls.views.js';
import type { ScanView, TrayView } from '../../src/sessions/tray.views.js';
import type { OpenHoldPageView } from '../../src/stock/holds.views.js';
import { makeSampleStudio, receive, type SampleStudio, walkIn } from '../support/sample-studio.js';
import { type ProblemBody, type RunningService, strictestEngine } from '../support/service.js';
import { startStudio } from '../support/shared-service.js';

const item = { gtins: [], productIds: [], lots: [], openEnded: false };

describe.each(strictestEngine)('a recall, on %s', (engine) => {
  let service: RunningService;
  let studio: SampleStudio;

  beforeAll(async () => {
    service = await startStudio(engine);
    studio = await makeSampleStudio(service);
  });
  afterAll(() => service.dispose());

  const scopeOf = (...codes: string[]) => ({
    items: [
      {
        ...item,
        productIds: [studio.umberId],
        lots: codes.map((code) => ({ kind: 'code', code })),
      },
    ],
  });
  const open = (body: object) => service.made<OpenedRecallView>('/recalls', { title: 'Umber', ...body });
  const shown = (id: string) => service.seen<RecallView>(`/recalls/${id}`);
  const lotsOf = async (id: string) => (await service.seen<RecallLotPageView>(`/recalls/${id}/lots`)).items;
  const holdsOn = async (lotId: string) =>
    (await service.seen<OpenHoldPageView>('/holds?limit=200')).items.filter((hold) => hold.lotId === lotId);
  const openAlert = async (recallId: string) =>
    (await service.seen<AlertPageView>('/alerts?limit=200')).items.find(
      ({ subjectId, kind }) => subjectId === recallId && kind === 'recall open',
    );

  it('is read from a notice, and the lots it meets are told before anything is done', async () => {
    const { lot } = await receive(service, studio, { productId: studio.umberId, code: 'RD-100' });
    const near = await receive(service, studio, { productId: studio.umberId, code: 'RD-1O0' });
    const answer = await service.post<NoticeReadingView>('/recalls/readings', {
      id: undefined,
      text: 'Product safety recall. Halden Colour Works recalls Umber, shade Warm 02, Lot RD-100. Stop using it.',
    });
    expect(answer.status, JSON.stringify(answer.body)).toBe(200);
    const { scope, parts, matches } = answer.body;
    expect(scope.items[0]?.lots).toEqual([{ kind: 'code', code: 'RD-100', useBy: null }]);
    expect(parts.map(({ kind }) => kind)).toContain('code');
    expect(matches.items.find(({ lotId }) => lotId === lot.id)).toMatchObject({
      grade: 'certain',
      onHandPieces: 1,
    });
    expect(matches.items.find(({ lotId }) => lotId === near.lot.id)).toMatchObject({ grade: 'possible' });
    expect(await holdsOn(lot.id)).toEqual([]);
  });

  it('finds equal codes on products that are only slightly like what is named, in any case and encoding', async () => {
    const lower = await receive(service, studio, { productId: studio.umberId, code: 'sl-310' });
    const wide = await receive(service, studio, { productId: studio.gelId, code: 'SL－３10' });
    await receive(service, studio, { productId: studio.gelId, code: 'SL-311' });
    const named = { makerName: 'Halden Colour Works', productName: 'Deep ochre' };
    const { body } = await service.post<MatchedLotsView>('/recalls/matches', {
      id: undefined,
      scope: { items: [{ ...item, ...named, lots: [{ kind: 'code', code: 'SL-310' }] }] },
    });
    expect(body.certainLots).toBe(0);
    expect(body.items.map(({ lotId }) => lotId).sort()).toEqual([lower.lot.id, wide.lot.id].sort());
  });

  it('holds what is certainly and what is possibly meant at once, and says so on each', async () => {
    const { lot } = await receive(service, studio, { productId: studio.umberId, code: 'HA-200' });
    const near = await receive(service, studio, { productId: studio.umberId, code: 'HA 200' });
    const other = await receive(service, studio, { productId: studio.umberId, code: 'ZZ-955' });
    const opened = await open({
      title: 'Umber of Halden',
      notice: { source: 'pasted', text: 'Umber, lot HA-200\n\t with an odd \u202E sign' },
      scope: scopeOf('HA-200'),
      reference: 'R-1',
      risk: 'Microbial contamination.',
    });
    expect(opened).toMatchObject({ certainLots: 1, possibleLots: 1 });
    const [hold] = await holdsOn(lot.id);
    expect(hold).toMatchObject({ kind: 'recall', reason: 'recall notice', note: 'Umber of Halden (R-1)' });
    expect(await holdsOn(near.lot.id)).toHaveLength(1);
    expect(await holdsOn(other.lot.id)).toEqual([]);
    expect(await openAlert(opened.id)).toMatchObject({
      severity: 'urgent',
      facts: { recall: 'Umber of Halden', affectedLots: 1, undecidedLots: 1 },
    });
    const view = await shown(opened.id);
    expect(view).toMatchObject({
      state: 'open',
      heldLots: 2,
      standingHold: true,
      affectedLots: 1,
      undecidedLots: 1,
    });
    const noticeId = view.scopes[0]?.noticeId;
    const notice = await service.seen<{ text: string }>(`/recalls/notices/${noticeId}`);
    expect(notice.text).toBe('Umber, lot HA-200\n\t with an odd \u202E sign');
  });

  it('leaves possible lots alone when a person says so, or holds only those that were chosen', async () => {
    const near = await receive(service, studio, { productId: studio.umberId, code: 'CH 300' });
    const second = await receive(service, studio, { productId: studio.umberId, code: 'CH300' });
    await open({ scope: scopeOf('CH-300'), holdPossible: 'none' });
    expect(await holdsOn(near.lot.id)).toEqual([]);
    await open({ scope: scopeOf('CH-300'), holdPossible: 'chosen', heldLotIds: [second.lot.id] });
    expect(await holdsOn(near.lot.id)).toEqual([]);
    expect(await holdsOn(second.lot.id)).toHaveLength(1);
  });

  it('lets a person decide on a possible lot, either way and back, and remembers each word', async () => {
    const near = await receive(service, studio, { productId: studio.umberId, code: 'DE 400' });
    const { id } = await open({ scope: scopeOf('DE-400') });
    const path = `/recalls/${id}/lots/${near.lot.id}/decisions`;
    await service.made(path, { decision: 'not affected', reason: 'The label says another year' });
    expect(await holdsOn(near.lot.id)).toEqual([]);
    expect(await shown(id)).toMatchObject({ undecidedLots: 0, notAffectedLots: 1, heldLots: 0 });
    await service.made(path, { decision: 'affected', reason: 'The maker says it is' });
    expect(await holdsOn(near.lot.id)).toHaveLength(1);
    expect((await lotsOf(id))[0]).toMatchObject({
      standing: 'affected',
      held: true,
      decision: { decision: 'affected', reason: 'The maker says it is' },
    });
  });

  it('does not ask about what is certain', async () => {
    const { lot } = await receive(service, studio, { productId: studio.umberId, code: 'DC-410' });
    const { id } = await open({ scope: scopeOf('DC-410') });
    const body = { decision: 'not affected', reason: 'I do not think so' };
    const answer = await service.post<ProblemBody>(`/recalls/${id}/lots/${lot.id}/decisions`, body);
    expect(answer).toMatchObject({ status: 409, body: { code: 'wrong-state' } });
    expect(await holdsOn(lot.id)).toHaveLength(1);
  });

  it('holds what arrives afterwards, and makes it a lot of the recall', async () => {
    const { id } = await open({ scope: scopeOf('AR-500') });
    expect(await shown(id)).toMatchObject({ affectedLots: 0, heldLots: 0, standingHold: true });
    const { lot, holds } = await receive(service, studio, { productId: studio.umberId, code: 'AR-500' });
    expect(holds.map(({ reason }) => reason)).toContain('recall notice');
    const late = await receive(service, studio, { productId: studio.umberId, code: 'AR5OO' });
    expect(await shown(id)).toMatchObject({ affectedLots: 1, undecidedLots: 1, heldLots: 2, caughtLots: 2 });
    expect(await holdsOn(lot.id)).toHaveLength(1);
    await service.made(`/recalls/${id}/lots/${late.lot.id}/decisions`, {
      decision: 'not affected',
      reason: 'Another code',
    });
    expect(await holdsOn(late.lot.id)).toEqual([]);
    await receive(service, studio, { productId: studio.umberId, code: 'AR5OO', quantity: 2 });
    expect(await holdsOn(late.lot.id)).toEqual([]);
    expect(await openAlert(id)).toMatchObject({ facts: { affectedLots: 1, undecidedLots: 0 } });
  });

  it('reaches a tray in setup: the next answer says so, and a further one is refused', async () => {
    const { lot } = await receive(service, studio, { productId: studio.umberId, code: 'TR-600' });
    const sessionId = await walkIn(service, studio);
    await service.made(`/sessions/${sessionId}/scans`, { symbol: 'TR-600' });
    const { id } = await open({ scope: scopeOf('TR-600') });
    expect(await shown(id)).toMatchObject({ traysReached: 1 });
    const tray = await service.seen<TrayView>(`/sessions/${sessionId}/tray`);
    const line = tray.lines.find(({ lotId }) => lotId === lot.id);
    expect(line?.refusedNow.map(({ code }) => code)).toContain('recalled');
    const scan = await service.made<ScanView>(`/sessions/${sessionId}/scans`, { symbol: 'TR-600' });
    expect(scan).toMatchObject({ verdict: 'refused' });
    expect(scan.reasons.map(({ code }) => code)).toContain('recalled');
  });

  it('reaches house blends of its lots', async () => {
    const parent = await receive(service, studio, { productId: studio.umberId, code: 'BL-700' });
    const thinner = await receive(service, studio, { productId: studio.thinnerId, code: 'BL-701' });
    const { version } = await service.seen<{ version: number }>('');
    await service.patch('', { version, houseBlends: 'allowed' });
    const ours = await service.made<{ id: string }>('/products', {
      kind: 'pigment',
      makerId: studio.makerId,
      name: 'Our umber',
      volumeMicrolitres: 10_000,
      pigmentRole: 'colour',
    });
    for (const { containers } of [parent, thinner]) {
      await service.made(`/containers/${containers[0]?.id}/open`);
    }
    const blend = await service.made<{ containerId: string }>('/blends', {
      productId: ours.id,
      parents: [parent, thinner].map(({ containers }) => ({
        containerId: containers[0]?.id,
        microlitres: 500,
      })),
      placeId: studio.placeId,
    });
    const sessionId = await walkIn(service, studio);
    const labelCode = (await service.seen<{ labelCode: string }>(`/containers/${blend.containerId}`))
      .labelCode;
    await open({ scope: scopeOf('BL-700') });
    const scan = await service.made<ScanView>(`/sessions/${sessionId}/scans`, { symbol: labelCode });
    expect(scan.verdict).toBe('refused');
  });

  it('is widened without losing what it said before, and holds more', async () => {
    const first = await receive(service, studio, { productId: studio.umberId, code: 'AM-801' });
    const second = await receive(service, studio, { productId: studio.umberId, code: 'AM-909' });
    const { id } = await open({ scope: scopeOf('AM-801') });
    await service.made(`/recalls/${id}/scopes`, {
      scope: scopeOf('AM-801', 'AM-909'),
      reason: 'The maker added a lot',
      notice: { source: 'pasted', text: 'Also lot AM-909' },
    });
    const view = await shown(id);
    expect(view.scopes.map(({ number, reason }) => [number, reason])).toEqual([
      [2, 'The maker added a lot'],
      [1, null],
    ]);
    expect(view).toMatchObject({ scopeNumber: 2, affectedLots: 2, heldLots: 2 });
    const alert = await openAlert(id);
    expect(alert).toMatchObject({ severity: 'urgent', facts: { affectedLots: 2, scopeNumber: 2 } });
    const { history } = await service.seen<AlertHistoryView>(`/alerts/${alert?.id}`);
    expect(history.map(({ event }) => event).sort()).toEqual(['opened', 'worse']);
    expect(await holdsOn(first.lot.id)).toHaveLength(1);
    expect(await holdsOn(second.lot.id)).toHaveLength(1);

    await service.made(`/alerts/${alert?.id}/close`, { note: 'All of it is set apart.' });
    expect(await openAlert(id)).toBeUndefined();
    await receive(service, studio, { productId: studio.umberId, code: 'AM-777' });
    const third = scopeOf('AM-801', 'AM-909', 'AM-777');
    await service.made(`/recalls/${id}/scopes`, { scope: third, reason: 'And one more' });
    expect(await openAlert(id)).toMatchObject({ facts: { affectedLots: 3, scopeNumber: 3 } });
  });

  it('keeps its holds when it is narrowed, and asks another person to release them when that is said', async () => {
    const { lot } = await receive(service, studio, { productId: studio.umberId, code: 'NA-810' });
    const { id } = await open({ scope: scopeOf('NA-810') });
    await service.made(`/recalls/${id}/scopes`, { scope: scopeOf('NA-999'), reason: 'A slip of the maker' });
    expect(await holdsOn(lot.id)).toHaveLength(1);
    expect(await shown(id)).toMatchObject({ affectedLots: 0, heldLots: 1 });
    await service.made(`/recalls/${id}/scopes`, {
      scope: scopeOf('NA-999'),
      reason: 'The maker confirmed it',
      releaseUnmet: true,
    });
    const [hold] = await holdsOn(lot.id);
    expect(hold?.releaseRequest).toMatchObject({
      personId: studio.ownerId,
      reason: 'The maker confirmed it',
    });
  });

  it('is withdrawn with a reason: another person is asked to release its holds, those of another recall stand', async () => {
    const { lot } = await receive(service, studio, { productId: studio.umberId, code: 'WD-820' });
    const one = await open({ scope: scopeOf('WD-820') });
    await open({ scope: scopeOf('WD-820') });
    expect(await holdsOn(lot.id)).toHaveLength(2);
    await service.made(`/recalls/${one.id}/withdrawal`, { reason: 'The maker took it back' });
    const asked = (await holdsOn(lot.id)).map(({ releaseRequest }) => releaseRequest?.reason);
    expect(asked.sort()).toEqual(['The maker took it back', undefined]);
    expect(await shown(one.id)).toMatchObject({
      state: 'withdrawn',
      withdrawalReason: 'The maker took it back',
      standingHold: false,
    });
    expect(await openAlert(one.id)).toBeUndefined();
    const again = await service.post<ProblemBody>(`/recalls/${one.id}/withdrawal`, { reason: 'Once more' });
    expect(again).toMatchObject({ status: 409, body: { code: 'wrong-state' } });

    await service.made(`/recalls/${one.id}/scopes`, {
      scope: scopeOf('WD-820'),
      reason: 'It was real after all',
    });
    expect(await holdsOn(lot.id)).toHaveLength(2);
    expect(await shown(one.id)).toMatchObject({ state: 'open', endedAt: null, standingHold: true });
  });

  it('is opened once, however often the request is repeated', async () => {
    const { lot } = await receive(service, studio, { productId: studio.umberId, code: 'ON-830' });
    const body = { id: uuidv7(), title: 'Once', scope: scopeOf('ON-830') };
    await service.made('/recalls', body);
    await service.made('/recalls', body);
    expect(await holdsOn(lot.id)).toHaveLength(1);
  });

  it('takes an absurd range without counting it out, and a scope that names nothing not at all', async () => {
    const range = { kind: 'code range', from: '00001', through: '99999999' };
    const startedAt = performance.now();
    const matches = await service.post<MatchedLotsView>('/recalls/matches', {
      id: undefined,
      scope: { items: [{ ...item, productIds: [studio.linerId], lots: [range] }] },
    });
    expect(matches.status, JSON.stringify(matches.body)).toBe(200);
    expect(performance.now() - startedAt).toBeLessThan(10_000);
    const answer = await service.post<ProblemBody>('/recalls', {
      title: 'Everything',
      scope: { items: [item] },
    });
    expect(answer).toMatchObject({ status: 400, body: { code: 'invalid-fields' } });
    expect(answer.body.faults?.map(({ field }) => field)).toEqual(['scope.items.0']);
    const unknown = await service.post<ProblemBody>('/recalls', {
      title: 'Unknown',
      scope: { items: [{ ...item, productIds: [uuidv7()] }] },
    });
    expect(unknown.body.faults?.map(({ field }) => field)).toEqual(['scope.items.0.productIds']);
  });
});
