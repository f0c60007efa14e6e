import { Body, Controller, Get, Param, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../identity/actor.guard.js';
import { Needs } from '../identity/needs.decorator.js';
import type { Actor } from '../platform/actor.js';
import { IdPipe } from '../platform/id.pipe.js';
import { PageDto } from '../platform/request.dto.js';
import { Deliveries } from './deliveries.service.js';
import { DeliveryPageView, DeliveryView } from './deliveries.views.js';
import { ReceiveDeliveryDto } from './receiving.dto.js';
import { Receiving } from './receiving.service.js';
import { ReceiptView } from './receiving.views.js';

@ApiTags('stock')
@Controller('v1/studios/:studioId/deliveries')
export class ReceivingController {
  constructor(
    private readonly receiving: Receiving,
    private readonly deliveries: Deliveries,
  ) {}

  /** Records a delivery, a gift or opening stock; answers with lots, label codes, holds and warnings. */
  @Needs('receive stock')
  @Post()
  receive(@CurrentActor() actor: Actor, @Body() dto: ReceiveDeliveryDto): Promise<ReceiptView> {
    return this.receiving.receive(actor, dto);
  }

  /** A page of what arrived, latest first. */
  @Needs('read stock')
  @Get()
  list(@CurrentActor() actor: Actor, @Query() page: PageDto): Promise<DeliveryPageView> {
    return this.deliveries.list(actor, page);
  }

  /** One delivery with its lines; lots are shown as they stand now. */
  @Needs('read stock')
  @Get(':deliveryId')
  show(@CurrentActor() actor: Actor, @Param('deliveryId', IdPipe) deliveryId: string): Promise<DeliveryView> {
    return this.deliveries.show(actor, deliveryId);
  }
}
