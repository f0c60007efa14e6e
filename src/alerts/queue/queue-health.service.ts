import {
  Injectable,
  Logger,
  type OnApplicationBootstrap,
  type OnModuleDestroy,
  type OnModuleInit,
} from '@nestjs/common';
import { StudioActors } from '../../identity/studio-actors.service.js';
import type { Actor } from '../../platform/actor.js';
import { Clock } from '../../platform/clock.js';
import { Config } from '../../platform/config.js';
import { Database } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Transactions } from '../../platform/database/transactions.js';
import { ProcessRole } from '../../platform/process-role.js';
import { inTime } from '../../platform/time-limit.js';
import { Alerts } from '../alerts.service.js';
import { ConditionEvaluators } from '../condition-evaluators.service.js';
import type { OpenCondition } from '../open-condition.js';
import { isReleased } from '../outbox/released.sql.js';
import { AlertQueue } from './alert-queue.interface.js';
import {
  isNews,
  overdueMilliseconds,
  type QueueCondition,
  queueCondition,
  type ToldCondition,
} from './queue-condition.js';

const kind = 'queue unhealthy';
const watchMilliseconds = 30_000;
/** Whoever asks how it is does not wait longer. */
const promptMilliseconds = 1_000;

interface StandingAlert {
  studioId: string;
  closedAt: string | null;
  facts: string;
}

/**
 * Tells every studio when its alerts do not go out: judged by the service itself, by a timer that needs no queue. It
 * writes only when something begins or ends, not each time it looks.
 */
@Injectable()
export class QueueHealth implements OnModuleInit, OnApplicationBootstrap, OnModuleDestroy {
  private readonly logger = new Logger('alert queue');
  private timer: NodeJS.Timeout | undefined;
  private judging: Promise<void> | undefined;
  private withoutWorkersSince: string | null = null;

  constructor(
    private readonly queue: AlertQueue,
    private readonly config: Config,
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly clock: Clock,
    private readonly alerts: Alerts,
    private readonly evaluators: ConditionEvaluators,
    private readonly studioActors: StudioActors,
    private readonly role: ProcessRole,
  ) {}

  onModuleInit(): void {
    this.evaluators.register({
      name: 'alerts',
      kinds: [kind],
      // Whoever sweeps, perhaps a worker, sees the queue from elsewhere: what stands is left to the service.
      evaluate: (transaction) => this.asItStands(transaction),
    });
  }

  onApplicationBootstrap(): void {
    if (!this.role.serving) return;
    this.timer = setInterval(() => this.look(), watchMilliseconds);
    this.timer.unref();
  }

  async onModuleDestroy(): Promise<void> {
    clearInterval(this.timer);
    await this.judging;
  }

  /** Whether the queue is as it has to be, by what this process sees now. */
  async isWell(): Promise<boolean> {
    try {
      const { awaySince, workers } = await inTime(this.queue.state(), promptMilliseconds);
      return awaySince === null && workers !== 0;
    } catch {
      return false;
    }
  }

  /** Opens and closes the alerts of all studios by how the queue is now. */
  async judge(): Promise<void> {
    const now = this.clock.now();
    const { awaySince, workers } = await this.queue.state();
    const hasNone = this.config.hasWorkers && awaySince === null && workers === 0;
    this.withoutWorkersSince = hasNone ? (this.withoutWorkersSince ?? now) : null;
    const overdue = await this.overdue(now);
    const standing = new Map((await this.standing()).map((alert) => [alert.studioId, alert]));
    for (const actor of await this.studioActors.all()) {
      const { studioId } = actor;
      const facts = {
        awaySince,
        withoutWorkersSince: this.withoutWorkersSince,
        overdue: overdue.get(studioId) ?? null,
      };
      const condition = queueCondition(facts, now);
      if (isNews(condition, toldBy(standing.get(studioId)))) await this.write(actor, condition);
    }
  }

  private look(): void {
    this.judging ??= this.judge()
      .catch((error: unknown) => this.logger.error(`How the queue is cannot be noted: ${String(error)}`))
      .finally(() => {
        this.judging = undefined;
      });
  }

  private async write(actor: Actor, condition: QueueCondition | null): Promise<void> {
    const { studioId } = actor;
    await this.transactions.write(
      actor,
      { id: null, action: 'alerts.judge-queue', subject: { kind: 'studio', id: studioId }, content: null },
      async (transaction) => {
        const scope = { kinds: [kind], subjects: [{ kind: 'studio', id: studioId }] };
        const standing = condition === null ? [] : [openCondition(studioId, { ...condition })];
        transaction.note({ ...(await this.alerts.reconcile(transaction, scope, standing)) });
      },
    );
  }

  /** By studio, what was to be tried long ago and could be, but was not. */
  private async overdue(now: string): Promise<Map<string, { count: number; since: string }>> {
    const latest = new Date(Date.parse(now) - overdueMilliseconds).toISOString();
    const rows = await this.database.read<{ studioId: string; count: number; since: string }>(
      `SELECT studio_id AS "studioId", count(*) AS count, min(next_attempt_at) AS since FROM outbox
       WHERE state = 'pending' AND next_attempt_at < $1 AND ${isReleased} GROUP BY studio_id`,
      [latest],
    );
    return new Map(rows.map(({ studioId, count, since }) => [studioId, { count, since }]));
  }

  /** Alerts of this kind that stand, those that somebody closed while it stood included. */
  private standing(): Promise<StandingAlert[]> {
    return this.database.read<StandingAlert>(
      `SELECT studio_id AS "studioId", closed_at AS "closedAt", facts FROM alert WHERE kind = '${kind}'
         AND (closed_at IS NULL OR (closed_by IS NOT NULL AND ended_at IS NULL))`,
    );
  }

  private async asItStands(transaction: Transaction): Promise<OpenCondition[]> {
    const alerts = await transaction.query<{ facts: string }>(
      `SELECT facts FROM alert WHERE studio_id = $1 AND kind = '${kind}'
         AND (closed_at IS NULL OR (closed_by IS NOT NULL AND ended_at IS NULL))
       ORDER BY opened_at DESC LIMIT 1`,
      [transaction.studioId],
    );
    return alerts.map(({ facts }) =>
      openCondition(transaction.studioId, JSON.parse(facts) as Record<string, unknown>),
    );
  }
}

function openCondition(studioId: string, facts: Record<string, unknown>): OpenCondition {
  return { kind, subjectKind: 'studio', subjectId: studioId, severity: 'warning', facts };
}

function toldBy(alert: StandingAlert | undefined): ToldCondition | undefined {
  if (!alert) return undefined;
  return { cause: (JSON.parse(alert.facts) as { cause?: unknown }).cause, isClosed: alert.closedAt !== null };
}
