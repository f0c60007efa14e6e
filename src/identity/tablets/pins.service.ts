import { Injectable } from '@nestjs/common';
import argon2 from 'argon2';
import { v7 as uuidv7 } from 'uuid';
import type { Actor } from '../../platform/actor.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Transactions } from '../../platform/database/transactions.js';
import { ServiceKey } from '../../platform/encryption/service-key.service.js';
import { notFound, Problem } from '../../platform/problem.js';
import { Person } from '../person.entity.js';
import { argon2Parameters } from '../sign-in/passwords.service.js';
import type { SignedIn } from '../sign-in/sign-ins.service.js';
import { Standings } from '../sign-in/standings.service.js';
import { refuseUnableToUse } from './badges.service.js';
import { pinFault } from './pin-fault.js';
import type { TabletCredential } from './tablet-credential.entity.js';
import { TabletCredentials } from './tablet-credentials.service.js';
import type { OwnPinView } from './tablets.views.js';

/**
 * PINs, which people choose at a browser of their own. They are hashed with Argon2id under a key that is not in the
 * database: of so few possible ones a hash alone would soon give the right one away.
 */
@Injectable()
export class Pins {
  constructor(
    private readonly transactions: Transactions,
    private readonly serviceKey: ServiceKey,
    private readonly standings: Standings,
    private readonly credentials: TabletCredentials,
  ) {}

  async show(browser: SignedIn, studioId: string): Promise<OwnPinView> {
    const { personId } = await this.standing(browser, studioId);
    const pin = await this.credentials.of(studioId, personId, 'PIN');
    return { chosenAt: pin?.createdAt ?? null };
  }

  /** @throws Problem unusable-pin; wrong-state when the person does no tray work */
  async choose(browser: SignedIn, studioId: string, pin: string): Promise<OwnPinView> {
    const actor = await this.standing(browser, studioId);
    const fault = pinFault(pin);
    if (fault !== undefined) {
      throw new Problem(400, 'unusable-pin', `The PIN ${fault}. Choose 4 to 8 digits that mean nothing.`);
    }
    const secretHash = await argon2.hash(pin, {
      ...argon2Parameters,
      secret: await this.pepper(studioId, actor.personId),
    });
    return this.write(actor, 'identity.choose-pin', async (transaction, person) => {
      refuseUnableToUse(person);
      const made = { id: uuidv7(), person, kind: 'PIN', secretHash } as const;
      return { chosenAt: (await this.credentials.replace(transaction, made)).createdAt };
    });
  }

  /** @throws Problem wrong-state when there is none */
  async remove(browser: SignedIn, studioId: string): Promise<OwnPinView> {
    const actor = await this.standing(browser, studioId);
    return this.write(actor, 'identity.remove-pin', async (transaction, person) => {
      if (await this.credentials.end(transaction, person, 'PIN')) return { chosenAt: null };
      throw new Problem(409, 'wrong-state', 'You have no PIN here; nothing more is to be done.');
    });
  }

  /** Whether it is the PIN of the person; takes as long when there is none. */
  async matches(
    known: TabletCredential | null,
    studioId: string,
    personId: string,
    pin: string,
  ): Promise<boolean> {
    const secret = await this.pepper(studioId, personId);
    if (known) return argon2.verify(known.secretHash, pin, { secret });
    await argon2.hash(pin, { ...argon2Parameters, secret });
    return false;
  }

  private async standing(browser: SignedIn, studioId: string): Promise<Actor & { personId: string }> {
    const standing = await this.standings.in(studioId, { browser });
    if (!standing) throw notFound('studio', studioId);
    if (standing.passkeyNeeded) {
      throw new Problem(403, 'passkey-needed', 'This studio asks for a passkey: sign in with it first.');
    }
    const { personId, chainId, timeZone } = standing;
    return { studioId, chainId, timeZone, personId, via: 'api', seesClients: false };
  }

  private async write(
    actor: Actor & { personId: string },
    action: string,
    work: (transaction: Transaction, person: Person) => Promise<OwnPinView>,
  ): Promise<OwnPinView> {
    const { studioId, personId } = actor;
    return this.transactions.write(
      actor,
      { id: null, action, subject: { kind: 'person', id: personId }, content: null },
      async (transaction) =>
        work(transaction, await transaction.manager.findOneByOrFail(Person, { studioId, id: personId })),
    );
  }

  private pepper(studioId: string, personId: string): Promise<Buffer> {
    return this.serviceKey.digest('tablet PIN', `${studioId} ${personId}`);
  }
}
