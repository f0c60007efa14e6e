import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { makeLabelCode } from '../../src/catalogue/own-label.js';
import type { CompletionView } from '../../src/sessions/completion.views.js';
import type { AddedToMixView, MixView } from '../../src/sessions/mixes.views.js';
import type { ScanView, TrayView } from '../../src/sessions/tray.views.js';
import type { LotView } from '../../src/stock/lot-list.views.js';
import { makeSampleStudio, receive, type SampleStudio, walkIn } from '../support/sample-studio.js';
import { type ProblemBody, type RunningService, strictestEngine } from '../support/service.js';
import { startStudio } from '../support/shared-service.js';
import { Store } from '../support/store.js';

const today = new Date().toISOString().slice(0, 10);
const daysAgo = (days: number) => new Date(Date.now() - days * 86_400_000).toISOString();

describe.each(strictestEngine)('the setup tray on %s', (engine) => {
  let service: RunningService;
  let studio: SampleStudio;
  let store: Store;

  beforeAll(async () => {
    service = await startStudio(engine);
    studio = await makeSampleStudio(service);
    store = await Store.open(service.dataFolder, service.databaseUrl);
  });
  afterAll(async () => {
    await store.close();
    await service.dispose();
  });

  const scan = (sessionId: string, body: object) =>
    service.made<ScanView>(`/sessions/${sessionId}/scans`, body);
  /** Admitted, though perhaps with a warning: other tests leave earlier-expiring stock behind. */
  const admitted = (answer: ScanView) => answer.verdict === 'admitted' || answer.verdict === 'warned';
  const codes = (answer: ScanView) => answer.reasons.map((reason) => reason.code);
  const alerts = async () =>
    (await service.seen<{ items: { id: string; kind: string; subjectId: string }[] }>('/alerts?limit=200'))
      .items;

  it('admits a bottle by its own label and offers to open it', async () => {
    const { containers } = await receive(service, studio, { productId: studio.umberId, code: 'U1' });
    const session = await walkIn(service, studio);
    const answer = await scan(session, { symbol: containers[0]?.labelCode });
    expect(answer).toMatchObject({ verdict: 'admitted', knownBy: 'own label', offers: ['open'] });
    expect(answer.thing).toMatchObject({ lotCode: 'U1', label: 'Halden Colour Works Umber Warm 02' });
    await service.made(`/containers/${containers[0]?.id}/open`, {});
    const again = await scan(session, { symbol: containers[0]?.labelCode });
    expect(again).toMatchObject({ verdict: 'admitted', trayLineId: null, offers: [] });
    const tray = await service.seen<TrayView>(`/sessions/${session}/tray`);
    expect(tray.lines).toHaveLength(1);
  });

  it("admits a cartridge by its maker's symbol, and asks before a second piece of the same symbol", async () => {
    await receive(service, studio, {
      productId: studio.linerId,
      code: 'N-1',
      useBy: '2030-06-30',
      quantity: 5,
    });
    const session = await walkIn(service, studio);
    const symbol = `]d201${studio.linerGtin}1730063010N-1`;
    const first = await scan(session, { symbol });
    expect(first).toMatchObject({ verdict: 'admitted', knownBy: "maker's symbol" });
    const asked = await scan(session, { symbol });
    expect([asked.verdict, ...codes(asked)]).toEqual(['question', 'another one?']);
    const second = await scan(session, { symbol, another: true });
    expect(second.verdict).toBe('admitted');
    const tray = await service.seen<TrayView>(`/sessions/${session}/tray`);
    expect(tray.lines.map((line) => line.pieces)).toEqual([1, 1]);
  });

  it('gives a repeated scan id its first answer and puts one piece on the tray', async () => {
    await receive(service, studio, { productId: studio.linerId, code: 'N-2', quantity: 5 });
    const session = await walkIn(service, studio);
    const id = uuidv7();
    const symbol = `]d201${studio.linerGtin}10N-2`;
    const answers = await Promise.all([1, 2, 3].map(() => scan(session, { id, symbol })));
    expect(new Set(answers.map((answer) => JSON.stringify(answer))).size).toBe(1);
    expect((await service.seen<TrayView>(`/sessions/${session}/tray`)).lines).toHaveLength(1);
    const other = await service.post<ProblemBody>(`/sessions/${session}/scans`, {
      id,
      symbol,
      another: true,
    });
    expect([other.status, other.body.code]).toEqual([409, 'request-id-reused']);
  });

  it('uses a serial once only, on any tray', async () => {
    await receive(service, studio, { productId: studio.linerId, code: 'N-3', quantity: 5 });
    const symbol = `]d201${studio.linerGtin}10N-3\u001d21S1`;
    const first = await walkIn(service, studio);
    expect(admitted(await scan(first, { symbol }))).toBe(true);
    expect(codes(await scan(await walkIn(service, studio), { symbol }))).toEqual(['already used']);
    expect(admitted(await scan(first, { symbol: symbol.replace('S1', 'S2') }))).toBe(true);
  });

  it('takes the serial of an outer box for that of the box', async () => {
    await receive(service, studio, { productId: studio.linerId, code: 'N-box', quantity: 20 });
    const boxGtin = '19506000134359';
    await service.made(`/products/${studio.linerId}/gtins`, { gtin: boxGtin, contentCount: 20 });
    const symbol = `]d201${boxGtin}10N-box\u001d21BOX1`;
    const session = await walkIn(service, studio);
    expect(admitted(await scan(session, { symbol }))).toBe(true);
    expect(codes(await scan(session, { symbol }))).toEqual(['another one?']);
    expect(admitted(await scan(session, { symbol, another: true }))).toBe(true);
    expect(admitted(await scan(await walkIn(service, studio), { symbol }))).toBe(true);
  });

  it('asks about a second piece of the same symbol also when it comes from another box', async () => {
    for (const quantity of [1, 5]) {
      await receive(service, studio, { productId: studio.linerId, code: 'N-boxes', quantity });
    }
    const session = await walkIn(service, studio);
    const symbol = `]d201${studio.linerGtin}10N-boxes`;
    const first = await scan(session, { symbol });
    expect(admitted(first)).toBe(true);
    expect(codes(await scan(session, { symbol }))).toEqual(['another one?']);
    const second = await scan(session, { symbol, another: true });
    expect(second.thing?.containerId).not.toBe(first.thing?.containerId);
    expect((await service.seen<TrayView>(`/sessions/${session}/tray`)).lines).toHaveLength(2);
  });

  it('reads a code that looks like a label of ours, but is none, for what it is', async () => {
    const [typed, internal] = [7, 9].map((byte) => makeLabelCode(new Uint8Array(12).fill(byte)));
    const umber = await receive(service, studio, { productId: studio.umberId, code: typed });
    const liner = await receive(service, studio, { productId: studio.linerId, code: 'N-91', quantity: 2 });
    const session = await walkIn(service, studio);
    const bottle = await scan(session, { symbol: typed });
    expect(bottle).toMatchObject({ knownBy: 'typed', thing: { lotId: umber.lot.id } });
    const piece = await scan(session, { symbol: `(01)${studio.linerGtin}(10)N-91(91)${internal}` });
    expect(piece).toMatchObject({ knownBy: "maker's symbol", thing: { lotId: liner.lot.id } });
    for (const symbol of [internal, `(91)${internal}`]) {
      const unknown = await service.post<ProblemBody>(`/sessions/${session}/scans`, { symbol });
      expect([unknown.status, unknown.body.code]).toEqual([422, 'unknown-symbol']);
    }
  });

  it('refuses a pick that contradicts the symbol', async () => {
    const [one, other] = [
      await receive(service, studio, { productId: studio.umberId, code: 'U-one' }),
      await receive(service, studio, { productId: studio.gelId, code: 'G-other' }),
    ];
    const session = await walkIn(service, studio);
    const label = one.containers[0]?.labelCode;
    const ean = { symbol: studio.linerGtin.slice(1), symbologyIdentifier: ']E0' };
    for (const [body, field] of [
      [{ symbol: label, containerId: other.containers[0]?.id }, 'containerId'],
      [{ symbol: 'U-one', containerId: other.containers[0]?.id }, 'containerId'],
      [{ symbol: label, lotId: other.lot.id }, 'lotId'],
      [{ symbol: 'U-one', lotId: other.lot.id }, 'lotId'],
      [{ ...ean, lotId: other.lot.id }, 'lotId'],
      [{ symbol: label, productId: studio.gelId }, 'productId'],
      [{ symbol: 'U-one', productId: studio.gelId }, 'productId'],
      [{ ...ean, productId: studio.gelId }, 'productId'],
      [{ containerId: one.containers[0]?.id, lotId: other.lot.id }, 'lotId'],
      [{ containerId: one.containers[0]?.id, productId: studio.gelId }, 'productId'],
      [{ lotId: one.lot.id, productId: studio.gelId }, 'productId'],
    ] as const) {
      const answer = await service.post<ProblemBody>(`/sessions/${session}/scans`, body);
      expect([answer.status, answer.body.code, answer.body.faults?.[0]?.field]).toEqual([
        400,
        'invalid-fields',
        field,
      ]);
    }
    expect(admitted(await scan(session, { symbol: label, lotId: one.lot.id }))).toBe(true);
    const all = { containerId: one.containers[0]?.id, lotId: one.lot.id, productId: studio.umberId };
    expect(admitted(await scan(session, all))).toBe(true);
  });

  it('names what stands for a cartridge by its configuration, and counts no want while it is here', async () => {
    const cartridge = (name: string) =>
      service.made<{ id: string }>('/products', {
        kind: 'cartridge',
        makerId: studio.makerId,
        name,
        notation: '1003RLLT',
        machineFit: 'pen',
        membrane: 'yes',
      });
    const [mine, standIn] = [await cartridge('Mine'), await cartridge('Stand-in')];
    const session = await walkIn(service, studio);
    const wanted = async () => {
      const rows = await store.database.read(
        'SELECT id FROM unmet_demand WHERE studio_id = $1 AND product_id = $2',
        [service.studioId, mine.id],
      );
      return rows.length;
    };
    const nothing = await scan(session, { productId: mine.id });
    expect([nothing.verdict, nothing.instead, await wanted()]).toEqual(['refused', null, 1]);

    await receive(service, studio, { productId: standIn.id, code: 'SI-1', quantity: 1 });
    const none = await scan(session, { productId: mine.id });
    expect(none).toMatchObject({ verdict: 'refused', instead: { productId: standIn.id } });
    expect(none.reasons[0]?.message).toContain('Stand-in, lot SI-1');
    const held = await receive(service, studio, { productId: mine.id, code: 'MI-1', quantity: 1 });
    await service.made('/holds', { kind: 'quarantine', reason: 'doubt', lotId: held.lot.id });
    const refused = await scan(session, { symbol: held.containers[0]?.labelCode });
    expect(refused).toMatchObject({ verdict: 'refused', instead: { productId: standIn.id } });
    expect(refused.reasons[0]?.message).toContain('Take Halden Colour Works Stand-in, lot SI-1 instead.');
    expect(await wanted()).toBe(1);

    // Once it lies on a tray itself, none is left of either.
    await scan(session, { productId: standIn.id, lotId: none.instead?.lotId });
    expect((await scan(session, { productId: mine.id })).instead).toBeNull();
    expect(await wanted()).toBe(2);
  });

  it('refuses an expired bottle, one open too long, and a lot on hold, and records each refusal', async () => {
    const expired = await receive(service, studio, {
      productId: studio.umberId,
      code: 'U-old',
      useBy: '2020-01',
    });
    for (const hold of expired.holds) {
      await service.made(`/holds/${hold.id}/release`, { reason: 'looked at; kept for the test' });
    }
    const openTooLong = await receive(service, studio, {
      productId: studio.umberId,
      code: 'U-open',
      openedAt: daysAgo(400),
    });
    const held = await receive(service, studio, { productId: studio.umberId, code: 'U-held' });
    await service.made('/holds', { kind: 'quarantine', reason: 'doubt', lotId: held.lot.id });
    const session = await walkIn(service, studio);
    const refusals = [];
    for (const line of [expired, openTooLong, held]) {
      refusals.push(await scan(session, { symbol: line.containers[0]?.labelCode }));
    }
    expect(refusals.map((answer) => [answer.verdict, codes(answer)[0]])).toEqual([
      ['refused', 'expired'],
      ['refused', 'open too long'],
      ['refused', 'on hold'],
    ]);
    expect(refusals[0]?.reasons[0]?.message).toContain('2020-01-31');
    expect(refusals[0]?.instead).not.toBeNull();
    expect((await service.seen<TrayView>(`/sessions/${session}/tray`)).lines).toEqual([]);
  });

  it('gives the last cartridge to one of two artists who take it at once, and tells the other', async () => {
    await receive(service, studio, { productId: studio.linerId, code: 'N-last', quantity: 1 });
    const sessions = await Promise.all([walkIn(service, studio), walkIn(service, studio)]);
    const symbol = `]d201${studio.linerGtin}10N-last`;
    const answers = await Promise.all(sessions.map((session) => scan(session, { symbol })));
    expect(answers.filter(admitted)).toHaveLength(1);
    const told = answers.filter((answer) => !admitted(answer));
    expect(told.map((answer) => [answer.verdict, ...codes(answer)])).toEqual([['refused', 'none left']]);
  });

  it('lists the lots to pick from when a symbol names only the product', async () => {
    const session = await walkIn(service, studio);
    const asked = await scan(session, { symbol: studio.linerGtin.slice(1), symbologyIdentifier: ']E0' });
    expect([asked.verdict, ...codes(asked)]).toEqual(['question', 'which lot?']);
    expect(asked.choices.length).toBeGreaterThan(1);
    const lotId = asked.choices[0]?.lotId;
    const picked = await scan(session, {
      symbol: studio.linerGtin.slice(1),
      symbologyIdentifier: ']E0',
      lotId,
    });
    expect(picked).toMatchObject({ knownBy: 'picked from a list', thing: { lotId } });
  });

  it('counts a product of which nothing is left as unmet demand', async () => {
    const session = await walkIn(service, studio);
    const answer = await scan(session, { productId: studio.thinnerId });
    expect([answer.verdict, ...codes(answer)]).toEqual(['refused', 'none left']);
  });

  it('asks which bottle is meant when several of the lot are open', async () => {
    const line = await receive(service, studio, {
      productId: studio.umberId,
      code: 'U-two',
      quantity: 2,
      openedAt: daysAgo(3),
    });
    const session = await walkIn(service, studio);
    const asked = await scan(session, { symbol: 'U-two' });
    expect([asked.verdict, ...codes(asked), asked.knownBy]).toEqual([
      'question',
      'which container?',
      'typed',
    ]);
    const chosen = line.containers[1]?.id;
    const answer = await scan(session, { symbol: 'U-two', containerId: chosen });
    expect(answer).toMatchObject({ knownBy: 'typed', thing: { containerId: chosen } });
  });

  it.each([
    ['a wrong check digit', { symbol: `]d201${'09506000134353'}10N-1` }, 400, 'unusable-symbol'],
    ['a symbol nobody knows', { symbol: ']d20109506000134376' + '10ZZ' }, 422, 'unknown-symbol'],
    ['a lot never received', { symbol: ']d20109506000134352' + '10NEVER' }, 422, 'unknown-symbol'],
    ['nothing at all', {}, 400, 'invalid-fields'],
    ['an unknown field', { symbol: 'U1', colour: 'red' }, 400, 'invalid-fields'],
    ['a symbol with NUL', { symbol: 'U1\u0000' }, 400, 'invalid-fields'],
    ['a symbol with half a character', { symbol: 'U1\ud83d' }, 400, 'invalid-fields'],
    ['an empty symbol', { symbol: '' }, 400, 'invalid-fields'],
    ['a symbology identifier of null', { symbol: 'U1', symbologyIdentifier: null }, 400, 'invalid-fields'],
    ['a container of nobody', { containerId: '01936f3a-5b7c-7d2e-8f10-2a3b4c5d6e70' }, 404, 'not-found'],
  ])('answers %s with a problem and records nothing', async (_, body, status, code) => {
    const session = await walkIn(service, studio);
    const answer = await service.post<ProblemBody>(`/sessions/${session}/scans`, body);
    expect([answer.status, answer.body.code]).toEqual([status, code]);
    expect(answer.body.detail.length).toBeGreaterThan(20);
    expect((await service.seen<TrayView>(`/sessions/${session}/tray`)).lines).toEqual([]);
  });

  it.each([
    ['a label of spaces', '', { label: '   ' }],
    ['a label with NUL', '', { label: 'base\u0000' }],
    ['a label with half a character', '', { label: 'base\udc00' }],
    ['a volume of null', '/components', { microlitres: null }],
    ['a volume of null beside drops', '/components', { drops: 2, microlitres: null }],
    ['neither drops nor volume', '/components', {}],
    ['drops and a volume together', '/components', { drops: 2, microlitres: 80 }],
  ])('refuses a mix %s', async (_, path, body) => {
    const umber = await receive(service, studio, {
      productId: studio.umberId,
      code: 'U-bad',
      openedAt: daysAgo(2),
    });
    const session = await walkIn(service, studio);
    await scan(session, { symbol: umber.containers[0]?.labelCode });
    const mix = await service.made<MixView>(`/sessions/${session}/mixes`, { label: ' base ' });
    expect(mix.label).toBe('base');
    const answer = await service.post<ProblemBody>(
      `/sessions/${session}/mixes${path === '' ? '' : `/${mix.id}${path}`}`,
      path === '' ? body : { containerId: umber.containers[0]?.id, ...body },
    );
    expect([answer.status, answer.body.code]).toEqual([400, 'invalid-fields']);
  });

  it('keeps a mix drop by drop, takes slips back, and never more than was added', async () => {
    const umber = await receive(service, studio, {
      productId: studio.umberId,
      code: 'U-mix',
      openedAt: daysAgo(2),
    });
    const containerId = umber.containers[0]?.id;
    const session = await walkIn(service, studio);
    const unscanned = await service.post<ProblemBody>(`/sessions/${session}/mixes`, { label: 'base' });
    const mixId = (unscanned.body as unknown as MixView).id;
    const refused = await service.post<ProblemBody>(`/sessions/${session}/mixes/${mixId}/components`, {
      containerId,
      drops: 3,
    });
    expect([refused.status, refused.body.code]).toEqual([409, 'wrong-state']);
    await scan(session, { symbol: umber.containers[0]?.labelCode });
    const add = (drops: number) =>
      service.post<MixView & ProblemBody>(`/sessions/${session}/mixes/${mixId}/components`, {
        containerId,
        drops,
      });
    await add(3);
    const cup = (await add(-1)).body;
    // Drop size of the product: 40 µL.
    expect(cup.parts).toEqual([expect.objectContaining({ drops: 2, microlitres: 80, lotCode: 'U-mix' })]);
    const tooMuch = await add(-3);
    expect([tooMuch.status, tooMuch.body.code]).toEqual([409, 'unusable-quantity']);
  });

  it('warns of drops from a bottle that was held since it was laid out, and keeps them', async () => {
    const umber = await receive(service, studio, {
      productId: studio.umberId,
      code: 'U-held-mix',
      openedAt: daysAgo(2),
    });
    const session = await walkIn(service, studio);
    await scan(session, { symbol: umber.containers[0]?.labelCode });
    const mix = await service.made<{ id: string }>(`/sessions/${session}/mixes`, { label: 'base' });
    const add = (drops: number) =>
      service.made<AddedToMixView>(`/sessions/${session}/mixes/${mix.id}/components`, {
        containerId: umber.containers[0]?.id,
        drops,
      });
    expect((await add(1)).warnings).toEqual([]);
    await service.made('/holds', { kind: 'recall', reason: 'recall notice', lotId: umber.lot.id });
    const warned = await add(2);
    expect(warned.warnings).toEqual([expect.stringContaining('recalled')]);
    expect(warned.parts).toMatchObject([{ drops: 3 }]);
    expect((await add(-1)).warnings).toEqual([]);
  });

  it.each([
    [
      'something taken off before it was put on',
      (gel: string) => ({
        besides: [{ containerId: gel, appliedAt: daysAgo(0.01), removedAt: daysAgo(0.02) }],
      }),
      'unusable-time',
    ],
    ['an end before its setup', () => ({ occurredAt: daysAgo(0.01) }), 'unusable-time'],
    [
      'pieces of a container',
      (gel: string) => ({ besides: [{ containerId: gel, pieces: 2 }] }),
      'invalid-fields',
    ],
    [
      'drops of pieces',
      (_: string, box: string) => ({ besides: [{ containerId: box, drops: 2 }] }),
      'invalid-fields',
    ],
    [
      'a volume of pieces',
      (_: string, box: string) => ({ besides: [{ containerId: box, microlitres: 20 }] }),
      'invalid-fields',
    ],
  ])('does not complete a session with %s', async (_, more, code) => {
    const gel = await receive(service, studio, { productId: studio.gelId, code: 'G-bad' });
    const box = await receive(service, studio, { productId: studio.linerId, code: 'N-bad' });
    const session = await walkIn(service, studio);
    const answer = await service.post<ProblemBody>(`/sessions/${session}/completion`, {
      lines: [],
      complications: null,
      signedBy: studio.ownerId,
      ...more(gel.containers[0]?.id ?? '', box.containers[0]?.id ?? ''),
    });
    expect([answer.status, answer.body.code]).toEqual([400, code]);
    const shown = await service.seen<TrayView>(`/sessions/${session}/tray`);
    expect(shown.state).toBe('in setup');
  });

  it('completes a session once, books every use in one transaction and signs it off', async () => {
    const umber = await receive(service, studio, {
      productId: studio.umberId,
      code: 'U-use',
      openedAt: daysAgo(2),
    });
    const thinner = await receive(service, studio, {
      productId: studio.thinnerId,
      code: 'T-use',
      openedAt: daysAgo(2),
    });
    const needles = await receive(service, studio, { productId: studio.linerId, code: 'N-use', quantity: 3 });
    const gel = await receive(service, studio, {
      productId: studio.gelId,
      code: 'G-use',
      openedAt: daysAgo(2),
    });
    const session = await walkIn(service, studio);
    const labels = [umber, thinner, needles, gel].map((line) => line.containers[0]?.labelCode);
    const scans: ScanView[] = [];
    for (const symbol of labels) scans.push(await scan(session, { symbol }));
    const spare = await scan(session, { symbol: labels[2], another: true });
    const mix = await service.made<MixView>(`/sessions/${session}/mixes`, { label: 'base' });
    for (const [line, drops] of [
      [umber, 4],
      [thinner, 1],
    ] as const) {
      await service.made(`/sessions/${session}/mixes/${mix.id}/components`, {
        containerId: line.containers[0]?.id,
        drops,
      });
    }
    const body = {
      id: uuidv7(),
      lines: [
        { trayLineId: spare.trayLineId, outcome: 'opened unused' },
        {
          trayLineId: scans[3]?.trayLineId,
          outcome: 'used',
          appliedAt: daysAgo(0.02),
          removedAt: daysAgo(0.01),
          appliedBy: studio.ownerId,
        },
      ],
      complications: 'slight redness',
      signedBy: studio.ownerId,
    };
    const completed = await service.made<CompletionView>(`/sessions/${session}/completion`, body);
    expect(completed).toMatchObject({ state: 'completed', wastedPieces: 1 });
    expect(completed.uses.map((use) => [use.pieces, use.microlitres]).sort()).toEqual([
      [0, 0],
      [0, 160],
      [0, 50],
      [1, 0],
    ]);
    const repeated = await service.made<CompletionView>(`/sessions/${session}/completion`, body);
    expect(repeated).toEqual(completed);
    const twice = await service.post<ProblemBody>(`/sessions/${session}/completion`, {
      ...body,
      id: uuidv7(),
    });
    expect([twice.status, twice.body.code]).toEqual([409, 'wrong-state']);
    const box = await service.seen<{ pieces: number }>(`/containers/${needles.containers[0]?.id}`);
    expect(box.pieces).toBe(1);
  });

  it('is not completed before somebody says whether there were complications', async () => {
    const session = await walkIn(service, studio);
    const answer = await service.post<ProblemBody>(`/sessions/${session}/completion`, {
      lines: [],
      signedBy: studio.ownerId,
    });
    expect([answer.status, answer.body.code]).toEqual([400, 'invalid-fields']);
    expect(answer.body.faults?.map(({ field }) => field)).toEqual(['complications']);
  });

  it('asks about what was put on hold meanwhile, then records the use against the refusal with an alert', async () => {
    const umber = await receive(service, studio, {
      productId: studio.umberId,
      code: 'U-rec',
      openedAt: daysAgo(2),
    });
    const session = await walkIn(service, studio);
    const line = await scan(session, { symbol: umber.containers[0]?.labelCode });
    const mix = await service.made<MixView>(`/sessions/${session}/mixes`, { label: 'base' });
    await service.made(`/sessions/${session}/mixes/${mix.id}/components`, {
      containerId: umber.containers[0]?.id,
      drops: 2,
    });
    await service.made('/holds', { kind: 'recall', reason: 'recall notice', lotId: umber.lot.id });
    const tray = await service.seen<TrayView>(`/sessions/${session}/tray`);
    expect(tray.lines[0]?.refusedNow.map((reason) => reason.code)).toEqual(['recalled']);
    const end = { complications: null, signedBy: studio.ownerId };
    const asked = await service.post<ProblemBody>(`/sessions/${session}/completion`, { ...end, lines: [] });
    expect([asked.status, asked.body.code]).toEqual([409, 'decision-needed']);
    const completed = await service.made<CompletionView>(`/sessions/${session}/completion`, {
      ...end,
      lines: [{ trayLineId: line.trayLineId, outcome: 'used', reason: 'mixed before the notice came' }],
    });
    expect(completed.uses[0]?.againstRefusal).toEqual(['recalled']);
    const opened = (await alerts()).filter((alert) => alert.kind === 'use against a refusal');
    const alert = opened.find(({ subjectId }) => subjectId === completed.uses[0]?.id);
    expect(alert).toBeDefined();
    // It happened once, so it is over when somebody has seen to it.
    const seen = await service.made<{ closedAt: string | null }>(`/alerts/${alert?.id}/acknowledge`, {});
    expect(seen.closedAt).not.toBeNull();
    const promised = await service.seen<{ event: string }[]>(`/alerts/${alert?.id}/deliveries`);
    expect(promised.map(({ event }) => event).sort()).toEqual(['closed', 'opened']);
  });

  it('records what was used though it was refused', async () => {
    const expired = await receive(service, studio, {
      productId: studio.umberId,
      code: 'U-late',
      useBy: '2020-01',
    });
    const session = await walkIn(service, studio);
    const completed = await service.made<CompletionView>(`/sessions/${session}/completion`, {
      lines: [],
      besides: [{ containerId: expired.containers[0]?.id, drops: 3, reason: 'the only one at hand' }],
      complications: null,
      signedBy: studio.ownerId,
    });
    expect(completed.uses).toEqual([
      expect.objectContaining({ microlitres: 120, againstRefusal: ['on hold', 'expired'] }),
    ]);
    const bottle = await service.seen<{ state: string }>(`/containers/${expired.containers[0]?.id}`);
    expect(bottle.state).toBe('opened');
  });

  it('books a bottle on the tray that is told to have been used besides once, and does not let it go back', async () => {
    const { containers } = await receive(service, studio, { productId: studio.umberId, code: 'U-twice' });
    const session = await walkIn(service, studio);
    const { trayLineId } = await scan(session, { symbol: containers[0]?.labelCode });
    const complete = (lines: object[]) =>
      service.post<CompletionView & ProblemBody & { lines: { code: string }[] }>(
        `/sessions/${session}/completion`,
        {
          lines,
          besides: [{ containerId: containers[0]?.id, drops: 3 }],
          complications: null,
          signedBy: studio.ownerId,
        },
      );
    const refused = await complete([{ trayLineId, outcome: 'back unopened' }]);
    expect([refused.status, refused.body.code]).toEqual([409, 'wrong-state']);
    expect(refused.body.lines.map(({ code }) => code)).toEqual(['back unopened but used besides']);
    const completed = await complete([]);
    expect(completed.body.uses).toEqual([expect.objectContaining({ microlitres: 120 })]);
    const tray = await service.seen<TrayView>(`/sessions/${session}/tray`);
    expect(tray.lines).toEqual([expect.objectContaining({ state: 'settled', settledAs: 'used' })]);
  });

  it.each(['lines', 'besides'])('refuses drops and a volume together in %s of a completion', async (list) => {
    const { containers } = await receive(service, studio, { productId: studio.umberId, code: 'U-both' });
    const session = await walkIn(service, studio);
    const { trayLineId } = await scan(session, { symbol: containers[0]?.labelCode });
    const named = list === 'lines' ? { trayLineId, outcome: 'used' } : { containerId: containers[0]?.id };
    const answer = await service.post<ProblemBody>(`/sessions/${session}/completion`, {
      lines: [],
      [list]: [{ ...named, drops: 2, microlitres: 500 }],
      complications: null,
      signedBy: studio.ownerId,
    });
    expect([answer.status, answer.body.code]).toEqual([400, 'invalid-fields']);
    expect(answer.body.faults).toEqual([
      {
        field: `${list}.0.microlitres`,
        message: expect.stringContaining('either in microlitres or in drops'),
      },
    ]);
  });

  it('judges a label that was printed before its date was corrected by the record', async () => {
    const { lot, containers } = await receive(service, studio, {
      productId: studio.umberId,
      code: 'U-corrected',
      useBy: '2020-01-31',
    });
    const corrected = await service.patch<{ holds?: unknown }>(`/lots/${lot.id}`, {
      version: 1,
      useBy: '2031-01-31',
      reason: 'Misread year',
    });
    expect(corrected.status).toBe(200);
    const holds = await service.seen<{ holds: { holdId: string }[] }>(`/containers/${containers[0]?.id}`);
    for (const { holdId } of holds.holds) {
      await service.made(`/holds/${holdId}/release`, { reason: 'The date was misread' });
    }
    const session = await walkIn(service, studio);
    const answer = await scan(session, {
      symbol: `]d201095060001343521720013191${containers[0]?.labelCode}`,
    });
    expect(answer).toMatchObject({ verdict: 'warned', knownBy: 'own label' });
    const differs = answer.reasons.find(({ code }) => code === 'date differs from the record');
    expect(differs?.message).toContain('Print the label anew');
  });

  it('opens every sealed bottle that was used, though it is carried about at the same moment', async () => {
    const caseId = (await service.made<{ id: string }>('/places', { name: 'Case', kind: 'travelling case' }))
      .id;
    const places = [caseId, studio.placeId, caseId, studio.placeId, caseId];
    const carryAbout = async (id: string | undefined) => {
      for (const placeId of places) await service.made(`/containers/${id}/move`, { placeId });
    };
    const visits = await Promise.all(
      [1, 2, 3, 4].map(async (number) => {
        const line = { productId: studio.umberId, code: `U-moved-${number}`, quantity: 2 };
        const { containers } = await receive(service, studio, line);
        const sessionId = await walkIn(service, studio);
        const { trayLineId } = await scan(sessionId, { symbol: containers[0]?.labelCode });
        return { sessionId, trayLineId, onTray: containers[0]?.id, besides: containers[1]?.id };
      }),
    );
    await Promise.all(
      visits.flatMap(({ sessionId, trayLineId, onTray, besides }) => [
        carryAbout(onTray),
        carryAbout(besides),
        service.made(`/sessions/${sessionId}/completion`, {
          lines: [{ trayLineId, outcome: 'used', drops: 2 }],
          besides: [{ containerId: besides, drops: 1 }],
          complications: null,
          signedBy: studio.ownerId,
        }),
      ]),
    );
    for (const id of visits.flatMap(({ onTray, besides }) => [onTray, besides])) {
      expect(await service.seen(`/containers/${id}`)).toMatchObject({ state: 'opened', placeId: caseId });
    }
  });

  it('frees a piece that is taken off the tray again', async () => {
    const needles = await receive(service, studio, { productId: studio.linerId, code: 'N-off', quantity: 1 });
    const [first, second] = [await walkIn(service, studio), await walkIn(service, studio)];
    const symbol = needles.containers[0]?.labelCode;
    const line = await scan(first, { symbol });
    expect((await scan(second, { symbol })).verdict).toBe('refused');
    await service.made(`/sessions/${first}/tray/${line.trayLineId}/take-off`, {});
    expect(admitted(await scan(second, { symbol }))).toBe(true);
  });

  describe('a bottle that was opened', () => {
    const bottle = (containerId: string | undefined) =>
      service.seen<{ state: string; openedAt: string | null }>(`/containers/${containerId}`);
    const ending = { complications: null, signedBy: '' };
    const complete = (session: string, trayLineId: string | null) =>
      service.made<CompletionView>(`/sessions/${session}/completion`, {
        ...ending,
        signedBy: studio.ownerId,
        lines: [{ trayLineId, outcome: 'opened unused' }],
      });
    async function laidOut(code: string) {
      const { containers } = await receive(service, studio, { productId: studio.umberId, code });
      const session = await walkIn(service, studio);
      const { trayLineId } = await scan(session, { symbol: containers[0]?.labelCode });
      return { session, trayLineId, containerId: containers[0]?.id };
    }
    async function dropped(code: string) {
      const line = await laidOut(code);
      const mix = await service.made<{ id: string }>(`/sessions/${line.session}/mixes`, { label: 'base' });
      const droppedAt = daysAgo(0.01);
      const drop = (drops: number, occurredAt: string) =>
        service.made(`/sessions/${line.session}/mixes/${mix.id}/components`, {
          containerId: line.containerId,
          drops,
          occurredAt,
        });
      await drop(3, droppedAt);
      await drop(1, daysAgo(0.005));
      return { ...line, droppedAt };
    }

    it('is open from the completion that says so, though nothing of it was used', async () => {
      const { session, trayLineId, containerId } = await laidOut('U-unused');
      const { completedAt } = await complete(session, trayLineId);
      expect(await bottle(containerId)).toMatchObject({ state: 'opened', openedAt: completedAt });
    });

    it('is open from its first drop, when the mix touched nobody', async () => {
      const { session, trayLineId, containerId, droppedAt } = await dropped('U-mixed');
      const completed = await complete(session, trayLineId);
      expect(completed.uses).toEqual([]);
      expect(await bottle(containerId)).toMatchObject({ state: 'opened', openedAt: droppedAt });
    });

    it('is open from its first drop, when the mix was used', async () => {
      const { session, containerId, droppedAt } = await dropped('U-mixed-used');
      const all = { ...ending, signedBy: studio.ownerId, lines: [] };
      await service.made(`/sessions/${session}/completion`, all);
      expect(await bottle(containerId)).toMatchObject({ state: 'opened', openedAt: droppedAt });
    });

    it('is open from its first drop, when the session is cancelled', async () => {
      const { session, containerId, droppedAt } = await dropped('U-cancelled');
      await service.made(`/sessions/${session}/cancellation`);
      expect(await bottle(containerId)).toMatchObject({ state: 'opened', openedAt: droppedAt });
    });

    it('is open when it is taken off the tray as opened', async () => {
      const { session, trayLineId, containerId } = await laidOut('U-off');
      await service.made(`/sessions/${session}/tray/${trayLineId}/take-off`, { outcome: 'opened unused' });
      expect(await bottle(containerId)).toMatchObject({ state: 'opened' });
    });

    it('stays sealed when it goes back as it was', async () => {
      const { session, trayLineId, containerId } = await laidOut('U-back');
      await service.made(`/sessions/${session}/tray/${trayLineId}/take-off`, { outcome: 'back unopened' });
      expect(await bottle(containerId)).toMatchObject({ state: 'sealed', openedAt: null });
    });
  });

  it('wastes a piece that was opened before it is taken off, and lets its serial never lie on a tray again', async () => {
    const needles = await receive(service, studio, {
      productId: studio.linerId,
      code: 'N-drop',
      quantity: 2,
    });
    const session = await walkIn(service, studio);
    const symbol = `]d201${studio.linerGtin}10N-drop\u001d21D1`;
    const line = await scan(session, { symbol });
    const path = `/sessions/${session}/tray/${line.trayLineId}/take-off`;
    const unknown = await service.post<ProblemBody>(path, { outcome: 'used' });
    expect([unknown.status, unknown.body.code]).toEqual([400, 'invalid-fields']);
    await service.made(path, { outcome: 'opened unused' });
    const box = await service.seen<{ pieces: number }>(`/containers/${needles.containers[0]?.id}`);
    expect(box.pieces).toBe(1);
    const { movements } = await service.seen<LotView>(`/lots/${needles.lot.id}`);
    const waste = movements.find(({ kind }) => kind === 'wasted');
    const kept = await service.post<ProblemBody>(`/movements/${waste?.id}/reversal`, { reason: 'slip' });
    expect([kept.status, kept.body.code]).toEqual([409, 'wrong-state']);
    expect(kept.body.detail).toContain('count the box');
    const tray = await service.seen<TrayView>(`/sessions/${session}/tray`);
    expect(tray.lines).toEqual([expect.objectContaining({ state: 'settled', settledAs: 'opened unused' })]);
    expect(codes(await scan(session, { symbol }))).toEqual(['already used']);
    expect((await service.post(`/sessions/${session}/cancellation`)).status).toBe(200);
    const after = await service.seen<{ pieces: number }>(`/containers/${needles.containers[0]?.id}`);
    expect(after.pieces).toBe(1);
  });

  it('tells of a bottle on the tray that it is gone', async () => {
    const { containers } = await receive(service, studio, {
      productId: studio.umberId,
      code: 'U-gone',
      quantity: 2,
      openedAt: daysAgo(2),
    });
    const session = await walkIn(service, studio);
    for (const { labelCode } of containers) await scan(session, { symbol: labelCode });
    await service.made(`/containers/${containers[0]?.id}/finish`);
    await service.made(`/containers/${containers[1]?.id}/discard`, { reason: 'dropped' });
    const tray = await service.seen<TrayView>(`/sessions/${session}/tray`);
    expect(tray.lines.map((line) => line.refusedNow.map(({ code }) => code))).toEqual([
      ['none left'],
      ['none left'],
    ]);
  });

  it('tells what the kit lacks, and warns of what is not on the kit list', async () => {
    const procedure = await service.made<{ id: string }>('/procedures', {
      name: 'Hair strokes',
      bodyPlace: 'brows',
    });
    await service.put(`/procedures/${procedure.id}/kit-list`, {
      items: [{ productId: studio.linerId, quantity: 2 }],
    });
    const umber = await receive(service, studio, {
      productId: studio.umberId,
      code: 'U-kit',
      openedAt: daysAgo(2),
    });
    const needles = await receive(service, studio, { productId: studio.linerId, code: 'N-kit', quantity: 2 });
    const session = await walkIn(service, studio, { procedureId: procedure.id });
    const bottle = await scan(session, { symbol: umber.containers[0]?.labelCode });
    expect(codes(bottle)).toContain('not on the kit list');
    await scan(session, { symbol: needles.containers[0]?.labelCode });
    const tray = await service.seen<TrayView>(`/sessions/${session}/tray`);
    expect(tray.lacking).toEqual([expect.objectContaining({ productId: studio.linerId, quantityPieces: 1 })]);
  });

  it('judges dates on the studio’s local day of the scan', async () => {
    const line = await receive(service, studio, { productId: studio.umberId, code: 'U-today', useBy: today });
    const session = await walkIn(service, studio);
    const answer = await scan(session, { symbol: line.containers[0]?.labelCode });
    expect(answer.verdict).not.toBe('refused');
    expect(answer.thing?.lastDay).toBe(today);
  });
});
