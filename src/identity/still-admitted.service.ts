import { Injectable } from '@nestjs/common';
import type { Permission } from './permissions.js';
import { ApiTokens } from './sign-in/api-tokens.service.js';
import type { Requester } from './sign-in/credentials.service.js';
import { SignIns } from './sign-in/sign-ins.service.js';
import { Standings } from './sign-in/standings.service.js';

/** Asks anew of a request that goes on for long what the guard asked at its beginning. It only looks. */
@Injectable()
export class StillAdmitted {
  constructor(
    private readonly signIns: SignIns,
    private readonly tokens: ApiTokens,
    private readonly standings: Standings,
  ) {}

  /** Whether whoever made the request is still signed in and still has the permission in the studio. */
  async may(requester: Requester, studioId: string, permission: Permission): Promise<boolean> {
    const isOpen =
      'program' in requester
        ? await this.tokens.isOpen(requester.program.tokenId)
        : await this.signIns.isOpen(requester.browser.signInId);
    if (!isOpen) return false;
    const standing = await this.standings.in(studioId, requester);
    return standing?.may.has(permission) ?? false;
  }
}
