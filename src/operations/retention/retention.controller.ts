import { Body, Controller, Get, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../../identity/actor.guard.js';
import { Needs } from '../../identity/needs.decorator.js';
import type { Actor } from '../../platform/actor.js';
import { PageDto } from '../../platform/request.dto.js';
import { CarryOutRetentionDto } from './retention.dto.js';
import { Retention } from './retention.service.js';
import { CarriedOutRetentionView, ClientRetentionPageView } from './retention.views.js';

@ApiTags('operations')
@Controller('v1/studios/:studioId/retention')
export class RetentionController {
  constructor(private readonly retention: Retention) {}

  /** Who may be erased because the record need not be kept any longer, and why the others may not. Changes nothing. */
  @Needs('erase clients')
  @Get()
  list(@CurrentActor() actor: Actor, @Query() page: PageDto): Promise<ClientRetentionPageView> {
    return this.retention.list(actor, page);
  }

  /** Erases those who are named. For good: nobody can bring them back. */
  @Needs('erase clients')
  @Post()
  carryOut(
    @CurrentActor() actor: Actor,
    @Body() dto: CarryOutRetentionDto,
  ): Promise<CarriedOutRetentionView> {
    return this.retention.carryOut(actor, dto);
  }
}
