import { Temporal } from 'temporal-polyfill';
import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { AlertPageView } from '../../src/alerts/alerts.views.js';
import { localDay } from '../../src/identity/local-day.js';
import type { StudioView } from '../../src/identity/studios.views.js';
import type {
  DraftedOrdersView,
  PurchaseOrderLineView,
  PurchaseOrderPageView,
  PurchaseOrderView,
} from '../../src/reorder/purchase-orders/purchase-orders.views.js';
import type { SupplierTermsView } from '../../src/reorder/supply/supplier-terms.views.js';
import type { ExpectedDeliveryPageView } from '../../src/stock/expected-deliveries/expected-deliveries.views.js';
import type { ReceiptView } from '../../src/stock/receiving.views.js';
import { MailReceiver } from '../support/mail-receiver.js';
import { pagesOf, textOn } from '../support/pdf-pages.js';
import { PlainSql } from '../support/plain-sql.js';
import { type ProblemBody, type RunningService, startService, strictestEngine } from '../support/service.js';
import { type FurtherStudio, studioOfOtherChain } from '../support/signing-in.js';
import { dayAhead, daysAgo, StockedStudio } from '../support/stocked-studio.js';
import { until } from '../support/waiting.js';

interface Made {
  id: string;
}

const at = '/purchase-orders';
const supplierAddress = 'orders@pellworm.example';

