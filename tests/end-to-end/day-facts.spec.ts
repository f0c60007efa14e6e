import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type DayFacts, judgeOnDevice, type ShownToTray } from '../../src/sessions/day-facts.js';
import type { DayFactsView } from '../../src/sessions/day-facts.views.js';
import { shownThing } from '../../src/sessions/shown-thing.js';
import type { ScanView, TrayView } from '../../src/sessions/tray.views.js';
import { trayOnDevice } from '../../src/web/offline/tray-on-device.js';
import { SeededRandom } from '../support/random.js';
import { makeSampleStudio, receive, type SampleStudio, walkIn } from '../support/sample-studio.js';
import { type ProblemBody, type RunningService, usualEngine } from '../support/service.js';
import { startStudio } from '../support/shared-service.js';

describe.each(usualEngine)('what a device is told of a day on %s', (engine) => {
  let service: RunningService;
  let studio: SampleStudio;

  beforeAll(async () => {
    service = await startStudio(engine);
    studio = await makeSampleStudio(service);
  });
  afterAll(() => service.dispose());

  // The view is what the rule takes: this line does not compile when they part.
  const dayFacts = (): Promise<DayFacts> => service.seen<DayFactsView>('/day-facts');

  it('lets it judge every scan as the service does', async () => {
    const soon = new Date(Date.now() + 20 * 86_400_000).toISOString().slice(0, 10);
    const past = new Date(Date.now() - 20 * 86_400_000).toISOString().slice(0, 10);
    const goods = [
      await receive(service, studio, { productId: studio.umberId, code: 'U-1', useBy: soon, quantity: 2 }),
      await receive(service, studio, { productId: studio.umberId, code: 'U-2', quantity: 1 }),
      await receive(service, studio, { productId: studio.umberId, code: 'SAME', quantity: 1 }),
      await receive(service, studio, { productId: studio.gelId, code: 'SAME', quantity: 1 }),
      await receive(service, studio, { productId: studio.gelId, code: 'G-old', useBy: past, quantity: 1 }),
      await receive(service, studio, {
        productId: studio.linerId,
        code: 'N-1',
        useBy: '2030-06-30',
        quantity: 3,
      }),
      await receive(service, studio, {
        productId: studio.linerId,
        code: 'N-1',
        useBy: '2031-06-30',
        quantity: 2,
        sameCodeDecision: 'separate lot',
      }),
      await receive(service, studio, { productId: studio.thinnerId, code: null, useBy: null, quantity: 1 }),
    ];
    await service.made('/holds', { kind: 'recall', reason: 'recall notice', lotId: goods[1]?.lot.id });
    const containers = goods.flatMap((line) => line.containers);
    await service.made(`/containers/${containers[0]?.id}/open`, {});
    await service.put(`/procedures/${studio.procedureId}/kit-list`, {
      items: [
        { productId: studio.umberId, quantity: 1 },
        { productId: studio.linerId, quantity: 2 },
        { productId: studio.gelId, quantity: 3 },
      ],
    });
    const sessions = [await walkIn(service, studio), await walkIn(service, studio, { visitKind: 'refresh' })];
    const shown: ShownToTray[] = [
      ...containers.map(({ labelCode }) => ({ symbol: labelCode })),
      ...['u-1', 'U-2', 'SAME', 'N-1', 'nothing-of-the-kind'].map((symbol) => ({ symbol })),
      { symbol: `]d201${studio.linerGtin}1730063010N-1` },
      { symbol: `]d201${studio.linerGtin}1730063010N-1`, another: true },
      { symbol: `]d201${studio.linerGtin}1730053110N-1` },
      { symbol: `]d201${studio.linerGtin}10N-1\u001d21S1` },
      { symbol: `]d201${studio.linerGtin}10N-1\u001d21S2` },
      { symbol: `01${studio.linerGtin}` },
      { symbol: studio.linerGtin },
      { symbol: '19506000134359' },
      ...goods.map(({ lot }) => ({ lotId: lot.id })),
      ...containers.map(({ id }) => ({ containerId: id })),
      ...[studio.umberId, studio.gelId, studio.linerId].map((productId) => ({ productId })),
    ];
    const random = SeededRandom.ofThisRun();
    process.stdout.write(`scans on a device: SEED=${random.seed}\n`);
    let unlikely = 0;
    for (let turn = 0; turn < 120; turn += 1) {
      const sessionId = random.pick(sessions);
      const what = random.pick(shown);
      const facts = await dayFacts();
      const event = { id: uuidv7(), at: new Date().toISOString() };
      const there = judgeOnDevice(facts, sessionId, what, event);
      const here = await service.post<ScanView & ProblemBody>(`/sessions/${sessionId}/scans`, {
        ...what,
        id: event.id,
        occurredAt: event.at,
      });
      if (here.status >= 400) {
        expect([there.kind, what], here.body.detail).toEqual(['not known', what]);
        continue;
      }
      if (there.kind !== 'judged') throw new Error(`${JSON.stringify(what)} is not known: ${there.detail}`);
      const { outcome } = there;
      const asShown = (thing: Parameters<typeof shownThing>[0]) =>
        shownThing(thing, event.at, facts.timeZone);
      expect({
        verdict: outcome.verdict,
        reasons: outcome.reasons.map(({ code, message }) => [code, message]),
        thing: outcome.thing && asShown(outcome.thing),
        instead: outcome.instead && asShown(outcome.instead),
        choices: outcome.choices.map(asShown),
        offers: outcome.decision?.offers ?? [],
        knownBy: there.knownBy,
        trayLineId: there.line?.id ?? null,
      }).toEqual({
        verdict: here.body.verdict,
        reasons: here.body.reasons.map(({ code, message }) => [code, message]),
        thing: here.body.thing,
        instead: here.body.instead,
        choices: here.body.choices,
        offers: here.body.offers,
        knownBy: here.body.knownBy,
        trayLineId: here.body.trayLineId,
      });
      if (outcome.verdict !== 'admitted') unlikely += 1;
    }
    expect(unlikely).toBeGreaterThan(20);

    // One of what was laid out is recorded as gone: it is on the tray all the same, and says so.
    const [laid] = (await dayFacts()).lines.filter(({ pieces }) => pieces === 0);
    await service.made(`/containers/${laid?.containerId}/discard`, { reason: 'broken' });
    const cup = await service.made<{ id: string }>(`/sessions/${laid?.sessionId}/mixes`, { label: 'Mix 1' });
    const known = await service.seen<DayFactsView>('/day-facts');
    expect(known.mixes).toMatchObject([{ id: cup.id, sessionId: laid?.sessionId, parts: [] }]);
    for (const sessionId of sessions) {
      const { lines, version: _, ...tray } = await service.seen<TrayView>(`/sessions/${sessionId}/tray`);
      const { version: __, ...here } = trayOnDevice(known, sessionId, new Date().toISOString()) as TrayView;
      expect(here).toEqual({ ...tray, lines: lines.filter(({ state }) => state === 'on tray') });
      expect(here.lines.length).toBeGreaterThan(0);
    }
    const label = known.labels.find(({ containerId }) => containerId === laid?.containerId);
    const scan = { id: uuidv7(), symbol: label?.code, occurredAt: new Date().toISOString() };
    const there = await service.made<ScanView>(`/sessions/${laid?.sessionId}/scans`, scan);
    const judged = judgeOnDevice(
      known,
      laid?.sessionId ?? '',
      { symbol: label?.code ?? '' },
      { id: scan.id, at: scan.occurredAt },
    );
    expect(judged).toMatchObject({
      kind: 'judged',
      outcome: { verdict: there.verdict, reasons: there.reasons },
    });
    expect(there.verdict).toBe('refused');
  });

  it('names the sessions of the day and those in setup, each client by reference only', async () => {
    const walkedIn = await walkIn(service, studio);
    const plan = (plannedStart: Date) =>
      service.made<{ id: string }>('/sessions', {
        clientId: studio.clientId,
        artistId: studio.ownerId,
        procedureId: studio.procedureId,
        visitKind: 'first session',
        plannedStart: plannedStart.toISOString(),
      });
    const today = await plan(new Date());
    const later = await plan(new Date(Date.now() + 3 * 86_400_000));
    const text = JSON.stringify(await dayFacts());
    const ids = (JSON.parse(text) as DayFactsView).sessions.map(({ id }) => id);
    expect(ids).toContain(walkedIn);
    expect(ids).toContain(today.id);
    expect(ids).not.toContain(later.id);
    expect(text).not.toContain('Sommer');
    expect(text).not.toContain('5550100');
  });
});
