import { createHash, randomBytes } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import { ServiceKey } from '../../platform/encryption/service-key.service.js';

export type DerivedSecret =
  | 'one-time link'
  | 'API token'
  | 'tablet'
  | 'badge'
  | 'calendar address'
  | 'webhook';

/** Secrets that people or programs present. Only their hashes are kept: each has 256 bits, which nobody tries out. */
@Injectable()
export class Secrets {
  constructor(private readonly serviceKey: ServiceKey) {}

  fresh(): string {
    return randomBytes(32).toString('base64url');
  }

  /**
   * The secret of something that is made by a request of this id. It is derived, so that a repeated request can be
   * answered alike although the answer that is kept for it holds no secret.
   */
  async of(purpose: DerivedSecret, id: string): Promise<string> {
    return (await this.bytesOf(purpose, id)).toString('base64url');
  }

  /** The same as 32 bytes. */
  async bytesOf(purpose: DerivedSecret, id: string): Promise<Buffer> {
    return this.serviceKey.digest(purpose, id);
  }

  /** What is kept of a secret. */
  hash(secret: string): string {
    return createHash('sha256').update(secret, 'utf8').digest('hex');
  }
}