describe.each(strictestEngine)('purchase orders (%s)', (engine) => {
  let service: RunningService;
  let mail: MailReceiver;
  let sql: PlainSql;
  let studio: StockedStudio;
  let stranger: FurtherStudio;
  let timeZone: string;
  let placeId: string;
  let umberId: string;
  let linerId: string;
  let pellwormId: string;
  let nordlichtId: string;
  let umberOffer: string;
  let linerOffer: string;

  beforeAll(async () => {
    mail = await MailReceiver.start();
    service = await startService(engine, {
      environment: { SMTP_URL: mail.url, MAIL_FROM: 'orders@lotward.example' },
    });
    sql = await PlainSql.connect(service, 'write');
    timeZone = (await service.seen<StudioView>('')).timeZone;
    studio = new StockedStudio(service);
    placeId = await studio.shelf();
    umberId = await studio.product({ name: 'Brow', shade: 'Umber' });
    linerId = await studio.product({ name: 'Liner', kind: 'cartridge' });
    pellwormId = (await service.made<Made>('/suppliers', { name: 'Pellworm Supply' })).id;
    nordlichtId = (await service.made<Made>('/suppliers', { name: 'Nordlicht Bedarf' })).id;
    umberOffer = await offer(pellwormId, umberId, 'PW-7', 1, 1, [
      { fromPacks: 1, packPriceMinor: 2_490 },
      { fromPacks: 5, packPriceMinor: 2_200 },
    ]);
    linerOffer = await offer(pellwormId, linerId, 'PW-20', 1, 20, [{ fromPacks: 1, packPriceMinor: 3_000 }]);
    await terms(pellwormId, {
      quotedLeadTimeDays: 5,
      minimumOrderMinor: 5_000,
      deliveryCostMinor: 690,
      freeDeliveryFromMinor: 10_000,
      contact: { mailAddress: supplierAddress, customerNumber: 'K-4711' },
    });
    stranger = await studioOfOtherChain(service);
  });
  afterAll(async () => {
    await sql.close();
    await service.dispose();
    await mail.stop();
  });
  beforeEach(() => mail.forget());

  const offer = async (
    supplierId: string,
    productId: string,
    orderCode: string,
    packContainers: number,
    containerPieces: number,
    prices: object[],
    more: object = {},
  ) => {
    const body = {
      supplierId,
      productId,
      orderCode,
      packContainers,
      containerPieces,
      minimumPacks: 1,
      prices,
    };
    return (await service.made<Made>('/offers', { ...body, ...more })).id;
  };
  const terms = async (supplierId: string, body: object) => {
    const answer = await service.put(`/supplier-terms/${supplierId}`, { orderWeekdays: [], ...body });
    expect(answer.status).toBe(200);
  };
  const seen = (id: string) => service.seen<PurchaseOrderView>(`${at}/${id}`);
  const draft = (lines: object[], supplierId = pellwormId) =>
    service.made<PurchaseOrderView>(at, { supplierId, lines });
  const approve = ({ id, version }: PurchaseOrderView, confirmed: string[] = []) =>
    service.made<PurchaseOrderView>(`${at}/${id}/approval`, { version, confirmed });
  const send = ({ id, version }: PurchaseOrderView, as: 'mail' | 'by hand', more: object = {}) =>
    service.made<PurchaseOrderView>(`${at}/${id}/sending`, { version, as, ...more });
  const usual = () => [
    { offerId: umberOffer, packs: 2 },
    { offerId: linerOffer, packs: 1 },
  ];
  const sentByHand = async (lines: object[] = usual(), more: object = {}) =>
    send(await approve(await draft(lines)), 'by hand', more);
  const goods = (productId: string, quantity: number, more: object = {}) => ({
    productId,
    codes: [{ kind: 'lot', code: `L${uuidv7().slice(-8)}` }],
    useBy: '2099-12-31',
    quantity,
    placeId,
    ...more,
  });
  const deliver = (lines: object[], more: object = {}) =>
    service.made<ReceiptView>('/deliveries', { origin: 'purchase', supplierId: pellwormId, lines, ...more });
  const problem = async (answer: Promise<{ status: number; body: unknown }>) => {
    const { status, body } = await answer;
    return { ...(body as ProblemBody), status };
  };
  const lineOf = ({ lines }: PurchaseOrderView, productId: string) =>
    lines.find((line) => line.productId === productId) as PurchaseOrderLineView;
  const settled = (id: string) =>
    until(`the mail of ${id}`, async () => {
      const order = await seen(id);
      // An order and its mail are read one after the other: what is settled is read anew.
      return order.mail !== null && order.mail.state !== 'waiting' ? seen(id) : undefined;
    });

  async function planOf(
    lines: { offerId: string | null; packs: number; content?: object }[],
    purpose: 'plan' | 'what if' = 'plan',
  ): Promise<string> {
    const planId = uuidv7();
    const now = new Date().toISOString();
    await sql.rows(
      `INSERT INTO plan (studio_id, id, purpose, state, planned_on, seed, asked_at, ended_at, version)
       VALUES ($1, $2, $3, 'done', '2026-03-01', 1, $4, $5, 1)`,
      [service.studioId, planId, purpose, now, now],
    );
    for (const [index, { offerId, packs, content = {} }] of lines.entries()) {
      await sql.rows(
        `INSERT INTO plan_line (studio_id, id, plan_id, line_number, item_kind, item_key, decision, offer_id, packs,
           facts_digest, content)
         VALUES ($1, $2, $3, $4, 'product', $5, $6, $7, $8, '-', $9)`,
        [
          service.studioId,
          uuidv7(),
          planId,
          index + 1,
          `item ${index}`,
          packs > 0 ? 'order now' : 'enough',
          offerId,
          packs,
          JSON.stringify(content),
        ],
      );
    }
    return planId;
  }

  it('are drafted from the chosen lines of a plan, one for each supplier, numbered without gaps', async () => {
    const otherOffer = await offer(nordlichtId, umberId, 'N-1', 1, 1, [
      { fromPacks: 1, packPriceMinor: 2_600 },
    ]);
    const planId = await planOf([
      { offerId: umberOffer, packs: 6 },
      { offerId: null, packs: 0 },
      { offerId: otherOffer, packs: 1 },
      { offerId: linerOffer, packs: 2 },
    ]);
    const nothing = await problem(service.post(`${at}/from-plan`, { planId, lineNumbers: [1, 2, 9] }));
    expect(nothing).toMatchObject({ status: 400, code: 'invalid-fields' });
    expect(nothing.faults?.map(({ field }) => field)).toEqual(['lineNumbers.1', 'lineNumbers.2']);

    const request = { id: uuidv7(), planId, lineNumbers: [4, 1, 3] };
    const { orders } = await service.made<DraftedOrdersView>(`${at}/from-plan`, request);
    expect(orders.map(({ supplierName }) => supplierName)).toEqual(['Nordlicht Bedarf', 'Pellworm Supply']);
    expect(orders.map(({ number }) => number)).toEqual([1, 2]);
    const ofPellworm = orders[1] as PurchaseOrderView;
    expect(ofPellworm).toMatchObject({ state: 'draft', planId, version: 1 });
    // Six packs reach the price from five on; delivery is free from 100.00 on.
    expect(lineOf(ofPellworm, umberId)).toMatchObject({
      ...{ orderCode: 'PW-7', packs: 6, packPriceMinor: 2_200, lineMinor: 13_200, orderedPieces: 6 },
    });
    expect(lineOf(ofPellworm, linerId)).toMatchObject({ packs: 2, orderedPieces: 40, lineMinor: 6_000 });
    expect(ofPellworm.sums).toEqual({
      linesMinor: 19_200,
      unpricedLines: 0,
      deliveryCostMinor: 0,
      deliveryCostFrom: 'terms',
      totalMinor: 19_200,
      minimumOrderMinor: 5_000,
    });
    // Asked again, the same orders; asked anew, the latest order of the product is said.
    expect(await service.made(`${at}/from-plan`, request)).toEqual({ orders });
    const twice = await problem(service.post(`${at}/from-plan`, { planId, lineNumbers: [3] }));
    expect(twice).toMatchObject({ status: 409, code: 'already-exists', orderId: orders[1]?.id });
    const again = await service.made<DraftedOrdersView>(`${at}/from-plan`, {
      ...{ planId, lineNumbers: [3], again: true },
    });
    expect(again.orders[0]?.number).toBe(3);
    // A list says of each order which products stand in it.
    const { items } = await service.seen<PurchaseOrderPageView>(`${at}?supplierId=${pellwormId}`);
    const listed = items.find(({ number }) => number === 2);
    expect(listed).toMatchObject({ lines: 2, linesMinor: 19_200, unpricedLines: 0 });
    expect(listed?.productIds.toSorted()).toEqual([linerId, umberId].toSorted());
  });

  it('are not drafted from what was only supposed, nor twice from the next plan', async () => {
    const supposed = await planOf([{ offerId: umberOffer, packs: 9 }], 'what if');
    const refused = await problem(
      service.post(`${at}/from-plan`, { planId: supposed, lineNumbers: [1], again: true }),
    );
    expect(refused).toMatchObject({ status: 409, code: 'wrong-state' });
    const productId = await studio.product({ name: 'Lash', shade: 'Soot' });
    const prices = [{ fromPacks: 1, packPriceMinor: 500 }];
    const offerId = await offer(pellwormId, productId, 'PW-9', 1, 1, prices);
    const elsewhere = await offer(nordlichtId, productId, 'N-9', 50, 1, prices);
    const draftOf = (planId: string, more: object = {}) =>
      service.post(`${at}/from-plan`, { planId, lineNumbers: [1], ...more });
    const first = await draftOf(await planOf([{ offerId, packs: 7 }]));
    expect(first.status).toBe(201);
    // The next plan names another offer of the same product; its pack was smaller then, and dearer.
    const kept = { offerId: elsewhere, packContainers: 1, prices: [{ fromPacks: 1, packPriceMinor: 600 }] };
    const next = await planOf([
      { offerId: elsewhere, packs: 7, content: { currency: 'EUR', offers: [kept] } },
    ]);
    await planOf([]);
    expect(await problem(draftOf(next))).toMatchObject({ status: 409, code: 'already-exists' });
    const again = await draftOf(next, { again: true });
    const [order] = (again.body as DraftedOrdersView).orders;
    expect(order?.warnings.map(({ code, lineNumber }) => [code, lineNumber])).toEqual([
      ['plan not the latest', null],
      ['plan is old', null],
      ['offer changed since the plan', 1],
    ]);
    expect(order?.warnings[2]?.message).toMatch(/packs of 1, now 50; .*6\.00 a pack, now .*5\.00/);
  });

  it('are edited while they are drafts, by prices of the offer or by hand', async () => {
    const order = await draft(usual());
    const umber = lineOf(order, umberId);
    const change = (version: number, body: object) =>
      service.patch<PurchaseOrderView>(`${at}/${order.id}`, { version, ...body });
    const more = (await change(1, { change: [{ lineId: umber.id, packs: 5 }] })).body;
    expect(lineOf(more, umberId)).toMatchObject({ packs: 5, packPriceMinor: 2_200 });
    const byHand = await change(2, {
      change: [{ lineId: umber.id, packPriceMinor: 2_000 }],
      takeOff: [lineOf(order, linerId).id],
      add: [{ productId: linerId, packs: 3, packContainers: 2, containerPieces: 10, orderCode: 'X' }],
      deliveryCostMinor: 100,
    });
    expect(byHand.status).toBe(200);
    expect(byHand.body.lines.map(({ lineNumber }) => lineNumber)).toEqual([1, 3]);
    expect(lineOf(byHand.body, linerId)).toMatchObject({
      orderedPieces: 60,
      packPriceMinor: null,
      offerId: null,
    });
    expect(byHand.body.sums).toMatchObject({
      ...{ linesMinor: 10_000, unpricedLines: 1, deliveryCostMinor: 100, deliveryCostFrom: 'by hand' },
      totalMinor: null,
    });
    expect(byHand.body.warnings.map(({ code, lineNumber }) => [code, lineNumber])).toEqual([
      ['price changed', 1],
      ['price not known', 3],
    ]);
    expect((await change(2, { takeOff: [umber.id] })).status).toBe(409);
    // A price written by hand stays when the packs change.
    const fewer = (await change(3, { change: [{ lineId: umber.id, packs: 3 }] })).body;
    expect(lineOf(fewer, umberId)).toMatchObject({ packs: 3, packPriceMinor: 2_000 });
    const foreign = await problem(
      service.post(at, { supplierId: nordlichtId, lines: [{ offerId: umberOffer, packs: 1 }, { packs: 1 }] }),
    );
    expect(foreign.faults?.map(({ field }) => field)).toEqual(['lines.0.offerId', 'lines.1.offerId']);
    await service.made(`${at}/${order.id}/call-off`, { version: 4 });
    expect(await seen(order.id)).toMatchObject({ state: 'called off', endedAs: 'called off', steps: [] });
  });

  it('are approved when every warning was confirmed, never empty, and change no more', async () => {
    const empty = await draft([]);
    expect(await problem(service.post(`${at}/${empty.id}/approval`, { version: 1 }))).toMatchObject({
      ...{ status: 409, code: 'wrong-state' },
    });
    const oldOffer = await offer(pellwormId, umberId, 'OLD', 2, 1, [{ fromPacks: 1, packPriceMinor: 900 }]);
    const order = await draft([{ offerId: oldOffer, packs: 1 }]);
    expect((await service.post(`/offers/${oldOffer}/end`, { version: 1 })).status).toBe(201);
    const refused = await problem(service.post(`${at}/${order.id}/approval`, { version: 1 }));
    expect(refused).toMatchObject({ status: 409, code: 'decision-needed' });
    expect((refused as unknown as PurchaseOrderView).warnings.map(({ code }) => code)).toEqual([
      'below minimum order',
      'offer ended',
    ]);
    const one = service.post(`${at}/${order.id}/approval`, { version: 1, confirmed: ['offer ended'] });
    expect((await one).status).toBe(409);
    const approved = await approve(order, ['below minimum order', 'offer ended']);
    expect(approved).toMatchObject({ state: 'approved', steps: ['draft again', 'send', 'call off'] });
    expect(approved.sums).toMatchObject({
      deliveryCostMinor: 690,
      deliveryCostFrom: 'approved',
      totalMinor: 1_590,
    });
    expect((await service.patch(`${at}/${order.id}`, { version: 2, deliveryCostMinor: 0 })).status).toBe(409);
    const again = await service.made<PurchaseOrderView>(`${at}/${order.id}/draft-again`, { version: 2 });
    expect(again).toMatchObject({ state: 'draft', approvedBy: null });
    expect(again.sums.deliveryCostFrom).toBe('terms');
    // What was never approved cannot be sent.
    expect((await service.post(`${at}/${order.id}/sending`, { version: 3, as: 'by hand' })).status).toBe(409);
  });

  it('are sent by mail with document and list, once, and expected from then on', async () => {
    const approved = await approve(await draft(usual()));
    const waiting = await send(approved, 'mail');
    expect(waiting).toMatchObject({ state: 'approved', mail: { attempts: 0, mayHaveArrivedTwice: false } });
    const sent = await settled(approved.id);
    expect(sent).toMatchObject({
      ...{ state: 'sent', sentAs: 'mail', steps: ['call off', 'close'] },
      mail: { state: 'sent', attempts: 1, lastError: null },
      // Two lines: 2 × 24.90 and 30.00 do not reach free delivery.
      sums: { linesMinor: 7_980, totalMinor: 8_670 },
      expected: { late: false, endedAs: null },
    });
    const sentOn = localDay(sent.sentAt ?? '', timeZone);
    const after = Temporal.PlainDate.from(sentOn).add({ days: 5 });
    expect(sent.expected?.expectedOn).toBe(after.toString());
    expect(mail.received).toHaveLength(1);
    const [received] = mail.received;
    expect(received?.to).toEqual([supplierAddress]);
    expect(received?.mail.messageId).toBe(`<${waiting.mail?.id}@lotward.example>`);
    expect(received?.mail.subject).toMatch(new RegExp(`^Order ${sent.number} – `));
    expect(received?.mail.text).toContain('K-4711');
    expect(received?.mail.text).not.toContain('reached you before');
    const [pdf, csv] = received?.mail.attachments ?? [];
    expect([pdf?.contentType, csv?.contentType]).toEqual(['application/pdf', 'text/csv']);
    expect(
      pagesOf(pdf?.content as Buffer)
        .map(textOn)
        .join('\n'),
    ).toContain('EUR 86.70');
    expect(csv?.content.toString('utf8')).toContain(`${sent.number},${sentOn}`);
    // The mail server had it, so a second asking is refused.
    expect(
      (await service.post(`${at}/${sent.id}/sending`, { version: sent.version, as: 'mail' })).status,
    ).toBe(409);
    const expected = await service.seen<ExpectedDeliveryPageView>('/expected-deliveries');
    expect(expected.items.find(({ id }) => id === sent.expected?.id)).toMatchObject({
      ...{ supplierId: pellwormId, reference: `Order ${sent.number}` },
    });
  });

  it('say why a mail was not taken, and are sent again', async () => {
    mail.answer = { refusesRecipient: 550 };
    const approved = await approve(await draft(usual()));
    await send(approved, 'mail');
    const failed = await settled(approved.id);
    expect(failed).toMatchObject({
      ...{ state: 'approved', expected: null, sentAt: null },
      mail: { state: 'failed', attempts: 1, lastError: 'The mail server refused the recipient (550).' },
    });
    const notSent = async () =>
      (await service.seen<AlertPageView>('/alerts?kind=order%20not%20sent')).items.map(({ facts }) => facts);
    expect(await notSent()).toEqual([
      expect.objectContaining({ reference: `Order ${approved.number}`, supplier: 'Pellworm Supply' }),
    ]);
    mail.forget();
    // Refused for now only: it waits for the next attempt, and somebody may send it by hand instead.
    mail.answer = { refusesRecipient: 450 };
    await send(failed, 'mail');
    expect(await notSent()).toEqual([]);
    const tried = await until('an attempt', async () => {
      const order = await seen(approved.id);
      return order.mail?.attempts === 1 && order.mail.state === 'waiting' ? order : undefined;
    });
    expect(tried.mail?.lastError).toContain('did not take the recipient for now');
    expect(Date.parse(tried.mail?.nextAttemptAt ?? '')).toBeGreaterThan(Date.now());
    const byHand = await send(tried, 'by hand', { expectedOn: dayAhead(9) });
    expect(byHand).toMatchObject({
      ...{ state: 'sent', sentAs: 'by hand', mail: { state: 'withdrawn' } },
      expected: { expectedOn: dayAhead(9) },
    });
    mail.forget();
    const third = await approve(await draft(usual()));
    await send(third, 'mail');
    expect(await settled(third.id)).toMatchObject({ state: 'sent', mail: { state: 'sent' } });
    expect(mail.received).toHaveLength(1);
  });

  it('end a mail that was taken and could not be recorded, and one that was cut off too often', async () => {
    const approved = await approve(await draft(usual()));
    const days = 'UPDATE supplier_terms SET quoted_lead_time_days = $1 WHERE supplier_id = $2';
    // Expected so late that it is taken for a slip: the order cannot be written down as sent.
    await sql.rows(days, [5_000, pellwormId]);
    await send(approved, 'mail');
    const ended = await settled(approved.id);
    await sql.rows(days, [5, pellwormId]);
    expect(ended).toMatchObject({
      state: 'approved',
      expected: null,
      mail: { state: 'failed', attempts: 1 },
    });
    expect(ended.mail?.lastError).toContain('The mail server took it; do not send it again');
    expect(mail.received).toHaveLength(1);
    expect(await send(ended, 'by hand')).toMatchObject({ state: 'sent' });
    mail.forget();
    const [cutOff, another] = [await approve(await draft(usual())), await approve(await draft(usual()))];
    await sql.rows(
      `INSERT INTO purchase_order_mail (studio_id, id, order_id, state, attempts, begun, next_attempt_at, version,
         created_at)
       VALUES ($1, $2, $3, 'waiting', 0, 16, $4, 1, $5)`,
      [service.studioId, uuidv7(), cutOff.id, daysAgo(1), daysAgo(1)],
    );
    await send(another, 'mail');
    expect((await settled(another.id)).state).toBe('sent');
    expect((await settled(cutOff.id)).mail).toMatchObject({ state: 'failed', nextAttemptAt: null });
    expect(mail.received).toHaveLength(1);
  });

  it('cannot go by mail to a supplier without an address', async () => {
    const other = await draft([{ productId: umberId, packs: 1, packPriceMinor: 100 }], nordlichtId);
    expect(other.mailObstacle).toBe('no mail address');
    const approved = await approve(other);
    const refused = await problem(
      service.post(`${at}/${approved.id}/sending`, { version: approved.version, as: 'mail' }),
    );
    expect(refused).toMatchObject({ status: 409, code: 'wrong-state' });
    expect(refused.detail).toContain('Nordlicht Bedarf');
    expect(await send(approved, 'by hand')).toMatchObject({ state: 'sent' });
  });

  it('are received in parts, the rest is expected anew, and they close by themselves', async () => {
    const order = await sentByHand();
    const [umber, liner] = [lineOf(order, umberId), lineOf(order, linerId)];
    const first = await deliver([goods(umberId, 1, { orderLineId: umber.id })]);
    const part = await seen(order.id);
    expect(part).toMatchObject({ state: 'received in part', deliveries: [{ deliveryId: first.id }] });
    expect(lineOf(part, umberId)).toMatchObject({ receivedPieces: 1, outstandingPieces: 1 });
    // Another one is expected, on the day that was expected before.
    expect(part.expected).toMatchObject({ expectedOn: order.expected?.expectedOn, endedAs: null });
    expect(part.expected?.id).not.toBe(order.expected?.id);
    const ended = await service.seen<Record<string, unknown>>(`/expected-deliveries/${order.expected?.id}`);
    expect(ended).toMatchObject({ endedAs: 'received', deliveryId: first.id });

    // Nobody names lines: what was expected says which order it is, and products say which line.
    const rest = await deliver([goods(linerId, 20), goods(umberId, 1)], {
      expectedDeliveryId: part.expected?.id,
    });
    expect(rest.lines.map(({ orderLineId }) => orderLineId)).toEqual([liner.id, umber.id]);
    expect(await seen(order.id)).toMatchObject({
      ...{ state: 'closed', endedAs: 'received whole', differences: [], steps: [] },
      expected: { endedAs: 'received' },
    });
  });

  it('record what came otherwise, and refuse none of it', async () => {
    const order = await sentByHand([{ offerId: umberOffer, packs: 3 }]);
    const umber = lineOf(order, umberId);
    await deliver([
      goods(umberId, 5, { orderLineId: umber.id }),
      goods(linerId, 3, { orderLineId: umber.id }),
      goods(linerId, 4),
      goods(linerId, 1, { orderLineId: 'A number of theirs' }),
    ]);
    const closed = await seen(order.id);
    expect(closed).toMatchObject({ state: 'closed', endedAs: 'received whole' });
    expect(closed.differences.map(({ kind, pieces, productName }) => [kind, pieces, productName])).toEqual([
      ['more than ordered', 2, 'Brow'],
      ['another product', 3, 'Liner'],
      ['not ordered', 4, 'Liner'],
      ['not ordered', 1, 'Liner'],
    ]);
    // It ended, and what comes late is recorded all the same.
    await deliver([goods(umberId, 1, { orderLineId: umber.id })]);
    expect(lineOf(await seen(order.id), umberId)).toMatchObject({ receivedPieces: 6 });
    expect((await seen(order.id)).state).toBe('closed');
  });

  it('stay awaited when another product came, and while nobody calls off the order itself', async () => {
    const order = await sentByHand([{ offerId: umberOffer, packs: 3 }]);
    await deliver([goods(linerId, 4, { orderLineId: lineOf(order, umberId).id })]);
    const awaited = await seen(order.id);
    expect(awaited).toMatchObject({ state: 'sent', expected: { endedAs: null } });
    expect(awaited.expected?.id).not.toBe(order.expected?.id);
    for (const step of ['call-off', 'received']) {
      const refused = await problem(service.post(`/expected-deliveries/${awaited.expected?.id}/${step}`, {}));
      expect(refused).toMatchObject({ status: 409, code: 'wrong-state' });
      expect(refused.detail).toContain(`Order ${order.number}`);
    }
    await service.made(`${at}/${order.id}/call-off`, { version: awaited.version });
    expect((await seen(order.id)).expected).toMatchObject({ endedAs: 'called off' });
  });

  it('stay awaited when what was expected came and answers none of their lines', async () => {
    const order = await sentByHand([{ offerId: umberOffer, packs: 3 }]);
    const came = await deliver([goods(linerId, 4, { orderLineId: null })], {
      expectedDeliveryId: order.expected?.id,
    });
    const ended = await service.seen<Record<string, unknown>>(`/expected-deliveries/${order.expected?.id}`);
    expect(ended).toMatchObject({ endedAs: 'received', deliveryId: came.id });
    const awaited = await seen(order.id);
    expect(awaited).toMatchObject({ state: 'sent', deliveries: [], expected: { endedAs: null } });
    expect(awaited.expected?.expectedOn).toBe(order.expected?.expectedOn);
    await service.made(`${at}/${order.id}/call-off`, { version: awaited.version });
  });

  it('are expected later while others of the supplier have not come, and while the rest of one has not', async () => {
    const { id: supplierId } = await service.made<Made>('/suppliers', { name: 'Spiekeroog Bedarf' });
    await terms(supplierId, { quotedLeadTimeDays: 5 });
    const offerId = await offer(supplierId, umberId, 'SP-1', 1, 1, [{ fromPacks: 1, packPriceMinor: 2_000 }]);
    const placed = async () =>
      send(await approve(await draft([{ offerId, packs: 2 }], supplierId)), 'by hand');
    const today = localDay(new Date().toISOString(), timeZone);
    const inDays = (days: number) => Temporal.PlainDate.from(today).add({ days }).toString();
    const first = await placed();
    expect(first.expected?.expectedOn).toBe(inDays(5));
    await sql.rows('UPDATE purchase_order SET sent_at = $1 WHERE id = $2', [daysAgo(12), first.id]);
    expect((await placed()).expected?.expectedOn).toBe(inDays(12));
    // Half of it came soon: the other half is awaited all the same.
    await deliver([goods(umberId, 1, { orderLineId: lineOf(first, umberId).id })], {
      ...{ supplierId, occurredAt: daysAgo(9) },
    });
    const { leadTime } = await service.seen<SupplierTermsView>(`/supplier-terms/${supplierId}`);
    expect(leadTime).toMatchObject({ basis: 'quoted and learnt', orders: 1, days95: 12 });
  });

  it('end with what is missing, called off or owed', async () => {
    const rest = await sentByHand();
    await deliver([goods(umberId, 1, { orderLineId: lineOf(rest, umberId).id })]);
    const part = await seen(rest.id);
    const calledOff = await service.made<PurchaseOrderView>(`${at}/${rest.id}/call-off`, {
      version: part.version,
    });
    expect(calledOff).toMatchObject({
      state: 'closed',
      endedAs: 'rest called off',
      expected: { endedAs: 'called off' },
    });
    const owed = await sentByHand();
    const closed = await service.made<PurchaseOrderView>(`${at}/${owed.id}/closing`, {
      version: owed.version,
    });
    expect(closed).toMatchObject({ state: 'closed', endedAs: 'closed short' });
    expect(lineOf(closed, linerId).outstandingPieces).toBe(20);
    // Goods of what was called off altogether come nevertheless.
    const gone = await sentByHand();
    await service.made(`${at}/${gone.id}/call-off`, { version: gone.version });
    await deliver([goods(umberId, 2, { orderLineId: lineOf(gone, umberId).id })]);
    const came = await seen(gone.id);
    expect([came.state, lineOf(came, umberId).receivedPieces]).toEqual(['called off', 2]);
  });

  it('open an alert when they are late, and it ends with their arrival', async () => {
    const order = await sentByHand(usual(), { expectedOn: dayAhead(1) });
    const { id = '', version } = order.expected ?? {};
    const moved = await service.patch(`/expected-deliveries/${id}`, {
      ...{ version, orderedOn: daysAgo(9).slice(0, 10), expectedOn: daysAgo(2).slice(0, 10) },
    });
    expect(moved.status).toBe(200);
    const late = async () =>
      (await service.seen<AlertPageView>('/alerts?kind=delivery%20late')).items.filter(
        ({ subjectId }) => subjectId === id,
      );
    expect(await late()).toMatchObject([{ facts: { reference: `Order ${order.number}` } }]);
    expect((await seen(order.id)).expected?.late).toBe(true);
    const listed = await service.seen<PurchaseOrderPageView>(`${at}?state=sent`);
    expect(listed.items.find((one) => one.id === order.id)).toMatchObject({ late: true, lines: 2 });
    await deliver(
      order.lines.map((line) => goods(line.productId, line.orderedPieces)),
      { expectedDeliveryId: id },
    );
    expect(await late()).toEqual([]);
    expect((await seen(order.id)).state).toBe('closed');
  });

  it('are listed by state and supplier in pages', async () => {
    const open = await service.seen<PurchaseOrderPageView>(`${at}?limit=2`);
    expect(open.items).toHaveLength(2);
    const [first, second] = open.items;
    expect(first?.number).toBeGreaterThan(second?.number ?? 0);
    const next = await service.seen<PurchaseOrderPageView>(`${at}?limit=2&after=${open.next}`);
    expect(next.items[0]?.number).toBeLessThan(second?.number ?? 0);
    const all = await service.seen<PurchaseOrderPageView>(`${at}?state=all&limit=200`);
    expect(all.items.map(({ number }) => number)).toEqual(
      Array.from({ length: all.items.length }, (_, index) => all.items.length - index),
    );
    const ofNordlicht = await service.seen<PurchaseOrderPageView>(
      `${at}?state=all&supplierId=${nordlichtId}`,
    );
    expect(new Set(ofNordlicht.items.map(({ supplierId }) => supplierId))).toEqual(new Set([nordlichtId]));
    expect((await service.get(`${at}?after=${uuidv7()}`)).status).toBe(400);
  });

  it('are counted without gaps and numbers twice when many draft at once', async () => {
    const before = (await draft(usual())).number;
    const made = await Promise.all(Array.from({ length: 8 }, () => draft(usual())));
    expect(made.map(({ number }) => number).sort((one, other) => one - other)).toEqual(
      Array.from({ length: 8 }, (_, index) => before + index + 1),
    );
  });

  it('are handed out as a document and as a list that no spreadsheet runs', async () => {
    const formula = await studio.product({ name: '=1+2', shade: 'Ocker „hell“' });
    const order = await draft([{ productId: formula, packs: 2, orderCode: '+49', packPriceMinor: 5 }]);
    const pdf = await service.fetch(`${service.studio}${at}/${order.id}/order.pdf`);
    expect(pdf.headers.get('content-type')).toBe('application/pdf');
    expect(pdf.headers.get('content-disposition')).toContain(`order-${order.number}.pdf`);
    const text = pagesOf(Buffer.from(await pdf.arrayBuffer()))
      .map(textOn)
      .join('\n');
    expect(text).toContain('Draft: not an order');
    expect(text).toContain(`Purchase order ${order.number}`);
    const csv = await (await service.fetch(`${service.studio}${at}/${order.id}/order.csv`)).text();
    const [, row = ''] = csv.split('\r\n');
    expect(row).toContain("'+49");
    expect(row.endsWith('2,1,1,2,0.05,0.10,EUR')).toBe(true);
  });

  it('show nothing to another studio, and take none of its lines', async () => {
    const order = await sentByHand();
    const headers = { authorization: `Bearer ${stranger.token}` };
    const theirs = `${service.url}/api/v1/studios/${stranger.studioId}`;
    expect((await service.get(`${theirs}${at}/${order.id}`, headers)).status).toBe(404);
    expect(
      (await service.get<PurchaseOrderPageView>(`${theirs}${at}?state=all`, headers)).body.items,
    ).toEqual([]);
    const drafted = await service.post(`${theirs}${at}`, { supplierId: pellwormId }, headers);
    expect(drafted.status).toBe(404);
  });
});
