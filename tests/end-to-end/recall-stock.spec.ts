import { createHash } from 'node:crypto';
import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type {
  BalanceMovementPageView,
  LotBalanceView,
  RecallBalanceView,
} from '../../src/recalls/balance/recall-balance.views.js';
import type {
  RecallContainerPageView,
  RecallContainerView,
  RecordedDispositionView,
  RecordedFindingView,
} from '../../src/recalls/containers/recall-containers.views.js';
import type { OpenedRecallView } from '../../src/recalls/recalls.views.js';
import type { BlendView } from '../../src/stock/blends.views.js';
import type { HoldView, OpenHoldPageView } from '../../src/stock/holds.views.js';
import type { LotView } from '../../src/stock/lot-list.views.js';
import type { PhotoView } from '../../src/stock/photos/photos.views.js';
import type { TransferView } from '../../src/stock/transfers/transfers.views.js';
import { keepPhoto, samplePhoto } from '../support/photos.js';
import { PlainSql } from '../support/plain-sql.js';
import {
  makeSampleStudio,
  type ReceivedLine,
  receive,
  type SampleStudio,
  walkIn,
} from '../support/sample-studio.js';
import { type ProblemBody, type RunningService, startService, usualEngine } from '../support/service.js';
import {
  type FurtherStudio,
  personOfRole,
  type SignedInPerson,
  studioOfOtherChain,
  studioOfSameChain,
} from '../support/signing-in.js';

