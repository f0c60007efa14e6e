import { timingSafeEqual } from 'node:crypto';
import { fastifyCookie } from '@fastify/cookie';
import { Injectable } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { Config } from '../../platform/config.js';
import { ServiceKey } from '../../platform/encryption/service-key.service.js';
import { Secrets } from './secrets.service.js';

const deviceLifeSeconds = 365 * 86_400;
const browserLifeSeconds = 7 * 86_400;
/** Accounts a shared device is remembered for. */
const mostTags = 8;

/**
 * The cookies of signing in: who is signed in, and by what devices an account was signed in to before. No script can read
 * them, and no other site can make a browser send them. Over HTTPS their names carry the prefix `__Host-`, which binds
 * them to this very host (RFC 6265bis [M]).
 */
@Injectable()
export class SignInCookies {
  private readonly signIn: string;
  private readonly device: string;

  constructor(
    private readonly config: Config,
    private readonly serviceKey: ServiceKey,
    private readonly secrets: Secrets,
  ) {
    const prefix = config.isSecure ? '__Host-' : '';
    this.signIn = `${prefix}lotward-sign-in`;
    this.device = `${prefix}lotward-device`;
  }

  secretOf(request: FastifyRequest): string | undefined {
    return cookiesOf(request)[this.signIn];
  }

  set(reply: FastifyReply, secret: string): void {
    this.add(reply, this.signIn, secret, browserLifeSeconds);
  }

  clear(reply: FastifyReply): void {
    this.add(reply, this.signIn, '', 0);
  }

  /** The device's own name, when it was signed in to this account before; else null. */
  async knownDevice(request: FastifyRequest, accountId: string): Promise<string | null> {
    const { device, tags } = this.deviceOf(request);
    if (device === undefined) return null;
    const tag = Buffer.from(await this.tag(device, accountId));
    const known = tags.some((each) => each.length === tag.length && timingSafeEqual(Buffer.from(each), tag));
    return known ? device : null;
  }

  /** Remembers on the device that it was signed in to the account. */
  async rememberDevice(request: FastifyRequest, reply: FastifyReply, accountId: string): Promise<void> {
    const { device = this.secrets.fresh(), tags } = this.deviceOf(request);
    const tag = await this.tag(device, accountId);
    const kept = [tag, ...tags.filter((each) => each !== tag)].slice(0, mostTags);
    this.add(reply, this.device, [device, ...kept].join('.'), deviceLifeSeconds);
  }

  private deviceOf(request: FastifyRequest): { device: string | undefined; tags: string[] } {
    const [device, ...tags] = (cookiesOf(request)[this.device] ?? '').split('.');
    return { device: device === '' ? undefined : device, tags: tags.slice(0, mostTags) };
  }

  private async tag(device: string, accountId: string): Promise<string> {
    return (await this.serviceKey.digest('known device', `${device} ${accountId}`)).toString('base64url');
  }

  private add(reply: FastifyReply, name: string, value: string, maxAge: number): void {
    const cookie = fastifyCookie.serialize(name, value, {
      path: '/',
      httpOnly: true,
      sameSite: 'strict',
      secure: this.config.isSecure,
      maxAge,
    });
    const earlier = reply.getHeader('set-cookie');
    const kept = (Array.isArray(earlier) ? earlier : earlier === undefined ? [] : [String(earlier)]).filter(
      (each) => !each.startsWith(`${name}=`),
    );
    reply.removeHeader('set-cookie');
    void reply.header('set-cookie', [...kept, cookie]);
  }
}

function cookiesOf(request: FastifyRequest): Record<string, string | undefined> {
  return fastifyCookie.parse(request.headers.cookie ?? '');
}
