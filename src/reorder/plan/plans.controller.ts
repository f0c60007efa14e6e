import { Body, Controller, Get, Param, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../../identity/actor.guard.js';
import { Needs } from '../../identity/needs.decorator.js';
import type { Actor } from '../../platform/actor.js';
import { IdPipe } from '../../platform/id.pipe.js';
import { LineNumberPipe } from './line-number.pipe.js';
import { PlanLevels } from './plan-levels.service.js';
import { PlanLines } from './plan-lines.service.js';
import { PlanRequests } from './plan-requests.service.js';
import { CancelPlanDto, MakePlanDto, PlanLinesDto, PlanListDto, TakeLevelsDto } from './plans.dto.js';
import { Plans } from './plans.service.js';
import {
  LevelsTakenView,
  PlanDetailView,
  PlanLinePageView,
  PlanLineView,
  PlanPageView,
  PlanView,
} from './plans.views.js';

@ApiTags('ordering')
@Controller('v1/studios/:studioId/plans')
export class PlansController {
  constructor(
    private readonly requests: PlanRequests,
    private readonly plans: Plans,
    private readonly lines: PlanLines,
    private readonly levels: PlanLevels,
  ) {}

  /** Has a plan made, or what it would be if something were different: it waits its turn and runs in the background. */
  @Needs('plan orders')
  @Post()
  make(@CurrentActor() actor: Actor, @Body() dto: MakePlanDto): Promise<PlanView> {
    return this.requests.make(actor, dto);
  }

  /** Plans, the latest first. */
  @Needs('read plans')
  @Get()
  list(@CurrentActor() actor: Actor, @Query() query: PlanListDto): Promise<PlanPageView> {
    return this.plans.list(actor, query);
  }

  /** The latest plan that is done; 404 when there is none. */
  @Needs('read plans')
  @Get('latest')
  latest(@CurrentActor() actor: Actor): Promise<PlanDetailView> {
    return this.plans.latest(actor);
  }

  /** How a plan stands, and what it comes to. */
  @Needs('read plans')
  @Get(':planId')
  show(@CurrentActor() actor: Actor, @Param('planId', IdPipe) planId: string): Promise<PlanDetailView> {
    return this.plans.show(actor, planId);
  }

  /** Its lines, those with the most at stake first. */
  @Needs('read plans')
  @Get(':planId/lines')
  listLines(
    @CurrentActor() actor: Actor,
    @Param('planId', IdPipe) planId: string,
    @Query() query: PlanLinesDto,
  ): Promise<PlanLinePageView> {
    return this.lines.list(actor, planId, query);
  }

  /** One line with all its reasons and figures. */
  @Needs('read plans')
  @Get(':planId/lines/:lineNumber')
  line(
    @CurrentActor() actor: Actor,
    @Param('planId', IdPipe) planId: string,
    @Param('lineNumber', LineNumberPipe) lineNumber: number,
  ): Promise<PlanLineView> {
    return this.lines.show(actor, planId, lineNumber);
  }

  /** Ends a plan that waits or runs. */
  @Needs('plan orders')
  @Post(':planId/cancel')
  cancel(
    @CurrentActor() actor: Actor,
    @Param('planId', IdPipe) planId: string,
    @Body() dto: CancelPlanDto,
  ): Promise<PlanView> {
    return this.requests.cancel(actor, planId, dto);
  }

  /** Takes the reorder points of a plan for the minima of stock; those set by hand are left unless they are named. */
  @Needs('set levels')
  @Post(':planId/levels')
  takeLevels(
    @CurrentActor() actor: Actor,
    @Param('planId', IdPipe) planId: string,
    @Body() dto: TakeLevelsDto,
  ): Promise<LevelsTakenView> {
    return this.levels.take(actor, planId, dto);
  }
}
