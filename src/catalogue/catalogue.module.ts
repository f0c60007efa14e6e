import { Module } from '@nestjs/common';
import { ConfigurationEquivalence } from './configuration-equivalence.entity.js';
import { Maker } from './maker.entity.js';
import { Product } from './product.entity.js';
import { ProductGtin } from './product-gtin.entity.js';
import { Supplier } from './supplier.entity.js';

export const catalogueEntities = [Maker, Supplier, Product, ProductGtin, ConfigurationEquivalence];

@Module({ controllers: [], providers: [], exports: [] })
export class CatalogueModule {}
