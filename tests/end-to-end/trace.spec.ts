import { parse } from 'csv-parse/sync';
import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { CompletionView } from '../../src/sessions/completion.views.js';
import type { TraceView } from '../../src/sessions/trace.views.js';
import { makeSampleStudio, receive, type SampleStudio, walkIn } from '../support/sample-studio.js';
import { engines, type ProblemBody, type RunningService } from '../support/service.js';
import { startStudio } from '../support/shared-service.js';
import { Store } from '../support/store.js';

interface BlendAnswer {
  lotId: string;
  containerId: string;
}

const today = new Date().toISOString().slice(0, 10);

describe.each(engines)('the trace on %s', (engine) => {
  let service: RunningService;
  let store: Store;
  let studio: SampleStudio;

  beforeAll(async () => {
    service = await startStudio(engine);
    store = await Store.open(service.dataFolder, service.databaseUrl);
    studio = await makeSampleStudio(service);
    const settings = await service.seen<{ version: number }>('');
    await service.patch('', { version: settings.version, houseBlends: 'allowed', timeZone: 'Europe/Vienna' });
  });
  afterAll(async () => {
    await store.close();
    await service.dispose();
  });

  const client = async (name: string) =>
    service.made<{ id: string; reference: string }>('/clients', { name });
  const bottle = async (code: string) => {
    const { lot, containers } = await receive(service, studio, { productId: studio.umberId, code });
    const containerId = containers[0]?.id ?? '';
    await service.made(`/containers/${containerId}/open`);
    return { lotId: lot.id, containerId };
  };
  const blend = (parents: { containerId: string; microlitres: number }[]) =>
    service.made<BlendAnswer>('/blends', { productId: studio.umberId, parents, placeId: studio.placeId });

  /** A completed session in which microlitres of one container were used, in a mix or by themselves. */
  async function treat(
    clientId: string,
    containerId: string,
    amount: { microlitres: number; mixed: boolean },
  ) {
    const session = await walkIn(service, studio, { clientId });
    await service.made(`/sessions/${session}/scans`, { containerId });
    const lines: object[] = [];
    if (amount.mixed) {
      const mix = await service.made<{ id: string }>(`/sessions/${session}/mixes`, { label: 'base' });
      const component = { containerId, microlitres: amount.microlitres };
      await service.made(`/sessions/${session}/mixes/${mix.id}/components`, component);
    }
    const tray = await service.seen<{ lines: { id: string }[] }>(`/sessions/${session}/tray`);
    if (!amount.mixed) {
      const trayLineId = tray.lines[0]?.id;
      lines.push({ trayLineId, outcome: 'used', microlitres: amount.microlitres });
    }
    const completion = await service.made<CompletionView>(`/sessions/${session}/completion`, {
      lines,
      complications: null,
      signedBy: studio.ownerId,
    });
    return { session, useId: completion.uses[0]?.id ?? '' };
  }

  it('finds everyone a lot touched directly, in a mix and through a blend of a blend', async () => {
    const recalled = await bottle('R1');
    const other = await bottle('R2');
    const [direct, mixed, deep, untouched] = [
      await client('Direct'),
      await client('Mixed'),
      await client('Deep'),
      await client('Untouched'),
    ];
    const first = await blend([
      { containerId: recalled.containerId, microlitres: 1_000 },
      { containerId: other.containerId, microlitres: 3_000 },
    ]);
    const second = await blend([
      { containerId: first.containerId, microlitres: 1_000 },
      { containerId: other.containerId, microlitres: 1_000 },
    ]);
    await treat(direct.id, recalled.containerId, { microlitres: 80, mixed: false });
    await treat(mixed.id, recalled.containerId, { microlitres: 40, mixed: true });
    await treat(deep.id, second.containerId, { microlitres: 200, mixed: true });
    await treat(untouched.id, other.containerId, { microlitres: 40, mixed: true });

    const trace = await service.seen<TraceView>(`/lots/${recalled.lotId}/trace`);
    expect(trace.totals).toEqual({ uses: 3, reversedUses: 0, sessions: 3, clients: 3 });
    expect(trace.items).toMatchObject([
      { clientId: direct.id, clientReference: direct.reference, through: [], microlitres: 80 },
      { clientId: mixed.id, through: ['mix'], lots: [{ direct: true, shareMicrolitres: 40 }] },
      {
        clientId: deep.id,
        through: ['mix', 'house blend'],
        lotId: second.lotId,
        microlitres: 200,
        lots: [{ lotId: recalled.lotId, lotCode: 'R1', direct: false, shareMicrolitres: 25 }],
      },
    ]);
    expect(trace.items[0]).toMatchObject({
      artistId: studio.ownerId,
      visitKind: 'first session',
      bodyPlace: 'brows',
      procedureName: 'Powder brows',
      recordedFrom: 'tray',
      reversedAt: null,
    });
    expect(JSON.stringify(trace)).not.toMatch(/Direct|Deep/);

    const back = await service.seen<TraceView>(`/clients/${deep.id}/trace`);
    expect(back.items[0]?.lots.map(({ lotId, shareMicrolitres }) => [lotId, shareMicrolitres])).toEqual([
      [second.lotId, 200],
      [other.lotId, 175],
      [first.lotId, 100],
      [recalled.lotId, 25],
    ]);
    const ofSession = await service.seen<TraceView>(`/sessions/${back.items[0]?.sessionId}/trace`);
    expect(ofSession).toEqual(back);
  });

  it('traces several lots together, each use once', async () => {
    const [left, right] = [await bottle('S1'), await bottle('S2')];
    const both = await blend([
      { containerId: left.containerId, microlitres: 500 },
      { containerId: right.containerId, microlitres: 1_500 },
    ]);
    const someone = await client('Both');
    await treat(someone.id, both.containerId, { microlitres: 100, mixed: false });
    const answer = await service.send<TraceView>('POST', '/trace', { lotIds: [left.lotId, right.lotId] });
    expect(answer.status).toBe(200);
    expect(answer.body.totals).toEqual({ uses: 1, reversedUses: 0, sessions: 1, clients: 1 });
    expect(answer.body.items[0]?.lots).toMatchObject([
      { lotId: right.lotId, shareMicrolitres: 75 },
      { lotId: left.lotId, shareMicrolitres: 25 },
    ]);
  });

  it('counts all and shows each use once, however small the pages', async () => {
    const { lotId, containerId } = await bottle('P1');
    const ids: string[] = [];
    for (const name of ['One', 'Two', 'Three', 'Four', 'Five']) {
      const { useId } = await treat((await client(name)).id, containerId, { microlitres: 40, mixed: true });
      ids.push(useId);
    }
    const seen: string[] = [];
    let after: string | null = null;
    do {
      const cursor: string = after === null ? '' : `&after=${after}`;
      const page: TraceView = await service.seen(`/lots/${lotId}/trace?limit=2${cursor}`);
      expect(page.totals).toEqual({ uses: 5, reversedUses: 0, sessions: 5, clients: 5 });
      seen.push(...page.items.map((use) => use.id));
      after = page.next;
    } while (after !== null);
    expect(seen).toEqual(ids);
  });

  it('shows a reversed use as such and does not count its client', async () => {
    const { lotId, containerId } = await bottle('V1');
    const { session, useId } = await treat((await client('Mistake')).id, containerId, {
      microlitres: 40,
      mixed: false,
    });
    await service.made(`/sessions/${session}/uses/${useId}/reversal`, { reason: 'Wrong bottle scanned' });
    const trace = await service.seen<TraceView>(`/lots/${lotId}/trace`);
    expect(trace.totals).toEqual({ uses: 1, reversedUses: 1, sessions: 0, clients: 0 });
    expect(trace.items[0]?.reversedAt).not.toBeNull();
  });

  it('writes the whole trace as CSV that no spreadsheet runs', async () => {
    const strange = await service.made<{ id: string }>('/products', {
      kind: 'pigment',
      makerId: studio.makerId,
      name: '=HYPERLINK("https://example.org")',
      shade: '@SUM(1;2), "ochre"',
      pigmentRole: 'colour',
      volumeMicrolitres: 10_000,
    });
    const { lot, containers } = await receive(service, studio, { productId: strange.id, code: '-1+1' });
    const someone = await client('Ωmega');
    await treat(someone.id, containers[0]?.id ?? '', { microlitres: 40, mixed: true });
    const response = await service.fetch(`${service.studio}/lots/${lot.id}/trace.csv`);
    expect(response.status).toBe(200);
    expect(response.headers.get('content-type')).toBe('text/csv; charset=utf-8; header=present');
    expect(response.headers.get('content-disposition')).toBe(`attachment; filename="trace-${lot.id}.csv"`);
    const bytes = Buffer.from(await response.arrayBuffer());
    expect([...bytes.subarray(0, 3)]).toEqual([0xef, 0xbb, 0xbf]);
    const text = bytes.toString('utf8');
    expect(text.endsWith('\r\n')).toBe(true);
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    const rows = parse(text, { bom: true, columns: true }) as Record<string, string>[];
    expect(rows).toEqual([
      expect.objectContaining({
        date: expect.stringMatching(/^\d{4}-\d{2}-\d{2}$/),
        client_reference: someone.reference,
        client_id: someone.id,
        artist: 'Owner',
        product: `'=HYPERLINK("https://example.org")`,
        shade: `'@SUM(1;2), "ochre"`,
        lot_code: "'-1+1",
        through: 'mix',
        microlitres_estimate: '40',
        traced_share_microlitres_estimate: '40',
      }),
    ]);
    expect(text).not.toContain('Ωmega');
  });

  it('answers with nothing for a lot and a client that were never used', async () => {
    const { lotId } = await bottle('N1');
    const nobody = await client('Nobody');
    for (const path of [`/lots/${lotId}/trace`, `/clients/${nobody.id}/trace`]) {
      expect(await service.seen<TraceView>(path)).toMatchObject({
        totals: { uses: 0, reversedUses: 0, sessions: 0, clients: 0 },
        items: [],
        next: null,
      });
    }
    const csv = await (await service.fetch(`${service.studio}/lots/${lotId}/trace.csv`)).text();
    expect(csv.split('\r\n')).toHaveLength(2);
  });

  it('does not find lots, clients and sessions that do not exist or are another studio’s', async () => {
    const { lotId, containerId } = await bottle('X1');
    const someone = await client('Ours');
    const { session } = await treat(someone.id, containerId, { microlitres: 40, mixed: true });
    const other = await store.makeStudio();
    const elsewhere = await store.seenBy(service, other);
    for (const [asked, lot, who, visit] of [
      [service, uuidv7(), uuidv7(), uuidv7()],
      [elsewhere, lotId, someone.id, session],
    ] as const) {
      for (const path of [
        `/lots/${lot}/trace`,
        `/lots/${lot}/trace.csv`,
        `/clients/${who}/trace`,
        `/sessions/${visit}/trace`,
      ]) {
        const answer = await asked.get<ProblemBody>(path);
        expect([path, answer.status, answer.body.code]).toEqual([path, 404, 'not-found']);
      }
      const several = await asked.send<ProblemBody>('POST', '/trace', { lotIds: [lot] });
      expect([several.status, several.body.code]).toEqual([404, 'not-found']);
    }
    const unknown = uuidv7();
    const some = await service.send<ProblemBody>('POST', '/trace', { lotIds: [lotId, unknown] });
    expect([some.status, some.body.detail.includes(unknown)]).toEqual([404, true]);
  });

  it.each([
    ['no lots', { lotIds: [] }],
    ['too many lots', { lotIds: Array.from({ length: 201 }, () => uuidv7()) }],
    ['what is no id', { lotIds: ['7'] }],
    ['an unknown field', { lotIds: [uuidv7()], names: true }],
  ])('refuses %s', async (_, body) => {
    const answer = await service.send<ProblemBody>('POST', '/trace', body);
    expect([answer.status, answer.body.code]).toEqual([400, 'invalid-fields']);
  });

  it('refuses to go on from what is no page of a trace', async () => {
    const { lotId } = await bottle('Y1');
    for (const after of [uuidv7(), 'seven']) {
      const answer = await service.get<ProblemBody>(`/lots/${lotId}/trace?after=${after}`);
      expect([answer.status, answer.body.code]).toEqual([400, 'invalid-fields']);
    }
  });

  it(`tells the studio's day of a use, not the day in UTC`, async () => {
    const { lotId, containerId } = await bottle('D1');
    const midnight = `${today}T00:00:00.000Z`;
    const session = await walkIn(service, studio, { occurredAt: midnight });
    await service.made(`/sessions/${session}/scans`, { containerId });
    const tray = await service.seen<{ lines: { id: string }[] }>(`/sessions/${session}/tray`);
    await service.made(`/sessions/${session}/completion`, {
      occurredAt: midnight,
      lines: [{ trayLineId: tray.lines[0]?.id, outcome: 'used', microlitres: 40 }],
      complications: null,
      signedBy: studio.ownerId,
    });
    const settings = await service.seen<{ version: number }>('');
    await service.patch('', { version: settings.version, timeZone: 'America/New_York' });
    const text = await (await service.fetch(`${service.studio}/lots/${lotId}/trace.csv`)).text();
    const [row] = parse(text, { bom: true, columns: true }) as Record<string, string>[];
    expect(row?.occurred_at_utc?.slice(0, 10)).toBe(today);
    expect((row?.date ?? '') < today).toBe(true);
  });
});
