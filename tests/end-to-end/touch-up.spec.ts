import { Temporal } from 'temporal-polyfill';
import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { CompletionView } from '../../src/sessions/completion.views.js';
import type { SessionView } from '../../src/sessions/session-record.views.js';
import type { TouchUpView } from '../../src/sessions/touch-up.views.js';
import { makeSampleStudio, receive, type SampleStudio, walkIn } from '../support/sample-studio.js';
import { type ProblemBody, type RunningService, usualEngine } from '../support/service.js';
import { startStudio } from '../support/shared-service.js';
import { Store } from '../support/store.js';

interface Written {
  id: string;
  version: number;
  followsSessionId: string | null;
  followsBecause: string | null;
}

const timeZone = 'Europe/Vienna';
const today = () => Temporal.Now.plainDateISO(timeZone);
const inDays = (days: number) => today().add({ days }).toString();

describe.each(usualEngine)('the memory of a touch-up on %s', (engine) => {
  let service: RunningService;
  let store: Store;
  let studio: SampleStudio;

  beforeAll(async () => {
    service = await startStudio(engine);
    store = await Store.open(service.dataFolder, service.databaseUrl);
    studio = await makeSampleStudio(service);
    const settings = await service.seen<{ version: number }>('');
    await service.patch('', { version: settings.version, timeZone });
  });
  afterAll(async () => {
    await store.close();
    await service.dispose();
  });

  const newClient = async () => (await service.made<{ id: string }>('/clients', { name: 'Ida' })).id;

  /** A completed first session with a mix of drops from the given bottles and one cartridge. */
  async function firstSession(clientId: string, drops: { containerId: string; drops: number }[]) {
    const session = await walkIn(service, studio, { clientId });
    const liner = await receive(service, studio, { productId: studio.linerId, code: uuidv7().slice(-8) });
    await service.made(`/sessions/${session}/scans`, { containerId: liner.containers[0]?.id });
    const mix = await service.made<{ id: string }>(`/sessions/${session}/mixes`, { label: 'base' });
    for (const part of drops) {
      await service.made(`/sessions/${session}/scans`, { containerId: part.containerId });
      await service.made(`/sessions/${session}/mixes/${mix.id}/components`, part);
    }
    await service.made(`/sessions/${session}/completion`, {
      lines: [],
      complications: null,
      signedBy: studio.ownerId,
    });
    return session;
  }
  const bottle = async (code: string, useBy = '2099-12-31', quantity = 1) => {
    const { lot, containers } = await receive(service, studio, {
      productId: studio.umberId,
      code,
      useBy,
      quantity,
    });
    return { lotId: lot.id, ids: containers.map((container) => container.id) };
  };

  it('remembers the mix drop by drop, less what was taken back, and the window', async () => {
    const [one, two] = [await bottle('T1'), await bottle('T2')];
    const session = await firstSession(await newClient(), [
      { containerId: one.ids[0] ?? '', drops: 4 },
      { containerId: two.ids[0] ?? '', drops: 3 },
      { containerId: two.ids[0] ?? '', drops: -1 },
    ]);
    const memory = await service.seen<TouchUpView>(`/sessions/${session}/touch-up`);
    expect(memory).toMatchObject({
      sessionId: session,
      procedureName: 'Powder brows',
      visitKind: 'first session',
      completedOn: today().toString(),
      window: { opensOn: inDays(30), closesOn: inDays(40) },
      pigments: [],
      instruments: [{ productId: studio.linerId, productName: 'Fine liner', pieces: 1 }],
      healedResult: null,
      visits: [],
    });
    expect(memory.mixes).toMatchObject([
      {
        label: 'base',
        parts: [
          { lotCode: 'T1', drops: 4, microlitres: 160, usableAtStart: 'yes', usableAtEnd: 'yes', whyNot: [] },
          { lotCode: 'T2', drops: 2, microlitres: 80, openedLifeFrom: 'label' },
        ],
      },
    ]);
  });

  it('does not remember a mix that touched nobody, nor a use that was reversed', async () => {
    const [used, wasted, reversed] = [await bottle('M1'), await bottle('M2'), await bottle('M3')];
    const session = await walkIn(service, studio, { clientId: await newClient() });
    const lines: string[] = [];
    for (const { ids } of [used, wasted, reversed]) {
      const containerId = ids[0] ?? '';
      const { trayLineId } = await service.made<{ trayLineId: string }>(`/sessions/${session}/scans`, {
        containerId,
      });
      lines.push(trayLineId);
      const mix = await service.made<{ id: string }>(`/sessions/${session}/mixes`, { label: 'cup' });
      await service.made(`/sessions/${session}/mixes/${mix.id}/components`, { containerId, drops: 2 });
    }
    const { uses } = await service.made<CompletionView>(`/sessions/${session}/completion`, {
      lines: [{ trayLineId: lines[1], outcome: 'opened unused' }],
      complications: null,
      signedBy: studio.ownerId,
    });
    const mistaken = uses.find((use) => use.containerId === reversed.ids[0]);
    await service.made(`/sessions/${session}/uses/${mistaken?.id}/reversal`, { reason: 'Never put on' });
    const memory = await service.seen<TouchUpView>(`/sessions/${session}/touch-up`);
    expect(memory.mixes).toMatchObject([{ label: 'cup', parts: [{ lotCode: 'M1', drops: 2 }] }]);
    expect(memory.mixes).toHaveLength(1);
    // What had been opened for nothing but that use is sealed again.
    const after = await service.seen<{ state: string }>(`/containers/${reversed.ids[0]}`);
    expect(after.state).toBe('sealed');
  });

  it('tells of each bottle whether it lasts to both ends of the window', async () => {
    const [within, before, held] = [
      await bottle('W1', inDays(35)),
      await bottle('W2', inDays(29)),
      await bottle('W3'),
    ];
    const session = await firstSession(
      await newClient(),
      [within, before, held].map(({ ids }) => ({ containerId: ids[0] ?? '', drops: 1 })),
    );
    await service.made('/holds', { kind: 'recall', reason: 'recall notice', lotId: held.lotId });
    const memory = await service.seen<TouchUpView>(`/sessions/${session}/touch-up`);
    const parts = memory.mixes[0]?.parts ?? [];
    expect(
      parts.map(({ lotCode, usableAtStart, usableAtEnd }) => [lotCode, usableAtStart, usableAtEnd]),
    ).toEqual([
      ['W1', 'yes', 'no'],
      ['W2', 'no', 'no'],
      ['W3', 'no', 'no'],
    ]);
    expect(parts.map((part) => part.whyNot.map(({ obstacle }) => obstacle))).toEqual([
      ['expired'],
      ['expired'],
      ['held'],
    ]);
  });

  it('names other bottles of the same lot when the one used is empty', async () => {
    const { ids } = await bottle('Z1', '2099-12-31', 2);
    const session = await firstSession(await newClient(), [{ containerId: ids[0] ?? '', drops: 2 }]);
    await service.made(`/containers/${ids[0]}/finish`);
    const memory = await service.seen<TouchUpView>(`/sessions/${session}/touch-up`);
    expect(memory.mixes[0]?.parts).toMatchObject([
      { usableAtStart: 'no', whyNot: [{ obstacle: 'finished' }], otherContainerIds: [ids[1]] },
    ]);
  });

  it('is found from the touch-up, which takes the latest first session by itself', async () => {
    const clientId = await newClient();
    const part = { containerId: (await bottle('F1')).ids[0] ?? '', drops: 1 };
    await firstSession(clientId, [part]);
    const latest = await firstSession(clientId, [part]);
    const planned = await service.made<Written>('/sessions', {
      clientId,
      artistId: studio.ownerId,
      procedureId: studio.procedureId,
      visitKind: 'touch-up',
      plannedStart: `${inDays(33)}T10:00:00Z`,
    });
    expect(planned).toMatchObject({
      followsSessionId: latest,
      followsBecause: 'latest completed first session of this procedure',
    });
    const memory = await service.seen<TouchUpView>(`/sessions/${planned.id}/touch-up`);
    expect(memory).toMatchObject({
      sessionId: latest,
      visits: [{ sessionId: planned.id, visitKind: 'touch-up', state: 'planned' }],
    });
    const all = await service.seen<TouchUpView[]>(`/clients/${clientId}/touch-ups`);
    expect(all).toHaveLength(2);
    expect(all[0]).toEqual(memory);
  });

  it('is not there before the session is completed, nor elsewhere', async () => {
    const session = await walkIn(service, studio);
    const early = await service.get<ProblemBody>(`/sessions/${session}/touch-up`);
    expect([early.status, early.body.code]).toEqual([409, 'wrong-state']);
    expect((await service.get(`/sessions/${uuidv7()}/touch-up`)).status).toBe(404);
    expect((await service.get(`/clients/${uuidv7()}/touch-ups`)).status).toBe(404);
    const other = await store.makeStudio();
    const elsewhere = await store.seenBy(service, other);
    expect((await elsewhere.get(`/sessions/${session}/touch-up`)).status).toBe(404);
    expect((await elsewhere.get(`/clients/${studio.clientId}/touch-ups`)).status).toBe(404);
  });

  describe('the healed result', () => {
    const record = (session: string, body: object) =>
      service.post<ProblemBody & Written>(`/sessions/${session}/healed-result`, body);

    it('is recorded once, sealed, and corrected by version', async () => {
      const session = await firstSession(await newClient(), []);
      const first = await record(session, { retainedColourPercent: 70, note: 'Warmer than Ida wished' });
      expect(first.status).toBe(200);
      expect(JSON.stringify(first.body)).not.toContain('Ida');
      const twice = await record(session, { retainedColourPercent: 60 });
      expect([twice.status, twice.body.code]).toEqual([409, 'already-exists']);
      const stale = await record(session, { retainedColourPercent: 60, version: first.body.version - 1 });
      expect([stale.status, stale.body.code]).toEqual([409, 'stale-version']);
      const corrected = await record(session, { retainedColourPercent: 60, version: first.body.version });
      expect(corrected.status).toBe(200);
      const shown = await service.seen<SessionView>(`/sessions/${session}`);
      expect(shown.healedResult).toMatchObject({
        retainedColourPercent: 60,
        note: null,
        seenAtSessionId: null,
      });
      const memory = await service.seen<TouchUpView>(`/sessions/${session}/touch-up`);
      expect(memory.healedResult).toEqual(shown.healedResult);
      const [row] = await store.database.read<{ sealed: string }>(
        'SELECT healed_result_sealed AS sealed FROM session WHERE studio_id = $1 AND id = $2',
        [service.studioId, session],
      );
      expect(row?.sealed).not.toContain('retained');
    });

    it('names the visit at which it was seen, which is the same client’s', async () => {
      const clientId = await newClient();
      const session = await firstSession(clientId, []);
      const touchUp = await walkIn(service, studio, { clientId, visitKind: 'touch-up' });
      const foreign = await walkIn(service, studio, { clientId: await newClient() });
      for (const [seenAtSessionId, ...expected] of [
        [foreign, 400, 'invalid-fields'],
        [session, 400, 'invalid-fields'],
        [uuidv7(), 404, 'not-found'],
      ]) {
        const refused = await record(session, { retainedColourPercent: 70, seenAtSessionId });
        expect([refused.status, refused.body.code]).toEqual(expected);
      }
      expect((await record(session, { retainedColourPercent: 70, seenAtSessionId: touchUp })).status).toBe(
        200,
      );
    });

    it.each([
      ['more than all of the colour', { retainedColourPercent: 101 }],
      ['less than none', { retainedColourPercent: -1 }],
      ['half a percent', { retainedColourPercent: 50.5 }],
      ['no colour', {}],
      ['an unknown field', { retainedColourPercent: 50, photo: 'x' }],
    ])('refuses %s', async (_, body) => {
      const refused = await record(uuidv7(), body);
      expect([refused.status, refused.body.code]).toEqual([400, 'invalid-fields']);
    });

    it('belongs to a completed session of this studio', async () => {
      const session = await walkIn(service, studio);
      const early = await record(session, { retainedColourPercent: 50 });
      expect([early.status, early.body.code]).toEqual([409, 'wrong-state']);
      const unknown = await record(uuidv7(), { retainedColourPercent: 50 });
      expect([unknown.status, unknown.body.code]).toEqual([404, 'not-found']);
    });
  });

  describe('a cancelled session', () => {
    it('keeps its tray until it is emptied, and books what was poured as wasted', async () => {
      const { ids } = await bottle('C1');
      const containerId = ids[0] ?? '';
      const liner = await receive(service, studio, { productId: studio.linerId, code: 'C2' });
      const session = await walkIn(service, studio);
      await service.made(`/sessions/${session}/scans`, { containerId });
      const scan = await service.made<{ trayLineId: string }>(`/sessions/${session}/scans`, {
        containerId: liner.containers[0]?.id,
      });
      const mix = await service.made<{ id: string }>(`/sessions/${session}/mixes`, { label: 'base' });
      await service.made(`/sessions/${session}/mixes/${mix.id}/components`, { containerId, drops: 5 });
      const refused = await service.post<ProblemBody>(`/sessions/${session}/cancellation`);
      expect([refused.status, refused.body.code]).toEqual([409, 'wrong-state']);
      expect(refused.body.detail).toContain('1 thing is still on the tray');
      await service.made(`/sessions/${session}/tray/${scan.trayLineId}/take-off`);
      expect((await service.post(`/sessions/${session}/cancellation`)).status).toBe(200);
      const movements = await store.database.read<{ kind: string; microlitres: number }>(
        'SELECT kind, microlitres FROM movement WHERE studio_id = $1 AND session_id = $2',
        [service.studioId, session],
      );
      expect(movements).toEqual([{ kind: 'wasted', microlitres: -200 }]);
      const shown = await service.seen<SessionView>(`/sessions/${session}`);
      expect(shown.tray.map((line) => line.state)).toEqual(['taken off', 'taken off']);
      expect(shown.uses).toEqual([]);
    });
  });
});
