import type { DrillScheduleView } from '../../../src/recalls/drills/drills.views.js';
import type { OpenedRecallView, RecallLotView, RecallView } from '../../../src/recalls/recalls.views.js';
import { closingObstacles } from '../../../src/recalls/vocabulary.js';
import type { OpenHoldPageView } from '../../../src/stock/holds.views.js';
import type { PhotoView } from '../../../src/stock/photos/photos.views.js';
import type { PlaceView } from '../../../src/stock/places.views.js';
import type { ReceiptView, ReceivedLineView } from '../../../src/stock/receiving.views.js';
import type { LivedPeople } from './access.js';
import type { RecordingService } from './recording-service.js';
import type { LivedRegister } from './register.js';
import type { Texts } from './texts.js';
import type { LivedClients } from './visits.js';

/** The smallest picture there is: one pixel. */
const pixel =
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==';

interface RecalledGoods {
  /** Where things are put aside. */
  placeId: string;
  /** Named by the notice. */
  certain: ReceivedLineView;
  /** Named but for one character. */
  possible: ReceivedLineView;
}

/** A recall from its notice to its closing, one that was withdrawn, and a drill. */
export async function liveRecalls(
  service: RecordingService,
  texts: Texts,
  people: LivedPeople,
  register: LivedRegister,
  clients: LivedClients,
): Promise<void> {
  const goods = await receiveGoods(service, texts, register);
  const { id, noticeId } = await openFromNotice(service, texts, register, goods);
  await receiveLater(service, texts, register, goods);
  await decideAndPutAside(service, texts, people, id, goods);
  await tellPeople(service, texts, people, clients, id);
  await service.made(`/recalls/${id}/steps`, { step: 'messages prepared' });
  await service.made(`/recalls/${id}/closing`, {
    signedBy: people.ownerId,
    secondSignedBy: people.artistId,
    overrides: closingObstacles.map((obstacle) => ({ obstacle, reason: texts(`although ${obstacle}`) })),
  });
  await withdrawAnother(service, texts, register, noticeId, goods);
  await rehearse(service, goods);
}

async function receiveGoods(
  service: RecordingService,
  texts: Texts,
  register: LivedRegister,
): Promise<RecalledGoods> {
  const place = await service.made<PlaceView>('/places', { name: texts('put aside'), kind: 'shelf' });
  const receive = async (code: string): Promise<ReceivedLineView> => {
    const { lines } = await service.made<ReceiptView>('/deliveries', {
      ...{ origin: 'purchase', supplierId: register.supplierId },
      lines: [
        {
          ...{ productId: register.umberId, codes: [{ kind: 'lot', code: texts(code) }] },
          ...{ useBy: '2099-12-31', quantity: 2, placeId: place.id },
        },
      ],
    });
    const [line] = lines;
    if (!line) throw new Error('The delivery has no line.');
    return line;
  };
  return { placeId: place.id, certain: await receive('recalled'), possible: await receive('recaled') };
}

/** What is recalled arrives once more, and is caught. */
async function receiveLater(
  service: RecordingService,
  texts: Texts,
  register: LivedRegister,
  { placeId }: RecalledGoods,
): Promise<void> {
  await service.made<ReceiptView>('/deliveries', {
    ...{ origin: 'purchase', supplierId: register.supplierId },
    lines: [
      {
        ...{ productId: register.umberId, codes: [{ kind: 'lot', code: texts('recalled') }] },
        ...{ useBy: '2099-11-30', sameCodeDecision: 'separate lot', quantity: 1, placeId },
      },
    ],
  });
}

async function openFromNotice(
  service: RecordingService,
  texts: Texts,
  register: LivedRegister,
  goods: RecalledGoods,
): Promise<{ id: string; noticeId: string }> {
  const text = texts('notice: stop using this ink.');
  const item = {
    ...{ makerName: texts('maker named'), productName: texts('product named'), shade: texts('shade named') },
    ...{ gtins: [register.linerGtin], productIds: [register.umberId], openEnded: false },
  };
  const range = { kind: 'code range', from: texts('from'), through: texts('through') };
  const useBy = { from: '2099-01-01', through: '2099-12-31' };
  const scope = {
    items: [{ ...item, lots: [{ kind: 'code', code: texts('recalled'), useBy }, range] }],
  };
  await service.made('/recalls/readings', { id: undefined, text });
  await service.made('/recalls/matches', { id: undefined, scope });
  await service.made('/recalls/files', {
    ...{ id: undefined, kind: 'csv' },
    text: `maker,product,lot\n"${texts('maker in a file')}","${texts('product in a file')}",1\n`,
  });
  const said = {
    ...{ issuer: texts('who recalls'), reference: texts('reference'), issuedOn: '2026-03-01' },
    ...{ classification: texts('class'), risk: texts('risk'), remedy: texts('remedy') },
  };
  const opened = await service.made<OpenedRecallView>('/recalls', {
    ...{ title: texts('recall'), scope, ...said, chainWide: false },
    ...{ holdPossible: 'chosen', heldLotIds: [goods.possible.lot.id] },
    notice: { source: 'pasted', reference: texts('notice reference'), text },
  });
  const made = { kind: 'manufactured', manufactured: { from: '2020-01-01', through: '2020-01-02' } };
  const first = await service.seen<RecallView>(`/recalls/${opened.id}`);
  const noticeId = first.scopes.map((one) => one.noticeId).find((one) => one !== null) ?? '';
  await service.made(`/recalls/${opened.id}/scopes`, {
    ...{ ...said, noticeId, reason: texts('widened'), releaseUnmet: false },
    ...{ holdPossible: 'chosen', heldLotIds: [goods.possible.lot.id] },
    scope: { items: [{ ...item, lots: [...(scope.items[0]?.lots ?? []), made] }] },
  });
  await service.made(`/recalls/${opened.id}/scopes`, {
    ...{ scope, reason: texts('corrected'), holdPossible: 'none' },
    notice: { source: 'entered', reference: texts('second reference'), text: texts('second notice') },
  });
  await service.made(`/recalls/notices/${noticeId}/dismissal`, { reason: texts('answered already') });
  return { id: opened.id, noticeId };
}

