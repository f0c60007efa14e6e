import { Module } from '@nestjs/common';
import { AlertsModule } from '../alerts/alerts.module.js';
import { CatalogueModule } from '../catalogue/catalogue.module.js';
import { ClientsModule } from '../clients/clients.module.js';
import { IdentityModule } from '../identity/identity.module.js';
import { SessionsModule } from '../sessions/sessions.module.js';
import { StockModule } from '../stock/stock.module.js';
import { RecallAccounts } from './balance/recall-accounts.service.js';
import { RecallBalanceController } from './balance/recall-balance.controller.js';
import { RecallBalances } from './balance/recall-balances.service.js';
import { ChainHeads } from './chain/chain-heads.service.js';
import { ChainProgressController } from './chain/chain-progress.controller.js';
import { ChainProgress } from './chain/chain-progress.service.js';
import { ChainRecallPart } from './chain/chain-recall-part.service.js';
import { ChainRecalls } from './chain/chain-recalls.service.js';
import { RecordQuality } from './chain/record-quality.service.js';
import { ClosingController } from './closing/closing.controller.js';
import { Closing } from './closing/closing.service.js';
import { Readiness } from './closing/readiness.service.js';
import { RecallFigures } from './closing/recall-figures.service.js';
import { Attempts } from './contacts/attempts.service.js';
import { RecallContactsController } from './contacts/contacts.controller.js';
import { RecallContacts } from './contacts/contacts.service.js';
import { Effectiveness } from './contacts/effectiveness.service.js';
import { MessageSources } from './contacts/message-sources.service.js';
import { RecallMessages } from './contacts/messages.service.js';
import { Recipients } from './contacts/recipients.service.js';
import { TouchedPeople } from './contacts/touched-people.service.js';
import { ContainersOfRecall } from './containers/container-of-recall.service.js';
import { Dispositions } from './containers/dispositions.service.js';
import { Findings } from './containers/findings.service.js';
import { RecallContainersController } from './containers/recall-containers.controller.js';
import { RecallContainers } from './containers/recall-containers.service.js';
import { DrillSchedule } from './drill-schedule.entity.js';
import { DrillSchedules } from './drills/drill-schedules.service.js';
import { DrillsController } from './drills/drills.controller.js';
import { Drills } from './drills/drills.service.js';
import { RecallSteps } from './drills/recall-steps.service.js';
import { ClientRecalls } from './exposures/client-recalls.service.js';
import { ContactList } from './exposures/contact-list.service.js';
import { ContactStates } from './exposures/contact-states.service.js';
import { ExposedClients } from './exposures/exposed-clients.service.js';
import { ExposedSessions } from './exposures/exposed-sessions.service.js';
import { ExposedUses } from './exposures/exposed-uses.service.js';
import { ExposureFile } from './exposures/exposure-file.service.js';
import { ExposureQuestions } from './exposures/exposure-question.service.js';
import { ExposuresController } from './exposures/exposures.controller.js';
import { Exposures } from './exposures/exposures.service.js';
import { LotNames } from './exposures/lot-names.service.js';
import { PlannedKits } from './exposures/planned-kits.service.js';
import { PlannedSessions } from './exposures/planned-sessions.service.js';
import { NoticeFileReader } from './notice-files/notice-file-reader.service.js';
import { NoticeFiles } from './notice-files/notice-files.service.js';
import { NoticeFilesController } from './notice-files.controller.js';
import { NoticeInbox } from './notice-inbox.service.js';
import { NoticeReadings } from './notice-readings.service.js';
import { FetchedNoticeFollowers } from './notice-sources/fetched-notice-followers.service.js';
import { FetchedNotices } from './notice-sources/fetched-notices.service.js';
import { SourceConditions } from './notice-sources/source-conditions.service.js';
import { SourceReader } from './notice-sources/source-reading.service.js';
import { SourceSchedule } from './notice-sources/source-schedule.service.js';
import { SourceStates } from './notice-sources/source-states.service.js';
import { Recall } from './recall.entity.js';
import { RecallAmendment } from './recall-amendment.service.js';
import { RecallCatches } from './recall-catches.service.js';
import { RecallClosing } from './recall-closing.entity.js';
import { RecallConditions } from './recall-conditions.service.js';
import { RecallContact } from './recall-contact.entity.js';
import { RecallDisposition } from './recall-disposition.entity.js';
import { RecallEnding } from './recall-ending.service.js';
import { RecallFinding } from './recall-finding.entity.js';
import { RecallHold, RecallStandingHold } from './recall-hold.entity.js';
import { RecallHolds } from './recall-holds.service.js';
import { RecallList } from './recall-list.service.js';
import { RecallLot, RecallLotDecision } from './recall-lot.entity.js';
import { RecallNotice, RecallNoticeDismissal } from './recall-notice.entity.js';
import { RecallNotices } from './recall-notices.service.js';
import { RecallOpening } from './recall-opening.service.js';
import { RecallRegister } from './recall-register.service.js';
import { RecallScope } from './recall-scope.entity.js';
import { RecallScoping } from './recall-scoping.service.js';
import { RecallStep } from './recall-step.entity.js';
import { RecallsController } from './recalls.controller.js';
import { RecallReports } from './report/recall-reports.service.js';
import { ReportController } from './report/report.controller.js';
import { ReportDrawing } from './report/report-drawing.service.js';
import { ReportRows } from './report/report-rows.service.js';
import { ScopeMatches } from './scope-matches.service.js';
import { StatedScopes } from './stated-scopes.service.js';

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
  controllers: [
    RecallContainersController,
    RecallBalanceController,
    NoticeFilesController,
    RecallsController,
    ExposuresController,
    RecallContactsController,
    ClosingController,
    ReportController,
    DrillsController,
    ChainProgressController,
  ],
  providers: [
    RecallRegister,
    ContainersOfRecall,
    RecallContainers,
    Findings,
    Dispositions,
    RecallAccounts,
    RecallBalances,
    RecallNotices,
    NoticeReadings,
    NoticeInbox,
    ScopeMatches,
    NoticeFileReader,
    NoticeFiles,
    SourceStates,
    SourceConditions,
    SourceReader,
    FetchedNoticeFollowers,
    FetchedNotices,
    SourceSchedule,
    StatedScopes,
    RecallScoping,
    RecallHolds,
    RecallCatches,
    RecallConditions,
    RecallOpening,
    RecallAmendment,
    RecallEnding,
    RecallList,
    ChainHeads,
    ChainRecalls,
    ChainRecallPart,
    ExposureQuestions,
    Exposures,
    ExposedUses,
    ExposedSessions,
    ContactStates,
    ExposedClients,
    LotNames,
    PlannedKits,
    PlannedSessions,
    ExposureFile,
    ContactList,
    ClientRecalls,
    Attempts,
    TouchedPeople,
    Recipients,
    RecallContacts,
    MessageSources,
    RecallMessages,
    Effectiveness,
    RecallFigures,
    Readiness,
    Closing,
    RecallSteps,
    DrillSchedules,
    Drills,
    ReportRows,
    RecallReports,
    ReportDrawing,
    ChainProgress,
    RecordQuality,
  ],
})
export class RecallsModule {}
