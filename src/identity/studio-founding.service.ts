import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import { systemActor } from '../platform/actor.js';
import { AuditHead } from '../platform/audit/audit-entry.entity.js';
import { firstPreviousHash } from '../platform/audit/audit-log.js';
import { Transactions } from '../platform/database/transactions.js';
import { StudioKey } from '../platform/encryption/data-key.entity.js';
import { ServiceKey } from '../platform/encryption/service-key.service.js';
import { StudioKeys } from '../platform/encryption/studio-keys.service.js';
import { FoundedStudios } from './founded-studios.service.js';
import { People } from './people.service.js';
import { Chain, Studio } from './studio.entity.js';

export interface StudioToFound {
  /** Left out: a fresh one. */
  id?: string;
  /** An existing chain; left out: the studio gets a chain of its own. */
  chainId?: string;
  name: string;
  /** IANA name. */
  timeZone: string;
  houseBlends: Studio['houseBlends'];
  owner: FirstPerson;
  /** Who leads the chain, when they are not the owner. */
  chainManager?: FirstPerson;
}

/** Somebody who belongs to a studio from its first moment. */
export interface FirstPerson {
  name: string;
  /** Null: they are invited later. */
  accountId: string | null;
}

export interface FoundedStudio {
  studioId: string;
  chainId: string;
  ownerId: string;
}

/** Founds a studio: its settings, its audit chain, its key and its first people, in one transaction of its own. */
@Injectable()
export class StudioFounding {
  constructor(
    private readonly transactions: Transactions,
    private readonly studioKeys: StudioKeys,
    private readonly serviceKey: ServiceKey,
    private readonly people: People,
    private readonly followers: FoundedStudios,
  ) {}

  async found(studio: StudioToFound): Promise<FoundedStudio> {
    const { id: studioId = uuidv7(), chainId = uuidv7(), name, timeZone, houseBlends } = studio;
    const ownerId = uuidv7();
    await this.transactions.write(
      systemActor({ id: studioId, chainId, timeZone }),
      { id: null, action: 'identity.start-studio', subject: { kind: 'studio', id: studioId }, content: null },
      async (transaction) => {
        const createdAt = transaction.recordedAt;
        if (studio.chainId === undefined) await transaction.insert(Chain, { id: chainId, name, createdAt });
        await transaction.insert(Studio, {
          id: studioId,
          chainId,
          name,
          timeZone,
          currency: 'EUR',
          morning: '07:00',
          useByNearDays: 60,
          openedLifeEndingDays: 14,
          // No published default exists; six months is the shortest of the opened lives published for pigments.
          assumedOpenedLife: 'P6M',
          houseBlends,
          retentionPreset: null,
          retentionYears: null,
          retentionLaw: null,
          version: 1,
          createdAt,
          passkeysRequired: null,
          contactPoint: null,
        });
        await transaction.insert(AuditHead, { studioId, sequence: 0, hash: firstPreviousHash });
        await transaction.insert(StudioKey, this.studioKeys.make(studioId));
        await this.serviceKey.ensure(transaction);
        const { owner, chainManager } = studio;
        await this.people.add(transaction, ownerId, { name: owner.name, role: 'owner' }, owner.accountId);
        if (chainManager) {
          const { name, accountId } = chainManager;
          await this.people.add(transaction, uuidv7(), { name, role: 'chain manager' }, accountId);
        }
        await this.followers.follow(transaction);
      },
    );
    return { studioId, chainId, ownerId };
  }
}
