import { Injectable, Logger } from '@nestjs/common';
import type { PublicKeyCredentialCreationOptionsJSON } from '@simplewebauthn/server';
import type { AttestationObject } from '@simplewebauthn/server/helpers';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { Problem } from '../../platform/problem.js';
import { Accounts } from '../sign-in/accounts.service.js';
import type { SignedIn } from '../sign-in/sign-ins.service.js';
import { type Challenge, challengeMilliseconds, PasskeyChallenges } from './passkey-challenges.service.js';
import type { AddPasskeyDto, RegistrationResponseDto } from './passkeys.dto.js';
import { type NewPasskey, Passkeys } from './passkeys.service.js';
import { userHandleOf } from './user-handle.js';

/** EdDSA, ES256 and RS256 (IANA COSE algorithms [M]): one of them is known to every authenticator. */
const algorithms = [-8, -7, -257];

/** What the library tells may hold what was sent. */
const longestReason = 300;

/** Lets whoever is signed in add a passkey. The library is loaded when it is needed, since it would make every start slower. */
@Injectable()
export class PasskeyRegistration {
  private readonly logger = new Logger('passkeys');

  constructor(
    private readonly accounts: Accounts,
    private readonly passkeys: Passkeys,
    private readonly challenges: PasskeyChallenges,
  ) {}

  /**
   * What the browser is to ask an authenticator for: a passkey that is found without a name, and used only after its
   * holder was verified, so that it is two factors by itself.
   * @throws Problem passkeys-unavailable
   */
  async options(
    browser: SignedIn,
    request: FastifyRequest,
    reply: FastifyReply,
  ): Promise<PublicKeyCredentialCreationOptionsJSON> {
    const account = await this.accounts.get(browser.accountId);
    const name = await this.accounts.nameOf(account);
    const own = await this.passkeys.of(account.id);
    const { challenge, relyingParty } = await this.challenges.make(
      'registration',
      request,
      reply,
      browser.signInId,
    );
    const { generateRegistrationOptions } = await import('@simplewebauthn/server');
    return generateRegistrationOptions({
      rpName: 'Lotward',
      rpID: relyingParty.id,
      userID: userHandleOf(account.id),
      userName: name,
      userDisplayName: name,
      challenge: Buffer.from(challenge, 'base64url'),
      timeout: challengeMilliseconds,
      attestationType: 'none',
      authenticatorSelection: { residentKey: 'required', userVerification: 'required' },
      supportedAlgorithmIDs: algorithms,
      excludeCredentials: own
        .filter((passkey) => passkey.relyingParty === relyingParty.id)
        .map(({ credentialId, transports }) => ({ id: credentialId, transports })),
    });
  }

  /** @throws Problem unusable-passkey; already-exists */
  async add(browser: SignedIn, dto: AddPasskeyDto, request: FastifyRequest): Promise<string> {
    const challenge = await this.challenges.take('registration', request, browser.signInId);
    if (!challenge) throw unusable('Its time is over, or another page asked for one meanwhile.');
    const made = await this.verified(dto.credential, challenge);
    return this.passkeys.add(await this.accounts.get(browser.accountId), dto.name, made);
  }

  private async verified(
    response: RegistrationResponseDto,
    { challenge, relyingParty }: Challenge,
  ): Promise<NewPasskey> {
    try {
      const { verifyRegistrationResponse } = await import('@simplewebauthn/server');
      const { decodeAttestationObject } = await import('@simplewebauthn/server/helpers');
      const { attestationObject } = response.response;
      refuseCertificates(
        decodeAttestationObject(new Uint8Array(Buffer.from(attestationObject, 'base64url'))),
      );
      const { verified, registrationInfo } = await verifyRegistrationResponse({
        response: { ...response, clientExtensionResults: {} },
        expectedChallenge: challenge,
        expectedOrigin: relyingParty.origin,
        expectedRPID: relyingParty.id,
        requireUserVerification: true,
        supportedAlgorithmIDs: algorithms,
      });
      if (verified) {
        const { id, publicKey, counter } = registrationInfo.credential;
        return {
          credentialId: id,
          publicKey: Buffer.from(publicKey).toString('base64url'),
          relyingParty: relyingParty.id,
          transports: response.response.transports ?? [],
          counter,
        };
      }
    } catch (error) {
      this.logger.warn(`A passkey was not added: ${String(error).slice(0, longestReason)}`);
    }
    throw unusable('What the authenticator sent does not fit what was asked of it.');
  }
}

/**
 * Certificates of authenticators are not asked for, and looking at them could make the service call the address that
 * stands in one for its revocations. What an authenticator signs with the new key itself may come unasked.
 */
function refuseCertificates(attestation: AttestationObject): void {
  const form = attestation.get('fmt');
  if (form === 'none' || (form === 'packed' && attestation.get('attStmt').get('x5c') === undefined)) return;
  throw new Error(`It brings an attestation "${form}", which was not asked for.`);
}

function unusable(why: string): Problem {
  return new Problem(400, 'unusable-passkey', `The passkey was not added. ${why} Start again.`);
}
