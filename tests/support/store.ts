import { v7 as uuidv7 } from 'uuid';
import { schema } from '../../src/app.module.js';
import { People } from '../../src/identity/people.service.js';
import { Chain, Studio } from '../../src/identity/studio.entity.js';
import type { Actor } from '../../src/platform/actor.js';
import { AuditHead } from '../../src/platform/audit/audit-entry.entity.js';
import { firstPreviousHash } from '../../src/platform/audit/audit-log.js';
import { Clock } from '../../src/platform/clock.js';
import { readConfig } from '../../src/platform/config.js';
import { Database } from '../../src/platform/database/database.js';
import { Transactions } from '../../src/platform/database/transactions.js';
import { StudioKey } from '../../src/platform/encryption/data-key.entity.js';
import { DataKeys } from '../../src/platform/encryption/data-keys.service.js';
import { MasterKeys } from '../../src/platform/encryption/master-keys.js';
import { StudioKeys } from '../../src/platform/encryption/studio-keys.service.js';

/** The database of the service with its keys, opened in the test's own process, also beside a running service. */
export class Store {
  private constructor(
    readonly database: Database,
    readonly transactions: Transactions,
    readonly studioKeys: StudioKeys,
    readonly dataKeys: DataKeys,
    readonly people: People,
  ) {}

  static async open(dataFolder: string, databaseUrl?: string): Promise<Store> {
    const config = readConfig({ DATA_DIR: dataFolder, DATABASE_URL: databaseUrl });
    const database = await Database.open(config, schema);
    const masterKeys = MasterKeys.load(config.masterKeyFile, true);
    const studioKeys = new StudioKeys(database, masterKeys);
    const dataKeys = new DataKeys(database, masterKeys);
    const transactions = new Transactions(database, new Clock(), studioKeys);
    return new Store(
      database,
      transactions,
      studioKeys,
      dataKeys,
      new People(database, transactions, dataKeys),
    );
  }

  /** Makes a studio of a chain of its own with its owner, and returns the actor who is that owner. */
  async makeStudio(timeZone = 'Europe/Vienna'): Promise<Actor> {
    const studioId = uuidv7();
    const chainId = uuidv7();
    const personId = uuidv7();
    await this.transactions.write(
      { studioId, chainId, timeZone, personId: null, via: 'system' },
      { id: null, action: 'identity.start-studio', subject: { kind: 'studio', id: studioId }, content: null },
      async (transaction) => {
        const createdAt = transaction.recordedAt;
        await transaction.insert(Chain, { id: chainId, name: 'Other studio', createdAt });
        await transaction.insert(Studio, {
          id: studioId,
          chainId,
          name: 'Other studio',
          timeZone,
          currency: 'EUR',
          morning: '07:00',
          useByNearDays: 60,
          openedLifeEndingDays: 14,
          assumedOpenedLife: 'P6M',
          houseBlends: 'allowed',
          version: 1,
          createdAt,
        });
        await transaction.insert(AuditHead, { studioId, sequence: 0, hash: firstPreviousHash });
        await transaction.insert(StudioKey, this.studioKeys.make(studioId));
        await this.people.add(transaction, personId, { name: 'Other owner', role: 'owner' });
      },
    );
    return { studioId, chainId, timeZone, personId, via: 'api' };
  }

  close(): Promise<void> {
    return this.database.close();
  }
}
