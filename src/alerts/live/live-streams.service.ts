import type { ServerResponse } from 'node:http';
import { Injectable, Logger, type OnModuleDestroy } from '@nestjs/common';
import type { FastifyReply } from 'fastify';
import type { StudioActor } from '../../identity/actor.guard.js';
import type { Requester } from '../../identity/sign-in/credentials.service.js';
import { StillAdmitted } from '../../identity/still-admitted.service.js';
import { Database } from '../../platform/database/database.js';
import { Problem } from '../../platform/problem.js';
import { ProcessRole } from '../../platform/process-role.js';
import { heartbeat, knownThrough, type LiveStep, liveEvent } from './live-event.js';

const lookMilliseconds = 1_000;
/** So often it is shown that a connection stands, and asked whether it still may. */
const looksBetweenChecks = 15;
const mostStreams = 500;
const mostStreamsOfPerson = 8;
/** Who missed more reads the alerts anew. */
const mostStepsAtOnce = 200;
/** Who reads so slowly that this much waits for them is cut off, and may come again. */
const mostWaitingBytes = 65_536;

interface Stream {
  studioId: string;
  personId: string;
  requester: Requester;
  response: ServerResponse;
  /** The last step that was told. */
  told: number;
}

/**
 * Tells open pages of each step of an alert as it happens. The table is looked at, not the writes of this process, for
 * others write too; all listeners of a studio share one look a second. Guarantees: steps come in their order, none twice
 * on one connection and none left out; nobody hears more who signed out or lost the permission (within 15 s); when the
 * service ends, so do the streams, at the next look.
 */
@Injectable()
export class LiveStreams implements OnModuleDestroy {
  private readonly logger = new Logger('live alerts');
  private readonly streams = new Set<Stream>();
  private timer: NodeJS.Timeout | undefined;
  private looking: Promise<void> | undefined;
  private looks = 0;
  private failing = false;

  constructor(
    private readonly database: Database,
    private readonly role: ProcessRole,
    private readonly stillAdmitted: StillAdmitted,
  ) {}

  async onModuleDestroy(): Promise<void> {
    this.endAll();
    await this.looking;
  }

  /**
   * Takes the answer over and keeps it open.
   * @throws Problem too-many-requests or not-ready, when too many are open
   */
  async open(
    { studioId, personId }: StudioActor,
    requester: Requester,
    lastEventId: string | undefined,
    reply: FastifyReply,
  ): Promise<void> {
    this.refuseTooMany(personId);
    const stream: Stream = { studioId, personId, requester, response: reply.raw, told: 0 };
    // Counted before anything is waited for, so that a thousand at once are not all let in.
    this.streams.add(stream);
    reply.raw.once('close', () => this.forget(stream));
    // Who left while it was asked whether they may is told of no more: `close` was before.
    if (reply.raw.destroyed) {
      this.forget(stream);
      return;
    }
    this.timer ??= setInterval(() => this.look(), lookMilliseconds).unref();
    try {
      const newest = await this.newest(studioId);
      const { sequence, missed } = knownThrough(lastEventId, newest, mostStepsAtOnce);
      stream.told = sequence;
      beginAnswer(reply);
      this.send(stream, liveEvent('connected', { sequence }, sequence));
      if (missed) this.send(stream, liveEvent('missed', { sequence }));
    } catch (error) {
      this.forget(stream);
      throw error;
    }
  }

  private refuseTooMany(personId: string): void {
    const own = [...this.streams].filter((stream) => stream.personId === personId).length;
    if (own >= mostStreamsOfPerson) {
      throw new Problem(
        429,
        'too-many-requests',
        `You have ${own} pages open that are told of alerts at once, which is as many as one person may. Close some of them; the others go on.`,
      );
    }
    if (this.streams.size >= mostStreams) {
      throw new Problem(
        503,
        'not-ready',
        `${this.streams.size} pages are told of alerts at once, which is as many as this service carries. The list of alerts works as always; try again later.`,
        { retryAfterSeconds: 60 },
      );
    }
  }

