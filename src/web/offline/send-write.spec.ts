import { afterEach, expect, it, vi } from 'vitest';
import { tellReached } from '../service/connection.js';
import { isProblem } from '../service/problem.js';
import { sendWrite } from './send-write.js';
import type { WaitingWrite } from './waiting-write.js';

const whose = { studioId: 'studio', sessionId: 'session', personId: 'mira' };
const event = { id: 'write', occurredAt: '2026-03-10T09:00:00.000Z' };
const press = { ...event, mixId: 'cup', containerId: 'bottle', drops: 2 };
const writes: WaitingWrite[] = [
  { ...whose, ...event, kind: 'setup' },
  { ...whose, ...event, kind: 'scan', shown: { symbol: 'HU-118' } },
  { ...whose, ...event, kind: 'mix press', press: { ...event, begins: 'Mix 1' } },
  { ...whose, ...event, kind: 'mix press', press },
];

afterEach(() => {
  tellReached(true);
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

it.each(writes)('says in whose name it is done, with the id and the time it had: %j', async (write) => {
  let sent: RequestInit | undefined;
  vi.stubGlobal('fetch', async (_: string, init: RequestInit) => {
    sent = init;
    return Response.json({});
  });
  await sendWrite(write);
  expect(sent?.headers).toMatchObject({ 'lotward-person': 'mira' });
  expect(JSON.parse(String(sent?.body))).toMatchObject(event);
});

it.each(writes)('takes no answer for none after ten seconds, and lets go: %j', async (write) => {
  vi.useFakeTimers();
  vi.stubGlobal(
    'fetch',
    (_: string, { signal }: RequestInit) =>
      new Promise((_, refuse) => {
        signal?.addEventListener('abort', () => refuse(signal.reason));
      }),
  );
  const sending = sendWrite(write).catch((error: unknown) => error);
  await vi.advanceTimersByTimeAsync(10_000);
  expect(isProblem(await sending, 'unreachable')).toBe(true);
});
