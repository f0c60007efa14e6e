import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { ClientView } from '../../src/clients/clients.views.js';
import type {
  ErasureAnswerPageView,
  ErasureAnswerView,
  ErasurePreviewView,
} from '../../src/clients/erasures.views.js';
import type { LegalClaimView } from '../../src/clients/legal-claims.views.js';
import type { StudioView } from '../../src/identity/studios.views.js';
import type { ClientRecordView, SessionView } from '../../src/sessions/session-record.views.js';
import type { TouchUpView } from '../../src/sessions/touch-up.views.js';
import type { LotTraceView, TraceView } from '../../src/sessions/trace.views.js';
import type { BlendView } from '../../src/stock/blends.views.js';
import { inconsistencies } from '../support/consistency.js';
import { releaseAlone } from '../support/photos.js';
import { PlainSql } from '../support/plain-sql.js';
import { makeSampleStudio, receive, type SampleStudio, walkIn } from '../support/sample-studio.js';
import {
  type Answer,
  type ProblemBody,
  type RunningService,
  startService,
  strictestEngine,
} from '../support/service.js';
import { makeTreatedClient, texts } from '../support/treated-client.js';

const yearsAgo = (years: number) => new Date(Date.now() - years * 365.25 * 86_400_000).toISOString();

describe.each(strictestEngine)('erasure on %s', (engine) => {
  let service: RunningService;
  let studio: SampleStudio;
  beforeAll(async () => {
    service = await startService(engine);
    studio = await makeSampleStudio(service);
  });
  afterAll(() => service.dispose());

  const ask = (clientId: string, more: object = {}) =>
    service.post<ErasureAnswerView & ProblemBody>(`/clients/${clientId}/erasure`, {
      ground: 'consent withdrawn',
      ...more,
    });
  const keepFor = async (settings: object): Promise<Answer<StudioView & ProblemBody>> => {
    const { version } = await service.seen<StudioView>('');
    return service.patch<StudioView & ProblemBody>('', { version, ...settings });
  };
  const byLaw = { retentionPreset: 'South Dakota' };
  const byOwnWill = { retentionPreset: 'own', retentionYears: 3 };
  const answers = async (clientId: string) =>
    (await service.seen<ErasureAnswerPageView>(`/clients/${clientId}/erasure`)).items;
  const preview = (clientId: string, ground = 'consent withdrawn') =>
    service.seen<ErasurePreviewView>(
      `/clients/${clientId}/erasure/preview?${new URLSearchParams({ ground })}`,
    );
  const newClient = async (name = 'Never Treated') =>
    (await service.made<{ id: string }>('/clients', { name, contact: `${name}@example.org` })).id;
  /** Somebody whose one visit is so long ago that no floor runs any more. */
  const longAgo = async (years = 6) => {
    const recorded = await service.made<{ id: string; clientId: string; clientReference: string }>(
      '/sessions/late',
      {
        source: 'paper',
        occurredAt: yearsAgo(years),
        client: { name: 'Long Ago', note: 'came by bicycle' },
        artistId: studio.ownerId,
        procedureId: studio.procedureId,
        visitKind: 'first session',
        uses: [{ productId: studio.umberId, code: `OLD-${uuidv7().slice(-8)}`, knownBy: 'typed', drops: 2 }],
        signedBy: studio.ownerId,
      },
    );
    const { uses } = await service.seen<SessionView>(`/sessions/${recorded.id}`);
    return {
      clientId: recorded.clientId,
      reference: recorded.clientReference,
      sessionId: recorded.id,
      lotId: uses[0]?.lotId ?? '',
    };
  };

  it('cannot be answered while the studio has not said how long it keeps records', async () => {
    const { clientId } = await makeTreatedClient(service, studio);
    const undecided = await ask(clientId);
    expect([undecided.status, undecided.body.code]).toEqual([409, 'decision-needed']);
    expect(await answers(clientId)).toEqual([]);
    const foreseen = await preview(clientId);
    expect(foreseen.answer).toBe('refused');
    expect(foreseen.obstacles.map(({ kind }) => kind)).toEqual(['retention not chosen']);
    // Whoever was never treated is kept by no rule.
    expect((await ask(await newClient())).body.answer).toBe('erased');
  });

  describe('by the rule that binds the studio', () => {
    it('shows the published floors with their sources, and what follows from a choice', async () => {
      const presets = await service.seen<object[]>('/retention-presets');
      expect(presets).toContainEqual({
        id: 'NEHA model code',
        jurisdiction: 'places that took over the NEHA Body Art Model Code',
        years: 3,
        source: 'NEHA Body Art Model Code, March 2024, §6.5',
        howSure: 'P',
      });
      expect((await service.seen<StudioView>('')).retention).toBeNull();
      expect((await keepFor(byLaw)).body).toMatchObject({
        retentionPreset: 'South Dakota',
        retentionYears: null,
        retention: { years: 2, law: 'ARSD 44:12:01:15' },
      });
      expect((await keepFor({ retentionYears: 4 })).body.retention).toEqual({
        years: 4,
        law: 'ARSD 44:12:01:15',
      });
      expect((await keepFor(byOwnWill)).body.retention).toEqual({ years: 3, law: null });
      expect((await keepFor({ retentionLaw: 'Hygiene act §7' })).body.retention).toEqual({
        years: 3,
        law: 'Hygiene act §7',
      });
    });

    it.each([
      ['fewer years than the preset', { retentionPreset: 'Howell', retentionYears: 2 }, 'retentionYears'],
      ['its own rule without years', { retentionPreset: 'own', retentionYears: null }, 'retentionYears'],
      ['a preset that was not verified, without years', { retentionPreset: 'Victoria' }, 'retentionYears'],
      ['another law beside a preset', { retentionPreset: 'Howell', retentionLaw: 'mine' }, 'retentionLaw'],
      ['a preset that is none', { retentionPreset: 'Atlantis' }, 'retentionPreset'],
      ['half a year', { retentionPreset: 'own', retentionYears: 0.5 }, 'retentionYears'],
    ])('refuses %s', async (_, settings, field) => {
      const refused = await keepFor(settings);
      expect([refused.status, refused.body.code]).toEqual([400, 'invalid-fields']);
      expect(refused.body.faults?.map((fault) => fault.field)).toEqual([field]);
    });
  });

  describe('is refused, and the refusal is an answer on record,', () => {
    it('while a law asks for the record (GDPR Art. 17(3)(b))', async () => {
      await keepFor(byLaw);
      const { clientId, reference } = await makeTreatedClient(service, studio);
      const foreseen = await preview(clientId);
      expect(await answers(clientId)).toEqual([]);
      const refused = await ask(clientId, { overrides: ['no legal obligation applies'] });
      expect(refused.status).toBe(201);
      expect(foreseen).toMatchObject({
        answer: 'refused',
        obstacles: refused.body.obstacles,
        openSessionIds: [],
      });
      expect(refused.body).toMatchObject({
        clientId,
        clientReference: reference,
        ground: 'consent withdrawn',
        answer: 'refused',
        obstacles: [
          { kind: 'legal obligation', article: 'GDPR Art. 17(3)(b)', overriddenBy: null, lotIds: [] },
        ],
        personId: studio.ownerId,
      });
      expect(refused.body.obstacles[0]?.message).toContain('ARSD 44:12:01:15');
      expect(await answers(clientId)).toEqual([refused.body]);
      expect((await service.seen<ClientView>(`/clients/${clientId}`)).name).toBe(texts.name);
    });

    it('counted from what was last added to the record, not from the visit alone', async () => {
      await keepFor(byLaw);
      const { clientId, sessionId } = await longAgo();
      await service.made(`/sessions/${sessionId}/healed-result`, { retainedColourPercent: 20 });
      const today = new Date().toISOString().slice(0, 10);
      const { obstacles } = (await ask(clientId)).body;
      expect(obstacles.map(({ kind }) => kind)).toEqual(['legal obligation']);
      expect(obstacles[0]?.message).toContain(`The record of the last visit, on ${today}`);
      const other = await longAgo();
      const { version } = await service.seen<SessionView>(`/sessions/${other.sessionId}`);
      await service.made(`/sessions/${other.sessionId}/complications`, {
        version,
        complications: 'itches after years',
      });
      expect((await ask(other.clientId)).body.answer).toBe('refused');
    });

    it('while the studio keeps it by its own will, until it says that no law applies', async () => {
      await keepFor(byOwnWill);
      const { clientId } = await makeTreatedClient(service, studio);
      expect((await ask(clientId)).body).toMatchObject({
        answer: 'refused',
        obstacles: [{ kind: 'own retention', article: null }],
      });
      const erased = await ask(clientId, { overrides: ['no legal obligation applies'] });
      expect(erased.body).toMatchObject({
        answer: 'erased',
        obstacles: [{ kind: 'own retention', overriddenBy: 'no legal obligation applies' }],
      });
      expect((await answers(clientId)).map(({ answer }) => answer)).toEqual(['erased', 'refused']);
    });

    it('while a lot that touched the client is on hold (GDPR Art. 17(3)(c))', async () => {
      await keepFor(byLaw);
      const { clientId, lotId } = await longAgo();
      const { id: holdId } = await service.made<{ id: string }>('/holds', {
        lotId,
        kind: 'recall',
        reason: 'recall notice',
      });
      expect((await ask(clientId)).body).toMatchObject({
        answer: 'refused',
        obstacles: [{ kind: 'held lot', article: 'GDPR Art. 17(3)(c)', lotIds: [lotId] }],
      });
      await releaseAlone(service, holdId, 'the notice was withdrawn');
      expect((await ask(clientId)).body).toMatchObject({ answer: 'erased', obstacles: [] });
    });

    it('while a lot is on hold of which a house blend was made that touched the client', async () => {
      await keepFor({ ...byLaw, houseBlends: 'allowed' });
      const parents = await Promise.all(
        ['HB-1', 'HB-2'].map((code) => receive(service, studio, { productId: studio.umberId, code })),
      );
      for (const { containers } of parents) {
        await service.made(`/containers/${containers[0]?.id}/open`);
      }
      const blend = await service.made<BlendView>('/blends', {
        productId: studio.thinnerId,
        placeId: studio.placeId,
        parents: parents.map(({ containers }) => ({ containerId: containers[0]?.id, microlitres: 500 })),
      });
      const clientId = await newClient('Blended');
      const sessionId = await walkIn(service, studio, { clientId });
      await service.made(`/sessions/${sessionId}/completion`, {
        lines: [],
        besides: [{ containerId: blend.containerId, drops: 1, reason: 'poured from the cup' }],
        complications: null,
        signedBy: studio.ownerId,
      });
      await service.made('/holds', { lotId: parents[1]?.lot.id, kind: 'quarantine', reason: 'doubt' });
      expect((await ask(clientId)).body.obstacles.map(({ kind }) => kind)).toEqual([
        'legal obligation',
        'held lot',
      ]);
    });

    it('while a legal claim stands, whatever is said (GDPR Art. 17(3)(e))', async () => {
      await keepFor(byLaw);
      const { clientId } = await longAgo();
      const claim = await service.made<{ id: string }>(`/clients/${clientId}/legal-claims`, {
        reason: 'asks for damages',
      });
      const refused = await ask(clientId, {
        overrides: ['no legal obligation applies', 'the client was told of it'],
      });
      expect(refused.body).toMatchObject({
        answer: 'refused',
        obstacles: [{ kind: 'legal claim', article: 'GDPR Art. 17(3)(e)', overriddenBy: null }],
      });
      await service.made(`/clients/${clientId}/legal-claims/${claim.id}/end`, { reason: 'settled' });
      expect(await service.seen<LegalClaimView[]>(`/clients/${clientId}/legal-claims`)).toMatchObject([
        { id: claim.id, reason: 'asks for damages', endedBecause: 'settled', endedBy: studio.ownerId },
      ]);
      const again = await service.post<ProblemBody>(`/clients/${clientId}/legal-claims/${claim.id}/end`, {
        reason: 'once more',
      });
      expect([again.status, again.body.code]).toEqual([409, 'wrong-state']);
      expect((await ask(clientId)).body.answer).toBe('erased');
    });
  });

  it('waits for a visit that is planned or under way, and says which', async () => {
    const clientId = await newClient('Comes Again');
    const sessionId = await walkIn(service, studio, { clientId });
    const refused = await ask(clientId);
    expect([refused.status, refused.body.code]).toEqual([409, 'wrong-state']);
    expect(refused.body).toMatchObject({ sessionIds: [sessionId] });
    await service.send('POST', `/sessions/${sessionId}/cancellation`, { id: uuidv7() });
    expect((await ask(clientId)).body.answer).toBe('erased');
  });

  it.each([
    ['no ground', { ground: undefined }, 'ground'],
    ['a ground that is none', { ground: 'because' }, 'ground'],
    ['an override that is none', { overrides: ['please'] }, 'overrides'],
  ])('refuses %s', async (_, body, field) => {
    const refused = await ask(await newClient(), body);
    expect([refused.status, refused.body.faults?.map((fault) => fault.field)]).toEqual([400, [field]]);
  });

  it('finds no client of another studio', async () => {
    const unknown = await ask(studio.placeId);
    expect([unknown.status, unknown.body.code]).toEqual([404, 'not-found']);
  });

  describe('once carried out', () => {
    let gone: Awaited<ReturnType<typeof makeTreatedClient>>;
    let requestId: string;
    let answer: ErasureAnswerView;
    beforeAll(async () => {
      await keepFor(byOwnWill);
      gone = await makeTreatedClient(service, studio, { name: 'Wilma Vergangen' });
      // The service has their key in memory.
      await service.seen(`/sessions/${gone.sessionId}`);
      requestId = uuidv7();
      const erased = await ask(gone.clientId, {
        id: requestId,
        overrides: ['no legal obligation applies'],
      });
      answer = erased.body;
      expect(answer.answer).toBe('erased');
    });

    it('leaves the reference and nothing else of who they were', async () => {
      const client = await service.seen<ClientView>(`/clients/${gone.clientId}`);
      expect(client).toMatchObject({ reference: gone.reference, name: null, contact: null, note: null });
      expect(client.erasedAt).toBe(answer.recordedAt);
      for (const text of ['Wilma Vergangen', texts.contact]) {
        const found = await service.send<ClientView[]>('POST', '/clients/search', { text });
        expect(found.body.map(({ id }) => id)).not.toContain(gone.clientId);
      }
      const byReference = await service.send<ClientView[]>('POST', '/clients/search', {
        text: gone.reference,
      });
      expect(byReference.body.map(({ id, name }) => [id, name])).toEqual([[gone.clientId, null]]);
    });

    it('leaves which lots touched them, both ways', async () => {
      const trace = await service.seen<LotTraceView>(`/lots/${gone.lotId}/trace`);
      expect(trace.totals).toEqual({ uses: 2, reversedUses: 1, sessions: 1, clients: 1 });
      expect(trace.items.map((use) => use.clientReference)).toEqual([gone.reference, gone.reference]);
      const back = await service.seen<TraceView>(`/clients/${gone.clientId}/trace`);
      expect(back.items.map((use) => use.lotId)).toEqual([gone.lotId, gone.lotId]);
    });

    it('shows their visits without a word about them', async () => {
      const session = await service.seen<SessionView>(`/sessions/${gone.sessionId}`);
      expect(session).toMatchObject({
        client: { reference: gone.reference, name: null },
        bodyPlaceDetail: null,
        complications: null,
        healedResult: null,
        uses: [{ reason: null }, { reason: null, reversal: { reason: null } }],
      });
      const record = await service.seen<ClientRecordView>(`/sessions/${gone.sessionId}/record`);
      expect(record.pigments.map(({ productName }) => productName)).toEqual(['Umber']);
      const [touchUp] = await service.seen<TouchUpView[]>(`/clients/${gone.clientId}/touch-ups`);
      expect(touchUp).toMatchObject({ sessionId: gone.sessionId, healedResult: null });
      expect(await service.seen(`/sessions?clientId=${gone.clientId}`)).toMatchObject({
        items: [{ clientReference: gone.reference, clientName: null }],
      });
    });

    it('takes nothing personal any more, and says so', async () => {
      const visit = {
        clientId: gone.clientId,
        artistId: studio.ownerId,
        procedureId: studio.procedureId,
        visitKind: 'touch-up',
      };
      const { version } = await service.seen<SessionView>(`/sessions/${gone.sessionId}`);
      const attempts: [string, string, object][] = [
        ['PATCH', `/clients/${gone.clientId}`, { version: 2, name: 'Back' }],
        ['POST', '/sessions', { ...visit, plannedStart: new Date().toISOString() }],
        ['POST', '/sessions/walk-in', visit],
        [
          'POST',
          '/sessions/late',
          { ...visit, source: 'late', occurredAt: yearsAgo(1), uses: [], signedBy: studio.ownerId },
        ],
        ['POST', `/sessions/${gone.sessionId}/complications`, { version, complications: 'itching' }],
        ['POST', `/sessions/${gone.sessionId}/healed-result`, { version, retainedColourPercent: 50 }],
        ['POST', `/clients/${gone.clientId}/legal-claims`, { reason: 'sues' }],
        ['POST', `/clients/${gone.clientId}/erasure`, { ground: 'objection' }],
      ];
      for (const [method, path, body] of attempts) {
        const refused = await service.send<ProblemBody>(method, path, { id: uuidv7(), ...body });
        expect([refused.status, refused.body.code], path).toEqual([409, 'wrong-state']);
        expect(refused.body.detail, path).toContain('erased');
      }
    });

    it('still takes what touched them, and what touched them not, but no words with it', async () => {
      const gel = await receive(service, studio, { productId: studio.gelId, code: 'GEL-LATE' });
      const use = { containerId: gel.containers[0]?.id, knownBy: 'own label' };
      const uses = `/sessions/${gone.sessionId}/uses`;
      const worded = await service.post<ProblemBody>(uses, { uses: [{ ...use, reason: 'she told later' }] });
      expect([worded.status, worded.body.code]).toEqual([409, 'wrong-state']);
      const added = await service.made<{ uses: { id: string }[] }>(uses, { uses: [use] });
      const trace = await service.seen<LotTraceView>(`/lots/${gel.lot.id}/trace`);
      expect(trace.items.map((item) => item.clientReference)).toEqual([gone.reference]);
      const reversal = `${uses}/${added.uses[0]?.id}/reversal`;
      expect((await service.post(reversal, { reason: 'not she' })).status).toBe(409);
      expect((await service.post(reversal)).status).toBe(201);
      expect((await service.seen<LotTraceView>(`/lots/${gel.lot.id}/trace`)).totals).toMatchObject({
        reversedUses: 1,
        clients: 0,
      });
    });

    it('still asks for a reason where one can be kept', async () => {
      const other = await makeTreatedClient(service, studio);
      const refused = await service.post<ProblemBody>(
        `/sessions/${other.sessionId}/uses/${other.useId}/reversal`,
      );
      expect([refused.status, refused.body.faults?.map(({ field }) => field)]).toEqual([400, ['reason']]);
    });

    it('answers a repeated request as before', async () => {
      const again = await ask(gone.clientId, { id: requestId, overrides: ['no legal obligation applies'] });
      expect([again.status, again.body]).toEqual([201, answer]);
    });

    it('stands in the list beside the backups, by ids alone', () => {
      const lines = readFileSync(join(service.dataFolder, 'backups', 'erasures.jsonl'), 'utf8')
        .trim()
        .split('\n')
        .map((line) => JSON.parse(line) as Record<string, string>);
      expect(lines.filter(({ clientId }) => clientId === gone.clientId)).toEqual([
        {
          studioId: service.studioId,
          clientId: gone.clientId,
          dataKeyId: expect.any(String),
          erasedAt: answer.recordedAt,
        },
      ]);
    });

    it('leaves a record that agrees with its audit log, and no key, hash or sealed field that could be cleared', async () => {
      const sql = await PlainSql.connect(service, 'read');
      expect(await inconsistencies(sql)).toEqual([]);
      const [client] = await sql.rows('SELECT * FROM client WHERE id = $1', [gone.clientId]);
      expect(client).toMatchObject({
        name_sealed: null,
        contact_sealed: null,
        note_sealed: null,
        name_hash: null,
        contact_hash: null,
        erased_at: answer.recordedAt,
      });
      expect(
        await sql.rows('SELECT * FROM data_key WHERE id = $1', [String(client?.data_key_id)]),
      ).toMatchObject([{ wrapped_key: null, destroyed_at: answer.recordedAt }]);
      expect(
        await sql.rows(
          `SELECT id FROM session WHERE client_id = $1
             AND coalesce(body_place_detail_sealed, complications_sealed, healed_result_sealed) IS NOT NULL`,
          [gone.clientId],
        ),
      ).toEqual([]);
      const kept = await sql.rows('SELECT answer FROM accepted_request');
      const audit = await sql.rows('SELECT payload FROM audit_entry');
      for (const text of [...Object.values(texts), 'Wilma']) {
        expect(JSON.stringify([kept, audit]), text).not.toContain(text);
      }
      await sql.close();
    });
  });
});
