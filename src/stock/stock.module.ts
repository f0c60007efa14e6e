import { Module } from '@nestjs/common';
import { AlertsModule } from '../alerts/alerts.module.js';
import { CatalogueModule } from '../catalogue/catalogue.module.js';
import { IdentityModule } from '../identity/identity.module.js';
import { Balance } from './balance.entity.js';
import { Blend, BlendParent } from './blend.entity.js';
import { BlendDates } from './blend-dates.service.js';
import { BlendList } from './blend-list.service.js';
import { BlendRecorder } from './blend-recorder.service.js';
import { Blending } from './blending.service.js';
import { BlendsController } from './blends.controller.js';
import { Container } from './container.entity.js';
import { ContainerCount } from './container-count.service.js';
import { ContainerEnding } from './container-ending.service.js';
import { ContainerFacts } from './container-facts.service.js';
import { ContainerListController } from './container-list.controller.js';
import { ContainerList } from './container-list.service.js';
import { ContainerMove } from './container-move.service.js';
import { ContainerOpening } from './container-opening.service.js';
import { ContainerOperation } from './container-operation.service.js';
import { ContainerOperationsController } from './container-operations.controller.js';
import { ContainerViews } from './container-views.service.js';
import { DateThreshold } from './date-thresholds/date-threshold.entity.js';
import { DateThresholdsController } from './date-thresholds/date-thresholds.controller.js';
import { DateThresholds } from './date-thresholds/date-thresholds.service.js';
import { Deliveries } from './deliveries.service.js';
import { Delivery, DeliveryLine } from './delivery.entity.js';
import { DeliveryCalendar } from './expected-deliveries/delivery-calendar.service.js';
import { ExpectedDeliveriesController } from './expected-deliveries/expected-deliveries.controller.js';
import { ExpectedDeliveries } from './expected-deliveries/expected-deliveries.service.js';
import { ExpectedDelivery } from './expected-deliveries/expected-delivery.entity.js';
import { LateDeliveryConditions } from './expected-deliveries/late-delivery-conditions.service.js';
import { HeldStock } from './held-stock.service.js';
import { Hold, HoldRelease } from './hold.entity.js';
import { HoldReleaseRequest } from './hold-release-request.entity.js';
import { HoldsController } from './holds.controller.js';
import { Holds } from './holds.service.js';
import { HoldsInForce } from './holds-in-force.service.js';
import { LabelCodes } from './label-codes.service.js';
import { LabelDrawing } from './label-drawing.service.js';
import { LabelsController } from './labels.controller.js';
import { Labels } from './labels.service.js';
import { Ledger } from './ledger.service.js';
import { LevelsController } from './levels.controller.js';
import { Levels } from './levels.service.js';
import { Lot } from './lot.entity.js';
import { LotCode } from './lot-code.entity.js';
import { LotCorrectionsController } from './lot-corrections.controller.js';
import { LotCorrections } from './lot-corrections.service.js';
import { LotHistory } from './lot-history.service.js';
import { LotListController } from './lot-list.controller.js';
import { LotList } from './lot-list.service.js';
import { LotFactsReader } from './lot-matching/lot-facts.service.js';
import { LotsEverHeld } from './lot-matching/lots-ever-held.service.js';
import { LotsAtReceipt } from './lots-at-receipt.service.js';
import { Movement } from './movement.entity.js';
import { MovementReversal } from './movement-reversal.service.js';
import { MovementsController } from './movements.controller.js';
import { OpenHolds } from './open-holds.service.js';
import { OpeningStockController } from './opening-stock/opening-stock.controller.js';
import { OpeningStock } from './opening-stock/opening-stock.service.js';
import { StockRecordLookUp } from './opening-stock/stock-on-record.service.js';
import { OrderFollowers } from './order-followers.service.js';
import { Photo } from './photos/photo.entity.js';
import { PhotosController } from './photos/photos.controller.js';
import { Photos } from './photos/photos.service.js';
import { Place } from './place.entity.js';
import { PlacesController } from './places.controller.js';
import { Places } from './places.service.js';
import { ReceiptHolds } from './receipt-holds.service.js';
import { ReceivedLines } from './received-lines.service.js';
import { ReceivingController } from './receiving.controller.js';
import { Receiving } from './receiving.service.js';
import { ReleaseRequests } from './release-requests.service.js';
import { Reservations } from './reservations.service.js';
import { StandingHold, StandingHoldCatch, StandingHoldEnd } from './standing-hold.entity.js';
import { StandingHoldFollowers } from './standing-holds/standing-hold-followers.service.js';
import { StandingHolds } from './standing-holds/standing-holds.service.js';
import { StandingPlaces } from './standing-places.service.js';
import { StockCalendar } from './stock-calendar.service.js';
import { StockConditions } from './stock-conditions.service.js';
import { StockFollowers } from './stock-followers.service.js';
import { StockLevel } from './stock-level.entity.js';
import { StockSummaryLines } from './stock-summary-lines.service.js';
import { Arrival } from './transfers/arrival.service.js';
import { ArrivedHolds } from './transfers/arrived-holds.service.js';
import { GoodsPutAway } from './transfers/goods-put-away.service.js';
import { LotTransfers } from './transfers/lot-transfers.service.js';
import { OtherEnds } from './transfers/other-ends.service.js';
import { Sending } from './transfers/sending.service.js';
import { SentGoods } from './transfers/sent-goods.service.js';
import { Transfer, TransferLine, TransferLineFacts } from './transfers/transfer.entity.js';
import { TransferConditions } from './transfers/transfer-conditions.service.js';
import { TransferList } from './transfers/transfer-list.service.js';
import { TransferGoods, TransferOutcome } from './transfers/transfer-outcome.entity.js';
import { TransferRegister } from './transfers/transfer-register.service.js';
import { TransfersController } from './transfers/transfers.controller.js';
import { Withdrawal } from './transfers/withdrawal.service.js';

