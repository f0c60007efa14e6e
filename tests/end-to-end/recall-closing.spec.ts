import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { AlertPageView } from '../../src/alerts/alerts.views.js';
import type { ClosingView, ObstacleView, ReadinessView } from '../../src/recalls/closing/closing.views.js';
import type { OpenedRecallView, RecallLotPageView } from '../../src/recalls/recalls.views.js';
import type { RecallReportView } from '../../src/recalls/report/recall-report.views.js';
import type { RecordedUsesView } from '../../src/sessions/late-records.views.js';
import { pagesOf, textOn } from '../support/pdf-pages.js';
import { PlainSql } from '../support/plain-sql.js';
import { makeSampleStudio, receive, type SampleStudio } from '../support/sample-studio.js';
import { type ProblemBody, type RunningService, usualEngine } from '../support/service.js';
import { startStudio } from '../support/shared-service.js';
import { studioOfOtherChain } from '../support/signing-in.js';

const clientName = 'Wilhelmina Zwetschkenbaum';

interface Refusal extends ProblemBody {
  obstacles: ObstacleView[];
}

/** Some days ago, at noon in Vienna. */
const daysAgo = (days: number) =>
  `${new Date(Date.now() - days * 86_400_000).toISOString().slice(0, 10)}T11:00:00.000Z`;

