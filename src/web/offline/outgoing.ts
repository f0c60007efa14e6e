import { useSyncExternalStore } from 'react';
import { isPassing, isProblem, ServiceProblem } from '../service/problem.js';
import {
  dropDifference,
  dropWaiting,
  keepDifference,
  keepWaiting,
  keptDifferences,
  waitingWrites,
} from './device-store.js';
import { type Difference, differenceOf, refusalOf, unseenRefusalOf } from './difference.js';
import { isScanAnswer, sendWrite, type WriteAnswer } from './send-write.js';
import type { JudgedHere, WaitingWrite } from './waiting-write.js';

/** What is sent, and how that stands. */
export interface OutgoingState {
  /** In the order in which it happened. */
  waiting: readonly WaitingWrite[];
  differences: readonly Difference[];
  isSending: boolean;
  /** Why nothing is sent at present, though the service is reached. */
  problem: ServiceProblem | undefined;
  /** False: what waits is kept by this page only, since the browser keeps nothing (any more). */
  isKept: boolean;
}

/** @returns whether the page shows what came of it */
type Settled = (write: WaitingWrite, answer: WriteAnswer | ServiceProblem) => boolean;

const tryAgainMilliseconds = 5_000;

/** Until somebody signs in (otherwise) there is no sense in trying again. */
const needsSigningIn: ReadonlySet<string> = new Set([
  'sign-in-needed',
  'passkey-needed',
  'signed-in-as-another',
]);

/**
 * What happened at trays on this device and has still to be sent. Guarantees: what was added is kept at once, and stays when
 * the page is closed or somebody signs out; it is sent in order, in the name of whoever did it, with the same id
 * until it is answered, so that it counts once; what the service judges otherwise than this device did, or refuses, is
 * kept until it was seen.
 */
class Outgoing {
  private state: OutgoingState = {
    waiting: [],
    differences: [],
    isSending: false,
    problem: undefined,
    isKept: true,
  };
  private readonly listeners = new Set<() => void>();
  private readonly settledListeners = new Set<Settled>();
  private persons: ReadonlySet<string> = new Set();
  private again: ReturnType<typeof setTimeout> | undefined;
  private joined: Promise<void> | undefined;
  private sending: Promise<void> | undefined;
  /** Ids of what was answered to this page, and of differences seen on it: it may still be about to be dropped. */
  private readonly answered = new Set<string>();
  private readonly seenHere = new Set<string>();
  /** Ids of what waited through a failure or another page: whoever did it does not watch for its answer any more. */
  private readonly late = new Set<string>();

  snapshot = (): OutgoingState => this.state;

