import { stringify } from 'csv-stringify/sync';
import type { BlendView } from '../../../src/stock/blends.views.js';
import type { ContainerChangeView } from '../../../src/stock/container-operations.views.js';
import type { ExpectedDeliveryView } from '../../../src/stock/expected-deliveries/expected-deliveries.views.js';
import type { LevelView } from '../../../src/stock/levels.views.js';
import type { CorrectedLotView } from '../../../src/stock/lot-corrections.views.js';
import type { PlaceView } from '../../../src/stock/places.views.js';
import type { ReceiptView, ReceivedLineView } from '../../../src/stock/receiving.views.js';
import type { LivedPeople } from './access.js';
import type { RecordingService } from './recording-service.js';
import type { LivedRegister } from './register.js';
import type { Texts } from './texts.js';

/** Stock that is left for visits, by id. */
export interface LivedStock {
  placeId: string;
  umber: { lotId: string; containerId: string; labelCode: string };
  sand: { lotId: string; containerId: string; labelCode: string };
  liners: { lotId: string; containerId: string; labelCode: string };
  gel: { lotId: string; containerId: string };
  otherGel: { lotId: string; containerId: string };
  blend: { lotId: string; containerId: string; labelCode: string };
}

const day = 86_400_000;
const daysAgo = (days: number) => new Date(Date.now() - days * day).toISOString();

class Shelf {
  constructor(
    readonly service: RecordingService,
    readonly texts: Texts,
    readonly placeId: string,
  ) {}

  async receive(productId: string, code: string, more: object = {}): Promise<ReceivedLineView> {
    const receipt = await this.service.made<ReceiptView>('/deliveries', {
      origin: 'gift or sample',
      lines: [
        {
          productId,
          codes: [{ kind: 'lot', code: this.texts(code) }],
          useBy: '2099-12-31',
          quantity: 1,
          placeId: this.placeId,
          ...more,
        },
      ],
    });
    const [line] = receipt.lines;
    if (!line) throw new Error('The delivery has no line.');
    return line;
  }

  async receiveOne(productId: string, code: string, more: object = {}): Promise<string> {
    return (await this.receive(productId, code, more)).containers[0]?.id ?? '';
  }

  record(containerId: string, operation: string, body: object = {}): Promise<ContainerChangeView> {
    return this.service.made<ContainerChangeView>(`/containers/${containerId}/${operation}`, body);
  }
}

/** Deliveries, and everything that happens to bottles and boxes on the shelf. */
export async function liveStock(
  service: RecordingService,
  texts: Texts,
  people: LivedPeople,
  register: LivedRegister,
): Promise<LivedStock> {
  const place = await service.made<PlaceView>('/places', { name: texts('shelf'), kind: 'shelf' });
  const left = await service.made<PlaceView>('/places', { name: texts('left shelf'), kind: 'shelf' });
  await service.made(`/places/${left.id}/archive`);
  const shelf = new Shelf(service, texts, place.id);
  await receivePurchase(shelf, people, register);
  await takeInOpeningStock(shelf);
  await handleBottles(shelf, people, register);
  await handleBoxes(shelf, register);
  await correctLots(shelf, register);
  await setLevels(service, register);
  await setDaysOfWarning(service, register);
  return leaveForVisits(shelf, people, register);
}

