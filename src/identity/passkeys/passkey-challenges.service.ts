import { Injectable } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { Config } from '../../platform/config.js';
import { Transactions } from '../../platform/database/transactions.js';
import { Problem } from '../../platform/problem.js';
import { OwnCookies } from '../sign-in/own-cookies.service.js';
import { Secrets } from '../sign-in/secrets.service.js';
import { type RelyingParty, relyingPartyOf } from './relying-party.js';

export type ChallengePurpose = 'registration' | 'sign-in';

/** So long a person may take to find the authenticator and confirm. */
export const challengeMilliseconds = 5 * 60_000;

export interface Challenge {
  /** 256 random bits, base64url. */
  challenge: string;
  relyingParty: RelyingParty;
}

/**
 * Challenges that an authenticator signs. Guarantees: each is given to one browser, which holds a cookie for it, for one
 * purpose and one origin; it is used up by the first answer, right or wrong, and expires in minutes.
 */
@Injectable()
export class PasskeyChallenges {
  constructor(
    private readonly transactions: Transactions,
    private readonly config: Config,
    private readonly cookies: OwnCookies,
    private readonly secrets: Secrets,
  ) {}

  /**
   * A fresh challenge for the browser of the request.
   * @param signInId who is signed in there, when only they may answer it
   * @throws Problem passkeys-unavailable
   */
  async make(
    purpose: ChallengePurpose,
    request: FastifyRequest,
    reply: FastifyReply,
    signInId: string | null,
  ): Promise<Challenge> {
    const relyingParty = this.relyingPartyOf(request);
    const challenge = this.secrets.fresh();
    const known = this.cookies.read(request, 'passkey');
    // Two pages of one browser may wait for two answers, so its secret stays.
    const secret = known !== undefined && /^[\w-]{43}$/.test(known) ? known : this.secrets.fresh();
    await this.transactions.aside(async (query, now) => {
      const expiresAt = new Date(Date.parse(now) + challengeMilliseconds).toISOString();
      await query('DELETE FROM passkey_challenge WHERE expires_at < $1', [now]);
      await query(
        `INSERT INTO passkey_challenge
           (browser_hash, purpose, challenge, relying_party, origin, sign_in_id, expires_at)
         VALUES ($1, $2, $3, $4, $5, $6, $7)
         ON CONFLICT (browser_hash, purpose) DO UPDATE SET challenge = $3, relying_party = $4, origin = $5,
           sign_in_id = $6, expires_at = $7`,
        [
          this.secrets.hash(secret),
          purpose,
          challenge,
          relyingParty.id,
          relyingParty.origin,
          signInId,
          expiresAt,
        ],
      );
    });
    this.cookies.set(reply, 'passkey', secret, challengeMilliseconds / 1000);
    return { challenge, relyingParty };
  }

  /** Uses up the challenge that was given to the browser of the request; undefined when there is none that counts. */
  async take(
    purpose: ChallengePurpose,
    request: FastifyRequest,
    signInId: string | null,
  ): Promise<Challenge | undefined> {
    const secret = this.cookies.read(request, 'passkey');
    if (secret === undefined) return undefined;
    const [taken] = await this.transactions.aside((query, now) =>
      query<{ challenge: string; relying_party: string; origin: string }>(
        `DELETE FROM passkey_challenge WHERE browser_hash = $1 AND purpose = $2 AND expires_at >= $3
           AND coalesce(sign_in_id, '') = $4 RETURNING challenge, relying_party, origin`,
        [this.secrets.hash(secret), purpose, now, signInId ?? ''],
      ),
    );
    return (
      taken && {
        challenge: taken.challenge,
        relyingParty: { id: taken.relying_party, origin: taken.origin },
      }
    );
  }

  private relyingPartyOf(request: FastifyRequest): RelyingParty {
    const { publicUrl, ownUrl } = this.config;
    const relyingParty = relyingPartyOf(request.headers.origin, publicUrl, ownUrl);
    if (relyingParty) return relyingParty;
    const atHome = new URL(ownUrl).hostname === 'localhost' ? `, or ${ownUrl} on the machine itself` : '';
    throw new Problem(
      409,
      'passkeys-unavailable',
      `Passkeys need a host name with HTTPS${atHome}; you are at ${(request.headers.origin ?? publicUrl).slice(0, 60)}. Open Lotward there, or set PUBLIC_URL to a name with https://.`,
    );
  }
}
