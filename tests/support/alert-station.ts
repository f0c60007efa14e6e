import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { v7 as uuidv7 } from 'uuid';
import type {
  AlertDestinationView,
  MadeWebhookView,
} from '../../src/alerts/destinations/alert-destinations.views.js';
import { MailReceiver } from './mail-receiver.js';
import { PlainSql } from './plain-sql.js';
import type { RedisServer } from './redis.js';
import { type RunningService, startService, type TestedEngine } from './service.js';
import { ServiceClock } from './service-clock.js';
import { StockedStudio } from './stocked-studio.js';
import { until } from './waiting.js';
import { WebhookReceiver } from './webhook-receiver.js';

/** A row of the outbox as it stands in the database. */
export interface OutboxState {
  id: string;
  alertId: string | null;
  event: string;
  channel: string;
  destinationId: string | null;
  state: 'pending' | 'sent' | 'undeliverable';
  attempts: number;
  begun: number;
  nextAttemptAt: string;
  lastError: string | null;
}

interface Settling {
  /** Only these. */
  of?: (row: OutboxState) => boolean;
  /** Milliseconds after which it is given up. */
  within?: number;
  /** Lets the time of attempts pass whose process was killed, so that they are taken up again. */
  overCutOff?: boolean;
}

/**
 * A studio whose alerts go to a webhook and to mailboxes that can be made to fail, on the built service, with workers and
 * a Redis server if wanted. All its processes have one clock, which is put forward instead of waiting.
 */
export class AlertStation {
  readonly workers: WorkerProcess[] = [];
  /** For what its workers write for a while. */
  readonly folder = mkdtempSync(join(tmpdir(), 'lotward-station-'));
  private studio: StockedStudio;

  private constructor(
    readonly hook: WebhookReceiver,
    readonly mail: MailReceiver,
    readonly clock: ServiceClock,
    readonly environment: Readonly<Record<string, string>>,
    public service: RunningService,
    private readonly sql: PlainSql,
  ) {
    this.studio = new StockedStudio(service);
  }

  /** @param settings of the service and its workers, beside those that lead to the receivers */
  static async start(
    engine: TestedEngine,
    redis?: RedisServer,
    settings: Record<string, string> = {},
  ): Promise<AlertStation> {
    const hook = await WebhookReceiver.start();
    const mail = await MailReceiver.start();
    const clock = new ServiceClock();
    const environment = {
      ...clock.environment,
      OUTGOING_PRIVATE_ADDRESSES: '127.0.0.0/8',
      SMTP_URL: mail.url,
      MAIL_FROM: 'lotward@studio.example',
      ...(redis === undefined ? {} : { REDIS_URL: redis.url }),
      ...settings,
    };
    let service: RunningService | undefined;
    try {
      service = await startService(engine, { environment });
      const sql = await PlainSql.connect(service, 'read');
      return new AlertStation(hook, mail, clock, environment, service, sql);
    } catch (error) {
      await service?.dispose();
      await hook.stop();
      await mail.stop();
      clock.dispose();
      throw error;
    }
  }

  /** Starts the service again on the same data, after it was stopped or killed. */
  async startAgain(): Promise<void> {
    const { dataFolder, databaseUrl } = this.service;
    this.service = await startService(databaseUrl === undefined ? 'sqlite' : 'postgres', {
      dataFolder,
      ...(databaseUrl === undefined ? {} : { databaseUrl }),
      environment: this.environment,
    });
    this.studio = new StockedStudio(this.service);
  }

  async startWorker(): Promise<WorkerProcess> {
    const { dataFolder, databaseUrl = '' } = this.service;
    const worker = await WorkerProcess.start({
      DATA_DIR: dataFolder,
      DATABASE_URL: databaseUrl,
      TMPDIR: this.folder,
      ...this.environment,
    });
    this.workers.push(worker);
    return worker;
  }

  /** A webhook of the studio that is told of everything. */
  async makeWebhook(path: string): Promise<{ id: string; secret: string }> {
    const { destination, secret } = await this.service.made<MadeWebhookView>('/alert-destinations/webhooks', {
      name: path,
      url: this.hook.url(path),
      minimumSeverity: 'notice',
    });
    return { id: destination.id, secret };
  }

  /** A mail address of the owner; answers with its id. */
  async makeMailbox(address: string): Promise<string> {
    const people = await this.service.seen<{ id: string; role: string }[]>('/people');
    const personId = people.find(({ role }) => role === 'owner')?.id;
    const { id } = await this.service.made<AlertDestinationView>('/alert-destinations/mail', {
      personId,
      address,
    });
    return id;
  }

  /** Opens as many urgent alerts, each of a product of which there is none; answers with their ids. */
  async open(count = 1): Promise<string[]> {
    const ids: string[] = [];
    for (let number = 0; number < count; number += 1) {
      const productId = await this.studio.product({ name: `Liner ${uuidv7()}`, kind: 'cartridge' });
      const set = await this.service.put('/stock/levels', {
        subjectKind: 'product',
        subjectId: productId,
        minimumPieces: 1,
      });
      if (set.status >= 300) throw new Error(`The level was answered ${set.status}.`);
      const [alert] = await this.sql.rows<{ id: string }>('SELECT id FROM alert WHERE subject_id = $1', [
        productId,
      ]);
      if (!alert) throw new Error('No alert was opened.');
      ids.push(alert.id);
    }
    return ids;
  }

