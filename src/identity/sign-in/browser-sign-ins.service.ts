import { Injectable } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { Problem } from '../../platform/problem.js';
import type { Account } from './account.entity.js';
import { Accounts } from './accounts.service.js';
import { OwnCookies } from './own-cookies.service.js';
import { SignInCookies } from './sign-in-cookies.service.js';
import type { SignInMethod } from './sign-in-method.js';
import { type SignedIn, SignIns } from './sign-ins.service.js';

const longestDevice = 200;
/** Says that a page asks by itself, while nobody does anything at it. */
const byItselfHeader = 'lotward-by-itself';

/** Who is signed in at the browser of a request: by whatever way they came in, it begins and ends here. */
@Injectable()
export class BrowserSignIns {
  constructor(
    private readonly accounts: Accounts,
    private readonly signIns: SignIns,
    private readonly cookies: SignInCookies,
    private readonly allCookies: OwnCookies,
  ) {}

  /** Undefined when nobody is signed in there (any more). */
  async find(
    request: FastifyRequest,
  ): Promise<{ who: SignedIn; freshSecret: string | undefined } | undefined> {
    const secret = this.cookies.secretOf(request);
    if (secret === undefined) return undefined;
    const tabletSecret = this.allCookies.read(request, 'tablet');
    return this.signIns.find({ secret, tabletSecret, isByItself: isByItself(request) });
  }

  /** Signs an account in at a browser of one's own; an earlier sign-in of that browser ends. */
  async start(
    account: Account,
    method: SignInMethod,
    request: FastifyRequest,
    reply: FastifyReply,
  ): Promise<void> {
    await this.end(request);
    const secret = await this.signIns.start(await this.accounts.actorOf(account), account, {
      method,
      device: deviceOf(request),
    });
    this.cookies.set(reply, secret);
    await this.cookies.rememberDevice(request, reply, account.id);
  }

  /** Signs an account in on an enrolled tablet; whoever was signed in there before is signed out. */
  async startOnTablet(
    account: Account,
    method: 'badge' | 'PIN',
    tablet: { id: string; studioId: string },
    request: FastifyRequest,
    reply: FastifyReply,
  ): Promise<void> {
    await this.end(request);
    const actor = await this.accounts.actorOf(account, tablet.studioId);
    this.cookies.set(
      reply,
      await this.signIns.start(actor, account, { method, device: deviceOf(request), tablet }),
    );
  }

  /** Ends the sign-in of the browser, if there is one. */
  async end(request: FastifyRequest): Promise<void> {
    const found = await this.find(request);
    if (!found) return;
    const { accountId, signInId, tablet } = found.who;
    const account = await this.accounts.get(accountId);
    try {
      await this.signIns.end(await this.accounts.actorOf(account, tablet?.studioId), account.id, signInId);
    } catch (error) {
      // Another request ended it meanwhile.
      if (!(error instanceof Problem && error.code === 'not-found')) throw error;
    }
  }
}

/** A stream of events is opened, and opened again, by the page alone. */
function isByItself({ headers }: FastifyRequest): boolean {
  return headers[byItselfHeader] !== undefined || headers.accept === 'text/event-stream';
}

/** What the browser says of itself, for the list of sign-ins. */
function deviceOf(request: FastifyRequest): string {
  return (request.headers['user-agent'] ?? '').slice(0, longestDevice);
}
