import { Controller, Get, Param, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../identity/actor.guard.js';
import { Needs } from '../identity/needs.decorator.js';
import type { Actor } from '../platform/actor.js';
import { IdPipe } from '../platform/id.pipe.js';
import { LotHistory } from './lot-history.service.js';
import { LotMovementPageDto, LotPageDto } from './lot-list.dto.js';
import { LotList } from './lot-list.service.js';
import { LotPageView, LotView } from './lot-list.views.js';

@ApiTags('stock')
@Controller('v1/studios/:studioId/lots')
export class LotListController {
  constructor(
    private readonly list: LotList,
    private readonly history: LotHistory,
  ) {}

  /** Lots with what is here of them, the latest first. */
  @Needs('read stock')
  @Get()
  page(@CurrentActor() actor: Actor, @Query() query: LotPageDto): Promise<LotPageView> {
    return this.list.page(actor, query);
  }

  /** A lot with its codes, containers, holds, mass balance and a page of its movements. */
  @Needs('read stock')
  @Get(':lotId')
  show(
    @CurrentActor() actor: Actor,
    @Param('lotId', IdPipe) lotId: string,
    @Query() query: LotMovementPageDto,
  ): Promise<LotView> {
    return this.history.show(actor, lotId, query);
  }
}
