import { QueryClient } from '@tanstack/react-query';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import type { DayFactsView } from '../../sessions/day-facts.views.js';
import type { ScanView } from '../../sessions/tray.views.js';
import { tellReached } from '../service/connection.js';

const kept = { facts: undefined as DayFactsView | undefined, keepsNothing: false };
vi.mock('./device-store.js', () => ({
  keptFacts: async () => kept.facts,
  keepFacts: async (facts: DayFactsView) => {
    if (kept.keepsNothing) throw new Error('It is a private window.');
    kept.facts = facts;
  },
}));
const { factsKey, noteLine, toldOrKept } = await import('./use-day-facts.js');

const today = { studioId: 'studio', day: '2026-03-10', timeZone: 'Europe/Vienna', lines: [], containers: [] };
const facts = today as unknown as DayFactsView;
const answers = (answer: () => Promise<Response>) => vi.stubGlobal('fetch', vi.fn(answer));
const fails = (status: number, code: string) => async () =>
  Response.json({ status, code, title: '', detail: '' }, { status });

let page: QueryClient;
beforeEach(() => {
  vi.useFakeTimers({ now: new Date('2026-03-10T09:00:00.000Z') });
  Object.assign(kept, { facts: undefined, keepsNothing: false });
  page = new QueryClient();
  tellReached(true);
});
afterEach(() => {
  page.clear();
  tellReached(true);
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

it('keeps what the service tells', async () => {
  answers(async () => Response.json(facts));
  expect(await toldOrKept(page, 'studio')).toEqual(facts);
  expect(kept.facts).toEqual(facts);
});

it.each<[string, () => Promise<Response>]>([
  ['is not reached', () => Promise.reject(new TypeError('Failed to fetch'))],
  ['is just starting', fails(503, 'not-ready')],
  ['has a fault', fails(500, 'internal-error')],
  ['wants fewer requests', fails(429, 'too-many-requests')],
])('knows what was kept where the service %s', async (_, answer) => {
  answers(answer);
  kept.facts = facts;
  expect(await toldOrKept(page, 'studio')).toEqual(facts);
});

it('does not take for kept what whoever is signed in now may not be told', async () => {
  answers(fails(403, 'not-allowed'));
  kept.facts = facts;
  await expect(toldOrKept(page, 'studio')).rejects.toMatchObject({ code: 'not-allowed' });
});

it('asks nothing while the service is not reached: it is looked for already', async () => {
  answers(async () => Response.json(facts));
  tellReached(false);
  expect(await toldOrKept(page, 'studio')).toBeNull();
  expect(fetch).not.toHaveBeenCalled();
});

it('forgets the day when it is over where the studio is, and not when it is over in UTC', async () => {
  tellReached(false);
  kept.facts = facts;
  vi.setSystemTime(new Date('2026-03-10T22:59:59.999Z'));
  expect(await toldOrKept(page, 'studio')).toEqual(facts);
  vi.setSystemTime(new Date('2026-03-10T23:00:00.000Z'));
  expect(await toldOrKept(page, 'studio')).toBeNull();
});

it('knows it until the page is closed where the browser keeps nothing', async () => {
  kept.keepsNothing = true;
  answers(async () => Response.json(facts));
  page.setQueryData(factsKey('studio'), await toldOrKept(page, 'studio'));
  tellReached(false);
  expect(await toldOrKept(page, 'studio')).toEqual(facts);
});

it('knows a line that was just answered, once, also on the next page', () => {
  page.setQueryData(factsKey('studio'), facts);
  const thing = { containerId: 'box', lotId: 'lot', productId: 'liner' };
  const scan = { trayLineId: 'line', sessionId: 'here', knownBy: 'typed', occurredAt: '', thing };
  noteLine(page, 'studio', scan as ScanView);
  noteLine(page, 'studio', scan as ScanView);
  expect(kept.facts?.lines).toMatchObject([{ id: 'line', sessionId: 'here', containerId: 'box' }]);
  expect(page.getQueryData(factsKey('studio'))).toEqual(kept.facts);
});
