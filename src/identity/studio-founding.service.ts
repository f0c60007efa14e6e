import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import { systemActor } from '../platform/actor.js';
import { AuditHead } from '../platform/audit/audit-entry.entity.js';
import { firstPreviousHash } from '../platform/audit/audit-log.js';
import { Transactions } from '../platform/database/transactions.js';
import { StudioKey } from '../platform/encryption/data-key.entity.js';
import { StudioKeys } from '../platform/encryption/studio-keys.service.js';
import { People } from './people.service.js';
import { Chain, Studio } from './studio.entity.js';

export interface StudioToFound {
  name: string;
  ownerName: string;
  /** IANA name. */
  timeZone: string;
  houseBlends: Studio['houseBlends'];
}

export interface FoundedStudio {
  studioId: string;
  chainId: string;
  ownerId: string;
}

/** Founds a studio in a chain of its own: its settings, its audit chain, its key and its owner, in one transaction. */
@Injectable()
export class StudioFounding {
  constructor(
    private readonly transactions: Transactions,
    private readonly studioKeys: StudioKeys,
    private readonly people: People,
  ) {}

  async found({ name, ownerName, timeZone, houseBlends }: StudioToFound): Promise<FoundedStudio> {
    const studioId = uuidv7();
    const chainId = uuidv7();
    const ownerId = uuidv7();
    await this.transactions.write(
      systemActor({ id: studioId, chainId, timeZone }),
      { id: null, action: 'identity.start-studio', subject: { kind: 'studio', id: studioId }, content: null },
      async (transaction) => {
        const createdAt = transaction.recordedAt;
        await transaction.insert(Chain, { id: chainId, name, createdAt });
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
          version: 1,
          createdAt,
        });
        await transaction.insert(AuditHead, { studioId, sequence: 0, hash: firstPreviousHash });
        await transaction.insert(StudioKey, this.studioKeys.make(studioId));
        await this.people.add(transaction, ownerId, { name: ownerName, role: 'owner' });
      },
    );
    return { studioId, chainId, ownerId };
  }
}
