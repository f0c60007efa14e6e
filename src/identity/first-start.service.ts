import { Injectable, Logger, type OnApplicationBootstrap } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import { systemActor } from '../platform/actor.js';
import { AuditHead } from '../platform/audit/audit-entry.entity.js';
import { firstPreviousHash } from '../platform/audit/audit-log.js';
import { Transactions } from '../platform/database/transactions.js';
import { StudioKey } from '../platform/encryption/data-key.entity.js';
import { StudioKeys } from '../platform/encryption/studio-keys.service.js';
import { People } from './people.service.js';
import { Chain, Studio } from './studio.entity.js';

/** Makes the first studio with its owner when the database is empty. */
@Injectable()
export class FirstStart implements OnApplicationBootstrap {
  private readonly logger = new Logger('first start');

  constructor(
    private readonly transactions: Transactions,
    private readonly studioKeys: StudioKeys,
    private readonly people: People,
  ) {}

  async onApplicationBootstrap(): Promise<void> {
    const existing = await this.transactions.database.read('SELECT id FROM studio LIMIT 1');
    if (existing.length > 0) return;
    const studioId = uuidv7();
    const chainId = uuidv7();
    const timeZone = Intl.DateTimeFormat().resolvedOptions().timeZone;
    const actor = systemActor({ id: studioId, chainId, timeZone });
    await this.transactions.write(
      actor,
      { id: null, action: 'identity.start-studio', subject: { kind: 'studio', id: studioId }, content: null },
      async (transaction) => {
        const createdAt = transaction.recordedAt;
        await transaction.insert(Chain, { id: chainId, name: 'My studio', createdAt });
        await transaction.insert(Studio, {
          id: studioId,
          chainId,
          name: 'My studio',
          timeZone,
          currency: 'EUR',
          morning: '07:00',
          useByNearDays: 60,
          openedLifeEndingDays: 14,
          // No published default exists; six months is the shortest of the opened lives published for pigments.
          assumedOpenedLife: 'P6M',
          houseBlends: 'off',
          version: 1,
          createdAt,
        });
        await transaction.insert(AuditHead, { studioId, sequence: 0, hash: firstPreviousHash });
        await transaction.insert(StudioKey, this.studioKeys.make(studioId));
        await this.people.add(transaction, uuidv7(), { name: 'Owner', role: 'owner' });
      },
    );
    this.logger.log(`An empty studio was made: ${studioId}`);
  }
}
