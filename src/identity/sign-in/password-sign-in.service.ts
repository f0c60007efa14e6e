import { Injectable, Logger } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { Transactions } from '../../platform/database/transactions.js';
import { Problem } from '../../platform/problem.js';
import type { Account } from './account.entity.js';
import { Accounts, foldSignInName } from './accounts.service.js';
import { type Attempt, FailedSignIns } from './failed-sign-ins.service.js';
import { Passwords } from './passwords.service.js';
import type { ChangePasswordDto, SignInDto } from './sign-in.dto.js';
import { SignInCookies } from './sign-in-cookies.service.js';
import type { SignInMethod } from './sign-in-method.js';
import { type SignedIn, SignIns } from './sign-ins.service.js';

const longestDevice = 200;

/** Signing in with name and password, and what follows from any way of signing in. */
@Injectable()
export class PasswordSignIn {
  private readonly logger = new Logger('sign-in');

  constructor(
    private readonly transactions: Transactions,
    private readonly accounts: Accounts,
    private readonly passwords: Passwords,
    private readonly failures: FailedSignIns,
    private readonly signIns: SignIns,
    private readonly cookies: SignInCookies,
  ) {}

  /**
   * A wrong name and a wrong password are answered alike, and take as long.
   * @throws Problem sign-in-failed; too-many-requests
   */
  async signIn(dto: SignInDto, request: FastifyRequest, reply: FastifyReply): Promise<void> {
    const account = await this.accounts.byName(dto.signInName);
    const attempt: Attempt = {
      account: foldSignInName(dto.signInName),
      address: request.ip,
      knownDevice: account && (await this.cookies.knownDevice(request, account.id)),
    };
    await this.failures.refuseTooSoon(attempt);
    if (!(await this.passwords.matches(account?.passwordHash, dto.password)) || !account) {
      await this.failures.count(attempt);
      this.logger.warn(`Signing in failed from ${request.ip}.`);
      throw new Problem(
        401,
        'sign-in-failed',
        'Sign-in name and password do not go together. Look at both again; who forgot the password asks the owner for a new link.',
      );
    }
    await this.failures.forget(attempt);
    await this.welcome(account, 'password', request, reply);
  }

  /** Signs an account in at the browser of the request; an earlier sign-in of that browser ends. */
  async welcome(
    account: Account,
    method: SignInMethod,
    request: FastifyRequest,
    reply: FastifyReply,
  ): Promise<void> {
    await this.leave(request);
    const device = (request.headers['user-agent'] ?? '').slice(0, longestDevice);
    const secret = await this.signIns.start(await this.accounts.actorOf(account), account, {
      method,
      device,
    });
    this.cookies.set(reply, secret);
    await this.cookies.rememberDevice(request, reply, account.id);
  }

  /** Ends the sign-in of the browser, if there is one. */
  async leave(request: FastifyRequest): Promise<void> {
    const secret = this.cookies.secretOf(request);
    const found = secret === undefined ? undefined : await this.signIns.find(secret);
    if (!found) return;
    const account = await this.accounts.get(found.who.accountId);
    await this.signIns.end(await this.accounts.actorOf(account), account.id, found.who.signInId);
  }

  /**
   * Changes the password; every other sign-in of the account ends, and this browser gets a new secret.
   * @throws Problem sign-in-failed when the current one is wrong; unusable-password; too-many-requests
   */
  async changePassword(
    browser: SignedIn,
    dto: ChangePasswordDto,
    request: FastifyRequest,
    reply: FastifyReply,
  ): Promise<void> {
    const account = await this.accounts.get(browser.accountId);
    const name = await this.accounts.nameOf(account);
    const attempt = { account: foldSignInName(name), address: request.ip, knownDevice: browser.signInId };
    await this.failures.refuseTooSoon(attempt);
    if (!(await this.passwords.matches(account.passwordHash, dto.currentPassword))) {
      await this.failures.count(attempt);
      throw new Problem(401, 'sign-in-failed', 'The current password is another one. Look at it again.');
    }
    const passwordHash = await this.passwords.hash(dto.newPassword, [name]);
    await this.transactions.write(
      await this.accounts.actorOf(account),
      {
        id: null,
        action: 'identity.change-password',
        subject: { kind: 'account', id: account.id },
        content: null,
      },
      async (transaction) => {
        await this.accounts.changePassword(transaction, account, passwordHash);
        await this.signIns.endAllWithin(transaction.read, transaction.recordedAt, account.id);
      },
    );
    await this.welcome(account, 'password', request, reply);
  }
}
