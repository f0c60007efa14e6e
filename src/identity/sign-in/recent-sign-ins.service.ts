import { Injectable } from '@nestjs/common';
import { Clock } from '../../platform/clock.js';
import { Problem } from '../../platform/problem.js';
import type { Requester } from './credentials.service.js';
import { isRecent } from './recent-sign-in.js';
import type { SignedIn } from './sign-ins.service.js';
import { WaysToSignIn } from './ways-to-sign-in.service.js';

/**
 * Asks somebody to sign in again before they change how they sign in, or make another lasting way in. Who has a passkey
 * signs in with it (or by a fresh link, when it is lost): else a stolen password alone could replace the passkey.
 */
@Injectable()
export class RecentSignIns {
  constructor(
    private readonly clock: Clock,
    private readonly ways: WaysToSignIn,
  ) {}

  /**
   * Of whoever makes a request; a program signs in nowhere, so it cannot be left open.
   * @throws Problem recent-sign-in-needed; passkey-needed
   */
  async requireOf(requester: Requester): Promise<void> {
    if ('browser' in requester) await this.require(requester.browser);
  }

  /** @throws Problem recent-sign-in-needed; passkey-needed */
  async require({ accountId, method, since }: SignedIn): Promise<void> {
    if (!isRecent(since, this.clock.now())) {
      throw new Problem(
        403,
        'recent-sign-in-needed',
        'This opens a way in for long, and it is some time since you signed in. Sign in again, then repeat it.',
      );
    }
    if (method === 'password' && (await this.ways.hasPasskey(accountId))) {
      throw new Problem(
        403,
        'passkey-needed',
        'You have a passkey: sign in with it, then repeat this. If it is lost, or belongs to another address, come in by a new link: the owner makes one, or the command `npm run cli -- sign-in-link`.',
      );
    }
  }
}
