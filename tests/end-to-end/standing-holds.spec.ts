import { setTimeout } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { OpenedRecallView, RecallView } from '../../src/recalls/recalls.views.js';
import type { RecordedUsesView } from '../../src/sessions/late-records.views.js';
import type { OpenHoldPageView, OpenHoldView } from '../../src/stock/holds.views.js';
import type { CorrectedLotView } from '../../src/stock/lot-corrections.views.js';
import type { TakenInStockView } from '../../src/stock/opening-stock/opening-stock.views.js';
import { type RunningService, strictestEngine } from '../support/service.js';
import { startStudio } from '../support/shared-service.js';
import { type StudioEnd, TwoStudios } from '../support/two-studios.js';

describe.each(strictestEngine)('a standing hold, on %s', (engine) => {
  let studios: TwoStudios;
  let here: StudioEnd;
  let there: StudioEnd;
  let umberId: string;
  let used = 0;

  beforeAll(async () => {
    studios = await TwoStudios.start(engine, undefined, startStudio);
    ({ here, there } = studios);
    umberId = await here.product({ name: 'Umber' });
  });
  afterAll(() => studios.dispose());

  /** A code that nothing else in this file is a slip of. */
  const freshCode = () => {
    used += 1;
    const letters = [used / 20, used % 20].map((number) => String.fromCharCode(65 + number).repeat(2));
    return `${letters.join('')}-${String(used * 1_111).padStart(5, '0')}`;
  };
  const recall = (at: StudioEnd, code: string, more: object = {}, productId = umberId) =>
    at.service.made<OpenedRecallView>('/recalls', {
      title: `Lot ${code}`,
      scope: {
        items: [{ gtins: [], productIds: [productId], lots: [{ kind: 'code', code }], openEnded: false }],
      },
      ...more,
    });
  const holdsOn = async (
    { service }: { service: RunningService },
    lotId: string,
  ): Promise<OpenHoldView[]> => {
    const { items } = await service.seen<OpenHoldPageView>('/holds?limit=200');
    return items.filter((hold) => hold.lotId === lotId && hold.kind === 'recall');
  };
  const shown = (id: string) => here.service.seen<RecallView>(`/recalls/${id}`);
  const correct = async (lotId: string, version: number, code: string) => {
    const codes = [{ kind: 'lot', code }];
    const body = { version, codes, reason: 'The label says so' };
    const answer = await here.service.patch<CorrectedLotView>(`/lots/${lotId}`, body);
    expect(answer.status, JSON.stringify(answer.body)).toBe(200);
    return answer.body;
  };
  const expired = new Date(Date.now() - 5 * 86_400_000).toISOString().slice(0, 10);

  it('holds a delivered lot that is meant, and says why', async () => {
    const code = freshCode();
    const { id } = await recall(here, code);
    const { lot, holds, warnings } = await here.receive(umberId, { code });
    expect(holds).toMatchObject([
      { kind: 'recall', reason: 'recall notice', lotId: lot.id, containerId: null, placedNow: true },
    ]);
    expect(warnings).toEqual([
      `The lot ${code} is recalled. A person chose this product as one that the notice means. The notice names the code ${code}. It is on hold: put it aside and use none of it.`,
    ]);
    expect(await shown(id)).toMatchObject({ affectedLots: 1, caughtLots: 1 });
  });

  it('holds one that is only possibly meant too, until a person decides', async () => {
    const code = freshCode();
    await recall(here, code);
    const { lot, holds, warnings } = await here.receive(umberId, { code: code.replace('-', ' ') });
    expect(holds.map(({ reason }) => reason)).toEqual(['recall notice']);
    expect(warnings[0]).toMatch(/^The lot .* may be recalled[.].* until a person decides/);
    expect(await holdsOn(here, lot.id)).toHaveLength(1);
  });

  it('holds nothing else', async () => {
    const code = freshCode();
    await recall(here, code);
    const { lot, holds, warnings } = await here.receive(umberId, { code: freshCode() });
    expect([holds, warnings]).toEqual([[], []]);
    expect(await holdsOn(here, lot.id)).toEqual([]);
  });

  it('holds a lot whose code cannot be read', async () => {
    const productId = await here.product({ name: 'Sienna' });
    await recall(here, freshCode(), {}, productId);
    const receipt = await here.service.made<{ lines: { lot: { id: string } }[] }>('/deliveries', {
      origin: 'gift or sample',
      lines: [
        { productId, codeState: 'unreadable', useBy: '2099-12-31', quantity: 1, placeId: await here.shelf() },
      ],
    });
    expect(await holdsOn(here, receipt.lines[0]?.lot.id ?? '')).toHaveLength(1);
  });

  it('holds a lot once, and does not take back a release when more of it arrives', async () => {
    const code = freshCode();
    await recall(here, code);
    const near = code.replace('-', '');
    const { lot } = await here.receive(umberId, { code: near });
    await here.receive(umberId, { code: near });
    const holds = await holdsOn(here, lot.id);
    expect(holds).toHaveLength(1);
    const [{ id: recallId } = { id: '' }] = (
      await here.service.seen<{ items: { id: string }[] }>('/recalls?limit=1')
    ).items;
    await here.service.made(`/recalls/${recallId}/lots/${lot.id}/decisions`, {
      decision: 'not affected',
      reason: 'Another code',
    });
    await here.receive(umberId, { code: near });
    expect(await holdsOn(here, lot.id)).toEqual([]);
  });

  it('holds opening stock, whose answer says what was set aside', async () => {
    const code = freshCode();
    await recall(here, code);
    const placeId = await here.shelf();
    const place = (await here.service.seen<{ id: string; name: string }[]>('/places')).find(
      ({ id }) => id === placeId,
    );
    const maker = (await here.service.seen<{ items: { makerName: string }[] }>(`/lots?productId=${umberId}`))
      .items[0]?.makerName;
    const text = `maker,product,lot,use-by,quantity,place\r\n${maker},Umber,${code},2099-12,2,${place?.name}\r\n`;
    const answer = await here.service.post<TakenInStockView>('/opening-stock', { text });
    expect(answer.status, JSON.stringify(answer.body)).toBe(201);
    expect(answer.body.rows[0]?.setAside).toContain('recall notice');
    expect(await holdsOn(here, answer.body.rows[0]?.lotId ?? '')).toHaveLength(1);
  });

  it('holds what arrives of a transfer, for clients and for practice', async () => {
    for (const practice of [false, true]) {
      const code = freshCode();
      const useBy = practice ? expired : '2099-12-31';
      const { containers, holds } = await here.receive(umberId, { code, useBy });
      const containerId = containers[0]?.id ?? '';
      if (practice) {
        for (const { id } of holds) {
          await here.service.made(`/holds/${id}/release`, { reason: 'For practice' });
        }
        await here.record(containerId, 'keep-for-practice');
      }
      const transfer = await here.send(there, [{ containerId }]);
      await recall(there, code);
      const arrival = await there.arrive(transfer);
      const lotId = arrival.containers[0]?.lotId ?? '';
      expect(await holdsOn(there, lotId), `practice: ${practice}`).toHaveLength(1);
    }
  });

  it('holds a lot whose code is corrected to one that is meant, and tells where its goods went', async () => {
    const code = freshCode();
    const { lot, containers } = await here.receive(umberId, { code: freshCode(), quantity: 2 });
    const transfer = await here.send(there, [{ containerId: containers[0]?.id }]);
    const { id } = await recall(here, code);
    expect(await holdsOn(here, lot.id)).toEqual([]);
    const corrected = await correct(lot.id, lot.version, code);
    expect(corrected.holds).toMatchObject([{ kind: 'recall', lotId: lot.id, placedNow: true }]);
    expect(await shown(id)).toMatchObject({ affectedLots: 1 });
    const arrival = await there.arrive(transfer);
    const [hold] = await holdsOn(there, arrival.containers[0]?.lotId ?? '');
    expect(hold).toMatchObject({
      kind: 'recall',
      note: 'On hold in the studio it came from when it arrived.',
    });
  });

  it('holds a lot that was left possible once it becomes certain', async () => {
    const code = freshCode();
    const { lot } = await here.receive(umberId, { code: code.replace('-', '/') });
    const { id } = await recall(here, code, { holdPossible: 'none' });
    expect(await shown(id)).toMatchObject({ undecidedLots: 1, heldLots: 0 });
    expect((await correct(lot.id, lot.version, code)).holds).toHaveLength(1);
    expect(await shown(id)).toMatchObject({ heldLots: 1, affectedLots: 1, undecidedLots: 0 });
  });

  it('takes a lot for affected once it is certain, though it was held or decided otherwise before', async () => {
    for (const decision of [undefined, 'not affected']) {
      const code = freshCode();
      const { lot } = await here.receive(umberId, { code: code.replace('-', '/') });
      const { id } = await recall(here, code);
      if (decision !== undefined) {
        const body = { decision, reason: 'Another code' };
        await here.service.made(`/recalls/${id}/lots/${lot.id}/decisions`, body);
      }
      await correct(lot.id, lot.version, code);
      expect(await shown(id)).toMatchObject({ affectedLots: 1, undecidedLots: 0, notAffectedLots: 0 });
      expect((await holdsOn(here, lot.id)).length).toBeGreaterThan(0);
    }
  });

  it('holds a lot that a late record makes, whose use is an exposure', async () => {
    const code = freshCode();
    const { id } = await recall(here, code);
    const [owner] = await here.service.seen<{ id: string }[]>('/people');
    const procedure = await here.service.made<{ id: string }>('/procedures', {
      name: `Brows ${code}`,
      bodyPlace: 'brows',
    });
    const client = await here.service.made<{ id: string }>('/clients', { name: 'Ida Sommer' });
    const recorded = await here.service.made<RecordedUsesView>('/sessions/late', {
      source: 'late',
      clientId: client.id,
      artistId: owner?.id,
      signedBy: owner?.id,
      procedureId: procedure.id,
      visitKind: 'first session',
      occurredAt: new Date(Date.now() - 30 * 86_400_000).toISOString(),
      uses: [{ productId: umberId, code, useBy: '2099-12', knownBy: 'typed' }],
    });
    expect(recorded.warnings).toContainEqual(expect.stringContaining(`The lot ${code} is recalled.`));
    expect(await holdsOn(here, recorded.madeLotIds[0] ?? '')).toHaveLength(1);
    expect(await shown(id)).toMatchObject({ affectedLots: 1 });
  });

  it('holds nothing once its recall is withdrawn', async () => {
    const code = freshCode();
    const { id } = await recall(here, code);
    await here.service.made(`/recalls/${id}/withdrawal`, { reason: 'A mistake' });
    const { holds } = await here.receive(umberId, { code });
    expect(holds).toEqual([]);
  });

  it('misses nothing that arrives while it is being placed, sooner or later', async () => {
    for (let delay = 0; delay < 60; delay += 5) {
      const code = freshCode();
      const [line] = await Promise.all([
        setTimeout(delay).then(() => here.receive(umberId, { code })),
        recall(here, code),
      ]);
      expect(await holdsOn(here, line.lot.id), `received ${delay} ms after`).toHaveLength(1);
    }
  });
});
