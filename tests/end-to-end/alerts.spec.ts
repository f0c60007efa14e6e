import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import type {
  AlertDeliveryView,
  AlertPageView,
  AlertView,
  SweepView,
} from '../../src/alerts/alerts.views.js';
import { releaseAlone } from '../support/photos.js';
import { type ProblemBody, type RunningService, startService, strictestEngine } from '../support/service.js';
import { ServiceClock } from '../support/service-clock.js';
import { dayAhead, daysAgo, StockedStudio } from '../support/stocked-studio.js';
import { Store } from '../support/store.js';

const patience = { timeout: 15_000, interval: 100 };

describe.each(strictestEngine)('alerts on %s', (engine) => {
  let service: RunningService;
  let studio: StockedStudio;

  beforeAll(async () => {
    service = await startService(engine);
    studio = new StockedStudio(service);
  });
  afterAll(() => service.dispose());

  const alerts = async (state: 'open' | 'closed' | 'all' = 'open') =>
    (await service.seen<AlertPageView>(`/alerts?state=${state}&limit=200`)).items;
  const about = async (subjectId: string, state: 'open' | 'closed' | 'all' = 'open') =>
    (await alerts(state)).filter((alert) => alert.subjectId === subjectId);
  const setMinimum = (productId: string, minimumPieces: number) =>
    service.put('/stock/levels', { subjectKind: 'product', subjectId: productId, minimumPieces });
  const deliveries = (alertId: string) => service.seen<AlertDeliveryView[]>(`/alerts/${alertId}/deliveries`);

  it('opens low stock with what caused it, rises to urgent at none, and closes when goods arrive', async () => {
    const liner = await studio.product({ name: 'Low liner', kind: 'cartridge' });
    const box = await studio.receiveOne(liner, { code: 'LOW-1', quantity: 5 });
    await setMinimum(liner, 3);
    expect(await about(liner)).toEqual([]);
    await studio.record(box, 'waste', { pieces: 2, reason: 'dropped' });
    const [low] = await about(liner);
    expect(low).toMatchObject({
      kind: 'low stock',
      subjectKind: 'product',
      severity: 'warning',
      facts: { product: 'Low liner', usablePieces: 3, minimumPieces: 3 },
    });
    await studio.record(box, 'waste', { pieces: 3, reason: 'dropped' });
    expect(await about(liner)).toMatchObject([
      { id: low?.id, severity: 'urgent', facts: { usablePieces: 0 } },
    ]);
    await studio.receive(liner, { code: 'LOW-2', quantity: 20 });
    expect(await about(liner)).toEqual([]);
    expect(await about(liner, 'closed')).toMatchObject([{ id: low?.id, closedAt: expect.any(String) }]);
    await vi.waitFor(async () => {
      expect(await deliveries(low?.id ?? '')).toMatchObject([
        { event: 'opened', state: 'sent', channel: 'log', attempts: 1, lastError: null },
        { event: 'worse', state: 'sent' },
        { event: 'closed', state: 'sent' },
      ]);
    }, patience);
    const lines = service.log.join('').split('\n');
    const opened = lines.find((line) => line.includes('Low stock (') && line.includes('Low liner'));
    expect(opened).toContain('minimum pieces 3');
    expect(lines.some((line) => line.includes('Low stock is over') && line.includes('Low liner'))).toBe(true);
  });

  it('opens nothing when what would cause it is refused', async () => {
    const liner = await studio.product({ name: 'Steady liner', kind: 'cartridge' });
    const box = await studio.receiveOne(liner, { code: 'STEADY-1', quantity: 5 });
    await setMinimum(liner, 3);
    expect((await service.post(`/containers/${box}/waste`, { pieces: 9, reason: 'dropped' })).status).toBe(
      409,
    );
    expect(await about(liner, 'all')).toEqual([]);
  });

  it('counts a hold as gone and its release as back', async () => {
    const brown = await studio.product({ name: 'Held brown' });
    const line = await studio.receive(brown, { code: 'HELD-1', quantity: 2 });
    await setMinimum(brown, 1);
    const hold = await service.made<{ id: string }>('/holds', {
      lotId: line.lot.id,
      kind: 'recall',
      reason: 'recall notice',
    });
    expect(await about(brown)).toMatchObject([{ kind: 'low stock', severity: 'urgent' }]);
    await releaseAlone(service, hold.id, 'another lot was meant');
    expect(await about(brown)).toEqual([]);
  });

  it('warns of a lot near its use-by, of an opened bottle near its end, and of what has expired', async () => {
    const brown = await studio.product({ name: 'Dated brown', openedLife: 'P30D' });
    const near = await studio.receive(brown, { code: 'DATE-1', useBy: dayAhead(20) });
    expect(await about(near.lot.id)).toMatchObject([
      { kind: 'use-by near', facts: { lotCode: 'DATE-1', useBy: dayAhead(20), pieces: 1 } },
    ]);
    const bottle = await studio.receiveOne(brown, { code: 'DATE-2' });
    await studio.record(bottle, 'open', { occurredAt: daysAgo(25) });
    expect(await about(bottle)).toMatchObject([{ kind: 'opened life ending', facts: { lotCode: 'DATE-2' } }]);
    await studio.record(bottle, 'correct-opened-date', { openedAt: daysAgo(40), reason: 'read wrongly' });
    expect(await about(bottle)).toMatchObject([{ kind: 'expired on the shelf', severity: 'urgent' }]);
    await studio.record(bottle, 'discard', { reason: 'open too long' });
    expect(await about(bottle)).toEqual([]);
  });

  it('finds in a sweep what changed without a request, as time does, once', async () => {
    const brown = await studio.product({ name: 'Swept brown' });
    const line = await studio.receive(brown, { code: 'SWEEP-1', useBy: dayAhead(100) });
    expect(await about(line.lot.id)).toEqual([]);
    // Eighty days pass, as far as the lot is concerned.
    const store = await Store.open(service.dataFolder, service.databaseUrl);
    await store.database.writer
      .query('UPDATE studio SET use_by_near_days = use_by_near_days + 80')
      .finally(() => store.close());
    const id = uuidv7();
    const first = await service.made<SweepView>('/alerts/sweep', { id });
    expect(first.opened).toBeGreaterThanOrEqual(1);
    expect(await service.made<SweepView>('/alerts/sweep', { id })).toEqual(first);
    expect(await service.made<SweepView>('/alerts/sweep')).toEqual({ opened: 0, refreshed: 0, closed: 0 });
    expect(await about(line.lot.id)).toMatchObject([{ kind: 'use-by near' }]);
  });

  it('notes who has seen to an alert, the first to say so', async () => {
    const brown = await studio.product({ name: 'Acknowledged brown' });
    await setMinimum(brown, 0);
    const [low] = await about(brown);
    const acknowledge = () => service.made<AlertView>(`/alerts/${low?.id}/acknowledge`);
    const first = await acknowledge();
    expect(first).toMatchObject({ acknowledgedAt: expect.any(String), acknowledgedBy: expect.any(String) });
    expect(await acknowledge()).toEqual(first);
    expect(await about(brown)).toMatchObject([{ acknowledgedAt: first.acknowledgedAt, closedAt: null }]);
  });

  it('walks all alerts page by page, each once', async () => {
    const all = await alerts('all');
    const seen: string[] = [];
    for (let next: string | null = ''; next !== null; ) {
      const after = next === '' ? '' : `&after=${next}`;
      const page: AlertPageView = await service.seen(`/alerts?state=all&limit=3${after}`);
      seen.push(...page.items.map(({ id }) => id));
      next = page.next;
    }
    expect(seen).toEqual(all.map(({ id }) => id));
  });

  it('knows no alert of another studio', async () => {
    const path = `/alerts/${uuidv7()}`;
    const deliveries = await service.get<ProblemBody>(`${path}/deliveries`);
    expect(deliveries).toMatchObject({ status: 404, body: { code: 'not-found' } });
    expect((await service.post(`${path}/acknowledge`)).status).toBe(404);
  });

  it('opens a condition once, however many writes find it at the same time', async () => {
    const liner = await studio.product({ name: 'Contended liner', kind: 'cartridge' });
    const boxes = (await studio.receive(liner, { code: 'RACE-A', quantity: 6 })).containers;
    const others = (await studio.receive(liner, { code: 'RACE-B', quantity: 6 })).containers;
    await setMinimum(liner, 8);
    const ids = [...boxes, ...others].map(({ id }) => id);
    await Promise.all(
      Array.from({ length: 10 }, (_, index) =>
        service.made(`/containers/${ids[index % ids.length]}/waste`, { pieces: 1, reason: 'dropped' }),
      ),
    );
    expect(await about(liner, 'all')).toMatchObject([{ kind: 'low stock', facts: { usablePieces: 2 } }]);
  });

  it('delivers after a kill what was committed before it, and sweeps at start', async () => {
    const brown = await studio.product({ name: 'Surviving brown' });
    const line = await studio.receive(brown, { code: 'KILL-1', useBy: dayAhead(600) });
    const [view] = (await service.get<{ version: number }[]>(`${service.url}/api/v1/studios`)).body;
    await service.patch('', { version: view?.version, useByNearDays: 700 });
    await setMinimum(brown, 5);
    const [low] = await about(brown);
    await service.stop('SIGKILL');
    const { dataFolder, databaseUrl } = service;
    // What was just being sent belongs to the attempt that was cut off for some minutes.
    const clock = new ServiceClock();
    clock.forward({ minutes: 5 });
    service = await startService(engine, { dataFolder, databaseUrl, environment: clock.environment });
    await vi.waitFor(async () => {
      expect(await deliveries(low?.id ?? '')).toMatchObject([{ event: 'opened', state: 'sent' }]);
      expect(await about(line.lot.id)).toMatchObject([{ kind: 'use-by near' }]);
    }, patience);
    clock.dispose();
  });
});
