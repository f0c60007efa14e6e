import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { AlertPageView } from '../../src/alerts/alerts.views.js';
import type { BlendPageView, BlendView } from '../../src/stock/blends.views.js';
import type { ContainerView } from '../../src/stock/container-list.views.js';
import type { LotView } from '../../src/stock/lot-list.views.js';
import { releaseAlone } from '../support/photos.js';
import { type ProblemBody, type RunningService, strictestEngine } from '../support/service.js';
import { startStudio } from '../support/shared-service.js';
import { dayAhead, daysAgo, StockedStudio } from '../support/stocked-studio.js';

describe.each(strictestEngine)('house blends on %s', (engine) => {
  let service: RunningService;
  let studio: StockedStudio;
  let umber: string;
  let sand: string;
  let house: string;

  beforeAll(async () => {
    service = await startStudio(engine);
    studio = new StockedStudio(service);
    umber = await studio.product({ name: 'Umber', dropMicrolitres: 40 });
    sand = await studio.product({ name: 'Sand' });
    house = await studio.product({ name: 'House brown' });
  });
  afterAll(() => service.dispose());

  const opened = async (productId: string, code: string, useBy = '2099-12-31') => {
    const line = await studio.receive(productId, { code, useBy });
    const containerId = line.containers[0]?.id ?? '';
    await studio.record(containerId, 'open', { occurredAt: daysAgo(1) });
    return { containerId, lotId: line.lot.id };
  };
  const blend = async (parents: object[], more: object = {}) =>
    service.post<BlendView & ProblemBody>('/blends', {
      productId: house,
      placeId: await studio.shelf(),
      parents,
      ...more,
    });
  const openAlerts = async () => {
    const page = await service.seen<AlertPageView>('/alerts?limit=200');
    return page.items.map(({ kind, subjectId }) => [kind, subjectId]);
  };
  const container = (id: string) => service.seen<ContainerView>(`/containers/${id}`);
  const lot = (id: string) => service.seen<LotView>(`/lots/${id}`);

  it('is refused until the studio allows it, and says how', async () => {
    const one = await opened(umber, 'OFF-1');
    const other = await opened(sand, 'OFF-2');
    const parents = [one, other].map(({ containerId }) => ({ containerId, microlitres: 100 }));
    const refused = await blend(parents);
    expect(refused).toMatchObject({ status: 409, body: { code: 'wrong-state' } });
    expect(refused.body.detail).toContain('settings');
    const [studioView] = (await service.get<{ version: number }[]>(`${service.url}/api/v1/studios`)).body;
    await service.patch('', { version: studioView?.version, houseBlends: 'allowed' });
    expect((await blend(parents)).status).toBe(201);
  });

  it('takes from the parents what it puts into the blend, and lasts as long as the first of them', async () => {
    const one = await opened(umber, 'POUR-1', dayAhead(40));
    const other = await opened(sand, 'POUR-2');
    const made = await blend([
      { containerId: one.containerId, drops: 10 },
      { containerId: other.containerId, microlitres: 600 },
    ]);
    expect(made).toMatchObject({ status: 201, body: { microlitres: 1_000, useBy: dayAhead(40) } });
    expect((await container(one.containerId)).microlitres).toBe(15_000 - 400);
    expect((await container(other.containerId)).microlitres).toBe(15_000 - 600);
    expect(await container(made.body.containerId)).toMatchObject({
      state: 'opened',
      pieces: 1,
      microlitres: 1_000,
      lotCode: made.body.code,
    });
    const produced = await lot(made.body.lotId);
    expect(produced).toMatchObject({
      origin: 'blend',
      massBalance: [{ kind: 'produced', microlitres: 1_000 }],
    });
    expect(produced.blendedFrom.map(({ lotId }) => lotId).sort()).toEqual([one.lotId, other.lotId].sort());
    expect((await lot(one.lotId)).blendedInto).toEqual([{ lotId: made.body.lotId, microlitres: 400 }]);
    expect(await service.seen<BlendView>(`/blends/${made.body.id}`)).toEqual(made.body);
    const { items: blends } = await service.seen<BlendPageView>('/blends?limit=1');
    expect(blends).toEqual([made.body]);
  });

  it('is refused where a volume stands beside drops, or neither is given', async () => {
    const one = await opened(umber, 'BOTH-1');
    const other = await opened(sand, 'BOTH-2');
    for (const amount of [{ drops: 2, microlitres: 100 }, {}]) {
      const refused = await blend([
        { containerId: one.containerId, microlitres: 100 },
        { containerId: other.containerId, ...amount },
      ]);
      expect(refused).toMatchObject({ status: 400, body: { code: 'invalid-fields' } });
      expect(refused.body.faults?.map(({ field }) => field)).toEqual(['parents.1.microlitres']);
    }
  });

  it('books what was poured even where the book shows less', async () => {
    const one = await opened(umber, 'MORE-1');
    const other = await opened(sand, 'MORE-2');
    const made = await blend([
      { containerId: one.containerId, microlitres: 16_000 },
      { containerId: other.containerId, microlitres: 100 },
    ]);
    expect(made.status).toBe(201);
    expect((await container(one.containerId)).microlitres).toBe(0);
    expect((await lot(one.lotId)).massBalance).toContainEqual({
      kind: 'adjusted',
      pieces: 0,
      microlitres: 1_000,
    });
  });

  it('refuses a parent that could not lie on a tray, and takes nothing from the others', async () => {
    const good = await opened(umber, 'BAD-1');
    const held = await opened(sand, 'BAD-2');
    await service.made('/holds', { lotId: held.lotId, kind: 'recall', reason: 'recall notice' });
    const sealed = await studio.receiveOne(sand, { code: 'BAD-3' });
    const openTooLong = await studio.receiveOne(sand, { code: 'BAD-4' });
    await studio.record(openTooLong, 'open', { occurredAt: daysAgo(300) });
    for (const bad of [held.containerId, sealed, openTooLong]) {
      const refused = await blend([
        { containerId: good.containerId, microlitres: 100 },
        { containerId: bad, microlitres: 100 },
      ]);
      expect(refused).toMatchObject({ status: 409, body: { refusals: [{ containerId: bad }] } });
    }
    expect((await container(good.containerId)).microlitres).toBe(15_000);
  });

  it('refuses a use-by later than its parents allow, a known code, and a bottle named twice', async () => {
    const one = await opened(umber, 'DATE-1', dayAhead(40));
    const other = await opened(sand, 'DATE-2');
    const parents = [one, other].map(({ containerId }) => ({ containerId, microlitres: 100 }));
    expect((await blend(parents, { useBy: dayAhead(41) })).body.code).toBe('unusable-date');
    expect((await blend(parents, { useBy: dayAhead(30), code: 'HOUSE-1' })).body).toMatchObject({
      useBy: dayAhead(30),
      code: 'HOUSE-1',
    });
    expect((await blend(parents, { code: 'HOUSE-1' })).status).toBe(409);
    expect((await blend([...parents, ...parents])).status).toBe(400);
    expect((await blend(parents.slice(1))).status).toBe(400);
  });

  it('is held with any parent at any depth, and free again with its release', async () => {
    const one = await opened(umber, 'DEEP-1');
    const other = await opened(sand, 'DEEP-2');
    const third = await opened(sand, 'DEEP-3');
    const first = await blend([one, other].map(({ containerId }) => ({ containerId, microlitres: 3_000 })));
    const second = await blend(
      [first.body.containerId, third.containerId].map((containerId) => ({ containerId, microlitres: 500 })),
    );
    const hold = await service.made<{ id: string }>('/holds', {
      lotId: one.lotId,
      kind: 'recall',
      reason: 'recall notice',
    });
    for (const { body } of [first, second]) {
      expect((await container(body.containerId)).holds).toMatchObject([
        { holdId: hold.id, kind: 'recall', on: 'parent lot' },
      ]);
    }
    expect((await container(third.containerId)).held).toBe(false);
    await releaseAlone(service, hold.id, 'another lot was meant');
    expect((await container(second.body.containerId)).held).toBe(false);
  });

  describe('never outlasts its parents when their dates are put right', () => {
    const twoDeep = async (code: string) => {
      const one = await opened(umber, `${code}-1`, dayAhead(90));
      const other = await opened(sand, `${code}-2`);
      const pour = (ids: string[]) => blend(ids.map((containerId) => ({ containerId, microlitres: 500 })));
      const first = (await pour([one.containerId, other.containerId])).body;
      const second = (await pour([first.containerId, other.containerId])).body;
      expect([first.useBy, second.useBy]).toEqual([dayAhead(90), dayAhead(90)]);
      return { one, blends: [first.lotId, second.lotId] };
    };
    const useBys = async (lotIds: string[]) =>
      Promise.all(lotIds.map(async (lotId) => (await lot(lotId)).useBy));

    it('by a correction of the lot, at any depth, with its alerts', async () => {
      const { one, blends } = await twoDeep('FOLLOW');
      await service.patch(`/lots/${one.lotId}`, { version: 1, useBy: dayAhead(-2), reason: 'misread' });
      expect(await useBys(blends)).toEqual([dayAhead(-2), dayAhead(-2)]);
      const { version, ...seen } = await lot(blends[1] ?? '');
      expect([version, seen.useByPrecision]).toEqual([2, 'day']);
      const { containers } = seen;
      const alerts = await openAlerts();
      expect(alerts).toContainEqual(['expired on the shelf', containers[0]?.id]);
      await service.patch(`/lots/${one.lotId}`, {
        version: 2,
        useBy: dayAhead(200),
        reason: 'misread again',
      });
      expect(await useBys(blends)).toEqual([dayAhead(-2), dayAhead(-2)]);
    });

    it('by a correction of the day of opening', async () => {
      const { one, blends } = await twoDeep('REOPEN');
      const openedAt = daysAgo(160);
      await studio.record(one.containerId, 'correct-opened-date', { openedAt, reason: 'label says so' });
      const { life } = await container(one.containerId);
      expect(life.lastDay?.localeCompare(dayAhead(90))).toBe(-1);
      expect(await useBys(blends)).toEqual([life.lastDay, life.lastDay]);
    });

    it('by a date that goods of the same lot correct at receipt', async () => {
      const { one, blends } = await twoDeep('RECEIPT');
      await service.made('/deliveries', {
        origin: 'gift or sample',
        lines: [
          {
            productId: umber,
            codes: [{ kind: 'lot', code: 'RECEIPT-1' }],
            useBy: dayAhead(30),
            quantity: 1,
            placeId: await studio.shelf(),
            sameCodeDecision: 'correct recorded date',
          },
        ],
      });
      expect((await lot(one.lotId)).useBy).toBe(dayAhead(30));
      expect(await useBys(blends)).toEqual([dayAhead(30), dayAhead(30)]);
    });
  });

  it('is recorded as it was poured though a parent was recalled since, and is held with it', async () => {
    const one = await opened(umber, 'PAST-1');
    const other = await opened(sand, 'PAST-2');
    const parents = [one, other].map(({ containerId }) => ({ containerId, microlitres: 100 }));
    await service.made('/holds', { lotId: one.lotId, kind: 'recall', reason: 'recall notice' });
    expect((await blend(parents)).status).toBe(409);
    const made = await blend(parents, { occurredAt: daysAgo(0.5) });
    expect(made.status).toBe(201);
    expect((await container(made.body.containerId)).holds).toMatchObject([
      { kind: 'recall', on: 'parent lot' },
    ]);
  });

  it('cannot be poured apart by reversing its movements', async () => {
    const one = await opened(umber, 'APART-1');
    const other = await opened(sand, 'APART-2');
    const made = await blend([one, other].map(({ containerId }) => ({ containerId, microlitres: 100 })));
    const [produced] = (await lot(made.body.lotId)).movements;
    const reversal = await service.post<ProblemBody>(`/movements/${produced?.id}/reversal`, {
      reason: 'undo',
    });
    expect(reversal).toMatchObject({ status: 409, body: { code: 'wrong-state' } });
  });
});
