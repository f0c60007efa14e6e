import { Injectable, Logger } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import type { Actor } from '../../platform/actor.js';
import { Clock } from '../../platform/clock.js';
import { Database, type Read } from '../../platform/database/database.js';
import { Transactions } from '../../platform/database/transactions.js';
import { notFound } from '../../platform/problem.js';
import { refuseBeyondOwnRole } from '../own-role.service.js';
import type { Role } from '../permissions.js';
import { Secrets } from './secrets.service.js';
import type { SignInMethod } from './sign-in-method.js';

const minutes = 60_000;
/** OWASP ASVS 5.0, 7.3.1 and 7.3.2 [P]: an inactivity limit and an absolute lifetime, chosen for a treatment day and a week. */
const lifetimes = {
  browser: { idle: 8 * 60 * minutes, whole: 7 * 24 * 60 * minutes },
  tablet: { idle: 15 * minutes, whole: 12 * 60 * minutes },
} as const;
/** A secret older than this is replaced at the next request. */
const secretLife = 60 * minutes;
/** Requests that were under way with the earlier secret when the new one came into use. */
const overlap = minutes;
/** Looking up who is signed in writes only now and then that they were seen. */
const seenEvery = 5 * minutes;
/** Ended sign-ins are cleared after so long. */
const keptEnded = 90 * 24 * 60 * minutes;
const mostListed = 100;

interface SignInRow {
  id: string;
  account_id: string;
  account_studio_id: string;
  method: SignInMethod;
  secret_hash: string;
  secret_made_at: string;
  previous_secret_hash: string | null;
  previous_ends_at: string | null;
  device: string;
  tablet_id: string | null;
  tablet_studio_id: string | null;
  tablet_secret_hash: string | null;
  created_at: string;
  last_seen_at: string;
  expires_at: string;
}

/** The tablet's secret is there only while it is enrolled. */
const selectSignIn = `SELECT sign_in.*, account.studio_id AS account_studio_id, tablet.secret_hash AS tablet_secret_hash
  FROM sign_in JOIN account ON account.id = sign_in.account_id
  LEFT JOIN tablet ON tablet.studio_id = sign_in.tablet_studio_id AND tablet.id = sign_in.tablet_id
    AND tablet.revoked_at IS NULL`;

/** A browser that is signed in. */
export interface SignedIn {
  signInId: string;
  accountId: string;
  accountStudioId: string;
  method: SignInMethod;
  /** Instant of signing in. */
  since: string;
  /** The enrolled tablet it is bound to, and its studio; null for a browser of one's own. */
  tablet: { id: string; studioId: string } | null;
}

/** What a browser presents. */
export interface Presented {
  secret: string;
  /** The secret of the enrolled tablet it is on. */
  tabletSecret: string | undefined;
  /** Nobody asked for it: a page that stands open did. */
  isByItself: boolean;
}