  /** What was promised, in the order it was. */
  rows(of: (row: OutboxState) => boolean = () => true): Promise<OutboxState[]> {
    return this.sql
      .rows<OutboxState>(
        `SELECT id, alert_id AS "alertId", event, channel, destination_id AS "destinationId", state, attempts,
           coalesce(begun, 0) AS begun, next_attempt_at AS "nextAttemptAt", last_error AS "lastError"
         FROM outbox ORDER BY created_at, id`,
      )
      .then((rows) => rows.filter(of));
  }

  /** The rows of these alerts that go to one destination. */
  rowsTo(destinationId: string, alertIds?: readonly string[]): Promise<OutboxState[]> {
    return this.rows(
      (row) =>
        row.destinationId === destinationId &&
        (alertIds === undefined || alertIds.includes(row.alertId ?? '')),
    );
  }

  /** Waits until everything is sent or undeliverable; while all waits for a time, that time is let pass. */
  async settled({ of = () => true, within, overCutOff = false }: Settling = {}): Promise<void> {
    const settled = async () => {
      const pending = (await this.rows(of)).filter(({ state }) => state === 'pending');
      if (pending.length === 0) return true;
      const ready = overCutOff ? pending : pending.filter(({ begun, attempts }) => begun === attempts);
      const next = ready.map(({ nextAttemptAt }) => nextAttemptAt).sort()[0];
      const ahead = next === undefined ? 0 : Date.parse(next) - Date.parse(this.clock.now());
      if (ahead > 0) this.clock.forward({ seconds: Math.ceil(ahead / 1_000) });
      return undefined;
    };
    await until('all deliveries settled', settled, within);
  }

  /**
   * What is wrong with how deliveries to the webhook ended: sent but never received, received oftener than attempts were
   * begun, received but not promised. Nothing: an empty list.
   */
  async contradictions(): Promise<string[]> {
    const times = this.hook.timesById();
    const found: string[] = [];
    const rows = await this.rows(({ channel }) => channel === 'webhook');
    for (const { id, state, begun, attempts } of rows) {
      const came = times.get(id) ?? 0;
      times.delete(id);
      if (state === 'pending') found.push(`${id} is not settled`);
      if (state === 'sent' && came === 0) found.push(`${id} is said to be sent and never came`);
      if (came > begun) found.push(`${id} came ${came} times of ${begun} attempts`);
      if (begun < attempts) found.push(`${id} has ${attempts} ended attempts of ${begun}`);
    }
    for (const id of times.keys()) found.push(`${id} came and was not promised`);
    return found;
  }

  /** Ends all of it, also where a part of it cannot be ended in order. */
  async dispose(): Promise<void> {
    const ends = await Promise.allSettled([
      ...this.workers.map((worker) => worker.end('SIGKILL')),
      this.sql.close(),
      this.service.dispose(),
      this.hook.stop(),
      this.mail.stop(),
    ]);
    this.clock.dispose();
    rmSync(this.folder, { recursive: true, force: true });
    const failed = ends.find((end) => end.status === 'rejected');
    if (failed) throw failed.reason;
  }
}

/** The built worker in a process of its own. */
export class WorkerProcess {
  private constructor(
    readonly child: ChildProcess,
    /** What it wrote to either output so far, in pieces. */
    readonly log: string[],
  ) {}

  /** Starts it and waits until it says that it is ready. */
  static async start(environment: Record<string, string>): Promise<WorkerProcess> {
    const worker = WorkerProcess.spawn(environment);
    try {
      await until('a worker that is ready', () => {
        if (!worker.isRunning) throw new Error(`The worker ended:\n${worker.log.join('')}`);
        return /ready/i.test(worker.log.join('')) || undefined;
      });
    } catch (error) {
      await worker.end('SIGKILL');
      throw error;
    }
    return worker;
  }

  /** Starts it, ready or not. */
  static spawn(environment: Record<string, string>): WorkerProcess {
    const child = spawn(process.execPath, ['dist/service/worker.js'], {
      env: { PATH: process.env.PATH, TZ: 'UTC', LOG_LEVEL: 'log', ...environment },
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    const log: string[] = [];
    for (const output of [child.stdout, child.stderr]) {
      output?.on('data', (chunk: Buffer) => log.push(chunk.toString('utf8')));
    }
    return new WorkerProcess(child, log);
  }

  get isRunning(): boolean {
    return this.child.exitCode === null && this.child.signalCode === null;
  }

  /** Ends it and waits for that; answers with its exit code, null after a kill. */
  async end(signal: NodeJS.Signals = 'SIGTERM'): Promise<number | null> {
    const { child } = this;
    if (!this.isRunning) return child.exitCode;
    const ended = this.ended();
    child.kill(signal);
    return ended;
  }

  /** Waits until it ends by itself. */
  ended(): Promise<number | null> {
    return new Promise((resolve) => this.child.once('exit', (code) => resolve(code)));
  }
}
