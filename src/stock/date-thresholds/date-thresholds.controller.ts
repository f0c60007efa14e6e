import { Body, Controller, Delete, Get, Param, Put, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../../identity/actor.guard.js';
import { Needs } from '../../identity/needs.decorator.js';
import type { Actor } from '../../platform/actor.js';
import { IdPipe } from '../../platform/id.pipe.js';
import { PageDto } from '../../platform/request.dto.js';
import { RemoveDateThresholdDto, SetDateThresholdDto } from './date-thresholds.dto.js';
import { DateThresholds } from './date-thresholds.service.js';
import { DateThresholdPageView, DateThresholdView } from './date-thresholds.views.js';

@ApiTags('stock')
@Controller('v1/studios/:studioId/date-thresholds')
export class DateThresholdsController {
  constructor(private readonly thresholds: DateThresholds) {}

  /** A page of the products that have days of warning of their own. */
  @Needs('read stock')
  @Get()
  list(@CurrentActor() actor: Actor, @Query() page: PageDto): Promise<DateThresholdPageView> {
    return this.thresholds.list(actor, page);
  }

  /** Sets the days of warning of one product, before its use-by and before the end of its opened life. */
  @Needs('set levels')
  @Put(':productId')
  set(
    @CurrentActor() actor: Actor,
    @Param('productId', IdPipe) productId: string,
    @Body() dto: SetDateThresholdDto,
  ): Promise<DateThresholdView> {
    return this.thresholds.set(actor, productId, dto);
  }

  /** Removes them, so that the studio's count again; they are answered as they stood. */
  @Needs('set levels')
  @Delete(':productId')
  remove(
    @CurrentActor() actor: Actor,
    @Param('productId', IdPipe) productId: string,
    @Body() dto: RemoveDateThresholdDto,
  ): Promise<DateThresholdView> {
    return this.thresholds.remove(actor, productId, dto);
  }
}
