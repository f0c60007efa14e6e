import type { PlaceView } from '../../../src/stock/places.views.js';
import type { ReceiptView } from '../../../src/stock/receiving.views.js';
import type { ArrivalView, TransferView } from '../../../src/stock/transfers/transfers.views.js';
import type { RunningService } from '../service.js';
import { Store } from '../store.js';
import type { LivedPeople } from './access.js';
import type { RecordingService } from './recording-service.js';
import type { LivedRegister } from './register.js';
import type { LivedStock } from './stock.js';
import type { Texts } from './texts.js';

/** Goods that come from a branch and go to it, that are lost, turn up, are called back and stay on their way. */
export async function liveTransfers(
  service: RecordingService,
  texts: Texts,
  people: LivedPeople,
  register: LivedRegister,
  { placeId }: LivedStock,
): Promise<void> {
  const added = await service.made<{ studioId: string }>('/chain/studios', {
    name: texts('warehouse'),
    timeZone: 'Europe/Vienna',
  });
  const branch = await asItsOwner(service, added.studioId);
  await goodsFrom(branch, service, texts, people, register, placeId);
  await goodsTo(branch, service, texts, register, placeId);
}

async function goodsFrom(
  branch: RunningService,
  service: RecordingService,
  texts: Texts,
  people: LivedPeople,
  register: LivedRegister,
  placeId: string,
): Promise<void> {
  const sent = await branch.made<TransferView>('/transfers', {
    receiverId: service.studioId,
    reason: texts('sent here'),
    lines: await received(branch, texts, register, await firstPlace(branch)),
  });
  const [bottle, box] = sent.lines.map(({ id }) => id);
  await service.made<ArrivalView>(`/transfers/${sent.id}/arrival`, {
    occurredAt: new Date().toISOString(),
    reason: texts('box torn'),
    lines: [
      { lineId: bottle, pieces: 1, placeId, ownerId: people.artistId },
      { lineId: box, pieces: 8, faults: [{ kind: 'damaged package', pieces: 1 }], placeId },
    ],
  });
  await service.made<ArrivalView>(`/transfers/${sent.id}/arrival`, {
    lines: [{ lineId: box, pieces: 1, placeId, turnedUp: true }],
  });
}

async function goodsTo(
  branch: RunningService,
  service: RecordingService,
  texts: Texts,
  register: LivedRegister,
  placeId: string,
): Promise<void> {
  const send = async (more: object) =>
    service.made<TransferView>('/transfers', {
      receiverId: branch.studioId,
      reason: texts('sent there'),
      lines: (await received(service, texts, register, placeId)).map((line) => ({ ...line, ...more })),
    });
  const arrived = await send({});
  const there = await firstPlace(branch);
  await branch.made(`/transfers/${arrived.id}/arrival`, {
    lines: arrived.lines.map(({ id, balance }) => ({
      lineId: id,
      pieces: balance.sent.pieces,
      placeId: there,
    })),
  });
  const onItsWay = await send({ pieces: 1 });
  await service.made(`/transfers/${onItsWay.id}/withdrawal`, {
    reason: texts('never left'),
    lineIds: [onItsWay.lines[0]?.id],
    placeId,
  });
}

/** One bottle and one box of ten, as lines to send. */
async function received(
  service: RunningService,
  texts: Texts,
  { umberId, linerId }: LivedRegister,
  placeId: string,
): Promise<{ containerId: string | undefined }[]> {
  const line = { useBy: '2099-12-31', placeId };
  const { lines } = await service.made<ReceiptView>('/deliveries', {
    origin: 'gift or sample',
    lines: [
      { ...line, productId: umberId, codes: [{ kind: 'lot', code: texts('sent umber') }], quantity: 1 },
      { ...line, productId: linerId, codes: [{ kind: 'lot', code: texts('sent liners') }], quantity: 10 },
    ],
  });
  return lines.map(({ containers }) => ({ containerId: containers[0]?.id }));
}

async function firstPlace(service: RunningService): Promise<string> {
  const [place] = await service.seen<PlaceView[]>('/places');
  return place?.id ?? '';
}

/** A studio as its owner sees it, with a token made in the test's own process. */
async function asItsOwner(service: RunningService, studioId: string): Promise<RunningService> {
  const store = await Store.open(service.dataFolder, service.databaseUrl);
  try {
    return await store.seenBy(service, await store.ownerOf(studioId));
  } finally {
    await store.close();
  }
}
