import { Injectable, Logger } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { Problem } from '../../platform/problem.js';
import { Accounts, foldSignInName } from './accounts.service.js';
import { BrowserSignIns } from './browser-sign-ins.service.js';
import { FailedSignIns } from './failed-sign-ins.service.js';
import { Passwords } from './passwords.service.js';
import type { SignInDto } from './sign-in.dto.js';
import { SignInCookies } from './sign-in-cookies.service.js';

/** Signing in with name and password. */
@Injectable()
export class PasswordSignIn {
  private readonly logger = new Logger('sign-in');

  constructor(
    private readonly accounts: Accounts,
    private readonly passwords: Passwords,
    private readonly failures: FailedSignIns,
    private readonly cookies: SignInCookies,
    private readonly browserSignIns: BrowserSignIns,
  ) {}

  /**
   * A wrong name and a wrong password are answered alike, and take as long.
   * @throws Problem sign-in-failed; too-many-requests
   */
  async signIn(dto: SignInDto, request: FastifyRequest, reply: FastifyReply): Promise<void> {
    const account = await this.accounts.byName(dto.signInName);
    const attempt = await this.failures.begin({
      account: foldSignInName(dto.signInName),
      address: request.ip,
      knownDevice: account && (await this.cookies.knownDevice(request, account.id)),
    });
    if (!(await this.passwords.matches(account?.passwordHash, dto.password)) || !account) {
      this.logger.warn(`Signing in failed from ${request.ip}.`);
      throw new Problem(
        401,
        'sign-in-failed',
        'Sign-in name and password do not go together. Look at both again; who forgot the password asks the owner for a new link.',
      );
    }
    await attempt.succeeded();
    await this.browserSignIns.start(account, 'password', request, reply);
  }
}
