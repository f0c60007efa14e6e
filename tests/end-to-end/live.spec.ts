import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { AlertPageView } from '../../src/alerts/alerts.views.js';
import { stopLimitMilliseconds } from '../../src/platform/stopping.js';
import { EventStream } from '../support/event-stream.js';
import { type ProblemBody, type RunningService, startService, usualEngine } from '../support/service.js';
import { personOfRole, type SignedInPerson, signInOwner, studioOfSameChain } from '../support/signing-in.js';
import { StockedStudio } from '../support/stocked-studio.js';

const mostStreamsOfPerson = 8;

describe.each(usualEngine)('live alerts on %s', (engine) => {
  let service: RunningService;
  let studio: StockedStudio;
  let manager: SignedInPerson;
  const open: EventStream[] = [];

  beforeAll(async () => {
    service = await startService(engine);
    studio = new StockedStudio(service);
    manager = await personOfRole(service, 'manager');
  });
  afterAll(async () => {
    await Promise.all(open.map((stream) => stream.close()));
    await service.dispose();
  });

  const listen = async (headers: Record<string, string>, address = `${service.studio}/alerts/live`) => {
    const stream = await EventStream.open(address, headers);
    open.push(stream);
    return stream;
  };
  const sequenceOf = ({ data }: { data: unknown }) => (data as { sequence: number }).sequence;

  /** Opens an alert, of a product that is low from the beginning. */
  async function lowProduct(name: string): Promise<string> {
    const productId = await studio.product({ name, kind: 'cartridge' });
    await service.put('/stock/levels', { subjectKind: 'product', subjectId: productId, minimumPieces: 3 });
    const { items } = await service.seen<AlertPageView>('/alerts?limit=200');
    return items.find(({ subjectId }) => subjectId === productId)?.id ?? '';
  }

  it('tells each step once, in its order, and nothing of what it is about', async () => {
    const stream = await listen({ cookie: manager.cookie });
    const [connected] = await stream.has(1);
    expect(connected).toMatchObject({ name: 'connected', id: String(sequenceOf(connected ?? { data: {} })) });
    const alertId = await lowProduct('Live liner');
    const [, opened] = await stream.has(2);
    const first = sequenceOf(connected ?? { data: {} }) + 1;
    expect(opened).toEqual({
      name: 'alert',
      id: String(first),
      data: { sequence: first, alertId, kind: 'low stock', severity: 'urgent', event: 'opened' },
    });
    await service.made(`/alerts/${alertId}/acknowledge`, {}, { cookie: manager.cookie });
    const [, , acknowledged] = await stream.has(3);
    expect(acknowledged).toMatchObject({ id: String(first + 1), data: { alertId, event: 'acknowledged' } });
  });

  it('goes on after an interruption with what was missed', async () => {
    const stream = await listen({ cookie: manager.cookie });
    const [connected] = await stream.has(1);
    await stream.close();
    const alertId = await lowProduct('Missed liner');
    const again = await listen({ cookie: manager.cookie, 'last-event-id': connected?.id ?? '' });
    const [, opened] = await again.has(2);
    expect(opened?.data).toMatchObject({ alertId, event: 'opened' });
    const strange = await listen({ cookie: manager.cookie, 'last-event-id': '999999999' });
    expect((await strange.has(2)).map(({ name }) => name)).toEqual(['connected', 'missed']);
  });

  it('is for programs too, and hands nothing on that others might keep', async () => {
    const stream = await listen({ authorization: `Bearer ${service.token}` });
    await stream.has(1);
    const { headers } = stream.response;
    expect(headers.get('content-type')).toBe('text/event-stream; charset=utf-8');
    expect([headers.get('cache-control'), headers.get('x-accel-buffering')]).toEqual(['no-store', 'no']);
    expect(headers.get('content-encoding')).toBeNull();
    expect(headers.get('x-content-type-options')).toBe('nosniff');
    expect(headers.get('x-request-id')).toMatch(/^[0-9a-f-]{36}$/);
  });

  it('tells a studio nothing of another', async () => {
    const other = await studioOfSameChain(service);
    const authorization = `Bearer ${other.token}`;
    const own = await listen(
      { authorization },
      `${service.url}/api/v1/studios/${other.studioId}/alerts/live`,
    );
    await own.has(1);
    const watching = await listen({ cookie: manager.cookie });
    await watching.has(1);
    await lowProduct('Own liner');
    await watching.has(2);
    expect(own.events.map(({ name }) => name)).toEqual(['connected']);
    const foreign = await service.get<ProblemBody>('/alerts/live', {
      authorization,
      accept: 'text/event-stream',
    });
    expect(foreign.status).toBe(404);
  });

  it('says what it is to who asks for an ordinary answer', async () => {
    const plain = await service.get<ProblemBody>('/alerts/live');
    expect([plain.status, plain.body.code]).toEqual([400, 'malformed-request']);
    const head = await service.fetch(`${service.studio}/alerts/live`, {
      method: 'HEAD',
      headers: { accept: 'text/event-stream' },
    });
    expect(head.status).toBe(200);
  });

  it('lets nobody open more pages than so many, and again when one was closed', async () => {
    const artist = await personOfRole(service, 'artist');
    const streams: EventStream[] = [];
    for (let index = 0; index < mostStreamsOfPerson; index += 1)
      streams.push(await listen({ cookie: artist.cookie }));
    const headers = { cookie: artist.cookie, accept: 'text/event-stream' };
    const refused = await service.get<ProblemBody>('/alerts/live', headers);
    expect([refused.status, refused.body.code]).toEqual([429, 'too-many-requests']);
    await streams[0]?.close();
    await expect
      .poll(async () => (await listen({ cookie: artist.cookie })).response.status, {
        timeout: 20_000,
        interval: 100,
      })
      .toBe(200);
    await Promise.all(streams.map((stream) => stream.close()));
  });

  it('ends when its person signs out or leaves', { timeout: 40_000 }, async () => {
    const [leaving, left] = [await personOfRole(service, 'artist'), await signInOwner(service)];
    const [ofLeaving, ofOwner, ofManager] = [
      await listen({ cookie: leaving.cookie }),
      await listen({ cookie: left }),
      await listen({ cookie: manager.cookie }),
    ];
    const people = await service.seen<{ id: string; version: number }[]>('/people');
    const version = people.find(({ id }) => id === leaving.personId)?.version;
    await service.patch(`/people/${leaving.personId}`, { version, state: 'left' });
    await fetch(`${service.url}/api/v1/sign-out`, { method: 'POST', headers: { cookie: left } });
    await Promise.all([ofLeaving.ended, ofOwner.ended]);
    expect([ofLeaving, ofOwner].map(({ events }) => events.at(-1)?.name)).toEqual(['ended', 'ended']);
    expect(ofManager.events.map(({ name }) => name)).not.toContain('ended');
    await expect.poll(() => ofManager.comments, { timeout: 20_000 }).toBeGreaterThan(0);
  });

  it('does not keep the service from ending, and says that it ends', async () => {
    const stream = await listen({ cookie: manager.cookie });
    await stream.has(1);
    const begun = Date.now();
    expect(await service.stop()).toBe(0);
    expect(Date.now() - begun).toBeLessThan(stopLimitMilliseconds);
    await stream.ended;
    expect(stream.events.at(-1)).toMatchObject({ name: 'ended', data: { why: 'the service ends' } });
    const lines = service.log
      .join('')
      .split('\n')
      .filter((line) => line.includes('alerts/live'));
    expect(lines.some((line) => line.includes('"status":200'))).toBe(true);
    expect(lines.some((line) => /"level":"?(error|50)/.test(line))).toBe(false);
  });
});
