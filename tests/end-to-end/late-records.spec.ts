import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { CompletionView } from '../../src/sessions/completion.views.js';
import type { RecordedUsesView } from '../../src/sessions/late-records.views.js';
import type { SessionView } from '../../src/sessions/session-record.views.js';
import type { TouchUpView } from '../../src/sessions/touch-up.views.js';
import type { LotTraceView, TraceView } from '../../src/sessions/trace.views.js';
import type { ScanView } from '../../src/sessions/tray.views.js';
import {
  makeSampleStudio,
  type ReceivedLine,
  receive,
  type SampleStudio,
  walkIn,
} from '../support/sample-studio.js';
import { type ProblemBody, type RunningService, usualEngine } from '../support/service.js';
import { startStudio } from '../support/shared-service.js';
import { Store } from '../support/store.js';

const daysAgo = (days: number) => new Date(Date.now() - days * 86_400_000).toISOString();

describe.each(usualEngine)('late records and amendments on %s', (engine) => {
  let service: RunningService;
  let store: Store;
  let studio: SampleStudio;

  beforeAll(async () => {
    service = await startStudio(engine);
    store = await Store.open(service.dataFolder, service.databaseUrl);
    studio = await makeSampleStudio(service);
  });
  afterAll(async () => {
    await store.close();
    await service.dispose();
  });

  const body = (uses: object[], more: object = {}) => ({
    source: 'late',
    occurredAt: daysAgo(100),
    clientId: studio.clientId,
    artistId: studio.ownerId,
    procedureId: studio.procedureId,
    visitKind: 'first session',
    signedBy: studio.ownerId,
    uses,
    ...more,
  });
  const late = (uses: object[], more: object = {}) =>
    service.made<RecordedUsesView>('/sessions/late', body(uses, more));
  const refused = async (uses: object[], more: object = {}) => {
    const answer = await service.post<ProblemBody>('/sessions/late', body(uses, more));
    return [answer.status, answer.body.code];
  };
  const balance = async (containerId: string) => {
    const [row] = await store.database.read<{ pieces: number; microlitres: number }>(
      'SELECT pieces, microlitres FROM balance WHERE studio_id = $1 AND container_id = $2',
      [service.studioId, containerId],
    );
    return row;
  };
  const openAlerts = async () =>
    (await service.seen<{ items: { kind: string; subjectId: string }[] }>('/alerts?limit=200')).items.filter(
      (alert) => alert.kind === 'use against a refusal',
    );

  describe('a late record', () => {
    it('completes a session with what was used, also above the book', async () => {
      const { lot, containers } = await receive(service, studio, {
        productId: studio.linerId,
        code: 'N1',
        quantity: 2,
      });
      const containerId = containers[0]?.id ?? '';
      const recorded = await late([{ containerId, knownBy: 'own label', pieces: 5 }], {
        complications: null,
      });
      expect(recorded).toMatchObject({
        state: 'completed',
        madeLotIds: [],
        uses: [{ lotId: lot.id, pieces: 5, againstRefusal: [] }],
      });
      expect(await balance(containerId)).toEqual({ pieces: 0, microlitres: 0 });
      const session = await service.seen<SessionView>(`/sessions/${recorded.id}`);
      expect(session).toMatchObject({
        state: 'completed',
        recordedFrom: 'late',
        complications: 'none',
        signedBy: { id: studio.ownerId },
        uses: [{ pieces: 5, lotCode: 'N1', knownBy: 'own label' }],
      });
      expect(session.completedAt).toBe(session.uses[0]?.occurredAt);
    });

    it('keeps when the client had booked, unless that lies ahead', async () => {
      const bookedAt = daysAgo(400);
      const recorded = await late([], { bookedAt });
      expect((await service.seen<SessionView>(`/sessions/${recorded.id}`)).bookedAt).toBe(bookedAt);
      const ahead = await service.post<ProblemBody>('/sessions/late', body([], { bookedAt: daysAgo(-2) }));
      expect([ahead.status, ahead.body.code]).toEqual([400, 'unusable-time']);
    });

    it('makes the lot that only the paper knows, once, and finds it by the trace', async () => {
      const use = {
        productId: studio.umberId,
        code: 'PAPER 7',
        useBy: '2031-02',
        knownBy: 'typed',
        microlitres: 60,
      };
      const first = await late([use], { source: 'paper' });
      const second = await late([use, use], { source: 'paper', occurredAt: daysAgo(90) });
      expect(first.madeLotIds).toHaveLength(1);
      expect(second.madeLotIds).toEqual([]);
      const [lotId] = first.madeLotIds;
      const trace = await service.seen<TraceView>(`/lots/${lotId}/trace`);
      expect(trace.totals).toEqual({ uses: 3, reversedUses: 0, sessions: 2, clients: 1 });
      expect(trace.items[0]).toMatchObject({
        recordedFrom: 'paper',
        lotCode: 'PAPER 7',
        useBy: '2031-02-28',
        microlitres: 60,
      });
      const [row] = await store.database.read<{ origin: string; via: string }>(
        `SELECT lot.origin, session_use.via FROM session_use
         JOIN lot ON lot.studio_id = session_use.studio_id AND lot.id = session_use.lot_id
         WHERE session_use.studio_id = $1 AND session_use.lot_id = $2`,
        [service.studioId, lotId ?? ''],
      );
      expect(row).toEqual({ origin: 'late record', via: 'paper' });
    });

    it('takes a code without its date for the only lot that has it', async () => {
      const { lot } = await receive(service, studio, {
        productId: studio.umberId,
        code: 'ONLY',
        useBy: '2030-01',
      });
      const use = { productId: studio.umberId, code: 'ONLY', knownBy: 'typed', drops: 2 };
      const recorded = await late([use]);
      expect(recorded.uses).toMatchObject([{ lotId: lot.id, microlitres: 80 }]);
      const other = await late([{ ...use, useBy: '2029-01' }]);
      expect(other.madeLotIds).toHaveLength(1);
    });

    it('tells of a code that is known with another use-by, and names the sister lots to each other', async () => {
      const { lot } = await receive(service, studio, {
        productId: studio.umberId,
        code: 'SPLIT',
        useBy: '2030-01-31',
      });
      const use = { productId: studio.umberId, code: 'SPLIT', useBy: '2030-07', knownBy: 'typed' };
      const recorded = await late([use]);
      const [made] = recorded.madeLotIds;
      expect(recorded.warnings).toHaveLength(1);
      expect(recorded.warnings[0]).toContain('2030-01-31');
      expect(recorded.warnings[0]).toContain(lot.id);
      const { items: alerts } = await service.seen<{ items: { kind: string; subjectId: string }[] }>(
        '/alerts?limit=200',
      );
      expect(alerts).toContainEqual(
        expect.objectContaining({ kind: 'same code, other use-by', subjectId: made }),
      );
      const sisters = async (lotId: string | undefined) =>
        (await service.seen<LotTraceView>(`/lots/${lotId}/trace`)).sisterLots;
      expect(await sisters(lot.id)).toEqual([{ lotId: made, useBy: '2030-07-31' }]);
      expect(await sisters(made)).toEqual([{ lotId: lot.id, useBy: '2030-01-31' }]);
      expect((await late([use])).warnings).toEqual([]);
    });

    describe('by lot', () => {
      const bottle = (id: string | undefined) =>
        service.seen<{ state: string; openedAt: string | null }>(`/containers/${id}`);
      const byLot = async (lotId: string, occurredAt: string) => {
        const use = { lotId, knownBy: 'typed', microlitres: 40 };
        return (await late([use], { occurredAt })).uses[0]?.containerId;
      };

      it('takes no bottle that arrived later, but makes one that is over', async () => {
        const { lot, containers } = await receive(service, studio, {
          productId: studio.umberId,
          code: 'LATE-1',
          quantity: 2,
        });
        await service.made(`/containers/${containers[0]?.id}/open`);
        await service.made(`/containers/${containers[0]?.id}/finish`);
        const taken = await byLot(lot.id, daysAgo(300));
        expect(containers.map(({ id }) => id)).not.toContain(taken);
        expect(await bottle(taken)).toMatchObject({ state: 'finished' });
        expect(await bottle(containers[1]?.id)).toMatchObject({ state: 'sealed', openedAt: null });
        // A second note of the lot is booked on the same one.
        expect(await byLot(lot.id, daysAgo(200))).toBe(taken);
      });

      it('takes the bottle that was open at that time, though it is finished by now', async () => {
        const { lines } = await service.made<{ lines: ReceivedLine[] }>('/deliveries', {
          origin: 'gift or sample',
          occurredAt: daysAgo(20),
          lines: [
            {
              productId: studio.umberId,
              codes: [{ kind: 'lot', code: 'LATE-2' }],
              useBy: '2099-12-31',
              quantity: 2,
              placeId: studio.placeId,
            },
          ],
        });
        const [used, sealed] = lines[0]?.containers.map(({ id }) => id) ?? [];
        const lot = lines[0]?.lot ?? { id: '' };
        await service.made(`/containers/${used}/open`, { occurredAt: daysAgo(15) });
        await service.made(`/containers/${used}/finish`, { occurredAt: daysAgo(5) });
        expect(await byLot(lot.id, daysAgo(10))).toBe(used);
        expect(await bottle(sealed)).toMatchObject({ state: 'sealed' });
        expect(await byLot(lot.id, daysAgo(2))).toBe(sealed);
      });
    });

    it('records a use of which neither code nor amount is known', async () => {
      const recorded = await late([
        { productId: studio.umberId, codeState: 'unreadable', knownBy: 'picked from a list' },
      ]);
      expect(recorded.uses).toMatchObject([{ pieces: 0, microlitres: 0 }]);
      const session = await service.seen<SessionView>(`/sessions/${recorded.id}`);
      expect(session.uses).toMatchObject([{ lotCode: null, useBy: null }]);
      expect(session.complications).toBeNull();
    });

    it('flags and alerts what had expired by then, and records it all the same', async () => {
      const use = {
        productId: studio.umberId,
        code: 'OLD',
        useBy: daysAgo(120).slice(0, 10),
        knownBy: 'typed',
        microlitres: 40,
        reason: 'Nothing else was there for Ida',
      };
      const recorded = await late([use]);
      expect(recorded.uses).toMatchObject([{ againstRefusal: ['expired'] }]);
      expect(JSON.stringify(recorded)).not.toContain('Ida');
      const session = await service.seen<SessionView>(`/sessions/${recorded.id}`);
      expect(session.uses[0]?.reason).toBe('Nothing else was there for Ida');
      expect((await openAlerts()).map((alert) => alert.subjectId)).toContain(recorded.uses[0]?.id);
      const inTime = await late([use], { occurredAt: daysAgo(130) });
      expect(inTime.uses).toMatchObject([{ againstRefusal: [] }]);
    });

    it('moves an opening back to a use before it, so that what is open too long is refused', async () => {
      const { id: productId } = await service.made<{ id: string }>('/products', {
        kind: 'pigment',
        makerId: studio.makerId,
        name: 'Short-lived',
        pigmentRole: 'colour',
        volumeMicrolitres: 10_000,
        openedLife: 'P3M',
      });
      const { containers } = await receive(service, studio, { productId, code: 'MOVED' });
      const containerId = containers[0]?.id ?? '';
      const uses = [{ containerId, knownBy: 'own label', microlitres: 40 }];
      const [day, season] = [daysAgo(1), daysAgo(120)];
      const first = await late(uses, { occurredAt: day });
      expect(first.warnings).toMatchObject([expect.stringContaining('was received on')]);
      const second = await late(uses, { occurredAt: season });
      expect(second.warnings).toMatchObject([
        expect.stringContaining('was received on'),
        expect.stringContaining(`opened on ${day}`),
      ]);
      expect(await service.seen(`/containers/${containerId}`)).toMatchObject({
        state: 'opened',
        openedAt: season,
      });
      const [entry] = await store.database.read<{ payload: string }>(
        `SELECT payload FROM audit_entry WHERE studio_id = $1 AND action = 'sessions.record-late'
         ORDER BY sequence DESC LIMIT 1`,
        [service.studioId],
      );
      expect(JSON.stringify(entry)).toContain(season);
      expect(JSON.stringify(entry)).toContain(day);
      const session = await walkIn(service, studio);
      const scan = await service.made<ScanView>(`/sessions/${session}/scans`, { containerId });
      expect(scan.verdict).toBe('refused');
      await service.made(`/sessions/${second.id}/uses/${second.uses[0]?.id}/reversal`, { reason: 'No' });
      expect(await service.seen(`/containers/${containerId}`)).toMatchObject({ openedAt: day });
    });

    it('ends a blend earlier that was poured of a bottle found open earlier', async () => {
      const [view] = (await service.get<{ version: number }[]>(`${service.url}/api/v1/studios`)).body;
      await service.patch('', { version: view?.version, houseBlends: 'allowed' });
      const parents: { containerId: string | undefined; microlitres: number }[] = [];
      for (const code of ['PARENT-1', 'PARENT-2']) {
        const { containers } = await receive(service, studio, { productId: studio.umberId, code });
        await service.made(`/containers/${containers[0]?.id}/open`, { occurredAt: daysAgo(1) });
        parents.push({ containerId: containers[0]?.id, microlitres: 100 });
      }
      const blend = await service.made<{ lotId: string }>('/blends', {
        productId: studio.umberId,
        placeId: studio.placeId,
        parents,
      });
      const useBy = async () =>
        (await service.seen<{ useBy: string | null }>(`/lots/${blend.lotId}`)).useBy ?? '';
      const before = await useBy();
      await late([{ containerId: parents[0]?.containerId, knownBy: 'own label', microlitres: 40 }]);
      const days = (Date.parse(before) - Date.parse(await useBy())) / 86_400_000;
      expect(Math.abs(days - 99)).toBeLessThanOrEqual(1);
    });

    it('judges holds as they stood then, not as they stand now', async () => {
      const { lot, containers } = await receive(service, studio, { productId: studio.umberId, code: 'H1' });
      const containerId = containers[0]?.id ?? '';
      const hold = await service.made<{ id: string }>('/holds', {
        kind: 'quarantine',
        reason: 'doubt',
        lotId: lot.id,
        occurredAt: daysAgo(20),
      });
      await service.made(`/holds/${hold.id}/release`, { reason: 'Looked at', occurredAt: daysAgo(10) });
      const at = async (days: number) =>
        (await late([{ containerId, knownBy: 'own label', microlitres: 40 }], { occurredAt: daysAgo(days) }))
          .uses[0]?.againstRefusal;
      expect(await at(25)).toEqual([]);
      expect(await at(15)).toEqual(['on hold']);
      expect(await at(5)).toEqual([]);
    });

    it('makes the client when they are new, and accepts who has left and what is no longer offered', async () => {
      const gone = await service.made<{ id: string }>('/people', { name: 'Gone', role: 'artist' });
      await service.patch(`/people/${gone.id}`, { version: 1, state: 'left' });
      const old = await service.made<{ id: string }>('/procedures', { name: 'Old way', bodyPlace: 'lips' });
      await service.patch(`/procedures/${old.id}`, { version: 1, archived: true });
      const recorded = await late([], {
        clientId: undefined,
        client: { name: 'From Paper' },
        artistId: gone.id,
        signedBy: gone.id,
        procedureId: old.id,
      });
      const session = await service.seen<SessionView>(`/sessions/${recorded.id}`);
      expect(session).toMatchObject({
        bodyPlace: 'lips',
        client: { name: 'From Paper' },
        artist: { id: gone.id },
      });
    });

    it('gives a repeated request the first answer and books once', async () => {
      const { containers } = await receive(service, studio, {
        productId: studio.linerId,
        code: 'N2',
        quantity: 9,
      });
      const containerId = containers[0]?.id ?? '';
      const request = body([{ containerId, knownBy: 'own label' }], { id: uuidv7() });
      const answers = await Promise.all([1, 2, 3].map(() => service.post('/sessions/late', request)));
      expect(new Set(answers.map((answer) => JSON.stringify(answer.body))).size).toBe(1);
      expect((await balance(containerId))?.pieces).toBe(8);
    });

    it.each([
      ['a time in the future', () => [], { occurredAt: daysAgo(-1) }, [400, 'unusable-time']],
      ['a time beyond ten years', () => [], { occurredAt: daysAgo(3_700) }, [400, 'unusable-time']],
      [
        'a day that does not exist',
        () => [],
        { occurredAt: '2025-02-29T10:00:00Z' },
        [400, 'invalid-fields'],
      ],
      ['an unknown artist', () => [], { artistId: uuidv7() }, [404, 'not-found']],
      ['an unknown signer', () => [], { signedBy: uuidv7() }, [404, 'not-found']],
      ['an unknown client', () => [], { clientId: uuidv7() }, [404, 'not-found']],
      ['no client', () => [], { clientId: undefined }, [400, 'invalid-fields']],
      ['an unknown source', () => [], { source: 'hearsay' }, [400, 'invalid-fields']],
      ['an unknown field', () => [], { mood: 'good' }, [400, 'invalid-fields']],
      ['an unknown container', () => [{ containerId: uuidv7(), knownBy: 'typed' }], {}, [404, 'not-found']],
      ['an unknown lot', () => [{ lotId: uuidv7(), knownBy: 'typed' }], {}, [404, 'not-found']],
      [
        'an unknown product',
        () => [{ productId: uuidv7(), code: 'A', knownBy: 'typed' }],
        {},
        [404, 'not-found'],
      ],
      ['a use of nothing', () => [{ knownBy: 'typed' }], {}, [400, 'invalid-fields']],
      [
        'a product without a word on its code',
        () => [{ productId: studio.umberId, knownBy: 'typed' }],
        {},
        [400, 'invalid-fields'],
      ],
      [
        'a use-by date that does not exist',
        () => [{ productId: studio.umberId, code: 'A', useBy: '2027-02-30', knownBy: 'typed' }],
        {},
        [400, 'unusable-date'],
      ],
      [
        'an anaesthetic that was taken off before it was put on',
        () => [
          {
            productId: studio.gelId,
            code: 'A',
            knownBy: 'typed',
            appliedAt: daysAgo(100),
            removedAt: daysAgo(101),
          },
        ],
        {},
        [400, 'unusable-time'],
      ],
      [
        'drops of a cartridge',
        () => [{ productId: studio.linerId, code: 'A', drops: 2, knownBy: 'typed' }],
        {},
        [400, 'invalid-fields'],
      ],
      [
        'pieces of a pigment',
        () => [{ productId: studio.umberId, code: 'A', pieces: 2, knownBy: 'typed' }],
        {},
        [400, 'invalid-fields'],
      ],
    ])('refuses %s and leaves nothing behind', async (_, uses, more, expected) => {
      const count = async () => {
        const [row] = await store.database.read<{ sessions: number; lots: number }>(
          `SELECT (SELECT count(*) FROM session WHERE studio_id = $1) AS sessions,
             (SELECT count(*) FROM lot WHERE studio_id = $1) AS lots`,
          [service.studioId],
        );
        return row;
      };
      const before = await count();
      expect(await refused(uses(), more)).toEqual(expected);
      expect(await count()).toEqual(before);
    });

    it('needs no place, no stock and no delivery to record what happened', async () => {
      const other = await store.makeStudio();
      const elsewhere = await store.seenBy(service, other);
      const made = (path: string, what: object) => elsewhere.made<{ id: string }>(path, what);
      const procedure = await made('/procedures', { name: 'Lips', bodyPlace: 'lips' });
      const maker = await made('/makers', { name: 'Nordlicht' });
      const needle = await made('/products', {
        kind: 'cartridge',
        makerId: maker.id,
        name: 'Liner',
        points: 3,
        grouping: 'round liner',
      });
      const who = { artistId: other.personId, signedBy: other.personId, procedureId: procedure.id };
      const recorded = await elsewhere.made<RecordedUsesView>(
        '/sessions/late',
        body([{ productId: needle.id, code: 'X', useBy: '2027', knownBy: 'typed', pieces: 2 }], {
          ...who,
          clientId: undefined,
          client: { name: 'First ever' },
        }),
      );
      expect(recorded.uses).toMatchObject([{ pieces: 2, againstRefusal: [] }]);
      const session = await elsewhere.seen<SessionView>(`/sessions/${recorded.id}`);
      expect(session.uses).toMatchObject([{ lotCode: 'X', useBy: '2027-12-31' }]);
    });

    it('does not reach into another studio', async () => {
      const { lot, containers } = await receive(service, studio, { productId: studio.umberId, code: 'OURS' });
      const other = await store.makeStudio();
      const elsewhere = await store.seenBy(service, other);
      const procedure = await elsewhere.made<{ id: string }>('/procedures', {
        name: 'Theirs',
        bodyPlace: 'brows',
      });
      const theirs = {
        clientId: undefined,
        client: { name: 'Theirs' },
        artistId: other.personId,
        signedBy: other.personId,
        procedureId: procedure.id,
      };
      for (const use of [
        { containerId: containers[0]?.id },
        { lotId: lot.id },
        { productId: studio.umberId, code: 'OURS' },
      ]) {
        const answer = await elsewhere.post<ProblemBody>(
          '/sessions/late',
          body([{ ...use, knownBy: 'typed' }], theirs),
        );
        expect([answer.status, answer.body.code]).toEqual([404, 'not-found']);
      }
    });
  });

  describe('an amendment', () => {
    async function completedSession(code: string, quantity: number, onTray = 1) {
      const { containers } = await receive(service, studio, { productId: studio.linerId, code, quantity });
      const containerId = containers[0]?.id ?? '';
      const session = await walkIn(service, studio);
      for (let piece = 0; piece < onTray; piece += 1) {
        await service.made(`/sessions/${session}/scans`, { containerId, another: piece > 0 });
      }
      const completion = await service.made<CompletionView>(`/sessions/${session}/completion`, {
        lines: [],
        complications: null,
        signedBy: studio.ownerId,
      });
      return { session, containerId, uses: completion.uses, version: completion.version };
    }

    it('reverses a use recorded by mistake: the piece is back, and both stay visible', async () => {
      const { session, containerId, uses, version } = await completedSession('A1', 3);
      const useId = uses[0]?.id ?? '';
      expect((await balance(containerId))?.pieces).toBe(2);
      const reversed = await service.made(`/sessions/${session}/uses/${useId}/reversal`, {
        reason: 'Ida had another one',
      });
      expect(reversed).toEqual({
        useId,
        sessionId: session,
        version: version + 1,
        pieces: 1,
        microlitres: 0,
      });
      expect((await balance(containerId))?.pieces).toBe(3);
      const shown = await service.seen<SessionView>(`/sessions/${session}`);
      expect(shown.uses).toMatchObject([
        { id: useId, pieces: 1, reversal: { reason: 'Ida had another one' } },
      ]);
      const again = await service.post<ProblemBody>(`/sessions/${session}/uses/${useId}/reversal`, {
        reason: 'Twice',
      });
      expect([again.status, again.body.code]).toEqual([409, 'wrong-state']);
      expect((await balance(containerId))?.pieces).toBe(3);
    });

    it('frees the serial of a piece that was not used', async () => {
      await receive(service, studio, { productId: studio.linerId, code: 'S1', quantity: 5 });
      const symbol = (serial: string) => `]d201${studio.linerGtin}10S1\u001d21${serial}`;
      const scan = (session: string, serial: string) =>
        service.made<ScanView>(`/sessions/${session}/scans`, { symbol: symbol(serial) });
      const session = await walkIn(service, studio);
      for (const serial of ['F1', 'F2']) await scan(session, serial);
      const { uses } = await service.made<CompletionView>(`/sessions/${session}/completion`, {
        lines: [],
        complications: null,
        signedBy: studio.ownerId,
      });
      const shown = await service.seen<SessionView>(`/sessions/${session}`);
      const first = shown.tray.find((line) => line.serial === 'F1');
      const [row] = await store.database.read<{ id: string }>(
        'SELECT id FROM session_use WHERE studio_id = $1 AND tray_line_id = $2',
        [service.studioId, first?.id ?? ''],
      );
      expect(uses.map((use) => use.id)).toContain(row?.id);
      await service.made(`/sessions/${session}/uses/${row?.id}/reversal`, { reason: 'Still in its blister' });
      const later = await walkIn(service, studio);
      expect((await scan(later, 'F2')).reasons.map(({ code }) => code)).toEqual(['already used']);
      const again = await scan(later, 'F1');
      expect(again.trayLineId).not.toBeNull();
    });

    it('seals a bottle again that nothing but the mistaken use had opened', async () => {
      const { containers } = await receive(service, studio, {
        productId: studio.umberId,
        code: 'O1',
        quantity: 2,
      });
      const [one, two] = containers.map(({ id }) => id);
      const use = (containerId: string | undefined) => ({
        containerId,
        knownBy: 'own label',
        microlitres: 40,
      });
      const bottle = (id: string | undefined) =>
        service.seen<{ state: string; openedAt: string | null }>(`/containers/${id}`);
      const [early, later] = [daysAgo(20), daysAgo(10)];
      const first = await late([use(one), use(two)], { occurredAt: early });
      await late([use(two)], { occurredAt: later });
      expect([await bottle(one), await bottle(two)]).toMatchObject([
        { openedAt: early },
        { openedAt: early },
      ]);
      for (const { id } of first.uses) {
        await service.made(`/sessions/${first.id}/uses/${id}/reversal`, { reason: 'Another client' });
      }
      expect(await bottle(one)).toMatchObject({ state: 'sealed', openedAt: null });
      expect(await bottle(two)).toMatchObject({ state: 'opened', openedAt: later });
    });

    it('leaves open what another session took off its tray as opened, though that one was cancelled', async () => {
      const { containers } = await receive(service, studio, { productId: studio.umberId, code: 'O3' });
      const containerId = containers[0]?.id;
      const early = daysAgo(10);
      const recorded = await late([{ containerId, knownBy: 'own label', microlitres: 40 }], {
        occurredAt: early,
      });
      const session = await walkIn(service, studio);
      const { trayLineId } = await service.made<ScanView>(`/sessions/${session}/scans`, { containerId });
      await service.post(`/sessions/${session}/tray/${trayLineId}/take-off`, { outcome: 'opened unused' });
      await service.post(`/sessions/${session}/cancellation`, {});
      const bottle = () =>
        service.seen<{ state: string; openedAt: string | null }>(`/containers/${containerId}`);
      expect(await bottle()).toMatchObject({ state: 'opened', openedAt: early });
      await service.made(`/sessions/${recorded.id}/uses/${recorded.uses[0]?.id}/reversal`, { reason: 'No' });
      const after = await bottle();
      expect(after.state).toBe('opened');
      expect(after.openedAt && after.openedAt > early).toBe(true);
    });

    it.each(['completion', 'cancellation'])(
      'leaves open what was dropped first, taken back or not, at the %s',
      async (end) => {
        const { containers } = await receive(service, studio, {
          productId: studio.umberId,
          code: `O4-${end}`,
        });
        const containerId = containers[0]?.id;
        const session = await walkIn(service, studio);
        await service.made(`/sessions/${session}/scans`, { containerId });
        const mix = await service.made<{ id: string }>(`/sessions/${session}/mixes`, { label: 'base' });
        const path = `/sessions/${session}/mixes/${mix.id}/components`;
        for (const drops of [3, -3]) await service.made(path, { containerId, drops });
        const [line] = (await service.seen<{ lines: { id: string }[] }>(`/sessions/${session}/tray`)).lines;
        await service.post(
          `/sessions/${session}/${end}`,
          end === 'cancellation'
            ? {}
            : {
                lines: [{ trayLineId: line?.id, outcome: 'back unopened' }],
                complications: null,
                signedBy: studio.ownerId,
              },
        );
        const bottle = () =>
          service.seen<{ state: string; openedAt: string | null }>(`/containers/${containerId}`);
        const opened = await bottle();
        const [row] = await store.database.read<{ at: string }>(
          'SELECT occurred_at AS at FROM mix_component WHERE studio_id = $1 AND session_id = $2 AND drops = 3',
          [service.studioId, session],
        );
        expect(opened).toMatchObject({ state: 'opened', openedAt: row?.at });
        // An earlier use moves it back, and is a mistake: the drop had it open all the same.
        const recorded = await late([{ containerId, knownBy: 'own label', microlitres: 40 }], {
          occurredAt: daysAgo(3),
        });
        await service.made(`/sessions/${recorded.id}/uses/${recorded.uses[0]?.id}/reversal`, {
          reason: 'No',
        });
        expect(await bottle()).toMatchObject({ state: 'opened', openedAt: row?.at });
      },
    );

    it('gives back the opening that was recorded for itself when the earlier use was a mistake', async () => {
      const { containers } = await receive(service, studio, { productId: studio.umberId, code: 'O5' });
      const containerId = containers[0]?.id;
      const openedAt = daysAgo(25);
      await service.made(`/containers/${containerId}/open`, { occurredAt: openedAt });
      const uses = [{ containerId, knownBy: 'own label', microlitres: 40 }];
      for (const days of [30, 40]) {
        const recorded = await late(uses, { occurredAt: daysAgo(days) });
        const moved = await service.seen<{ openedAt: string }>(`/containers/${containerId}`);
        expect(moved.openedAt < openedAt).toBe(true);
        await service.made(`/sessions/${recorded.id}/uses/${recorded.uses[0]?.id}/reversal`, {
          reason: 'No',
        });
        expect(await service.seen(`/containers/${containerId}`)).toMatchObject({ state: 'opened', openedAt });
      }
    });

    it('leaves open what was recorded as opened for itself', async () => {
      const { containers } = await receive(service, studio, { productId: studio.umberId, code: 'O2' });
      const containerId = containers[0]?.id;
      const openedAt = daysAgo(25);
      await service.made(`/containers/${containerId}/open`, { occurredAt: openedAt });
      const recorded = await late([{ containerId, knownBy: 'own label', microlitres: 40 }], {
        occurredAt: daysAgo(20),
      });
      await service.made(`/sessions/${recorded.id}/uses/${recorded.uses[0]?.id}/reversal`, { reason: 'No' });
      expect(await service.seen(`/containers/${containerId}`)).toMatchObject({ state: 'opened', openedAt });
    });

    it('records again what went into a mix, of that session only', async () => {
      const { containers } = await receive(service, studio, { productId: studio.umberId, code: 'MIX-1' });
      const containerId = containers[0]?.id;
      const session = await walkIn(service, studio);
      await service.made(`/sessions/${session}/scans`, { containerId });
      const mix = await service.made<{ id: string }>(`/sessions/${session}/mixes`, { label: 'base' });
      const path = `/sessions/${session}/mixes/${mix.id}/components`;
      await service.made(path, { containerId, drops: 9 });
      const { uses } = await service.made<CompletionView>(`/sessions/${session}/completion`, {
        lines: [],
        complications: null,
        signedBy: studio.ownerId,
      });
      await service.made(`/sessions/${session}/uses/${uses[0]?.id}/reversal`, { reason: 'Not nine' });
      const right = { containerId, knownBy: 'own label', drops: 3, mixId: mix.id };
      await service.made(`/sessions/${session}/uses`, { uses: [right] });
      const memory = await service.seen<TouchUpView>(`/sessions/${session}/touch-up`);
      expect(memory.mixes).toMatchObject([{ id: mix.id, parts: [{ drops: 3, microlitres: 120 }] }]);
      expect(memory.pigments).toEqual([]);
      const { session: other } = await completedSession('MIX-2', 1);
      const foreign = await service.post<ProblemBody>(`/sessions/${other}/uses`, { uses: [right] });
      expect([foreign.status, foreign.body.code]).toEqual([404, 'not-found']);
      expect(await refused([right])).toEqual([404, 'not-found']);
      const needle = { productId: studio.linerId, code: 'X9', knownBy: 'typed', mixId: mix.id };
      const noPigment = await service.post<ProblemBody>(`/sessions/${session}/uses`, { uses: [needle] });
      expect([noPigment.status, noPigment.body.code]).toEqual([400, 'invalid-fields']);
    });

    it('takes back the adjustment that a mistaken use above the book had needed', async () => {
      const { containers } = await receive(service, studio, {
        productId: studio.linerId,
        code: 'A2',
        quantity: 2,
      });
      const containerId = containers[0]?.id ?? '';
      const recorded = await late([{ containerId, knownBy: 'own label', pieces: 5 }]);
      expect(await balance(containerId)).toEqual({ pieces: 0, microlitres: 0 });
      await service.made(`/sessions/${recorded.id}/uses/${recorded.uses[0]?.id}/reversal`, {
        reason: 'Not five',
      });
      expect(await balance(containerId)).toEqual({ pieces: 2, microlitres: 0 });
      await service.made(`/sessions/${recorded.id}/uses`, {
        uses: [{ containerId, knownBy: 'own label', pieces: 2 }],
      });
      expect(await balance(containerId)).toEqual({ pieces: 0, microlitres: 0 });
    });

    it('leaves no piece on the book while what still stands took more than was booked', async () => {
      const { containers } = await receive(service, studio, {
        productId: studio.linerId,
        code: 'A8',
        quantity: 2,
      });
      const containerId = containers[0]?.id ?? '';
      const session = await walkIn(service, studio);
      await service.made(`/sessions/${session}/scans`, { containerId });
      const { uses } = await service.made<CompletionView>(`/sessions/${session}/completion`, {
        lines: [],
        besides: [{ containerId, pieces: 4, reason: 'Fetched from the shelf' }],
        complications: null,
        signedBy: studio.ownerId,
      });
      const later = await late([{ containerId, knownBy: 'own label', pieces: 1 }]);
      const reverse = async (id: string, use: { id: string } | undefined) => {
        await service.made(`/sessions/${id}/uses/${use?.id}/reversal`, { reason: 'No' });
        return (await balance(containerId))?.pieces;
      };
      expect(
        await reverse(
          session,
          uses.find((use) => use.pieces === 1),
        ),
      ).toBe(0);
      expect(
        await reverse(
          session,
          uses.find((use) => use.pieces === 4),
        ),
      ).toBe(1);
      expect(await reverse(later.id, later.uses[0])).toBe(2);
    });

    it('closes the alert of a use against a refusal that was a mistake', async () => {
      const recorded = await late([
        { productId: studio.umberId, code: 'OLD2', useBy: '2020-01', knownBy: 'typed', microlitres: 40 },
      ]);
      const useId = recorded.uses[0]?.id ?? '';
      expect((await openAlerts()).map((alert) => alert.subjectId)).toContain(useId);
      await service.made(`/sessions/${recorded.id}/uses/${useId}/reversal`, { reason: 'Misread' });
      expect((await openAlerts()).map((alert) => alert.subjectId)).not.toContain(useId);
    });

    it('adds what a completed session lacks, at the time of the session', async () => {
      const { session, version } = await completedSession('A3', 3);
      const use = { productId: studio.umberId, code: 'ADDED', useBy: '2031-01', knownBy: 'typed', drops: 1 };
      const added = await service.made<RecordedUsesView>(`/sessions/${session}/uses`, { uses: [use] });
      expect(added).toMatchObject({ version: version + 1, uses: [{ microlitres: 40 }] });
      const shown = await service.seen<SessionView>(`/sessions/${session}`);
      expect(shown.uses.map((one) => [one.lotCode, one.occurredAt])).toEqual([
        ['A3', shown.completedAt],
        ['ADDED', shown.completedAt],
      ]);
    });

    it('adds complications that were noticed later below those told before, sealed', async () => {
      const { session, version } = await completedSession('A7', 1);
      const path = `/sessions/${session}/complications`;
      const later = { complications: 'Ida has a swelling', version };
      const added = await service.post<{ version: number }>(path, later);
      expect([added.status, added.body.version]).toEqual([200, version + 1]);
      expect(JSON.stringify(added.body)).not.toContain('Ida');
      const today = new Date().toISOString().slice(0, 10);
      const shown = await service.seen<SessionView>(`/sessions/${session}`);
      expect(shown.complications).toBe(`none\n${today}: Ida has a swelling`);
      const [row] = await store.database.read<{ sealed: string }>(
        'SELECT complications_sealed AS sealed FROM session WHERE studio_id = $1 AND id = $2',
        [service.studioId, session],
      );
      expect(row?.sealed).not.toContain('swelling');
      const stale = await service.post<ProblemBody>(path, later);
      expect([stale.status, stale.body.code]).toEqual([409, 'stale-version']);
      for (const given of [{ version: version + 1 }, { complications: null, version: version + 1 }]) {
        const unsaid = await service.post<ProblemBody>(path, given);
        expect([unsaid.status, unsaid.body.code]).toEqual([400, 'invalid-fields']);
      }
      const early = await service.post<ProblemBody>(
        `/sessions/${await walkIn(service, studio)}/complications`,
        { complications: 'redness', version: 1 },
      );
      expect([early.status, early.body.code]).toEqual([409, 'wrong-state']);
    });

    it('is refused while the session is not completed', async () => {
      const session = await walkIn(service, studio);
      const use = { productId: studio.umberId, code: 'A', knownBy: 'typed' };
      const added = await service.post<ProblemBody>(`/sessions/${session}/uses`, { uses: [use] });
      expect([added.status, added.body.code]).toEqual([409, 'wrong-state']);
    });

    it('finds neither another session’s use nor another studio’s', async () => {
      const { session, uses } = await completedSession('A4', 3);
      const { session: other } = await completedSession('A5', 3);
      const elsewhere = await store.seenBy(service, await store.makeStudio());
      const reversal = `uses/${uses[0]?.id}/reversal`;
      for (const path of [
        `/sessions/${other}/${reversal}`,
        `/sessions/${session}/uses/${uuidv7()}/reversal`,
        `/sessions/${uuidv7()}/${reversal}`,
      ]) {
        const answer = await service.post<ProblemBody>(path, { reason: 'No' });
        expect([path, answer.status, answer.body.code]).toEqual([path, 404, 'not-found']);
      }
      const theirs = await elsewhere.post<ProblemBody>(`/sessions/${session}/${reversal}`, { reason: 'No' });
      expect([theirs.status, theirs.body.code]).toEqual([404, 'not-found']);
    });

    it.each([
      ['no reason', {}],
      ['a blank reason', { reason: '  ' }],
      ['an unknown field', { reason: 'Yes', pieces: 1 }],
    ])('refuses a reversal with %s', async (_, given) => {
      const { session, uses } = await completedSession(`B${uuidv7().slice(-6)}`, 1);
      const path = `/sessions/${session}/uses/${uses[0]?.id}/reversal`;
      const answer = await service.post<ProblemBody>(path, given);
      expect([answer.status, answer.body.code]).toEqual([400, 'invalid-fields']);
    });

    it('reverses a use once when it is asked for at the same time', async () => {
      const { session, containerId, uses } = await completedSession('A6', 4, 2);
      const path = `/sessions/${session}/uses/${uses[0]?.id}/reversal`;
      const answers = await Promise.all(
        ['one', 'two', 'three'].map((reason) => service.post<ProblemBody>(path, { reason })),
      );
      expect(answers.map((answer) => answer.status).sort()).toEqual([201, 409, 409]);
      expect((await balance(containerId))?.pieces).toBe(2 + (uses[0]?.pieces ?? 0));
    });
  });
});