async function receivePurchase(
  { service, texts, placeId }: Shelf,
  people: LivedPeople,
  register: LivedRegister,
) {
  const { cameId, comingId } = await expectDeliveries(service, texts, register);
  const receipt = await service.made<ReceiptView>('/deliveries', {
    origin: 'purchase',
    occurredAt: daysAgo(1),
    expectedDeliveryId: comingId,
    supplierId: register.supplierId,
    orderedOn: '2026-01-05',
    reference: texts('reference'),
    lines: [
      {
        productId: register.umberId,
        codes: [{ kind: 'batch', code: texts('batch') }],
        useBy: '2098-11',
        manufacturedOn: '2024-02-01',
        quantity: 2,
        unitCostMinor: 2_490,
        orderLineId: texts('order line'),
        placeId,
        ownerId: people.artistId,
        faults: [{ kind: 'broken seal', pieces: 1 }],
      },
      {
        symbol: { text: register.linerGtin.slice(1), symbologyIdentifier: ']E0' },
        productId: register.linerId,
        codes: [{ kind: 'lot', code: texts('scanned') }],
        useBy: '2098-11-30',
        quantity: 10,
        placeId,
      },
      { productId: register.gelId, codeState: 'none printed', useBy: null, quantity: 1, placeId },
    ],
  });
  await service.made(`/expected-deliveries/${cameId}/received`, { deliveryId: receipt.id });
  const containerIds = receipt.lines.flatMap(({ containers }) => containers.map(({ id }) => id));
  await service.post('/labels', { id: undefined, containerIds, sheet: 'A4 sheet', startAt: 3 });
  const [hold] = receipt.lines.flatMap(({ holds }) => holds);
  await service.made(`/holds/${hold?.id}/release`, { reason: texts('looked at') });
  await service.made('/deliveries', {
    origin: 'opening stock',
    lines: [
      {
        productId: register.umberId,
        codes: [{ kind: 'lot', code: texts('old stock') }],
        useBy: '2097-12-31',
        quantity: 1,
        openedAt: daysAgo(20),
        placeId,
      },
    ],
  });
}

/** From a file, with a maker and a product that nobody knew. */
async function takeInOpeningStock({ service, texts }: Shelf): Promise<void> {
  const row = {
    maker: texts('maker from a file'),
    product: texts('product from a file'),
    shade: texts('shade from a file'),
    kind: 'pigment',
    'bottle ml': '10',
    lot: texts('lot from a file'),
    'use by': '2097-12-31',
    quantity: '1',
    'opened on': '2026-01-05',
    remaining: '60 %',
    place: texts('shelf'),
  };
  const text = stringify([row], { header: true });
  await service.made('/opening-stock/preview', { text, id: undefined });
  await service.made('/opening-stock', { text });
}

async function handleBottles(shelf: Shelf, people: LivedPeople, register: LivedRegister): Promise<void> {
  const { service, texts, placeId } = shelf;
  const bottle = (code: string, more: object = {}) => shelf.receiveOne(register.umberId, code, more);
  const mistaken = await bottle('mistaken');
  await shelf.record(mistaken, 'open', { occurredAt: daysAgo(0.1) });
  await shelf.record(mistaken, 'correct-opened-date', { openedAt: daysAgo(1), reason: texts('read wrong') });
  await shelf.record(mistaken, 'undo-opening', { reason: texts('not opened') });
  await shelf.record(mistaken, 'move', { placeId, ownerId: people.artistId });
  await shelf.record(mistaken, 'count', { bottle: 'still there' });
  const emptied = await bottle('emptied');
  await shelf.record(emptied, 'open');
  await shelf.record(emptied, 'finish');
  const dropped = await shelf.record(await bottle('dropped'), 'discard', { reason: texts('fell down') });
  await service.made(`/movements/${dropped.movementIds[0]}/reversal`, { reason: texts('another one') });
  await shelf.record(await bottle('past', { useBy: '2020-01' }), 'keep-for-practice', { placeId });
  const doubtful = await shelf.receive(register.umberId, 'doubtful');
  const at = { kind: 'quarantine', reason: 'doubt' };
  await service.made('/holds', { ...at, note: texts('loose cap'), lotId: doubtful.lot.id });
  await service.made('/holds', { ...at, containerId: doubtful.containers[0]?.id });
}

async function handleBoxes(shelf: Shelf, register: LivedRegister): Promise<void> {
  const { texts, placeId } = shelf;
  const box = await shelf.receiveOne(register.linerId, 'box', { quantity: 20 });
  await shelf.record(box, 'waste', { pieces: 1, reason: texts('torn') });
  await shelf.record(box, 'return', { pieces: 2, reason: texts('wrong size') });
  await shelf.record(box, 'count', { pieces: 16 });
  await shelf.record(box, 'move', { placeId, pieces: 5 });
}

