import { Controller, Get, Param, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../identity/actor.guard.js';
import { Needs } from '../identity/needs.decorator.js';
import type { Actor } from '../platform/actor.js';
import { IdPipe } from '../platform/id.pipe.js';
import { ContainerPageDto, ContainerPickDto } from './container-list.dto.js';
import { ContainerList } from './container-list.service.js';
import { ContainerPageView, ContainerPickView, ShownContainerView } from './container-list.views.js';

@ApiTags('stock')
@Controller('v1/studios/:studioId/containers')
export class ContainerListController {
  constructor(private readonly list: ContainerList) {}

  /** Bottles and boxes, by place, lot, product or state. */
  @Needs('read stock')
  @Get()
  page(@CurrentActor() actor: Actor, @Query() query: ContainerPageDto): Promise<ContainerPageView> {
    return this.list.page(actor, query);
  }

  /** What to take of a product, the first to expire first, and what must be left. */
  @Needs('read stock')
  @Get('pick')
  pick(@CurrentActor() actor: Actor, @Query() query: ContainerPickDto): Promise<ContainerPickView> {
    return this.list.pick(actor, query.productId);
  }

  /** The container that carries a label; hyphens, small letters and O for 0 do not matter. */
  @Needs('read stock')
  @Get('by-label/:code')
  byLabel(@CurrentActor() actor: Actor, @Param('code') code: string): Promise<ShownContainerView> {
    return this.list.byLabel(actor, code);
  }

  /** One bottle or box. */
  @Needs('read stock')
  @Get(':containerId')
  show(
    @CurrentActor() actor: Actor,
    @Param('containerId', IdPipe) containerId: string,
  ): Promise<ShownContainerView> {
    return this.list.show(actor, containerId);
  }
}
