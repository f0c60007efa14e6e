import { Module } from '@nestjs/common';
import { AlertsModule } from '../alerts/alerts.module.js';
import { CatalogueModule } from '../catalogue/catalogue.module.js';
import { ClientsModule } from '../clients/clients.module.js';
import { IdentityModule } from '../identity/identity.module.js';
import { SessionsModule } from '../sessions/sessions.module.js';
import { StockModule } from '../stock/stock.module.js';
import { DrillSchedule } from './drill-schedule.entity.js';
import { Recall } from './recall.entity.js';
import { RecallClosing } from './recall-closing.entity.js';
import { RecallContact } from './recall-contact.entity.js';
import { RecallDisposition } from './recall-disposition.entity.js';
import { RecallFinding } from './recall-finding.entity.js';
import { RecallHold, RecallStandingHold } from './recall-hold.entity.js';
import { RecallLot, RecallLotDecision } from './recall-lot.entity.js';
import { RecallNotice, RecallNoticeDismissal } from './recall-notice.entity.js';
import { RecallRegister } from './recall-register.service.js';
import { RecallScope } from './recall-scope.entity.js';
import { RecallStep } from './recall-step.entity.js';

export const recallsEntities = [
  RecallNotice,
  RecallNoticeDismissal,
  Recall,
  RecallScope,
  RecallLot,
  RecallLotDecision,
  RecallHold,
  RecallStandingHold,
  RecallFinding,
  RecallDisposition,
  RecallContact,
  RecallStep,
  RecallClosing,
  DrillSchedule,
];

@Module({
  imports: [IdentityModule, AlertsModule, CatalogueModule, StockModule, ClientsModule, SessionsModule],
  controllers: [],
  providers: [RecallRegister],
})
export class RecallsModule {}