describe.each(usualEngine)('stock that is recalled, on %s', (engine) => {
  let service: RunningService;
  let studio: SampleStudio;
  let sql: PlainSql;
  let stranger: FurtherStudio;

  beforeAll(async () => {
    service = await startService(engine);
    studio = await makeSampleStudio(service);
    const { version } = await service.seen<{ version: number }>('');
    await service.patch('', { version, houseBlends: 'allowed' });
    sql = await PlainSql.connect(service, 'read');
    stranger = await studioOfOtherChain(service);
  });
  afterAll(async () => {
    await sql.close();
    await service.dispose();
  });

  const goods = (productId: string, code: string, quantity = 1, more: object = {}) =>
    receive(service, studio, { productId, code, quantity, ...more });
  const first = ({ containers: [container] }: ReceivedLine) => container?.id ?? '';
  const recallOf = async (...codes: string[]) => {
    const { id } = await service.made<OpenedRecallView>('/recalls', {
      title: `Recall of ${codes.join(', ')}`,
      scope: {
        items: [
          {
            gtins: [],
            productIds: [studio.umberId, studio.linerId],
            lots: codes.map((code) => ({ kind: 'code', code })),
            openEnded: false,
          },
        ],
      },
    });
    return id;
  };
  const containersOf = (recallId: string, query = '') =>
    service.seen<RecallContainerPageView>(`/recalls/${recallId}/containers${query}`);
  const containerOf = async (recallId: string, id: string): Promise<RecallContainerView | undefined> =>
    (await containersOf(recallId)).items.find(({ containerId }) => containerId === id);
  const found = (recallId: string, containerId: string, body: object) =>
    service.made<RecordedFindingView>(`/recalls/${recallId}/containers/${containerId}/findings`, body);
  const disposed = (recallId: string, containerId: string, body: object) =>
    service.made<RecordedDispositionView>(
      `/recalls/${recallId}/containers/${containerId}/dispositions`,
      body,
    );
  const refused = async (path: string, body: object, headers?: Record<string, string>) => {
    const answer = await service.post<ProblemBody>(path, body, headers);
    return [answer.status, answer.body.code];
  };
  const balanceOf = async (recallId: string): Promise<RecallBalanceView> =>
    service.seen<RecallBalanceView>(`/recalls/${recallId}/balance`);
  const figuresOf = ({ figures }: LotBalanceView) =>
    Object.fromEntries(
      figures
        .filter(({ movements }) => movements > 0)
        .map(({ kind, pieces, microlitres }) => [kind, [pieces, microlitres]]),
    );
  const placeOf = async (kind: string) =>
    (await service.made<{ id: string }>('/places', { name: `${kind} ${uuidv7()}`, kind })).id;
  const byCookie = ({ cookie }: SignedInPerson) => ({ cookie });

  describe('a photo', () => {
    it('is shown as it came to whoever reads recalls, and kept sealed', async () => {
      const sent = samplePhoto(90);
      const kept = await service.made<PhotoView>('/photos', sent);
      const bytes = Buffer.from(sent.content, 'base64');
      expect(kept).toMatchObject({
        mediaType: 'image/png',
        bytes: bytes.length,
        digest: createHash('sha256').update(bytes).digest('hex'),
      });
      const shown = await service.fetch(`${service.studio}/photos/${kept.id}`);
      expect(Buffer.from(await shown.arrayBuffer())).toEqual(bytes);
      expect(
        ['content-type', 'x-content-type-options', 'cache-control'].map((name) => shown.headers.get(name)),
      ).toEqual(['image/png', 'nosniff', 'no-store']);

      const [row] = await sql.rows<{ content_sealed: string; answer: string }>(
        `SELECT photo.content_sealed, accepted_request.answer FROM photo JOIN accepted_request
           ON accepted_request.studio_id = photo.studio_id AND accepted_request.id = photo.id
         WHERE photo.id = $1`,
        [kept.id],
      );
      for (const written of [row?.content_sealed ?? '', row?.answer ?? '']) {
        expect(written).not.toContain(sent.content.slice(0, 24));
        expect(Buffer.from(written, 'base64').includes(bytes.subarray(0, 8))).toBe(false);
      }
    });

    it('is kept once, however often it is sent', async () => {
      const body = { id: uuidv7(), ...samplePhoto(1) };
      const once = await service.made<PhotoView>('/photos', body);
      expect(await service.made<PhotoView>('/photos', body)).toEqual(once);
      expect(await refused('/photos', { ...body, ...samplePhoto(2) })).toEqual([409, 'request-id-reused']);
    });

    it('is refused when its bytes are something else, or too many', async () => {
      const { content } = samplePhoto();
      const text = Buffer.from('<svg onload="alert(1)"></svg>').toString('base64');
      for (const body of [
        { mediaType: 'image/jpeg', content },
        { mediaType: 'image/png', content: text },
        { mediaType: 'image/svg+xml', content: text },
        { mediaType: 'image/png', content: 'not base64!' },
        {
          mediaType: 'image/png',
          content: Buffer.concat([Buffer.from(content, 'base64'), Buffer.alloc(700_000)]).toString('base64'),
        },
      ]) {
        expect(await refused('/photos', body)).toEqual([400, 'invalid-fields']);
      }
    });

    it('is of its own studio only', async () => {
      const id = await keepPhoto(service);
      const answer = await service.fetch(`${service.url}/api/v1/studios/${stranger.studioId}/photos/${id}`, {
        headers: { authorization: `Bearer ${stranger.token}` },
      });
      expect(answer.status).toBe(404);
    });
  });

  describe('containers', () => {
    it('are listed wherever they stand, blends and what lies on trays among them, until nothing is left', async () => {
      const umber = await goods(studio.umberId, 'CO-1', 3);
      const [one, two, three] = umber.containers.map(({ id }) => id);
      const sand = await goods(studio.thinnerId, 'CO-2');
      await service.made(`/containers/${one}/open`);
      await service.made(`/containers/${first(sand)}/open`);
      const blend = await service.made<BlendView>('/blends', {
        productId: studio.umberId,
        parents: [one, first(sand)].map((containerId) => ({ containerId, microlitres: 1_000 })),
        placeId: studio.placeId,
      });
      const liner = await goods(studio.linerId, 'CO-3', 10);
      const session = await walkIn(service, studio);
      await service.made(`/sessions/${session}/scans`, { symbol: 'CO-3' });
      const travelling = await placeOf('travelling case');
      await service.made(`/containers/${two}/move`, { placeId: travelling, ownerId: studio.ownerId });
      await service.made(`/containers/${three}/discard`, { reason: 'fell down' });

      const recallId = await recallOf('CO-1', 'CO-3');
      const { items, totals, next } = await containersOf(recallId);
      expect(next).toBeNull();
      expect(items.map(({ containerId }) => containerId).sort()).toEqual(
        [one, two, first(liner), blend.containerId].sort(),
      );
      expect(totals).toMatchObject({ containers: 4, notLookedFor: 4, found: 0, piecesLeft: 13 });
      expect(await containerOf(recallId, two ?? '')).toMatchObject({
        placeId: travelling,
        placeKind: 'travelling case',
        ownerId: studio.ownerId,
        lotCode: 'CO-1',
        lotStanding: 'affected',
        throughBlend: false,
        standing: 'not looked for',
        finding: null,
        pieces: 1,
        microlitres: 10_000,
      });
      expect(await containerOf(recallId, blend.containerId)).toMatchObject({
        throughBlend: true,
        lotStanding: 'affected',
        microlitres: 2_000,
      });
      expect(await containerOf(recallId, first(liner))).toMatchObject({
        form: 'box',
        pieces: 10,
        trays: [{ sessionId: session, pieces: 1 }],
      });
      const page = await containersOf(recallId, '?limit=3');
      const rest = await containersOf(recallId, `?limit=3&after=${page.next}`);
      expect([...page.items, ...rest.items]).toEqual(items);
      expect(rest.next).toBeNull();
    });

    it('are put aside where they are found, or recorded as not found', async () => {
      const lot = await goods(studio.umberId, 'FI-1', 2);
      const [one = '', two = ''] = lot.containers.map(({ id }) => id);
      const recallId = await recallOf('FI-1');
      const aside = await placeOf('set aside');
      const photoId = await keepPhoto(service);
      const finding = await found(recallId, one, {
        result: 'found',
        placeId: aside,
        tag: 'R 1',
        photoId,
        note: 'behind the others',
      });
      expect(finding).toMatchObject({ moved: true, warnings: [], finding: { result: 'found', tag: 'R 1' } });
      expect(await service.seen(`/containers/${one}`)).toMatchObject({ placeId: aside, held: true });
      expect(await containerOf(recallId, one)).toMatchObject({
        standing: 'found',
        placeId: aside,
        placeKind: 'set aside',
        finding: { tag: 'R 1', photoId, note: 'behind the others', personId: studio.ownerId },
      });

      await found(recallId, two, { result: 'not found' });
      expect(await containerOf(recallId, two)).toMatchObject({
        standing: 'not found',
        placeId: studio.placeId,
        pieces: 1,
      });
      expect((await containersOf(recallId)).totals).toMatchObject({ found: 1, notFound: 1, notLookedFor: 0 });
      expect((await containersOf(recallId, '?standing=not+found')).items).toMatchObject([
        { containerId: two },
      ]);
      // It turned up.
      await found(recallId, two, { result: 'found', placeId: aside });
      expect((await containersOf(recallId)).totals).toMatchObject({ found: 2, notFound: 0 });
      expect(
        await refused(`/recalls/${recallId}/containers/${one}/findings`, {
          result: 'not found',
          placeId: aside,
        }),
      ).toEqual([400, 'invalid-fields']);
    });

    it('are recorded as found also when the book says they are gone', async () => {
      const lot = await goods(studio.umberId, 'GO-1');
      const recallId = await recallOf('GO-1');
      await service.made(`/containers/${first(lot)}/discard`, { reason: 'thought it was empty' });
      expect((await containersOf(recallId)).items).toEqual([]);
      const aside = await placeOf('set aside');
      const { moved, warnings } = await found(recallId, first(lot), { result: 'found', placeId: aside });
      expect(moved).toBe(false);
      expect(warnings.join()).toMatch(/recorded as discarded, and yet it was found/);
      expect(await containerOf(recallId, first(lot))).toMatchObject({
        standing: 'gone',
        finding: { result: 'found', placeId: aside },
      });
    });

    it('are those of the recall, and the recall is open', async () => {
      const lot = await goods(studio.umberId, 'OW-1');
      const other = await goods(studio.thinnerId, 'ZZ-9');
      const recallId = await recallOf('OW-1');
      const path = (containerId: string, recall = recallId) =>
        `/recalls/${recall}/containers/${containerId}/findings`;
      const body = { result: 'found' };
      expect(await refused(path(first(other)), body)).toEqual([409, 'wrong-state']);
      expect(await refused(path(uuidv7()), body)).toEqual([404, 'not-found']);
      expect(await refused(path(first(lot), uuidv7()), body)).toEqual([404, 'not-found']);
      for (const unknown of [{ placeId: uuidv7() }, { photoId: uuidv7() }]) {
        expect(await refused(path(first(lot)), { ...body, ...unknown })).toEqual([404, 'not-found']);
      }
      const elsewhere = `${service.url}/api/v1/studios/${stranger.studioId}${path(first(lot))}`;
      expect(await refused(elsewhere, body, { authorization: `Bearer ${stranger.token}` })).toEqual([
        404,
        'not-found',
      ]);
      await service.made(`/recalls/${recallId}/withdrawal`, { reason: 'the maker was wrong' });
      expect(await refused(path(first(lot)), body)).toEqual([409, 'wrong-state']);
    });
  });

  describe('a disposition', () => {
    it('takes pieces and the rest of a box, seen by a witness or in a photo', async () => {
      const box = first(await goods(studio.linerId, 'DI-1', 10));
      const recallId = await recallOf('DI-1');
      const witness = await personOfRole(service, 'artist');
      const photoId = await keepPhoto(service);
      const part = await disposed(recallId, box, {
        kind: 'returned',
        pieces: 4,
        witnessId: witness.personId,
        reference: 'Consignment 7',
      });
      expect(part).toMatchObject({
        warnings: [],
        disposition: {
          kind: 'returned',
          pieces: 4,
          microlitres: 0,
          witnessId: witness.personId,
          photoId: null,
        },
      });
      expect(await containerOf(recallId, box)).toMatchObject({ pieces: 6, standing: 'not looked for' });
      const rest = await disposed(recallId, box, {
        kind: 'destroyed',
        photoId,
        reference: 'Certificate 1',
        reason: 'burnt',
      });
      expect(rest.disposition).toMatchObject({ kind: 'destroyed', pieces: 6 });
      expect(await containerOf(recallId, box)).toMatchObject({
        standing: 'disposed',
        state: 'discarded',
        dispositions: [
          { id: part.disposition.id, reference: 'Consignment 7' },
          { id: rest.disposition.id, reference: 'Certificate 1', photoId },
        ],
      });
      const { movements } = await service.seen<LotView>(`/lots/${(await containerOf(recallId, box))?.lotId}`);
      expect(movements.slice(0, 2)).toMatchObject([
        { id: rest.disposition.movementId, kind: 'wasted', pieces: -6, reason: 'burnt' },
        { id: part.disposition.movementId, kind: 'returned', pieces: -4, reason: 'recall, Consignment 7' },
      ]);
    });

    it('books what the book has, and is recorded also when that is nothing', async () => {
      const bottle = first(await goods(studio.umberId, 'DI-2'));
      const recallId = await recallOf('DI-2');
      const photoId = await keepPhoto(service);
      const body = { kind: 'destroyed', photoId, reference: 'Certificate 2' };
      expect((await disposed(recallId, bottle, body)).disposition).toMatchObject({
        pieces: 1,
        microlitres: 10_000,
      });
      const again = await disposed(recallId, bottle, body);
      expect(again).toMatchObject({ disposition: { movementId: null, pieces: 0, microlitres: 0 } });
      expect(again.warnings.join()).toMatch(/nothing left/);
    });

    it('is refused without another pair of eyes, beyond the book, or by halves of a bottle', async () => {
      const box = first(await goods(studio.linerId, 'DI-3', 5));
      const bottle = first(await goods(studio.umberId, 'DI-3'));
      const recallId = await recallOf('DI-3');
      const photoId = await keepPhoto(service);
      const auditor = await personOfRole(service, 'auditor');
      const path = (id: string) => `/recalls/${recallId}/containers/${id}/dispositions`;
      const body = { kind: 'returned', reference: 'Consignment 8' };
      for (const [id, more, expected] of [
        [box, {}, [400, 'invalid-fields']],
        [box, { witnessId: studio.ownerId }, [400, 'invalid-fields']],
        [box, { witnessId: uuidv7() }, [404, 'not-found']],
        [box, { photoId: uuidv7() }, [404, 'not-found']],
        [box, { photoId, pieces: 6 }, [409, 'not-enough-stock']],
        [bottle, { photoId, pieces: 2 }, [400, 'invalid-fields']],
      ] as const) {
        expect(await refused(path(id), { ...body, ...more }), JSON.stringify(more)).toEqual(expected);
      }
      const { version } = (await service.seen<{ id: string; version: number }[]>('/people')).find(
        ({ id }) => id === auditor.personId,
      ) ?? { version: 0 };
      await service.patch(`/people/${auditor.personId}`, { version, state: 'left' });
      expect(await refused(path(box), { ...body, witnessId: auditor.personId })).toEqual([
        409,
        'wrong-state',
      ]);
      expect(await containerOf(recallId, box)).toMatchObject({ pieces: 5, dispositions: [] });
    });
  });

  it('moves nothing and disposes of nothing in a drill', async () => {
    const lot = await goods(studio.umberId, 'DR-1');
    const { recallId } = await service.made<{ recallId: string }>('/recalls/drills', { lotId: lot.lot.id });
    const aside = await placeOf('set aside');
    const finding = await found(recallId, first(lot), { result: 'found', placeId: aside });
    expect(finding).toMatchObject({ moved: false, finding: { placeId: aside } });
    expect(await containerOf(recallId, first(lot))).toMatchObject({
      standing: 'found',
      placeId: studio.placeId,
    });
    const path = `/recalls/${recallId}/containers/${first(lot)}/dispositions`;
    const body = { kind: 'destroyed', photoId: await keepPhoto(service), reference: 'none' };
    expect(await refused(path, body)).toEqual([409, 'wrong-state']);
    expect(await service.seen(`/containers/${first(lot)}`)).toMatchObject({ pieces: 1, state: 'sealed' });
  });

  describe('the balance', () => {
    it('sums what came in against what left, what was found and what is missing, each with its movements', async () => {
      const umber = await goods(studio.umberId, 'BA-1', 6);
      const [used = '', poured = '', lost = '', back = '', here = '', unseen = ''] = umber.containers.map(
        ({ id }) => id,
      );
      const sand = await goods(studio.thinnerId, 'BA-2');
      for (const id of [poured, first(sand)]) await service.made(`/containers/${id}/open`);
      const blend = await service.made<BlendView>('/blends', {
        productId: studio.umberId,
        parents: [
          { containerId: poured, microlitres: 3_000 },
          { containerId: first(sand), microlitres: 1_000 },
        ],
        placeId: studio.placeId,
      });
      const session = await walkIn(service, studio);
      await service.made(`/sessions/${session}/completion`, {
        lines: [],
        besides: [
          { containerId: used, drops: 5, reason: 'taken without a scan' },
          { containerId: blend.containerId, drops: 10, reason: 'taken without a scan' },
        ],
        complications: 'none',
        signedBy: studio.ownerId,
      });
      await service.made(`/containers/${used}/finish`);
      await service.made(`/containers/${lost}/count`, { bottle: 'missing' });
      const recallId = await recallOf('BA-1');
      await disposed(recallId, back, {
        kind: 'returned',
        photoId: await keepPhoto(service),
        reference: 'Consignment 9',
      });
      await found(recallId, here, { result: 'found' });
      await found(recallId, poured, { result: 'not found' });

      const { items, totals, blendTotals } = await balanceOf(recallId);
      const [lot, ofBlend] = items;
      if (!lot || !ofBlend) throw new Error('Two lots were expected.');
      expect(lot).toMatchObject({ lotCode: 'BA-1', standing: 'affected', isBlend: false });
      expect(figuresOf(lot)).toEqual({
        received: [6, 60_000],
        used: [0, 200],
        emptied: [1, 9_800],
        blended: [0, 3_000],
        returned: [1, 10_000],
        'counted fewer': [1, 10_000],
      });
      expect(lot).toMatchObject({
        onHand: { pieces: 3, microlitres: 27_000 },
        found: { pieces: 1, microlitres: 10_000 },
        cameIn: { pieces: 6, microlitres: 60_000 },
        notAccounted: { pieces: 3, microlitres: 27_000 },
        unexplained: [
          { reason: 'counted fewer', pieces: 1, microlitres: 10_000 },
          { reason: 'not found', pieces: 1, microlitres: 7_000 },
          { reason: 'not looked for', pieces: 1, microlitres: 10_000 },
        ],
        balancedPercent: 50,
        // Three quarters of what was used of the blend: ten drops of 40 µL.
        reachedThroughBlends: { shareMicrolitres: 300 },
      });
      expect(ofBlend).toMatchObject({ lotId: blend.lotId, isBlend: true, standing: 'affected' });
      expect(figuresOf(ofBlend)).toEqual({ produced: [1, 4_000], used: [0, 400] });
      expect(totals).toMatchObject({ lots: 1, balancedPercent: 50, onHand: { pieces: 3 } });
      expect(blendTotals).toMatchObject({ lots: 1, onHand: { pieces: 1, microlitres: 3_600 } });

      const behind = (kind: string, query = '') =>
        service.seen<BalanceMovementPageView>(
          `/recalls/${recallId}/balance/${lot.lotId}/movements?kind=${kind.replaceAll(' ', '+')}${query}`,
        );
      expect((await behind('emptied')).items).toMatchObject([
        { containerId: used, kind: 'adjusted', pieces: -1 },
      ]);
      expect((await behind('counted fewer')).items).toMatchObject([{ containerId: lost, pieces: -1 }]);
      for (const { kind, movements, pieces } of lot.figures) {
        const { items: moved } = await behind(kind);
        expect(moved, kind).toHaveLength(movements);
        expect(Math.abs(moved.reduce((sum, movement) => sum + movement.pieces, 0)), kind).toBe(pieces);
      }
      const page = await behind('received', '&limit=4');
      const rest = await behind('received', `&limit=4&after=${page.next}`);
      expect([page.items.length, rest.items.length, rest.next]).toEqual([4, 2, null]);
      expect(unseen).not.toBe('');
      const path = `/recalls/${recallId}/balance/${sand.lot.id}/movements`;
      expect((await service.get(path)).status).toBe(404);
      const one = await service.seen<RecallBalanceView>(`/recalls/${recallId}/balance?limit=1`);
      const other = await service.seen<RecallBalanceView>(
        `/recalls/${recallId}/balance?limit=1&after=${one.next}`,
      );
      expect([...one.items, ...other.items]).toEqual(items);
      expect(other.next).toBeNull();
      expect((await service.get(`/recalls/${recallId}/balance?after=${sand.lot.id}`)).status).toBe(400);
    });

    it('is whole when everything was found, and says what boxes of the lot only handed each other', async () => {
      const box = first(await goods(studio.linerId, 'BA-3', 20));
      const { newContainer } = await service.made<{ newContainer: { id: string } }>(
        `/containers/${box}/move`,
        { placeId: await placeOf('treatment room'), pieces: 8 },
      );
      // Three too many in one, three too few in the other: together nothing is missing.
      await service.made(`/containers/${box}/count`, { pieces: 9 });
      await service.made(`/containers/${newContainer.id}/count`, { pieces: 11 });
      const recallId = await recallOf('BA-3');
      for (const id of [box, newContainer.id]) await found(recallId, id, { result: 'found' });
      const [lot] = (await balanceOf(recallId)).items;
      if (!lot) throw new Error('A lot was expected.');
      expect(figuresOf(lot)).toEqual({
        received: [20, 0],
        'moved between boxes': [0, 0],
        'counted more': [3, 0],
        'counted fewer': [3, 0],
      });
      expect(lot).toMatchObject({ unexplained: [], notAccounted: { pieces: 0 }, balancedPercent: 100 });
    });

    it('takes what was reversed off its figure', async () => {
      const box = first(await goods(studio.linerId, 'BA-4', 20));
      const { movementIds } = await service.made<{ movementIds: string[] }>(`/containers/${box}/count`, {
        pieces: 15,
      });
      await service.made(`/movements/${movementIds[0]}/reversal`, { reason: 'counted another box' });
      const recallId = await recallOf('BA-4');
      const [lot] = (await balanceOf(recallId)).items;
      if (!lot) throw new Error('A lot was expected.');
      expect(lot.figures.find(({ kind }) => kind === 'counted fewer')).toMatchObject({
        pieces: 0,
        movements: 2,
      });
      expect(lot.unexplained).toEqual([{ reason: 'not looked for', pieces: 20, microlitres: 0 }]);
    });
  });

  describe('the balance across studios', () => {
    it('names the other end, what got lost on the way, and takes off what was called back', async () => {
      const sister = await studioOfSameChain(service);
      const there = (path: string, body: object) =>
        service.made<{ id: string }>(`${service.url}/api/v1/studios/${sister.studioId}${path}`, body, {
          authorization: `Bearer ${sister.token}`,
        });
      const box = first(await goods(studio.linerId, 'TR-1', 20));
      const send = (pieces: number) =>
        service.made<TransferView>('/transfers', {
          receiverId: sister.studioId,
          reason: 'They need it more',
          lines: [{ containerId: box, pieces }],
        });
      const back = await send(3);
      await service.made(`/transfers/${back.id}/withdrawal`, {
        reason: 'not needed after all',
        lineIds: back.lines.map(({ id }) => id),
      });
      const sent = await send(8);
      const place = await there('/places', { name: 'Shelf of liners', kind: 'shelf' });
      await there(`/transfers/${sent.id}/arrival`, {
        reason: 'two were missing',
        lines: sent.lines.map(({ id }) => ({
          lineId: id,
          pieces: 6,
          placeId: place.id,
        })),
      });
      const inTransit = await send(1);
      expect(inTransit.lines).toHaveLength(1);

      const recallId = await recallOf('TR-1');
      for (const { containerId } of (await containersOf(recallId)).items) {
        await found(recallId, containerId, { result: 'found' });
      }
      const [lot] = (await balanceOf(recallId)).items;
      if (!lot) throw new Error('A lot was expected.');
      expect(figuresOf(lot)).toEqual({ received: [20, 0], 'transferred out': [9, 0] });
      expect(lot).toMatchObject({
        found: { pieces: 11 },
        notAccounted: { pieces: 2 },
        unexplained: [{ reason: 'lost on the way', pieces: 2 }],
        balancedPercent: 90,
      });
      expect(
        lot.otherEnds
          .map(({ studioName, direction, state, pieces }) => [studioName, direction, state, pieces])
          .sort(),
      ).toEqual([
        ['Sister studio', 'to', 'arrived', 6],
        ['Sister studio', 'to', 'in transit', 1],
      ]);
    });
  });

  describe('the release of a recall hold', () => {
    const recalled = async (code: string) => {
      const { lot } = await goods(studio.umberId, code);
      return service.made<HoldView>('/holds', { lotId: lot.id, kind: 'recall', reason: 'recall notice' });
    };
    const listed = async (id: string) =>
      (await service.seen<OpenHoldPageView>('/holds?limit=200')).items.find((hold) => hold.id === id);

    it('needs a photo where one person works alone, and says so', async () => {
      const { id } = await recalled('RE-1');
      const reason = 'another batch, by the letter of the maker';
      expect(await refused(`/holds/${id}/release`, { reason })).toEqual([409, 'second-person-needed']);
      await service.made(`/holds/${id}/release-requests`, { reason });
      expect(await refused(`/holds/${id}/release`, { reason })).toEqual([409, 'second-person-needed']);
      const photoId = await keepPhoto(service);
      const asked = await service.made<HoldView>(`/holds/${id}/release-requests`, { reason, photoId });
      expect(asked).toMatchObject({
        releasedAt: null,
        releaseRequest: { photoId, personId: studio.ownerId },
      });
      expect(await listed(id)).toMatchObject({ releaseRequest: { reason, photoId } });
      const released = await service.made<HoldView>(`/holds/${id}/release`, { reason });
      expect(released).toMatchObject({ releaseSeenBy: 'photo', releaseRequest: { photoId } });
      const [row] = await sql.rows<{ request_id: string }>(
        'SELECT request_id FROM hold_release WHERE hold_id = $1',
        [id],
      );
      expect(row?.request_id).toBe(released.releaseRequest?.id);
      expect(await refused(`/holds/${id}/release-requests`, { reason })).toEqual([409, 'wrong-state']);
    });

    it('is asked for by one and done by another where there are two', async () => {
      const manager = await personOfRole(service, 'manager');
      const { id } = await recalled('RE-2');
      const photoId = await keepPhoto(service);
      const reason = 'another batch';
      await service.made(`/holds/${id}/release-requests`, { reason, photoId });
      // A photo does not stand for somebody who is there.
      expect(await refused(`/holds/${id}/release`, { reason })).toEqual([409, 'second-person-needed']);
      const released = await service.post<HoldView>(`/holds/${id}/release`, { reason }, byCookie(manager));
      expect(released.status, JSON.stringify(released.body)).toBe(201);
      expect(released.body).toMatchObject({
        releaseSeenBy: 'second person',
        releaseRequest: { personId: studio.ownerId },
      });
    });

    it('is of two only for what is recalled', async () => {
      const { lot } = await goods(studio.umberId, 'RE-3');
      const hold = await service.made<HoldView>('/holds', {
        lotId: lot.id,
        kind: 'quarantine',
        reason: 'doubt',
      });
      const reason = 'looked at, sound';
      expect(await refused(`/holds/${hold.id}/release-requests`, { reason })).toEqual([409, 'wrong-state']);
      expect(await service.made<HoldView>(`/holds/${hold.id}/release`, { reason })).toMatchObject({
        releaseSeenBy: null,
        releaseRequest: null,
      });
    });

    it('follows a decision on the recall by itself', async () => {
      const { lot } = await goods(studio.umberId, 'RE 4');
      const recallId = await recallOf('RE-4');
      expect((await service.seen<LotView>(`/lots/${lot.id}`)).holds).toMatchObject([{ kind: 'recall' }]);
      await service.made(`/recalls/${recallId}/lots/${lot.id}/decisions`, {
        decision: 'not affected',
        reason: 'The label says another year',
      });
      expect((await service.seen<LotView>(`/lots/${lot.id}`)).holds).toMatchObject([
        { releaseReason: expect.stringContaining('The label says another year') },
      ]);
    });
  });

  it('keeps the balance of every recall as plain SQL has it', async () => {
    const recalls = await sql.rows<{ id: string }>('SELECT id FROM recall WHERE studio_id = $1', [
      service.studioId,
    ]);
    expect(recalls.length).toBeGreaterThan(5);
    for (const { id } of recalls) {
      for (const { lotId, onHand, figures } of (await balanceOf(id)).items) {
        const [sum] = await sql.rows<{ pieces: number; microlitres: number; movements: number }>(
          `SELECT sum(pieces) AS pieces, sum(microlitres) AS microlitres, count(*) AS movements
           FROM movement WHERE studio_id = $1 AND lot_id = $2`,
          [service.studioId, lotId],
        );
        const movements = figures.reduce((count, figure) => count + figure.movements, 0);
        expect({ ...onHand, movements }).toEqual(sum);
      }
    }
  });
});
