import { Module } from '@nestjs/common';
import { AlertsModule } from '../alerts/alerts.module.js';
import { Companies } from './companies.service.js';
import { ConfigurationEquivalence } from './configuration-equivalence.entity.js';
import { ConfigurationPools } from './configuration-pools.service.js';
import { ConfigurationsController } from './configurations.controller.js';
import { Configurations } from './configurations.service.js';
import { Maker } from './maker.entity.js';
import { MakersController } from './makers.controller.js';
import { Product } from './product.entity.js';
import { ProductGtin } from './product-gtin.entity.js';
import { ProductGtins } from './product-gtins.service.js';
import { ProductRegister } from './product-register.service.js';
import { ProductsController } from './products.controller.js';
import { Products } from './products.service.js';
import { Supplier } from './supplier.entity.js';
import { SuppliersController } from './suppliers.controller.js';
import { SymbolsController } from './symbols.controller.js';
import { Symbols } from './symbols.service.js';

export const catalogueEntities = [Maker, Supplier, Product, ProductGtin, ConfigurationEquivalence];

@Module({
  imports: [AlertsModule],
  controllers: [
    MakersController,
    SuppliersController,
    ProductsController,
    ConfigurationsController,
    SymbolsController,
  ],
  providers: [
    Companies,
    Products,
    ProductGtins,
    ConfigurationPools,
    Configurations,
    Symbols,
    ProductRegister,
  ],
  exports: [ConfigurationPools, ProductRegister],
})
export class CatalogueModule {}