describe.each(usualEngine)('the end of a recall, on %s', (engine) => {
  let service: RunningService;
  let studio: SampleStudio;
  let sql: PlainSql;
  let stranger: Awaited<ReturnType<typeof studioOfOtherChain>>;
  let second: string;

  beforeAll(async () => {
    service = await startStudio(engine);
    studio = await makeSampleStudio(service);
    sql = await PlainSql.connect(service, 'read');
    stranger = await studioOfOtherChain(service);
    second = (await service.made<{ id: string }>('/people', { name: 'Bea Zweite', role: 'manager' })).id;
  });
  afterAll(async () => {
    await sql.close();
    await service.dispose();
  });

  /** Two bottles of one lot, one of which was used on a client, and a lot that is nearly called so. */
  async function recalled(code: string) {
    // A product of its own, since uses of one product concern each other.
    const { id: productId } = await service.made<{ id: string }>('/products', {
      ...{ kind: 'pigment', makerId: studio.makerId, name: `Umber ${code}`, volumeMicrolitres: 10_000 },
    });
    const { lot, containers } = await receive(service, studio, { productId, code, quantity: 2 });
    const client = await service.made<{ id: string; reference: string }>('/clients', { name: clientName });
    const [used, sealed] = containers;
    await service.made<RecordedUsesView>('/sessions/late', {
      ...{ source: 'paper', occurredAt: daysAgo(3), clientId: client.id, artistId: studio.ownerId },
      ...{ procedureId: studio.procedureId, visitKind: 'patch test', signedBy: studio.ownerId },
      uses: [{ knownBy: 'own label', microlitres: 80, containerId: used?.id }],
    });
    const scope = {
      items: [{ gtins: [], productIds: [productId], lots: [{ kind: 'code', code }], openEnded: false }],
    };
    return { productId, lotId: lot.id, client, used: used?.id ?? '', sealed: sealed?.id ?? '', code, scope };
  }
  type Recalled = Awaited<ReturnType<typeof recalled>>;
  const openRecall = async ({ scope }: Recalled, body: object = {}) =>
    (await service.made<OpenedRecallView>('/recalls', { title: 'Umber, Maßstäbe', scope, ...body })).id;
  const readiness = (id: string) => service.seen<ReadinessView>(`/recalls/${id}/readiness`);
  const names = (obstacles: readonly ObstacleView[]) => obstacles.map(({ obstacle }) => obstacle);
  const close = (id: string, body: object = {}) =>
    service.post<ClosingView & Refusal>(`/recalls/${id}/closing`, {
      ...{ signedBy: studio.ownerId, overrides: [] },
      ...body,
    });
  const overridden = (obstacles: readonly ObstacleView[]) =>
    obstacles.map(({ obstacle }) => ({ obstacle, reason: `It does not matter: ${obstacle}` }));
  const reportOf = (id: string) => service.seen<RecallReportView>(`/recalls/${id}/report.json`);
  const alertOf = async (id: string) =>
    (await service.seen<AlertPageView>('/alerts?limit=200')).items.find(
      ({ kind, subjectId }) => kind === 'recall open' && subjectId === id,
    );
  async function pagesOfReport(id: string): Promise<string[]> {
    const answer = await service.fetch(`${service.studio}/recalls/${id}/report.pdf`);
    expect(answer.headers.get('content-type')).toBe('application/pdf');
    return pagesOf(Buffer.from(await answer.arrayBuffer())).map(textOn);
  }
  const tell = (id: string, clientId: string, outcome: string) =>
    service.made(`/recalls/${id}/contacts`, {
      ...{ audience: 'client', clientId, channel: 'telephone', outcome },
    });
  const find = (id: string, containerId: string, body: object = { result: 'found', tag: 'red 1' }) =>
    service.made(`/recalls/${id}/containers/${containerId}/findings`, body);
  const dispose = (id: string, containerId: string) =>
    service.made(`/recalls/${id}/containers/${containerId}/dispositions`, {
      ...{ kind: 'destroyed', witnessId: second, reference: 'certificate 77' },
    });

  it('is refused while anything stands against it, and names each with its numbers, until all is seen to', async () => {
    const given = await recalled('CL-100');
    const near = await receive(service, studio, { productId: given.productId, code: 'CL 100' });
    const id = await openRecall(given);
    const first = await close(id);
    expect([first.status, first.body.code]).toEqual([409, 'decision-needed']);
    expect(first.body.obstacles).toMatchObject([
      { obstacle: 'undecided lots', count: 1, of: 2 },
      {
        obstacle: 'clients not told',
        count: 1,
        of: 1,
        counts: [{ what: 'not tried', count: 1 }, { count: 0 }],
      },
      { obstacle: 'containers not found', count: 3, of: 3 },
      { obstacle: 'stock without disposition', count: 2, counts: [{ what: 'pieces', count: 2 }, {}] },
    ]);
    expect(first.body.detail).toContain('1 of 2 lots may be meant');
    expect(await readiness(id)).toMatchObject({
      ready: false,
      state: 'open',
      obstacles: first.body.obstacles,
    });

    await service.made(`/recalls/${id}/lots/${near.lot.id}/decisions`, {
      ...{ decision: 'not affected', reason: 'The box says another shade.' },
    });
    await tell(id, given.client.id, 'no answer');
    expect((await readiness(id)).figures.clients).toMatchObject({ exposed: 1, triedInVain: 1, notTried: 0 });
    await tell(id, given.client.id, 'reached');
    await find(id, given.used);
    expect(names((await readiness(id)).obstacles)).toEqual([
      'containers not found',
      'stock without disposition',
    ]);
    await find(id, given.sealed);
    await dispose(id, given.used);
    await dispose(id, given.sealed);
    expect(await readiness(id)).toMatchObject({ ready: true, obstacles: [] });

    expect(await alertOf(id)).toMatchObject({ closedAt: null });
    const body = { id: uuidv7(), secondSignedBy: second };
    const closed = await close(id, body);
    expect(closed.status, JSON.stringify(closed.body)).toBe(201);
    expect(closed.body).toMatchObject({
      ...{ recallId: id, outcome: 'closed', signedBy: studio.ownerId, secondSignedBy: second },
      ...{ overridden: [], standingHoldsStaying: 1, score: null },
    });
    expect((await close(id, body)).body).toEqual(closed.body);
    expect(await alertOf(id)).toBeUndefined();
    expect((await close(id)).body.code).toBe('wrong-state');
    expect(await readiness(id)).toMatchObject({ ready: false, state: 'closed' });
  });

  it('with a reason for each obstacle comes all the same; what is left stays held, and what arrives later too', async () => {
    const given = await recalled('CL-200');
    const [item] = given.scope.items;
    const lots = [...(item?.lots ?? []), { kind: 'code', code: 'QX-7745' }];
    const id = await openRecall(given, { scope: { items: [{ ...item, lots }] } });
    const { obstacles } = await readiness(id);
    const [, ...rest] = overridden(obstacles);
    expect((await close(id, { overrides: rest })).body.obstacles).toHaveLength(1);
    const closed = await close(id, {
      overrides: [...overridden(obstacles), { obstacle: 'pieces unexplained', reason: 'Nothing is.' }],
    });
    expect(closed.body).toMatchObject({
      overridden: names(obstacles),
      holdsStaying: 1,
      standingHoldsStaying: 1,
    });
    const later = await receive(service, studio, { productId: given.productId, code: 'QX-7745' });
    expect(later.holds).toMatchObject([{ reason: 'recall notice', lotId: later.lot.id }]);
    const report = await reportOf(id);
    expect(report.closing?.overrides).toEqual(overridden(obstacles));
  });

  it('is signed by whoever closes it, alone or with another person who works there', async () => {
    const id = await openRecall(await recalled('CL-300'));
    const refusal = async (body: object) => {
      const { status, body: problem } = await close(id, body);
      return [status, problem.code];
    };
    expect(await refusal({ signedBy: second })).toEqual([403, 'not-allowed']);
    expect(await refusal({ secondSignedBy: studio.ownerId })).toEqual([400, 'invalid-fields']);
    expect(await refusal({ secondSignedBy: uuidv7() })).toEqual([404, 'not-found']);
    const gone = await service.made<{ id: string; version: number }>('/people', {
      ...{ name: 'Cora Fort', role: 'artist' },
    });
    await service.patch(`/people/${gone.id}`, { version: gone.version, state: 'left' });
    expect(await refusal({ secondSignedBy: gone.id })).toEqual([409, 'wrong-state']);
    const twice = { obstacle: 'clients not told', reason: 'x' };
    expect(await refusal({ overrides: [twice, twice] })).toEqual([400, 'invalid-fields']);
  });

  it('leaves a report that says who was exposed, told and what was found, and never changes', async () => {
    const given = await recalled('CL-400');
    const id = await openRecall(given, {
      ...{ issuer: 'Halden Colour Works', reference: 'R-400', risk: 'Microbial contamination.' },
      notice: { source: 'pasted', text: 'Umber Warm 02, lot CL-400' },
    });
    const open = await reportOf(id);
    expect(open).toMatchObject({
      closing: null,
      recall: { state: 'open', endedAt: null },
      exposures: { clients: 1, certainClients: 1, sessions: 1, leftOut: 0 },
    });
    expect((await pagesOfReport(id)).every((text) => text.includes('not closed'))).toBe(true);

    await find(id, given.sealed);
    await find(id, given.used, { result: 'not found' });
    await tell(id, given.client.id, 'reached');
    await dispose(id, given.sealed);
    await close(id, { overrides: overridden((await readiness(id)).obstacles) });

    const report = await reportOf(id);
    expect(report).toMatchObject({
      recall: { state: 'closed' },
      closing: { outcome: 'closed', signedBy: studio.ownerId },
      lots: [{ code: 'CL-400', grade: 'certain', standing: 'affected', decision: null }],
      exposures: {
        items: [
          {
            ...{ clientReference: given.client.reference, day: daysAgo(3).slice(0, 10) },
            ...{ visitKind: 'patch test', lotCode: 'CL-400', certainty: 'certain', as: 'itself' },
          },
        ],
      },
      contacts: {
        counts: [{ audience: 'client', outcome: 'reached', attempts: 1 }],
        clients: [{ clientReference: given.client.reference, standing: 'reached', attempts: 1 }],
      },
      dispositions: [{ kind: 'destroyed', pieces: 1, reference: 'certificate 77', witnessId: second }],
      balance: [{ code: 'CL-400', cameInPieces: 2, wastedPieces: 1, onHandPieces: 1, notAccountedPieces: 1 }],
    });
    expect(report.containers.map(({ standing }) => standing).sort()).toEqual(['disposed', 'not found']);
    expect(report.timeline.map(({ event }) => event)).toEqual([
      ...['opened', 'held', 'looked for', 'told', 'disposed', 'closed'],
    ]);
    expect(report.scopes[0]).toMatchObject({
      words: ['Umber CL-400 by Halden Colour Works, chosen from the register: lot CL-400.'],
      ...{ reference: 'R-400', noticeSource: 'pasted', risk: 'Microbial contamination.' },
    });
    expect(JSON.stringify(report)).not.toContain(clientName);

    const pages = await pagesOfReport(id);
    const whole = pages.join('\n');
    for (const [index, text] of pages.entries()) {
      expect(text).toContain(`Page ${index + 1} of ${pages.length}`);
      expect(text).toContain('Umber, Maßstäbe');
    }
    expect(whole).not.toContain('not closed');
    expect(whole).not.toContain(clientName);
    for (const said of [
      'Recall report',
      'R-400',
      'Microbial contamination.',
      given.client.reference,
      'certificate 77',
      'Bea Zweite',
      'Pieces are exact',
      'It does not matter: containers not found',
      'Signature by hand',
    ]) {
      expect(whole).toContain(said);
    }

    // What is kept is what is shown, but for what is only known afterwards.
    const [row] = await sql.rows<{ facts: string }>('SELECT facts FROM recall_closing WHERE recall_id = $1', [
      id,
    ]);
    expect(row?.facts).not.toContain(clientName);
    const { people: _, closing: __, recall: ___, ...kept } = report;
    const { recall: ____, ...facts } = JSON.parse(row?.facts ?? '{}') as Record<string, unknown>;
    expect(facts).toEqual(kept);
  });

  it('is undone when the recall is widened: it is open again, and its report is drawn up anew', async () => {
    const given = await recalled('CL-500');
    const more = await receive(service, studio, { productId: given.productId, code: 'ZK-9731' });
    const id = await openRecall(given);
    await close(id, { overrides: overridden((await readiness(id)).obstacles) });
    const { items } = given.scope;
    await service.made(`/recalls/${id}/scopes`, {
      reason: 'The maker added a lot',
      scope: {
        items: items.map((item) => ({ ...item, lots: [...item.lots, { kind: 'code', code: 'ZK-9731' }] })),
      },
    });
    const report = await reportOf(id);
    expect(report).toMatchObject({ closing: null, recall: { state: 'open', endedAt: null } });
    expect(report.lots.map(({ lotId }) => lotId).sort()).toEqual([given.lotId, more.lot.id].sort());
    expect(report.timeline.map(({ event }) => event)).toContain('closed');
    expect(report.timeline.at(-1)?.words).toContain('put on hold');
    expect((await readiness(id)).state).toBe('open');
    const { items: lots } = await service.seen<RecallLotPageView>(`/recalls/${id}/lots`);
    expect(lots).toHaveLength(2);
  });

  it('says in its document which characters that one cannot show; the data have them', async () => {
    const id = await openRecall(await recalled('CL-600'), { title: 'Лот CL-600 染料' });
    const whole = (await pagesOfReport(id)).join('\n');
    expect(whole).toContain('\u00bf\u00bf\u00bf CL-600 \u00bf\u00bf');
    expect(whole).toContain('characters are not shown as they were written');
    expect((await reportOf(id)).recall.title).toBe('Лот CL-600 染料');
  });

  it('is nothing for another studio', async () => {
    const id = await openRecall(await recalled('CL-700'));
    const there = `${service.url}/api/v1/studios/${stranger.studioId}/recalls/${id}`;
    const headers = { authorization: `Bearer ${stranger.token}` };
    for (const path of ['readiness', 'report.json', 'report.pdf', 'steps', 'studios']) {
      expect((await service.get(`${there}/${path}`, headers)).status, path).toBe(404);
    }
    const body = { signedBy: stranger.personId, overrides: [] };
    expect((await service.post(`${there}/closing`, body, headers)).status).toBe(404);
  });
});
