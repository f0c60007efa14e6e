import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { noteDoing } from './attended.js';
import { currentConnection, tellReached } from './connection.js';
import { isProblem } from './problem.js';
import { onSignedOut, request } from './request.js';

const ask = () => request('GET', '/me', {}).catch((error: unknown) => error);
const answers = (answer: () => Promise<Response>) => vi.stubGlobal('fetch', vi.fn(answer));
const json = (body: object, init?: ResponseInit) => async () => Response.json(body, init);

beforeEach(() => {
  vi.useFakeTimers();
  tellReached(true);
});
afterEach(() => {
  tellReached(true);
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

it('takes every answer of the service for a connection, also a refusal', async () => {
  for (const [code, status] of [
    ['wrong-state', 409],
    ['internal-error', 500],
    ['not-ready', 503],
  ] as const) {
    tellReached(false);
    answers(json({ status, code, title: '', detail: '' }, { status }));
    expect(isProblem(await ask(), code)).toBe(true);
    expect(currentConnection().isReached).toBe(true);
  }
});

it.each<[string, () => Promise<Response>]>([
  ['no answer', () => Promise.reject(new TypeError('Failed to fetch'))],
  ['the page of a proxy', async () => new Response('<h1>Bad gateway</h1>', { status: 502 })],
  ["the sign-in of a guests' network", async () => new Response('<h1>Welcome</h1>')],
  [
    'a network lost in the middle of the answer',
    async () =>
      new Response(new ReadableStream({ pull: (stream) => stream.error(new TypeError('network error')) })),
  ],
])('takes %s for an unreached service', async (_, answer) => {
  answers(answer);
  expect(isProblem(await ask(), 'unreachable')).toBe(true);
  expect(currentConnection().isReached).toBe(false);
});

it('gives a question up that is not answered, and lets go of its connection', async () => {
  let signal: AbortSignal | null | undefined;
  vi.stubGlobal('fetch', (_: string, init: RequestInit) => {
    signal = init.signal;
    return new Promise((_, refuse) => {
      signal?.addEventListener('abort', () => refuse(signal?.reason));
    });
  });
  const asked = ask();
  await vi.advanceTimersByTimeAsync(20_000);
  expect(isProblem(await asked, 'unreachable')).toBe(true);
  expect(signal?.aborted).toBe(true);
  expect(vi.getTimerCount()).toBe(1); // The service is looked for.
});

it('says that the page asks by itself once nobody did anything at it for a minute', async () => {
  answers(json({}));
  const isByItself = () => {
    const [, sent] = vi.mocked(fetch).mock.lastCall ?? [];
    return new Headers(sent?.headers).get('lotward-by-itself') === '1';
  };
  noteDoing();
  vi.advanceTimersByTime(59_999);
  await ask();
  expect(isByItself()).toBe(false);
  vi.advanceTimersByTime(1);
  await ask();
  expect(isByItself()).toBe(true);
  // What changes something was asked for by somebody.
  await request('POST', '/sign-out', {});
  expect(isByItself()).toBe(false);
  noteDoing();
  await ask();
  expect(isByItself()).toBe(false);
});

it('tells that nobody is signed in any more', async () => {
  const told = vi.fn();
  const forget = onSignedOut(told);
  answers(json({ status: 401, code: 'sign-in-needed', title: '', detail: '' }, { status: 401 }));
  await ask();
  forget();
  expect(told).toHaveBeenCalledOnce();
});

it('looks for the service again and again, and believes nobody but the service', async () => {
  answers(() => Promise.reject(new TypeError('Failed to fetch')));
  await ask();
  for (const answer of [
    async () => new Response('<h1>Bad gateway</h1>', { status: 502 }),
    async () => new Response('<h1>Welcome</h1>'),
    json({ status: 'starting' }, { status: 503 }),
  ]) {
    answers(answer);
    await vi.advanceTimersByTimeAsync(8_000);
    expect(fetch).toHaveBeenCalledTimes(2);
    expect(currentConnection().isReached).toBe(false);
  }
  answers(json({ status: 'live' }));
  await vi.advanceTimersByTimeAsync(4_000);
  expect(currentConnection().isReached).toBe(true);
  expect(vi.getTimerCount()).toBe(0);
});
