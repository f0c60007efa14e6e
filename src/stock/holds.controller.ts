import { Body, Controller, Get, Param, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../identity/actor.guard.js';
import { Needs } from '../identity/needs.decorator.js';
import type { Actor } from '../platform/actor.js';
import { IdPipe } from '../platform/id.pipe.js';
import { PageDto } from '../platform/request.dto.js';
import { PlaceHoldDto, ReleaseHoldDto } from './holds.dto.js';
import { Holds } from './holds.service.js';
import { HoldView, OpenHoldPageView } from './holds.views.js';
import { OpenHolds } from './open-holds.service.js';

@ApiTags('stock')
@Controller('v1/studios/:studioId/holds')
export class HoldsController {
  constructor(
    private readonly holds: Holds,
    private readonly open: OpenHolds,
  ) {}

  /** The holds that stand, the latest first. */
  @Needs('read stock')
  @Get()
  page(@CurrentActor() actor: Actor, @Query() query: PageDto): Promise<OpenHoldPageView> {
    return this.open.page(actor, query);
  }

  /** Puts a lot or a container on hold: it may not be used, nor any blend made of it, until released. */
  @Needs('place holds')
  @Post()
  place(@CurrentActor() actor: Actor, @Body() dto: PlaceHoldDto): Promise<HoldView> {
    return this.holds.place(actor, dto);
  }

  /** Releases a hold, with the reason why. */
  @Needs('release holds')
  @Post(':holdId/release')
  release(
    @CurrentActor() actor: Actor,
    @Param('holdId', IdPipe) holdId: string,
    @Body() dto: ReleaseHoldDto,
  ): Promise<HoldView> {
    return this.holds.release(actor, holdId, dto);
  }
}
