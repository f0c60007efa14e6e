import { Body, Controller, Get, Param, Patch, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../identity/actor.guard.js';
import { Needs } from '../identity/needs.decorator.js';
import type { Actor } from '../platform/actor.js';
import { IdPipe } from '../platform/id.pipe.js';
import { ProductGtins } from './product-gtins.service.js';
import {
  AddGtinDto,
  AddProductDto,
  ArchiveProductDto,
  ChangeProductDto,
  CorrectGtinDto,
  ProductsQueryDto,
} from './products.dto.js';
import { Products } from './products.service.js';
import { ProductPageView, ProductView } from './products.views.js';

@ApiTags('catalogue')
@Controller('v1/studios/:studioId/products')
export class ProductsController {
  constructor(
    private readonly products: Products,
    private readonly gtins: ProductGtins,
  ) {}

  /** A page of products, ordered by maker, name and shade. */
  @Needs('read the register')
  @Get()
  list(@CurrentActor() actor: Actor, @Query() query: ProductsQueryDto): Promise<ProductPageView> {
    return this.products.list(actor, query);
  }

  /** One product. */
  @Needs('read the register')
  @Get(':productId')
  show(@CurrentActor() actor: Actor, @Param('productId', IdPipe) productId: string): Promise<ProductView> {
    return this.products.show(actor, productId);
  }

  /** Adds a pigment, a cartridge (by its notation or field by field) or a consumable. */
  @Needs('change the register')
  @Post()
  add(@CurrentActor() actor: Actor, @Body() dto: AddProductDto): Promise<ProductView> {
    return this.products.add(actor, dto);
  }

  /** Changes a product; its kind and the form in which it is kept stay. */
  @Needs('change the register')
  @Patch(':productId')
  change(
    @CurrentActor() actor: Actor,
    @Param('productId', IdPipe) productId: string,
    @Body() dto: ChangeProductDto,
  ): Promise<ProductView> {
    return this.products.change(actor, productId, dto);
  }

  /** Archives a product: it is no longer offered, what is in stock of it stays. */
  @Needs('change the register')
  @Post(':productId/archive')
  archive(
    @CurrentActor() actor: Actor,
    @Param('productId', IdPipe) productId: string,
    @Body() dto: ArchiveProductDto,
  ): Promise<ProductView> {
    return this.products.archive(actor, productId, dto);
  }

  /** Takes a product out of the archive. */
  @Needs('change the register')
  @Post(':productId/restore')
  restore(
    @CurrentActor() actor: Actor,
    @Param('productId', IdPipe) productId: string,
    @Body() dto: ArchiveProductDto,
  ): Promise<ProductView> {
    return this.products.restore(actor, productId, dto);
  }

  /** Adds a number under which the product is traded: its unit or an outer pack. */
  @Needs('change the register')
  @Post(':productId/gtins')
  addGtin(
    @CurrentActor() actor: Actor,
    @Param('productId', IdPipe) productId: string,
    @Body() dto: AddGtinDto,
  ): Promise<ProductView> {
    return this.gtins.add(actor, productId, dto);
  }

  /** Corrects what a number stands for: its content, or the product it belongs to. */
  @Needs('change the register')
  @Patch(':productId/gtins/:gtin')
  correctGtin(
    @CurrentActor() actor: Actor,
    @Param('productId', IdPipe) productId: string,
    @Param('gtin') gtin: string,
    @Body() dto: CorrectGtinDto,
  ): Promise<ProductView> {
    return this.gtins.correct(actor, productId, gtin, dto);
  }
}
