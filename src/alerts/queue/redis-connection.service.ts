import { Logger } from '@nestjs/common';
import { Redis, type RedisOptions } from 'ioredis';

const connectMilliseconds = 5_000;
/** Redis that takes longer to answer is as good as away. */
export const answerMilliseconds = 5_000;
const longestWaitMilliseconds = 2_000;
const heartbeatMilliseconds = 2_000;
/** The same trouble is told again after so long. */
const tellAgainMilliseconds = 600_000;

/** A connection that remembers those that were made from it, since BullMQ makes one of each worker's and keeps it to itself. */
class Connection extends Redis {
  private readonly copies: Redis[] = [];

  override duplicate(override?: Partial<RedisOptions>): Redis {
    const copy = super.duplicate(override);
    this.copies.push(copy);
    return copy;
  }

  disconnectAll(): void {
    for (const connection of [this, ...this.copies]) connection.disconnect();
  }
}

/**
 * The way to one Redis. Guarantees: it connects again for ever, every few seconds; whether it is reached is known within
 * seconds, also when Redis holds connections and answers nothing; closing waits for nobody; no secret of its address is
 * written anywhere.
 */
export class RedisConnection {
  /** For putting in: fails at once while Redis is away. */
  readonly producing: Redis;
  /** For taking out: waits until Redis is back. Undefined as long as nothing is taken out. */
  private takingOut: Connection | undefined;
  private readonly logger = new Logger('redis');
  private readonly heartbeat: NodeJS.Timeout;
  private away: string | null = new Date().toISOString();
  private readonly toldAt = new Map<string, number>();
  private readonly onReached: (() => void)[] = [];
  private closed = false;

  constructor(private readonly url: string) {
    this.producing = this.connect({ enableOfflineQueue: false, commandTimeout: answerMilliseconds });
    this.producing.on('ready', () => this.noteReached());
    this.producing.on('close', () => this.noteAway());
    this.heartbeat = setInterval(() => void this.beat(), heartbeatMilliseconds);
    this.heartbeat.unref();
  }

  /** When it ceased to be reached, ISO 8601 instant; null: it is reached. */
  get awaySince(): string | null {
    return this.away;
  }

  /** For workers: one for all, beside those they make of it. */
  get consuming(): Redis {
    this.takingOut ??= this.connect({});
    return this.takingOut;
  }

  /** Calls back each time Redis is reached again. */
  whenReached(told: () => void): void {
    this.onReached.push(told);
  }

  /** Tells of trouble once, not each second as long as it lasts. */
  tell(error: unknown): void {
    if (this.closed) return;
    const words = error instanceof Error ? error.message : String(error);
    const last = this.toldAt.get(words);
    if (last !== undefined && Date.now() - last < tellAgainMilliseconds) return;
    // Messages may hold ids: they are not kept for ever.
    if (this.toldAt.size > 100) this.toldAt.clear();
    this.toldAt.set(words, Date.now());
    this.logger.warn(`Redis: ${words}. What is to be delivered waits in the outbox.`);
  }

  close(): void {
    this.closed = true;
    clearInterval(this.heartbeat);
    this.producing.disconnect();
    this.takingOut?.disconnectAll();
  }

  private connect(options: RedisOptions): Connection {
    const connection = new Connection(this.url, {
      connectTimeout: connectMilliseconds,
      // BullMQ waits by itself, for as long as it takes.
      maxRetriesPerRequest: null,
      retryStrategy: (times) => Math.min(times * 100, longestWaitMilliseconds),
      ...options,
    });
    connection.on('error', (error: Error) => this.tell(error));
    return connection;
  }

  private async beat(): Promise<void> {
    if (this.producing.status !== 'ready') return;
    try {
      await this.producing.ping();
      this.noteReached();
    } catch {
      this.noteAway();
    }
  }

  private noteReached(): void {
    if (this.away === null || this.closed) return;
    this.away = null;
    this.toldAt.clear();
    this.logger.log('Redis is reached.');
    for (const told of this.onReached) told();
  }

  private noteAway(): void {
    if (this.closed) return;
    this.away ??= new Date().toISOString();
  }
}
