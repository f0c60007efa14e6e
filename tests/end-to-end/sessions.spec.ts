import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type ProblemBody, type RunningService, usualEngine } from '../support/service.js';
import { startStudio } from '../support/shared-service.js';
import { Store } from '../support/store.js';

interface Written {
  id: string;
  state: string;
  version: number;
  clientId: string;
  clientReference: string;
  followsSessionId: string | null;
  followsBecause: string | null;
}

interface Listed {
  items: { id: string; state: string; clientName: string | null; procedureName: string }[];
  next: string | null;
}

interface Procedure {
  id: string;
  version: number;
  touchUpFromDays: number;
  touchUpToDays: number;
}

const day = 24 * 3_600_000;
const inDays = (days: number) => new Date(Date.now() + days * day).toISOString();

describe.each(usualEngine)('sessions on %s', (engine) => {
  let service: RunningService;
  let store: Store;
  let artistId: string;
  let procedureId: string;
  let clientId: string;

  beforeAll(async () => {
    service = await startStudio(engine);
    store = await Store.open(service.dataFolder, service.databaseUrl);
    const studio = await service.seen<{ version: number }>('');
    await service.patch('', { version: studio.version, timeZone: 'Europe/Vienna' });
    artistId = (await service.made<{ id: string }>('/people', { name: 'Mira', role: 'artist' })).id;
    const procedure = { name: 'Powdered brows', bodyPlace: 'brows' };
    procedureId = (await service.made<Procedure>('/procedures', procedure)).id;
    clientId = (await service.made<{ id: string }>('/clients', { name: 'Ida Falk' })).id;
  });
  afterAll(async () => {
    await store.close();
    await service.dispose();
  });

  const body = (more: object = {}) => ({
    clientId,
    artistId,
    procedureId,
    visitKind: 'first session',
    plannedStart: inDays(7),
    ...more,
  });
  const plan = (more: object = {}) => service.made<Written>('/sessions', body(more));
  const refusedPlan = async (more: object) => {
    const answer = await service.post<ProblemBody>('/sessions', body(more));
    return [answer.status, answer.body.code];
  };

  describe('procedures', () => {
    it('take the common touch-up window unless another is given', async () => {
      const usual = await service.made<Procedure>('/procedures', {
        name: 'Eyeliner',
        bodyPlace: 'upper eyelids',
      });
      expect([usual.touchUpFromDays, usual.touchUpToDays]).toEqual([30, 40]);
      const own = await service.made<Procedure>('/procedures', {
        name: 'Lips',
        bodyPlace: 'lips',
        touchUpFromDays: 42,
        touchUpToDays: 56,
      });
      expect([own.touchUpFromDays, own.touchUpToDays]).toEqual([42, 56]);
    });

    it('refuse a window that runs backwards, also by a change of one end', async () => {
      const backwards = { name: 'Areola', bodyPlace: 'areola', touchUpFromDays: 60, touchUpToDays: 40 };
      expect((await service.post<ProblemBody>('/procedures', backwards)).body.code).toBe('invalid-fields');
      const { id } = await service.made<Procedure>('/procedures', { name: 'Areola', bodyPlace: 'areola' });
      const change = await service.patch<ProblemBody>(`/procedures/${id}`, {
        version: 1,
        touchUpFromDays: 41,
      });
      expect([change.status, change.body.code]).toEqual([400, 'invalid-fields']);
    });

    it('refuse a name that is offered already, whatever its capitals', async () => {
      const same = await service.post<ProblemBody>('/procedures', {
        name: 'POWDERED BROWS',
        bodyPlace: 'brows',
      });
      expect([same.status, same.body.code]).toEqual([409, 'already-exists']);
    });

    it('are no longer planned once archived, and stand on their sessions', async () => {
      const { id } = await service.made<Procedure>('/procedures', { name: 'Scalp', bodyPlace: 'scalp' });
      const planned = await plan({ procedureId: id });
      await service.patch(`/procedures/${id}`, { version: 1, archived: true });
      expect(await refusedPlan({ procedureId: id })).toEqual([409, 'wrong-state']);
      const listed = await service.seen<{ id: string }[]>('/procedures');
      expect(listed.map((procedure) => procedure.id)).not.toContain(id);
      const all = await service.seen<{ id: string }[]>('/procedures?archived=shown');
      expect(all.map((procedure) => procedure.id)).toContain(id);
      const shown = await service.seen<{ procedure: { name: string } }>(`/sessions/${planned.id}`);
      expect(shown.procedure.name).toBe('Scalp');
    });
  });

  describe('planning', () => {
    it('takes the place on the body from the procedure and keeps the detail sealed', async () => {
      const { id } = await plan({ bodyPlaceDetail: 'Left tail, over a scar', bookedAt: inDays(-3) });
      expect(await service.seen(`/sessions/${id}`)).toMatchObject({
        state: 'planned',
        bodyPlace: 'brows',
        bodyPlaceDetail: 'Left tail, over a scar',
        client: { id: clientId, name: 'Ida Falk' },
        artist: { id: artistId, name: 'Mira' },
        tray: [],
        mixes: [],
        uses: [],
        complications: null,
        signedBy: null,
      });
      const [row] = await store.database.read<{ sealed: string }>(
        'SELECT body_place_detail_sealed AS sealed FROM session WHERE studio_id = $1 AND id = $2',
        [service.studioId, id],
      );
      expect(row?.sealed).not.toContain('scar');
    });

    it('answers with nothing personal', async () => {
      const planned = await plan({ bodyPlaceDetail: 'Right brow' });
      expect(JSON.stringify(planned)).not.toMatch(/Ida|Right brow/);
      expect(planned.clientReference).toMatch(/^.{4}-.{2}$/);
    });

    it('changes what is planned, once for each version', async () => {
      const { id } = await plan();
      const changed = await service.patch<Written>(`/sessions/${id}`, {
        version: 1,
        visitKind: 'refresh',
        bodyPlaceDetail: 'Both',
        plannedStart: inDays(9),
      });
      expect([changed.status, changed.body.version]).toEqual([200, 2]);
      expect(await service.seen(`/sessions/${id}`)).toMatchObject({
        visitKind: 'refresh',
        bodyPlaceDetail: 'Both',
      });
      const stale = await service.patch<ProblemBody>(`/sessions/${id}`, {
        version: 1,
        visitKind: 'correction',
      });
      expect([stale.status, stale.body.code]).toEqual([409, 'stale-version']);
    });

    it.each([
      ['a client who is unknown', { clientId: uuidv7() }, [404, 'not-found']],
      ['an artist who is unknown', { artistId: uuidv7() }, [404, 'not-found']],
      ['a procedure that is unknown', { procedureId: uuidv7() }, [404, 'not-found']],
      ['an unknown field', { price: 3 }, [400, 'invalid-fields']],
      ['a visit kind that is none', { visitKind: 'party' }, [400, 'invalid-fields']],
      ['a day that does not exist', { plannedStart: '2027-02-30T10:00:00Z' }, [400, 'invalid-fields']],
      ['an instant without a zone', { plannedStart: '2027-02-20T10:00:00' }, [400, 'unusable-time']],
      ['a start of last year', { plannedStart: inDays(-365) }, [400, 'unusable-time']],
      ['a start in another century', { plannedStart: '2126-02-20T10:00:00Z' }, [400, 'unusable-time']],
      ['a booking in the future', { bookedAt: inDays(1) }, [400, 'unusable-time']],
      ['a session to follow that is unknown', { followsSessionId: uuidv7() }, [404, 'not-found']],
    ])('refuses %s', async (_, more, expected) => {
      expect(await refusedPlan(more)).toEqual(expected);
    });

    it('refuses an artist who has left', async () => {
      const left = await service.made<{ id: string }>('/people', { name: 'Gone', role: 'artist' });
      await service.patch(`/people/${left.id}`, { version: 1, state: 'left' });
      expect(await refusedPlan({ artistId: left.id })).toEqual([409, 'wrong-state']);
    });

    it('lets a visit follow only an earlier session of the same client', async () => {
      const first = await plan();
      expect(await plan({ visitKind: 'touch-up', followsSessionId: first.id })).toMatchObject({
        followsSessionId: first.id,
        followsBecause: 'named',
      });
      const other = await service.made<{ id: string }>('/clients', { name: 'Another' });
      const foreign = { clientId: other.id, visitKind: 'touch-up', followsSessionId: first.id };
      expect(await refusedPlan(foreign)).toEqual([400, 'invalid-fields']);
      expect(await plan({ clientId: other.id, visitKind: 'touch-up' })).toMatchObject({
        followsSessionId: null,
        followsBecause: null,
      });
    });

    it('does not find a session of another studio', async () => {
      const { id } = await plan();
      const other = await store.makeStudio();
      const elsewhere = await store.seenBy(service, other);
      expect((await elsewhere.get(`/sessions/${id}`)).status).toBe(404);
      expect((await elsewhere.get(`/sessions/${id}/record`)).status).toBe(404);
      expect((await elsewhere.patch(`/sessions/${id}`, { version: 1, visitKind: 'refresh' })).status).toBe(
        404,
      );
      expect((await elsewhere.post(`/sessions/${id}/cancellation`)).status).toBe(404);
      const theirs = await elsewhere.post<ProblemBody>('/sessions', body());
      expect([theirs.status, theirs.body.code]).toEqual([404, 'not-found']);
    });
  });

  describe('the life of a session', () => {
    it('leads from planned through setup', async () => {
      const { id } = await plan();
      const setup = await service.post<Written>(`/sessions/${id}/setup`);
      expect([setup.status, setup.body.state, setup.body.version]).toEqual([200, 'in setup', 2]);
      const again = await service.post<ProblemBody>(`/sessions/${id}/setup`);
      expect([again.status, again.body.code]).toEqual([409, 'wrong-state']);
      expect(again.body.detail).toContain('This session is in setup.');
    });

    it('gives a repeated step the first answer', async () => {
      const { id } = await plan();
      const request = { id: uuidv7() };
      const first = await service.post(`/sessions/${id}/cancellation`, request);
      const again = await service.post(`/sessions/${id}/cancellation`, request);
      expect(again.body).toEqual(first.body);
      const elsewhere = await plan();
      const reused = await service.post<ProblemBody>(`/sessions/${elsewhere.id}/cancellation`, request);
      expect([reused.status, reused.body.code]).toEqual([409, 'request-id-reused']);
    });

    it.each([
      ['cancellation', 'cancelled'],
      ['non-attendance', 'not attended'],
    ])('ends by %s, also from setup, and only once', async (step, state) => {
      const { id } = await plan();
      await service.made(`/sessions/${id}/setup`);
      const ended = await service.post<Written>(`/sessions/${id}/${step}`);
      expect([ended.status, ended.body.state]).toEqual([200, state]);
      for (const other of ['setup', 'cancellation', 'non-attendance']) {
        const refused = await service.post<ProblemBody>(`/sessions/${id}/${other}`);
        expect([refused.status, refused.body.code]).toEqual([409, 'wrong-state']);
      }
      const changed = await service.patch<ProblemBody>(`/sessions/${id}`, {
        version: 3,
        visitKind: 'refresh',
      });
      expect([changed.status, changed.body.code]).toEqual([409, 'wrong-state']);
    });

    it('refuses a step that lies in the future', async () => {
      const { id } = await plan();
      const answer = await service.post<ProblemBody>(`/sessions/${id}/setup`, { occurredAt: inDays(1) });
      expect([answer.status, answer.body.code]).toEqual([400, 'unusable-time']);
      expect((await service.seen<Written>(`/sessions/${id}`)).state).toBe('planned');
    });

    it('begins a walk-in with a new client in one call', async () => {
      const walkIn = { client: { name: 'Walk Inn' }, artistId, procedureId, visitKind: 'patch test' };
      const begun = await service.made<Written>('/sessions/walk-in', walkIn);
      expect(begun.state).toBe('in setup');
      expect(JSON.stringify(begun)).not.toContain('Walk');
      expect((await service.seen<{ name: string }>(`/clients/${begun.clientId}`)).name).toBe('Walk Inn');
      expect((await service.seen<{ inSetupAt: string }>(`/sessions/${begun.id}`)).inSetupAt).not.toBeNull();
    });

    it.each([
      ['both a known and a new client', () => ({ clientId, client: { name: 'Two' } })],
      ['no client at all', () => ({})],
      ['a new client without a name', () => ({ client: {} })],
      ['a client that is no person', () => ({ client: null })],
    ])('refuses a walk-in with %s and makes no client', async (_, who) => {
      const before = (await service.seen<{ items: unknown[] }>('/clients?limit=200')).items.length;
      const answer = await service.post<ProblemBody>('/sessions/walk-in', {
        ...who(),
        artistId,
        procedureId,
        visitKind: 'patch test',
      });
      expect([answer.status, answer.body.code]).toEqual([400, 'invalid-fields']);
      expect((await service.seen<{ items: unknown[] }>('/clients?limit=200')).items.length).toBe(before);
    });

    it('makes no client when the walk-in itself is refused', async () => {
      const before = (await service.seen<{ items: unknown[] }>('/clients?limit=200')).items.length;
      const client = { name: 'Never' };
      const answer = await service.post('/sessions/walk-in', {
        client,
        artistId: uuidv7(),
        procedureId,
        visitKind: 'patch test',
      });
      expect(answer.status).toBe(404);
      expect((await service.seen<{ items: unknown[] }>('/clients?limit=200')).items.length).toBe(before);
    });
  });

  describe('the list', () => {
    it('shows the sessions of local days in order, each once, page by page', async () => {
      const guest = (await service.made<{ id: string }>('/clients', { name: 'Lena Winter' })).id;
      // Midnight in Vienna on 2027-03-28 is 23:00 the day before in UTC; summer time begins that night.
      const starts = [
        '2027-03-27T22:59:00Z',
        '2027-03-27T23:00:00Z',
        '2027-03-28T21:59:59Z',
        '2027-03-28T22:00:00Z',
      ];
      const ids: string[] = [];
      for (const plannedStart of starts) ids.push((await plan({ clientId: guest, plannedStart })).id);
      const onThatDay = await service.seen<Listed>('/sessions?from=2027-03-28&to=2027-03-28');
      expect(onThatDay.items.map((session) => session.id)).toEqual(ids.slice(1, 3));
      expect(onThatDay.items[0]).toMatchObject({
        clientName: 'Lena Winter',
        procedureName: 'Powdered brows',
      });

      const seen: string[] = [];
      let after: string | null = null;
      do {
        const cursor: string = after === null ? '' : `&after=${after}`;
        const page: Listed = await service.seen(`/sessions?clientId=${guest}&limit=1${cursor}`);
        seen.push(...page.items.map((session) => session.id));
        after = page.next;
      } while (after !== null);
      expect(seen).toEqual(ids);
      const nowhere = await service.get<ProblemBody>(`/sessions?after=${uuidv7()}`);
      expect([nowhere.status, nowhere.body.code]).toEqual([400, 'invalid-fields']);
    });

    it('reaches to the end of time', async () => {
      const { id } = await plan();
      const listed = await service.seen<Listed>('/sessions?from=2026-01-01&to=9999-12-31&limit=200');
      expect(listed.items.map((session) => session.id)).toContain(id);
    });

    it('is narrowed by state and artist', async () => {
      const other = (await service.made<{ id: string }>('/people', { name: 'Noa', role: 'artist' })).id;
      const planned = await plan({ artistId: other });
      const cancelled = await plan({ artistId: other });
      await service.made(`/sessions/${cancelled.id}/cancellation`);
      const of = async (query: string) =>
        (await service.seen<Listed>(`/sessions?artistId=${other}${query}`)).items.map(
          (session) => session.id,
        );
      expect((await of('')).sort()).toEqual([planned.id, cancelled.id].sort());
      expect(await of('&state=cancelled')).toEqual([cancelled.id]);
    });

    it.each([
      ['from=2027-02-29', 'unusable-date'],
      ['from=2027-03-02&to=2027-03-01', 'unusable-date'],
      ['from=yesterday', 'invalid-fields'],
      ['state=lost', 'invalid-fields'],
      ['limit=0', 'invalid-fields'],
      ['limit=201', 'invalid-fields'],
      ['colour=red', 'invalid-fields'],
    ])('refuses %s', async (query, code) => {
      const answer = await service.get<ProblemBody>(`/sessions?${query}`);
      expect([answer.status, answer.body.code]).toEqual([400, code]);
    });
  });

  describe('kit lists', () => {
    let cartridgeId: string;
    let configuration: string;
    beforeAll(async () => {
      const makerId = (await service.made<{ id: string }>('/makers', { name: 'Nadelwerk' })).id;
      const cartridge = await service.made<{ id: string }>('/products', {
        kind: 'cartridge',
        makerId,
        name: 'Liner',
        points: 3,
        grouping: 'round liner',
        diameterHundredthsMillimetre: 30,
        taper: 'long',
        machineFit: 'Universal',
      });
      cartridgeId = cartridge.id;
      configuration =
        '3 points, round liner, 30 hundredths of a millimetre, long taper, membrane not counted, fits universal';
    });
    const put = (items: object[], more: object = {}) =>
      service.put<ProblemBody & { version: number }>(`/procedures/${procedureId}/kit-list`, {
        items,
        ...more,
      });

    it('are the artist’s own, else the procedure’s, else empty', async () => {
      const path = `/procedures/${procedureId}/kit-list`;
      expect(await service.seen(path)).toEqual({ procedureId, artistId: null, items: [], version: null });
      expect((await put([{ productId: cartridgeId, quantity: 2 }])).status).toBe(200);
      expect(await service.seen(`${path}?artistId=${artistId}`)).toMatchObject({
        artistId: null,
        items: [{ productId: cartridgeId, productName: 'Nadelwerk Liner', configuration: null, quantity: 2 }],
      });
      expect((await put([{ configuration, quantity: 1 }], { artistId })).status).toBe(200);
      expect(await service.seen(`${path}?artistId=${artistId}`)).toMatchObject({
        artistId,
        items: [{ productId: null, configuration, quantity: 1 }],
      });
      expect(await service.seen(path)).toMatchObject({ artistId: null, items: [{ quantity: 2 }] });
    });

    it('are replaced from the version they stand at', async () => {
      expect((await put([])).body.code).toBe('stale-version');
      expect((await put([], { version: 7 })).body.code).toBe('stale-version');
      const replaced = await put([], { version: 1 });
      expect([replaced.status, replaced.body.version]).toEqual([200, 2]);
    });

    it.each([
      ['a product that is unknown', () => [{ productId: uuidv7(), quantity: 1 }], 404, 'not-found'],
      ['a configuration that is unknown', () => [{ configuration: '99 points', quantity: 1 }]],
      ['a line with both', () => [{ productId: cartridgeId, configuration, quantity: 1 }]],
      ['a line with neither', () => [{ quantity: 1 }]],
      ['no quantity', () => [{ productId: cartridgeId, quantity: 0 }]],
      ['half a piece', () => [{ productId: cartridgeId, quantity: 0.5 }]],
      ['too many', () => [{ productId: cartridgeId, quantity: 101 }]],
      [
        'the same thing twice',
        () => [
          { productId: cartridgeId, quantity: 1 },
          { productId: cartridgeId, quantity: 2 },
        ],
      ],
    ])('refuse %s', async (_, items, status = 400, code = 'invalid-fields') => {
      const answer = await put(items(), { version: 2 });
      expect([answer.status, answer.body.code]).toEqual([status, code]);
    });
  });
});
