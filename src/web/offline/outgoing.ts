import { useSyncExternalStore } from 'react';
import { tellReached } from '../service/connection.js';
import { isProblem, ServiceProblem } from '../service/problem.js';
import { unreachable } from '../service/request.js';
import {
  dropDifference,
  dropWaiting,
  keepDifference,
  keepWaiting,
  keptDifferences,
  waitingWrites,
} from './device-store.js';
import { type Difference, differenceOf, refusalOf } from './difference.js';
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

type Settled = (write: WaitingWrite, answer: WriteAnswer | ServiceProblem) => void;

/** No answer for so long is none: the same write is sent again. */
const answerMilliseconds = 10_000;
const tryAgainMilliseconds = 5_000;

/** Sent again it would be answered the same, unless it is one of these. */
const passing: ReadonlySet<string> = new Set([
  'unreachable',
  'sign-in-needed',
  'too-many-requests',
  'unavailable',
]);

/**
 * What happened at trays on this device and has still to be sent. Guarantees: what was added is kept before anything else,
 * also when the page is closed or somebody signs out; it is sent in order, in the name of whoever did it, with the same id
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
  private loading: Promise<void> | undefined;

  snapshot = (): OutgoingState => this.state;

  subscribe = (listener: () => void): (() => void) => {
    void this.load();
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
    await this.load();
    void this.send();
  }

  add(...writes: WaitingWrite[]): void {
    this.change({ waiting: [...this.state.waiting, ...writes] });
    for (const write of writes) void this.keep(keepWaiting(write));
    void this.send();
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
    this.change({ differences: this.state.differences.filter((one) => one.id !== id) });
    void this.keep(dropDifference(id));
  }

  send = async (): Promise<void> => {
    if (this.state.isSending) return;
    clearTimeout(this.again);
    this.change({ isSending: true, problem: undefined });
    try {
      for (let next = this.next(); next !== undefined; next = this.next()) {
        await this.sendOne(next);
      }
    } catch (error) {
      if (!(error instanceof ServiceProblem)) throw error;
      this.change({ problem: error });
      if (!isProblem(error, 'sign-in-needed')) {
        const seconds = error.document.retryAfterSeconds;
        this.again = setTimeout(this.send, seconds === undefined ? tryAgainMilliseconds : seconds * 1_000);
      }
    } finally {
      this.change({ isSending: false });
    }
  };

  private next(): WaitingWrite | undefined {
    return this.state.waiting.find(({ personId }) => this.persons.has(personId));
  }

  private async sendOne(write: WaitingWrite): Promise<void> {
    let answer: WriteAnswer | ServiceProblem;
    try {
      answer = await inTime(sendWrite(write));
    } catch (error) {
      if (!(error instanceof ServiceProblem)) throw error;
      if (passing.has(error.code) || error.document.status >= 500) throw error;
      answer = error;
    }
    // As it stands now: it may have been judged here while it was under way.
    const sent = this.state.waiting.find(({ id }) => id === write.id) ?? write;
    const difference = differenceFor(sent, answer);
    if (difference) {
      await this.keep(keepDifference(difference));
      this.change({ differences: [...this.state.differences, difference] });
    }
    this.change({ waiting: this.state.waiting.filter(({ id }) => id !== write.id) });
    void this.keep(dropWaiting(write.id));
    for (const listener of this.settledListeners) listener(sent, answer);
  }

  private load(): Promise<void> {
    this.loading ??= (async () => {
      await this.keep(
        (async () => {
          const [kept, differences] = await Promise.all([waitingWrites(), keptDifferences()]);
          const here = new Set(this.state.waiting.map(({ id }) => id));
          const waiting = [...kept.filter(({ id }) => !here.has(id)), ...this.state.waiting];
          this.change({ waiting: waiting.sort((one, other) => (one.id < other.id ? -1 : 1)), differences });
        })(),
      );
    })();
    return this.loading;
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

function differenceFor(write: WaitingWrite, answer: WriteAnswer | ServiceProblem): Difference | undefined {
  if (!(answer instanceof ServiceProblem)) {
    return isScanAnswer(answer) ? differenceOf(write, answer) : undefined;
  }
  // Where it was refused at once, the page says so itself.
  const wasJudgedHere = write.kind !== 'scan' || write.judgedHere !== undefined;
  return wasJudgedHere ? refusalOf(write, answer) : undefined;
}

async function inTime<Answer>(answer: Promise<Answer>): Promise<Answer> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<never>((_, refuse) => {
    timer = setTimeout(() => {
      tellReached(false);
      refuse(unreachable());
    }, answerMilliseconds);
  });
  try {
    return await Promise.race([answer, late]);
  } finally {
    clearTimeout(timer);
  }
}

export const outgoing = new Outgoing();

export function useOutgoing(): OutgoingState {
  return useSyncExternalStore(outgoing.subscribe, outgoing.snapshot);
}
