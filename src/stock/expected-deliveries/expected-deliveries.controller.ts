import { Body, Controller, Get, Param, Patch, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../../identity/actor.guard.js';
import { Needs } from '../../identity/needs.decorator.js';
import type { Actor } from '../../platform/actor.js';
import { IdPipe } from '../../platform/id.pipe.js';
import {
  CallOffDeliveryDto,
  ChangeExpectedDeliveryDto,
  ExpectDeliveryDto,
  ExpectedDeliveryPageDto,
  ExpectedDeliveryReceivedDto,
} from './expected-deliveries.dto.js';
import { ExpectedDeliveries } from './expected-deliveries.service.js';
import { ExpectedDeliveryPageView, ExpectedDeliveryView } from './expected-deliveries.views.js';

@ApiTags('stock')
@Controller('v1/studios/:studioId/expected-deliveries')
export class ExpectedDeliveriesController {
  constructor(private readonly deliveries: ExpectedDeliveries) {}

  /** A page of what is expected, or of all that was, by the day it is expected on. */
  @Needs('read stock')
  @Get()
  list(
    @CurrentActor() actor: Actor,
    @Query() page: ExpectedDeliveryPageDto,
  ): Promise<ExpectedDeliveryPageView> {
    return this.deliveries.list(actor, page);
  }

  /** One of them. */
  @Needs('read stock')
  @Get(':expectedDeliveryId')
  show(
    @CurrentActor() actor: Actor,
    @Param('expectedDeliveryId', IdPipe) id: string,
  ): Promise<ExpectedDeliveryView> {
    return this.deliveries.show(actor, id);
  }

  /** Records that something was ordered, and when it is expected. */
  @Needs('receive stock')
  @Post()
  expect(@CurrentActor() actor: Actor, @Body() dto: ExpectDeliveryDto): Promise<ExpectedDeliveryView> {
    return this.deliveries.expect(actor, dto);
  }

  /** Changes what is known of it, such as the day. */
  @Needs('receive stock')
  @Patch(':expectedDeliveryId')
  change(
    @CurrentActor() actor: Actor,
    @Param('expectedDeliveryId', IdPipe) id: string,
    @Body() dto: ChangeExpectedDeliveryDto,
  ): Promise<ExpectedDeliveryView> {
    return this.deliveries.change(actor, id, dto);
  }

  /** It is not coming any more. */
  @Needs('receive stock')
  @Post(':expectedDeliveryId/call-off')
  callOff(
    @CurrentActor() actor: Actor,
    @Param('expectedDeliveryId', IdPipe) id: string,
    @Body() dto: CallOffDeliveryDto,
  ): Promise<ExpectedDeliveryView> {
    return this.deliveries.callOff(actor, id, dto);
  }

  /** It came. Whoever records the delivery itself names it there instead. */
  @Needs('receive stock')
  @Post(':expectedDeliveryId/received')
  received(
    @CurrentActor() actor: Actor,
    @Param('expectedDeliveryId', IdPipe) id: string,
    @Body() dto: ExpectedDeliveryReceivedDto,
  ): Promise<ExpectedDeliveryView> {
    return this.deliveries.received(actor, id, dto);
  }
}
