import { Body, Controller, Get, Param, Patch, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../../identity/actor.guard.js';
import { Needs } from '../../identity/needs.decorator.js';
import type { Actor } from '../../platform/actor.js';
import { IdPipe } from '../../platform/id.pipe.js';
import { AddOfferDto, ChangeOfferDto, EndOfferDto, OfferPageDto } from './offers.dto.js';
import { Offers } from './offers.service.js';
import { OfferPageView, OfferView } from './offers.views.js';

/** What suppliers offer: products in packs, at a price. */
@ApiTags('reorder')
@Controller('v1/studios/:studioId/offers')
export class OffersController {
  constructor(private readonly offers: Offers) {}

  /** A page of offers by product, of one supplier or of one product when asked. */
  @Needs('read plans')
  @Get()
  list(@CurrentActor() actor: Actor, @Query() page: OfferPageDto): Promise<OfferPageView> {
    return this.offers.list(actor, page);
  }

  /** One of them. */
  @Needs('read plans')
  @Get(':offerId')
  show(@CurrentActor() actor: Actor, @Param('offerId', IdPipe) offerId: string): Promise<OfferView> {
    return this.offers.show(actor, offerId);
  }

  /** Records what a supplier offers. */
  @Needs('plan orders')
  @Post()
  add(@CurrentActor() actor: Actor, @Body() dto: AddOfferDto): Promise<OfferView> {
    return this.offers.add(actor, dto);
  }

  /** Changes packs, prices or what else is known of it. */
  @Needs('plan orders')
  @Patch(':offerId')
  change(
    @CurrentActor() actor: Actor,
    @Param('offerId', IdPipe) offerId: string,
    @Body() dto: ChangeOfferDto,
  ): Promise<OfferView> {
    return this.offers.change(actor, offerId, dto);
  }

  /** It is not offered any more; what was ordered by it keeps it. */
  @Needs('plan orders')
  @Post(':offerId/end')
  end(
    @CurrentActor() actor: Actor,
    @Param('offerId', IdPipe) offerId: string,
    @Body() dto: EndOfferDto,
  ): Promise<OfferView> {
    return this.offers.end(actor, offerId, dto);
  }
}
