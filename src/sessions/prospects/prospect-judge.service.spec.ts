import { describe, expect, it, vi } from 'vitest';
import type { OpenCondition } from '../../alerts/open-condition.js';
import type { Read } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { ProspectJudge } from './prospect-judge.service.js';

const lacking: OpenCondition = {
  kind: 'kit cannot be filled',
  subjectKind: 'session',
  subjectId: 'one',
  severity: 'warning',
  facts: { lacking: ['1 × Fine liner'] },
};

describe('sessions to come that were marked', () => {
  it('are judged once, without the lock, and written as they were found', async () => {
    const judged = await judge({ standing: [lacking] });
    expect(judged.standing).toHaveBeenCalledTimes(1);
    expect(judged.reconcile.mock.calls.map(([, standing]) => standing)).toEqual([[lacking]]);
  });

  it('are judged anew under the lock when something was written meanwhile', async () => {
    const judged = await judge({ standing: [lacking], writtenMeanwhile: true });
    expect(judged.reconcile.mock.calls.map(([, standing]) => standing)).toEqual([undefined]);
  });

  it('write nothing when nothing is new', async () => {
    const judged = await judge({ standing: [] });
    expect(judged.standing).toHaveBeenCalledTimes(1);
    expect(judged.reconcile).not.toHaveBeenCalled();
  });
});

/** Lets the judge look once at a studio with these conditions, none of which was told yet. */
async function judge(given: { standing: OpenCondition[]; writtenMeanwhile?: boolean }) {
  vi.useFakeTimers();
  let sequence = 7;
  const read = (async (sql: string) => (sql.includes('audit_head') ? [{ sequence }] : [])) as Read;
  const transaction = { studioId: 'studio', read, lockStudio: async () => {} } as unknown as Transaction;
  const standing = vi.fn(async () => given.standing);
  const reconcile = vi.fn(async (_: Transaction, __?: readonly OpenCondition[]) => {});
  const service = new ProspectJudge(
    { read } as never,
    {
      quietly: (_: unknown, work: (inside: Transaction) => unknown) => work(transaction),
      write: (_: unknown, __: unknown, work: (inside: Transaction) => unknown) => {
        if (given.writtenMeanwhile) sequence += 1;
        return work(transaction);
      },
    } as never,
    { now: () => '2026-06-16T09:00:00.000Z' } as never,
    { serving: true } as never,
    { of: async () => ({ studioId: 'studio' }) } as never,
    { register: () => {} } as never,
    { standing, reconcile } as never,
  );
  try {
    service.onApplicationBootstrap();
    await service.mark(transaction);
    await vi.advanceTimersByTimeAsync(1_000);
    await service.onModuleDestroy();
  } finally {
    vi.useRealTimers();
  }
  return { standing, reconcile };
}