async function correctLots(shelf: Shelf, register: LivedRegister): Promise<void> {
  const { service, texts } = shelf;
  const { lot } = await shelf.receive(register.sandId, 'misread');
  await service.changed<CorrectedLotView>('PATCH', `/lots/${lot.id}`, {
    version: lot.version,
    codes: [{ kind: 'lot', code: texts('read again') }],
    useBy: '2096-10-31',
    manufacturedOn: '2024-03-01',
    reason: texts('misread label'),
  });
}

/** One that is called off, one that somebody says came, one that is about to come, and one that is still expected. */
async function expectDeliveries(
  service: RecordingService,
  texts: Texts,
  register: LivedRegister,
): Promise<{ cameId: string; comingId: string }> {
  const expect = () =>
    service.made<ExpectedDeliveryView>('/expected-deliveries', {
      supplierId: register.supplierId,
      reference: texts('order number'),
      orderedOn: '2026-01-05',
      expectedOn: '2026-01-20',
    });
  const [unwanted, came, coming] = [await expect(), await expect(), await expect()];
  await expect();
  await service.changed('PATCH', `/expected-deliveries/${unwanted.id}`, {
    supplierId: register.supplierId,
    reference: texts('other order number'),
    orderedOn: null,
    expectedOn: '2026-02-01',
    version: unwanted.version,
  });
  await service.made(`/expected-deliveries/${unwanted.id}/call-off`);
  return { cameId: came.id, comingId: coming.id };
}

async function setLevels(service: RecordingService, register: LivedRegister): Promise<void> {
  const product = { subjectKind: 'product', subjectId: register.umberId };
  const level = await service.changed<LevelView>('PUT', '/stock/levels', { ...product, minimumPieces: 50 });
  await service.changed('PUT', '/stock/levels', { ...product, minimumPieces: 60, version: level.version });
  await service.changed('PUT', '/stock/levels', {
    subjectKind: 'configuration',
    subjectId: register.configuration,
    minimumPieces: 90,
  });
  const unwanted = await service.changed<LevelView>('PUT', '/stock/levels', {
    subjectKind: 'product',
    subjectId: register.gelId,
    minimumPieces: 1,
  });
  await service.changed('DELETE', `/stock/levels/${unwanted.id}`, { version: unwanted.version });
}

async function setDaysOfWarning(service: RecordingService, register: LivedRegister): Promise<void> {
  await service.changed('PUT', `/date-thresholds/${register.umberId}`, { useByNearDays: 200 });
  await service.changed('PUT', `/date-thresholds/${register.umberId}`, {
    useByNearDays: 200,
    openedLifeEndingDays: 40,
    version: 1,
  });
  await service.changed('PUT', `/date-thresholds/${register.gelId}`, { openedLifeEndingDays: 3 });
  await service.changed('DELETE', `/date-thresholds/${register.gelId}`, { version: 1 });
}

async function leaveForVisits(
  shelf: Shelf,
  people: LivedPeople,
  register: LivedRegister,
): Promise<LivedStock> {
  const { service, texts, placeId } = shelf;
  const standing = async (productId: string, code: string, quantity = 1) => {
    const { lot, containers } = await shelf.receive(productId, code, { quantity });
    return {
      lotId: lot.id,
      containerId: containers[0]?.id ?? '',
      labelCode: containers[0]?.labelCode ?? '',
    };
  };
  const umber = await standing(register.umberId, 'umber lot');
  const sand = await standing(register.sandId, 'sand lot');
  for (const { containerId } of [umber, sand])
    await shelf.record(containerId, 'open', { occurredAt: daysAgo(1) });
  const blend = await service.made<BlendView>('/blends', {
    productId: register.sandId,
    placeId,
    parents: [
      { containerId: umber.containerId, microlitres: 500 },
      { containerId: sand.containerId, drops: 20 },
    ],
    ownerId: people.artistId,
    code: texts('blend'),
    useBy: daysAgo(-100).slice(0, 10),
  });
  return {
    placeId,
    umber,
    sand,
    liners: await standing(register.linerId, 'liner lot', 40),
    gel: await standing(register.gelId, 'gel lot'),
    otherGel: await standing(register.gelId, 'other gel lot'),
    blend: { lotId: blend.lotId, containerId: blend.containerId, labelCode: blend.labelCode },
  };
}
