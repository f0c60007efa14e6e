import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { AlertPageView, AlertView } from '../../src/alerts/alerts.views.js';
import { makeSampleStudio, receive, type SampleStudio, walkIn } from '../support/sample-studio.js';
import { type RunningService, strictestEngine } from '../support/service.js';
import { startStudio } from '../support/shared-service.js';
import { dayAhead } from '../support/stocked-studio.js';
import { until } from '../support/waiting.js';

describe.each(strictestEngine)('alerts of sessions to come on %s', (engine) => {
  let service: RunningService;
  let studio: SampleStudio;

  beforeAll(async () => {
    service = await startStudio(engine);
    studio = await makeSampleStudio(service);
    finished.signedBy = studio.ownerId;
    await service.put(`/procedures/${studio.procedureId}/kit-list`, {
      items: [
        { productId: studio.umberId, quantity: 1 },
        { productId: studio.linerId, quantity: 2 },
      ],
    });
  });
  afterAll(() => service.dispose());

  const of = async (sessionId: string): Promise<AlertView[]> => {
    const { items } = await service.seen<AlertPageView>('/alerts?limit=200');
    return items.filter(({ subjectId }) => subjectId === sessionId);
  };
  /** What changed is judged shortly after. */
  const eventually = (what: string, sessionId: string, is: (alerts: AlertView[]) => boolean) =>
    until(what, async () => {
      const alerts = await of(sessionId);
      return is(alerts) ? alerts : undefined;
    });
  const told = (what: string, sessionId: string) => eventually(what, sessionId, ({ length }) => length === 1);
  const over = (what: string, sessionId: string) => eventually(what, sessionId, ({ length }) => length === 0);
  const finished = { lines: [], complications: 'none', signedBy: '' };
  const noon = (days: number) => `${dayAhead(days)}T12:00:00.000Z`;
  const plan = async (days: number, more: object = {}): Promise<{ id: string; version: number }> =>
    service.made('/sessions', {
      clientId: studio.clientId,
      artistId: studio.ownerId,
      procedureId: studio.procedureId,
      visitKind: 'refresh',
      plannedStart: noon(days),
      ...more,
    });

  it('tells of a kit that cannot be filled from planning on, until goods arrive, and never names the client', async () => {
    const session = await plan(5);
    const [alert] = await told('the kit is lacking', session.id);
    expect(alert).toMatchObject({
      kind: 'kit cannot be filled',
      subjectKind: 'session',
      severity: 'warning',
      facts: {
        procedure: 'Powder brows',
        day: dayAhead(5),
        lacking: ['1 × Halden Colour Works Umber Warm 02', '2 × Halden Colour Works Fine liner'],
      },
    });
    expect(JSON.stringify(alert)).not.toMatch(/Ida|Sommer/);
    await receive(service, studio, { productId: studio.umberId, code: 'K-U' });
    await receive(service, studio, { productId: studio.linerId, code: 'K-L', quantity: 3 });
    await over('the kit can be filled', session.id);

    // A later one gets what is left, and is moved to where it is urgent.
    const later = await plan(6);
    expect(await told('little is left', later.id)).toMatchObject([
      { facts: { lacking: ['1 × Halden Colour Works Fine liner'] }, severity: 'warning' },
    ]);
    await service.patch(`/sessions/${later.id}`, { version: later.version, plannedStart: noon(1) });
    await over('it comes first', later.id);
    expect(await told('it comes second', session.id)).toMatchObject([
      { facts: { lacking: ['1 × Halden Colour Works Fine liner'] }, severity: 'warning' },
    ]);
    await service.made(`/sessions/${later.id}/cancellation`);
    await over('it is alone', session.id);
    await service.made(`/sessions/${session.id}/cancellation`);
  });

  it('counts what is in date on the day of the session, holds, and what lies on trays', async () => {
    const until3 = { productId: studio.gelId, useBy: dayAhead(3), code: 'K-G' };
    await receive(service, studio, until3);
    const { id: procedureId } = await service.made<{ id: string }>('/procedures', {
      name: 'Numbing only',
      bodyPlace: 'lips',
    });
    const [sooner, later] = [await plan(3, { procedureId }), await plan(4, { procedureId })];
    await service.put(`/procedures/${procedureId}/kit-list`, {
      items: [{ productId: studio.gelId, quantity: 1 }],
    });
    expect(await told('none is in date then', later.id)).toMatchObject([
      { facts: { lacking: ['1 × Halden Colour Works Numbing gel'] } },
    ]);
    expect(await of(sooner.id)).toEqual([]);
    const fresh = await receive(service, studio, { productId: studio.gelId, code: 'K-G2' });
    await over('another is here', later.id);
    const hold = await service.made<{ id: string }>('/holds', {
      kind: 'quarantine',
      reason: 'doubt',
      lotId: fresh.lot.id,
    });
    await told('the other is held', later.id);
    await service.made(`/holds/${hold.id}/release`, { reason: 'It was another lot.' });
    await over('it is released', later.id);
  });

  it('tells of a touch-up whose mix will be out of date, until it is planned earlier or took place', async () => {
    const useBy = dayAhead(35);
    const bottle = await receive(service, studio, { productId: studio.umberId, code: 'T-1', useBy });
    const { id: clientId } = await service.made<{ id: string }>('/clients', { name: 'Ida Winter' });
    const sessionId = await walkIn(service, studio, { clientId });
    await service.made(`/sessions/${sessionId}/scans`, { containerId: bottle.containers[0]?.id });
    const mix = await service.made<{ id: string }>(`/sessions/${sessionId}/mixes`, { label: 'base' });
    await service.made(`/sessions/${sessionId}/mixes/${mix.id}/components`, {
      containerId: bottle.containers[0]?.id,
      drops: 3,
    });
    await service.made(`/sessions/${sessionId}/completion`, finished);
    const [alert] = await told('the mix is at risk', sessionId);
    expect(alert).toMatchObject({
      kind: 'touch-up mix out of date',
      subjectKind: 'session',
      severity: 'notice',
      facts: {
        product: 'Umber',
        shade: 'Warm 02',
        maker: 'Halden Colour Works',
        lotCode: 'T-1',
        lastDay: useBy,
        because: 'expired',
        // Of the first test.
        anotherLot: 'here',
        procedure: 'Powder brows',
        opensOn: dayAhead(30),
        closesOn: dayAhead(40),
      },
    });
    expect(JSON.stringify(alert)).not.toMatch(/Ida|Winter/);

    const touchUp = { clientId, visitKind: 'touch-up', followsSessionId: sessionId };
    const planned = await plan(34, touchUp);
    await over('it is planned in time', sessionId);
    await service.patch(`/sessions/${planned.id}`, { version: planned.version, plannedStart: noon(36) });
    expect(await told('it is planned too late', sessionId)).toMatchObject([
      { facts: { plannedOn: dayAhead(36) } },
    ]);
    await service.made(`/sessions/${planned.id}/setup`);
    await over('it takes place', sessionId);
    await service.made(`/sessions/${planned.id}/cancellation`);
    await told('it did not', sessionId);

    const second = await walkIn(service, studio, touchUp);
    await over('the touch-up takes place', sessionId);
    await service.made(`/sessions/${second}/completion`, finished);
    await service.made('/alerts/sweep');
    expect(await of(sessionId)).toEqual([]);
  });

  it('finds in a sweep nothing that is not told already', async () => {
    await plan(2);
    const later = await plan(4);
    await told('what was planned last is judged', later.id);
    const open = async () => (await service.seen<AlertPageView>('/alerts?limit=200')).items;
    const before = await open();
    expect(await service.made('/alerts/sweep')).toMatchObject({ opened: 0, closed: 0 });
    expect(await open()).toEqual(before);
  });
});
