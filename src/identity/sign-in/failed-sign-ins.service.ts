import { Injectable } from '@nestjs/common';
import type { Read } from '../../platform/database/database.js';
import { Transactions } from '../../platform/database/transactions.js';
import { ServiceKey } from '../../platform/encryption/service-key.service.js';
import { Problem } from '../../platform/problem.js';
import { addressNetwork } from './address-network.js';
import { type Failures, secondsToWait, type ThrottledSubject } from './sign-in-throttle.js';

/** After so many hours without another a failure is forgotten. */
const rememberedHours = 24;

/** Who tries to sign in: by what name, from which address, on a device that did before or not. */
export interface AccountAttempt {
  /** The folded sign-in name that is tried. */
  account: string;
  address: string;
  /** The device's own name when it signed in to this account before. */
  knownDevice: string | null;
}

/** Somebody who types the PIN of a person at an enrolled tablet. */
export interface PinAttempt {
  tabletId: string;
  personId: string;
}

/** An attempt that was counted as a failure when it began. */
export interface CountedAttempt {
  /** It was no failure: forgets it, and earlier ones of this account, device or PIN. Those of an address stay, for others share it. */
  succeeded(): Promise<void>;
}

interface FailureRow {
  subject: string;
  failures: number;
  last_failed_at: string;
}

/** Counts failed attempts to sign in and makes the next one wait. */
@Injectable()
export class FailedSignIns {
  constructor(
    private readonly transactions: Transactions,
    private readonly serviceKey: ServiceKey,
  ) {}

  /**
   * Begins an attempt. It counts as a failure until it succeeded: were it counted only afterwards, a thousand attempts at
   * the same moment would all be made before the first of them was counted.
   * @throws Problem too-many-requests, saying how long to wait
   */
  async begin(attempt: AccountAttempt | PinAttempt): Promise<CountedAttempt> {
    const subjects = await this.subjectsOf(attempt);
    const begun = await this.transactions.aside(async (query, now) => {
      const before = await lockedRows(query, [...subjects.keys()], now);
      const known = before.flatMap(({ subject, failures, last_failed_at }): Failures[] => {
        const kind = subjects.get(subject);
        return kind ? [{ subject: kind, failures, lastFailedAt: last_failed_at }] : [];
      });
      const seconds = secondsToWait(known, now);
      if (seconds > 0) throw tooSoon(seconds, attempt);
      for (const { subject } of before) {
        await query(
          'UPDATE failed_sign_in SET failures = failures + 1, last_failed_at = $2 WHERE subject = $1',
          [subject, now],
        );
      }
      const forgotten = new Date(Date.parse(now) - rememberedHours * 3_600_000).toISOString();
      await query('DELETE FROM failed_sign_in WHERE last_failed_at < $1', [forgotten]);
      return { before, now };
    });
    return { succeeded: () => this.forget(begun.before, subjects, begun.now) };
  }

  private async forget(
    before: readonly FailureRow[],
    subjects: ReadonlyMap<string, ThrottledSubject>,
    countedAt: string,
  ): Promise<void> {
    await this.transactions.aside(async (query) => {
      for (const { subject, last_failed_at } of before) {
        if (subjects.get(subject) !== 'address') {
          await query('DELETE FROM failed_sign_in WHERE subject = $1', [subject]);
          continue;
        }
        // As it was before, but for others who failed from there meanwhile.
        await query(
          `UPDATE failed_sign_in SET failures = failures - 1,
             last_failed_at = CASE WHEN last_failed_at = $2 THEN $3 ELSE last_failed_at END WHERE subject = $1`,
          [subject, countedAt, last_failed_at],
        );
      }
    });
  }

  /** A known device is counted by itself: neither its account nor its address makes it wait. So is a PIN on its tablet. */
  private async subjectsOf(attempt: AccountAttempt | PinAttempt): Promise<Map<string, ThrottledSubject>> {
    const keyed = await Promise.all(
      subjectsNamed(attempt).map(async ([kind, text]) => {
        const digest = await this.serviceKey.digest(`failed sign-in ${kind}`, text);
        return [digest.toString('hex'), kind] as const;
      }),
    );
    return new Map(keyed);
  }
}

function subjectsNamed(attempt: AccountAttempt | PinAttempt): [ThrottledSubject, string][] {
  if ('tabletId' in attempt) return [['PIN', `${attempt.tabletId} ${attempt.personId}`]];
  const { account, address, knownDevice } = attempt;
  if (knownDevice !== null) return [['device', `${knownDevice} ${account}`]];
  return [
    ['account', account],
    ['address', addressNetwork(address)],
  ];
}

/** The rows of the subjects, made where there are none, and locked in one order until the end of the transaction. */
async function lockedRows(query: Read, subjects: readonly string[], now: string): Promise<FailureRow[]> {
  const rows: FailureRow[] = [];
  for (const subject of [...subjects].sort()) {
    rows.push(
      ...(await query<FailureRow>(
        `INSERT INTO failed_sign_in (subject, failures, last_failed_at) VALUES ($1, 0, $2)
         ON CONFLICT (subject) DO UPDATE SET failures = failed_sign_in.failures
         RETURNING subject, failures, last_failed_at`,
        [subject, now],
      )),
    );
  }
  return rows;
}

function tooSoon(seconds: number, attempt: AccountAttempt | PinAttempt): Problem {
  const otherWay =
    'tabletId' in attempt
      ? 'A badge need not wait.'
      : 'A passkey, or a device that signed in before, need not wait for what others try.';
  return new Problem(
    429,
    'too-many-requests',
    `Too many wrong attempts: wait ${seconds} seconds, then try again. ${otherWay}`,
    { retryAfterSeconds: seconds },
  );
}
