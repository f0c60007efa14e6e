import { Injectable } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { Problem } from '../../platform/problem.js';
import { ApiTokens, type TokenHolder } from './api-tokens.service.js';
import { BrowserSignIns } from './browser-sign-ins.service.js';
import { SignInCookies } from './sign-in-cookies.service.js';
import type { SignedIn } from './sign-ins.service.js';

/** Who makes a request: somebody at a browser, or a program with a token. */
export type Requester = { browser: SignedIn } | { program: TokenHolder };

/** Finds out who makes a request by what it presents. */
@Injectable()
export class Credentials {
  constructor(
    private readonly browserSignIns: BrowserSignIns,
    private readonly cookies: SignInCookies,
    private readonly tokens: ApiTokens,
  ) {}

  /** @throws Problem sign-in-needed */
  async requester(request: FastifyRequest, reply: FastifyReply): Promise<Requester> {
    const { authorization } = request.headers;
    if (authorization !== undefined) {
      const token = /^Bearer ([\w-]+)$/i.exec(authorization)?.[1];
      const program = token === undefined ? undefined : await this.tokens.find(token);
      if (program) return { program };
      throw signInNeeded(
        'The token in the Authorization header is not known, or its time is over. Make a new one.',
      );
    }
    const found = await this.browserSignIns.find(request);
    if (!found) {
      // The cookie stays: by the time this answer comes, another may have signed the browser in again.
      throw signInNeeded(
        this.cookies.secretOf(request) === undefined
          ? 'Nobody is signed in here. Sign in first; a program presents a token.'
          : 'You are signed out: the time was over, or it was ended elsewhere. Sign in again.',
      );
    }
    if (found.freshSecret !== undefined) this.cookies.set(reply, found.freshSecret);
    return { browser: found.who };
  }
}

function signInNeeded(detail: string): Problem {
  return new Problem(401, 'sign-in-needed', detail);
}
