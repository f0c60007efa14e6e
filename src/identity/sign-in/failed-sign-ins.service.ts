import { Injectable } from '@nestjs/common';
import { Clock } from '../../platform/clock.js';
import { Database, placeholders } from '../../platform/database/database.js';
import { Transactions } from '../../platform/database/transactions.js';
import { ServiceKey } from '../../platform/encryption/service-key.service.js';
import { Problem } from '../../platform/problem.js';
import { type Failures, secondsToWait, type ThrottledSubject } from './sign-in-throttle.js';

/** After so many hours without another a failure is forgotten. */
const rememberedHours = 24;

/** Who tries to sign in: by what name, from which address, on a device that did before or not. */
export interface Attempt {
  /** What is tried: a folded sign-in name, or a person on a tablet. */
  account: string;
  address: string;
  /** The device's own name when it signed in to this account before. */
  knownDevice: string | null;
}

/** Counts failed attempts to sign in and makes the next one wait. */
@Injectable()
export class FailedSignIns {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly serviceKey: ServiceKey,
    private readonly clock: Clock,
  ) {}

  /** @throws Problem too-many-requests, saying how long to wait */
  async refuseTooSoon(attempt: Attempt): Promise<void> {
    const subjects = await this.subjectsOf(attempt);
    const keys = [...subjects.keys()];
    const rows = await this.database.read<{ subject: string; failures: number; last_failed_at: string }>(
      `SELECT subject, failures, last_failed_at FROM failed_sign_in WHERE subject IN (${placeholders(keys, 1)})`,
      keys,
    );
    const known = rows.flatMap((row): Failures[] => {
      const subject = subjects.get(row.subject);
      return subject ? [{ subject, failures: row.failures, lastFailedAt: row.last_failed_at }] : [];
    });
    const seconds = secondsToWait(known, this.clock.now());
    if (seconds === 0) return;
    throw new Problem(
      429,
      'too-many-requests',
      `Too many wrong attempts: wait ${seconds} seconds, then try again. A passkey, or a device that signed in before, need not wait for what others try.`,
      { retryAfterSeconds: seconds },
    );
  }

  async count(attempt: Attempt): Promise<void> {
    const subjects = [...(await this.subjectsOf(attempt)).keys()];
    await this.transactions.aside(async (query, now) => {
      for (const subject of subjects) {
        await query(
          `INSERT INTO failed_sign_in (subject, failures, last_failed_at) VALUES ($1, 1, $2)
           ON CONFLICT (subject) DO UPDATE SET failures = failed_sign_in.failures + 1, last_failed_at = $2`,
          [subject, now],
        );
      }
      const forgotten = new Date(Date.parse(now) - rememberedHours * 3_600_000).toISOString();
      await query('DELETE FROM failed_sign_in WHERE last_failed_at < $1', [forgotten]);
    });
  }

  /** Forgets the failures of an account or device after it signed in; those of an address stay, for others share it. */
  async forget(attempt: Attempt): Promise<void> {
    const subjects = [...(await this.subjectsOf(attempt))].flatMap(([key, kind]) =>
      kind === 'address' ? [] : [key],
    );
    const found = await this.database.read(
      `SELECT subject FROM failed_sign_in WHERE subject IN (${placeholders(subjects, 1)})`,
      subjects,
    );
    if (found.length === 0) return;
    await this.transactions.aside((query) =>
      query(`DELETE FROM failed_sign_in WHERE subject IN (${placeholders(subjects, 1)})`, subjects),
    );
  }

  /** A known device is counted by itself: neither its account nor its address makes it wait. */
  private async subjectsOf({
    account,
    address,
    knownDevice,
  }: Attempt): Promise<Map<string, ThrottledSubject>> {
    const named: [ThrottledSubject, string][] =
      knownDevice === null
        ? [
            ['account', account],
            ['address', address],
          ]
        : [['device', `${knownDevice} ${account}`]];
    const keyed = await Promise.all(
      named.map(async ([kind, text]) => {
        const digest = await this.serviceKey.digest(`failed sign-in ${kind}`, text);
        return [digest.toString('hex'), kind] as const;
      }),
    );
    return new Map(keyed);
  }
}
