import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/actor.js';
import { Clock } from '../../platform/clock.js';
import { Config } from '../../platform/config.js';
import { Database, placeholders } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Transactions } from '../../platform/database/transactions.js';
import { notFound, Problem } from '../../platform/problem.js';
import { refuseBeyondOwnRole } from '../own-role.service.js';
import { permissionTable } from '../permissions.js';
import { Person } from '../person.entity.js';
import { OneTimeLink } from './one-time-link.entity.js';
import { Secrets } from './secrets.service.js';

const hour = 3_600_000;
const lives = { 'set-up': hour, invitation: 72 * hour } as const;
const pages = { 'set-up': 'set-up', invitation: 'invitation' } as const;

export interface MadeLink {
  id: string;
  expiresAt: string;
  /** Its secret stands behind the `#`, which browsers send to nobody and no log holds. */
  link: string;
}

/** Links that let somebody sign in as a person once, and choose how they sign in from then on. */
@Injectable()
export class OneTimeLinks {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly clock: Clock,
    private readonly config: Config,
    private readonly secrets: Secrets,
  ) {}

  /** Makes a link; earlier ones for the same person work no more. */
  async make(
    actor: Actor,
    personId: string,
    purpose: OneTimeLink['purpose'],
    requestId: string,
  ): Promise<MadeLink> {
    const secret = await this.secrets.of('one-time link', `${actor.studioId} ${requestId}`);
    const made = await this.transactions.write(
      actor,
      {
        id: requestId,
        action: `identity.make-${purpose}-link`,
        subject: { kind: 'person', id: personId },
        // Who asks belongs to it: what somebody else asked for is not repeated to them, link and all.
        content: { personId, maker: actor.personId },
      },
      async (transaction) => {
        const key = { studioId: actor.studioId, id: personId };
        const person = await transaction.manager.findOneBy(Person, key);
        if (!person) throw notFound('person', personId);
        if (person.state !== 'active') {
          throw new Problem(409, 'wrong-state', 'This person works here no more; nobody signs in as them.');
        }
        await this.refuseBeyondMaker(transaction, person, actor.personId);
        await this.endEarlier(transaction, personId);
        const expiresAt = new Date(Date.parse(transaction.recordedAt) + lives[purpose]).toISOString();
        await transaction.insert(OneTimeLink, {
          studioId: actor.studioId,
          id: requestId,
          personId,
          purpose,
          secretHash: this.secrets.hash(secret),
          createdAt: transaction.recordedAt,
          expiresAt,
          endedAt: null,
        });
        return { id: requestId, expiresAt };
      },
    );
    return { ...made, link: `${this.config.publicUrl}/${pages[purpose]}#${secret}` };
  }

  /**
   * The link that has this secret. Wrong, used and expired ones are not told apart.
   * @throws Problem unusable-link
   */
  async find(purpose: OneTimeLink['purpose'], secret: string): Promise<OneTimeLink> {
    const link = await this.database.reader.manager.findOneBy(OneTimeLink, {
      secretHash: this.secrets.hash(secret),
    });
    if (!link || link.purpose !== purpose || link.endedAt !== null || this.clock.now() > link.expiresAt) {
      throw unusable();
    }
    return link;
  }

  /** @throws Problem unusable-link when somebody else used it meanwhile; wrong-state when it reaches too far by now */
  async use(transaction: Transaction, link: OneTimeLink): Promise<void> {
    const { studioId, id } = link;
    const used = await transaction.update(
      OneTimeLink,
      { studioId, id, endedAt: null },
      { endedAt: transaction.recordedAt },
    );
    if (!used) throw unusable();
    const person = await transaction.manager.findOneByOrFail(Person, { studioId, id: link.personId });
    const [made] = await transaction.query<{ person_id: string | null }>(
      'SELECT person_id FROM accepted_request WHERE studio_id = $1 AND id = $2',
      [studioId, id],
    );
    await this.refuseBeyondMaker(transaction, person, made?.person_id ?? null);
  }

  /**
   * Keeps a link within what its maker may do:
   * - nobody makes one for themselves, which would be a lasting way in for whoever finds their browser open;
   * - nobody lets in who may do more than they, but for the first owner of a studio that was just added;
   * - who leads one studio does not get at an account by which somebody acts in another, unless they lead that one too.
   *
   * @param makerId the person who makes the link; null when it is made from the shell, where all can be done anyway
   */
  private async refuseBeyondMaker(
    transaction: Transaction,
    { id, accountId, role }: Person,
    makerId: string | null,
  ): Promise<void> {
    const { studioId } = transaction;
    if (makerId !== null && (await this.isOneself(transaction, makerId, { id, accountId }))) {
      throw new Problem(
        409,
        'wrong-state',
        'A link for yourself is made by another owner, or by the command `npm run cli -- sign-in-link`. Your password and passkeys are changed in your account.',
      );
    }
    if (role !== 'owner' || accountId !== null || (await this.hasOwnerWithAccount(transaction))) {
      await refuseBeyondOwnRole(transaction, makerId, [role]);
    }
    if (accountId === null) return;
    const own = await transaction.query('SELECT id FROM account WHERE studio_id = $1 AND id = $2', [
      studioId,
      accountId,
    ]);
    if (own.length === 0) {
      throw new Problem(
        409,
        'wrong-state',
        'This person signs in with an account of another studio. A new link for it is made there.',
      );
    }
    if (makerId === null) return;
    const leaders = permissionTable['manage people'];
    const beyond = await transaction.query(
      `SELECT theirs.id FROM person AS theirs
       WHERE theirs.account_id = $1 AND theirs.studio_id <> $2 AND theirs.state = 'active' AND NOT EXISTS (
         SELECT 1 FROM person AS maker JOIN person AS leader ON leader.account_id = maker.account_id
         WHERE maker.studio_id = $2 AND maker.id = $3 AND leader.studio_id = theirs.studio_id
           AND leader.state = 'active' AND leader.until IS NULL AND leader.role IN (${placeholders(leaders, 4)}))`,
      [accountId, studioId, makerId, ...leaders],
    );
    if (beyond.length === 0) return;
    throw new Problem(
      409,
      'wrong-state',
      'This person works in another studio too, with the same account. Only who leads every one of them makes a new link; or it is made by the command `npm run cli -- sign-in-link`.',
    );
  }

  private async isOneself(
    transaction: Transaction,
    makerId: string,
    { id, accountId }: Pick<Person, 'id' | 'accountId'>,
  ): Promise<boolean> {
    if (id === makerId) return true;
    const { studioId } = transaction;
    const maker = await transaction.manager.findOneBy(Person, { studioId, id: makerId });
    return accountId !== null && maker?.accountId === accountId;
  }

  private async hasOwnerWithAccount(transaction: Transaction): Promise<boolean> {
    const owners = await transaction.query(
      `SELECT id FROM person WHERE studio_id = $1 AND role = 'owner' AND account_id IS NOT NULL LIMIT 1`,
      [transaction.studioId],
    );
    return owners.length > 0;
  }

  /**
   * Ends in the caller's transaction what links an account can still be got at by.
   * @param accountId of the studio where the account is at home, for links are only made there
   */
  async endOfAccount(transaction: Transaction, accountId: string): Promise<void> {
    const people = await transaction.query<{ id: string }>(
      'SELECT id FROM person WHERE studio_id = $1 AND account_id = $2',
      [transaction.studioId, accountId],
    );
    for (const { id } of people) await this.endEarlier(transaction, id);
  }

  private async endEarlier(transaction: Transaction, personId: string): Promise<void> {
    const earlier = await transaction.query<{ id: string }>(
      'SELECT id FROM one_time_link WHERE studio_id = $1 AND person_id = $2 AND ended_at IS NULL',
      [transaction.studioId, personId],
    );
    await transaction.updateAll(
      OneTimeLink,
      earlier.map(({ id }) => id),
      { endedAt: transaction.recordedAt },
    );
  }
}

function unusable(): Problem {
  return new Problem(
    410,
    'unusable-link',
    'This link works no more: it was used, replaced by a newer one, or its time is over. Ask for a new one; the owner gets one by the command `npm run cli -- sign-in-link`.',
  );
}
