import { Body, Controller, Get, Param, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../identity/actor.guard.js';
import { Needs } from '../identity/needs.decorator.js';
import type { Actor } from '../platform/actor.js';
import { IdPipe } from '../platform/id.pipe.js';
import { PageDto } from '../platform/request.dto.js';
import { AskReleaseDto, PlaceHoldDto, ReleaseHoldDto } from './holds.dto.js';
import { Holds } from './holds.service.js';
import { HoldView, OpenHoldPageView } from './holds.views.js';
import { OpenHolds } from './open-holds.service.js';
import { ReleaseRequests } from './release-requests.service.js';

@ApiTags('stock')
@Controller('v1/studios/:studioId/holds')
export class HoldsController {
  constructor(
    private readonly holds: Holds,
    private readonly open: OpenHolds,
    private readonly requests: ReleaseRequests,
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

  /**
   * Asks that a recall hold be released, with the reason why. Another person then releases it; where nobody else may, the
   * same person does, and the request carries a photo.
   */
  @Needs('release holds')
  @Post(':holdId/release-requests')
  askRelease(
    @CurrentActor() actor: Actor,
    @Param('holdId', IdPipe) holdId: string,
    @Body() dto: AskReleaseDto,
  ): Promise<HoldView> {
    return this.requests.ask(actor, holdId, dto);
  }

  /** Releases a hold, with the reason why. What is recalled is released by another person than asked for it. */
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
