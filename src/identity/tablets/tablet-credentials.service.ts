import { Injectable } from '@nestjs/common';
import { IsNull } from 'typeorm';
import { Database } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Person } from '../person.entity.js';
import { SignIns } from '../sign-in/sign-ins.service.js';
import { TabletCredential } from './tablet-credential.entity.js';

type Kind = TabletCredential['kind'];

/** The badges and PINs of people. One of a kind works at a time: a new one withdraws the one before. */
@Injectable()
export class TabletCredentials {
  constructor(
    private readonly database: Database,
    private readonly signIns: SignIns,
  ) {}

  /** The one of a kind that works. */
  async of(studioId: string, personId: string, kind: Kind): Promise<TabletCredential | null> {
    return this.database.reader.manager.findOneBy(TabletCredential, {
      studioId,
      personId,
      kind,
      endedAt: IsNull(),
    });
  }

  /** The badge that has this secret and works in the studio. */
  async badge(studioId: string, secretHash: string): Promise<TabletCredential | null> {
    return this.database.reader.manager.findOneBy(TabletCredential, {
      studioId,
      kind: 'badge',
      secretHash,
      endedAt: IsNull(),
    });
  }

  /** Those of a kind that work in a studio. */
  async all(studioId: string, kind: Kind, most: number): Promise<TabletCredential[]> {
    return this.database.reader.manager.find(TabletCredential, {
      where: { studioId, kind, endedAt: IsNull() },
      order: { createdAt: 'DESC', id: 'DESC' },
      take: most,
    });
  }

  /** In the caller's transaction. */
  async replace(
    transaction: Transaction,
    made: { id: string; person: Person; kind: Kind; secretHash: string },
  ): Promise<TabletCredential> {
    const { id, person, kind, secretHash } = made;
    await this.end(transaction, person, kind);
    const credential: TabletCredential = {
      studioId: transaction.studioId,
      id,
      personId: person.id,
      kind,
      secretHash,
      createdAt: transaction.recordedAt,
      endedAt: null,
    };
    await transaction.insert(TabletCredential, credential);
    return credential;
  }

  /**
   * Ends the one that works, and what was signed in with it, in the caller's transaction.
   * @returns whether there was one
   */
  async end(transaction: Transaction, person: Person, kind: Kind): Promise<boolean> {
    const { studioId, recordedAt, read } = transaction;
    // One at a time for each person, so that of two made at once one replaces the other.
    if (transaction.engine === 'postgres') {
      await transaction.query('SELECT id FROM person WHERE studio_id = $1 AND id = $2 FOR NO KEY UPDATE', [
        studioId,
        person.id,
      ]);
    }
    const ended = await transaction.update(
      TabletCredential,
      { studioId, personId: person.id, kind, endedAt: null },
      { endedAt: recordedAt },
    );
    if (ended && person.accountId !== null) {
      const { accountId } = person;
      await this.signIns.endByMethodWithin(read, recordedAt, {
        accountId,
        method: kind,
        tabletStudioId: studioId,
      });
    }
    return ended !== undefined;
  }
}
