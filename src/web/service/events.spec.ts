import { expect, it, vi } from 'vitest';
import { Events } from './events.js';

it('gives what is sent again the same id and instant, and the next one others', () => {
  vi.useFakeTimers({ now: new Date('2026-11-25T09:00:00Z') });
  const events = new Events();
  const first = events.of({ symbol: 'HU-118' });
  vi.advanceTimersByTime(5_000);
  expect(events.of({ symbol: 'HU-118' })).toEqual(first);
  expect(events.of({ symbol: 'HU-119' })).toEqual({
    id: expect.not.stringMatching(first.id),
    occurredAt: '2026-11-25T09:00:05.000Z',
  });
  events.renew();
  expect(events.of({ symbol: 'HU-119' }).id).not.toBe(first.id);
  vi.useRealTimers();
});