/** Who is signed in where. A browser holds a secret; the database holds only its hash. */
@Injectable()
export class SignIns {
  private readonly logger = new Logger('sign-in');

  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly clock: Clock,
    private readonly secrets: Secrets,
  ) {}

  /**
   * Signs an account in and records that in the audit log of the actor's studio. On a tablet it ends what was signed in
   * there before.
   * @returns the secret for the browser's cookie
   */
  async start(
    actor: Actor,
    account: { id: string },
    how: { method: SignInMethod; device: string; tablet?: { id: string; studioId: string } },
  ): Promise<string> {
    const secret = this.secrets.fresh();
    await this.transactions.write(
      actor,
      {
        id: null,
        action: 'identity.sign-in',
        subject: { kind: 'account', id: account.id },
        content: null,
      },
      async (transaction) => {
        const { read, recordedAt } = transaction;
        if (how.tablet) await this.endOnTabletWithin(read, recordedAt, how.tablet);
        await this.insert(read, recordedAt, account.id, secret, how);
        transaction.note({ method: how.method, ...(how.tablet && { tablet: how.tablet.id }) });
      },
    );
    return secret;
  }

  /**
   * Who holds this secret, with a new secret when the old one had its time; undefined when nobody does (any more). A
   * sign-in on a tablet counts only beside the tablet's own secret, and while the tablet is enrolled. What a page asks by
   * itself leaves the sign-in as it is, so that a device that nobody attends is signed out in time.
   */
  async find({
    secret,
    tabletSecret,
    isByItself,
  }: Presented): Promise<{ who: SignedIn; freshSecret: string | undefined } | undefined> {
    const hash = this.secrets.hash(secret);
    const now = this.clock.now();
    const row = (await this.row('secret_hash', hash)) ?? (await this.row('previous_secret_hash', hash));
    if (!row || isOver(row, now)) return undefined;
    if (row.tablet_id !== null) {
      const tabletHash = tabletSecret === undefined ? undefined : this.secrets.hash(tabletSecret);
      if (tabletHash !== row.tablet_secret_hash) return undefined;
    }
    const isPrevious = row.secret_hash !== hash;
    if (isPrevious && row.previous_ends_at !== null && now > row.previous_ends_at) {
      // Its successor is in use: whoever still has this one copied it.
      this.logger.warn(
        `The sign-in ${row.id} was ended, for a secret that had been replaced was presented again.`,
      );
      await this.transactions.aside((query) =>
        query('UPDATE sign_in SET ended_at = $1 WHERE id = $2', [now, row.id]),
      );
      return undefined;
    }
    const freshSecret = isByItself ? undefined : await this.keepUp(row, isPrevious, now);
    return {
      who: {
        signInId: row.id,
        accountId: row.account_id,
        accountStudioId: row.account_studio_id,
        method: row.method,
        since: row.created_at,
        tablet:
          row.tablet_id === null || row.tablet_studio_id === null
            ? null
            : { id: row.tablet_id, studioId: row.tablet_studio_id },
      },
      freshSecret,
    };
  }

  /** Whether a sign-in still counts. It is only looked at: that a page stands open is no sign that anybody is there. */
  async isOpen(signInId: string): Promise<boolean> {
    const [row] = await this.database.read<SignInRow>(
      `${selectSignIn} WHERE sign_in.id = $1 AND sign_in.ended_at IS NULL`,
      [signInId],
    );
    return row !== undefined && counts(row, this.clock.now());
  }

  /** Gives the browser of a sign-in a new secret at once. The earlier one works until the new one is used. */
  async renew(signInId: string): Promise<string> {
    const fresh = this.secrets.fresh();
    await this.transactions.aside((query, now) =>
      query(
        `UPDATE sign_in SET previous_secret_hash = secret_hash, previous_ends_at = NULL, secret_hash = $1,
           secret_made_at = $2 WHERE id = $3`,
        [this.secrets.hash(fresh), now, signInId],
      ),
    );
    return fresh;
  }

  /** Those that still count, the newest first. */
  async list(accountId: string): Promise<SignInRow[]> {
    const now = this.clock.now();
    const rows = await this.database.read<SignInRow>(
      `${selectSignIn} WHERE sign_in.account_id = $1 AND sign_in.ended_at IS NULL AND sign_in.expires_at > $2
       ORDER BY sign_in.created_at DESC, sign_in.id LIMIT ${mostListed}`,
      [accountId, now],
    );
    return rows.filter((row) => counts(row, now));
  }

  /**
   * Ends one sign-in of an account and records it.
   * @throws Problem not-found
   */
  async end(actor: Actor, accountId: string, signInId: string): Promise<void> {
    await this.transactions.write(
      actor,
      { id: null, action: 'identity.sign-out', subject: { kind: 'account', id: accountId }, content: null },
      async (transaction) => {
        const ended = await transaction.query(
          'UPDATE sign_in SET ended_at = $1 WHERE id = $2 AND account_id = $3 AND ended_at IS NULL RETURNING id',
          [transaction.recordedAt, signInId, accountId],
        );
        if (ended.length === 0) throw notFound('sign-in', signInId);
      },
    );
  }

  /** Ends all sign-ins of an account but one, and records it. */
  async endOthers(actor: Actor, accountId: string, keptId: string): Promise<void> {
    await this.transactions.write(
      actor,
      {
        id: null,
        action: 'identity.sign-out-others',
        subject: { kind: 'account', id: accountId },
        content: null,
      },
      (transaction) => this.endAllWithin(transaction.read, transaction.recordedAt, accountId, keptId),
    );
  }

  /**
   * Ends all sign-ins of a person's account, by somebody who leads the studio.
   * @throws Problem not-found; not-allowed for who may do more
   */
  async endAllOfPerson(actor: Actor, personId: string, requestId: string): Promise<{ personId: string }> {
    return this.transactions.write(
      actor,
      {
        id: requestId,
        action: 'identity.sign-person-out',
        subject: { kind: 'person', id: personId },
        content: { personId },
      },
      async (transaction) => {
        const [person] = await transaction.query<{ account_id: string | null; role: Role }>(
          'SELECT account_id, role FROM person WHERE studio_id = $1 AND id = $2',
          [actor.studioId, personId],
        );
        if (!person) throw notFound('person', personId);
        await refuseBeyondOwnRole(transaction, actor.personId, [person.role]);
        const { account_id: accountId } = person;
        if (accountId !== null) await this.endAllWithin(transaction.read, transaction.recordedAt, accountId);
        return { personId };
      },
    );
  }

  /** Ends the sign-ins of an account in the caller's transaction: all, or all but one. */
  async endAllWithin(
    query: Read,
    now: string,
    accountId: string,
    keptId: string | null = null,
  ): Promise<void> {
    await query(
      `UPDATE sign_in SET ended_at = $1 WHERE account_id = $2 AND ended_at IS NULL AND id <> coalesce($3, '')`,
      [now, accountId, keptId],
    );
  }

  /**
   * Ends in the caller's transaction what was signed in by one method: with a passkey that is suspected or removed, or in
   * a studio with a badge or PIN that is withdrawn.
   */
  async endByMethodWithin(
    query: Read,
    now: string,
    ended: { accountId: string; method: SignInMethod; tabletStudioId?: string },
  ): Promise<void> {
    const studio = ended.tabletStudioId === undefined ? '' : 'AND tablet_studio_id = $4';
    await query(
      `UPDATE sign_in SET ended_at = $1 WHERE account_id = $2 AND method = $3 AND ended_at IS NULL ${studio}`,
      [
        now,
        ended.accountId,
        ended.method,
        ...(ended.tabletStudioId === undefined ? [] : [ended.tabletStudioId]),
      ],
    );
  }

  /** Ends in the caller's transaction what is signed in on a tablet. */
  async endOnTabletWithin(query: Read, now: string, tablet: { id: string; studioId: string }): Promise<void> {
    await query(
      'UPDATE sign_in SET ended_at = $1 WHERE tablet_studio_id = $2 AND tablet_id = $3 AND ended_at IS NULL',
      [now, tablet.studioId, tablet.id],
    );
  }

  /** In the caller's transaction; clears what ended long ago in passing. */
  private async insert(
    query: Read,
    now: string,
    accountId: string,
    secret: string,
    how: { method: SignInMethod; device: string; tablet?: { id: string; studioId: string } },
  ): Promise<void> {
    const life = how.tablet ? lifetimes.tablet : lifetimes.browser;
    await query(
      `INSERT INTO sign_in (id, account_id, method, secret_hash, secret_made_at, device, tablet_id, tablet_studio_id,
         created_at, last_seen_at, expires_at) VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $5, $5, $9)`,
      [
        uuidv7(),
        accountId,
        how.method,
        this.secrets.hash(secret),
        now,
        how.device,
        how.tablet?.id ?? null,
        how.tablet?.studioId ?? null,
        later(now, life.whole),
      ],
    );
    await query('DELETE FROM sign_in WHERE coalesce(ended_at, expires_at) < $1', [later(now, -keptEnded)]);
  }

  private async row(
    column: 'secret_hash' | 'previous_secret_hash',
    hash: string,
  ): Promise<SignInRow | undefined> {
    const [row] = await this.database.read<SignInRow>(
      `${selectSignIn} WHERE sign_in.${column} = $1 AND sign_in.ended_at IS NULL`,
      [hash],
    );
    return row;
  }

  /** Notes that the browser was seen, and gives it a new secret when its own is old. The earlier one works until the new one is used. */
  private async keepUp(row: SignInRow, isPrevious: boolean, now: string): Promise<string | undefined> {
    const age = Date.parse(now) - Date.parse(row.secret_made_at);
    // A browser that comes with the earlier secret never got the new one: it is given another.
    if (isPrevious ? row.previous_ends_at === null && age > overlap : age > secretLife) {
      const fresh = this.secrets.fresh();
      const replaced = await this.transactions.aside((query) =>
        query(
          `UPDATE sign_in SET secret_hash = $1, secret_made_at = $2, last_seen_at = $2, previous_secret_hash = $3,
             previous_ends_at = NULL WHERE id = $4 AND secret_hash = $5 RETURNING id`,
          [
            this.secrets.hash(fresh),
            now,
            isPrevious ? row.previous_secret_hash : row.secret_hash,
            row.id,
            row.secret_hash,
          ],
        ),
      );
      return replaced.length > 0 ? fresh : undefined;
    }
    const confirms = !isPrevious && row.previous_secret_hash !== null && row.previous_ends_at === null;
    if (confirms || idleFor(row, now) > Math.min(seenEvery, lifetimeOf(row).idle / 10)) {
      await this.transactions.aside((query) =>
        query(
          'UPDATE sign_in SET last_seen_at = $1, previous_ends_at = coalesce(previous_ends_at, $2) WHERE id = $3',
          [now, confirms ? later(now, overlap) : null, row.id],
        ),
      );
    }
    return undefined;
  }
}

function idleFor(row: SignInRow, now: string): number {
  return Date.parse(now) - Date.parse(row.last_seen_at);
}

/** Whether its time is over, or nobody was there for too long. */
function isOver(row: SignInRow, now: string): boolean {
  return now > row.expires_at || idleFor(row, now) > lifetimeOf(row).idle;
}

/** Whether it still counts, beside what its browser presents. */
function counts(row: SignInRow, now: string): boolean {
  return !isOver(row, now) && (row.tablet_id === null || row.tablet_secret_hash !== null);
}

function lifetimeOf(row: SignInRow) {
  return row.tablet_id === null ? lifetimes.browser : lifetimes.tablet;
}

function later(now: string, milliseconds: number): string {
  return new Date(Date.parse(now) + milliseconds).toISOString();
}
