import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { PlanDetailView, PlanPageView, PlanView } from '../../src/reorder/plan/plans.views.js';
import type { ReplaysView, ReplayView } from '../../src/reorder/replay/replays.views.js';
import { makeSampleStudio, type SampleStudio } from '../support/sample-studio.js';
import { type ProblemBody, type RunningService, usualEngine } from '../support/service.js';
import { startStudio } from '../support/shared-service.js';
import { until } from '../support/waiting.js';

const dayIn = (days: number) => new Date(Date.now() + days * 86_400_000).toISOString().slice(0, 10);
const noon = (days: number) => `${dayIn(days)}T11:00:00.000Z`;

describe.each(usualEngine)('had the plan been followed, on %s', (engine) => {
  let service: RunningService;
  let studio: SampleStudio;
  let supplierId: string;
  let liner: string;

  beforeAll(async () => {
    service = await startStudio(engine);
    studio = await makeSampleStudio(service);
    supplierId = (await service.made<{ id: string }>('/suppliers', { name: 'Quill and Daughters' })).id;
    await service.put(`/supplier-terms/${supplierId}`, {
      ...{ orderWeekdays: [], quotedLeadTimeDays: 4, deliveryCostMinor: 690 },
    });
    await service.made('/offers', {
      ...{ supplierId, productId: studio.linerId, packContainers: 1, containerPieces: 20, minimumPacks: 1 },
      ...{ prices: [{ fromPacks: 1, packPriceMinor: 1_800 }], currency: 'EUR', lifeOnArrivalDays: 540 },
    });
    liner = await bought(-200, -205, 30, 'FL-1');
    for (let week = 1; week <= 14; week += 1) await treat(-7 * week);
  });
  afterAll(() => service.dispose());

  const bought = async (
    days: number,
    orderedDays: number,
    quantity: number,
    code: string,
    useBy = '2099-12-31',
  ) => {
    const receipt = await service.made<{ lines: { containers: { id: string }[] }[] }>('/deliveries', {
      ...{ origin: 'purchase', supplierId, orderedOn: dayIn(orderedDays), occurredAt: noon(days) },
      lines: [
        {
          ...{ productId: studio.linerId, codes: [{ kind: 'lot', code }], useBy },
          ...{ quantity, placeId: studio.placeId, unitCostMinor: 90 },
        },
      ],
    });
    return receipt.lines[0]?.containers[0]?.id ?? '';
  };
  const treat = (days: number, containerId = liner) =>
    service.made('/sessions/late', {
      ...{ source: 'paper', occurredAt: noon(days), clientId: studio.clientId, artistId: studio.ownerId },
      ...{ procedureId: studio.procedureId, visitKind: 'first session', signedBy: studio.ownerId },
      uses: [{ pieces: 1, containerId, knownBy: 'own label' }],
    });
  const seen = () => service.seen<ReplaysView>('/plans/replay');
  const made = async () => {
    const { id } = await service.made<ReplayView>('/plans/replay');
    return until('the end of the replay', async () => {
      const replays = await seen();
      return replays.run?.id === id && !['waiting', 'running'].includes(replays.run.state)
        ? replays
        : undefined;
    });
  };

  it('says that there is none, then that the record is too short, and how long it must be', async () => {
    expect(await seen()).toEqual({ run: null, done: null, result: null });
    const { run, result } = await made();
    expect(run).toMatchObject({ state: 'done', failure: null });
    expect(result?.tooShort).toEqual({ recordedDays: 98, neededDays: 119 });
    expect(result).toMatchObject({ items: 0, lines: [], calibration: [] });
  });

  it('sets the plan beside what was ordered and beside fixed levels, and says how often forecasts were enough', async () => {
    for (let week = 15; week <= 27; week += 1) await treat(-7 * week);
    // Far more than can be used by its date: eight of sixty are, the others are thrown away.
    await bought(-90, -95, 60, 'FL-2', dayIn(-30));
    const { run, done, result } = await made();
    expect(run).toMatchObject({ state: 'done', failure: null });
    expect(done?.id).toBe(run?.id);
    if (!result) throw new Error('There is no result.');
    expect(result).toMatchObject({ tooShort: null, weeks: 14, items: 1, currency: 'EUR' });
    const [line] = result.lines;
    expect(line).toMatchObject({ itemKind: 'product', unit: 'pieces', neededUnits: 14 });
    expect(line?.asOrdered).toMatchObject({ orders: 1, orderedUnits: 60, shortDays: 0, wasteUnits: 52 });
    expect(line?.asOrdered.wasteMinor).toBe(52 * 90);
    expect(line?.plan).toMatchObject({ shortDays: 0, wasteUnits: 0 });
    expect(line?.plan.costMinor).toBeLessThan(line?.asOrdered.costMinor ?? 0);
    expect(line?.fixed.wasteUnits).toBe(0);
    expect(line?.fixedLevels.byHand).toBe(false);
    expect(result.plan.shortDays).toBe(line?.plan.shortDays);
    expect(result.calibration.map(({ level, forecasts }) => [level, forecasts])).toEqual([
      [0.5, result.calibrationWeeks],
      [0.75, result.calibrationWeeks],
      [0.95, result.calibrationWeeks],
    ]);
    expect(result.assumptions.map(({ code }) => code)).toContain('lists of today');
  });

  it('is no plan: it is in no list, is not the latest, has no lines, and nothing is drafted from it', async () => {
    const { done } = await seen();
    const id = done?.id ?? '';
    expect((await service.seen<PlanPageView>('/plans')).items).toEqual([]);
    expect((await service.get<ProblemBody>('/plans/latest')).status).toBe(404);
    for (const path of [`/plans/${id}`, `/plans/${id}/lines`]) {
      expect((await service.get<ProblemBody>(path)).body.code, path).toBe('not-found');
    }
    expect((await service.post(`/plans/${id}/levels`, {})).status).toBe(404);
    const draft = { planId: id, lineNumbers: [1] };
    const refused = await service.post<ProblemBody>('/purchase-orders/from-plan', draft);
    expect(refused.status, JSON.stringify(refused.body)).toBe(404);
    const plan = await service.made<PlanView>('/plans', { purpose: 'plan' });
    await until('the plan', async () => {
      const { state } = await service.seen<PlanDetailView>(`/plans/${plan.id}`);
      return state === 'done' ? state : undefined;
    });
    expect((await seen()).done?.id).toBe(id);
  });

  it('waits for the one that is under way, and is ended like a plan', async () => {
    const first = await service.made<ReplayView>('/plans/replay');
    const second = await service.post<ProblemBody>('/plans/replay', {});
    const ended = await service.post<PlanView>(`/plans/${first.id}/cancel`, {});
    expect([second.status, second.body.code]).toEqual([409, 'wrong-state']);
    expect(ended.body).toMatchObject({ purpose: 'replay', state: 'cancelled' });
    expect((await seen()).result).not.toBeNull();
  });
});
