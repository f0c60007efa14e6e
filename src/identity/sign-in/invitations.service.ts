import { Injectable } from '@nestjs/common';
import { type Actor, systemActor } from '../../platform/actor.js';
import { Database } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Transactions } from '../../platform/database/transactions.js';
import { invalidField, Problem } from '../../platform/problem.js';
import { People } from '../people.service.js';
import { Person } from '../person.entity.js';
import { Studio } from '../studio.entity.js';
import { StudioChanges } from '../studio-changes.service.js';
import { Accounts } from './accounts.service.js';
import type { OneTimeLink } from './one-time-link.entity.js';
import { OneTimeLinks } from './one-time-links.service.js';
import { Passwords } from './passwords.service.js';
import type { AcceptInvitationDto, SetUpDto } from './sign-in.dto.js';
import type { InvitationView } from './sign-in.views.js';
import { SignIns } from './sign-ins.service.js';

/** Lets people come in by a one-time link: the first owner, those who were invited, and who lost a password. */
@Injectable()
export class Invitations {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly people: People,
    private readonly changes: StudioChanges,
    private readonly accounts: Accounts,
    private readonly links: OneTimeLinks,
    private readonly passwords: Passwords,
    private readonly signIns: SignIns,
  ) {}

  /** Whether nobody has an account yet, so that the first owner has still to come in. */
  async isSetUpOpen(): Promise<boolean> {
    return (await this.database.read('SELECT id FROM account LIMIT 1')).length === 0;
  }

  /**
   * Makes the first owner's account and names the studio.
   * @returns the new account's id
   * @throws Problem unusable-link, unusable-password, wrong-state when the set-up was done
   */
  async setUp(dto: SetUpDto): Promise<string> {
    const link = await this.links.find('set-up', dto.secret);
    const { studioId, personId } = link;
    const passwordHash = await this.passwords.hash(dto.password, [
      dto.signInName,
      dto.ownerName,
      dto.studioName,
    ]);
    const nameSealed = await this.people.sealName(studioId, personId, dto.ownerName);
    return this.carryOut(link, 'identity.set-up', async (transaction) => {
      const accounts = await transaction.query('SELECT id FROM account LIMIT 1');
      if (accounts.length > 0) {
        throw new Problem(
          409,
          'wrong-state',
          'The set-up was done already: sign in, or ask the owner for an invitation.',
        );
      }
      const studio = await transaction.manager.findOneByOrFail(Studio, { id: studioId });
      const changed = { name: dto.studioName, timeZone: dto.timeZone };
      await transaction.change(Studio, 'studio', { id: studioId }, studio.version, changed);
      if (studio.timeZone !== dto.timeZone) await this.changes.follow(transaction);
      const person = await transaction.manager.findOneByOrFail(Person, { studioId, id: personId });
      const renamed = await transaction.change(Person, 'person', { studioId, id: personId }, person.version, {
        nameSealed,
      });
      const account = await this.accounts.make(transaction, { signInName: dto.signInName, passwordHash });
      await this.accounts.join(transaction, renamed, account.id);
      return account.id;
    });
  }

  /** What the holder of an invitation is asked for. */
  async lookAt(secret: string): Promise<InvitationView> {
    const link = await this.links.find('invitation', secret);
    const [found] = await this.database.read<{ name: string; account_id: string | null }>(
      `SELECT studio.name, person.account_id FROM person JOIN studio ON studio.id = person.studio_id
       WHERE person.studio_id = $1 AND person.id = $2`,
      [link.studioId, link.personId],
    );
    return {
      asks: found?.account_id == null ? 'new account' : 'new password',
      studioName: found?.name ?? '',
      expiresAt: link.expiresAt,
    };
  }

  /**
   * Lets the person come in: with a new account, with a new password for the one they have, or with the account that is
   * signed in. A new password ends every sign-in of the account.
   * @returns the account's id
   */
  async accept(dto: AcceptInvitationDto, signedInAccountId: string | null): Promise<string> {
    const link = await this.links.find('invitation', dto.secret);
    const key = { studioId: link.studioId, id: link.personId };
    const { accountId } = await this.database.reader.manager.findOneByOrFail(Person, key);
    const known = accountId === null ? null : await this.accounts.get(accountId);
    const joins = known === null && dto.password === undefined ? signedInAccountId : null;
    if (joins === null && dto.password === undefined) {
      throw invalidField('password', 'A password is needed; only who is signed in already may leave it out');
    }
    if (known === null && joins === null && dto.signInName === undefined) {
      throw invalidField('signInName', 'A sign-in name is needed for a new account');
    }
    const name = known === null ? (dto.signInName ?? '') : await this.accounts.nameOf(known);
    const passwordHash = dto.password === undefined ? null : await this.passwords.hash(dto.password, [name]);
    return this.carryOut(link, 'identity.accept-invitation', async (transaction) => {
      const person = await transaction.manager.findOneByOrFail(Person, key);
      if (person.state !== 'active') throw new Problem(409, 'wrong-state', 'This person works here no more.');
      if (person.accountId !== accountId)
        throw new Problem(409, 'wrong-state', 'Someone accepted this meanwhile.');
      if (known !== null && passwordHash !== null) {
        await this.accounts.changePassword(transaction, known, passwordHash);
        await this.signIns.endAllWithin(transaction.read, transaction.recordedAt, known.id);
        return known.id;
      }
      if (joins !== null) await this.refuseSecondPerson(transaction, joins);
      const id =
        joins ??
        (await this.accounts.make(transaction, { signInName: dto.signInName ?? '', passwordHash })).id;
      await this.accounts.join(transaction, person, id);
      return id;
    });
  }

  private async refuseSecondPerson(transaction: Transaction, accountId: string): Promise<void> {
    const others = await transaction.query('SELECT id FROM person WHERE studio_id = $1 AND account_id = $2', [
      transaction.studioId,
      accountId,
    ]);
    if (others.length > 0) {
      throw new Problem(
        409,
        'already-exists',
        'You are a person of this studio already. Ask its owner to change that one instead.',
      );
    }
  }

  private async carryOut(
    link: OneTimeLink,
    action: string,
    work: (transaction: Transaction) => Promise<string>,
  ): Promise<string> {
    const actor = await this.actorOf(link);
    return this.transactions.write(
      actor,
      { id: null, action, subject: { kind: 'person', id: link.personId }, content: null },
      async (transaction) => {
        await this.links.use(transaction, link);
        return work(transaction);
      },
    );
  }

  private async actorOf({ studioId, personId }: OneTimeLink): Promise<Actor> {
    const studio = await this.database.reader.manager.findOneByOrFail(Studio, { id: studioId });
    return { ...systemActor(studio), personId, via: 'api' };
  }
}
