import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { AlertPageView } from '../../src/alerts/alerts.views.js';
import type {
  ContainerPageView,
  ContainerPickView,
  ShownContainerView,
} from '../../src/stock/container-list.views.js';
import type { ContainerChangeView } from '../../src/stock/container-operations.views.js';
import type { DeliveryView } from '../../src/stock/deliveries.views.js';
import type { OpenHoldPageView } from '../../src/stock/holds.views.js';
import { Ledger } from '../../src/stock/ledger.service.js';
import type { LevelView, StockLevelsView } from '../../src/stock/levels.views.js';
import type { LotPageView, LotView } from '../../src/stock/lot-list.views.js';
import { inTransaction } from '../support/bare-stock.js';
import { releaseAlone } from '../support/photos.js';
import { type ProblemBody, type RunningService, strictestEngine } from '../support/service.js';
import { startStudio } from '../support/shared-service.js';
import { dayAhead, daysAgo, StockedStudio } from '../support/stocked-studio.js';
import { Store } from '../support/store.js';

describe.each(strictestEngine)('stock on %s', (engine) => {
  let service: RunningService;
  let studio: StockedStudio;
  let brown: string;
  let liner: string;

  beforeAll(async () => {
    service = await startStudio(engine);
    studio = new StockedStudio(service);
    brown = await studio.product({ name: 'Umber' });
    liner = await studio.product({
      name: 'Liner 7',
      kind: 'cartridge',
      notation: '1207RLMT',
      taper: 'medium',
      machineFit: 'universal',
    });
  });
  afterAll(() => service.dispose());

  const lot = (lotId: string) => service.seen<LotView>(`/lots/${lotId}`);
  const container = (id: string) => service.seen<ShownContainerView>(`/containers/${id}`);
  const onHand = ({ massBalance }: LotView) => ({
    pieces: massBalance.reduce((sum, term) => sum + term.pieces, 0),
    microlitres: massBalance.reduce((sum, term) => sum + term.microlitres, 0),
  });

  /** What the audit log notes of the last action of its kind. */
  const lastNotes = async (action: string): Promise<unknown> => {
    const store = await Store.open(service.dataFolder, service.databaseUrl);
    const [entry] = await store.database
      .read<{ payload: string }>(
        'SELECT payload FROM audit_entry WHERE studio_id = $1 AND action = $2 ORDER BY sequence DESC LIMIT 1',
        [service.studioId, action],
      )
      .finally(() => store.close());
    return JSON.parse(entry?.payload ?? '{}');
  };

  const openAlerts = async (subjectId: string) => {
    const { items } = await service.seen<AlertPageView>('/alerts?limit=200');
    return items.filter((alert) => alert.subjectId === subjectId).map(({ kind }) => kind);
  };

  /** Lays what carries these labels out for a new session. */
  const layOut = async (labels: string[]) => {
    const [artist] = await service.seen<{ id: string }[]>('/people');
    const client = await service.made<{ id: string }>('/clients', { name: 'Ida Sommer' });
    const procedure = await service.made<{ id: string }>('/procedures', {
      name: `Powder brows ${uuidv7()}`,
      bodyPlace: 'brows',
    });
    const session = await service.made<{ id: string }>('/sessions/walk-in', {
      clientId: client.id,
      artistId: artist?.id,
      procedureId: procedure.id,
      visitKind: 'first session',
    });
    for (const symbol of labels) {
      const scan = { symbol, another: true };
      const { verdict } = await service.made<{ verdict: string }>(`/sessions/${session.id}/scans`, scan);
      if (!['admitted', 'warned'].includes(verdict)) throw new Error(`The scan was ${verdict}.`);
    }
    return { sessionId: session.id, artistId: artist?.id };
  };

  describe('opening', () => {
    it('opens a bottle on the day it was opened, which may be long ago', async () => {
      const bottle = await studio.receiveOne(brown, { code: 'OPEN-1' });
      const openedAt = daysAgo(400);
      const { container: opened, warnings } = await studio.record(bottle, 'open', { occurredAt: openedAt });
      expect(opened).toMatchObject({ state: 'opened', openedAt, life: { status: 'open too long' } });
      expect(warnings.join(' ')).toContain('open too long');
    });

    it('opens a held bottle with a warning, since opening is a fact', async () => {
      const bottle = await studio.receiveOne(brown, { code: 'OPEN-2' });
      await service.made('/holds', { containerId: bottle, kind: 'recall', reason: 'recall notice' });
      const { container: opened, warnings } = await studio.record(bottle, 'open');
      expect(opened.state).toBe('opened');
      expect(warnings).toEqual([expect.stringContaining('recalled')]);
    });

    it('does not open twice, and corrects the day instead', async () => {
      const bottle = await studio.receiveOne(brown, { code: 'OPEN-3' });
      await studio.record(bottle, 'open');
      const again = await service.post<ProblemBody>(`/containers/${bottle}/open`);
      expect(again).toMatchObject({ status: 409, body: { code: 'wrong-state' } });
      const openedAt = daysAgo(20);
      const corrected = await studio.record(bottle, 'correct-opened-date', {
        openedAt,
        reason: 'opened earlier',
      });
      expect(corrected.container.openedAt).toBe(openedAt);
      expect(await lastNotes('stock.correct-opened-date')).toMatchObject({
        reason: 'opened earlier',
        openedAt,
      });
    });

    it('is taken back with its reason while nothing was taken of the bottle', async () => {
      const bottle = await studio.receiveOne(brown, { code: 'OPEN-6' });
      const { container: opened } = await studio.record(bottle, 'open');
      const { container: sealed } = await studio.record(bottle, 'undo-opening', { reason: 'the other one' });
      expect(sealed).toMatchObject({ state: 'sealed', openedAt: null });
      expect(await lastNotes('stock.undo-opening')).toMatchObject({
        reason: 'the other one',
        openedAtBefore: opened.openedAt,
      });
      const again = await service.post<ProblemBody>(`/containers/${bottle}/undo-opening`, { reason: 'x' });
      expect(again).toMatchObject({ status: 409, body: { code: 'wrong-state' } });
    });

    it('stands once the bottle lies on a tray, and once something was used of it', async () => {
      const line = await studio.receive(brown, { code: 'OPEN-7' });
      const bottle = line.containers[0]?.id ?? '';
      await studio.record(bottle, 'open');
      const { sessionId, artistId } = await layOut([line.containers[0]?.labelCode ?? '']);
      const undo = () => service.post<ProblemBody>(`/containers/${bottle}/undo-opening`, { reason: 'x' });
      expect((await undo()).body.detail).toContain('tray');
      await service.made(`/sessions/${sessionId}/completion`, {
        lines: [],
        besides: [{ containerId: bottle, drops: 2, reason: 'from the bottle' }],
        complications: null,
        signedBy: artistId,
      });
      expect((await undo()).body.detail).toContain('Something was taken');
      expect((await container(bottle)).state).toBe('opened');
    });

    it('tells where the opened life ends, also when the label ends it earlier', async () => {
      const useBy = dayAhead(20);
      const bottle = await studio.receiveOne(brown, { code: 'OPEN-8', useBy });
      expect((await container(bottle)).life.openedLifeLastDay).toBeNull();
      const { life } = (await studio.record(bottle, 'open')).container;
      expect(life).toMatchObject({ lastDay: useBy, boundBy: 'use-by' });
      expect((life.openedLifeLastDay ?? '') > dayAhead(150)).toBe(true);
    });

    it('does not open a box', async () => {
      const box = await studio.receiveOne(liner, { code: 'OPEN-4', quantity: 20 });
      expect((await service.post(`/containers/${box}/open`)).status).toBe(409);
    });

    it('opens once when the request is repeated', async () => {
      const bottle = await studio.receiveOne(brown, { code: 'OPEN-5' });
      const id = uuidv7();
      const first = await studio.record(bottle, 'open', { id });
      const second = await studio.record(bottle, 'open', { id });
      expect(second).toEqual(first);
    });
  });

  describe('leaving', () => {
    it('writes off what the book still shows of an emptied bottle', async () => {
      const line = await studio.receive(brown, { code: 'END-1' });
      const bottle = line.containers[0]?.id ?? '';
      await studio.record(bottle, 'open');
      const finished = await studio.record(bottle, 'finish');
      expect(finished.container).toMatchObject({ state: 'finished', pieces: 0, microlitres: 0 });
      const seen = await lot(line.lot.id);
      expect(seen.movements[0]).toMatchObject({ kind: 'adjusted', pieces: -1, reason: 'empty' });
      expect(onHand(seen)).toEqual({ pieces: 0, microlitres: 0 });
    });

    it('discards a bottle whole and brings it back opened when that was a mistake', async () => {
      const line = await studio.receive(brown, { code: 'END-2' });
      const bottle = line.containers[0]?.id ?? '';
      const { container: opened } = await studio.record(bottle, 'open');
      const discarded = await studio.record(bottle, 'discard', { reason: 'dropped' });
      expect(discarded.container).toMatchObject({ state: 'discarded', pieces: 0 });
      const back = await service.made<ContainerChangeView>(
        `/movements/${discarded.movementIds[0]}/reversal`,
        { reason: 'the other bottle was meant' },
      );
      expect(back.container).toMatchObject({
        state: 'opened',
        openedAt: opened.openedAt,
        pieces: 1,
        microlitres: 15_000,
      });
      const twice = await service.post<ProblemBody>(`/movements/${discarded.movementIds[0]}/reversal`, {
        reason: 'again',
      });
      expect(twice).toMatchObject({ status: 409, body: { code: 'wrong-state' } });
      expect(onHand(await lot(line.lot.id))).toEqual({ pieces: 1, microlitres: 15_000 });
    });

    it('wastes pieces of a box, never more than the book shows', async () => {
      const box = await studio.receiveOne(liner, { code: 'END-3', quantity: 20 });
      const wasted = await studio.record(box, 'waste', { pieces: 3, reason: 'blister torn' });
      expect(wasted.container.pieces).toBe(17);
      const tooMany = await service.post<ProblemBody>(`/containers/${box}/waste`, {
        pieces: 18,
        reason: 'blister torn',
      });
      expect(tooMany).toMatchObject({ status: 409, body: { code: 'not-enough-stock' } });
      expect((await container(box)).pieces).toBe(17);
    });

    it('sends some pieces back, then all', async () => {
      const box = await studio.receiveOne(liner, { code: 'END-4', quantity: 10 });
      const some = await studio.record(box, 'return', { pieces: 4, reason: 'wrong size' });
      expect(some.container).toMatchObject({ pieces: 6, state: 'sealed' });
      const all = await studio.record(box, 'return', { reason: 'wrong size' });
      expect(all.container).toMatchObject({ pieces: 0, state: 'discarded' });
    });

    it('refuses to reverse a receipt of which something is gone', async () => {
      const line = await studio.receive(liner, { code: 'END-5', quantity: 10 });
      const box = line.containers[0]?.id ?? '';
      const { movementIds } = await studio.record(box, 'waste', { pieces: 1, reason: 'dropped' });
      const received = (await lot(line.lot.id)).movements.find(({ kind }) => kind === 'received');
      const path = `/movements/${received?.id}/reversal`;
      expect(await service.post(path, { reason: 'never came' })).toMatchObject({
        status: 409,
        body: { code: 'not-enough-stock' },
      });
      await service.made(`/movements/${movementIds[0]}/reversal`, { reason: 'was not dropped' });
      const reversed = await service.made<ContainerChangeView>(path, { reason: 'never came' });
      expect(reversed.container).toMatchObject({ pieces: 0, state: 'discarded' });
      const seen = await lot(line.lot.id);
      expect(onHand(seen)).toEqual({ pieces: 0, microlitres: 0 });
      expect(seen.movements).toHaveLength(4);
    });

    it('leaves what a session booked to the session', async () => {
      const line = await studio.receive(liner, { code: 'END-8', quantity: 10 });
      const containerId = line.containers[0]?.id ?? '';
      const sessionId = uuidv7();
      const store = await Store.open(service.dataFolder, service.databaseUrl);
      const { studioId } = service;
      const actor = {
        studioId,
        chainId: '',
        timeZone: 'UTC',
        personId: null,
        via: 'system' as const,
        seesClients: false,
      };
      const [used] = await inTransaction(store, actor, (transaction) =>
        new Ledger().book(transaction, [
          {
            lotId: line.lot.id,
            containerId,
            kind: 'used',
            pieces: 1,
            microlitres: 0,
            sessionId,
            occurredAt: transaction.recordedAt,
          },
        ]),
      ).finally(() => store.close());
      const refused = await service.post<ProblemBody>(`/movements/${used?.id}/reversal`, {
        reason: 'not used',
      });
      expect(refused).toMatchObject({ status: 409, body: { code: 'wrong-state' } });
      expect(refused.body.detail).toContain('Amend the session');
      expect((await container(containerId)).pieces).toBe(9);
    });

    it('keeps expired stock for practice, never what is recalled or still good', async () => {
      const old = await studio.receive(brown, { code: 'END-6', useBy: '2020-01', quantity: 2 });
      const [one, other] = old.containers.map(({ id }) => id);
      const kept = await studio.record(one ?? '', 'keep-for-practice');
      expect(kept.container.state).toBe('practice only');
      await service.made('/holds', { lotId: old.lot.id, kind: 'recall', reason: 'recall notice' });
      const recalled = await service.post<ProblemBody>(`/containers/${other}/keep-for-practice`);
      expect(recalled).toMatchObject({ status: 409, body: { code: 'wrong-state' } });
      expect(recalled.body.detail).toContain('recalled');
      const discarded = await studio.record(one ?? '', 'discard', { reason: 'dried out' });
      const back = await service.made<ContainerChangeView>(
        `/movements/${discarded.movementIds[0]}/reversal`,
        { reason: 'the other tube was meant' },
      );
      expect(back.container).toMatchObject({ state: 'practice only', pieces: 1 });
      const good = await studio.receiveOne(brown, { code: 'END-7' });
      expect((await service.post(`/containers/${good}/keep-for-practice`)).status).toBe(409);
    });
  });

  describe('counting', () => {
    it('follows the count, and audits one without a difference', async () => {
      const line = await studio.receive(liner, { code: 'COUNT-1', quantity: 20 });
      const box = line.containers[0]?.id ?? '';
      expect((await studio.record(box, 'count', { pieces: 18 })).container.pieces).toBe(18);
      expect((await studio.record(box, 'count', { pieces: 21 })).container.pieces).toBe(21);
      expect((await studio.record(box, 'count', { pieces: 21 })).movementIds).toEqual([]);
      const adjusted = (await lot(line.lot.id)).massBalance.find(({ kind }) => kind === 'adjusted');
      expect(adjusted?.pieces).toBe(1);
    });

    it('takes a missing bottle off the book until it turns up again', async () => {
      const bottle = await studio.receiveOne(brown, { code: 'COUNT-2' });
      expect((await studio.record(bottle, 'count', { bottle: 'still there' })).movementIds).toEqual([]);
      const missing = await studio.record(bottle, 'count', { bottle: 'missing' });
      expect(missing.container).toMatchObject({ pieces: 0, microlitres: 0 });
      const found = await service.made<ContainerChangeView>(`/movements/${missing.movementIds[0]}/reversal`, {
        reason: 'stood behind the lamp',
      });
      expect(found.container).toMatchObject({ state: 'sealed', pieces: 1, microlitres: 15_000 });
    });

    it('asks for pieces of a box and for a word about a bottle', async () => {
      const box = await studio.receiveOne(liner, { code: 'COUNT-3', quantity: 5 });
      const bottle = await studio.receiveOne(brown, { code: 'COUNT-4' });
      expect((await service.post(`/containers/${box}/count`, { bottle: 'missing' })).status).toBe(400);
      expect((await service.post(`/containers/${bottle}/count`, { pieces: 1 })).status).toBe(400);
    });
  });

  describe('moving', () => {
    it('moves an opened bottle with its opened date', async () => {
      const bottle = await studio.receiveOne(brown, { code: 'MOVE-1' });
      const { container: opened } = await studio.record(bottle, 'open', { occurredAt: daysAgo(5) });
      const { id: placeId } = await service.made<{ id: string }>('/places', {
        name: 'Case',
        kind: 'travelling case',
      });
      const moved = await studio.record(bottle, 'move', { placeId });
      expect(moved.container).toMatchObject({ placeId, openedAt: opened.openedAt, state: 'opened' });
      expect(await lastNotes('stock.move')).toMatchObject({
        from: { placeId: opened.placeId, ownerId: null },
        to: { placeId, ownerId: null },
      });
      const there = await service.seen<ContainerPageView>(`/containers?placeId=${placeId}`);
      expect(there.items.map(({ id }) => id)).toEqual([bottle]);
    });

    it('moves part of a box into a box of its own, in a pair of movements', async () => {
      const line = await studio.receive(liner, { code: 'MOVE-2', quantity: 20 });
      const box = line.containers[0]?.id ?? '';
      const { id: placeId } = await service.made<{ id: string }>('/places', {
        name: 'Room 2',
        kind: 'treatment room',
      });
      const moved = await studio.record(box, 'move', { placeId, pieces: 5 });
      expect(moved.container.pieces).toBe(15);
      expect(moved.newContainer).toMatchObject({ placeId, pieces: 5, lotId: line.lot.id });
      const seen = await lot(line.lot.id);
      expect(onHand(seen).pieces).toBe(20);
      const half = await service.post<ProblemBody>(`/movements/${moved.movementIds[0]}/reversal`, {
        reason: 'back',
      });
      expect(half).toMatchObject({ status: 409, body: { code: 'wrong-state' } });
    });

    it('refuses a place or an owner of nobody', async () => {
      const bottle = await studio.receiveOne(brown, { code: 'MOVE-3' });
      expect((await service.post(`/containers/${bottle}/move`, { placeId: uuidv7() })).status).toBe(404);
      expect((await service.post(`/containers/${bottle}/move`, { ownerId: uuidv7() })).status).toBe(404);
      expect((await service.post(`/containers/${bottle}/move`)).status).toBe(400);
    });
  });

  describe('pieces on trays', () => {
    const boxWithTwoOut = async (code: string) => {
      const line = await studio.receive(liner, { code, quantity: 10 });
      const [box] = line.containers;
      await layOut([box?.labelCode ?? '', box?.labelCode ?? '']);
      return box?.id ?? '';
    };

    it('stay in their box when part of it is moved or sent back', async () => {
      const box = await boxWithTwoOut('TRAY-1');
      const placeId = await studio.shelf();
      for (const [operation, body] of [
        ['move', { placeId, pieces: 9 }],
        ['return', { pieces: 9, reason: 'wrong size' }],
        ['return', { reason: 'wrong size' }],
      ] as const) {
        const refused = await service.post<ProblemBody>(`/containers/${box}/${operation}`, body);
        expect(refused).toMatchObject({ status: 409, body: { code: 'not-enough-stock' } });
        expect(refused.body.detail).toContain('2 lie on trays');
      }
      expect((await studio.record(box, 'move', { placeId, pieces: 8 })).container.pieces).toBe(2);
    });

    it('count as here beside the pieces counted in the box, and that is said', async () => {
      const box = await boxWithTwoOut('TRAY-2');
      const same = await studio.record(box, 'count', { pieces: 8 });
      expect(same).toMatchObject({ container: { pieces: 10 }, movementIds: [] });
      expect(same.warnings).toEqual([expect.stringContaining('2 more pieces lie on trays')]);
      expect((await studio.record(box, 'count', { pieces: 7 })).container.pieces).toBe(9);
    });

    it('are told beside the box and among the levels', async () => {
      const box = await boxWithTwoOut('TRAY-4');
      expect(await container(box)).toMatchObject({ pieces: 10, onTrays: { lines: 2, pieces: 2 } });
      const { products } = await service.seen<StockLevelsView>('/stock/levels');
      const laidOut = products.find(({ productId }) => productId === liner)?.reservedPieces ?? 0;
      await boxWithTwoOut('TRAY-5');
      const after = await service.seen<StockLevelsView>('/stock/levels');
      expect(after.products.find(({ productId }) => productId === liner)?.reservedPieces).toBe(laidOut + 2);
    });

    it('are missing there when they are thrown away, which is recorded with a warning', async () => {
      const box = await boxWithTwoOut('TRAY-3');
      expect((await studio.record(box, 'waste', { pieces: 8, reason: 'wet' })).warnings).toEqual([]);
      const eaten = await studio.record(box, 'waste', { pieces: 1, reason: 'wet' });
      expect(eaten.container.pieces).toBe(1);
      expect(eaten.warnings).toEqual([expect.stringContaining('lie on trays')]);
    });
  });

  describe('finding', () => {
    it('finds a container by its label as a person types it', async () => {
      const line = await studio.receive(brown, { code: 'FIND-1' });
      const [bottle] = line.containers;
      const typed = bottle?.labelCode
        .toLowerCase()
        .replace(/(.{4})(?=.)/g, '$1-')
        .replaceAll('0', 'o');
      expect((await service.seen<ShownContainerView>(`/containers/by-label/${typed}`)).id).toBe(bottle?.id);
      expect((await service.get(`/containers/by-label/ABC`)).status).toBe(400);
    });

    it('finds lots by any code, in any case, and by what state they are in', async () => {
      const line = await studio.receive(brown, { code: 'Find-2a' });
      const found = await service.seen<LotPageView>('/lots?code=fIND-2A');
      expect(found.items.map(({ id }) => id)).toEqual([line.lot.id]);
      const inState = async (state: string) =>
        (await service.seen<LotPageView>(`/lots?code=FIND-2A&state=${state}`)).items.length;
      expect(await inState('usable')).toBe(1);
      expect(await inState('empty')).toBe(0);
      const { id: holdId } = await service.made<{ id: string }>('/holds', {
        lotId: line.lot.id,
        kind: 'quarantine',
        reason: 'doubt',
      });
      expect(await inState('usable')).toBe(0);
      expect(await inState('held')).toBe(1);
      await service.made(`/holds/${holdId}/release`, { reason: 'looked at, sound' });
      expect(await inState('usable')).toBe(1);
      await studio.record(line.containers[0]?.id ?? '', 'discard', { reason: 'leaks' });
      expect(await inState('empty')).toBe(1);
    });

    it('finds lots of which something has to be used soon, by the days of the studio', async () => {
      const { useByNearDays } = await service.seen<{ useByNearDays: number }>('');
      await studio.receive(brown, { code: 'SOON-1', useBy: dayAhead(useByNearDays - 1), quantity: 2 });
      await studio.receive(brown, { code: 'SOON-2', useBy: dayAhead(useByNearDays + 2) });
      const soon = (code: string) =>
        service.seen<LotPageView>(`/lots?code=${code}&state=${encodeURIComponent('ending soon')}`);
      expect((await soon('SOON-1')).items).toMatchObject([
        { quantities: { usablePieces: 2, endingSoonPieces: 2 } },
      ]);
      expect((await soon('SOON-2')).items).toEqual([]);
    });

    it('names the delivery in which a lot arrived', async () => {
      const { lot: received } = await studio.receive(brown, { code: 'FIND-9', quantity: 3 });
      const [delivery, ...further] = (await lot(received.id)).deliveries;
      expect(delivery).toMatchObject({ origin: 'gift or sample', quantityPieces: 3, supplierName: null });
      expect(further).toEqual([]);
      const shown = await service.seen<DeliveryView>(`/deliveries/${delivery?.deliveryId}`);
      expect(shown.lines).toMatchObject([{ lotId: received.id }]);
    });

    it('walks all lots page by page, each once', async () => {
      const all = await service.seen<LotPageView>('/lots');
      const seen: string[] = [];
      for (let next: string | null = ''; next !== null; ) {
        const page: LotPageView = await service.seen(`/lots?limit=4${next === '' ? '' : `&after=${next}`}`);
        seen.push(...page.items.map(({ id }) => id));
        next = page.next;
      }
      expect(seen).toEqual(all.items.map(({ id }) => id));
      expect(new Set(seen).size).toBe(seen.length);
    });

    it('shows every container of a large lot, a thousand at a time', async () => {
      const { lot: received, containers } = await studio.receive(brown, { code: 'FIND-3', quantity: 1_003 });
      const first = await lot(received.id);
      expect(first.containers).toHaveLength(1_000);
      const rest = await service.seen<LotView>(`/lots/${received.id}?containersAfter=${first.nextContainer}`);
      expect(rest.nextContainer).toBeNull();
      const seen = [...first.containers, ...rest.containers].map(({ id }) => id);
      expect(seen).toEqual(containers.map(({ id }) => id).sort());
    });

    it('says what to take first: what is opened, then the first to expire', async () => {
      const sand = await studio.product({ name: 'Sand' });
      const late = await studio.receiveOne(sand, { code: 'PICK-1', useBy: '2099-12-31' });
      const soon = await studio.receiveOne(sand, { code: 'PICK-2', useBy: '2098-12-31' });
      const opened = await studio.receiveOne(sand, { code: 'PICK-3', useBy: '2099-12-31' });
      const expired = await studio.receiveOne(sand, { code: 'PICK-4', useBy: '2020-12-31' });
      await studio.record(opened, 'open');
      const pick = await service.seen<ContainerPickView>(`/containers/pick?productId=${sand}`);
      expect(pick.order.map(({ id }) => id)).toEqual([opened, soon, late]);
      // Goods that come past their date are held on receipt as well.
      expect(pick.leftOut.map(({ container: { id } }) => id)).toEqual([expired]);
      expect(pick.leftOut[0]?.reasons).toContain('expired');
    });
  });

  describe('holds', () => {
    it('is released once, with its reason', async () => {
      const line = await studio.receive(brown, { code: 'HOLD-1' });
      const { id } = await service.made<{ id: string }>('/holds', {
        lotId: line.lot.id,
        kind: 'quarantine',
        reason: 'doubt',
        note: 'smells odd',
      });
      expect((await container(line.containers[0]?.id ?? '')).held).toBe(true);
      await service.made(`/holds/${id}/release`, { reason: 'asked the maker' });
      expect((await container(line.containers[0]?.id ?? '')).held).toBe(false);
      const again = await service.post<ProblemBody>(`/holds/${id}/release`, { reason: 'once more' });
      expect(again).toMatchObject({ status: 409, body: { code: 'wrong-state' } });
      expect((await lot(line.lot.id)).holds).toMatchObject([
        { id, note: 'smells odd', releaseReason: 'asked the maker' },
      ]);
    });

    it('stays held while any hold is open', async () => {
      const line = await studio.receive(brown, { code: 'HOLD-2' });
      const bottle = line.containers[0]?.id ?? '';
      const hold = (body: object) => service.made<{ id: string }>('/holds', body);
      const one = await hold({ lotId: line.lot.id, kind: 'recall', reason: 'recall notice' });
      await hold({ containerId: bottle, kind: 'quarantine', reason: 'doubt' });
      await releaseAlone(service, one.id, 'not our lot');
      expect((await container(bottle)).holds).toMatchObject([{ kind: 'quarantine', on: 'container' }]);
    });

    it('is listed while it stands, page by page, the latest first, with what it is on', async () => {
      const line = await studio.receive(brown, { code: 'HOLD-3', quantity: 2 });
      const bottle = line.containers[0]?.id ?? '';
      const hold = (body: object) => service.made<{ id: string }>('/holds', body);
      const onLot = await hold({ lotId: line.lot.id, kind: 'recall', reason: 'recall notice', note: 'seen' });
      const over = await hold({ containerId: bottle, kind: 'quarantine', reason: 'doubt' });
      const onBottle = await hold({ containerId: bottle, kind: 'quarantine', reason: 'broken seal' });
      await service.made(`/holds/${over.id}/release`, { reason: 'looked at, sound' });
      const first = await service.seen<OpenHoldPageView>('/holds?limit=1');
      expect(first.items).toMatchObject([
        {
          ...{ id: onBottle.id, kind: 'quarantine', reason: 'broken seal', note: null },
          ...{ lotId: line.lot.id, containerId: bottle, lotCode: 'HOLD-3', productName: 'Umber' },
          labelCode: line.containers[0]?.labelCode,
        },
      ]);
      const second = await service.seen<OpenHoldPageView>(`/holds?limit=1&after=${first.next}`);
      expect(second.items).toMatchObject([
        { id: onLot.id, note: 'seen', containerId: null, labelCode: null },
      ]);
      expect((await service.get(`/holds?after=${uuidv7()}`)).status).toBe(400);
    });

    it('names a lot or a container, not both, and one of this studio', async () => {
      const hold = { kind: 'recall', reason: 'recall notice' };
      expect((await service.post('/holds', hold)).status).toBe(400);
      expect((await service.post('/holds', { ...hold, lotId: uuidv7() })).status).toBe(404);
      expect((await service.post('/holds', { ...hold, lotId: uuidv7(), containerId: uuidv7() })).status).toBe(
        400,
      );
    });
  });

  describe('levels', () => {
    it('counts only what is usable, by product and by configuration', async () => {
      const fields = {
        kind: 'cartridge',
        notation: '1009M1',
        taper: 'long',
        machineFit: 'universal',
      } as const;
      const one = await studio.product({ name: 'Magnum of one maker', ...fields });
      const other = await studio.product({ name: 'Magnum of another', ...fields });
      await studio.receiveOne(one, { code: 'LEVEL-1', quantity: 10 });
      const held = await studio.receiveOne(one, { code: 'LEVEL-2', quantity: 7 });
      await service.made('/holds', { containerId: held, kind: 'quarantine', reason: 'doubt' });
      await studio.receiveOne(other, { code: 'LEVEL-3', quantity: 5 });
      const { products, configurations } = await service.seen<StockLevelsView>('/stock/levels');
      expect(products.find(({ productId }) => productId === one)).toMatchObject({
        quantities: { usablePieces: 10, heldPieces: 7, onHandPieces: 17 },
        level: null,
        low: false,
      });
      const pool = configurations.find(({ productIds }) => productIds.includes(one));
      expect(pool?.productIds.sort()).toEqual([one, other].sort());
      expect(pool?.quantities.usablePieces).toBe(15);

      const subjectId = pool?.keys[0] ?? '';
      const body = { subjectKind: 'configuration', subjectId, minimumPieces: 15 };
      const level = await service.put<LevelView>('/stock/levels', body);
      expect(level).toMatchObject({ status: 200, body: { minimumPieces: 15, version: 1 } });
      const after = await service.seen<StockLevelsView>('/stock/levels');
      expect(after.configurations.find(({ keys }) => keys.includes(subjectId))?.low).toBe(true);
    });

    it('of a configuration that no cartridge has any more is shown, removed with its version, and alerts nobody', async () => {
      const cartridge = await studio.product({
        name: 'Rare',
        kind: 'cartridge',
        notation: '0605RLMT',
        taper: 'medium',
        machineFit: 'old bayonet',
      });
      const levels = () => service.seen<StockLevelsView>('/stock/levels');
      const poolOf = async () =>
        (await levels()).configurations.find(({ productIds }) => productIds.includes(cartridge));
      const subjectId = (await poolOf())?.keys[0] ?? '';
      const body = { subjectKind: 'configuration', subjectId, minimumPieces: 4 };
      const { body: level } = await service.put<LevelView>('/stock/levels', body);
      expect(await openAlerts(subjectId)).toEqual(['low stock']);
      await service.patch(`/products/${cartridge}`, { version: 1, machineFit: 'new bayonet' });
      const left = (await levels()).configurations.find(({ keys }) => keys.includes(subjectId));
      expect(left).toMatchObject({ productIds: [], level, low: false });
      expect(await openAlerts(subjectId)).toEqual([]);
      const remove = (version: number) =>
        service.send<LevelView & ProblemBody>('DELETE', `/stock/levels/${level.id}`, {
          id: uuidv7(),
          version,
        });
      expect((await remove(2)).body.code).toBe('stale-version');
      expect((await remove(1)).body).toEqual(level);
      expect(await openAlerts(subjectId)).toEqual([]);
      expect((await levels()).configurations.some(({ keys }) => keys.includes(subjectId))).toBe(false);
      expect((await remove(1)).status).toBe(404);
    });

    it('is removed together with its alert', async () => {
      const ochre = await studio.product({ name: 'Ochre' });
      const body = { subjectKind: 'product', subjectId: ochre, minimumPieces: 1 };
      const { body: level } = await service.put<LevelView>('/stock/levels', body);
      expect(await openAlerts(ochre)).toEqual(['low stock']);
      await service.send('DELETE', `/stock/levels/${level.id}`, { id: uuidv7(), version: 1 });
      expect(await openAlerts(ochre)).toEqual([]);
    });

    it('is changed only from the version that stands', async () => {
      const body = { subjectKind: 'product', subjectId: brown, minimumPieces: 2 };
      expect((await service.put<LevelView>('/stock/levels', body)).body.version).toBe(1);
      const blind = await service.put<ProblemBody>('/stock/levels', { ...body, minimumPieces: 3 });
      expect(blind).toMatchObject({ status: 409, body: { code: 'stale-version' } });
      const seen = await service.put<LevelView>('/stock/levels', { ...body, minimumPieces: 3, version: 1 });
      expect(seen.body).toMatchObject({ minimumPieces: 3, version: 2 });
    });

    it('refuses a level of nothing known', async () => {
      const level = (subjectKind: string, subjectId: string) =>
        service.put('/stock/levels', { subjectKind, subjectId, minimumPieces: 1 });
      expect((await level('product', uuidv7())).status).toBe(404);
      expect((await level('configuration', 'no such needle')).status).toBe(404);
    });

    it('shows what to take first with its last day', async () => {
      const sepia = await studio.product({ name: 'Sepia' });
      await studio.receiveOne(sepia, { code: 'TAKE-1', useBy: dayAhead(900) });
      await studio.receiveOne(sepia, { code: 'TAKE-2', useBy: dayAhead(500) });
      const { products } = await service.seen<StockLevelsView>('/stock/levels');
      const [first] = products.find(({ productId }) => productId === sepia)?.toTake ?? [];
      expect(first?.lastDay).toBe(dayAhead(500));
    });
  });

  describe('alerts follow at once', () => {
    const change = async (settings: object) => {
      const { version } = await service.seen<{ version: number }>('');
      const changed = await service.patch('', { version, ...settings });
      if (changed.status !== 200) throw new Error(JSON.stringify(changed.body));
    };

    it('what the studio sets', async () => {
      const { lot: received } = await studio.receive(brown, { code: 'SET-1', useBy: dayAhead(300) });
      await change({ useByNearDays: 400 });
      expect(await openAlerts(received.id)).toEqual(['use-by near']);
      expect(await lastNotes('identity.change-studio')).toMatchObject({
        changes: [{ field: 'useByNearDays', to: 400 }],
      });
      await change({ useByNearDays: 30 });
      expect(await openAlerts(received.id)).toEqual([]);
      const lining = await studio.product({ name: 'No life on its label', openedLife: null });
      const bottle = await studio.receiveOne(lining, { code: 'SET-2' });
      await studio.record(bottle, 'open', { occurredAt: daysAgo(100) });
      await change({ assumedOpenedLife: 'P1M' });
      expect(await openAlerts(bottle)).toEqual(['expired on the shelf']);
      await change({ assumedOpenedLife: null });
      expect(await openAlerts(bottle)).toEqual([]);
    });

    it('the day where the studio is', async () => {
      // Kiritimati is 14 hours ahead of UTC, Pago Pago 11 behind: there is always a day that only one of them is past.
      const dayIn = (timeZone: string) => new Date().toLocaleDateString('en-CA', { timeZone });
      const useBy = dayIn('Pacific/Pago_Pago');
      await change({ timeZone: 'Pacific/Pago_Pago' });
      const { lot: received } = await studio.receive(brown, { code: 'SET-3', useBy });
      expect(await openAlerts(received.id)).toEqual(['use-by near']);
      await change({ timeZone: 'Pacific/Kiritimati' });
      expect(await openAlerts(received.id)).toEqual(['expired on the shelf']);
      await change({ timeZone: 'UTC' });
    });

    it('a corrected opened life, with old and new in the audit log', async () => {
      const product = await studio.product({ name: 'Shorter than thought' });
      const bottle = await studio.receiveOne(product, { code: 'LIFE-1' });
      await studio.record(bottle, 'open', { occurredAt: daysAgo(100) });
      expect(await openAlerts(bottle)).toEqual([]);
      await service.patch(`/products/${product}`, { version: 1, openedLife: 'P1M' });
      expect(await openAlerts(bottle)).toEqual(['expired on the shelf']);
      expect(await lastNotes('catalogue.change-product')).toMatchObject({
        changes: [{ field: 'openedLife', from: 'P6M', to: 'P1M' }],
      });
    });

    it('the archive: of what is not offered any more nothing is low', async () => {
      const product = await studio.product({ name: 'Going away' });
      await service.put('/stock/levels', { subjectKind: 'product', subjectId: product, minimumPieces: 1 });
      expect(await openAlerts(product)).toEqual(['low stock']);
      await service.made(`/products/${product}/archive`, { version: 1 });
      expect(await openAlerts(product)).toEqual([]);
      await service.made(`/products/${product}/restore`, { version: 2 });
      expect(await openAlerts(product)).toEqual(['low stock']);
    });

    it('what is declared to stand for each other', async () => {
      const cartridge = (name: string, machineFit: string) =>
        studio.product({ name, kind: 'cartridge', notation: '1015CMLT', taper: 'long', machineFit });
      const [one, other] = [await cartridge('Curved', 'pen'), await cartridge('Curved too', 'rotary')];
      await studio.receiveOne(other, { code: 'EQUAL-1', quantity: 10 });
      const { configurations } = await service.seen<StockLevelsView>('/stock/levels');
      const pool = configurations.find(({ productIds }) => productIds.includes(one));
      const subjectId = pool?.keys[0] ?? '';
      await service.put('/stock/levels', { subjectKind: 'configuration', subjectId, minimumPieces: 5 });
      expect(await openAlerts(subjectId)).toEqual(['low stock']);
      const declared = await service.made<{ id: string }>('/configurations/equivalences', {
        productId: one,
        otherProductId: other,
        reason: 'same needle',
      });
      expect(await openAlerts(subjectId)).toEqual([]);
      await service.made(`/configurations/equivalences/${declared.id}/withdraw`);
      expect(await openAlerts(subjectId)).toEqual(['low stock']);
    });
  });

  it('never goes below zero when many take the last pieces at once', async () => {
    const line = await studio.receive(liner, { code: 'RACE-1', quantity: 5 });
    const box = line.containers[0]?.id ?? '';
    const answers = await Promise.all(
      Array.from({ length: 12 }, () =>
        service.post(`/containers/${box}/waste`, { pieces: 1, reason: 'dropped' }),
      ),
    );
    expect(answers.filter(({ status }) => status === 201)).toHaveLength(5);
    expect(answers.filter(({ status }) => status === 409)).toHaveLength(7);
    expect((await container(box)).pieces).toBe(0);
  });
});
