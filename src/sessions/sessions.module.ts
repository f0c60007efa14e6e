import { Module } from '@nestjs/common';
import { AlertsModule } from '../alerts/alerts.module.js';
import { CatalogueModule } from '../catalogue/catalogue.module.js';
import { ClientsModule } from '../clients/clients.module.js';
import { IdentityModule } from '../identity/identity.module.js';
import { StockModule } from '../stock/stock.module.js';
import { Amendments } from './amendments.service.js';
import { BlendAncestry } from './blend-ancestry.service.js';
import { BookingFiles } from './bookings/booking-file.service.js';
import { BookingsController } from './bookings/bookings.controller.js';
import { Bookings } from './bookings/bookings.service.js';
import { BookingsOnRecordLookUp } from './bookings/bookings-on-record.service.js';
import { ClientExportController } from './client-export.controller.js';
import { ClientExports } from './client-export.service.js';
import { ClientExportPage } from './client-export-page.service.js';
import { ClientTreatments } from './client-treatments.service.js';
import { Completion } from './completion.service.js';
import { Complications } from './complications.service.js';
import { DayFactsController } from './day-facts.controller.js';
import { DayFactsReader } from './day-facts.service.js';
import { FollowedSessions } from './followed-sessions.service.js';
import { HealedResults } from './healed-result.service.js';
import { KitList } from './kit-list.entity.js';
import { KitListsController } from './kit-lists.controller.js';
import { KitLists } from './kit-lists.service.js';
import { LateRecordsController } from './late-records.controller.js';
import { LateRecords } from './late-records.service.js';
import { LateUses } from './late-uses.service.js';
import { Mix, MixComponent } from './mix.entity.js';
import { MixReader } from './mix-reader.service.js';
import { Mixes } from './mixes.service.js';
import { NewSessions } from './new-sessions.service.js';
import { Procedure } from './procedure.entity.js';
import { ProceduresController } from './procedures.controller.js';
import { Procedures } from './procedures.service.js';
import { KitProspects } from './prospects/kit-prospects.service.js';
import { ProspectJudge } from './prospects/prospect-judge.service.js';
import { SessionConditions } from './prospects/session-conditions.service.js';
import { TouchUpProspects } from './prospects/touch-up-prospects.service.js';
import { Scan } from './scan.entity.js';
import { ScanRecorder } from './scan-recorder.service.js';
import { Session } from './session.entity.js';
import { SessionClients } from './session-clients.service.js';
import { SessionList } from './session-list.service.js';
import { SessionLock } from './session-lock.service.js';
import { SessionOpenings } from './session-openings.service.js';
import { SessionPlanning } from './session-planning.service.js';
import { SessionRecord } from './session-record.service.js';
import { SessionSteps } from './session-steps.service.js';
import { SessionSummaryLines } from './session-summary-lines.service.js';
import { SessionThings } from './session-things.service.js';
import { SessionUse, SessionUseReversal } from './session-use.entity.js';
import { SessionWastes } from './session-wastes.service.js';
import { SessionsController } from './sessions.controller.js';
import { SetupTray } from './setup-tray.service.js';
import { SisterLots } from './sister-lots.service.js';
import { SplitLots } from './split-lots.service.js';
import { TouchUpController } from './touch-up.controller.js';
import { TouchUps } from './touch-up.service.js';
import { TouchUpCalendar } from './touch-up-calendar.service.js';
import { TraceController } from './trace.controller.js';
import { Trace } from './trace.service.js';
import { TraceCsv } from './trace-csv.service.js';
import { TrayController } from './tray.controller.js';
import { TrayLine } from './tray-line.entity.js';
import { TrayLookUp } from './tray-look-up.service.js';
import { TrayReader } from './tray-reader.service.js';
import { TrayRemoval } from './tray-removal.service.js';
import { TrayReservations } from './tray-reservations.service.js';
import { TraySessions } from './tray-sessions.service.js';
import { UnmetDemand } from './unmet-demand.entity.js';
import { UsePages } from './use-page.service.js';
import { UseRecorder } from './use-recorder.service.js';
import { WalkIns } from './walk-in.service.js';
import { WrittenLots } from './written-lots.service.js';

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
  controllers: [
    ProceduresController,
    KitListsController,
    SessionsController,
    TrayController,
    DayFactsController,
    TraceController,
    TouchUpController,
    LateRecordsController,
    ClientExportController,
    BookingsController,
  ],
  providers: [
    Procedures,
    KitLists,
    SessionPlanning,
    WalkIns,
    SessionSteps,
    SessionList,
    SessionRecord,
    SessionThings,
    MixReader,
    TraySessions,
    SessionLock,
    SessionClients,
    ClientTreatments,
    ClientExports,
    ClientExportPage,
    NewSessions,
    FollowedSessions,
    TrayLookUp,
    TrayReader,
    DayFactsReader,
    TrayRemoval,
    TrayReservations,
    SetupTray,
    ScanRecorder,
    Mixes,
    SessionOpenings,
    SessionWastes,
    UseRecorder,
    Completion,
    UsePages,
    BlendAncestry,
    Trace,
    TraceCsv,
    TouchUps,
    KitProspects,
    TouchUpProspects,
    SessionConditions,
    ProspectJudge,
    HealedResults,
    LateRecords,
    LateUses,
    WrittenLots,
    SisterLots,
    SplitLots,
    Amendments,
    Complications,
    BookingFiles,
    BookingsOnRecordLookUp,
    Bookings,
    SessionSummaryLines,
    TouchUpCalendar,
  ],
  exports: [BlendAncestry, TraySessions],
})
export class SessionsModule {}
