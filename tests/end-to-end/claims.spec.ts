import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type {
  ClaimPageView,
  ClaimSuggestionsView,
  ClaimSuggestionView,
  ClaimView,
  ShownClaimView,
} from '../../src/reorder/claims/claims.views.js';
import type { PurchaseOrderView } from '../../src/reorder/purchase-orders/purchase-orders.views.js';
import type { DeliveryView } from '../../src/stock/deliveries.views.js';
import type { ReceiptView } from '../../src/stock/receiving.views.js';
import { PlainSql } from '../support/plain-sql.js';
import { type ProblemBody, type RunningService, strictestEngine } from '../support/service.js';
import { startStudio } from '../support/shared-service.js';
import { personOfRole, type SignedInPerson } from '../support/signing-in.js';
import { dayAhead, StockedStudio } from '../support/stocked-studio.js';

interface Made {
  id: string;
}

const note = 'Two of them leaked onto the invoice.';

describe.each(strictestEngine)('claims against suppliers (%s)', (engine) => {
  let service: RunningService;
  let studio: StockedStudio;
  let placeId: string;
  let umberId: string;
  let linerId: string;
  let supplierId: string;
  let umberOffer: string;
  let linerOffer: string;
  let auditor: SignedInPerson;

  beforeAll(async () => {
    service = await startStudio(engine);
    studio = new StockedStudio(service);
    placeId = await studio.shelf();
    umberId = await studio.product({ name: 'Brow', shade: 'Umber' });
    linerId = await studio.product({ name: 'Liner', kind: 'cartridge' });
    supplierId = (await service.made<Made>('/suppliers', { name: 'Pellworm Supply' })).id;
    const offer = { supplierId, packContainers: 1, minimumPacks: 1 };
    umberOffer = (
      await service.made<Made>('/offers', {
        ...{ ...offer, productId: umberId, containerPieces: 1, lifeOnArrivalDays: 365, orderCode: 'PW-7' },
        prices: [{ fromPacks: 1, packPriceMinor: 2_490 }],
      })
    ).id;
    linerOffer = (
      await service.made<Made>('/offers', {
        ...{ ...offer, productId: linerId, containerPieces: 20 },
        prices: [{ fromPacks: 1, packPriceMinor: 3_001 }],
      })
    ).id;
    auditor = await personOfRole(service, 'auditor');
  });
  afterAll(() => service.dispose());

  const goods = (productId: string, quantity: number, more: object = {}) => ({
    productId,
    codes: [{ kind: 'lot', code: `L${uuidv7().slice(-8)}` }],
    useBy: '2099-12-31',
    quantity,
    placeId,
    ...more,
  });
  const deliver = (lines: object[], more: object = {}) =>
    service.made<ReceiptView>('/deliveries', { origin: 'purchase', supplierId, lines, ...more });
  const sentOrder = async (lines: object[]) => {
    const drafted = await service.made<PurchaseOrderView>('/purchase-orders', { supplierId, lines });
    const at = `/purchase-orders/${drafted.id}`;
    const { version } = await service.made<PurchaseOrderView>(`${at}/approval`, { version: 1 });
    return service.made<PurchaseOrderView>(`${at}/sending`, { version, as: 'by hand' });
  };
  const suggested = async (deliveryId?: string) => {
    const of = deliveryId === undefined ? '' : `?deliveryId=${deliveryId}`;
    return (await service.seen<ClaimSuggestionsView>(`/claims/suggestions${of}`)).items;
  };
  const short = ({ reason, pieces, amountMinor }: ClaimSuggestionView) => [reason, pieces, amountMinor];
  const open = (
    { goods: _, supplierName: __, why: ___, currency: ____, shortDate: _____, ...body }: ClaimSuggestionView,
    more = {},
  ) => service.made<ClaimView>('/claims', { ...body, ...more });

  it('are suggested from what came broken, damaged, short-dated or past its day', async () => {
    const delivery = await deliver([
      goods(umberId, 5, {
        unitCostMinor: 2_400,
        useBy: dayAhead(100),
        faults: [
          { kind: 'broken seal', pieces: 2 },
          { kind: 'damaged package', pieces: 1 },
        ],
      }),
      goods(linerId, 40, { piecesEach: 1, faults: [{ kind: 'broken seal', pieces: 7 }] }),
      goods(umberId, 1, { useBy: '2020-01-31' }),
      goods(umberId, 1, { useBy: dayAhead(800) }),
    ]);
    const items = await suggested(delivery.id);
    expect(items.map(short)).toEqual([
      ['broken seal', 2, 4_800],
      ['damaged package', 1, 2_400],
      ['short date', 2, 4_800],
      ['broken seal', 7, null],
      ['short date', 1, null],
    ]);
    expect(items[0]).toMatchObject({
      supplierName: 'Pellworm Supply',
      goods: { productName: 'Brow', orderId: null },
    });
    expect(items[2]?.why).toMatch(/had (99|100) days left/);
    expect(items[4]?.why).toContain('past their last day, 2020-01-31');
    // Opened once, it is suggested no more, whatever becomes of it.
    const { id, version } = await open(items[0] as ClaimSuggestionView);
    await service.made(`/claims/${id}/dropped`, { version });
    expect((await suggested(delivery.id)).map(short)).toEqual(items.slice(1).map(short));
    expect((await suggested()).map(short)).toEqual(items.slice(1).map(short));
  });

  it('are suggested from what an order did not get, and what it got beside', async () => {
    const order = await sentOrder([
      { offerId: umberOffer, packs: 3 },
      { offerId: linerOffer, packs: 2 },
    ]);
    const [umber, liner] = order.lines;
    const delivery = await deliver([
      goods(umberId, 4, { orderLineId: umber?.id }),
      goods(linerId, 10, { orderLineId: umber?.id }),
      goods(linerId, 3),
      goods(linerId, 33, { orderLineId: liner?.id }),
    ]);
    expect((await suggested(delivery.id)).map(short)).toEqual([
      ['not ordered', 1, 2_490],
      ['not ordered', 10, null],
      ['not ordered', 3, null],
    ]);
    const { version } = await service.seen<PurchaseOrderView>(`/purchase-orders/${order.id}`);
    await service.made(`/purchase-orders/${order.id}/closing`, { version });
    const missing = (await suggested()).find(({ reason }) => reason === 'too few');
    // Seven of twenty of a box for 30.01: 10.5035, written in whole minor units.
    expect(missing).toMatchObject({
      ...{ pieces: 7, amountMinor: 1_050, currency: 'EUR', orderLineId: liner?.id, deliveryLineId: null },
      goods: { orderNumber: order.number, productName: 'Liner' },
    });
    await open(missing as ClaimSuggestionView);
    expect((await suggested()).find(({ reason }) => reason === 'too few')).toBeUndefined();
  });

  it('go from open to sent to settled, with a note that only the text and those who order show', async () => {
    const receipt = await deliver([goods(umberId, 2)], { reference: 'LS 88' });
    const delivery = await service.seen<DeliveryView>(`/deliveries/${receipt.id}`);
    const claim = await service.made<ClaimView>('/claims', {
      ...{
        supplierId,
        deliveryLineId: delivery.lines[0]?.id,
        reason: 'other',
        pieces: 2,
        amountMinor: 150,
        note,
      },
    });
    expect(claim).toMatchObject({
      ...{ state: 'open', currency: 'EUR', hasNote: true, steps: ['change', 'send', 'settle', 'drop'] },
      goods: { productName: 'Brow', deliveryId: receipt.id, lotCode: delivery.lines[0]?.code },
    });
    expect(claim).not.toHaveProperty('note');
    expect((await service.seen<ShownClaimView>(`/claims/${claim.id}`)).note).toBe(note);
    const asAuditor = await service.get<ShownClaimView>(`/claims/${claim.id}`, { cookie: auditor.cookie });
    expect(asAuditor.body).toMatchObject({ hasNote: true, note: null });

    const changed = await service.patch<ClaimView>(`/claims/${claim.id}`, {
      version: 1,
      pieces: 1,
      amountMinor: 75,
    });
    expect(changed.body).toMatchObject({ pieces: 1, amountMinor: 75, version: 2 });
    const text = await (await service.fetch(`${service.studio}/claims/${claim.id}/claim.txt`)).text();
    for (const said of ['To Pellworm Supply', '1 piece ', 'LS 88', 'EUR 0.75', note])
      expect(text).toContain(said);

    expect((await service.post(`/claims/${claim.id}/sent`, { version: 1 })).status).toBe(409);
    const sent = await service.made<ClaimView>(`/claims/${claim.id}/sent`, { version: 2 });
    expect(sent).toMatchObject({ state: 'sent', steps: ['change', 'settle', 'drop'] });
    // The same goods are claimed once, and no more of them than came.
    const same = { supplierId, deliveryLineId: delivery.lines[0]?.id, reason: 'other', pieces: 1 };
    const twice = await service.post<ProblemBody>('/claims', same);
    expect([twice.status, twice.body.code]).toEqual([409, 'already-exists']);
    const onPurpose = await service.made<ClaimView>('/claims', { ...same, again: true });
    await service.made(`/claims/${onPurpose.id}/dropped`, { version: 1 });
    const many = await service.post<ProblemBody>('/claims', { ...same, again: true, pieces: 3 });
    expect(many.body.faults?.map(({ field }) => field)).toEqual(['pieces']);
    const more = await service.patch<ProblemBody>(`/claims/${claim.id}`, { version: 3, pieces: 3 });
    expect(more.body.faults?.map(({ field }) => field)).toEqual(['pieces']);
    const elsewhere = (await service.made<Made>('/suppliers', { name: 'Ostwind Bedarf' })).id;
    const foreign = await service.post<ProblemBody>('/claims', {
      ...{ ...same, again: true, supplierId: elsewhere },
    });
    expect(foreign.body.faults?.map(({ field }) => field)).toEqual(['deliveryLineId']);
    // What was sent is corrected, and sent again.
    const corrected = await service.patch<ClaimView>(`/claims/${claim.id}`, { version: 3, pieces: 2 });
    expect(corrected.body).toMatchObject({ state: 'open', pieces: 2, sentAt: null });
    await service.made(`/claims/${claim.id}/sent`, { version: 4 });
    const settled = await service.made<ClaimView>(`/claims/${claim.id}/settled`, {
      version: 5,
      settledMinor: 50,
    });
    expect(settled).toMatchObject({ state: 'settled', settledMinor: 50, steps: [] });
    const late = await service.patch<ProblemBody>(`/claims/${claim.id}`, { version: 6, pieces: 1 });
    expect([late.status, late.body.code]).toEqual([409, 'wrong-state']);
    const standing = await service.seen<ClaimPageView>('/claims');
    expect(standing.items.some(({ id }) => id === claim.id)).toBe(false);
    const page = await service.seen<ClaimPageView>('/claims?state=settled&limit=1');
    expect(page.items[0]?.id).toBe(claim.id);

    const sql = await PlainSql.connect(service, 'read');
    const rows = await sql.rows<{ note_sealed: string }>(
      'SELECT note_sealed FROM supplier_claim WHERE id = $1',
      [claim.id],
    );
    await sql.close();
    expect(rows[0]?.note_sealed).not.toContain('leaked');
  });

  it('name only what belongs together', async () => {
    const other = (await service.made<Made>('/suppliers', { name: 'Nordlicht Bedarf' })).id;
    const order = await sentOrder([{ offerId: umberOffer, packs: 1 }]);
    const refuse = async (body: object) => {
      const usual = { supplierId: other, reason: 'other', pieces: 1 };
      const { status, body: problem } = await service.post<ProblemBody>('/claims', { ...usual, ...body });
      return [status, problem.code];
    };
    expect(await refuse({ orderLineId: order.lines[0]?.id })).toEqual([400, 'invalid-fields']);
    expect(await refuse({ orderLineId: uuidv7() })).toEqual([404, 'not-found']);
    expect(await refuse({ deliveryLineId: uuidv7() })).toEqual([404, 'not-found']);
    expect(await refuse({ lotId: uuidv7() })).toEqual([404, 'not-found']);
    expect(await refuse({ supplierId: uuidv7() })).toEqual([404, 'not-found']);
    expect((await service.get(`/claims/suggestions?deliveryId=${uuidv7()}`)).status).toBe(404);
  });
});
