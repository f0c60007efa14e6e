import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { AlertPageView } from '../../src/alerts/alerts.views.js';
import type {
  DateThresholdPageView,
  DateThresholdView,
} from '../../src/stock/date-thresholds/date-thresholds.views.js';
import type {
  ExpectedDeliveryPageView,
  ExpectedDeliveryView,
} from '../../src/stock/expected-deliveries/expected-deliveries.views.js';
import { type ProblemBody, type RunningService, startService, usualEngine } from '../support/service.js';
import { ServiceClock } from '../support/service-clock.js';
import { dayAhead, StockedStudio } from '../support/stocked-studio.js';

describe.each(usualEngine)('alerts of goods on %s', (engine) => {
  const clock = new ServiceClock();
  let service: RunningService;
  let studio: StockedStudio;
  let supplierId: string;

  beforeAll(async () => {
    service = await startService(engine, { environment: clock.environment });
    studio = new StockedStudio(service);
    supplierId = (await service.made<{ id: string }>('/suppliers', { name: 'Lindqvist Wholesale' })).id;
  });
  afterAll(async () => {
    await service.dispose();
    clock.dispose();
  });

  const about = async (subjectId: string) =>
    (await service.seen<AlertPageView>('/alerts?limit=200')).items.filter(
      (alert) => alert.subjectId === subjectId,
    );

  describe('held goods', () => {
    it('are told of until they are set aside, and then until nothing of them is here', async () => {
      const umber = await studio.product({ name: 'Umber', shade: 'Warm 02' });
      const { lot, containers } = await studio.receive(umber, { code: 'H-1', quantity: 2 });
      const hold = await service.made<{ id: string; occurredAt: string }>('/holds', {
        kind: 'recall',
        reason: 'recall notice',
        lotId: lot.id,
      });
      const [alert] = await about(lot.id);
      expect(alert).toMatchObject({
        kind: 'held stock on hand',
        subjectKind: 'lot',
        severity: 'warning',
        facts: {
          product: 'Umber',
          shade: 'Warm 02',
          maker: expect.stringContaining('Halden'),
          lotCode: 'H-1',
          pieces: 2,
          places: [expect.stringContaining('Shelf')],
          holdKinds: ['recall'],
          heldSince: hold.occurredAt,
          whatToDo: 'set it apart',
        },
      });
      const aside = await service.made<{ id: string }>('/places', { name: 'Put apart', kind: 'set aside' });
      for (const { id } of containers) await studio.record(id, 'move', { placeId: aside.id });
      expect(await about(lot.id)).toMatchObject([
        {
          id: alert?.id,
          severity: 'notice',
          facts: { places: ['Put apart'], whatToDo: 'return or destroy it as the recall says' },
        },
      ]);
      const [first, second] = containers.map(({ id }) => id);
      await studio.record(first ?? '', 'discard', { reason: 'destroyed' });
      expect(await about(lot.id)).toMatchObject([{ facts: { pieces: 1 } }]);
      await studio.record(second ?? '', 'discard', { reason: 'destroyed' });
      expect(await about(lot.id)).toEqual([]);
    });

    it('are told of no longer when the hold is released', async () => {
      const sand = await studio.product({ name: 'Sand' });
      const { lot, containers } = await studio.receive(sand, { code: 'H-2', quantity: 2 });
      const hold = await service.made<{ id: string }>('/holds', {
        kind: 'quarantine',
        reason: 'doubt',
        containerId: containers[0]?.id,
      });
      expect(await about(lot.id)).toMatchObject([
        { severity: 'warning', facts: { pieces: 1, labelCodes: [containers[0]?.labelCode] } },
      ]);
      await service.made(`/holds/${hold.id}/release`, { reason: 'The seal is whole.' });
      expect(await about(lot.id)).toEqual([]);
    });

    it('are told of again when it comes back, after somebody closed it and it ended', async () => {
      const sienna = await studio.product({ name: 'Sienna', shade: 'Closed 01' });
      const { lot } = await studio.receive(sienna, { code: 'H-3', quantity: 1 });
      const onHold = () =>
        service.made<{ id: string }>('/holds', { kind: 'quarantine', reason: 'broken seal', lotId: lot.id });
      const hold = await onHold();
      const [alert] = await about(lot.id);
      await service.made(`/alerts/${alert?.id}/close`, { note: 'looked at' });
      await service.made(`/holds/${hold.id}/release`, { reason: 'it was whole' });
      await onHold();
      expect(await about(lot.id)).toMatchObject([{ kind: 'held stock on hand', severity: 'warning' }]);
    });
  });

  describe('days of warning of one product', () => {
    const setDays = (productId: string, body: object) =>
      service.put<DateThresholdView & ProblemBody>(`/date-thresholds/${productId}`, body);
    const remove = <Body>(productId: string, version: number) =>
      service.send<Body>('DELETE', `/date-thresholds/${productId}`, { id: uuidv7(), version });

    it("stand before the studio's, in alerts and in sums, until they are removed", async () => {
      const slow = await studio.product({ name: 'Slow mover' });
      const { lot } = await studio.receive(slow, { code: 'D-1', useBy: dayAhead(90) });
      expect(await about(lot.id)).toEqual([]);
      const set = await setDays(slow, { useByNearDays: 120 });
      expect(set.body).toMatchObject({
        productName: 'Slow mover',
        useByNearDays: 120,
        openedLifeEndingDays: null,
        version: 1,
      });
      expect(await about(lot.id)).toMatchObject([
        { kind: 'use-by near', facts: { places: [expect.stringContaining('Shelf')], lotCode: 'D-1' } },
      ]);
      const levels = await service.seen<{ products: { productId: string; quantities: object }[] }>(
        '/stock/levels',
      );
      expect(levels.products.find(({ productId }) => productId === slow)?.quantities).toMatchObject({
        endingSoonPieces: 1,
      });
      expect((await service.seen<DateThresholdPageView>('/date-thresholds')).items).toEqual([set.body]);

      expect(await setDays(slow, { useByNearDays: 10 })).toMatchObject({
        status: 409,
        body: { code: 'stale-version' },
      });
      expect(await setDays(slow, { useByNearDays: 10, version: 1 })).toMatchObject({ body: { version: 2 } });
      expect(await about(lot.id)).toEqual([]);
      await setDays(slow, { useByNearDays: 120, version: 2 });
      const removed = await remove<DateThresholdView>(slow, 3);
      expect(removed.body).toMatchObject({ useByNearDays: 120 });
      expect(await about(lot.id)).toEqual([]);
      expect((await service.seen<DateThresholdPageView>('/date-thresholds')).items).toEqual([]);
    });

    it('are refused when they say nothing, or are of nothing known', async () => {
      const other = await studio.product({ name: 'Other' });
      expect(await setDays(other, { useByNearDays: null })).toMatchObject({
        status: 400,
        body: { code: 'invalid-fields' },
      });
      expect((await setDays(supplierId, { useByNearDays: 5 })).status).toBe(404);
      expect((await setDays(other, { useByNearDays: 5, version: 1 })).status).toBe(404);
      expect((await remove(other, 1)).status).toBe(404);
    });
  });

  // The last ones, for they put the clock forward.
  describe('a delivery that is expected', () => {
    const expectOne = (more: object = {}) =>
      service.made<ExpectedDeliveryView>('/expected-deliveries', {
        supplierId,
        reference: 'PO-17',
        orderedOn: clock.now().slice(0, 10),
        expectedOn: dayIn(3),
        ...more,
      });
    const dayIn = (days: number) =>
      new Date(Date.parse(clock.now()) + days * 86_400_000).toISOString().slice(0, 10);
    const sweep = () => service.made('/alerts/sweep');

    it('is late from the day after, until it is moved, received or called off', async () => {
      const expected = await expectOne();
      expect(expected).toMatchObject({ supplierName: 'Lindqvist Wholesale', late: false, endedAs: null });
      clock.forward({ days: 3 });
      await sweep();
      expect(await about(expected.id)).toEqual([]);
      clock.forward({ days: 1 });
      await sweep();
      expect(await about(expected.id)).toMatchObject([
        {
          kind: 'delivery late',
          subjectKind: 'expected delivery',
          severity: 'warning',
          facts: {
            supplier: 'Lindqvist Wholesale',
            reference: 'PO-17',
            orderedOn: expected.orderedOn,
            expectedOn: expected.expectedOn,
          },
        },
      ]);
      const path = `/expected-deliveries/${expected.id}`;
      expect(await service.seen(path)).toMatchObject({ late: true });
      const moved = await service.patch<ExpectedDeliveryView>(path, { version: 1, expectedOn: dayIn(2) });
      expect(moved.body).toMatchObject({ version: 2, late: false, reference: 'PO-17' });
      expect(await about(expected.id)).toEqual([]);
      expect((await service.patch(path, { version: 1, expectedOn: dayIn(9) })).status).toBe(409);
      await service.patch(path, { version: 2, expectedOn: dayIn(-1) });
      expect(await about(expected.id)).toHaveLength(1);
      expect(await service.made(`${path}/call-off`)).toMatchObject({ endedAs: 'called off', late: false });
      expect(await about(expected.id)).toEqual([]);
      const again = await service.post<ProblemBody>(`${path}/received`);
      expect([again.status, again.body.code]).toEqual([409, 'wrong-state']);
    });

    it('ends when what arrives is said to be it, also when it was called off before', async () => {
      const [one, other] = [await expectOne({ expectedOn: dayIn(-1), orderedOn: null }), await expectOne()];
      expect(await about(one.id)).toHaveLength(1);
      await service.made(`/expected-deliveries/${other.id}/call-off`);
      const umber = await studio.product({ name: 'Ordered umber' });
      for (const { id } of [one, other]) {
        const receipt = await service.made<{ id: string }>('/deliveries', {
          origin: 'purchase',
          supplierId,
          expectedDeliveryId: id,
          lines: [
            {
              productId: umber,
              codes: [{ kind: 'lot', code: 'E-1' }],
              useBy: '2099-12-31',
              quantity: 1,
              placeId: await studio.shelf(),
            },
          ],
        });
        expect(await service.seen(`/expected-deliveries/${id}`)).toMatchObject({
          endedAs: 'received',
          deliveryId: receipt.id,
        });
      }
      expect(await about(one.id)).toEqual([]);
    });

    it('is listed by its day, page by page, those that ended apart', async () => {
      const later = await expectOne({ expectedOn: dayIn(8) });
      const sooner = await expectOne({ expectedOn: dayIn(5) });
      const first = await service.seen<ExpectedDeliveryPageView>('/expected-deliveries?limit=1');
      expect(first.items.map(({ id }) => id)).toEqual([sooner.id]);
      const rest = await service.seen<ExpectedDeliveryPageView>(`/expected-deliveries?after=${first.next}`);
      expect([rest.items.map(({ id }) => id), rest.next]).toEqual([[later.id], null]);
      const ended = await service.seen<ExpectedDeliveryPageView>('/expected-deliveries?state=ended');
      expect(ended.items.every(({ endedAs }) => endedAs !== null)).toBe(true);
      expect(ended.items).toHaveLength(3);
    });

    it.each([
      ['a day that does not exist', { expectedOn: '2027-02-30' }, 'unusable-date'],
      ['a year that is a slip', { expectedOn: '2207-02-03' }, 'unusable-date'],
      ['a day before that of the order', { expectedOn: '2020-01-01' }, 'unusable-date'],
      ['an order of tomorrow', { orderedOn: '2098-01-01', expectedOn: '2099-01-01' }, 'unusable-date'],
      ['a reference with a line break', { reference: 'PO\n17' }, 'invalid-fields'],
      ['a supplier that is not known', { supplierId: '0197f3a0-0000-7000-8000-000000000000' }, 'not-found'],
    ])('refuses %s', async (_, given, code) => {
      const refused = await service.post<ProblemBody>('/expected-deliveries', {
        supplierId,
        orderedOn: clock.now().slice(0, 10),
        expectedOn: dayIn(3),
        ...given,
      });
      expect(refused.body.code).toBe(code);
    });
  });
});
