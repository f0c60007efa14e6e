import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import { type Actor, systemActor } from '../../platform/actor.js';
import { Database } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { DataKeys, type FieldSealer } from '../../platform/encryption/data-keys.service.js';
import { ServiceKey } from '../../platform/encryption/service-key.service.js';
import { Problem } from '../../platform/problem.js';
import { Person } from '../person.entity.js';
import { Account } from './account.entity.js';

const namePlace = (accountId: string) => `account.sign_in_name:${accountId}`;

/** As people type it: case and outer or double spaces do not matter. */
export function foldSignInName(name: string): string {
  return name.normalize('NFKC').trim().replace(/\s+/g, ' ').toLowerCase();
}

/** Those who sign in. */
@Injectable()
export class Accounts {
  constructor(
    private readonly database: Database,
    private readonly dataKeys: DataKeys,
    private readonly serviceKey: ServiceKey,
  ) {}

  async byName(signInName: string): Promise<Account | null> {
    return this.database.reader.manager.findOneBy(Account, {
      signInNameHash: await this.nameHash(signInName),
    });
  }

  async get(accountId: string): Promise<Account> {
    return this.database.reader.manager.findOneByOrFail(Account, { id: accountId });
  }

  /**
   * The account acting for itself.
   * @param studioId where it is recorded; left out, for what is outside the work of any studio: where it first signed in
   */
  async actorOf(account: Account, studioId = account.studioId): Promise<Actor> {
    const [studio] = await this.database.read<{
      id: string;
      chainId: string;
      timeZone: string;
      personId: string | null;
    }>(
      `SELECT studio.id, studio.chain_id AS "chainId", studio.time_zone AS "timeZone", person.id AS "personId"
       FROM studio LEFT JOIN person ON person.studio_id = studio.id AND person.account_id = $2 WHERE studio.id = $1`,
      [studioId, account.id],
    );
    if (!studio) throw new Error(`The account ${account.id} belongs to no studio.`);
    return { ...systemActor(studio), personId: studio.personId, via: 'api' };
  }

  async nameOf(account: Account): Promise<string> {
    const sealer = await this.sealerOf(account);
    return sealer.open(account.signInNameSealed, namePlace(account.id)) ?? '';
  }

  /** Seals what belongs to the account, such as the names of its passkeys. */
  async sealerOf({ studioId, id, dataKeyId }: Account): Promise<FieldSealer> {
    const sealer = await this.dataKeys.sealer(studioId, dataKeyId);
    if (!sealer) throw new Error(`The key of the account ${id} is gone.`);
    return sealer;
  }

  /** Lets one transaction at a time decide how the account signs in, and shows it as it is then. */
  async lock(transaction: Transaction, accountId: string): Promise<Account> {
    if (transaction.engine === 'postgres') {
      await transaction.query('SELECT id FROM account WHERE id = $1 FOR UPDATE', [accountId]);
    }
    return transaction.manager.findOneByOrFail(Account, { id: accountId });
  }

  /** @throws Problem already-exists when the name is taken */
  async make(
    transaction: Transaction,
    given: { signInName: string; passwordHash: string | null },
  ): Promise<Account> {
    const signInNameHash = await this.nameHash(given.signInName);
    const taken = await transaction.query('SELECT id FROM account WHERE sign_in_name_hash = $1', [
      signInNameHash,
    ]);
    if (taken.length > 0) {
      throw new Problem(409, 'already-exists', 'This sign-in name is taken. Choose another.');
    }
    const id = uuidv7();
    const sealer = await this.dataKeys.make(transaction);
    const account: Account = {
      studioId: transaction.studioId,
      id,
      dataKeyId: sealer.dataKeyId,
      signInNameSealed: sealer.seal(given.signInName.trim(), namePlace(id)) ?? '',
      signInNameHash,
      passwordHash: given.passwordHash,
      version: 1,
      createdAt: transaction.recordedAt,
    };
    await transaction.insert(Account, account);
    return account;
  }

  /** @param passwordHash null: the account signs in without one */
  async changePassword(
    transaction: Transaction,
    account: Account,
    passwordHash: string | null,
  ): Promise<void> {
    const { studioId, id, version } = account;
    await transaction.change(Account, 'account', { studioId, id }, version, { passwordHash });
  }

  /** Lets an account act as a person of the transaction's studio. */
  async join(transaction: Transaction, person: Person, accountId: string): Promise<void> {
    const { studioId, id, version } = person;
    await transaction.change(Person, 'person', { studioId, id }, version, { accountId });
  }

  private async nameHash(signInName: string): Promise<string> {
    return (await this.serviceKey.digest('sign-in name', foldSignInName(signInName))).toString('hex');
  }
}
