import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { AlertPageView } from '../../src/alerts/alerts.views.js';
import { localDay } from '../../src/identity/local-day.js';
import type {
  ArrivalView,
  ReceivingStudioView,
  TransferPageView,
  TransferView,
} from '../../src/stock/transfers/transfers.views.js';
import { inconsistencies } from '../support/consistency.js';
import { releaseAlone } from '../support/photos.js';
import { PlainSql } from '../support/plain-sql.js';
import { type ProblemBody, strictestEngine } from '../support/service.js';
import { dayAhead, daysAgo } from '../support/stocked-studio.js';
import { type StudioEnd, TwoStudios } from '../support/two-studios.js';

interface Refusal extends ProblemBody {
  lines?: { lineNumber: number; containerId?: string; lineId?: string; message: string }[];
}

describe.each(strictestEngine)('transfers between studios of a chain on %s', (engine) => {
  let studios: TwoStudios;
  let here: StudioEnd;
  let there: StudioEnd;
  let umber: string;
  let liner: string;

  beforeAll(async () => {
    studios = await TwoStudios.start(engine);
    ({ here, there } = studios);
    umber = await here.product({ name: 'Umber' });
    liner = await here.product({ name: 'Liner', kind: 'cartridge' });
  });
  afterAll(async () => {
    const sql = await PlainSql.connect(here.service, 'read');
    try {
      expect(await inconsistencies(sql)).toEqual([]);
    } finally {
      await sql.close();
      await studios.dispose();
    }
  });

  const bottle = async (code: string, useBy?: string) => {
    const { lot, containers } = await here.receive(umber, { code, ...(useBy && { useBy }) });
    return { lotId: lot.id, id: containers[0]?.id ?? '', labelCode: containers[0]?.labelCode ?? '' };
  };
  const box = async (code: string, quantity: number) => {
    const { lot, containers } = await here.receive(liner, { code, quantity });
    return { lotId: lot.id, id: containers[0]?.id ?? '', labelCode: containers[0]?.labelCode ?? '' };
  };
  /** But for what says that held goods are still there: that has specs of its own. */
  const alertsOf = async (studio: StudioEnd, subjectId: string) => {
    const { items } = await studio.service.seen<AlertPageView>('/alerts?limit=200');
    return items.filter((alert) => alert.subjectId === subjectId && alert.kind !== 'held stock on hand');
  };
  const refusedArrival = async (transfer: TransferView, lines: object[]) =>
    there.service.post<Refusal>(`/transfers/${transfer.id}/arrival`, { lines });
  const withdrawn = (transfer: TransferView, more: object = {}) =>
    here.service.post<TransferView & Refusal>(`/transfers/${transfer.id}/withdrawal`, {
      reason: 'It never left',
      ...more,
    });

  /** Who is treated by whom, and how: what a session here needs. */
  const visit = async () => {
    const { service } = here;
    const [person] = await service.seen<{ id: string }[]>('/people');
    const client = await service.made<{ id: string }>('/clients', { name: 'Ines Arvid' });
    const procedure = await service.made<{ id: string }>('/procedures', {
      name: `Brows ${uuidv7()}`,
      bodyPlace: 'brows',
    });
    const session = { clientId: client.id, artistId: person?.id, procedureId: procedure.id };
    return { ...session, visitKind: 'first session' };
  };

  describe('a bottle on its way', () => {
    it('is on neither shelf, seen by both, and arrives opened with its date and what is left of it', async () => {
      const { id, lotId, labelCode } = await bottle('WAY-1');
      // At noon it is the same day in both studios.
      const openedAt = `${daysAgo(3).slice(0, 10)}T12:00:00.000Z`;
      await here.record(id, 'open', { occurredAt: openedAt });
      const before = await here.container(id);
      const sent = await here.send(there, [{ containerId: id }]);
      expect(sent).toMatchObject({
        direction: 'out',
        senderId: here.service.studioId,
        receiverId: there.service.studioId,
        lineCount: 1,
        linesInTransit: 1,
        lines: [
          { productName: 'Umber', labelCode, code: 'WAY-1', openedAt, lineState: 'in transit', holds: [] },
        ],
      });
      expect(await here.container(id)).toMatchObject({ state: 'discarded', pieces: 0, microlitres: 0 });
      expect((await here.lot(lotId)).quantities).toMatchObject({ onHandPieces: 0, usablePieces: 0 });
      const expected = await there.transfer(sent.id);
      expect(expected).toEqual({ ...sent, direction: 'in' });

      const { transfer, containers, warnings } = await there.arrive(expected);
      expect(warnings).toEqual([]);
      expect(containers).toHaveLength(1);
      const [arrived] = containers;
      expect(arrived).toMatchObject({
        state: 'opened',
        openedAt,
        lotCode: 'WAY-1',
        useBy: before.useBy,
        pieces: 1,
        microlitres: 15_000,
        held: false,
        life: { lastDay: before.life.lastDay, openedLifeFrom: 'label' },
      });
      expect(arrived?.labelCode).not.toBe(labelCode);
      expect(transfer).toMatchObject({ linesInTransit: 0, lines: [{ lineState: 'arrived' }] });
      expect((await here.transfer(sent.id)).lines[0]?.balance).toEqual({
        sent: { pieces: 1, microlitres: 15_000 },
        inTransit: { pieces: 0, microlitres: 0 },
        arrived: { pieces: 1, microlitres: 15_000 },
        lost: { pieces: 0, microlitres: 0 },
        back: { pieces: 0, microlitres: 0 },
      });

      const lotThere = await there.lot(arrived?.lotId ?? '');
      const line = sent.lines[0];
      expect(lotThere).toMatchObject({
        origin: 'transfer',
        codes: [{ kind: 'lot', code: 'WAY-1' }],
        massBalance: [{ kind: 'transferred in', pieces: 1, microlitres: 15_000 }],
        cameFrom: [
          {
            transferId: sent.id,
            lineId: line?.id,
            studioId: here.service.studioId,
            lotId,
            fromContainerId: id,
            intoContainerId: arrived?.id,
            pieces: 1,
          },
        ],
        wentTo: [],
      });
      expect(lotThere.movements[0]?.reason).toContain(labelCode);
      expect(await here.lot(lotId)).toMatchObject({
        massBalance: [
          { kind: 'received', pieces: 1 },
          { kind: 'transferred out', pieces: -1, microlitres: -15_000 },
        ],
        cameFrom: [],
        wentTo: [
          {
            transferId: sent.id,
            studioId: there.service.studioId,
            lotId: lotThere.id,
            state: 'arrived',
            pieces: 1,
          },
        ],
      });
    });

    it('joins the lot that is known there by its code and date', async () => {
      const { containers } = await there.receive(umber, { code: 'JOIN-1' });
      const known = await there.container(containers[0]?.id ?? '');
      const { id } = await bottle('JOIN-1');
      const arrival = await there.arrive(await here.send(there, [{ containerId: id }]));
      expect(arrival.containers[0]?.lotId).toBe(known.lotId);
      expect((await there.lot(known.lotId)).quantities.onHandPieces).toBe(2);
    });

    it('becomes a lot of its own where its code is known with another date, and says so', async () => {
      const { lot } = await there.receive(umber, { code: 'DATE-1', useBy: '2098-06-30' });
      const { id } = await bottle('DATE-1');
      const arrival = await there.arrive(await here.send(there, [{ containerId: id }]));
      expect(arrival.containers[0]).toMatchObject({ useBy: '2099-12-31' });
      expect(arrival.containers[0]?.lotId).not.toBe(lot.id);
      expect(arrival.warnings).toEqual([expect.stringContaining('2098-06-30')]);
    });

    it('stays for practice, expired as it is, and waits for no decision there', async () => {
      const { id } = await bottle('PRACTICE-1', dayAhead(-2));
      const holds = (await here.container(id)).holds;
      for (const { holdId } of holds) {
        await here.service.made(`/holds/${holdId}/release`, { reason: 'For practice' });
      }
      await here.record(id, 'keep-for-practice');
      const arrival = await there.arrive(await here.send(there, [{ containerId: id }]));
      expect(arrival.containers).toMatchObject([{ state: 'practice only', held: false }]);
    });

    it('lasts no longer there than here, although the studio there assumes more', async () => {
      const soap = await here.product({ name: 'Sand', openedLife: null });
      const id = await here.receiveOne(soap, { code: 'LIFE-1' });
      await here.record(id, 'open', { occurredAt: daysAgo(10) });
      const before = await here.container(id);
      expect(before.life).toMatchObject({ openedLifeFrom: 'assumed' });
      const settings = await there.service.seen<{ version: number }>('');
      await there.service.patch('', { version: settings.version, assumedOpenedLife: 'P24M' });
      const arrival = await there.arrive(await here.send(there, [{ containerId: id }]));
      expect(arrival.containers[0]?.life).toMatchObject({
        lastDay: before.life.lastDay,
        openedLifeFrom: 'sending studio',
        seen: expect.stringContaining('as counted in the studio it came from'),
      });
      const own = await there.receiveOne(soap, { code: 'LIFE-2' });
      await there.record(own, 'open', { occurredAt: daysAgo(10) });
      const ofItsOwn = await there.container(own);
      expect(ofItsOwn.life.openedLifeFrom).toBe('assumed');
      expect(String(ofItsOwn.life.lastDay) > String(before.life.lastDay)).toBe(true);
      const back = await here.arrive(await there.send(here, [{ containerId: arrival.containers[0]?.id }]));
      expect(back.containers[0]?.life).toMatchObject({ lastDay: before.life.lastDay });
    });

    it('arrives with what was put right here while it was on its way', async () => {
      const { id, lotId } = await bottle('RIGHT-1');
      await here.record(id, 'open', { occurredAt: daysAgo(2) });
      const sent = await here.send(there, [{ containerId: id }]);
      const openedAt = daysAgo(40);
      await here.record(id, 'correct-opened-date', { openedAt, reason: 'Read the label again' });
      const { version } = await here.lot(lotId);
      await here.service.patch(`/lots/${lotId}`, {
        version,
        useBy: '2097-01-31',
        reason: 'Read the label again',
      });
      const expected = await there.transfer(sent.id);
      expect(expected.lines[0]).toMatchObject({ openedAt, useBy: '2097-01-31' });
      const arrival = await there.arrive(expected);
      expect(arrival.containers[0]).toMatchObject({ openedAt, useBy: '2097-01-31' });
    });
  });

  it('a use that is recorded late tells the other end that the bottle was open earlier', async () => {
    const { id } = await bottle('LATE-1');
    await here.record(id, 'open', { occurredAt: daysAgo(2) });
    const sent = await here.send(there, [{ containerId: id }]);
    const occurredAt = daysAgo(30);
    const given = await visit();
    await here.service.made('/sessions/late', {
      ...given,
      source: 'paper',
      occurredAt,
      signedBy: given.artistId,
      uses: [{ containerId: id, knownBy: 'own label', microlitres: 60 }],
    });
    const { containers } = await there.arrive(await there.transfer(sent.id));
    expect(containers).toMatchObject([{ openedAt: occurredAt, microlitres: 15_000 }]);
  });

  describe('pieces of a box', () => {
    it('go with a label of their own there, and those on trays stay', async () => {
      const { id, lotId } = await box('PART-1', 20);
      const session = await here.service.made<{ id: string }>('/sessions/walk-in', await visit());
      const { labelCode } = await here.container(id);
      await here.service.made(`/sessions/${session.id}/scans`, { symbol: labelCode });
      const tooMany = await here.service.post<Refusal>('/transfers', {
        receiverId: there.service.studioId,
        reason: 'All of it',
        lines: [{ containerId: id }],
      });
      expect(tooMany).toMatchObject({ status: 409, body: { code: 'wrong-state' } });
      expect(tooMany.body.detail).toContain('At most 19');
      const sent = await here.send(there, [{ containerId: id, pieces: 8 }]);
      expect(await here.container(id)).toMatchObject({ state: 'sealed', pieces: 12 });
      const arrival = await there.arrive(sent);
      expect(arrival.containers).toMatchObject([{ form: 'box', state: 'sealed', pieces: 8 }]);
      expect((await here.lot(lotId)).massBalance).toEqual([
        { kind: 'received', pieces: 20, microlitres: 0 },
        { kind: 'transferred out', pieces: -8, microlitres: 0 },
      ]);
    });

    it('arrive fewer and damaged as they do: what is missing is lost, what is damaged is put aside', async () => {
      const { id } = await box('FEWER-1', 20);
      const sent = await here.send(there, [{ containerId: id }]);
      const { transfer, containers } = await there.arrive(sent, [
        { pieces: 17, faults: [{ kind: 'damaged package', pieces: 2 }] },
      ]);
      expect(containers).toMatchObject([
        { pieces: 15, held: false },
        { pieces: 2, held: true, holds: [{ reason: 'damaged package', on: 'container' }] },
      ]);
      const [line] = transfer.lines;
      expect(line).toMatchObject({
        lineState: 'arrived',
        balance: {
          sent: { pieces: 20 },
          inTransit: { pieces: 0 },
          arrived: { pieces: 17 },
          lost: { pieces: 3 },
        },
        outcomes: [{ kind: 'arrived', goods: [{ fault: null }, { fault: 'damaged package' }] }],
      });
      const again = await refusedArrival(sent, [
        { lineId: line?.id, pieces: 3, placeId: await there.shelf() },
      ]);
      expect(again).toMatchObject({ status: 409, body: { code: 'wrong-state' } });
      expect(again.body.detail).toContain('turnedUp');

      const found = await there.arrive(sent, [{ pieces: 2, turnedUp: true }]);
      expect(found.containers).toMatchObject([{ pieces: 2 }]);
      expect(found.transfer.lines[0]?.balance).toMatchObject({
        arrived: { pieces: 19 },
        lost: { pieces: 1 },
      });
    });

    it('arrive more than were sent, which is booked as a surplus there', async () => {
      const { id } = await box('MORE-1', 10);
      const sent = await here.send(there, [{ containerId: id }]);
      const { transfer, containers } = await there.arrive(sent, [{ pieces: 11 }]);
      expect(containers).toMatchObject([{ pieces: 11 }]);
      expect(transfer.lines[0]).toMatchObject({
        balance: { arrived: { pieces: 10 }, lost: { pieces: 0 } },
        outcomes: [{ goods: [{ pieces: 10, surplusPieces: 1 }] }],
      });
      const { massBalance } = await there.lot(containers[0]?.lotId ?? '');
      expect(massBalance).toEqual([
        { kind: 'transferred in', pieces: 10, microlitres: 0 },
        { kind: 'adjusted', pieces: 1, microlitres: 0 },
      ]);
    });

    it('are lost altogether when nothing came, and the transfer is closed', async () => {
      const { id, lotId } = await box('GONE-1', 5);
      const sent = await here.send(there, [{ containerId: id }]);
      const { transfer, containers } = await there.arrive(sent, [{ pieces: 0, placeId: undefined }]);
      expect(containers).toEqual([]);
      expect(transfer).toMatchObject({ linesInTransit: 0, lines: [{ lineState: 'lost' }] });
      expect((await here.lot(lotId)).wentTo).toMatchObject([{ state: 'arrived', lotId: null, pieces: 0 }]);
    });

    it('that are not named stay in transit until they arrive', async () => {
      const one = await box('LATER-1', 5);
      const other = await box('LATER-2', 6);
      const sent = await here.send(there, [{ containerId: one.id }, { containerId: other.id }]);
      const [first, second] = await there.arrivedLines(sent);
      const half = await there.service.made<ArrivalView>(`/transfers/${sent.id}/arrival`, { lines: [first] });
      expect(half.transfer).toMatchObject({
        linesInTransit: 1,
        lines: [{ lineState: 'arrived' }, { lineState: 'in transit' }],
      });
      const rest = await there.service.made<ArrivalView>(`/transfers/${sent.id}/arrival`, {
        lines: [second],
      });
      expect(rest.transfer.linesInTransit).toBe(0);
    });
  });

  describe('what may not be used', () => {
    const send = (lines: object[], more: object = {}) =>
      here.service.post<Refusal & TransferView>('/transfers', {
        receiverId: there.service.studioId,
        reason: 'They need it more',
        lines,
        ...more,
      });

    it('is not passed on: every line says why, and nothing is recorded', async () => {
      const held = await bottle('HELD-1');
      await here.service.made('/holds', { kind: 'quarantine', reason: 'doubt', lotId: held.lotId });
      const recalled = await bottle('HELD-2');
      await here.service.made('/holds', {
        kind: 'recall',
        reason: 'recall notice',
        containerId: recalled.id,
      });
      const past = await bottle('HELD-3', dayAhead(2));
      const { version } = await here.lot(past.lotId);
      await here.service.patch(`/lots/${past.lotId}`, {
        version,
        useBy: dayAhead(-1),
        reason: 'Read the label again',
      });
      for (const { holdId } of (await here.container(past.id)).holds) {
        await here.service.made(`/holds/${holdId}/release`, { reason: 'For this test' });
      }
      const tooLong = await bottle('HELD-4');
      await here.record(tooLong.id, 'open', { occurredAt: daysAgo(400) });
      const gone = await bottle('HELD-5');
      await here.record(gone.id, 'discard', { reason: 'Fell down' });
      const empty = await box('HELD-6', 1);
      await here.record(empty.id, 'waste', { pieces: 1, reason: 'Fell down' });
      const fine = await bottle('HELD-7');
      const all = [held, recalled, past, tooLong, gone, empty, fine];
      const refused = await send(all.map(({ id }) => ({ containerId: id })));
      expect(refused).toMatchObject({ status: 409, body: { code: 'wrong-state' } });
      expect(refused.body.lines?.map(({ lineNumber, message }) => [lineNumber, message])).toEqual([
        [1, expect.stringContaining('on hold')],
        [2, expect.stringContaining('recalled')],
        [3, expect.stringContaining('past its use-by')],
        [4, expect.stringContaining('open too long')],
        [5, expect.stringContaining('discarded')],
        [6, expect.stringContaining('nothing is left')],
      ]);
      expect(await here.container(fine.id)).toMatchObject({ state: 'sealed', pieces: 1 });
      expect((await here.lot(fine.lotId)).wentTo).toEqual([]);
    });

    it('is judged by the day on which it was sent, and the hold placed since goes after it', async () => {
      const { id, lotId } = await bottle('JUDGED-1');
      await here.service.made('/holds', { kind: 'recall', reason: 'recall notice', lotId });
      const sent = await here.send(there, [{ containerId: id }], { occurredAt: daysAgo(1) });
      expect(sent.lines[0]?.holds).toEqual([{ kind: 'recall', reason: 'recall notice', on: 'lot' }]);
      const arrival = await there.arrive(sent);
      expect(arrival.containers).toMatchObject([{ held: true, holds: [{ kind: 'recall', on: 'lot' }] }]);
    });

    it('and house blends stay, since a hold on their parents reaches them only here', async () => {
      const settings = await here.service.seen<{ version: number }>('');
      await here.service.patch('', { version: settings.version, houseBlends: 'allowed' });
      const house = await here.product({ name: 'House brown' });
      const parents = await Promise.all(['BLEND-1', 'BLEND-2'].map((code) => bottle(code)));
      for (const { id } of parents) await here.record(id, 'open');
      const blend = await here.service.made<{ containerId: string }>('/blends', {
        productId: house,
        placeId: await here.shelf(),
        parents: parents.map(({ id }) => ({ containerId: id, microlitres: 100 })),
      });
      const refused = await send([{ containerId: blend.containerId }]);
      expect(refused.status).toBe(409);
      expect(refused.body.detail).toContain('house blend');
    });
  });

  describe('a hold', () => {
    it('placed while goods are on their way arrives with them, on the lot or on what came of the container', async () => {
      const { id, lotId } = await bottle('HOLD-1');
      const other = await bottle('HOLD-2');
      const sent = await here.send(there, [{ containerId: id }, { containerId: other.id }]);
      await here.service.made('/holds', { kind: 'recall', reason: 'recall notice', lotId });
      await here.service.made('/holds', { kind: 'quarantine', reason: 'doubt', containerId: other.id });
      const { containers, transfer } = await there.arrive(await there.transfer(sent.id));
      const byCode = new Map(containers.map((one) => [one.lotCode, one]));
      expect(byCode.get('HOLD-1')?.holds).toMatchObject([
        { kind: 'recall', reason: 'recall notice', on: 'lot' },
      ]);
      expect(byCode.get('HOLD-2')?.holds).toMatchObject([
        { kind: 'quarantine', reason: 'doubt', on: 'container' },
      ]);
      expect(transfer.lines.map(({ holds }) => holds.length)).toEqual([1, 1]);
      // It is held there too, so there is nothing to be told.
      for (const { lotId: lot } of containers) expect(await alertsOf(there, lot)).toEqual([]);
    });

    it('that was released while they are on their way does not', async () => {
      const { id, lotId } = await bottle('RELEASED-1');
      const sent = await here.send(there, [{ containerId: id }]);
      const hold = await here.service.made<{ id: string }>('/holds', {
        kind: 'recall',
        reason: 'recall notice',
        lotId,
      });
      await releaseAlone(here.service, hold.id, 'It was another lot');
      const { containers } = await there.arrive(sent);
      expect(containers).toMatchObject([{ held: false }]);
    });

    it('on the lot there holds what joins it', async () => {
      const { lot } = await there.receive(umber, { code: 'THERE-1' });
      await there.service.made('/holds', { kind: 'recall', reason: 'recall notice', lotId: lot.id });
      const { id } = await bottle('THERE-1');
      const { containers } = await there.arrive(await here.send(there, [{ containerId: id }]));
      expect(containers).toMatchObject([{ held: true, lotId: lot.id }]);
    });

    it('placed after they arrived is told there at once, until they hold it too or it is released', async () => {
      const { id, lotId } = await bottle('AFTER-1');
      const { containers } = await there.arrive(await here.send(there, [{ containerId: id }]));
      const lotThere = containers[0]?.lotId ?? '';
      const hold = await here.service.made<{ id: string }>('/holds', {
        kind: 'recall',
        reason: 'recall notice',
        lotId,
      });
      const [alert] = await alertsOf(there, lotThere);
      expect(alert).toMatchObject({
        kind: 'held where it came from',
        subjectKind: 'lot',
        severity: 'urgent',
        facts: { product: 'Umber', lotCode: 'AFTER-1', holdKinds: ['recall'], reasons: ['recall notice'] },
      });
      expect(await alertsOf(here, lotThere)).toEqual([]);
      expect((await there.container(containers[0]?.id ?? '')).held).toBe(false);
      const own = await there.service.made<{ id: string }>('/holds', {
        kind: 'recall',
        reason: 'recall notice',
        lotId: lotThere,
      });
      expect(await alertsOf(there, lotThere)).toEqual([]);
      await releaseAlone(there.service, own.id, 'Released too early');
      expect(await alertsOf(there, lotThere)).toHaveLength(1);
      await releaseAlone(here.service, hold.id, 'It was another lot');
      expect(await alertsOf(there, lotThere)).toEqual([]);
    });

    it('is told of goods that are used up, and to the third studio they were sent on to once it is held in between', async () => {
      const third = await studios.another(here.service);
      const { id, lotId } = await bottle('CHAIN-1');
      const { containers } = await there.arrive(await here.send(there, [{ containerId: id }]));
      const inBetween = containers[0];
      const onward = await third.arrive(await there.send(third, [{ containerId: inBetween?.id }]));
      await here.service.made('/holds', { kind: 'recall', reason: 'recall notice', lotId });
      expect(await alertsOf(there, inBetween?.lotId ?? '')).toHaveLength(1);
      const lotThird = onward.containers[0]?.lotId ?? '';
      expect(await alertsOf(third, lotThird)).toEqual([]);
      await there.service.made('/holds', {
        kind: 'recall',
        reason: 'recall notice',
        lotId: inBetween?.lotId,
      });
      expect(await alertsOf(third, lotThird)).toMatchObject([{ kind: 'held where it came from' }]);
    });

    describe('that is placed in between by something else than a person is told to the third studio at once:', () => {
      /** Goods of a lot there that were sent on, and the lot that they became in the third studio. */
      const sentOn = async (containerId: string | undefined) => {
        const third = await studios.another(here.service);
        const { containers } = await third.arrive(await there.send(third, [{ containerId }]));
        const lotThird = containers[0]?.lotId ?? '';
        expect(await alertsOf(third, lotThird)).toEqual([]);
        return async (reason: string) =>
          expect(await alertsOf(third, lotThird)).toMatchObject([
            { kind: 'held where it came from', facts: { reasons: [reason] } },
          ]);
      };

      it('a recall that arrives with other goods of the lot', async () => {
        const first = await bottle('ONWARD-1');
        const { containers } = await there.arrive(await here.send(there, [{ containerId: first.id }]));
        const expectTold = await sentOn(containers[0]?.id);
        const second = await bottle('ONWARD-1');
        const sent = await here.send(there, [{ containerId: second.id }]);
        await here.service.made('/holds', { kind: 'recall', reason: 'recall notice', lotId: second.lotId });
        const arrived = await there.arrive(await there.transfer(sent.id));
        expect(arrived.containers).toMatchObject([{ lotId: containers[0]?.lotId, held: true }]);
        await expectTold('recall notice');
      });

      it('a date that is put right and has passed', async () => {
        const { lot, containers } = await there.receive(umber, { code: 'ONWARD-2' });
        const expectTold = await sentOn(containers[0]?.id);
        const corrected = await there.service.patch(`/lots/${lot.id}`, {
          version: lot.version,
          useBy: '2026-01-31',
          reason: 'It says so on the bottle',
        });
        expect(corrected.status).toBe(200);
        await expectTold('already past');
      });

      it('such a date that comes with goods which join the lot', async () => {
        const { lot, containers } = await there.receive(umber, { code: 'ONWARD-3' });
        const expectTold = await sentOn(containers[0]?.id);
        await there.service.made('/deliveries', {
          origin: 'gift or sample',
          lines: [
            {
              productId: umber,
              codes: [{ kind: 'lot', code: 'ONWARD-3' }],
              useBy: '2026-01-31',
              quantity: 1,
              placeId: await there.shelf(),
              sameCodeDecision: 'correct recorded date',
            },
          ],
        });
        expect((await there.lot(lot.id)).useBy).toBe('2026-01-31');
        await expectTold('already past');
      });
    });
  });

  describe('calling back', () => {
    it('puts everything back as it was, and the other end can record nothing of it any more', async () => {
      const opened = await bottle('BACK-1');
      await here.record(opened.id, 'open', { occurredAt: daysAgo(1) });
      const part = await box('BACK-2', 10);
      const before = [await here.container(opened.id), await here.container(part.id)];
      const sent = await here.send(there, [{ containerId: opened.id }, { containerId: part.id, pieces: 4 }]);
      const back = await withdrawn(sent);
      expect(back).toMatchObject({
        status: 201,
        body: { linesInTransit: 0, lines: [{ lineState: 'withdrawn' }, { lineState: 'withdrawn' }] },
      });
      const after = [await here.container(opened.id), await here.container(part.id)];
      expect(after.map(({ version: _, ...one }) => one)).toEqual(before.map(({ version: _, ...one }) => one));
      expect((await here.lot(part.lotId)).massBalance).toContainEqual({
        kind: 'transferred out',
        pieces: 0,
        microlitres: 0,
      });
      expect((await here.lot(part.lotId)).wentTo).toMatchObject([{ state: 'withdrawn', lotId: part.lotId }]);
      const arrival = await refusedArrival(sent, await there.arrivedLines(sent));
      expect(arrival).toMatchObject({ status: 409, body: { code: 'wrong-state' } });
      expect(arrival.body.lines).toHaveLength(2);
      expect(arrival.body.lines?.[0]?.message).toContain('called this back');
      expect((await withdrawn(sent)).status).toBe(409);
    });

    it('is refused once anything arrived, but lines that never left can be named alone', async () => {
      const one = await box('BACK-3', 5);
      const other = await box('BACK-4', 6);
      const sent = await here.send(there, [{ containerId: one.id }, { containerId: other.id }]);
      const [first] = await there.arrivedLines(sent);
      await there.service.made(`/transfers/${sent.id}/arrival`, { lines: [first] });
      const refused = await withdrawn(sent);
      expect(refused).toMatchObject({ status: 409, body: { code: 'wrong-state' } });
      expect(refused.body.detail).toContain('Line 1 is recorded as arrived');
      const named = await withdrawn(sent, { lineIds: [sent.lines[1]?.id] });
      expect(named).toMatchObject({
        status: 201,
        body: { lines: [{ lineState: 'arrived' }, { lineState: 'withdrawn' }] },
      });
      expect(await here.container(other.id)).toMatchObject({ state: 'sealed', pieces: 6 });
    });

    it('needs another place where the old one is used no more', async () => {
      const place = (await here.service.made<{ id: string }>('/places', { name: 'Old shelf', kind: 'shelf' }))
        .id;
      const id = await here.receiveOne(umber, { code: 'BACK-5', placeId: place });
      const sent = await here.send(there, [{ containerId: id }]);
      await here.service.made(`/places/${place}/archive`);
      const refused = await withdrawn(sent);
      expect(refused).toMatchObject({ status: 409, body: { code: 'wrong-state' } });
      expect(refused.body.detail).toContain('Name another place');
      const placeId = await here.shelf();
      expect((await withdrawn(sent, { placeId })).status).toBe(201);
      expect(await here.container(id)).toMatchObject({ state: 'sealed', placeId });
    });

    it('and arriving are each for their own end', async () => {
      const { id } = await bottle('ENDS-1');
      const sent = await here.send(there, [{ containerId: id }]);
      const byReceiver = await there.service.post<Refusal>(`/transfers/${sent.id}/withdrawal`, {
        reason: 'Mine',
      });
      expect(byReceiver).toMatchObject({ status: 409, body: { code: 'wrong-state' } });
      const bySender = await here.service.post<Refusal>(`/transfers/${sent.id}/arrival`, {
        lines: await here.arrivedLines(sent),
      });
      expect(bySender).toMatchObject({ status: 409, body: { code: 'wrong-state' } });
      expect(await there.transfer(sent.id)).toMatchObject({ linesInTransit: 1 });
    });

    it('is the only way to undo what was sent: the movement itself is not reversed', async () => {
      const { id, lotId } = await bottle('UNDO-1');
      const sent = await here.send(there, [{ containerId: id }]);
      const [out] = (await here.lot(lotId)).movements;
      const refused = await here.service.post<Refusal>(`/movements/${out?.id}/reversal`, {
        reason: 'A slip',
      });
      expect(refused).toMatchObject({ status: 409, body: { code: 'wrong-state' } });
      expect(refused.body.detail).toContain(sent.id);
      const { containers } = await there.arrive(sent);
      const [into] = (await there.lot(containers[0]?.lotId ?? '')).movements;
      const there409 = await there.service.post<Refusal>(`/movements/${into?.id}/reversal`, {
        reason: 'A slip',
      });
      expect(there409.body.detail).toContain(sent.id);
    });
  });

  describe('goods that are on their way for too long', () => {
    it('are missed at both ends, until what became of them is recorded', async () => {
      const { id } = await bottle('LONG-1');
      const sentAt = daysAgo(15);
      const sent = await here.send(there, [{ containerId: id }], { occurredAt: sentAt });
      expect(await alertsOf(here, sent.id)).toMatchObject([
        {
          kind: 'in transit too long',
          severity: 'warning',
          facts: { direction: 'out', pieces: 1, lines: 1 },
        },
      ]);
      await there.service.made('/alerts/sweep');
      expect(await alertsOf(there, sent.id)).toMatchObject([
        {
          kind: 'in transit too long',
          facts: { direction: 'in', sentOn: localDay(sentAt, 'Europe/Vienna') },
        },
      ]);
      await there.arrive(sent);
      expect(await alertsOf(there, sent.id)).toEqual([]);
      expect(await alertsOf(here, sent.id)).toEqual([]);
    });

    it('are missed no more at the other end once they are called back', async () => {
      const { id } = await bottle('LONG-2');
      const sent = await here.send(there, [{ containerId: id }], { occurredAt: daysAgo(20) });
      await there.service.made('/alerts/sweep');
      expect(await alertsOf(there, sent.id)).toHaveLength(1);
      expect((await withdrawn(sent)).status).toBe(201);
      expect(await alertsOf(there, sent.id)).toEqual([]);
    });

    it('are none after fourteen days', async () => {
      const { id } = await bottle('LONG-3');
      const sent = await here.send(there, [{ containerId: id }], { occurredAt: daysAgo(13) });
      expect(await alertsOf(here, sent.id)).toEqual([]);
    });
  });

  it('low stock is judged at both ends', async () => {
    const product = await here.product({ name: 'Counted liner', kind: 'cartridge' });
    for (const studio of [here, there]) {
      await studio.service.put('/stock/levels', {
        subjectKind: 'product',
        subjectId: product,
        minimumPieces: 5,
      });
    }
    const id = await here.receiveOne(product, { code: 'LOW-1', quantity: 10 });
    expect(await alertsOf(there, product)).toMatchObject([{ kind: 'low stock', severity: 'urgent' }]);
    const sent = await here.send(there, [{ containerId: id, pieces: 6 }]);
    expect(await alertsOf(here, product)).toMatchObject([{ kind: 'low stock', facts: { usablePieces: 4 } }]);
    expect(await alertsOf(there, product)).toHaveLength(1);
    await there.arrive(sent);
    expect(await alertsOf(there, product)).toEqual([]);
  });

  describe('the list', () => {
    it('shows what is in transit first, then the latest, both ways, a page at a time', async () => {
      const third = await studios.another(here.service);
      const fourth = await studios.another(here.service);
      const shelf = async () => third.receiveOne(umber, { code: `LIST-${uuidv7()}` });
      const sent: TransferView[] = [];
      for (const days of [5, 4, 3, 2]) {
        sent.push(await third.send(fourth, [{ containerId: await shelf() }], { occurredAt: daysAgo(days) }));
      }
      const [first, second, last, latest] = sent;
      if (!first || !second || !last || !latest) throw new Error('Four were sent.');
      await fourth.arrive(second);
      await fourth.arrive(latest);
      const expected = [last.id, first.id, latest.id, second.id];
      for (const [studio, direction] of [
        [third, 'out'],
        [fourth, 'in'],
      ] as const) {
        const seen: string[] = [];
        for (let after: string | null = ''; after !== null; ) {
          const page: TransferPageView = await studio.service.seen<TransferPageView>(
            `/transfers?limit=3${after === '' ? '' : `&after=${after}`}`,
          );
          seen.push(...page.items.map(({ id }) => id));
          for (const item of page.items) expect(item.direction).toBe(direction);
          after = page.next;
        }
        expect(seen).toEqual(expected);
        const other = direction === 'in' ? 'out' : 'in';
        expect(await studio.service.seen(`/transfers?direction=${other}`)).toEqual({ items: [], next: null });
      }
    });

    it('of receivers names the other studios of the chain, and no other', async () => {
      const receivers = await here.service.seen<ReceivingStudioView[]>('/transfers/receivers');
      const ids = receivers.map(({ id }) => id);
      expect(ids).toContain(there.service.studioId);
      expect(ids).not.toContain(here.service.studioId);
      expect(ids).not.toContain(studios.stranger.service.studioId);
    });
  });

  describe('another studio', () => {
    it('of another chain cannot be sent to, as if it did not exist', async () => {
      const { id } = await bottle('ALIEN-1');
      const send = (receiverId: string) =>
        here.service.post<ProblemBody>('/transfers', {
          receiverId,
          reason: 'Sold',
          lines: [{ containerId: id }],
        });
      const stranger = await send(studios.stranger.service.studioId);
      const nobody = await send(uuidv7());
      expect(stranger).toMatchObject({ status: 404, body: { code: 'not-found' } });
      expect(nobody.status).toBe(404);
      const words = (body: ProblemBody) => body.detail.replace(/[0-9a-f-]{36}/g, 'ID');
      expect(words(stranger.body)).toBe(words(nobody.body));
    });

    it('that is neither end sees nothing of a transfer and can say nothing of it', async () => {
      const third = await studios.another(here.service);
      const { id } = await bottle('ALIEN-2');
      const sent = await here.send(there, [{ containerId: id }]);
      for (const outsider of [third, studios.stranger]) {
        const { service } = outsider;
        const answers = [
          await service.get(`/transfers/${sent.id}`),
          await service.post(`/transfers/${sent.id}/arrival`, { lines: await outsider.arrivedLines(sent) }),
          await service.post(`/transfers/${sent.id}/withdrawal`, { reason: 'Mine' }),
        ];
        expect(answers.map(({ status }) => status)).toEqual([404, 404, 404]);
        const after = await service.get(`/transfers?after=${sent.id}`);
        expect(after.status).toBe(400);
        expect((await service.seen<TransferPageView>('/transfers')).items.map((one) => one.id)).not.toContain(
          sent.id,
        );
      }
    });

    it("'s containers, lots, places, people and lines are not found", async () => {
      const mine = await bottle('ALIEN-3');
      const theirs = await there.receiveOne(umber, { code: 'ALIEN-4' });
      const sent = await here.send(there, [{ containerId: mine.id }]);
      const other = await here.send(there, [{ containerId: (await bottle('ALIEN-5')).id }]);
      const [line] = sent.lines;
      const [owner] = await here.service.seen<{ id: string }[]>('/people');
      const arrival = (differing: object) =>
        there.arrivedLines(sent, [differing]).then((lines) => refusedArrival(sent, lines));
      const answers = [
        await here.service.post('/transfers', {
          receiverId: there.service.studioId,
          reason: 'Not mine',
          lines: [{ containerId: theirs }],
        }),
        await arrival({ lineId: other.lines[0]?.id }),
        await arrival({ placeId: await here.shelf() }),
        await arrival({ ownerId: owner?.id }),
        await withdrawn(sent, { lineIds: [other.lines[0]?.id] }),
        await withdrawn(sent, { placeId: await there.shelf() }),
        await there.service.get(`/lots/${line?.lotId}`),
        await there.service.get(`/containers/${line?.containerId}`),
      ];
      expect(answers.map(({ status }) => status)).toEqual(answers.map(() => 404));
      const { containers } = await there.arrive(sent);
      expect((await here.service.get(`/lots/${containers[0]?.lotId}`)).status).toBe(404);
      expect((await here.service.get(`/containers/${containers[0]?.id}`)).status).toBe(404);
    });
  });

  describe('a request', () => {
    it('repeated gets the first answer, and is refused with other content', async () => {
      const { id } = await box('ONCE-1', 10);
      const { service } = here;
      const send = {
        id: uuidv7(),
        receiverId: there.service.studioId,
        reason: 'Once',
        lines: [{ containerId: id, pieces: 4 }],
      };
      const first = await service.made<TransferView>('/transfers', send);
      expect(await service.made<TransferView>('/transfers', send)).toEqual(first);
      expect((await here.container(id)).pieces).toBe(6);
      expect(await service.post('/transfers', { ...send, reason: 'Twice' })).toMatchObject({
        status: 409,
        body: { code: 'request-id-reused' },
      });
      const arrival = { id: uuidv7(), lines: await there.arrivedLines(first, [{ pieces: 3 }]) };
      const arrived = await there.service.made<ArrivalView>(`/transfers/${first.id}/arrival`, arrival);
      expect(await there.service.made(`/transfers/${first.id}/arrival`, arrival)).toEqual(arrived);
      expect((await there.lot(arrived.containers[0]?.lotId ?? '')).quantities.onHandPieces).toBe(3);
      const changed = { ...arrival, lines: await there.arrivedLines(first, [{ pieces: 2 }]) };
      expect((await there.service.post(`/transfers/${first.id}/arrival`, changed)).status).toBe(409);

      const again = await here.send(there, [{ containerId: id }]);
      const withdrawal = { id: uuidv7(), reason: 'Once' };
      const back = await service.made<TransferView>(`/transfers/${again.id}/withdrawal`, withdrawal);
      expect(await service.made(`/transfers/${again.id}/withdrawal`, withdrawal)).toEqual(back);
      expect((await here.container(id)).pieces).toBe(6);
    });

    it.each([
      ['no line', { lines: [] }],
      ['too many lines', { lines: Array.from({ length: 201 }, () => ({ containerId: uuidv7() })) }],
      ['no reason', { reason: ' ' }],
      ['a receiver that is no id', { receiverId: 'there' }],
      ['no pieces', { lines: [{ containerId: uuidv7(), pieces: 0 }] }],
      ['half a piece', { lines: [{ containerId: uuidv7(), pieces: 1.5 }] }],
      ['a field that is not known', { carrier: 'by bicycle' }],
      ['an instant that is none', { occurredAt: 'yesterday' }],
      ['an instant to come', { occurredAt: '2999-01-01T00:00:00Z' }],
    ])('to send with %s is refused by its field', async (_, wrong) => {
      const body = {
        receiverId: there.service.studioId,
        reason: 'Try',
        lines: [{ containerId: uuidv7() }],
        ...wrong,
      };
      const answer = await here.service.post<ProblemBody>('/transfers', body);
      expect(answer.status).toBe(400);
      expect(answer.body.code).toMatch(/^(invalid-fields|unusable-time)$/);
    });

    it('to send a container twice, pieces of a bottle, or to itself is refused', async () => {
      const { id } = await bottle('TWICE-1');
      const send = (body: object) =>
        here.service.post<ProblemBody>('/transfers', {
          receiverId: there.service.studioId,
          reason: 'Try',
          ...body,
        });
      const lines = [{ containerId: id }];
      expect((await send({ lines: [...lines, ...lines] })).body.faults?.[0]?.field).toBe(
        'lines.1.containerId',
      );
      expect((await send({ lines: [{ containerId: id, pieces: 2 }] })).body.faults?.[0]?.field).toBe(
        'lines.0.pieces',
      );
      expect((await send({ lines, receiverId: here.service.studioId })).body.faults?.[0]?.field).toBe(
        'receiverId',
      );
    });

    it('of an arrival tells all of its faults by their fields', async () => {
      const { id } = await bottle('FAULTS-1');
      const part = await box('FAULTS-2', 5);
      const sent = await here.send(there, [{ containerId: id }, { containerId: part.id }]);
      const [one, other] = sent.lines.map((line) => line.id);
      const placeId = await there.shelf();
      const answer = await refusedArrival(sent, [
        { lineId: one, pieces: 2, placeId },
        { lineId: other, pieces: 5 },
        { lineId: other, pieces: 1, placeId, faults: [{ kind: 'broken seal', pieces: 2 }] },
      ]);
      expect(answer.status).toBe(400);
      expect(answer.body.faults?.map(({ field }) => field)).toEqual([
        'lines.0.pieces',
        'lines.1.placeId',
        'lines.2.lineId',
        'lines.2.faults',
      ]);
      for (const wrong of [
        { pieces: -1 },
        { pieces: 1, placeId, turnedUp: 'yes' },
        { pieces: 1, placeId, faults: [{ kind: 'wet', pieces: 1 }] },
      ]) {
        expect((await refusedArrival(sent, [{ lineId: one, ...wrong }])).status).toBe(400);
      }
      expect(await there.transfer(sent.id)).toMatchObject({ linesInTransit: 2 });
    });

    it('stores text as text, whatever stands in it', async () => {
      const reason = `'); DROP TABLE lot; -- <script>alert(1)</script> =1+1`;
      const { id } = await bottle('TEXT-1');
      const sent = await here.send(there, [{ containerId: id }], { reason });
      expect((await there.transfer(sent.id)).reason).toBe(reason);
      const arrival = await there.service.made<ArrivalView>(`/transfers/${sent.id}/arrival`, {
        reason,
        lines: await there.arrivedLines(sent),
      });
      expect(arrival.transfer.lines[0]?.outcomes[0]?.reason).toBe(reason);
    });
  });
});
