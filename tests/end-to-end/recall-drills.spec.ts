import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { AlertPageView } from '../../src/alerts/alerts.views.js';
import type { ChainProgressView } from '../../src/recalls/chain/chain-progress.views.js';
import type {
  ChainRecordQualityView,
  RecordQualityView,
} from '../../src/recalls/chain/record-quality.views.js';
import type { ClosingView, ReadinessView } from '../../src/recalls/closing/closing.views.js';
import { drawnLot } from '../../src/recalls/drills/drawn-lot.js';
import type {
  ChainDrillScheduleView,
  DrillPageView,
  DrillScheduleView,
  OpenedDrillView,
  RecallStepsView,
} from '../../src/recalls/drills/drills.views.js';
import type { RecallView } from '../../src/recalls/recalls.views.js';
import type { RecallReportView } from '../../src/recalls/report/recall-report.views.js';
import type { RecordedUsesView } from '../../src/sessions/late-records.views.js';
import type { OpenHoldPageView } from '../../src/stock/holds.views.js';
import { PlainSql } from '../support/plain-sql.js';
import { makeSampleStudio, type ReceivedLine, receive, type SampleStudio } from '../support/sample-studio.js';
import { type ProblemBody, type RunningService, startService, usualEngine } from '../support/service.js';
import { ServiceClock } from '../support/service-clock.js';
import { type FurtherStudio, personOfRole, studioOfSameChain } from '../support/signing-in.js';

/** Some days ago, at noon in Vienna. */
const daysAgo = (days: number) =>
  `${new Date(Date.now() - days * 86_400_000).toISOString().slice(0, 10)}T11:00:00.000Z`;
const dayIn = (days: number) => new Date(Date.now() + days * 86_400_000).toISOString().slice(0, 10);

