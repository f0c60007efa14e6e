import { Body, Controller, Get, Param, Put, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor, type StudioActor } from '../../identity/actor.guard.js';
import { Needs } from '../../identity/needs.decorator.js';
import { IdPipe } from '../../platform/id.pipe.js';
import { PageDto } from '../../platform/request.dto.js';
import { SetSupplierTermsDto } from './supplier-terms.dto.js';
import { SupplierTermsRegister } from './supplier-terms.service.js';
import { SupplierTermsPageView, SupplierTermsView } from './supplier-terms.views.js';

/** On what terms suppliers deliver. */
@ApiTags('reorder')
@Controller('v1/studios/:studioId/supplier-terms')
export class SupplierTermsController {
  constructor(private readonly terms: SupplierTermsRegister) {}

  /** A page of all suppliers by name, with their terms where some are set. */
  @Needs('read plans')
  @Get()
  list(@CurrentActor() actor: StudioActor, @Query() page: PageDto): Promise<SupplierTermsPageView> {
    return this.terms.list(actor, page);
  }

  /** One of them. Where orders are sent is shown to who may place them. */
  @Needs('read plans')
  @Get(':supplierId')
  show(
    @CurrentActor() actor: StudioActor,
    @Param('supplierId', IdPipe) supplierId: string,
  ): Promise<SupplierTermsView> {
    return this.terms.show(actor, supplierId);
  }

  /** Sets a supplier's terms whole; where orders are sent stays as it is when it is left out. */
  @Needs('plan orders')
  @Put(':supplierId')
  set(
    @CurrentActor() actor: StudioActor,
    @Param('supplierId', IdPipe) supplierId: string,
    @Body() dto: SetSupplierTermsDto,
  ): Promise<SupplierTermsView> {
    return this.terms.set(actor, supplierId, dto);
  }
}
