import { describe, expect, it } from 'vitest';
import { isNews, type QueueCondition, type QueueFacts, queueCondition } from './queue-condition.js';

const now = '2026-11-26T12:00:00.000Z';
const well: QueueFacts = { awaySince: null, withoutWorkersSince: null, overdue: null };

function causeOf(facts: Partial<QueueFacts>): string | undefined {
  return queueCondition({ ...well, ...facts }, now)?.cause;
}

describe('what is wrong with the queue', () => {
  it('is nothing when all is well, or not for long', () => {
    expect(causeOf({})).toBeUndefined();
    expect(causeOf({ awaySince: '2026-11-26T11:58:01.000Z' })).toBeUndefined();
    expect(causeOf({ withoutWorkersSince: '2026-11-26T11:59:00.000Z' })).toBeUndefined();
  });

  it.each([
    ['Redis is not reached', { awaySince: '2026-11-26T11:58:00.000Z' }],
    ['no worker is seen', { withoutWorkersSince: '2026-11-26T11:57:00.000Z' }],
    ['deliveries are late', { overdue: { count: 3, since: '2026-11-26T11:40:00.000Z' } }],
  ])('is that %s, with since when and what to do', (cause, facts) => {
    const found = queueCondition({ ...well, ...facts }, now);
    expect(found?.cause).toBe(cause);
    expect(found?.since).toMatch(/^2026-11-26T11:/);
    expect(found?.whatToDo).not.toBe('');
  });

  it('is said to be the cause, and not what comes of it', () => {
    const overdue = { count: 9, since: '2026-11-26T11:00:00.000Z' };
    expect(causeOf({ awaySince: '2026-11-26T11:00:00.000Z', overdue })).toBe('Redis is not reached');
    expect(causeOf({ withoutWorkersSince: '2026-11-26T11:00:00.000Z', overdue })).toBe('no worker is seen');
  });
});

describe('what is written of the queue', () => {
  const away: QueueCondition = { cause: 'Redis is not reached', since: now, whatToDo: 'Start it.' };
  const told = (cause: string, isClosed = false) => ({ cause, isClosed });

  it('is that it begins, has another cause, or ends', () => {
    expect(isNews(away, undefined)).toBe(true);
    expect(isNews(away, told('no worker is seen'))).toBe(true);
    expect(isNews(null, told(away.cause))).toBe(true);
    expect(isNews(away, told(away.cause))).toBe(false);
    expect(isNews(null, undefined)).toBe(false);
  });

  it('is nothing more of what somebody closed, until it has ended', () => {
    expect(isNews(away, told('no worker is seen', true))).toBe(false);
    expect(isNews(null, told('no worker is seen', true))).toBe(true);
  });
});
