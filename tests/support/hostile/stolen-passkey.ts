import { createHash, generateKeyPairSync, randomBytes } from 'node:crypto';
import { v7 as uuidv7 } from 'uuid';
import { Passkey } from '../../../src/identity/passkeys/passkey.entity.js';
import { userHandleOf } from '../../../src/identity/passkeys/user-handle.js';
import { Person } from '../../../src/identity/person.entity.js';
import { systemActor } from '../../../src/platform/actor.js';
import { inTransaction } from '../bare-stock.js';
import type { SeededRandom } from '../random.js';
import type { RunningService } from '../service.js';
import { cookiesOf, type SignedInPerson } from '../signing-in.js';
import { Store } from '../store.js';
import type { Sample } from './hostile-requests.js';

const base64url = (bytes: Uint8Array | string) => Buffer.from(bytes).toString('base64url');

/** An ES256 key as authenticators give it (RFC 9052, section 7 [M]): a CBOR map of kind, algorithm, curve, x and y. */
function coseKey(): Buffer {
  const { x = '', y = '' } = generateKeyPairSync('ec', { namedCurve: 'P-256' }).publicKey.export({
    format: 'jwk',
  });
  const coordinate = (label: number, text: string) =>
    Buffer.concat([Buffer.from([label, 0x58, 0x20]), Buffer.from(text, 'base64url')]);
  return Buffer.concat([
    Buffer.from([0xa5, 0x01, 0x02, 0x03, 0x26, 0x20, 0x01]),
    coordinate(0x21, x),
    coordinate(0x22, y),
  ]);
}

/** Of authenticator data: the host, that the holder was there and verified, and how often it was used. */
const authenticatorData = (flags = 0x05) =>
  Buffer.concat([
    createHash('sha256').update('localhost').digest(),
    Buffer.from([flags]),
    Buffer.from([0, 0, 0, 9]),
  ]);

/** Begins like what an authenticator sends, and then is nested, cut off, or endless. */
function strangeCbor(random: SeededRandom): Buffer {
  const data = authenticatorData(random.pick([0x05, 0x45, 0xc5, 0xff]));
  const attestation = Buffer.concat([
    Buffer.from('a363666d74646e6f6e656761747453746d74a068617574684461746158', 'hex'),
    Buffer.from([data.length]),
    data,
  ]);
  return random.pick([
    attestation,
    attestation.subarray(0, random.between(1, attestation.length - 1)),
    Buffer.alloc(5_000, 0x81),
    Buffer.alloc(5_000, 0xa1),
    Buffer.from('5b7fffffffffffffff', 'hex'),
    Buffer.from('9f9f9fff', 'hex'),
    Buffer.from('bb7fffffffffffffff', 'hex'),
    Buffer.from('a1695f5f70726f746f5f5fa0', 'hex'),
    randomBytes(200),
  ]);
}

/**
 * The public part of somebody's passkey, which a stranger may know: answers by it that fit the challenge and fail only where
 * the authenticator's word is read.
 */
export class StolenPasskey {
  private constructor(
    private readonly service: RunningService,
    private readonly credentialId: string,
    private readonly userHandle: string,
  ) {}

  /** Gives a person a passkey, whose row is written as the service would write it. */
  static async of(service: RunningService, { personId }: SignedInPerson): Promise<StolenPasskey> {
    const { studioId } = service;
    const credentialId = base64url(randomBytes(16));
    const store = await Store.open(service.dataFolder, service.databaseUrl);
    try {
      const person = await store.database.reader.manager.findOneByOrFail(Person, { studioId, id: personId });
      const accountId = person.accountId ?? '';
      const actor = systemActor({ id: studioId, chainId: '', timeZone: 'UTC' });
      await inTransaction(store, actor, (transaction) =>
        transaction.insert(Passkey, {
          studioId,
          id: uuidv7(),
          accountId,
          credentialId,
          publicKey: base64url(coseKey()),
          relyingParty: 'localhost',
          transports: ['internal'],
          nameSealed: 'sealed',
          version: 1,
          createdAt: transaction.recordedAt,
          suspectedAt: null,
          removedAt: null,
        }),
      );
      return new StolenPasskey(service, credentialId, base64url(userHandleOf(accountId)));
    } finally {
      await store.close();
    }
  }

  /** To sign in with. */
  async wrongAnswer(random: SeededRandom): Promise<Pick<Sample, 'body' | 'headers'>> {
    const { challenge, cookie } = await this.asked('/sign-in/passkey/options', '');
    const signed = random.pick([authenticatorData(), authenticatorData(0xc5), strangeCbor(random)]);
    const response = {
      clientDataJSON: this.clientData(random, 'webauthn.get', challenge),
      authenticatorData: base64url(signed),
      signature: base64url(random.pick([randomBytes(70), strangeCbor(random), Buffer.from('3000', 'hex')])),
      userHandle: this.userHandle,
    };
    return { body: { credential: this.credential(response) }, headers: { cookie } };
  }

  /** To be added by whoever is signed in by the cookie. */
  async wrongRegistration(
    random: SeededRandom,
    signedInBy: string,
  ): Promise<Pick<Sample, 'body' | 'headers'>> {
    const { challenge, cookie } = await this.asked('/me/passkeys/options', signedInBy);
    const response = {
      clientDataJSON: this.clientData(random, 'webauthn.create', challenge),
      attestationObject: base64url(strangeCbor(random)),
      transports: ['internal', '__proto__'],
    };
    return {
      body: { name: 'Stolen', credential: this.credential(response) },
      headers: { cookie: `${signedInBy}; ${cookie}` },
    };
  }

  private credential(response: object): object {
    const { credentialId: id } = this;
    return { id, rawId: id, type: 'public-key', clientExtensionResults: {}, response };
  }

  private async asked(path: string, cookie: string): Promise<{ challenge: string; cookie: string }> {
    const answer = await fetch(`${this.service.url}/api/v1${path}`, { method: 'POST', headers: { cookie } });
    if (answer.status !== 200)
      throw new Error(`${path} was answered ${answer.status}: ${await answer.text()}`);
    const { challenge } = (await answer.json()) as { challenge: string };
    return { challenge, cookie: cookiesOf(answer) };
  }

  /** Mostly right, so that what comes after it is read. */
  private clientData(random: SeededRandom, type: string, challenge: string): string {
    const { url: origin } = this.service;
    const right = JSON.stringify({ type, challenge, origin, crossOrigin: false });
    return base64url(random.pick([right, right, right, 'null', '{"type":', '"', `{"__proto__":${right}}`]));
  }
}
