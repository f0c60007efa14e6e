import { Module } from '@nestjs/common';
import { AlertsModule } from '../alerts/alerts.module.js';
import { CatalogueModule } from '../catalogue/catalogue.module.js';
import { ClientsModule } from '../clients/clients.module.js';
import { IdentityModule } from '../identity/identity.module.js';
import { StockModule } from '../stock/stock.module.js';
import { KitList } from './kit-list.entity.js';
import { Mix, MixComponent } from './mix.entity.js';
import { Procedure } from './procedure.entity.js';
import { Scan } from './scan.entity.js';
import { Session } from './session.entity.js';
import { SessionUse, SessionUseReversal } from './session-use.entity.js';
import { TrayLine } from './tray-line.entity.js';
import { UnmetDemand } from './unmet-demand.entity.js';

export const sessionsEntities = [
  Procedure,
  KitList,
  Session,
  Scan,
  TrayLine,
  Mix,
  MixComponent,
  SessionUse,
  SessionUseReversal,
  UnmetDemand,
];

@Module({
  imports: [IdentityModule, AlertsModule, CatalogueModule, StockModule, ClientsModule],
  controllers: [],
  providers: [],
  exports: [],
})
export class SessionsModule {}