export const stockEntities = [
  Place,
  Lot,
  LotCode,
  Container,
  Balance,
  Movement,
  Hold,
  HoldRelease,
  HoldReleaseRequest,
  StandingHold,
  StandingHoldEnd,
  StandingHoldCatch,
  Photo,
  Delivery,
  DeliveryLine,
  ExpectedDelivery,
  StockLevel,
  DateThreshold,
  Blend,
  BlendParent,
  Transfer,
  TransferLine,
  TransferLineFacts,
  TransferOutcome,
  TransferGoods,
];

@Module({
  imports: [IdentityModule, AlertsModule, CatalogueModule],
  controllers: [
    BlendsController,
    ContainerListController,
    ContainerOperationsController,
    DateThresholdsController,
    ExpectedDeliveriesController,
    HoldsController,
    LabelsController,
    LevelsController,
    LotCorrectionsController,
    LotListController,
    MovementsController,
    OpeningStockController,
    PhotosController,
    PlacesController,
    ReceivingController,
    TransfersController,
  ],
  providers: [
    Arrival,
    ArrivedHolds,
    BlendDates,
    BlendList,
    BlendRecorder,
    Blending,
    ContainerCount,
    ContainerEnding,
    ContainerFacts,
    ContainerList,
    ContainerMove,
    ContainerOpening,
    ContainerOperation,
    ContainerViews,
    DateThresholds,
    Deliveries,
    ExpectedDeliveries,
    GoodsPutAway,
    HeldStock,
    Holds,
    HoldsInForce,
    LabelCodes,
    LabelDrawing,
    Labels,
    LateDeliveryConditions,
    Ledger,
    Levels,
    LotCorrections,
    LotFactsReader,
    LotHistory,
    LotList,
    LotTransfers,
    LotsAtReceipt,
    LotsEverHeld,
    MovementReversal,
    OpenHolds,
    OpeningStock,
    OrderFollowers,
    OtherEnds,
    Photos,
    Places,
    ReceiptHolds,
    ReceivedLines,
    Receiving,
    ReleaseRequests,
    Reservations,
    Sending,
    SentGoods,
    StandingHoldFollowers,
    StandingHolds,
    StandingPlaces,
    StockConditions,
    StockFollowers,
    StockRecordLookUp,
    TransferConditions,
    TransferList,
    TransferRegister,
    Withdrawal,
    DeliveryCalendar,
    StockCalendar,
    StockSummaryLines,
  ],
  exports: [
    BlendDates,
    ContainerEnding,
    ContainerFacts,
    ContainerMove,
    ContainerOperation,
    ExpectedDeliveries,
    Holds,
    HoldsInForce,
    LabelCodes,
    Ledger,
    Levels,
    LotsEverHeld,
    OrderFollowers,
    OtherEnds,
    Photos,
    ReleaseRequests,
    Reservations,
    SentGoods,
    StandingHoldFollowers,
    StandingHolds,
    StandingPlaces,
    StockConditions,
    StockFollowers,
  ],
})
export class StockModule {}
