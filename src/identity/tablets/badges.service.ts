import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/actor.js';
import { Database } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Transactions } from '../../platform/database/transactions.js';
import { notFound, Problem } from '../../platform/problem.js';
import { localDay } from '../local-day.js';
import { refuseBeyondOwnRole } from '../own-role.service.js';
import { People } from '../people.service.js';
import { roleMay } from '../permissions.js';
import { Person } from '../person.entity.js';
import { CredentialUses } from '../sign-in/credential-uses.service.js';
import { Secrets } from '../sign-in/secrets.service.js';
import { Studio } from '../studio.entity.js';
import { BadgeDrawing } from './badge-drawing.service.js';
import { badgeText } from './badge-text.js';
import { TabletCredentials } from './tablet-credentials.service.js';
import type { BadgeView, WithdrawnBadgeView } from './tablets.views.js';

const mostBadges = 500;

/** Badges: symbols by which people are known on the tablets of a studio. What is printed is kept nowhere. */
@Injectable()
export class Badges {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly people: People,
    private readonly secrets: Secrets,
    private readonly credentials: TabletCredentials,
    private readonly uses: CredentialUses,
    private readonly drawing: BadgeDrawing,
  ) {}

  /**
   * Makes a badge for a person; the one they had works no more.
   * @returns a PDF, the same one for a repeated request
   * @throws Problem not-found; not-allowed for who may do more; wrong-state when they cannot sign in or do no tray work
   */
  async print(actor: Actor, personId: string, requestId: string): Promise<Buffer> {
    const text = badgeText(await this.secrets.bytesOf('badge', `${actor.studioId} ${requestId}`));
    const { createdAt } = await this.transactions.write(
      actor,
      {
        id: requestId,
        action: 'identity.make-badge',
        subject: { kind: 'person', id: personId },
        // Who asks belongs to it: what somebody else asked for is not repeated to them, badge and all.
        content: { personId, maker: actor.personId },
      },
      async (transaction) => {
        const person = await requirePerson(transaction, personId);
        await refuseBeyondOwnRole(transaction, actor.personId, [person.role]);
        refuseUnableToUse(person);
        const secretHash = this.secrets.hash(text);
        const made = { id: requestId, person, kind: 'badge', secretHash } as const;
        return { createdAt: (await this.credentials.replace(transaction, made)).createdAt };
      },
    );
    const names = await this.people.namesOf(actor.studioId, [personId]);
    const studio = await this.database.reader.manager.findOneByOrFail(Studio, { id: actor.studioId });
    return this.drawing.draw({
      text,
      name: names.get(personId) ?? '',
      studioName: studio.name,
      printedOn: localDay(createdAt, studio.timeZone),
    });
  }

  /** Those that work. */
  async list(actor: Actor): Promise<BadgeView[]> {
    const badges = await this.credentials.all(actor.studioId, 'badge', mostBadges);
    const lastUses = await this.uses.lastOf(badges.map(({ id }) => id));
    return badges.map(({ id, personId, createdAt }) => ({
      id,
      personId,
      createdAt,
      lastUsedAt: lastUses.get(id) ?? null,
    }));
  }

  /**
   * Withdraws the badge of a person, and signs them out where they came in with it.
   * @throws Problem not-found; not-allowed for who may do more; wrong-state when they have none
   */
  async withdraw(actor: Actor, personId: string, requestId: string): Promise<WithdrawnBadgeView> {
    return this.transactions.write(
      actor,
      {
        id: requestId,
        action: 'identity.withdraw-badge',
        subject: { kind: 'person', id: personId },
        content: { personId },
      },
      async (transaction) => {
        const person = await requirePerson(transaction, personId);
        await refuseBeyondOwnRole(transaction, actor.personId, [person.role]);
        const ended = await this.credentials.end(transaction, person, 'badge');
        if (ended) return { id: requestId };
        throw new Problem(409, 'wrong-state', 'This person has no badge; nothing more is to be done.');
      },
    );
  }
}

async function requirePerson(transaction: Transaction, id: string): Promise<Person> {
  const person = await transaction.manager.findOneBy(Person, { studioId: transaction.studioId, id });
  if (person) return person;
  throw notFound('person', id);
}

/**
 * Badges and PINs are for people who sign in and work trays.
 * @throws Problem wrong-state
 */
export function refuseUnableToUse({ state, accountId, role }: Person): void {
  if (state !== 'active') throw new Problem(409, 'wrong-state', 'This person works here no more.');
  if (accountId === null) {
    throw new Problem(
      409,
      'wrong-state',
      'This person has no account yet. Invite them first; they have one once they accepted.',
    );
  }
  if (roleMay(role, 'work the tray')) return;
  throw new Problem(409, 'wrong-state', `A tablet is for tray work, which is not given to the role ${role}.`);
}
