import { Body, Controller, Get, Param, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../identity/actor.guard.js';
import { Needs } from '../identity/needs.decorator.js';
import type { Actor } from '../platform/actor.js';
import { IdPipe } from '../platform/id.pipe.js';
import { BlendList } from './blend-list.service.js';
import { Blending } from './blending.service.js';
import { BlendPageDto, MakeBlendDto } from './blends.dto.js';
import { BlendPageView, BlendView } from './blends.views.js';

@ApiTags('stock')
@Controller('v1/studios/:studioId/blends')
export class BlendsController {
  constructor(
    private readonly blending: Blending,
    private readonly list: BlendList,
  ) {}

  /** House blends, the latest first. */
  @Needs('read stock')
  @Get()
  page(@CurrentActor() actor: Actor, @Query() query: BlendPageDto): Promise<BlendPageView> {
    return this.list.page(actor, query);
  }

  /** One house blend. */
  @Needs('read stock')
  @Get(':blendId')
  show(@CurrentActor() actor: Actor, @Param('blendId', IdPipe) blendId: string): Promise<BlendView> {
    return this.list.show(actor, blendId);
  }

  /** Records that pigments were poured together into a kept container; only where the studio allows house blends. */
  @Needs('make blends')
  @Post()
  make(@CurrentActor() actor: Actor, @Body() dto: MakeBlendDto): Promise<BlendView> {
    return this.blending.make(actor, dto);
  }
}
