import { Worker } from 'node:worker_threads';
import { Injectable, Logger, type OnApplicationBootstrap, type OnModuleDestroy } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import { StudioActors } from '../../identity/studio-actors.service.js';
import type { Actor } from '../../platform/actor.js';
import { Clock } from '../../platform/clock.js';
import { Config } from '../../platform/config.js';
import { Database } from '../../platform/database/database.js';
import { placeOf } from '../../platform/database/snapshot.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Transactions } from '../../platform/database/transactions.js';
import { ProcessRole } from '../../platform/process-role.js';
import { NoPlanConditions } from './no-plan-conditions.service.js';
import { OrderDueConditions } from './order-due-conditions.service.js';
import { Plan, PlanLine } from './plan.entity.js';
import { PlanLeases } from './plan-leases.service.js';
import { PlanProgress } from './plan-progress.service.js';
import { linesWritten, type PlanMessage, type PlanTask, type WrittenLine } from './plan-task.interface.js';

/** What others put in, such as a worker by night, is found after so long. */
const lookMilliseconds = 15_000;
/** Of the heap of the thread; what needs more fails instead of taking the service with it. */
const mostHeapMegabytes = 2_048;
/** Looked at at once, of all studios. */
const mostWaiting = 1_000;
const interrupted = 'The service ended while this plan was made, so it was interrupted. Have another made.';

const tooLarge = `It needs more than ${mostHeapMegabytes} MB of memory, which is the most that a plan may take.`;
// What it was is for the log, not for people.
const unknownFault = 'Something went wrong on our side; the log of the service says what. Have another made.';

const threadOf = {
  plan: './plan.worker.js',
  'what if': './plan.worker.js',
  replay: './replay.worker.js',
} satisfies Record<Plan['purpose'], string>;

/** Plans that are made one after the other, beside those of other lanes. */
interface Lane {
  takes: (plan: Plan) => boolean;
  working: Promise<void> | undefined;
  askedAgain: boolean;
}

interface Run {
  plan: Plan;
  actor: Actor;
  worker: Worker | null;
  /** From then on it is this process's to make it. */
  begun: boolean;
  stopped: boolean;
}

/**
 * Makes plans in threads of their own, so that scans do not wait for them: one at a time, and beside it one of a single item,
 * which is quick, so that nobody who asks about an item waits for a whole plan. Guarantees: every plan that was
 * asked for ends as done, cancelled or failed; one process makes it, and one that a kill cut off fails when a service that
 * goes on, or is back, sees that nobody is at it; lines are only seen of plans that are done. A plan that waits still
 * waits after a restart.
 */
