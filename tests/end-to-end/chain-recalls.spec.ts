import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { AlertPageView } from '../../src/alerts/alerts.views.js';
import type { OpenedRecallView, RecallView } from '../../src/recalls/recalls.views.js';
import type { OpenHoldPageView } from '../../src/stock/holds.views.js';
import { makeSampleStudio, receive, type SampleStudio } from '../support/sample-studio.js';
import { type ProblemBody, type RunningService, startService, strictestEngine } from '../support/service.js';
import { Store } from '../support/store.js';

const item = { gtins: [], productIds: [], lots: [], openEnded: false };

describe.each(strictestEngine)('a recall for a whole chain, on %s', (engine) => {
  let here: RunningService;
  let there: RunningService;
  let store: Store;
  let studio: SampleStudio;
  let placeThere: string;

  beforeAll(async () => {
    here = await startService(engine);
    studio = await makeSampleStudio(here);
    const added = await here.made<{ studioId: string }>('/chain/studios', {
      name: 'Second',
      timeZone: 'UTC',
    });
    store = await Store.open(here.dataFolder, here.databaseUrl);
    there = await store.seenBy(here, await store.ownerOf(added.studioId));
    placeThere = (await there.seen<{ id: string }[]>('/places'))[0]?.id ?? '';
  });
  afterAll(async () => {
    await store.close();
    await here.dispose();
  });

  const scopeOf = (...codes: string[]) => ({
    items: [{ ...item, productIds: [studio.umberId], lots: codes.map((code) => ({ kind: 'code', code })) }],
  });
  const receiveThere = (code: string) =>
    receive(there, { ...studio, placeId: placeThere }, { productId: studio.umberId, code });
  const open = (...codes: string[]) =>
    here.made<OpenedRecallView>('/recalls', {
      title: `Umber ${codes.join(' ')}`,
      notice: { source: 'pasted', text: `Umber, lots ${codes.join(' and ')}` },
      scope: scopeOf(...codes),
      chainWide: true,
    });
  const partThere = (id: string) => there.seen<RecallView>(`/recalls/${id}`);
  const heldThere = async (lotId: string) =>
    (await there.seen<OpenHoldPageView>('/holds?limit=200')).items.filter((hold) => hold.lotId === lotId);

  it('is answered in every studio at once, each with its own lots, holds and alert', async () => {
    const mine = await receive(here, studio, { productId: studio.umberId, code: 'QX-7731' });
    const theirs = await receiveThere('QX-7731');
    const { id } = await open('QX-7731');
    const part = await partThere(id);
    expect(part).toMatchObject({
      chainWide: true,
      openedInStudioId: here.studioId,
      openedBy: null,
      affectedLots: 1,
      heldLots: 1,
    });
    expect(await heldThere(theirs.lot.id)).toHaveLength(1);
    expect(await heldThere(mine.lot.id)).toEqual([]);
    const alerts = await there.seen<AlertPageView>('/alerts');
    expect(alerts.items.map(({ kind, subjectId }) => [kind, subjectId])).toContainEqual(['recall open', id]);
    const noticeId = part.scopes[0]?.noticeId;
    expect(await there.seen(`/recalls/notices/${noticeId}`)).toMatchObject({ text: 'Umber, lots QX-7731' });
  });

  it('is amended and withdrawn where it was opened, and each studio follows', async () => {
    const theirs = await receiveThere('BRN/55');
    const { id } = await open('LUM.940');
    expect(await partThere(id)).toMatchObject({ affectedLots: 0, standingHold: true });
    const amendment = { scope: scopeOf('LUM.940', 'BRN/55'), reason: 'One more lot' };
    const refused = await there.post<ProblemBody>(`/recalls/${id}/scopes`, amendment);
    expect(refused).toMatchObject({ status: 409, body: { code: 'wrong-state' } });
    await here.made(`/recalls/${id}/scopes`, amendment);
    expect(await partThere(id)).toMatchObject({ scopeNumber: 2, affectedLots: 1 });
    expect(await heldThere(theirs.lot.id)).toHaveLength(1);
    await here.made(`/recalls/${id}/withdrawal`, { reason: 'A mistake of the maker' });
    expect(await partThere(id)).toMatchObject({
      state: 'withdrawn',
      withdrawalReason: 'A mistake of the maker',
    });
    const [asked] = await heldThere(theirs.lot.id);
    expect(asked?.releaseRequest).toMatchObject({ personId: null, reason: 'A mistake of the maker' });
    await here.made(`/recalls/${id}/scopes`, { scope: scopeOf('BRN/55'), reason: 'It was none' });
    expect(await partThere(id)).toMatchObject({ state: 'open', scopeNumber: 3, affectedLots: 1 });
    expect(await heldThere(theirs.lot.id)).toHaveLength(1);
  });

  it('is followed by a studio that joins the chain later, and what arrives there is held', async () => {
    const { id } = await open('77-OKA-1');
    const added = await here.made<{ studioId: string }>('/chain/studios', { name: 'Third', timeZone: 'UTC' });
    const third = await store.seenBy(here, await store.ownerOf(added.studioId));
    const place = (await third.seen<{ id: string }[]>('/places'))[0];
    const { lot, holds } = await receive(
      third,
      { ...studio, placeId: place?.id ?? '' },
      { productId: studio.umberId, code: '77-OKA-1' },
    );
    expect(holds).toMatchObject([{ reason: 'recall notice', lotId: lot.id }]);
    expect(await third.seen<RecallView>(`/recalls/${id}`)).toMatchObject({ affectedLots: 1, caughtLots: 1 });
  });

  it('is neither opened, amended nor withdrawn by somebody who does not lead every studio', async () => {
    const { id } = await open('KUM-4471');
    await store.makeStudio(undefined, (await store.ownerOf(here.studioId)).chainId);
    const answer = await here.post<ProblemBody>('/recalls', {
      title: 'Mine',
      scope: scopeOf('VEZ 612'),
      chainWide: true,
    });
    expect(answer).toMatchObject({ status: 403, body: { code: 'not-allowed' } });
    expect(answer.body.detail).toContain('Other studio');
    const { items } = await here.seen<{ items: { title: string }[] }>('/recalls');
    expect(items.map(({ title }) => title)).not.toContain('Mine');
    const amended = await here.post(`/recalls/${id}/scopes`, { scope: scopeOf('KUM-4472'), reason: 'Mine' });
    const withdrawn = await here.post(`/recalls/${id}/withdrawal`, { reason: 'Mine' });
    expect([amended.status, withdrawn.status]).toEqual([403, 403]);
    expect(await partThere(id)).toMatchObject({ state: 'open', scopeNumber: 1 });
  });
});
