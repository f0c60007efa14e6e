import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { PlanDetailView, PlanLinePageView, PlanView } from '../../src/reorder/plan/plans.views.js';
import { PlainSql } from '../support/plain-sql.js';
import { makeSampleStudio, receive } from '../support/sample-studio.js';
import {
  type ProblemBody,
  RunningService,
  startInFolder,
  startService,
  strictestEngine,
} from '../support/service.js';
import { ServiceClock } from '../support/service-clock.js';
import { until } from '../support/waiting.js';

const clock = new ServiceClock();
const environment = { PLAN_PATHS: '20000', PLAN_THREADS: '1', ...clock.environment };

describe.each(strictestEngine)('a service killed while it makes a plan, on %s', (engine) => {
  let service: RunningService;
  const productIds: string[] = [];

  beforeAll(async () => {
    service = await startService(engine, { environment });
    const studio = await makeSampleStudio(service);
    const { id: supplierId } = await service.made<{ id: string }>('/suppliers', { name: 'Quill' });
    for (let index = 0; index < 12; index += 1) {
      const { id: productId } = await service.made<{ id: string }>('/products', {
        ...{ kind: 'pigment', makerId: studio.makerId, name: `Shade ${index}`, pigmentRole: 'colour' },
        volumeMicrolitres: 10_000,
      });
      productIds.push(productId);
      await receive(service, studio, { productId, code: `S-${index}` });
      await service.made('/offers', {
        ...{ supplierId, productId, packContainers: 1, containerPieces: 1, minimumPacks: 1, currency: 'EUR' },
        prices: [{ fromPacks: 1, packPriceMinor: 2_400 }],
      });
    }
  });
  afterAll(async () => {
    await service.dispose();
    clock.dispose();
  });

  const startAgain = async () => {
    const { databaseUrl: given, dataFolder, studioId, token } = service;
    const place: Record<string, string> = given === undefined ? {} : { DATABASE_URL: given };
    const { url, child, log } = await startInFolder(dataFolder, { ...environment, ...place });
    service = new RunningService(url, dataFolder, given, child, log, studioId, token);
  };
  const plan = (id: string) => service.seen<PlanDetailView>(`/plans/${id}`);
  const inState = (id: string, states: readonly PlanView['state'][]) =>
    until(`plan ${id} ${states.join(' or ')}`, async () => {
      const seen = await plan(id);
      return states.includes(seen.state) ? seen : undefined;
    });

  it('says that it was interrupted, shows nothing of it, and makes those that waited', {
    timeout: 120_000,
  }, async () => {
    const cutOff = await service.made<PlanView>('/plans', { purpose: 'plan' });
    const whatIf = { serviceTargetPerMille: 900 };
    const waiting = await service.made<PlanView>('/plans', { purpose: 'what if', whatIf });
    await inState(cutOff.id, ['running']);
    await service.stop('SIGKILL');
    // Until then another process may be making it.
    clock.forward({ minutes: 2 });
    await startAgain();

    const failed = await plan(cutOff.id);
    expect(failed).toMatchObject({ state: 'failed', sums: null, baskets: [] });
    expect(failed.failure).toMatch(/was interrupted/);
    expect((await service.get<ProblemBody>(`/plans/${cutOff.id}/lines`)).body.code).toBe('wrong-state');
    expect((await service.get<ProblemBody>('/plans/latest')).body.code).toBe('not-found');
    const made = await inState(waiting.id, ['done', 'failed']);
    expect(made).toMatchObject({ state: 'done', failure: null });
    const { items } = await service.seen<PlanLinePageView>(`/plans/${waiting.id}/lines`);
    expect(items.length).toBe(made.sums?.lines);
    const sql = await PlainSql.connect(service, 'read');
    try {
      // Not a line of what was never finished is seen anywhere.
      const stray = await sql.rows<{ state: string }>(
        'SELECT DISTINCT plan.state FROM plan JOIN plan_line ON plan_line.plan_id = plan.id',
      );
      expect(stray.map(({ state }) => state)).toEqual(['done']);
    } finally {
      await sql.close();
    }
  });

  it('makes what is asked of one item beside a whole plan', { timeout: 120_000 }, async () => {
    const whole = await service.made<PlanView>('/plans', { purpose: 'plan' });
    await inState(whole.id, ['running']);
    const of = { itemKind: 'product', itemKey: productIds[0], pricePerMille: 900 };
    const one = await service.made<PlanView>('/plans', { purpose: 'what if', whatIf: of });
    expect(await inState(one.id, ['done', 'failed'])).toMatchObject({ state: 'done', sums: { lines: 1 } });
    expect((await plan(whole.id)).state).toBe('running');
    expect(await inState(whole.id, ['done', 'failed'])).toMatchObject({ state: 'done' });
  });
});
