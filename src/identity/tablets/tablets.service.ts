import { Injectable } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { IsNull } from 'typeorm';
import type { Actor } from '../../platform/actor.js';
import { Database } from '../../platform/database/database.js';
import { Transactions } from '../../platform/database/transactions.js';
import { notFound, Problem } from '../../platform/problem.js';
import { BrowserSignIns } from '../sign-in/browser-sign-ins.service.js';
import { CredentialUses } from '../sign-in/credential-uses.service.js';
import { OwnCookies } from '../sign-in/own-cookies.service.js';
import { Secrets } from '../sign-in/secrets.service.js';
import { SignInCookies } from '../sign-in/sign-in-cookies.service.js';
import { SignIns } from '../sign-in/sign-ins.service.js';
import { Tablet } from './tablet.entity.js';
import type { EnrolTabletDto, RenameTabletDto } from './tablets.dto.js';
import type { TabletView } from './tablets.views.js';

/** Browsers keep no cookie longer. It is set anew whenever the tablet is used. */
const cookieLifeSeconds = 400 * 86_400;
const mostListed = 200;

/** The tablets of studios. The browser of an enrolled one holds a secret, by which the service knows it again. */
@Injectable()
export class Tablets {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly secrets: Secrets,
    private readonly cookies: OwnCookies,
    private readonly signInCookies: SignInCookies,
    private readonly browserSignIns: BrowserSignIns,
    private readonly signIns: SignIns,
    private readonly uses: CredentialUses,
  ) {}

  /** The enrolled tablet a request comes from; undefined when it comes from none. */
  async here(request: FastifyRequest): Promise<Tablet | undefined> {
    const secret = this.cookies.read(request, 'tablet');
    if (secret === undefined) return undefined;
    const found = await this.database.reader.manager.findOneBy(Tablet, {
      secretHash: this.secrets.hash(secret),
      revokedAt: IsNull(),
    });
    return found ?? undefined;
  }

  /** Notes that the tablet is in use, and lets its browser keep the secret for another year. */
  async keepUp(tablet: Tablet, request: FastifyRequest, reply: FastifyReply): Promise<void> {
    const secret = this.cookies.read(request, 'tablet');
    if (secret !== undefined) this.cookies.set(reply, 'tablet', secret, cookieLifeSeconds);
    await this.uses.note(tablet.id);
  }

  /**
   * Makes the browser of the request a tablet of the studio. Whoever did that is signed out there: from now on the browser
   * is for all.
   * @throws Problem already-exists when it is one already
   */
  async enrol(
    actor: Actor,
    dto: EnrolTabletDto,
    request: FastifyRequest,
    reply: FastifyReply,
  ): Promise<TabletView> {
    const here = await this.here(request);
    if (here && here.id !== dto.id) {
      throw new Problem(
        409,
        'already-exists',
        `This browser is an enrolled tablet already, ${here.id}. Revoke that one first.`,
      );
    }
    const secret = await this.secrets.of('tablet', `${actor.studioId} ${dto.id}`);
    const enrolled = await this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'identity.enrol-tablet',
        subject: { kind: 'tablet', id: dto.id },
        // Who asks belongs to it: what somebody else enrolled is not given to them.
        content: { ...dto, maker: actor.personId },
      },
      async (transaction) => {
        const tablet: Tablet = {
          studioId: actor.studioId,
          id: dto.id,
          name: dto.name,
          secretHash: this.secrets.hash(secret),
          version: 1,
          createdAt: transaction.recordedAt,
          revokedAt: null,
        };
        await transaction.insert(Tablet, tablet);
        return viewOf(tablet, null);
      },
    );
    await this.browserSignIns.end(request);
    this.signInCookies.clear(reply);
    this.cookies.set(reply, 'tablet', secret, cookieLifeSeconds);
    return enrolled;
  }

  /** The newest first; those revoked stay listed. */
  async list(actor: Actor): Promise<TabletView[]> {
    const tablets = await this.database.reader.manager.find(Tablet, {
      where: { studioId: actor.studioId },
      order: { createdAt: 'DESC', id: 'DESC' },
      take: mostListed,
    });
    const lastUses = await this.uses.lastOf(tablets.map(({ id }) => id));
    return tablets.map((tablet) => viewOf(tablet, lastUses.get(tablet.id) ?? null));
  }

  async rename(actor: Actor, tabletId: string, dto: RenameTabletDto): Promise<TabletView> {
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'identity.rename-tablet',
        subject: { kind: 'tablet', id: tabletId },
        content: { tabletId, ...dto },
      },
      async (transaction) => {
        const key = { studioId: actor.studioId, id: tabletId };
        const tablet = await transaction.change(Tablet, 'tablet', key, dto.version, { name: dto.name });
        return viewOf(tablet, null);
      },
    );
  }

  /**
   * Revokes a tablet and ends what is signed in on it, at once.
   * @throws Problem not-found; wrong-state when it was revoked already
   */
  async revoke(actor: Actor, tabletId: string, requestId: string): Promise<TabletView> {
    return this.transactions.write(
      actor,
      {
        id: requestId,
        action: 'identity.revoke-tablet',
        subject: { kind: 'tablet', id: tabletId },
        content: { tabletId },
      },
      async (transaction) => {
        const key = { studioId: actor.studioId, id: tabletId };
        const known = await transaction.manager.findOneBy(Tablet, key);
        if (!known) throw notFound('tablet', tabletId);
        if (known.revokedAt !== null) {
          throw new Problem(
            409,
            'wrong-state',
            'This tablet was revoked already; nothing more is to be done.',
          );
        }
        const { recordedAt: revokedAt } = transaction;
        const tablet = await transaction.change(Tablet, 'tablet', key, known.version, { revokedAt });
        await this.signIns.endOnTabletWithin(transaction.read, revokedAt, key);
        return viewOf(tablet, null);
      },
    );
  }
}

function viewOf({ id, name, createdAt, revokedAt, version }: Tablet, lastUsedAt: string | null): TabletView {
  return { id, name, createdAt, revokedAt, lastUsedAt, version };
}