@Injectable()
export class PlanRunner implements OnApplicationBootstrap, OnModuleDestroy {
  private readonly logger = new Logger('plans');
  /** By plan. */
  private readonly runs = new Map<string, Run>();
  private readonly lanes: readonly Lane[] = [isOfOneItem, (plan: Plan) => !isOfOneItem(plan)].map(
    (takes) => ({
      takes,
      working: undefined,
      askedAgain: false,
    }),
  );
  private watch: NodeJS.Timeout | undefined;
  private looking: Promise<void> | undefined;

  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly studioActors: StudioActors,
    private readonly clock: Clock,
    private readonly config: Config,
    private readonly role: ProcessRole,
    private readonly progress: PlanProgress,
    private readonly orderDue: OrderDueConditions,
    private readonly noPlan: NoPlanConditions,
    private readonly leases: PlanLeases,
  ) {}

  async onApplicationBootstrap(): Promise<void> {
    if (!this.role.serving) return;
    await this.failCutOff();
    this.transactions.follow('plan', () => this.wake());
    this.watch = setInterval(() => this.look(), lookMilliseconds);
    this.watch.unref();
    this.wake();
  }

  async onModuleDestroy(): Promise<void> {
    clearInterval(this.watch);
    await this.looking;
    await Promise.all([...this.runs.values()].map(({ worker }) => worker?.terminate()));
    await Promise.all(this.lanes.map(({ working }) => working));
  }

  /** Ends the plan if it runs here; that it ended is on record already. */
  async stop(planId: string): Promise<void> {
    const run = this.runs.get(planId);
    if (!run) return;
    run.stopped = true;
    await run.worker?.terminate();
  }

  private look(): void {
    this.looking ??= this.goOn()
      .catch((error: unknown) =>
        this.logger.error(`Plans could not be looked after, trying on: ${String(error)}`),
      )
      .finally(() => {
        this.looking = undefined;
      });
    this.wake();
  }

  /** Says of what runs here that it does, and ends what runs nowhere any more. */
  private async goOn(): Promise<void> {
    for (const { plan, begun } of this.runs.values()) {
      // Another process may have ended it.
      if (begun && !(await this.leases.renew(plan))) await this.stop(plan.id);
    }
    if (!this.role.ending) await this.failCutOff();
  }

  private wake(): void {
    for (const lane of this.lanes) this.wakeLane(lane);
  }

  /** Looks for what waits, unless it is at it. */
  private wakeLane(lane: Lane): void {
    if (this.role.ending) return;
    if (lane.working) {
      lane.askedAgain = true;
      return;
    }
    lane.working = this.work(lane).finally(() => {
      lane.working = undefined;
      if (!lane.askedAgain) return;
      lane.askedAgain = false;
      this.wakeLane(lane);
    });
  }

  private async work(lane: Lane): Promise<void> {
    /** One that could not even be ended is left to the next look: the others do not wait for it. */
    const passedOver = new Set<string>();
    const next = () => this.next(lane, passedOver);
    try {
      for (let plan = await next(); plan && !this.role.ending; plan = await next()) {
        const { id } = plan;
        await this.make(plan).catch((error: unknown) => {
          passedOver.add(id);
          this.logger.error(`The plan ${id} could be neither made nor ended, trying on: ${String(error)}`);
        });
      }
    } catch (error) {
      this.logger.error(`Plans could not be looked for, trying on: ${String(error)}`);
    }
  }

  /** Those asked for first come first, whole plans before what only looks back. */
  private async next({ takes }: Lane, passedOver: ReadonlySet<string>): Promise<Plan | null> {
    const waiting = await this.database.reader.manager.find(Plan, {
      where: { state: 'waiting' },
      order: { askedAt: 'ASC', id: 'ASC' },
      take: mostWaiting,
    });
    const own = waiting.filter((plan) => takes(plan) && !passedOver.has(plan.id));
    return own.find(({ purpose }) => purpose !== 'replay') ?? own[0] ?? null;
  }

  private async make(plan: Plan): Promise<void> {
    const actor = await this.studioActors.of(plan.studioId);
    if (!actor) throw new Error(`There is no studio ${plan.studioId}.`);
    const run: Run = { plan, actor, worker: null, begun: false, stopped: false };
    this.runs.set(plan.id, run);
    try {
      run.begun = await this.moveOn(run, 'reorder.begin-plan', ['waiting'], { state: 'running' });
      if (!run.begun) return;
      const startedAt = this.clock.now();
      this.progress.set(plan.id, { startedAt, done: 0, items: null });
      await this.inThread(run, startedAt);
    } catch (error) {
      if (!run.begun) throw error;
      // One that was stopped is on record as ended, one that the service's end cut off fails at the next look.
      if (run.stopped || this.role.ending) return;
      this.logger.error(`A plan failed: ${error instanceof Error ? error.stack : String(error)}`);
      await this.fail(run, isOutOfMemory(error) ? tooLarge : unknownFault);
    } finally {
      this.progress.forget(plan.id);
      this.runs.delete(plan.id);
      // It runs out by itself, too.
      if (run.begun) await this.leases.giveBack(plan).catch(() => undefined);
    }
  }

  private inThread(run: Run, now: string): Promise<void> {
    const { plan, actor } = run;
    const { studioId, chainId, timeZone } = actor;
    const task: PlanTask = {
      place: placeOf(this.config),
      studio: { studioId, chainId, timeZone },
      plan: { id: plan.id, plannedOn: plan.plannedOn, seed: plan.seed, whatIf: plan.whatIf },
      now,
      paths: this.config.PLAN_PATHS,
      threads: this.config.PLAN_THREADS,
    };
    const worker = new Worker(new URL(threadOf[plan.purpose], import.meta.url), {
      workerData: task,
      resourceLimits: { maxOldGenerationSizeMb: mostHeapMegabytes },
    });
    run.worker = worker;
    if (run.stopped) void worker.terminate();
    return new Promise<void>((resolve, reject) => {
      const watch = setInterval(() => this.role.ending && void worker.terminate(), 200);
      worker.on('message', (message: PlanMessage) => {
        this.take(run, worker, message, now).then((ended) => ended && resolve(), reject);
      });
      worker.once('error', reject);
      worker.once('exit', () => {
        clearInterval(watch);
        // Without effect when the end was told before.
        reject(new Error('The thread that made it ended early.'));
      });
    }).finally(() => worker.terminate());
  }

  /** @returns whether it was the last message */
  private async take(run: Run, worker: Worker, message: PlanMessage, startedAt: string): Promise<boolean> {
    switch (message.kind) {
      case 'progress':
        this.progress.set(run.plan.id, { startedAt, done: message.done, items: message.items });
        return false;
      case 'lines':
        await this.write(run, message.lines);
        worker.postMessage(linesWritten);
        return false;
      case 'fault':
        this.logger.error(message.words);
        return false;
      case 'failed':
        await this.fail(run, message.words);
        return true;
      case 'same': {
        const { factsDigest, planId } = message;
        await this.moveOn(run, 'reorder.end-plan', ['running'], {
          state: 'done',
          factsDigest,
          sameAsId: planId,
        });
        return true;
      }
      case 'done': {
        const { factsDigest, summary } = message;
        await this.moveOn(run, 'reorder.end-plan', ['running'], { state: 'done', factsDigest, summary });
        return true;
      }
    }
  }

  private write({ plan, actor }: Run, lines: readonly WrittenLine[]): Promise<void> {
    const { studioId, id: planId } = plan;
    return this.transactions.write(
      actor,
      { id: null, action: 'reorder.write-plan-lines', subject: { kind: 'plan', id: planId }, content: null },
      async (transaction) => {
        const [standing] = await transaction.query<{ state: string }>(
          'SELECT state FROM plan WHERE studio_id = $1 AND id = $2',
          [studioId, planId],
        );
        if (standing?.state !== 'running') throw new Error('The plan is not being made any more.');
        await transaction.insert(
          PlanLine,
          lines.map((line) => ({ ...line, studioId, planId, id: uuidv7() })),
        );
      },
    );
  }

  private async fail(run: Run, failure: string): Promise<void> {
    await this.moveOn(run, 'reorder.fail-plan', ['running'], { state: 'failed', failure });
  }

  /** @returns false when it stands in another state by now, such as cancelled */
  private moveOn(
    { plan, actor }: Pick<Run, 'plan' | 'actor'>,
    action: string,
    from: readonly Plan['state'][],
    changes: Partial<Plan>,
  ): Promise<boolean> {
    const subject = { kind: 'plan', id: plan.id };
    return this.transactions.write(actor, { id: null, action, subject, content: null }, async (transaction) =>
      this.moved(transaction, plan, from, changes),
    );
  }

  private async moved(
    transaction: Transaction,
    { studioId, id }: Plan,
    from: readonly Plan['state'][],
    changes: Partial<Plan>,
  ): Promise<boolean> {
    // Two processes may want the same.
    await transaction.lockStudio();
    const standing = await transaction.manager.findOneBy(Plan, { studioId, id });
    if (!standing || !from.includes(standing.state)) return false;
    const endedAt = changes.state === 'running' ? null : transaction.recordedAt;
    if (changes.state === 'running') await this.leases.take(transaction, id);
    await transaction.change(Plan, 'plan', { studioId, id }, standing.version, { ...changes, endedAt });
    if (endedAt === null || standing.purpose !== 'plan') return true;
    if (changes.state === 'done') await this.orderDue.reevaluate(transaction);
    await this.noPlan.reevaluate(transaction);
    return true;
  }

  private async failCutOff(): Promise<void> {
    for (const plan of await this.leases.cutOff((id) => this.runs.has(id))) {
      const actor = await this.studioActors.of(plan.studioId);
      if (!actor) continue;
      const changes: Partial<Plan> = { state: 'failed', failure: interrupted };
      await this.moveOn({ plan, actor }, 'reorder.fail-plan', ['running'], changes);
      await this.leases.giveBack(plan);
    }
  }
}

function isOfOneItem({ whatIf }: Plan): boolean {
  return whatIf !== null && 'itemKey' in whatIf && whatIf.itemKey !== null;
}

function isOutOfMemory(error: unknown): boolean {
  return (error as { code?: unknown } | null)?.code === 'ERR_WORKER_OUT_OF_MEMORY';
}