  private look(): void {
    if (this.role.ending) this.endAll();
    else {
      this.looking ??= this.tell().finally(() => {
        this.looking = undefined;
      });
    }
  }

  private async tell(): Promise<void> {
    this.looks += 1;
    const isCheck = this.looks % looksBetweenChecks === 0;
    try {
      if (isCheck) {
        this.forgetWhoLeft();
        await this.endThoseWhoMayNot();
      }
      for (const studioId of new Set([...this.streams].map((stream) => stream.studioId))) {
        await this.tellStudio(studioId);
      }
      if (isCheck) for (const stream of this.streams) this.send(stream, heartbeat);
      this.failing = false;
    } catch (error) {
      if (!this.failing) this.logger.error(`Live alerts cannot be read, trying on: ${String(error)}`);
      this.failing = true;
    }
  }

  private async tellStudio(studioId: string): Promise<void> {
    const listeners = [...this.streams].filter(
      (stream) => stream.studioId === studioId && stream.response.headersSent,
    );
    if (listeners.length === 0) return;
    const from = Math.min(...listeners.map(({ told }) => told));
    const steps = await this.database.read<LiveStep>(
      `SELECT entry.sequence, entry.alert_id AS "alertId", alert.kind, entry.severity, entry.event
       FROM alert_entry AS entry
         JOIN alert ON alert.studio_id = entry.studio_id AND alert.id = entry.alert_id
       WHERE entry.studio_id = $1 AND entry.sequence > $2 ORDER BY entry.sequence LIMIT ${mostStepsAtOnce}`,
      [studioId, from],
    );
    for (const stream of listeners) {
      const fresh = steps.filter(({ sequence }) => sequence > stream.told);
      if (fresh.length === 0) continue;
      stream.told = fresh.at(-1)?.sequence ?? stream.told;
      this.send(stream, fresh.map((step) => liveEvent('alert', step, step.sequence)).join(''));
    }
  }

  /** Whatever ended a connection without a word. */
  private forgetWhoLeft(): void {
    for (const stream of [...this.streams]) if (stream.response.destroyed) this.forget(stream);
  }

  private async endThoseWhoMayNot(): Promise<void> {
    const judged = new Map<string, boolean>();
    for (const stream of this.streams) {
      const { requester, studioId } = stream;
      const who = 'program' in requester ? requester.program.tokenId : requester.browser.signInId;
      const key = `${who} ${studioId}`;
      const may = judged.get(key) ?? (await this.stillAdmitted.may(requester, studioId, 'see alerts'));
      judged.set(key, may);
      if (!may) this.end(stream, 'signed out, or not allowed any more');
    }
  }

  private async newest(studioId: string): Promise<number> {
    const [row] = await this.database.read<{ sequence: number | null }>(
      'SELECT max(sequence) AS sequence FROM alert_entry WHERE studio_id = $1',
      [studioId],
    );
    return row?.sequence ?? 0;
  }

  private send(stream: Stream, text: string): void {
    const { response } = stream;
    if (!response.headersSent || response.writableEnded || response.destroyed) return;
    response.write(text);
    if (response.writableLength > mostWaitingBytes) response.destroy();
  }

  private end(stream: Stream, why: string): void {
    this.send(stream, liveEvent('ended', { why }));
    this.forget(stream);
    stream.response.end();
  }

  private endAll(): void {
    for (const stream of [...this.streams]) this.end(stream, 'the service ends');
  }

  private forget(stream: Stream): void {
    this.streams.delete(stream);
    if (this.streams.size > 0) return;
    clearInterval(this.timer);
    this.timer = undefined;
  }
}

/** What others set so far, such as a cookie that was renewed, goes out with it; from here on Fastify has no part in it. */
function beginAnswer(reply: FastifyReply): void {
  reply.hijack();
  for (const [name, value] of Object.entries(reply.getHeaders())) {
    if (value !== undefined) reply.raw.setHeader(name, value);
  }
  reply.raw.writeHead(200, {
    'content-type': 'text/event-stream; charset=utf-8',
    'cache-control': 'no-store',
    // So that a proxy hands on each event at once.
    'x-accel-buffering': 'no',
  });
}
