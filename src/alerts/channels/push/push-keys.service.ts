import { createECDH } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import { ServiceKey } from '../../../platform/encryption/service-key.service.js';

/** A key pair on P-256 as push services want it: the point uncompressed, 65 bytes, the scalar 32; both base64url. */
export interface PushKeyPair {
  publicKey: string;
  privateKey: string;
}

/**
 * The pair by which push services know this service again (VAPID, RFC 8292). It is derived from the service's key, so that
 * nothing more has to be kept, and a restored service goes on reaching its browsers.
 */
@Injectable()
export class PushKeys {
  private known: PushKeyPair | undefined;

  constructor(private readonly serviceKey: ServiceKey) {}

  async pair(): Promise<PushKeyPair> {
    this.known ??= await this.derive();
    return this.known;
  }

  private async derive(): Promise<PushKeyPair> {
    const curve = createECDH('prime256v1');
    // All but four thousand millionths of a thousand millionth of the numbers of 32 bytes are keys.
    for (let attempt = 0; ; attempt += 1) {
      const scalar = await this.serviceKey.digest('web push', `key ${attempt}`);
      try {
        curve.setPrivateKey(scalar);
      } catch {
        continue;
      }
      return { publicKey: curve.getPublicKey('base64url'), privateKey: scalar.toString('base64url') };
    }
  }
}
