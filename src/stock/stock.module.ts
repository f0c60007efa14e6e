import { Module } from '@nestjs/common';
import { AlertsModule } from '../alerts/alerts.module.js';
import { CatalogueModule } from '../catalogue/catalogue.module.js';
import { IdentityModule } from '../identity/identity.module.js';
import { Balance } from './balance.entity.js';
import { Blend, BlendParent } from './blend.entity.js';
import { ConfigurationPools } from './configuration-pools.service.js';
import { Container } from './container.entity.js';
import { ContainerFacts } from './container-facts.service.js';
import { Deliveries } from './deliveries.service.js';
import { Delivery, DeliveryLine } from './delivery.entity.js';
import { Hold, HoldRelease } from './hold.entity.js';
import { LabelCodes } from './label-codes.service.js';
import { Ledger } from './ledger.service.js';
import { Lot } from './lot.entity.js';
import { LotCode } from './lot-code.entity.js';
import { LotCorrectionsController } from './lot-corrections.controller.js';
import { LotCorrections } from './lot-corrections.service.js';
import { LotsAtReceipt } from './lots-at-receipt.service.js';
import { Movement } from './movement.entity.js';
import { Place } from './place.entity.js';
import { PlacesController } from './places.controller.js';
import { Places } from './places.service.js';
import { ReceiptHolds } from './receipt-holds.service.js';
import { ReceivedLines } from './received-lines.service.js';
import { ReceivingController } from './receiving.controller.js';
import { Receiving } from './receiving.service.js';
import { StockConditions } from './stock-conditions.service.js';
import { StockLevel } from './stock-level.entity.js';

export const stockEntities = [
  Place,
  Lot,
  LotCode,
  Container,
  Balance,
  Movement,
  Hold,
  HoldRelease,
  Delivery,
  DeliveryLine,
  StockLevel,
  Blend,
  BlendParent,
];

@Module({
  imports: [IdentityModule, AlertsModule, CatalogueModule],
  controllers: [LotCorrectionsController, PlacesController, ReceivingController],
  providers: [
    ConfigurationPools,
    ContainerFacts,
    Deliveries,
    LabelCodes,
    Ledger,
    LotCorrections,
    LotsAtReceipt,
    Places,
    ReceiptHolds,
    ReceivedLines,
    Receiving,
    StockConditions,
  ],
  exports: [ConfigurationPools, ContainerFacts, Ledger, StockConditions],
})
export class StockModule {}
