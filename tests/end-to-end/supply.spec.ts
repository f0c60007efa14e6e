import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { Studio } from '../../src/identity/studio.entity.js';
import type {
  TrainingCoursePageView,
  TrainingCourseView,
} from '../../src/reorder/courses/training-courses.views.js';
import type {
  ArtistPlanningView,
  ItemPlanningPageView,
  ItemPlanningView,
  PlanningSettingsView,
} from '../../src/reorder/settings/planning-settings.views.js';
import type { OfferPageView, OfferView } from '../../src/reorder/supply/offers.views.js';
import type {
  SupplierTermsPageView,
  SupplierTermsView,
} from '../../src/reorder/supply/supplier-terms.views.js';
import { loadSupplyFacts } from '../../src/reorder/supply/supply-facts.query.js';
import { PlainSql } from '../support/plain-sql.js';
import { type ProblemBody, type RunningService, usualEngine } from '../support/service.js';
import { startStudio } from '../support/shared-service.js';
import { personOfRole, tokenOfPerson } from '../support/signing-in.js';
import { dayAhead, StockedStudio } from '../support/stocked-studio.js';
import { Store } from '../support/store.js';

interface Made {
  id: string;
}
type Refused = ProblemBody;

describe.each(usualEngine)('what can be ordered, on %s', (engine) => {
  let service: RunningService;
  let studio: StockedStudio;
  let umberId: string;
  let linerId: string;

  beforeAll(async () => {
    service = await startStudio(engine);
    studio = new StockedStudio(service);
    umberId = await studio.product({ name: 'Umber', shade: 'Umber 3' });
    linerId = await studio.product({ name: 'Liner', kind: 'cartridge' });
  });
  afterAll(() => service.dispose());

  const supplier = async (name: string) => (await service.made<Made>('/suppliers', { name })).id;
  const write = <Body>(method: string, path: string, body: object) =>
    service.send<Body>(method, path, { id: uuidv7(), ...body });

  describe('terms of a supplier', () => {
    it('are shown as not known before they are set, and as they were set afterwards', async () => {
      const supplierId = await supplier('Aldergate Supplies');
      const at = `/supplier-terms/${supplierId}`;
      expect(await service.seen<SupplierTermsView>(at)).toEqual({
        supplierId,
        supplierName: 'Aldergate Supplies',
        quotedLeadTimeDays: null,
        orderWeekdays: [],
        minimumOrderMinor: null,
        deliveryCostMinor: null,
        freeDeliveryFromMinor: null,
        currency: 'EUR',
        hasContact: false,
        contact: null,
        leadTime: { basis: 'assumed', medianDays: 14, days95: 14, orders: 0, leftOut: 0 },
        offers: 0,
        version: null,
      });
      const terms = {
        quotedLeadTimeDays: 4,
        orderWeekdays: [5, 2],
        minimumOrderMinor: 0,
        deliveryCostMinor: 590,
        freeDeliveryFromMinor: 15_000,
      };
      const contact = { mailAddress: 'orders@aldergate.example', customerNumber: 'C-77 412' };
      const set = await write<SupplierTermsView>('PUT', at, { ...terms, contact });
      expect(set.status).toBe(200);
      // The answer is kept for a repeated request, so it holds no contact in the clear.
      expect(set.body).toMatchObject({
        ...terms,
        orderWeekdays: [2, 5],
        hasContact: true,
        contact: null,
        version: 1,
      });
      expect(await service.seen<SupplierTermsView>(at)).toMatchObject({
        contact,
        leadTime: { basis: 'quoted', days95: 4 },
      });

      // What is left out is not known any more, but for where orders are sent.
      const changed = await write<SupplierTermsView>('PUT', at, { orderWeekdays: [], version: 1 });
      expect(changed.body).toMatchObject({ quotedLeadTimeDays: null, hasContact: true, version: 2 });
      expect(await service.seen<SupplierTermsView>(at)).toMatchObject({ contact });
      await write('PUT', at, { orderWeekdays: [], contact: { mailAddress: null }, version: 2 });
      expect(await service.seen<SupplierTermsView>(at)).toMatchObject({ contact: null, hasContact: false });
    });

    it('lie sealed in the database, and tell where orders are sent only to who may place them', async () => {
      const supplierId = await supplier('Birchwell Trading');
      const at = `/supplier-terms/${supplierId}`;
      const contact = { mailAddress: 'desk@birchwell.example', customerNumber: 'BW-90 118' };
      await write('PUT', at, { orderWeekdays: [], contact });
      const sql = await PlainSql.connect(service, 'read');
      const rows = JSON.stringify([
        await sql.rows('SELECT * FROM supplier_terms'),
        await sql.rows('SELECT * FROM accepted_request'),
        await sql.rows('SELECT * FROM audit_entry'),
      ]);
      await sql.close();
      expect(rows).toContain(supplierId);
      for (const text of Object.values(contact)) expect(rows).not.toContain(text);

      const artist = await personOfRole(service, 'artist');
      const token = await tokenOfPerson(service, artist.personId);
      const seen = await service.get<SupplierTermsView>(at, { authorization: `Bearer ${token}` });
      expect(seen.body).toMatchObject({ hasContact: true, contact: null });
    });

    it('are refused when they were read before somebody else set them, and when they cannot be', async () => {
      const supplierId = await supplier('Coldbrook');
      const at = `/supplier-terms/${supplierId}`;
      const set = (body: object) => write<Refused>('PUT', at, { orderWeekdays: [], ...body });
      expect(await set({ version: 1 })).toMatchObject({ status: 404 });
      await set({});
      expect(await set({})).toMatchObject({ status: 409, body: { code: 'stale-version', version: 1 } });
      expect(await write<Refused>('PUT', `/supplier-terms/${uuidv7()}`, { orderWeekdays: [] })).toMatchObject(
        {
          status: 404,
        },
      );
      for (const [field, body] of Object.entries({
        orderWeekdays: { orderWeekdays: [8] },
        quotedLeadTimeDays: { quotedLeadTimeDays: 366 },
        minimumOrderMinor: { minimumOrderMinor: -1 },
        deliveryCostMinor: { freeDeliveryFromMinor: 9_000 },
        'contact.mailAddress': { contact: { mailAddress: 'Desk <desk@coldbrook.example>' } },
      })) {
        const refused = await set({ version: 1, ...body });
        expect(refused.status, field).toBe(400);
        expect(refused.body.faults?.map((fault) => fault.field)).toEqual([field]);
      }
    });

    it('come in pages by name', async () => {
      for (const name of ['Zenner 1', 'zenner 2', 'Zenner 3']) await supplier(name);
      const names: string[] = [];
      let after = '';
      do {
        const page = await service.seen<SupplierTermsPageView>(`/supplier-terms?limit=2${after}`);
        expect(page.items.length).toBeLessThanOrEqual(2);
        names.push(...page.items.map(({ supplierName }) => supplierName));
        after = page.next === null ? '' : `&after=${page.next}`;
      } while (after !== '');
      expect(names).toEqual(
        [...names].sort((one, other) => (one.toLowerCase() < other.toLowerCase() ? -1 : 1)),
      );
      expect(names.slice(-3)).toEqual(['Zenner 1', 'zenner 2', 'Zenner 3']);
      expect(await service.get(`/supplier-terms?after=${uuidv7()}`)).toMatchObject({ status: 400 });
    });

    it('show how long orders really took, with the word of the supplier as three orders more', async () => {
      const supplierId = await supplier('Dunmere Wholesale');
      const at = `/supplier-terms/${supplierId}`;
      await write('PUT', at, { orderWeekdays: [], quotedLeadTimeDays: 3 });
      const arrive = async (code: string, orderedDaysAgo: number | null, arrivedDaysAgo: number) =>
        service.made('/deliveries', {
          origin: 'purchase',
          supplierId,
          orderedOn: orderedDaysAgo === null ? null : dayAhead(-orderedDaysAgo),
          occurredAt: `${dayAhead(-arrivedDaysAgo)}T12:00:00Z`,
          lines: [
            {
              productId: umberId,
              codes: [{ kind: 'lot', code }],
              useBy: dayAhead(400),
              quantity: 2,
              placeId: await studio.shelf(),
              unitCostMinor: 2_100,
            },
          ],
        });
      await arrive('DM-1', 30, 20);
      await arrive('DM-2', 22, 10);
      await arrive('DM-3', null, 5);
      expect(await service.seen<SupplierTermsView>(at)).toMatchObject({
        leadTime: { basis: 'quoted and learnt', medianDays: 3, days95: 12, orders: 2, leftOut: 0 },
      });
      const { id } = await service.made<Made>('/expected-deliveries', {
        supplierId,
        orderedOn: dayAhead(-9),
        expectedOn: dayAhead(-2),
      });
      await service.made('/deliveries', {
        origin: 'purchase',
        supplierId,
        expectedDeliveryId: id,
        occurredAt: `${dayAhead(-2)}T12:00:00Z`,
        lines: [
          {
            productId: umberId,
            codes: [{ kind: 'lot', code: 'DM-4' }],
            useBy: dayAhead(400),
            quantity: 1,
            placeId: await studio.shelf(),
          },
        ],
      });
      expect(await service.seen<SupplierTermsView>(at)).toMatchObject({
        leadTime: { orders: 3, days95: 12 },
      });
    });
  });

  describe('an offer', () => {
    let supplierId: string;
    beforeAll(async () => {
      supplierId = await supplier('Eastmarch');
    });
    const umber = (more: object = {}) => ({
      supplierId,
      productId: umberId,
      packContainers: 1,
      containerPieces: 1,
      minimumPacks: 1,
      prices: [{ fromPacks: 1, packPriceMinor: 2_400 }],
      ...more,
    });
    const offered = (query: string) =>
      service.seen<OfferPageView>(`/offers?supplierId=${supplierId}${query}`);

    it('is recorded with its price breaks, changed, and ended for good', async () => {
      const liner = umber({
        productId: linerId,
        orderCode: 'EM 1207',
        packContainers: 2,
        containerPieces: 20,
        minimumPacks: 2,
        prices: [
          { fromPacks: 2, packPriceMinor: 3_000 },
          { fromPacks: 10, packPriceMinor: 2_700 },
        ],
        currency: 'EUR',
        leadTimeDays: 21,
      });
      const made = await service.made<OfferView>('/offers', liner);
      expect(made).toMatchObject({
        ...liner,
        productName: 'Liner',
        supplierName: 'Eastmarch',
        inStudioCurrency: true,
        lifeOnArrivalDays: null,
        version: 1,
        endedAt: null,
      });
      expect((await offered('')).items).toEqual([made]);
      expect(await service.seen<SupplierTermsView>(`/supplier-terms/${supplierId}`)).toMatchObject({
        offers: 1,
      });

      const change = (body: object) => write<OfferView & Refused>('PATCH', `/offers/${made.id}`, body);
      expect(await change({ minimumPacks: 1, version: 1 })).toMatchObject({
        status: 400,
        body: { faults: [{ field: 'prices.0.fromPacks' }] },
      });
      const changed = await change({
        minimumPacks: 1,
        prices: [{ fromPacks: 1, packPriceMinor: 2_900 }],
        leadTimeDays: null,
        version: 1,
      });
      expect(changed.body).toMatchObject({
        minimumPacks: 1,
        orderCode: 'EM 1207',
        leadTimeDays: null,
        version: 2,
      });
      expect(await change({ orderCode: 'EM 9', version: 1 })).toMatchObject({ status: 409 });

      const end = (version: number) =>
        service.post<OfferView & Refused>(`/offers/${made.id}/end`, { version });
      expect(await end(1)).toMatchObject({ status: 409, body: { code: 'stale-version' } });
      expect((await end(2)).body.endedAt).not.toBeNull();
      expect(await end(3)).toMatchObject({ status: 409, body: { code: 'wrong-state' } });
      expect(await change({ orderCode: 'EM 9', version: 3 })).toMatchObject({
        body: { code: 'wrong-state' },
      });
      expect((await offered('')).items).toEqual([]);
      expect((await offered('&state=ended')).items).toMatchObject([{ id: made.id, version: 3 }]);
      expect(await service.seen<OfferView>(`/offers/${made.id}`)).toMatchObject({ id: made.id });
    });

    it('is refused where it would mean nothing, with the field and what to do', async () => {
      const refused = async (more: object) => {
        const { status, body } = await service.post<Refused>('/offers', umber(more));
        return { status, code: body.code, fields: body.faults?.map(({ field }) => field) };
      };
      const rising = [
        { fromPacks: 1, packPriceMinor: 2_400 },
        { fromPacks: 6, packPriceMinor: 2_500 },
      ];
      expect(await refused({ prices: rising })).toMatchObject({
        status: 400,
        fields: ['prices.1.packPriceMinor'],
      });
      expect(await refused({ prices: [] })).toMatchObject({ status: 400 });
      expect(await refused({ currency: 'CHF' })).toMatchObject({ status: 400, fields: ['currency'] });
      expect(await refused({ containerPieces: 12 })).toMatchObject({
        status: 400,
        fields: ['containerPieces'],
      });
      expect(await refused({ productId: uuidv7() })).toMatchObject({ status: 404 });
      expect(await refused({ supplierId: uuidv7() })).toMatchObject({ status: 404 });
      const oldId = await studio.product({ name: 'Old sand' });
      await service.made(`/products/${oldId}/archive`, { version: 1 });
      expect(await refused({ productId: oldId })).toMatchObject({ status: 409, code: 'wrong-state' });

      await service.made('/offers', umber());
      expect(await refused({})).toMatchObject({ status: 409, code: 'already-exists' });
      // Another pack of the same is another offer.
      await service.made('/offers', umber({ packContainers: 6 }));
    });

    it('is listed by supplier and by product, in pages', async () => {
      const other = await supplier('Fenwick');
      await service.made('/offers', umber({ supplierId: other }));
      const ofProduct = await service.seen<OfferPageView>(`/offers?productId=${umberId}&limit=2`);
      expect(ofProduct.items).toHaveLength(2);
      const rest = await service.seen<OfferPageView>(`/offers?productId=${umberId}&after=${ofProduct.next}`);
      expect(rest).toMatchObject({ next: null, items: [{ productId: umberId }] });
      expect((await offered('')).items.map(({ packContainers }) => packContainers).sort()).toEqual([1, 6]);
      expect(await service.get(`/offers?after=${uuidv7()}`)).toMatchObject({ status: 400 });
    });

    it('stays, but is marked, when the studio counts in another currency, until its prices are written anew', async () => {
      const { items } = await offered('');
      const [one] = items;
      const { version } = await service.seen<{ version: number }>('');
      const changed = await write<{ version: number }>('PATCH', '', { currency: 'CHF', version });
      expect(await service.seen<OfferView>(`/offers/${one?.id}`)).toMatchObject({
        currency: 'EUR',
        inStudioCurrency: false,
      });
      const change = (body: object) =>
        write<OfferView & Refused>('PATCH', `/offers/${one?.id}`, { version: 1, ...body });
      expect(await change({ currency: 'CHF' })).toMatchObject({
        status: 400,
        body: { faults: [{ field: 'prices' }] },
      });
      expect(await change({ prices: one?.prices, currency: 'EUR' })).toMatchObject({ status: 400 });
      const anew = [{ fromPacks: 1, packPriceMinor: 2_300 }];
      expect(await change({ prices: anew })).toMatchObject({
        body: { currency: 'CHF', inStudioCurrency: true },
      });
      await write('PATCH', '', { currency: 'EUR', version: changed.body.version });
    });
  });

  describe('what a plan is told of supply', () => {
    it('is what stands in the studio’s own money, with what was learnt and paid last', async () => {
      const sellerId = await supplier('Greyfell');
      const productId = await studio.product({ name: 'Russet' });
      const oldId = await studio.product({ name: 'Old russet' });
      const offer = (more: object = {}) =>
        service.made<OfferView>('/offers', {
          ...{ supplierId: sellerId, productId, packContainers: 2, containerPieces: 1, minimumPacks: 1 },
          prices: [{ fromPacks: 1, packPriceMinor: 4_000 }],
          lifeOnArrivalDays: 400,
          ...more,
        });
      const standing = await offer();
      const archived = await offer({ productId: oldId });
      await service.made(`/products/${oldId}/archive`, { version: 1 });
      const arrive = async (daysAgo: number, unitCostMinor: number, life: number) =>
        service.made('/deliveries', {
          origin: 'purchase',
          supplierId: sellerId,
          orderedOn: dayAhead(-daysAgo - 6),
          occurredAt: `${dayAhead(-daysAgo)}T12:00:00Z`,
          lines: [
            {
              productId,
              codes: [{ kind: 'lot', code: `GF-${daysAgo}` }],
              useBy: dayAhead(life - daysAgo),
              quantity: 1,
              placeId: await studio.shelf(),
              unitCostMinor,
            },
          ],
        });
      await arrive(40, 1_900, 300);
      await arrive(10, 2_050, 340);

      const store = await Store.open(service.dataFolder, service.databaseUrl);
      try {
        const {
          id: studioId,
          chainId,
          timeZone,
        } = await store.database.reader.manager.findOneByOrFail(Studio, { id: service.studioId });
        const load = () =>
          loadSupplyFacts(store.database.read, { studioId, chainId, timeZone }, new Date().toISOString());
        const facts = await load();
        expect(facts.offers.find(({ offerId }) => offerId === standing.id)).toMatchObject({
          leadTime: { basis: 'learnt', orders: 2, medianDays: 6, days95: 6 },
          // (3 × 400 + 300 + 340) / 5
          lifeOnArrival: { lifeDays: 368, basis: 'offered and learnt', lots: 2 },
        });
        expect(facts.unusableOffers).toContainEqual({
          ...{ offerId: archived.id, supplierId: sellerId, productId: oldId, reason: 'product archived' },
        });
        expect(facts.lastPrices).toContainEqual({
          ...{ productId, unitCostMinor: 2_050, paidOn: dayAhead(-10), supplierId: sellerId },
        });
        expect(facts.suppliers.find(({ supplierId }) => supplierId === sellerId)).toMatchObject({
          ...{ name: 'Greyfell', orderWeekdays: [], deliveryCostMinor: null, otherCurrency: false },
        });
        const { version } = await service.seen<{ version: number }>('');
        const changed = await write<{ version: number }>('PATCH', '', { currency: 'CHF', version });
        const elsewhere = await load();
        expect(elsewhere.offers.map(({ offerId }) => offerId)).not.toContain(standing.id);
        expect(elsewhere.unusableOffers).toContainEqual(
          expect.objectContaining({ offerId: standing.id, reason: 'other currency' }),
        );
        expect(elsewhere.lastPrices).toEqual([]);
        await write('PATCH', '', { currency: 'EUR', version: changed.body.version });
      } finally {
        await store.close();
      }
    });
  });

  describe('a training course', () => {
    it('is booked, changed and cancelled, and listed by its day', async () => {
      const { id: procedureId } = await service.made<Made>('/procedures', {
        name: 'Powder',
        bodyPlace: 'brows',
      });
      const book = (heldOn: string) =>
        service.post<TrainingCourseView & Refused>('/training-courses', { procedureId, heldOn, trainees: 8 });
      const later = await book(dayAhead(60));
      const sooner = await book(dayAhead(20));
      expect(sooner.body).toMatchObject({
        procedureName: 'Powder',
        trainees: 8,
        reference: null,
        version: 1,
      });
      const list = async (query = '') =>
        (await service.seen<TrainingCoursePageView>(`/training-courses?limit=200${query}`)).items.map(
          ({ id }) => id,
        );
      expect(await list()).toEqual([sooner.body.id, later.body.id]);
      expect(await list(`&from=${dayAhead(21)}`)).toEqual([later.body.id]);

      const at = `/training-courses/${sooner.body.id}`;
      const changed = await write<TrainingCourseView>('PATCH', at, {
        heldOn: dayAhead(70),
        reference: 'Autumn course',
        version: 1,
      });
      expect(changed.body).toMatchObject({
        heldOn: dayAhead(70),
        reference: 'Autumn course',
        trainees: 8,
        version: 2,
      });
      expect(await list()).toEqual([later.body.id, sooner.body.id]);
      expect(await write('PATCH', at, { trainees: 9, version: 1 })).toMatchObject({ status: 409 });

      await service.made(`${at}/cancel`, { version: 2 });
      expect(await list()).toEqual([later.body.id]);
      expect(await list('&state=all')).toEqual([later.body.id, sooner.body.id]);
      expect(await service.post<Refused>(`${at}/cancel`, { version: 3 })).toMatchObject({
        status: 409,
        body: { code: 'wrong-state' },
      });

      for (const heldOn of [dayAhead(-2), dayAhead(732)]) {
        expect(await book(heldOn)).toMatchObject({ status: 400, body: { code: 'unusable-date' } });
      }
      await write('PATCH', `/procedures/${procedureId}`, { archived: true, version: 1 });
      expect(await book(dayAhead(5))).toMatchObject({ status: 409, body: { code: 'wrong-state' } });
    });
  });

  describe('how the studio plans', () => {
    it('is assumed and said to be, until it is set, the ends of what is allowed included', async () => {
      const at = '/planning-settings';
      const before = await service.seen<PlanningSettingsView>(at);
      expect(before).toMatchObject({
        serviceTargetPerMille: { value: 950, assumed: true },
        returnPerMille: { value: 700, assumed: true },
        currency: 'EUR',
        version: null,
      });
      expect(before.assumptions).toContainEqual({ code: 'leadTimeDays', value: 14, basis: 'assumption' });
      const set = await write<PlanningSettingsView>('PUT', at, {
        serviceTargetPerMille: 1000,
        returnPerMille: 0,
      });
      expect(set.body).toMatchObject({
        serviceTargetPerMille: { value: 1000, assumed: false },
        returnPerMille: { value: 0, assumed: false },
        orderCostMinor: { assumed: true },
        version: 1,
      });
      expect(await write('PUT', at, { orderCostMinor: 1 })).toMatchObject({ status: 409 });
      for (const [field, value] of [
        ['serviceTargetPerMille', 1001],
        ['serviceTargetPerMille', -1],
        ['returnPerMille', 0.5],
        ['holdingPerYearPerMille', 10_001],
        ['orderCostMinor', -5],
      ] as const) {
        const refused = await write<Refused>('PUT', at, { [field]: value, version: 1 });
        expect(refused.status, field).toBe(400);
        expect(refused.body.faults?.map((fault) => fault.field)).toEqual([field]);
      }
      expect((await write<PlanningSettingsView>('PUT', at, { version: 1 })).body).toMatchObject({
        serviceTargetPerMille: { value: 950, assumed: true },
        version: 2,
      });
    });

    it('differs for single items, which are known', async () => {
      const at = '/planning-settings/items';
      const sandId = await studio.product({ name: 'Sand' });
      const product = (itemKey: string) => ({ itemKind: 'product', itemKey });
      const set = (body: object) => write<ItemPlanningView & Refused>('PUT', at, body);
      const made = await set({ ...product(umberId), serviceTargetPerMille: 0, replacesProductId: sandId });
      expect(made.body).toMatchObject({
        itemName: expect.stringContaining('Umber'),
        replacesProductName: expect.stringContaining('Sand'),
        serviceTargetPerMille: 0,
        rangeChoice: null,
        version: 1,
      });
      expect(await set({ ...product(sandId), replacesProductId: umberId })).toMatchObject({
        status: 400,
        body: { faults: [{ field: 'replacesProductId' }] },
      });
      expect(await set({ ...product(sandId) })).toMatchObject({ status: 400 });
      expect(await set({ ...product(uuidv7()), rangeChoice: 'let run out' })).toMatchObject({ status: 404 });
      const unknown = { itemKind: 'configuration', itemKey: '99 points', rangeChoice: 'let run out' };
      expect(await set(unknown)).toMatchObject({ status: 404 });
      await set({ ...product(sandId), rangeChoice: 'let run out' });
      await studio.product({
        name: 'Pooled liner',
        kind: 'cartridge',
        notation: '1207RL',
        taper: 'long',
        machineFit: 'Orbis',
      });
      const configurations = await service.seen<{ keys: string[] }[]>('/configurations');
      const [configuration = ''] = configurations.flatMap(({ keys }) => keys);
      expect(
        await set({ itemKind: 'configuration', itemKey: configuration, shortageCostMinor: 0 }),
      ).toMatchObject({ status: 200, body: { itemName: null, shortageCostMinor: 0 } });

      const keys: string[] = [];
      let after = '';
      do {
        const page = await service.seen<ItemPlanningPageView>(`${at}?limit=1${after}`);
        keys.push(...page.items.map(({ itemKey }) => itemKey));
        after = page.next === null ? '' : `&after=${encodeURIComponent(page.next)}`;
      } while (after !== '');
      expect(keys).toEqual([configuration, ...[umberId, sandId].sort()]);

      const remove = (version: number) => write<Refused>('DELETE', at, { ...product(umberId), version });
      expect(await remove(2)).toMatchObject({ status: 409 });
      expect(await remove(1)).toMatchObject({ status: 200, body: { serviceTargetPerMille: 0 } });
      expect(await remove(1)).toMatchObject({ status: 404 });
    });

    it('ends for who treats with their last day here', async () => {
      const at = '/planning-settings/artists';
      const artist = await personOfRole(service, 'artist');
      const mine = async () =>
        (await service.seen<ArtistPlanningView[]>(at)).find(({ personId }) => personId === artist.personId);
      expect(await mine()).toEqual({
        personId: artist.personId,
        leavesOn: null,
        worksUntil: null,
        version: null,
      });
      const set = (body: object) => write<ArtistPlanningView>('PUT', `${at}/${artist.personId}`, body);
      expect((await set({ leavesOn: dayAhead(30) })).body).toMatchObject({
        leavesOn: dayAhead(30),
        version: 1,
      });
      expect(await mine()).toMatchObject({ leavesOn: dayAhead(30) });
      expect(await set({ leavesOn: '2126-01-01', version: 1 })).toMatchObject({
        status: 400,
        body: { code: 'unusable-date' },
      });
      expect((await set({ version: 1 })).body).toMatchObject({ leavesOn: null, version: 2 });
      expect(await write('PUT', `${at}/${uuidv7()}`, { leavesOn: null })).toMatchObject({ status: 404 });
    });
  });
});