  subscribe = (listener: () => void): (() => void) => {
    void this.join();
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  /** Calls back when a write was answered or refused. */
  onSettled(listener: Settled): () => void {
    this.settledListeners.add(listener);
    return () => this.settledListeners.delete(listener);
  }

  /** In whose name may be sent at present: the persons who whoever is signed in is. */
  async sendFor(persons: readonly string[]): Promise<void> {
    this.persons = new Set(persons);
    // Another page of this browser may have been closed before it had sent all.
    this.joined = undefined;
    await this.join();
    // What is under way may be refused since another is signed in by now.
    await this.sending?.catch(() => undefined);
    void this.send();
  }

  add(...writes: WaitingWrite[]): void {
    this.change({ waiting: [...this.state.waiting, ...writes] });
    for (const write of writes) void this.keep(keepWaiting(write));
    void this.send();
  }

  /**
   * Sends what somebody waits for at the page. Where something of theirs waits before it, or the service is not reached, it
   * waits with that.
   * @throws ServiceProblem when it is refused at once
   */
  async sendOrKeep(write: WaitingWrite): Promise<void> {
    if (this.state.waiting.some(({ personId }) => personId === write.personId)) {
      this.add(write);
      return;
    }
    try {
      const answer = await sendWrite(write);
      for (const listener of this.settledListeners) listener(write, answer);
    } catch (error) {
      if (!isProblem(error, 'unreachable')) throw error;
      this.late.add(write.id);
      this.add(write);
    }
  }

  /** Notes how a scan was judged here, when the service has not answered it meanwhile. */
  judgedHere(id: string, judgedHere: JudgedHere | null): void {
    const write = this.state.waiting.find((one) => one.id === id);
    if (write?.kind !== 'scan') return;
    const judged = { ...write, judgedHere };
    this.change({ waiting: this.state.waiting.map((one) => (one.id === id ? judged : one)) });
    void this.keep(keepWaiting(judged));
  }

  seen(id: string): void {
    this.seenHere.add(id);
    this.change({ differences: this.state.differences.filter((one) => one.id !== id) });
    void this.keep(dropDifference(id));
  }

  send = async (): Promise<void> => {
    if (this.state.isSending) return;
    this.sending = this.sendAll();
    await this.sending;
  };

  private async sendAll(): Promise<void> {
    clearTimeout(this.again);
    this.change({ isSending: true, problem: undefined });
    const held = new Set<string>();
    let fault: unknown;
    try {
      // What was kept before this page comes before what is new.
      await this.join();
      for (let next = this.next(held); next !== undefined; next = this.next(held)) {
        try {
          await this.sendOne(next);
        } catch (error) {
          if (!isProblem(error, 'internal-error')) throw error;
          // It may come each time: what follows at this tray waits for it, and no other tray does.
          fault ??= error;
          held.add(next.sessionId);
        }
      }
      // Nothing is awaited from here on: what is added finds either this loop or the next.
      if (fault) throw fault;
    } catch (error) {
      if (!(error instanceof ServiceProblem)) throw error;
      this.change({ problem: error });
      if (!needsSigningIn.has(error.code)) {
        const seconds = error.document.retryAfterSeconds;
        this.again = setTimeout(this.send, seconds === undefined ? tryAgainMilliseconds : seconds * 1_000);
      }
    } finally {
      this.change({ isSending: false });
    }
  }

  private next(held: ReadonlySet<string>): WaitingWrite | undefined {
    return this.state.waiting.find(
      ({ personId, sessionId }) => this.persons.has(personId) && !held.has(sessionId),
    );
  }

  private async sendOne(write: WaitingWrite): Promise<void> {
    let answer: WriteAnswer | ServiceProblem;
    try {
      answer = await sendWrite(write);
    } catch (error) {
      if (!(error instanceof ServiceProblem)) throw error;
      // Sent again, anything else would be answered the same.
      if (isPassing(error) || needsSigningIn.has(error.code)) {
        this.late.add(write.id);
        throw error;
      }
      answer = error;
    }
    // As it stands now: it may have been judged here while it was under way.
    const sent = this.state.waiting.find(({ id }) => id === write.id) ?? write;
    this.answered.add(write.id);
    const waiting = this.state.waiting.filter(({ id }) => id !== write.id);
    // Where nothing waits, nothing could be lost; whether the browser keeps again is seen with the next.
    this.change(waiting.length === 0 ? { waiting, isKept: true } : { waiting });
    const isShown = [...this.settledListeners].map((listener) => listener(sent, answer)).some(Boolean);
    const difference = differenceFor(sent, answer, isShown && !this.late.has(write.id));
    if (difference) {
      this.change({ differences: [...this.state.differences, difference] });
      await this.keep(keepDifference(difference));
    }
    void this.keep(dropWaiting(write.id));
  }

  /** Joins what this browser keeps to what this page knows. */
  private join(): Promise<void> {
    this.joined ??= this.keep(
      (async () => {
        const [keptWrites, keptOnes] = await Promise.all([waitingWrites(), keptDifferences()]);
        const known = new Set([...this.state.waiting.map(({ id }) => id), ...this.answered]);
        const others = keptWrites.filter(({ id }) => !known.has(id));
        for (const { id } of others) this.late.add(id);
        const told = new Set([...this.state.differences.map(({ id }) => id), ...this.seenHere]);
        this.change({
          waiting: [...others, ...this.state.waiting].sort((one, other) => (one.id < other.id ? -1 : 1)),
          differences: [...this.state.differences, ...keptOnes.filter(({ id }) => !told.has(id))],
        });
      })(),
    );
    return this.joined;
  }

  private async keep(keeping: Promise<void>): Promise<void> {
    try {
      await keeping;
    } catch {
      // A private window, or storage that is full: said on the page, since closing it would lose what waits.
      this.change({ isKept: false });
    }
  }

  private change(change: Partial<OutgoingState>): void {
    this.state = { ...this.state, ...change };
    for (const listener of this.listeners) listener();
  }
}

/** @param isShown whether the page of whoever did it shows at once what came of it */
function differenceFor(
  write: WaitingWrite,
  answer: WriteAnswer | ServiceProblem,
  isShown: boolean,
): Difference | undefined {
  const wasJudgedHere = write.kind === 'scan' && write.judgedHere !== undefined;
  if (answer instanceof ServiceProblem) {
    // Another device has begun the same tray, or it does not lie there in any case.
    if (write.kind === 'setup' && answer.document.state === 'in setup') return undefined;
    if (write.kind === 'take off' && answer.code === 'not-found') return undefined;
    return isShown && !wasJudgedHere ? undefined : refusalOf(write, answer);
  }
  if (!isScanAnswer(answer)) return undefined;
  return wasJudgedHere || isShown ? differenceOf(write, answer) : unseenRefusalOf(write, answer);
}

export const outgoing = new Outgoing();

export function useOutgoing(): OutgoingState {
  return useSyncExternalStore(outgoing.subscribe, outgoing.snapshot);
}
