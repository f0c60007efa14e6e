import {
  Injectable,
  Logger,
  type OnApplicationBootstrap,
  type OnModuleDestroy,
  type OnModuleInit,
} from '@nestjs/common';
import { alertChanges, type OpenCondition, type StandingAlert } from '../../alerts/open-condition.js';
import { StudioActors } from '../../identity/studio-actors.service.js';
import type { Actor } from '../../platform/actor.js';
import { Clock } from '../../platform/clock.js';
import { Database, type Read } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Transactions } from '../../platform/database/transactions.js';
import { ProcessRole } from '../../platform/process-role.js';
import { StockFollowers } from '../../stock/stock-followers.service.js';
import { SessionConditions, sessionConditionKinds } from './session-conditions.service.js';

type StandingRow = Omit<StandingAlert, 'facts' | 'closedByHand'> & { facts: string; closedAt: string | null };

/** What changes within so short a time, such as a tray that is settled, is judged once. */
const lookMilliseconds = 500;

/**
 * Judges the sessions to come anew after one of them or stock has changed: shortly after, in a write of its own and only
 * when something is new, so that no booking, scan, receipt or completion waits for it. What is missed, by a fault or the
 * end of the process, the next sweep finds, at the latest at the next start.
 */
@Injectable()
export class ProspectJudge implements OnModuleInit, OnApplicationBootstrap, OnModuleDestroy {
  private readonly logger = new Logger('sessions to come');
  private readonly marked = new Set<string>();
  private timer: NodeJS.Timeout | undefined;
  private judging: Promise<void> | undefined;

  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly clock: Clock,
    private readonly role: ProcessRole,
    private readonly studioActors: StudioActors,
    private readonly followers: StockFollowers,
    private readonly conditions: SessionConditions,
  ) {}

  onModuleInit(): void {
    this.followers.register((studioId) => this.marked.add(studioId));
  }

  /** One timer for all, which belongs to no transaction. */
  onApplicationBootstrap(): void {
    if (!this.role.serving) return;
    this.timer = setInterval(() => this.look(), lookMilliseconds);
    this.timer.unref();
  }

  async onModuleDestroy(): Promise<void> {
    clearInterval(this.timer);
    this.marked.clear();
    await this.judging;
  }

  /** Call it at the end of the transaction of the change: it takes no time. */
  async mark(transaction: Transaction): Promise<void> {
    // Held until it is committed: see `judge`.
    await transaction.lockStudio();
    this.marked.add(transaction.studioId);
  }

  private look(): void {
    if (this.marked.size === 0) return;
    this.judging ??= this.judgeMarked().finally(() => {
      this.judging = undefined;
    });
  }

  private async judgeMarked(): Promise<void> {
    const studioIds = [...this.marked];
    this.marked.clear();
    for (const studioId of studioIds) {
      try {
        await this.judge(studioId);
      } catch (error) {
        this.logger.error(`The sessions to come of studio ${studioId} were not judged: ${String(error)}`);
      }
    }
  }

  private async judge(studioId: string): Promise<void> {
    const actor = await this.studioActors.of(studioId);
    if (!actor) return;
    // Whoever changes a session or stock holds this lock until it is committed, so that it is seen now.
    await this.transactions.quietly(actor, (transaction) => transaction.lockStudio());
    const { read } = this.database;
    const latest = await latestEntry(read, studioId);
    const standing = await this.conditions.standing(read, actor, this.clock.now());
    if (!(await this.hasNews(actor, standing))) return;
    await this.transactions.write(
      actor,
      {
        id: null,
        action: 'sessions.judge-prospects',
        subject: { kind: 'studio', id: studioId },
        content: null,
      },
      async (transaction) => {
        await transaction.lockStudio();
        // What was found without the lock holds while nothing was written since.
        const holds = (await latestEntry(transaction.read, studioId)) === latest;
        await this.conditions.reconcile(transaction, holds ? standing : undefined);
      },
    );
  }

  /** Whether what stands differs from what was told, so that nothing is written when nothing is new. */
  private async hasNews(actor: Actor, standing: readonly OpenCondition[]): Promise<boolean> {
    const known = await this.database.read<StandingRow>(
      `SELECT id, kind, subject_kind AS "subjectKind", subject_id AS "subjectId", severity, facts,
         closed_at AS "closedAt" FROM alert
       WHERE studio_id = $1 AND kind IN ($2, $3)
         AND (closed_at IS NULL OR (closed_by IS NOT NULL AND ended_at IS NULL))`,
      [actor.studioId, ...sessionConditionKinds],
    );
    const { open, refresh, close, end } = alertChanges(
      known.map(({ closedAt, facts, ...alert }) => ({
        ...alert,
        facts: JSON.parse(facts),
        closedByHand: closedAt !== null,
      })),
      standing,
      { kinds: sessionConditionKinds, subjects: 'all' },
    );
    return open.length + refresh.length + close.length + end.length > 0;
  }
}

/** The number of the latest entry in the audit log of a studio. */
async function latestEntry(read: Read, studioId: string): Promise<number | undefined> {
  const [head] = await read<{ sequence: number }>('SELECT sequence FROM audit_head WHERE studio_id = $1', [
    studioId,
  ]);
  return head?.sequence;
}
