import { describe, expect, it } from 'vitest';
import type { Actor } from '../../platform/actor.js';
import { Clock } from '../../platform/clock.js';
import type { Database } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import type { Transactions } from '../../platform/database/transactions.js';
import { DeliveryList } from './delivery-list.service.js';
import type { Relay } from './relay.service.js';

const actor = { studioId: 's1' } as Actor;
const row = {
  studioId: 's1',
  id: 'd1',
  state: 'undeliverable',
  destinationId: null,
  attempts: 30,
  begun: 30,
};

/** A transaction that read the row as it was, and finds this many of it when it writes. */
function listThatMeets(changed: number): DeliveryList {
  const transaction = {
    recordedAt: '2026-11-26T08:00:00.000Z',
    manager: { findOneBy: async () => row },
    query: async () => Array.from({ length: changed }, () => ({ id: 'd1' })),
    note: () => undefined,
  } as unknown as Transaction;
  const transactions = {
    write: (_: Actor, __: unknown, work: (transaction: Transaction) => Promise<unknown>) => work(transaction),
  } as unknown as Transactions;
  return new DeliveryList({} as Database, transactions, { wake: () => undefined } as Relay, new Clock());
}

describe('what could not be sent', () => {
  it('is sent again', async () => {
    await expect(listThatMeets(1).sendAgain(actor, 'd1', { id: 'r1' })).resolves.toMatchObject({
      state: 'pending',
      attempts: 0,
    });
  });

  it('is not sent again by two at the same moment', async () => {
    await expect(listThatMeets(0).sendAgain(actor, 'd1', { id: 'r1' })).rejects.toMatchObject({
      code: 'wrong-state',
    });
  });
});
