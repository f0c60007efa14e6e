import { Injectable, Logger } from '@nestjs/common';
import { IsNull } from 'typeorm';
import { v7 as uuidv7 } from 'uuid';
import { Database } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Transactions } from '../../platform/database/transactions.js';
import { notFound, Problem } from '../../platform/problem.js';
import type { Account } from '../sign-in/account.entity.js';
import { Accounts } from '../sign-in/accounts.service.js';
import { CredentialUses } from '../sign-in/credential-uses.service.js';
import { type SignedIn, SignIns } from '../sign-in/sign-ins.service.js';
import { WaysToSignIn } from '../sign-in/ways-to-sign-in.service.js';
import { Passkey } from './passkey.entity.js';
import type { PasskeyView } from './passkeys.views.js';

const mostPasskeys = 20;

const namePlace = (id: string) => `passkey.name:${id}`;

/** What an authenticator made for an account. */
export interface NewPasskey {
  credentialId: string;
  publicKey: string;
  relyingParty: string;
  transports: string[];
  /** Of uses, by the authenticator; 0 where it does not count. */
  counter: number;
}

/** The passkeys of accounts. */
@Injectable()
export class Passkeys {
  private readonly logger = new Logger('passkeys');

  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly accounts: Accounts,
    private readonly signIns: SignIns,
    private readonly ways: WaysToSignIn,
    private readonly uses: CredentialUses,
  ) {}

  /** Those of an account that were not removed, the oldest first. */
  async of(accountId: string): Promise<Passkey[]> {
    return this.database.reader.manager.find(Passkey, {
      where: { accountId, removedAt: IsNull() },
      order: { createdAt: 'ASC', id: 'ASC' },
      take: mostPasskeys,
    });
  }

  /** The one that may be used by this credential id. */
  async usable(credentialId: string): Promise<Passkey | null> {
    return this.database.reader.manager.findOneBy(Passkey, {
      credentialId,
      removedAt: IsNull(),
      suspectedAt: IsNull(),
    });
  }

  async list(accountId: string): Promise<PasskeyView[]> {
    const sealer = await this.accounts.sealerOf(await this.accounts.get(accountId));
    const passkeys = await this.of(accountId);
    const lastUses = await this.uses.lastOf(passkeys.map(({ id }) => id));
    return passkeys.map(({ id, nameSealed, relyingParty, createdAt, suspectedAt, version }) => ({
      id,
      name: sealer.open(nameSealed, namePlace(id)) ?? '',
      worksAt: relyingParty,
      createdAt,
      lastUsedAt: lastUses.get(id) ?? createdAt,
      suspectedAt,
      version,
    }));
  }

  /** @throws Problem already-exists; wrong-state when there are too many */
  async add(account: Account, name: string, made: NewPasskey): Promise<string> {
    const sealer = await this.accounts.sealerOf(account);
    const { counter, ...credential } = made;
    const id = uuidv7();
    await this.write(account, 'identity.add-passkey', id, async (transaction) => {
      await this.accounts.lock(transaction, account.id);
      await refuseAnotherThan(transaction, account.id, credential.credentialId);
      await transaction.insert(Passkey, {
        studioId: account.studioId,
        id,
        accountId: account.id,
        ...credential,
        nameSealed: sealer.seal(name, namePlace(id)) ?? '',
        version: 1,
        createdAt: transaction.recordedAt,
        suspectedAt: null,
        removedAt: null,
      });
      await transaction.query('INSERT INTO credential_use (id, last_used_at, counter) VALUES ($1, $2, $3)', [
        id,
        transaction.recordedAt,
        counter,
      ]);
    });
    return id;
  }

  async rename(accountId: string, id: string, name: string, version: number): Promise<void> {
    const account = await this.accounts.get(accountId);
    const sealer = await this.accounts.sealerOf(account);
    await this.write(account, 'identity.rename-passkey', id, async (transaction) => {
      await requireOwn(transaction, account, id);
      const nameSealed = sealer.seal(name, namePlace(id)) ?? '';
      await transaction.change(Passkey, 'passkey', { studioId: account.studioId, id }, version, {
        nameSealed,
      });
    });
  }

  /**
   * Removes a passkey, and ends every other sign-in of the account: it may have been lost.
   * @throws Problem wrong-state when it is the last way to sign in
   */
  async remove(browser: SignedIn, id: string): Promise<void> {
    const account = await this.accounts.get(browser.accountId);
    await this.write(account, 'identity.remove-passkey', id, async (transaction) => {
      await this.accounts.lock(transaction, account.id);
      const { version } = await requireOwn(transaction, account, id);
      await this.ways.refuseToLeaveNone(transaction, account.id, { passkeyId: id });
      await transaction.change(Passkey, 'passkey', { studioId: account.studioId, id }, version, {
        removedAt: transaction.recordedAt,
      });
      await this.signIns.endAllWithin(transaction.read, transaction.recordedAt, account.id, browser.signInId);
    });
  }

  /**
   * Notes a use by the counter of the authenticator. A counter that does not go on from the last means that two devices
   * hold the key: the passkey works no more, and what was signed in with a passkey of the account ends. Authenticators
   * that do not count tell 0 each time.
   * @returns whether the passkey may be used
   */
  async countUse(account: Account, passkey: Passkey, counter: number): Promise<boolean> {
    const counted = await this.transactions.aside((query, now) =>
      query(
        `UPDATE credential_use SET last_used_at = $2, counter = $3
         WHERE id = $1 AND (counter < $3 OR (counter = 0 AND $3 = 0)) RETURNING id`,
        [passkey.id, now, counter],
      ),
    );
    if (counted.length > 0) return true;
    await this.suspect(account, passkey.id);
    return false;
  }

  private async suspect(account: Account, id: string): Promise<void> {
    this.logger.warn(`The passkey ${id} was used by two devices: somebody holds a copy. It works no more.`);
    await this.write(account, 'identity.suspect-passkey', id, async (transaction) => {
      const { version, suspectedAt } = await requireOwn(transaction, account, id);
      if (suspectedAt !== null) return;
      const key = { studioId: account.studioId, id };
      await transaction.change(Passkey, 'passkey', key, version, { suspectedAt: transaction.recordedAt });
      await this.signIns.endByMethodWithin(transaction.read, transaction.recordedAt, {
        accountId: account.id,
        method: 'passkey',
      });
    });
  }

  private async write(
    account: Account,
    action: string,
    passkeyId: string,
    work: (transaction: Transaction) => Promise<void>,
  ): Promise<void> {
    await this.transactions.write(
      await this.accounts.actorOf(account),
      { id: null, action, subject: { kind: 'passkey', id: passkeyId }, content: null },
      work,
    );
  }
}

/** @throws Problem not-found when the account has no such passkey (any more) */
async function requireOwn(transaction: Transaction, account: Account, id: string): Promise<Passkey> {
  const { studioId, id: accountId } = account;
  const passkey = await transaction.manager.findOneBy(Passkey, {
    studioId,
    id,
    accountId,
    removedAt: IsNull(),
  });
  if (passkey) return passkey;
  throw notFound('passkey', id);
}

async function refuseAnotherThan(
  transaction: Transaction,
  accountId: string,
  credentialId: string,
): Promise<void> {
  const [{ own = 0, same = 0 } = {}] = await transaction.query<{ own: number; same: number }>(
    `SELECT (SELECT count(*) FROM passkey WHERE account_id = $1 AND removed_at IS NULL) AS own,
       (SELECT count(*) FROM passkey WHERE credential_id = $2) AS same`,
    [accountId, credentialId],
  );
  if (same > 0) throw new Problem(409, 'already-exists', 'This passkey was added before. Make a new one.');
  if (own < mostPasskeys) return;
  throw new Problem(
    409,
    'wrong-state',
    `You have ${own} passkeys, and ${mostPasskeys} are allowed. Remove one that you use no more.`,
  );
}
