import { Body, Controller, Get, Param, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../identity/actor.guard.js';
import { Needs } from '../identity/needs.decorator.js';
import type { Actor } from '../platform/actor.js';
import { IdPipe } from '../platform/id.pipe.js';
import { WriteDto } from '../platform/request.dto.js';
import { AlertList } from './alert-list.service.js';
import { AlertPageDto } from './alerts.dto.js';
import { AlertDeliveryView, AlertPageView, AlertView, SweepView } from './alerts.views.js';
import { Sweep } from './schedule/sweep.service.js';

@ApiTags('alerts')
@Controller('v1/studios/:studioId/alerts')
export class AlertsController {
  constructor(
    private readonly list: AlertList,
    private readonly sweep: Sweep,
  ) {}

  /** The open alerts, or all of them, the latest first. */
  @Needs('see alerts')
  @Get()
  page(@CurrentActor() actor: Actor, @Query() query: AlertPageDto): Promise<AlertPageView> {
    return this.list.page(actor, query);
  }

  /** Judges all conditions now instead of in the morning. */
  @Needs('answer alerts')
  @Post('sweep')
  sweepNow(@CurrentActor() actor: Actor, @Body() dto: WriteDto): Promise<SweepView> {
    return this.sweep.sweep(actor, dto.id);
  }

  /** Notes that somebody has seen to an alert; it closes when its condition ends. */
  @Needs('answer alerts')
  @Post(':alertId/acknowledge')
  acknowledge(
    @CurrentActor() actor: Actor,
    @Param('alertId', IdPipe) alertId: string,
    @Body() dto: WriteDto,
  ): Promise<AlertView> {
    return this.list.acknowledge(actor, alertId, dto);
  }

  /** How the announcements of an alert were delivered. */
  @Needs('see alerts')
  @Get(':alertId/deliveries')
  deliveries(
    @CurrentActor() actor: Actor,
    @Param('alertId', IdPipe) alertId: string,
  ): Promise<AlertDeliveryView[]> {
    return this.list.deliveries(actor, alertId);
  }
}
