import { type DynamicModule, Module } from '@nestjs/common';
import { APP_FILTER, APP_PIPE } from '@nestjs/core';
import { migrations } from '../migrations/list.js';
import { AlertsModule, alertsEntities } from './alerts/alerts.module.js';
import { CatalogueModule, catalogueEntities } from './catalogue/catalogue.module.js';
import { ClientsModule, clientsEntities } from './clients/clients.module.js';
import { IdentityModule, identityEntities } from './identity/identity.module.js';
import { backUpBeforeMigrating } from './operations/backup/before-migration.service.js';
import { OperationsModule } from './operations/operations.module.js';
import type { ProgramOptions } from './platform/commands.js';
import { platformEntities } from './platform/platform.entities.js';
import { PlatformModule } from './platform/platform.module.js';
import { ProblemFilter } from './platform/problem.filter.js';
import type { ProcessRole } from './platform/process-role.js';
import { makeValidationPipe } from './platform/validation.pipe.js';
import { RecallsModule, recallsEntities } from './recalls/recalls.module.js';
import { ReorderModule, reorderEntities } from './reorder/reorder.module.js';
import { SessionsModule, sessionsEntities } from './sessions/sessions.module.js';
import { StockModule, stockEntities } from './stock/stock.module.js';

export const schema = {
  entities: [
    ...platformEntities,
    ...identityEntities,
    ...alertsEntities,
    ...catalogueEntities,
    ...stockEntities,
    ...clientsEntities,
    ...sessionsEntities,
    ...reorderEntities,
    ...recallsEntities,
  ],
  migrations,
  beforeMigrating: backUpBeforeMigrating,
};

/** Puts the rooms together, for the service or for one command. */
@Module({})
export class AppModule {
  static for(
    role: ProcessRole,
    { backsUpBeforeMigrating }: ProgramOptions = { backsUpBeforeMigrating: true },
  ): DynamicModule {
    const { beforeMigrating: _, ...bare } = schema;
    return {
      module: AppModule,
      imports: [
        PlatformModule.forRoot(backsUpBeforeMigrating ? schema : bare, role),
        IdentityModule,
        AlertsModule,
        CatalogueModule,
        StockModule,
        ClientsModule,
        SessionsModule,
        ReorderModule,
        RecallsModule,
        OperationsModule,
      ],
      providers: [
        { provide: APP_FILTER, useClass: ProblemFilter },
        { provide: APP_PIPE, useFactory: makeValidationPipe },
      ],
    };
  }
}