async function decideAndPutAside(
  service: RecordingService,
  texts: Texts,
  people: LivedPeople,
  recallId: string,
  { placeId, certain, possible }: RecalledGoods,
): Promise<void> {
  const { items } = await service.seen<{ items: RecallLotView[] }>(`/recalls/${recallId}/lots`);
  const undecided = items.find(({ standing }) => standing === 'undecided')?.lotId ?? possible.lot.id;
  await service.made(`/recalls/${recallId}/lots/${undecided}/decisions`, {
    ...{ decision: 'affected', reason: texts('the label says so') },
  });
  const photo = await service.made<PhotoView>('/photos', { mediaType: 'image/png', content: pixel });
  const [bottle] = certain.containers;
  await service.made(`/recalls/${recallId}/containers/${bottle?.id}/findings`, {
    ...{ result: 'found', placeId, tag: texts('tag'), photoId: photo.id, note: texts('found') },
  });
  await service.made(`/recalls/${recallId}/containers/${bottle?.id}/dispositions`, {
    ...{ kind: 'destroyed', witnessId: people.artistId, photoId: photo.id },
    ...{ reference: texts('certificate'), reason: texts('as told') },
  });
  const { items: holds } = await service.seen<OpenHoldPageView>('/holds?limit=200');
  const hold = holds.find(({ kind, lotId }) => kind === 'recall' && lotId === certain.lot.id);
  await service.made(`/holds/${hold?.id}/release-requests`, {
    ...{ reason: texts('another product'), photoId: photo.id },
  });
}

/** Nobody is told by itself: what was said is recorded. */
async function tellPeople(
  service: RecordingService,
  texts: Texts,
  people: LivedPeople,
  clients: LivedClients,
  recallId: string,
): Promise<void> {
  const contact = (body: object) => service.made(`/recalls/${recallId}/contacts`, body);
  await contact({
    ...{ audience: 'client', clientId: clients.treatedId, channel: 'telephone', outcome: 'message left' },
    note: texts.ofClient('told of a recall'),
  });
  await contact({
    ...{ audience: 'artist', artistId: people.artistId, channel: 'in person', outcome: 'reached' },
    note: texts('told an artist'),
  });
  for (const audience of ['supplier', 'authority']) {
    await contact({
      ...{ audience, company: texts(audience), channel: 'e-mail', outcome: 'no answer' },
      note: texts(`wrote to the ${audience}`),
    });
  }
}

async function withdrawAnother(
  service: RecordingService,
  texts: Texts,
  register: LivedRegister,
  noticeId: string,
  { possible }: RecalledGoods,
): Promise<void> {
  const lots = [{ kind: 'code', code: possible.lot.code ?? '' }];
  const { id } = await service.made<OpenedRecallView>('/recalls', {
    ...{ title: texts('mistaken recall'), noticeId },
    scope: { items: [{ gtins: [], productIds: [register.umberId], lots, openEnded: false }] },
  });
  await service.made(`/recalls/${id}/withdrawal`, { reason: texts('the maker was mistaken') });
}

async function rehearse(service: RecordingService, { certain }: RecalledGoods): Promise<void> {
  await service.made('/recalls/drills', { lotId: certain.lot.id, wholeChain: false });
  const inYears = { everyMonths: 6, nextOn: '2099-01-01' };
  const { version } = await service.seen<DrillScheduleView>('/drill-schedule');
  await service.changed('PUT', '/drill-schedule', { ...inYears, version: version ?? undefined });
  await service.changed('PUT', '/chain/drill-schedule', { everyMonths: null, nextOn: null });
}
