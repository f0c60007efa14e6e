import { fastifyCookie } from '@fastify/cookie';
import { Injectable } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { Config } from '../../platform/config.js';

export type CookieName = 'sign-in' | 'device' | 'tablet' | 'passkey';

/**
 * The cookies of the service. No script can read them, and no other site can make a browser send them. Over HTTPS their
 * names carry the prefix `__Host-`, which binds them to this very host (RFC 6265bis [M]; OWASP ASVS 5.0, V3.3 [P]).
 */
@Injectable()
export class OwnCookies {
  constructor(private readonly config: Config) {}

  read(request: FastifyRequest, name: CookieName): string | undefined {
    return fastifyCookie.parse(request.headers.cookie ?? '')[this.fullName(name)];
  }

  set(reply: FastifyReply, name: CookieName, value: string, lifeSeconds: number): void {
    const fullName = this.fullName(name);
    const cookie = fastifyCookie.serialize(fullName, value, {
      path: '/',
      httpOnly: true,
      sameSite: 'strict',
      secure: this.config.isSecure,
      maxAge: lifeSeconds,
    });
    const earlier = reply.getHeader('set-cookie');
    const kept = (Array.isArray(earlier) ? earlier : earlier === undefined ? [] : [String(earlier)]).filter(
      (each) => !each.startsWith(`${fullName}=`),
    );
    reply.removeHeader('set-cookie');
    void reply.header('set-cookie', [...kept, cookie]);
  }

  clear(reply: FastifyReply, name: CookieName): void {
    this.set(reply, name, '', 0);
  }

  private fullName(name: CookieName): string {
    return `${this.config.isSecure ? '__Host-' : ''}lotward-${name}`;
  }
}
