import type { ClaimView } from '../../../src/reorder/claims/claims.views.js';
import type { PurchaseOrderView } from '../../../src/reorder/purchase-orders/purchase-orders.views.js';
import type { DeliveryView } from '../../../src/stock/deliveries.views.js';
import type { ReceiptView } from '../../../src/stock/receiving.views.js';
import { until } from '../waiting.js';
import type { RecordingService } from './recording-service.js';
import type { LivedRegister } from './register.js';
import type { LivedSupply } from './supply.js';
import type { Texts } from './texts.js';

const at = '/purchase-orders';

/** An order from draft to its end, one that is called off, and what the supplier is asked to make good. */
export async function liveOrders(
  service: RecordingService,
  texts: Texts,
  register: LivedRegister,
  offers: LivedSupply,
  placeId: string,
): Promise<void> {
  const { supplierId, gelId } = register;
  const drafted = await draft(service, texts, register, offers);
  const sent = await send(service, drafted);
  const receipt = await service.made<ReceiptView>('/deliveries', {
    origin: 'purchase',
    supplierId,
    expectedDeliveryId: sent.expected?.id,
    lines: [
      {
        productId: register.umberId,
        codes: [{ kind: 'lot', code: texts('ordered lot') }],
        useBy: '2098-12-31',
        quantity: 1,
        placeId,
        faults: [{ kind: 'damaged package', pieces: 1 }],
      },
    ],
  });
  const { version } = await service.seen<PurchaseOrderView>(`${at}/${sent.id}`);
  const closed = await service.made<PurchaseOrderView>(`${at}/${sent.id}/closing`, { version });
  await service.seen(`${at}?state=all&supplierId=${supplierId}`);
  const unwanted = await service.made<PurchaseOrderView>(at, {
    supplierId,
    lines: [{ productId: gelId, packs: 1 }],
  });
  await service.made(`${at}/${unwanted.id}/call-off`, { version: unwanted.version });
  const delivery = await service.seen<DeliveryView>(`/deliveries/${receipt.id}`);
  await claim(service, texts, closed, delivery);
}

async function draft(
  service: RecordingService,
  texts: Texts,
  { supplierId, umberId, gelId }: LivedRegister,
  { umberOfferId, linerOfferId }: LivedSupply,
): Promise<PurchaseOrderView> {
  const byHand = {
    ...{ productId: gelId, orderCode: texts('order code by hand'), packs: 2, packContainers: 1 },
    ...{ containerPieces: 1, packPriceMinor: 990 },
  };
  const { id, lines } = await service.made<PurchaseOrderView>(at, {
    supplierId,
    lines: [{ offerId: umberOfferId, packs: 4 }, byHand, { productId: umberId, packs: 1 }],
  });
  const [umber, gel, more] = lines;
  return service.changed<PurchaseOrderView>('PATCH', `${at}/${id}`, {
    version: 1,
    deliveryCostMinor: 500,
    add: [{ offerId: linerOfferId, packs: 2 }, byHand],
    change: [
      { lineId: umber?.id, packs: 3 },
      { lineId: gel?.id, packPriceMinor: 1_100 },
    ],
    takeOff: [more?.id],
  });
}

async function send(
  service: RecordingService,
  { id, version }: PurchaseOrderView,
): Promise<PurchaseOrderView> {
  const confirmed = ['below minimum order', 'price not known', 'price changed'];
  const approved = await service.made<PurchaseOrderView>(`${at}/${id}/approval`, { version, confirmed });
  const again = await service.made<PurchaseOrderView>(`${at}/${id}/draft-again`, {
    version: approved.version,
  });
  const twice = await service.made<PurchaseOrderView>(`${at}/${id}/approval`, {
    version: again.version,
    confirmed,
  });
  const expectedOn = new Date(Date.now() + 20 * 86_400_000).toISOString().slice(0, 10);
  const tried = twice.mailObstacle === null ? await tryByMail(service, twice) : twice;
  return service.made<PurchaseOrderView>(`${at}/${id}/sending`, {
    ...{ version: tried.version, as: 'by hand', expectedOn },
  });
}

/** Where there is a mail server, and it does not answer. */
async function tryByMail(
  service: RecordingService,
  { id, version }: PurchaseOrderView,
): Promise<PurchaseOrderView> {
  await service.made(`${at}/${id}/sending`, { version, as: 'mail' });
  return until('an attempt to mail the order', async () => {
    const order = await service.seen<PurchaseOrderView>(`${at}/${id}`);
    return (order.mail?.attempts ?? 0) > 0 ? order : undefined;
  });
}

async function claim(
  service: RecordingService,
  texts: Texts,
  order: PurchaseOrderView,
  delivery: DeliveryView,
): Promise<void> {
  const [line] = delivery.lines;
  const open = (more: object = {}) =>
    service.made<ClaimView>('/claims', {
      supplierId: order.supplierId,
      orderLineId: order.lines[0]?.id,
      deliveryLineId: line?.id,
      lotId: line?.lotId,
      reason: 'damaged package',
      pieces: 1,
      amountMinor: 2_400,
      note: texts('claim'),
      ...more,
    });
  const { id } = await open();
  await service.made(`/claims/${id}/sent`, { version: 1 });
  await service.made(`/claims/${id}/settled`, { version: 2, settledMinor: 2_000 });
  const standing = await open();
  await service.changed('PATCH', `/claims/${standing.id}`, {
    ...{ version: 1, pieces: 1, amountMinor: 2_300, note: texts('claim anew') },
  });
  const unwanted = await open({ again: true });
  await service.made(`/claims/${unwanted.id}/dropped`, { version: 1 });
  await service.seen(`/claims/suggestions?deliveryId=${delivery.id}`);
  await service.seen(`/claims?state=all&supplierId=${order.supplierId}`);
}
