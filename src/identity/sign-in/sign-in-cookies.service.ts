import { timingSafeEqual } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { ServiceKey } from '../../platform/encryption/service-key.service.js';
import { OwnCookies } from './own-cookies.service.js';
import { Secrets } from './secrets.service.js';

const deviceLifeSeconds = 365 * 86_400;
const browserLifeSeconds = 7 * 86_400;
/** Accounts a shared device is remembered for. */
const mostTags = 8;

/** What a browser keeps of signing in: who is signed in, and to what accounts it was signed in before. */
@Injectable()
export class SignInCookies {
  constructor(
    private readonly cookies: OwnCookies,
    private readonly serviceKey: ServiceKey,
    private readonly secrets: Secrets,
  ) {}

  secretOf(request: FastifyRequest): string | undefined {
    return this.cookies.read(request, 'sign-in');
  }

  set(reply: FastifyReply, secret: string): void {
    this.cookies.set(reply, 'sign-in', secret, browserLifeSeconds);
  }

  clear(reply: FastifyReply): void {
    this.cookies.clear(reply, 'sign-in');
  }

  /** The device's own name, when it was signed in to this account before; else null. */
  async knownDevice(request: FastifyRequest, accountId: string): Promise<string | null> {
    const { device, tags } = this.deviceOf(request);
    if (device === undefined) return null;
    const tag = Buffer.from(await this.tag(device, accountId));
    const known = tags.some((each) => {
      const given = Buffer.from(each);
      return given.length === tag.length && timingSafeEqual(given, tag);
    });
    return known ? device : null;
  }

  /** Remembers on the device that it was signed in to the account. */
  async rememberDevice(request: FastifyRequest, reply: FastifyReply, accountId: string): Promise<void> {
    const { device = this.secrets.fresh(), tags } = this.deviceOf(request);
    const tag = await this.tag(device, accountId);
    const kept = [tag, ...tags.filter((each) => each !== tag)].slice(0, mostTags);
    this.cookies.set(reply, 'device', [device, ...kept].join('.'), deviceLifeSeconds);
  }

  private deviceOf(request: FastifyRequest): { device: string | undefined; tags: string[] } {
    const [device, ...tags] = (this.cookies.read(request, 'device') ?? '').split('.');
    return { device: device === '' ? undefined : device, tags: tags.slice(0, mostTags) };
  }

  private async tag(device: string, accountId: string): Promise<string> {
    return (await this.serviceKey.digest('known device', `${device} ${accountId}`)).toString('base64url');
  }
}