describe.each(usualEngine)('drills and the chain, on %s', (engine) => {
  const clock = new ServiceClock();
  let service: RunningService;
  let studio: SampleStudio;
  let sql: PlainSql;
  let sister: FurtherStudio;
  let lot: ReceivedLine;

  beforeAll(async () => {
    service = await startService(engine, { environment: clock.environment });
    studio = await makeSampleStudio(service);
    sql = await PlainSql.connect(service, 'read');
    sister = await studioOfSameChain(service);
    lot = await receive(service, studio, { productId: studio.umberId, code: 'DR-7104', quantity: 2 });
    for (const [index, knownBy] of ['own label', 'picked from a list', 'typed', 'own label'].entries()) {
      await used({ knownBy }, 10 + index);
    }
  });
  afterAll(async () => {
    await sql.close();
    await service.dispose();
    clock.dispose();
  });

  const used = (use: object, day: number) =>
    service.made<RecordedUsesView>('/sessions/late', {
      ...{ source: 'paper', occurredAt: daysAgo(day), clientId: studio.clientId, artistId: studio.ownerId },
      ...{ procedureId: studio.procedureId, visitKind: 'first session', signedBy: studio.ownerId },
      uses: [{ microlitres: 40, containerId: lot.containers[0]?.id, ...use }],
    });
  const drill = (body: object = { lotId: lot.lot.id }) =>
    service.made<OpenedDrillView>('/recalls/drills', body);
  const note = (id: string, step: string) => service.made<RecallStepsView>(`/recalls/${id}/steps`, { step });
  const close = (id: string) =>
    service.made<ClosingView>(`/recalls/${id}/closing`, { signedBy: studio.ownerId, overrides: [] });
  const inSister = () => ({ authorization: `Bearer ${sister.token}` });
  const sisterPath = (path: string) => `${service.url}/api/v1/studios/${sister.studioId}${path}`;
  const dueAlert = async () =>
    (await service.seen<AlertPageView>('/alerts?limit=200')).items.find(({ kind }) => kind === 'drill due');
  const schedule = () => service.seen<DrillScheduleView>('/drill-schedule');
  const refusal = async (path: string, body: object, headers = {}) => {
    const answer = await service.post<ProblemBody>(path, body, headers);
    return [answer.status, answer.body.code];
  };

  it('goes the whole way on a chosen lot, holds nothing, tells nobody, and is timed and scored', async () => {
    const { recallId, drawn, lotId } = await drill();
    expect({ drawn, lotId }).toEqual({ drawn: false, lotId: lot.lot.id });
    expect(await service.seen<RecallView>(`/recalls/${recallId}`)).toMatchObject({
      kind: 'drill',
      heldLots: 0,
    });
    expect((await service.seen<OpenHoldPageView>('/holds')).items).toEqual([]);

    clock.forward({ minutes: 4 });
    await note(recallId, 'notice read');
    await note(recallId, 'scope settled');
    clock.forward({ minutes: 6 });
    await note(recallId, 'stock listed');
    const [first] = lot.containers;
    await service.made(`/recalls/${recallId}/containers/${first?.id}/findings`, { result: 'found' });
    clock.forward({ minutes: 20 });
    await note(recallId, 'stock found');
    const telling = { audience: 'client', clientId: studio.clientId, channel: 'letter', outcome: 'reached' };
    expect((await refusal(`/recalls/${recallId}/contacts`, telling))[0]).toBe(409);

    const readiness = await service.seen<ReadinessView>(`/recalls/${recallId}/readiness`);
    expect(readiness).toMatchObject({ kind: 'drill', ready: true });
    expect(readiness.obstacles.map(({ obstacle }) => obstacle)).toEqual(['containers not found']);
    const steps = await service.seen<RecallStepsView>(`/recalls/${recallId}/steps`);
    const minutes = Object.fromEntries(
      steps.steps.map((step) => [step.step, Math.round(step.minutes ?? -1)]),
    );
    expect(minutes).toMatchObject({
      ...{ 'notice read': 4, 'scope settled': 0, 'stock listed': 6, 'stock found': 20, closed: -1 },
    });

    clock.forward({ minutes: 10 });
    const closed = await close(recallId);
    // Three of four uses have a lot that was read or typed; one of two bottles was found, the other is missing.
    expect(closed.score).toMatchObject({ tracedPercent: 75, balancedPercent: 50, foundPercent: 50 });
    expect(Math.floor(closed.score?.minutes ?? 0)).toBe(40);
    expect(closed).toMatchObject({ holdsStaying: 0, standingHoldsStaying: 0, overridden: [] });
    const [opinion] = await sql.rows<{ traced: number; uses: number }>(
      `SELECT count(*) AS uses, sum(CASE WHEN known_by <> 'picked from a list' THEN 1 ELSE 0 END) AS traced
       FROM session_use WHERE lot_id = $1`,
      [lot.lot.id],
    );
    expect([Number(opinion?.traced), Number(opinion?.uses)]).toEqual([3, 4]);

    const after = await service.seen<RecallStepsView>(`/recalls/${recallId}/steps`);
    expect(after.score).toEqual(closed.score);
    const [latest] = (await service.seen<DrillPageView>('/recalls/drills')).items;
    expect(latest).toMatchObject({ recallId, state: 'closed', drawn: false, score: closed.score });
    const report = await service.seen<RecallReportView>(`/recalls/${recallId}/report.json`);
    expect(report).toMatchObject({ score: closed.score, recall: { kind: 'drill', state: 'closed' } });
    const alerts = await service.seen<AlertPageView>('/alerts?limit=200');
    expect(alerts.items.filter(({ subjectId }) => subjectId === recallId)).toEqual([]);
  });

  it('draws a lot that was used lately, by a seed that anybody can check, and the same again when asked again', async () => {
    const other = await receive(service, studio, { productId: studio.umberId, code: 'DR-8846' });
    await used({ knownBy: 'own label', containerId: other.containers[0]?.id }, 4);
    await receive(service, studio, { productId: studio.umberId, code: 'DR-1999' });
    const seeds = Array.from({ length: 6 }, () => uuidv7());
    for (const id of seeds) {
      const opened = await drill({ id, random: true });
      expect(opened).toEqual({
        ...{ recallId: id, drawn: true, drawnFrom: 2 },
        lotId: drawnLot(id, [lot.lot.id, other.lot.id]),
      });
    }
    const third = await receive(service, studio, { productId: studio.umberId, code: 'DR-3003' });
    await used({ knownBy: 'own label', containerId: third.containers[0]?.id }, 3);
    const [id = ''] = seeds;
    expect(await drill({ id, random: true })).toMatchObject({ drawnFrom: 2 });
    expect(await refusal('/recalls/drills', { id, random: true, years: 7 })).toEqual([
      409,
      'request-id-reused',
    ]);
    const { scopes } = await service.seen<RecallView>(`/recalls/${id}`);
    const notice = await service.seen<{ text: string }>(`/recalls/notices/${scopes[0]?.noticeId}`);
    expect(notice.text).toContain(`drawn with the seed ${id} from 2 lots`);
    const page = await service.seen<DrillPageView>('/recalls/drills?limit=3');
    expect(page.items.map(({ recallId }) => recallId)).toEqual([...seeds].reverse().slice(0, 3));
    const rest = await service.seen<DrillPageView>(`/recalls/drills?after=${page.next}`);
    expect(rest.items.length).toBe(4);
    expect(rest.items.filter(({ drawn }) => drawn)).toHaveLength(3);
  });

  it('is refused without a lot, with two ways to one, and with a lot or step that is not there', async () => {
    expect(await refusal('/recalls/drills', {})).toEqual([400, 'invalid-fields']);
    expect(await refusal('/recalls/drills', { lotId: lot.lot.id, random: true })).toEqual([
      400,
      'invalid-fields',
    ]);
    expect(await refusal('/recalls/drills', { lotId: uuidv7() })).toEqual([404, 'not-found']);
    const { recallId } = await drill();
    expect(await refusal(`/recalls/${recallId}/steps`, { step: 'closed' })).toEqual([400, 'invalid-fields']);
    await close(recallId);
    expect(await refusal(`/recalls/${recallId}/steps`, { step: 'notice read' })).toEqual([
      409,
      'wrong-state',
    ]);
    const headers = inSister();
    expect(await refusal(sisterPath('/recalls/drills'), { random: true }, headers)).toEqual([
      409,
      'wrong-state',
    ]);
  });

  it('is scheduled in every studio of the chain at once, and only by whoever leads them all', async () => {
    expect(await schedule()).toEqual({ everyMonths: null, nextOn: null, due: false, version: null });
    const request = { id: uuidv7(), everyMonths: 12, nextOn: '2099-01-31' };
    const early = { ...request, id: uuidv7(), version: 4 };
    expect((await service.put('/drill-schedule', early)).status).toBe(404);
    const set = await service.put<ChainDrillScheduleView>('/chain/drill-schedule', request);
    expect(set.body.studioIds.sort()).toEqual([service.studioId, sister.studioId].sort());
    expect((await service.put('/chain/drill-schedule', request)).body).toEqual(set.body);
    const there = await service.get<DrillScheduleView>(sisterPath('/drill-schedule'), inSister());
    expect(there.body).toMatchObject({ everyMonths: 12, nextOn: '2099-01-31', version: 1 });
    expect(await schedule()).toMatchObject({ everyMonths: 12, nextOn: '2099-01-31' });

    const { cookie } = await personOfRole(service, 'chain manager');
    const { recallId } = await drill({ lotId: lot.lot.id });
    const body = { everyMonths: 1, nextOn: null };
    const answers = [
      await service.put<ProblemBody>('/chain/drill-schedule', body, { cookie }),
      await service.get<ProblemBody>('/chain/record-quality', { cookie }),
      await service.get<ProblemBody>(`/recalls/${recallId}/studios`, { cookie }),
    ];
    for (const { status, body: problem } of answers) {
      expect([status, problem.code]).toEqual([403, 'not-allowed']);
      expect(problem.detail).toContain('You do not lead Sister studio');
    }
  });

  it('of a whole chain shows how far each studio is, in numbers only', async () => {
    const { recallId } = await drill({ lotId: lot.lot.id, wholeChain: true });
    const progress = await service.seen<ChainProgressView>(`/recalls/${recallId}/studios`);
    expect(progress).toMatchObject({ recallId, kind: 'drill' });
    const own = progress.studios.find(({ studioId }) => studioId === service.studioId);
    expect(own).toMatchObject({
      ...{ state: 'open', lotsAffected: 1, containersToFind: 2, containersFound: 0, clientsExposed: 1 },
      balancedPercent: 0,
    });
    const other = progress.studios.find(({ studioId }) => studioId === sister.studioId);
    expect(other).toMatchObject({
      ...{ state: 'open', lotsAffected: 0, containersToFind: 0, clientsExposed: 0, balancedPercent: null },
      obstacles: [],
    });
    expect(JSON.stringify(progress)).not.toContain(studio.clientId);
    await close(recallId);
    const after = await service.get<ChainProgressView>(
      sisterPath(`/recalls/${recallId}/studios`),
      inSister(),
    );
    expect(after.body.studios.map(({ state }) => state).sort()).toEqual(['closed', 'open']);
  });

  it('is only as good as the record: how many uses are late, picked, corrected or against a refusal', async () => {
    const quality = await service.seen<RecordQualityView>('/recalls/record-quality');
    const [opinion] = await sql.rows<Record<string, number>>(
      `SELECT count(*) AS uses, sum(CASE WHEN known_by = 'picked from a list' THEN 1 ELSE 0 END) AS picked
       FROM session_use WHERE studio_id = $1`,
      [service.studioId],
    );
    expect(quality).toMatchObject({
      ...{ uses: Number(opinion?.uses), late: Number(opinion?.uses), latePercent: 100 },
      ...{ picked: 1, corrected: 0, correctedPercent: 0, againstRefusal: 0 },
    });
    const { id: sessionId, uses } = await used({ knownBy: 'own label' }, 2);
    await service.made(`/sessions/${sessionId}/uses/${uses[0]?.id}/reversal`, { reason: 'Twice' });
    const later = await service.seen<RecordQualityView>('/recalls/record-quality');
    expect(later).toMatchObject({ uses: quality.uses + 1, corrected: 1 });
    const none = await service.seen<RecordQualityView>(
      '/recalls/record-quality?from=2001-01-01&through=2001-12-31',
    );
    expect(none).toMatchObject({ uses: 0, latePercent: null });
    const turned = await service.get<ProblemBody>(
      '/recalls/record-quality?from=2026-02-01&through=2026-01-01',
    );
    expect([turned.status, turned.body.code]).toEqual([400, 'invalid-fields']);
    const chain = await service.seen<ChainRecordQualityView>('/chain/record-quality');
    expect(chain.studios.map(({ studioId, uses: count }) => [studioId, count])).toEqual([
      [service.studioId, quality.uses + 1],
      [sister.studioId, 0],
    ]);
  });

  it('is asked for when it is due, more loudly after a month, until one is closed', async () => {
    const { version = 0 } = (await schedule()) as { version?: number };
    const set = (body: object) => service.put<DrillScheduleView & ProblemBody>('/drill-schedule', body);
    const first = await set({ everyMonths: 6, nextOn: dayIn(3), version });
    expect(first.body).toEqual({ everyMonths: 6, nextOn: dayIn(3), due: false, version: version + 1 });
    expect((await set({ everyMonths: 6, nextOn: dayIn(3) })).body.code).toBe('stale-version');
    expect((await set({ everyMonths: 0, nextOn: null, version: version + 1 })).status).toBe(400);

    await service.made('/alerts/sweep');
    expect(await dueAlert()).toBeUndefined();
    clock.forward({ days: 4 });
    await service.made('/alerts/sweep');
    expect(await dueAlert()).toMatchObject({ severity: 'notice', facts: { dueOn: dayIn(3) } });
    expect(await schedule()).toMatchObject({ due: true });
    // Overdue by a month, without a clock that outlives the token.
    await set({ everyMonths: 6, nextOn: dayIn(-40), version: version + 1 });
    expect(await dueAlert()).toMatchObject({ severity: 'warning', facts: { dueOn: dayIn(-40) } });

    const { recallId } = await drill();
    expect(await dueAlert()).toBeDefined();
    await close(recallId);
    expect(await dueAlert()).toBeUndefined();
    const moved = await schedule();
    expect(moved).toMatchObject({ version: version + 3, due: false });
    expect(Date.parse(moved.nextOn ?? '') - Date.parse(clock.now())).toBeGreaterThan(180 * 86_400_000);
    expect((await set({ everyMonths: null, nextOn: null, version: version + 3 })).body).toMatchObject({
      nextOn: null,
    });
  });
});
