import { Body, Controller, Get, Param, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../../identity/actor.guard.js';
import { Needs } from '../../identity/needs.decorator.js';
import type { Actor } from '../../platform/actor.js';
import { IdPipe } from '../../platform/id.pipe.js';
import { WriteDto } from '../../platform/request.dto.js';
import { AlertDeliveryView } from '../alerts.views.js';
import { DeliveryPageDto } from './deliveries.dto.js';
import { PromisedDeliveryPageView } from './deliveries.views.js';
import { DeliveryList } from './delivery-list.service.js';

@ApiTags('alerts')
@Controller('v1/studios/:studioId/alerts/deliveries')
export class DeliveriesController {
  constructor(private readonly list: DeliveryList) {}

  /** Deliveries of the studio, the latest first: those that could not be sent, unless asked otherwise. */
  @Needs('see alerts')
  @Get()
  page(@CurrentActor() actor: Actor, @Query() query: DeliveryPageDto): Promise<PromisedDeliveryPageView> {
    return this.list.page(actor, query);
  }

  /** Tries anew what could not be sent, under the same delivery id. */
  @Needs('answer alerts')
  @Post(':deliveryId/send-again')
  sendAgain(
    @CurrentActor() actor: Actor,
    @Param('deliveryId', IdPipe) deliveryId: string,
    @Body() dto: WriteDto,
  ): Promise<AlertDeliveryView> {
    return this.list.sendAgain(actor, deliveryId, dto);
  }
}
