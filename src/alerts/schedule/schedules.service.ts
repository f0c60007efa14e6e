import { Injectable, Logger, type OnApplicationBootstrap, type OnModuleDestroy } from '@nestjs/common';
import { Config } from '../../platform/config.js';
import { ProcessRole } from '../../platform/process-role.js';
import { AlertQueue } from '../queue/alert-queue.interface.js';

/** Something that is done by time. */
export interface Purpose {
  /** What it is called, such as `sweep`; unlike all others. */
  purpose: string;
  /**
   * Looks what is due and does it. It is called every half minute, at times late, twice, or in two processes at once: what
   * is due it finds in the record, and what is done it does once.
   */
  look(): Promise<void>;
}

/** How long the queue may be away, or be without a worker, before the service looks by itself: no morning is missed. */
const patienceMilliseconds = 120_000;
const watchMilliseconds = 30_000;

/** Whatever fires by time. Who does something by time registers here at start-up (onModuleInit). */
@Injectable()
export class Schedules implements OnApplicationBootstrap, OnModuleDestroy {
  private readonly logger = new Logger('schedule');
  private readonly purposes = new Map<string, Purpose>();
  private readonly looking = new Map<string, Promise<void>>();
  private watch: NodeJS.Timeout | undefined;
  /** By a clock that nobody sets. */
  private unservedSince: number | undefined;

  constructor(
    private readonly queue: AlertQueue,
    private readonly config: Config,
    private readonly role: ProcessRole,
  ) {}

  register(purpose: Purpose): void {
    if (this.purposes.has(purpose.purpose)) {
      throw new Error(`"${purpose.purpose}" is registered twice as something done by time.`);
    }
    this.purposes.set(purpose.purpose, purpose);
  }

  onApplicationBootstrap(): void {
    const { serving, working } = this.role;
    if (!serving && !working) return;
    const firesHere = working || !this.config.hasWorkers;
    this.queue.repeat([...this.purposes.keys()], firesHere ? (purpose) => this.look(purpose) : null);
    if (!serving) return;
    this.watch = setInterval(() => void this.lookInstead(), watchMilliseconds);
    this.watch.unref();
  }

  async onModuleDestroy(): Promise<void> {
    clearInterval(this.watch);
    await Promise.all(this.looking.values());
  }

  /** One look at a time of each purpose. What fails is tried again at the next. */
  private look(name: string): Promise<void> {
    const purpose = this.purposes.get(name);
    // Put in by another version, beside this one.
    if (!purpose) return Promise.resolve();
    let looking = this.looking.get(name);
    if (!looking) {
      looking = purpose
        .look()
        .catch((error: unknown) => this.logger.error(`"${name}" failed, trying on: ${String(error)}`))
        .finally(() => this.looking.delete(name));
      this.looking.set(name, looking);
    }
    return looking;
  }

  private async lookInstead(): Promise<void> {
    const { awaySince, workers } = await this.queue.state();
    if (awaySince === null && workers !== 0) this.unservedSince = undefined;
    else this.unservedSince ??= performance.now();
    if (this.unservedSince === undefined) return;
    if (performance.now() - this.unservedSince < patienceMilliseconds - watchMilliseconds) return;
    for (const name of this.purposes.keys()) await this.look(name);
  }
}
