import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { AlertPageView } from '../../src/alerts/alerts.views.js';
import type {
  LevelsTakenView,
  PlanDetailView,
  PlanLinePageView,
  PlanLineView,
  PlanPageView,
  PlanView,
} from '../../src/reorder/plan/plans.views.js';
import type { PurchaseOrderView } from '../../src/reorder/purchase-orders/purchase-orders.views.js';
import type { OfferView } from '../../src/reorder/supply/offers.views.js';
import type { StockLevelsView } from '../../src/stock/levels.views.js';
import { makeSampleStudio, receive, type SampleStudio, walkIn } from '../support/sample-studio.js';
import { type ProblemBody, type RunningService, usualEngine } from '../support/service.js';
import { startStudio } from '../support/shared-service.js';
import { until } from '../support/waiting.js';

const dayIn = (days: number) => new Date(Date.now() + days * 86_400_000).toISOString().slice(0, 10);
const noon = (days: number) => `${dayIn(days)}T11:00:00.000Z`;
const underWay = ['waiting', 'running'];

describe.each(usualEngine)('plans, on %s', (engine) => {
  let service: RunningService;
  let studio: SampleStudio;
  let supplierId: string;
  let umber: string;
  let offer: OfferView;

  beforeAll(async () => {
    service = await startStudio(engine);
    studio = await makeSampleStudio(service);
    const supplier = await service.made<{ id: string }>('/suppliers', { name: 'Quill and Daughters' });
    supplierId = supplier.id;
    const terms = { orderWeekdays: [], quotedLeadTimeDays: 5, deliveryCostMinor: 690 };
    expect((await service.put(`/supplier-terms/${supplierId}`, terms)).status).toBe(200);
    offer = await offered(studio.umberId, { prices: [{ fromPacks: 1, packPriceMinor: 2_400 }] });
    await offered(studio.linerId, { containerPieces: 20, prices: [{ fromPacks: 1, packPriceMinor: 1_800 }] });
    const goods = { productId: studio.umberId, code: 'UM-1', quantity: 2, useBy: dayIn(300) };
    const received = await receive(service, studio, goods);
    umber = received.containers[0]?.id ?? '';
    const liners = await receive(service, studio, { productId: studio.linerId, code: 'FL-1', quantity: 11 });
    const liner = liners.containers[0]?.id ?? '';
    for (let week = 1; week <= 10; week += 1) {
      await service.made('/sessions/late', {
        ...{
          source: 'paper',
          occurredAt: noon(-7 * week),
          clientId: studio.clientId,
          artistId: studio.ownerId,
        },
        ...{ procedureId: studio.procedureId, visitKind: 'first session', signedBy: studio.ownerId },
        uses: [
          { microlitres: 300, containerId: umber, knownBy: 'own label' },
          { pieces: 1, containerId: liner, knownBy: 'own label' },
        ],
      });
    }
    for (const days of [3, 10, 17]) {
      await service.made('/sessions', {
        ...{ clientId: studio.clientId, artistId: studio.ownerId, procedureId: studio.procedureId },
        ...{ visitKind: 'first session', plannedStart: noon(days) },
      });
    }
  });
  afterAll(() => service.dispose());

  const offered = (productId: string, more: object) =>
    service.made<OfferView>('/offers', {
      ...{ supplierId, productId, packContainers: 1, containerPieces: 1, minimumPacks: 1, currency: 'EUR' },
      lifeOnArrivalDays: 540,
      ...more,
    });
  const ask = (body: object = { purpose: 'plan' }) => service.made<PlanView>('/plans', body);
  const ended = (id: string) =>
    until(`the end of plan ${id}`, async () => {
      const plan = await service.seen<PlanDetailView>(`/plans/${id}`);
      return underWay.includes(plan.state) ? undefined : plan;
    });
  const made = async (body?: object) => ended((await ask(body)).id);
  const linesOf = (id: string, query = '') => service.seen<PlanLinePageView>(`/plans/${id}/lines${query}`);
  const lineOf = async (id: string, productId: string) => {
    const { items } = await linesOf(id);
    const line = items.find(({ item }) => item.productIds.includes(productId));
    return service.seen<PlanLineView>(`/plans/${id}/lines/${line?.lineNumber}`);
  };
  const refusal = async (path: string, body: object) => {
    const answer = await service.post<ProblemBody>(path, body);
    return [answer.status, answer.body.code];
  };

  it('says there is none before one was made', async () => {
    expect((await service.get<ProblemBody>('/plans/latest')).body.code).toBe('not-found');
  });

  it('tells of each item what is needed, what may happen, what to do and why, in figures that are all numbers', async () => {
    const plan = await made();
    expect(plan).toMatchObject({ state: 'done', failure: null, purpose: 'plan', itemsDone: plan.items });
    expect(plan.sums).toMatchObject({ currency: 'EUR', paths: 200, linesTakenOver: 0 });
    expect(plan.assumptions.map(({ code }) => code)).toContain('service target assumed');
    const { items, next } = await linesOf(plan.id);
    expect(next).toBeNull();
    expect(items).toHaveLength(plan.sums?.lines ?? -1);
    expect(items.map(({ lineNumber }) => lineNumber)).toEqual(items.map((_, index) => index + 1));
    const stakes = items.map(({ stakeMinor }) => stakeMinor);
    expect(stakes).toEqual([...stakes].sort((one, other) => other - one));
    for (const { lineNumber } of items) {
      const line = await service.seen<PlanLineView>(`/plans/${plan.id}/lines/${lineNumber}`);
      // JSON knows no NaN: it would have become null where a number is promised.
      expect([line.shortChance, line.coverDays, line.costChosen.totalMinor, line.unitsPerWeek]).not.toContain(
        null,
      );
      expect(line.sentence).toMatch(/[.]$/);
    }
    const line = await lineOf(plan.id, studio.umberId);
    expect(line.item).toMatchObject({ unit: 'microlitres', shade: 'Warm 02' });
    expect(line.stock).toMatchObject({ usableUnits: 17_000, containers: 2, heldContainers: 0 });
    expect(line.demand.knownUnits).toBeGreaterThan(0);
    expect(line.supply).toMatchObject({ supplierName: 'Quill and Daughters', packContainers: 1 });
    expect(line.fanWithout?.days[0]).toBe(plan.plannedOn);
    expect(await service.seen('/plans/latest')).toEqual(plan);
  });

  it('does not compute equal facts twice, and of changed ones only what they change', async () => {
    const first = await service.seen<PlanDetailView>('/plans/latest');
    const same = await made();
    expect(same).toMatchObject({ state: 'done', sameAsId: first.id, sums: first.sums });
    expect(await linesOf(same.id)).toEqual(await linesOf(first.id));

    await receive(service, studio, { productId: studio.gelId, code: 'NG-1' });
    const other = await made();
    expect(other.sameAsId).toBeNull();
    expect(other.sums?.linesTakenOver).toBeGreaterThanOrEqual(2);
    expect(other.sums?.lines).toBeGreaterThan(other.sums?.linesTakenOver ?? 0);
    expect((await lineOf(other.id, studio.umberId)).takenOverFromId).toBe(first.id);
  });

  it('leaves out what is held, and says so', async () => {
    const { lot, containers } = await receive(service, studio, { productId: studio.umberId, code: 'UM-H' });
    await service.made('/holds', { kind: 'quarantine', lotId: lot.id, reason: 'broken seal' });
    const line = await lineOf((await made()).id, studio.umberId);
    expect(line.stock).toMatchObject({
      heldContainers: containers.length,
      heldUnits: 10_000,
      usableUnits: 17_000,
    });
    expect(line.notes).toContain('on hold ignored');
  });

  it('says what would be if something were different, of one item or all', async () => {
    const item = { itemKind: 'product', itemKey: studio.umberId };
    const usual = await made({ purpose: 'what if', whatIf: { ...item, pricePerMille: 1_000 } });
    const busy = await made({
      purpose: 'what if',
      whatIf: {
        ...item,
        bookingsPerMille: 3_000,
        extraSessions: [{ procedureId: studio.procedureId, on: dayIn(5), sessions: 10 }],
      },
    });
    expect(busy).toMatchObject({
      purpose: 'what if',
      sums: { lines: 1 },
      whatIf: { bookingsPerMille: 3_000 },
    });
    const [before, after] = [await lineOf(usual.id, studio.umberId), await lineOf(busy.id, studio.umberId)];
    expect(after.demand.knownUnits).toBeGreaterThan(before.demand.knownUnits);
    expect(after.shortChance).toBeGreaterThanOrEqual(before.shortChance);
    const latest = await service.seen<PlanDetailView>('/plans/latest');
    expect(latest.purpose).toBe('plan');
  });

  it('fails in words when an item is asked about that nobody has to do with', async () => {
    const whatIf = { itemKind: 'product', itemKey: studio.thinnerId, pricePerMille: 900 };
    const plan = await made({ purpose: 'what if', whatIf });
    expect(plan).toMatchObject({ state: 'failed', sums: null });
    expect(plan.failure).toMatch(/^This item is not planned here/);
  });

  it('takes reorder points into levels, but leaves those set by hand unless they are named', async () => {
    const plan = await service.seen<PlanDetailView>('/plans/latest');
    const line = await lineOf(plan.id, studio.linerId);
    const subject = { subjectKind: 'product', subjectId: studio.linerId };
    expect((await service.put('/stock/levels', { ...subject, minimumPieces: 77 })).status).toBe(200);
    const all = await service.made<LevelsTakenView>(`/plans/${plan.id}/levels`);
    const ofLiner = all.items.find(({ subjectId }) => subjectId === studio.linerId);
    expect(ofLiner).toMatchObject({ outcome: 'left, since it was set by hand', before: 77, after: 77 });
    const named = { lineNumbers: [line.lineNumber] };
    const [taken] = (await service.made<LevelsTakenView>(`/plans/${plan.id}/levels`, named)).items;
    expect(taken).toMatchObject({ outcome: 'set', before: 77, after: line.level.minimumPieces });
    const again = await service.made<LevelsTakenView>(`/plans/${plan.id}/levels`, named);
    expect(again.items).toMatchObject([{ outcome: 'unchanged' }]);
    const levels = await service.seen<StockLevelsView>('/stock/levels');
    const level = levels.products.find(({ productId }) => productId === studio.linerId)?.level;
    expect(level?.minimumPieces).toBe(line.level.minimumPieces);
    expect((await lineOf(plan.id, studio.linerId)).level).toMatchObject({ setByHand: false });
  });

  it('knows a level of a configuration under any of the keys that are pooled', async () => {
    const cartridge = (name: string, machineFit: string) =>
      service.made<{ id: string }>('/products', {
        ...{
          kind: 'cartridge',
          makerId: studio.makerId,
          name,
          notation: '1015CMLT',
          taper: 'long',
          machineFit,
        },
      });
    const [one, other] = [await cartridge('Curved', 'pen'), await cartridge('Curved too', 'rotary')];
    const equal = { productId: one.id, otherProductId: other.id, reason: 'same needle' };
    await service.made('/configurations/equivalences', equal);
    await offered(one.id, { containerPieces: 20, prices: [{ fromPacks: 1, packPriceMinor: 1_800 }] });
    const { configurations } = await service.seen<StockLevelsView>('/stock/levels');
    const keys = configurations.find(({ productIds }) => productIds.includes(one.id))?.keys ?? [];
    expect(keys).toHaveLength(2);
    const level = { subjectKind: 'configuration', subjectId: keys[1] };
    expect((await service.put('/stock/levels', { ...level, minimumPieces: 3 })).status).toBe(200);
    const line = await lineOf((await made()).id, one.id);
    expect(line.item.key).toBe(keys[0]);
    expect(line.level).toMatchObject({ currentPieces: 3, setByHand: true });
  });

  it('takes for needed what was refused to a session that was cancelled, none being left', async () => {
    const session = await walkIn(service, studio);
    const wanted = { productId: studio.thinnerId, occurredAt: noon(-2) };
    expect(await service.made(`/sessions/${session}/scans`, wanted)).toMatchObject({ verdict: 'refused' });
    await service.made(`/sessions/${session}/cancellation`);
    const line = await lineOf((await made()).id, studio.thinnerId);
    expect(line.demand.unforeseenUnits).toBeGreaterThan(0);
    const codes = line.assumptions.map(({ code }) => code);
    expect(codes).toContain('amount assumed');
    expect(codes).not.toContain('no history');
  });

  it('says of a delivery without an order that nobody knows what it brings', async () => {
    const expectedOn = dayIn(4);
    await service.made('/expected-deliveries', { supplierId, expectedOn });
    const { assumptions } = await made();
    expect(assumptions).toContainEqual({
      ...{ code: 'content of a delivery unknown', items: null },
      figures: { supplier: 'Quill and Daughters', on: expectedOn },
      message: `A delivery of Quill and Daughters expected on ${expectedOn} is of unknown content and not counted.`,
    });
  });

  it('ends when it is cancelled, and the next one is made', async () => {
    const [running, waiting] = [
      await ask({ purpose: 'what if', whatIf: { serviceTargetPerMille: 900 } }),
      await ask({ purpose: 'what if', whatIf: { serviceTargetPerMille: 990 } }),
    ];
    expect(await service.made(`/plans/${waiting.id}/cancel`)).toMatchObject({ state: 'cancelled' });
    const cancelled = await service.post<PlanView & ProblemBody>(`/plans/${running.id}/cancel`, {
      id: uuidv7(),
    });
    expect(cancelled.status === 201 || cancelled.body.code === 'wrong-state').toBe(true);
    const end = await ended(running.id);
    expect(end.state).toBe(cancelled.status === 201 ? 'cancelled' : 'done');
    expect(await refusal(`/plans/${waiting.id}/cancel`, { id: uuidv7() })).toEqual([409, 'wrong-state']);
    expect((await service.get<ProblemBody>(`/plans/${waiting.id}/lines`)).body.code).toBe('wrong-state');
    expect((await made({ purpose: 'what if', whatIf: { serviceTargetPerMille: 0 } })).state).toBe('done');
  });

  it('tells of an order that is due until it is drafted', async () => {
    const due = async () =>
      (await service.seen<AlertPageView>('/alerts?limit=200')).items.filter(
        ({ kind }) => kind === 'order due',
      );
    expect(await due()).toMatchObject([
      {
        subjectKind: 'supplier',
        subjectId: supplierId,
        facts: { supplier: 'Quill and Daughters', lines: 1 },
      },
    ]);
    const latest = await service.seen<PlanDetailView>('/plans/latest');
    expect(latest.baskets[0]).toMatchObject({ supplierId, on: latest.plannedOn, deliveryMinor: 690 });
    expect(latest.dueToday).toBe(1);
    const { lineNumber } = await lineOf(latest.id, studio.linerId);
    await service.made('/purchase-orders/from-plan', { planId: latest.id, lineNumbers: [lineNumber] });
    expect(await due()).toEqual([]);
  });

  it('has what is asked at once made one after the other', async () => {
    const asked = await Promise.all(
      [800, 850].map((serviceTargetPerMille) =>
        ask({ purpose: 'what if', whatIf: { serviceTargetPerMille } }),
      ),
    );
    const plans = await Promise.all(asked.map(({ id }) => ended(id)));
    expect(plans.map(({ state }) => state)).toEqual(['done', 'done']);
  });

  it('tells of a draft, counts on what is approved, and on nothing that a recall catches on arrival', async () => {
    const lines = [{ offerId: offer.id, packs: 3 }];
    const order = await service.made<PurchaseOrderView>('/purchase-orders', { supplierId, lines });
    const told = { figures: { order: order.number, pieces: 3 } };
    const umberOf = async () => lineOf((await made()).id, studio.umberId);
    const drafted = await umberOf();
    expect(drafted.assumptions).toContainEqual(expect.objectContaining({ code: 'drafted already', ...told }));
    expect(drafted.stock.onTheWayUnits).toBe(0);
    await service.made(`/purchase-orders/${order.id}/approval`, { version: order.version });
    const approved = await umberOf();
    const counted = { code: 'approved order counted on', ...told };
    expect(approved.assumptions).toContainEqual(expect.objectContaining(counted));
    expect(approved.stock.onTheWayUnits).toBeGreaterThan(0);
    const item = { gtins: [], productIds: [studio.umberId], lots: [], openEnded: false };
    await service.made('/recalls', {
      title: 'Umber',
      scope: { items: [item] },
    });
    const recalled = await umberOf();
    expect(recalled.assumptions.map(({ code }) => code)).toContain('every lot is caught on arrival');
    expect(recalled).toMatchObject({ stock: { onTheWayUnits: 0, usableUnits: 0 }, packs: 0, offers: [] });
  });

  it('lets a product inherit the need of one that is used up and archived, of which it says nothing more', async () => {
    const pigment = {
      kind: 'pigment',
      makerId: studio.makerId,
      pigmentRole: 'colour',
      volumeMicrolitres: 10_000,
    };
    const [{ id: old }, { id: fresh }] = [
      await service.made<{ id: string }>('/products', { ...pigment, name: 'Sienna', shade: 'Old 1' }),
      await service.made<{ id: string }>('/products', { ...pigment, name: 'Sienna', shade: 'New 1' }),
    ];
    const { containers } = await receive(service, studio, { productId: old, code: 'SI-1' });
    const containerId = containers[0]?.id ?? '';
    for (const weeks of [1, 2, 3, 4]) {
      await service.made('/sessions/late', {
        ...{ source: 'paper', occurredAt: noon(-7 * weeks), clientId: studio.clientId },
        ...{ artistId: studio.ownerId, procedureId: studio.procedureId, visitKind: 'first session' },
        ...{ signedBy: studio.ownerId, uses: [{ microlitres: 400, containerId, knownBy: 'own label' }] },
      });
    }
    await service.made(`/containers/${containerId}/discard`, { reason: 'It was spilled.' });
    const product = await service.seen<{ version: number }>(`/products/${old}`);
    await service.made(`/products/${old}/archive`, { version: product.version });
    await offered(fresh, { prices: [{ fromPacks: 1, packPriceMinor: 2_400 }] });
    const linked = { itemKind: 'product', itemKey: fresh, replacesProductId: old };
    expect((await service.put('/planning-settings/items', linked)).status).toBe(200);
    const { id } = await made();
    const line = await lineOf(id, fresh);
    expect(line.assumptions.map(({ code }) => code)).toContain('history of predecessor');
    expect(line.unitsPerWeek).toBeGreaterThan(0);
    expect((await linesOf(id)).items.filter(({ item }) => item.productIds.includes(old))).toEqual([]);
  });

  it('gives no levels from what is only supposed', async () => {
    const { id } = await made({ purpose: 'what if', whatIf: { serviceTargetPerMille: 700 } });
    expect(await refusal(`/plans/${id}/levels`, { id: uuidv7() })).toEqual([409, 'wrong-state']);
  });

  it('is listed, page by page, and refuses what makes no sense', async () => {
    const first = await service.seen<PlanPageView>('/plans?limit=2');
    const second = await service.seen<PlanPageView>(`/plans?limit=200&after=${first.next}`);
    const ids = [...first.items, ...second.items].map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    const plans = (await service.seen<PlanPageView>('/plans?purpose=plan&state=done')).items;
    expect(plans.every(({ purpose, state }) => purpose === 'plan' && state === 'done')).toBe(true);

    const whatIf = { pricePerMille: 1_100 };
    expect(await refusal('/plans', { id: uuidv7(), purpose: 'plan', whatIf })).toEqual([
      400,
      'invalid-fields',
    ]);
    expect(await refusal('/plans', { id: uuidv7(), purpose: 'what if' })).toEqual([400, 'invalid-fields']);
    const ofNothing = { itemKey: studio.umberId, pricePerMille: 1_100 };
    expect(await refusal('/plans', { id: uuidv7(), purpose: 'what if', whatIf: ofNothing })).toEqual([
      400,
      'invalid-fields',
    ]);
    const past = { extraSessions: [{ procedureId: studio.procedureId, on: dayIn(-3), sessions: 1 }] };
    expect(await refusal('/plans', { id: uuidv7(), purpose: 'what if', whatIf: past })).toEqual([
      400,
      'invalid-fields',
    ]);
    const unknown = { extraSessions: [{ procedureId: uuidv7(), on: dayIn(3), sessions: 1 }] };
    expect(await refusal('/plans', { id: uuidv7(), purpose: 'what if', whatIf: unknown })).toEqual([
      404,
      'not-found',
    ]);
    const [latest] = plans;
    expect((await service.get<ProblemBody>(`/plans/${latest?.id}/lines/999`)).body.code).toBe('not-found');
    expect((await service.get<ProblemBody>(`/plans/${latest?.id}/lines/0`)).body.code).toBe(
      'malformed-request',
    );
    expect((await service.get<ProblemBody>(`/plans/${uuidv7()}`)).body.code).toBe('not-found');
    const beyond = { id: uuidv7(), lineNumbers: [3_999] };
    expect(await refusal(`/plans/${latest?.id}/levels`, beyond)).toEqual([400, 'invalid-fields']);
    expect(offer.productId).toBe(studio.umberId);
  });
});
