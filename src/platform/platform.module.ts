import { type DynamicModule, Global, Injectable, Module, type OnApplicationShutdown } from '@nestjs/common';
import { Clock } from './clock.js';
import { Config, readConfig } from './config.js';
import { Database, type Schema } from './database/database.js';
import { OldPages } from './database/old-pages.service.js';
import { Transactions } from './database/transactions.js';
import { DataKeys } from './encryption/data-keys.service.js';
import { MasterKeys } from './encryption/master-keys.js';
import { ServiceKey } from './encryption/service-key.service.js';
import { StudioKeys } from './encryption/studio-keys.service.js';
import { ProcessRole } from './process-role.js';

@Injectable()
class DatabaseCloser implements OnApplicationShutdown {
  constructor(private readonly database: Database) {}

  async onApplicationShutdown(): Promise<void> {
    await this.database.close();
  }
}

/** Clock, settings, database, transactions and keys, for every room. */
@Global()
@Module({})
export class PlatformModule {
  static forRoot(schema: Schema, role: ProcessRole): DynamicModule {
    return {
      module: PlatformModule,
      providers: [
        Clock,
        { provide: ProcessRole, useValue: role },
        { provide: Config, useFactory: () => readConfig(process.env) },
        {
          provide: Database,
          // A worker is not the one to change what the service works with.
          useFactory: (config: Config) => Database.open(config, { ...schema, isLeftAsItIs: role.working }),
          inject: [Config],
        },
        {
          provide: MasterKeys,
          useFactory: async (config: Config, database: Database) => {
            const sealed = await database.read('SELECT studio_id FROM studio_key LIMIT 1');
            return MasterKeys.load(config.masterKeyFile, sealed.length === 0 && !role.working);
          },
          inject: [Config, Database],
        },
        ServiceKey,
        StudioKeys,
        DataKeys,
        Transactions,
        OldPages,
        DatabaseCloser,
      ],
      exports: [
        Clock,
        Config,
        Database,
        MasterKeys,
        ProcessRole,
        ServiceKey,
        StudioKeys,
        DataKeys,
        Transactions,
        OldPages,
      ],
    };
  }
}
