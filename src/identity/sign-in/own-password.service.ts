import { Injectable } from '@nestjs/common';
import type { FastifyReply } from 'fastify';
import type { Transaction } from '../../platform/database/transaction.js';
import { Transactions } from '../../platform/database/transactions.js';
import { invalidField, Problem } from '../../platform/problem.js';
import type { Account } from './account.entity.js';
import { Accounts, foldSignInName } from './accounts.service.js';
import { FailedSignIns } from './failed-sign-ins.service.js';
import { OneTimeLinks } from './one-time-links.service.js';
import { Passwords } from './passwords.service.js';
import { RecentSignIns } from './recent-sign-ins.service.js';
import type { ChangePasswordDto } from './sign-in.dto.js';
import { SignInCookies } from './sign-in-cookies.service.js';
import { type SignedIn, SignIns } from './sign-ins.service.js';
import { WaysToSignIn } from './ways-to-sign-in.service.js';

/** The password of whoever is signed in. */
@Injectable()
export class OwnPassword {
  constructor(
    private readonly transactions: Transactions,
    private readonly accounts: Accounts,
    private readonly passwords: Passwords,
    private readonly failures: FailedSignIns,
    private readonly signIns: SignIns,
    private readonly cookies: SignInCookies,
    private readonly recent: RecentSignIns,
    private readonly ways: WaysToSignIn,
    private readonly links: OneTimeLinks,
  ) {}

  /**
   * Changes the password; every other sign-in of the account ends, and this browser gets a new secret. Who has a password
   * gives it; who has none chooses one soon after signing in.
   * @throws Problem sign-in-failed when the current one is wrong; unusable-password; too-many-requests
   */
  async change(
    browser: SignedIn,
    dto: ChangePasswordDto,
    address: string,
    reply: FastifyReply,
  ): Promise<void> {
    const account = await this.accounts.get(browser.accountId);
    if (account.passwordHash === null) await this.recent.require(browser);
    else await this.checkCurrent(browser, account, dto.currentPassword, address);
    const name = await this.accounts.nameOf(account);
    const passwordHash = await this.passwords.hash(dto.newPassword, [name]);
    await this.write(browser, account, 'identity.change-password', (transaction) =>
      this.accounts.changePassword(transaction, account, passwordHash),
    );
    this.cookies.set(reply, await this.signIns.renew(browser.signInId));
  }

  /**
   * From now on the account signs in by passkey only. Every other sign-in ends.
   * @throws Problem wrong-state when it has none, or no passkey
   */
  async remove(browser: SignedIn, reply: FastifyReply): Promise<void> {
    const account = await this.accounts.get(browser.accountId);
    await this.write(browser, account, 'identity.remove-password', async (transaction) => {
      const locked = await this.accounts.lock(transaction, account.id);
      if (locked.passwordHash === null) {
        throw new Problem(409, 'wrong-state', 'You have no password; nothing more is to be done.');
      }
      await this.ways.refuseToLeaveNone(transaction, account.id, { password: true });
      await this.accounts.changePassword(transaction, locked, null);
    });
    this.cookies.set(reply, await this.signIns.renew(browser.signInId));
  }

  private async write(
    browser: SignedIn,
    account: Account,
    action: string,
    work: (transaction: Transaction) => Promise<void>,
  ): Promise<void> {
    await this.transactions.write(
      await this.accounts.actorOf(account),
      { id: null, action, subject: { kind: 'account', id: account.id }, content: null },
      async (transaction) => {
        await work(transaction);
        await this.signIns.endAllWithin(
          transaction.read,
          transaction.recordedAt,
          account.id,
          browser.signInId,
        );
        // A link that lies about somewhere would undo the change.
        await this.links.endOfAccount(transaction, account.id);
      },
    );
  }

  private async checkCurrent(
    browser: SignedIn,
    account: Account,
    password: string | undefined,
    address: string,
  ): Promise<void> {
    if (password === undefined) throw invalidField('currentPassword', 'The current password is needed');
    const attempt = await this.failures.begin({
      account: foldSignInName(await this.accounts.nameOf(account)),
      address,
      knownDevice: browser.signInId,
    });
    if (!(await this.passwords.matches(account.passwordHash, password))) {
      throw new Problem(401, 'sign-in-failed', 'The current password is another one. Look at it again.');
    }
    await attempt.succeeded();
  }
}
