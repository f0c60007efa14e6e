import { AsyncLocalStorage } from 'node:async_hooks';
import { Injectable } from '@nestjs/common';
import { type EntityManager, QueryFailedError } from 'typeorm';
import type { Actor } from '../actor.js';
import { appendAuditEntry } from '../audit/audit-log.js';
import { keyedDigestOf } from '../canonical-json.js';
import { Clock } from '../clock.js';
import { StudioKeys } from '../encryption/studio-keys.service.js';
import { reusedId } from '../problem.js';
import { Database, query, type Read } from './database.js';
import { Transaction } from './transaction.js';

export interface WriteRequest {
  /** Made by the client, so that it can repeat the request; null for what the service does by itself. */
  id: string | null;
  /** Room and verb: `stock.open`. */
  action: string;
  subject: { kind: string; id: string };
  /** What the client sent; a repeated id with other content is refused. */
  content: unknown;
}

const postgresAttempts = 4;
const deadlockOrSerialization = new Set(['40P01', '40001']);

/**
 * The only opener of transactions. Guarantees:
 * - on SQLite, where TypeORM has one connection, transactions run one after the other and never inside each other, and
 *   wait for those of other processes;
 * - a request id is carried out once: repeated with equal content it gets the first answer, with other content an error;
 * - every committed write ends with its audit entry, whose head is locked last (but see `quietly`);
 * - what throws leaves nothing behind, the request id included.
 */
@Injectable()
export class Transactions {
  private queue: Promise<unknown> = Promise.resolve();
  private readonly followers: { table: string; told: () => void }[] = [];
  private readonly inside = new AsyncLocalStorage<true>();

  constructor(
    readonly database: Database,
    private readonly clock: Clock,
    private readonly studioKeys: StudioKeys,
  ) {}

  async write<Answer>(
    actor: Actor,
    request: WriteRequest,
    work: (transaction: Transaction) => Promise<Answer>,
  ): Promise<Answer> {
    if (this.inside.getStore()) throw new Error('A transaction was opened inside a transaction.');
    const digest =
      request.id === null
        ? null
        : keyedDigestOf(await this.studioKeys.searchKey(actor.studioId), {
            action: request.action,
            content: request.content ?? null,
          });
    let committing = undefined as Transaction | undefined;
    const answer = await this.inTurn(() =>
      this.inside.run(true, () =>
        this.database.writer.transaction(async (manager) => {
          const transaction = await this.begin(actor, manager);
          committing = transaction;
          if (request.id !== null && digest !== null) {
            const earlier = await this.accept(transaction, request.id, request.action, digest);
            if (earlier) return earlier.answer as Answer;
          }
          const answer = await work(transaction);
          if (request.id !== null) {
            await transaction.query(
              'UPDATE accepted_request SET answer = $1 WHERE studio_id = $2 AND id = $3',
              [JSON.stringify(answer ?? null), actor.studioId, request.id],
            );
          }
          await appendAuditEntry(transaction, request);
          return answer;
        }),
      ),
    );
    if (committing !== undefined) this.tell(committing);
    return answer;
  }

  /**
   * Calls `told` after each write of this process that was committed and wrote rows of the table. Only a hint that comes
   * early: other processes write too, and what was committed right before a kill is told to nobody.
   */
  follow(table: string, told: () => void): void {
    this.followers.push({ table, told });
  }

  private tell({ writtenRows }: Transaction): void {
    for (const { table, told } of this.followers) {
      if (writtenRows.some((row) => row.table === table)) told();
    }
  }

  /**
   * Runs in turn like a write, but ends without an audit entry and may run again without harm: only for what changes no
   * record, such as waiting, with the lock of the studio, until what others write there is committed.
   */
  async quietly<Answer>(actor: Actor, work: (transaction: Transaction) => Promise<Answer>): Promise<Answer> {
    if (this.inside.getStore()) throw new Error('A transaction was opened inside a transaction.');
    return this.inTurn(() =>
      this.inside.run(true, () =>
        this.database.writer.transaction(async (manager) => work(await this.begin(actor, manager))),
      ),
    );
  }

  private async begin(actor: Actor, manager: EntityManager): Promise<Transaction> {
    await this.takeWriteLock(manager);
    return new Transaction(actor, this.database.engine, manager, this.clock.now());
  }

  /**
   * TypeORM begins a transaction without a lock. On SQLite one that reads first and writes then would fail at once when
   * another process, such as a command from the shell, wrote in between; so each begins with a write of nothing and
   * waits for its turn.
   */
  private async takeWriteLock(manager: EntityManager): Promise<void> {
    if (this.database.engine === 'postgres') return;
    await query(manager, 'sqlite', 'UPDATE audit_head SET sequence = sequence WHERE false', []);
  }

  /**
   * As `quietly`, for what is no record of a studio at all: who is signed in, when a credential was last used, failed
   * attempts to sign in; and for outbox rows of several studios at once. That somebody signed in or out is in the audit
   * log.
   */
  async aside<Answer>(work: (query: Read, now: string) => Promise<Answer>): Promise<Answer> {
    if (this.inside.getStore()) throw new Error('A transaction was opened inside a transaction.');
    const { engine, writer } = this.database;
    return this.inTurn(() =>
      this.inside.run(true, () =>
        writer.transaction(async (manager) => {
          await this.takeWriteLock(manager);
          return work((sql, parameters = []) => query(manager, engine, sql, parameters), this.clock.now());
        }),
      ),
    );
  }

  /** Between two writes: see `Database.cutLog`. */
  async cutLog(): Promise<boolean> {
    if (this.inside.getStore()) throw new Error('The log cannot be cut inside a transaction.');
    return this.inTurn(() => this.database.cutLog());
  }

  /** Undefined when the request is new; else the answer it got. */
  private async accept(
    transaction: Transaction,
    id: string,
    action: string,
    digest: string,
  ): Promise<{ answer: unknown } | undefined> {
    const { studioId, personId } = transaction.actor;
    const fresh = await transaction.query(
      `INSERT INTO accepted_request (studio_id, id, action, digest, person_id, accepted_at) VALUES ($1, $2, $3, $4, $5, $6)
       ON CONFLICT (studio_id, id) DO NOTHING RETURNING id`,
      [studioId, id, action, digest, personId, transaction.recordedAt],
    );
    if (fresh.length > 0) return undefined;
    const [earlier] = await transaction.query<{ digest: string; answer: string }>(
      'SELECT digest, answer FROM accepted_request WHERE studio_id = $1 AND id = $2',
      [studioId, id],
    );
    if (earlier?.digest !== digest) {
      throw reusedId(id);
    }
    return { answer: JSON.parse(earlier.answer) };
  }

  private inTurn<Result>(task: () => Promise<Result>): Promise<Result> {
    if (this.database.engine === 'postgres') return withRetries(task);
    const result = this.queue.then(task);
    this.queue = result.catch(() => undefined);
    return result;
  }
}

/** PostgreSQL may end one of two transactions that wait for each other: it is simply run again. */
async function withRetries<Result>(task: () => Promise<Result>): Promise<Result> {
  for (let attempt = 1; ; attempt += 1) {
    try {
      return await task();
    } catch (error) {
      const code =
        error instanceof QueryFailedError ? (error.driverError as { code?: string }).code : undefined;
      if (attempt >= postgresAttempts || code === undefined || !deadlockOrSerialization.has(code))
        throw error;
    }
  }
}
