import { Module } from '@nestjs/common';
import { AlertsModule } from '../alerts/alerts.module.js';
import { CatalogueModule } from '../catalogue/catalogue.module.js';
import { IdentityModule } from '../identity/identity.module.js';
import { Balance } from './balance.entity.js';
import { Blend, BlendParent } from './blend.entity.js';
import { ConfigurationPools } from './configuration-pools.service.js';
import { Container } from './container.entity.js';
import { ContainerFacts } from './container-facts.service.js';
import { Delivery, DeliveryLine } from './delivery.entity.js';
import { Hold, HoldRelease } from './hold.entity.js';
import { Ledger } from './ledger.service.js';
import { Lot } from './lot.entity.js';
import { LotCode } from './lot-code.entity.js';
import { Movement } from './movement.entity.js';
import { Place } from './place.entity.js';
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
  controllers: [],
  providers: [ConfigurationPools, ContainerFacts, Ledger, StockConditions],
  exports: [ConfigurationPools, ContainerFacts, Ledger, StockConditions],
})
export class StockModule {}
