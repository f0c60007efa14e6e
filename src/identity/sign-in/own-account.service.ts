import { Injectable } from '@nestjs/common';
import { Accounts } from './accounts.service.js';
import type { Requester } from './credentials.service.js';
import type { OwnSignInView, RequesterView } from './sign-in.views.js';
import { type SignedIn, SignIns } from './sign-ins.service.js';
import { Standings } from './standings.service.js';

/** What somebody may know and do about their own account. */
@Injectable()
export class OwnAccount {
  constructor(
    private readonly accounts: Accounts,
    private readonly signInsOfAll: SignIns,
    private readonly standings: Standings,
  ) {}

  async show(requester: Requester): Promise<RequesterView> {
    const studios = (await this.standings.of(requester)).map(
      ({ studioId, studioName, personId, role, may, passkeyNeeded, until }) => ({
        studioId,
        studioName,
        personId,
        role,
        permissions: [...may],
        passkeyNeeded,
        until,
      }),
    );
    if ('program' in requester) {
      return { accountId: null, signInName: null, hasPassword: null, method: 'token', studios };
    }
    const { accountId, method, tablet } = requester.browser;
    if (tablet !== null) return { accountId, signInName: null, hasPassword: null, method, studios };
    const account = await this.accounts.get(accountId);
    const signInName = await this.accounts.nameOf(account);
    return { accountId, signInName, hasPassword: account.passwordHash !== null, method, studios };
  }

  async signIns(browser: SignedIn): Promise<OwnSignInView[]> {
    const rows = await this.signInsOfAll.list(browser.accountId);
    return rows.map((row) => ({
      id: row.id,
      method: row.method,
      device: row.device,
      onTablet: row.tablet_id !== null,
      createdAt: row.created_at,
      lastSeenAt: row.last_seen_at,
      expiresAt: row.expires_at,
      isThis: row.id === browser.signInId,
    }));
  }

  /** @param signInId the one to end; undefined: all but this browser's own */
  async endSignIns(browser: SignedIn, signInId: string | undefined): Promise<void> {
    const account = await this.accounts.get(browser.accountId);
    const actor = await this.accounts.actorOf(account);
    if (signInId !== undefined) return this.signInsOfAll.end(actor, account.id, signInId);
    await this.signInsOfAll.endOthers(actor, account.id, browser.signInId);
  }
}
