import { Injectable, Logger } from '@nestjs/common';
import type { PublicKeyCredentialRequestOptionsJSON } from '@simplewebauthn/server';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { Problem } from '../../platform/problem.js';
import { Accounts } from '../sign-in/accounts.service.js';
import { BrowserSignIns } from '../sign-in/browser-sign-ins.service.js';
import type { Passkey } from './passkey.entity.js';
import { type Challenge, challengeMilliseconds, PasskeyChallenges } from './passkey-challenges.service.js';
import type { AuthenticationResponseDto, PasskeySignInDto } from './passkeys.dto.js';
import { Passkeys } from './passkeys.service.js';
import { userHandleOf } from './user-handle.js';

/** What the library tells may hold what was sent. */
const longestReason = 300;

/**
 * Signing in with a passkey, without typing a name. Nothing can be guessed here, so nobody has to wait. The library is
 * loaded when it is needed, since it would make every start slower.
 */
@Injectable()
export class PasskeySignIn {
  private readonly logger = new Logger('passkeys');

  constructor(
    private readonly accounts: Accounts,
    private readonly passkeys: Passkeys,
    private readonly challenges: PasskeyChallenges,
    private readonly browserSignIns: BrowserSignIns,
  ) {}

  /** @throws Problem passkeys-unavailable */
  async options(
    request: FastifyRequest,
    reply: FastifyReply,
  ): Promise<PublicKeyCredentialRequestOptionsJSON> {
    const { challenge, relyingParty } = await this.challenges.make('sign-in', request, reply, null);
    const { generateAuthenticationOptions } = await import('@simplewebauthn/server');
    return generateAuthenticationOptions({
      rpID: relyingParty.id,
      challenge: Buffer.from(challenge, 'base64url'),
      timeout: challengeMilliseconds,
      userVerification: 'required',
    });
  }

  /** @throws Problem sign-in-failed */
  async signIn(dto: PasskeySignInDto, request: FastifyRequest, reply: FastifyReply): Promise<void> {
    const challenge = await this.challenges.take('sign-in', request, null);
    const passkey = await this.passkeys.usable(dto.credential.id);
    const counter = challenge && passkey && (await this.verifiedCounter(dto.credential, passkey, challenge));
    if (!passkey || counter == null) {
      this.logger.warn(`Signing in by passkey failed from ${request.ip}.`);
      throw failed();
    }
    const account = await this.accounts.get(passkey.accountId);
    if (!(await this.passkeys.countUse(account, passkey, counter))) throw failed();
    await this.browserSignIns.start(account, 'passkey', request, reply);
  }

  /** The authenticator's counter, when the answer is the passkey's own; else undefined. */
  private async verifiedCounter(
    response: AuthenticationResponseDto,
    passkey: Passkey,
    { challenge, relyingParty }: Challenge,
  ): Promise<number | undefined> {
    try {
      const handle = Buffer.from(userHandleOf(passkey.accountId)).toString('base64url');
      if (response.response.userHandle !== handle) throw new Error('It names another account.');
      const { verifyAuthenticationResponse } = await import('@simplewebauthn/server');
      const { verified, authenticationInfo } = await verifyAuthenticationResponse({
        response: { ...response, clientExtensionResults: {} },
        expectedChallenge: challenge,
        expectedOrigin: relyingParty.origin,
        expectedRPID: relyingParty.id,
        requireUserVerification: true,
        credential: {
          id: passkey.credentialId,
          publicKey: new Uint8Array(Buffer.from(passkey.publicKey, 'base64url')),
          // The library would judge the counter before the signature, so that anybody could make it look copied.
          counter: 0,
        },
      });
      if (verified) return authenticationInfo.newCounter;
    } catch (error) {
      this.logger.warn(`A passkey was refused: ${String(error).slice(0, longestReason)}`);
    }
    return undefined;
  }
}

function failed(): Problem {
  return new Problem(
    401,
    'sign-in-failed',
    'This passkey does not let you in: it is not known here, its time was over, or it was removed. Try again, or sign in another way.',
  );
}
