import { Body, Controller, Get, Param, Post, Put, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../../identity/actor.guard.js';
import { Needs } from '../../identity/needs.decorator.js';
import type { Actor } from '../../platform/actor.js';
import { IdPipe } from '../../platform/id.pipe.js';
import { PageDto } from '../../platform/request.dto.js';
import { DrillSchedules } from './drill-schedules.service.js';
import { NoteStepDto, OpenDrillDto, SetChainDrillScheduleDto, SetDrillScheduleDto } from './drills.dto.js';
import { Drills } from './drills.service.js';
import {
  ChainDrillScheduleView,
  DrillPageView,
  DrillScheduleView,
  OpenedDrillView,
  RecallStepsView,
} from './drills.views.js';
import { RecallSteps } from './recall-steps.service.js';

@ApiTags('recalls')
@Controller('v1/studios/:studioId')
export class DrillsController {
  constructor(
    private readonly drills: Drills,
    private readonly steps: RecallSteps,
    private readonly schedules: DrillSchedules,
  ) {}

  /** Drills with their scores, the latest first. */
  @Needs('read recalls')
  @Get('recalls/drills')
  list(@CurrentActor() actor: Actor, @Query() query: PageDto): Promise<DrillPageView> {
    return this.drills.list(actor, query);
  }

  /** Rehearses a recall on a chosen lot or one that is drawn: nothing is held and nobody is told. */
  @Needs('answer recalls')
  @Post('recalls/drills')
  open(@CurrentActor() actor: Actor, @Body() dto: OpenDrillDto): Promise<OpenedDrillView> {
    return this.drills.open(actor, dto);
  }

  /** The steps of a recall or drill, with what each took, and how a drill stands. */
  @Needs('read recalls')
  @Get('recalls/:recallId/steps')
  show(@CurrentActor() actor: Actor, @Param('recallId', IdPipe) recallId: string): Promise<RecallStepsView> {
    return this.steps.show(actor, recallId);
  }

  /** Notes by the service's clock that a step is done. */
  @Needs('find held stock')
  @Post('recalls/:recallId/steps')
  note(
    @CurrentActor() actor: Actor,
    @Param('recallId', IdPipe) recallId: string,
    @Body() dto: NoteStepDto,
  ): Promise<RecallStepsView> {
    return this.steps.note(actor, recallId, dto);
  }

  /** How often the studio rehearses a recall, and when it is due. */
  @Needs('read recalls')
  @Get('drill-schedule')
  schedule(@CurrentActor() actor: Actor): Promise<DrillScheduleView> {
    return this.schedules.show(actor);
  }

  /** Sets it. */
  @Needs('answer recalls')
  @Put('drill-schedule')
  setSchedule(@CurrentActor() actor: Actor, @Body() dto: SetDrillScheduleDto): Promise<DrillScheduleView> {
    return this.schedules.set(actor, dto);
  }

  /** Sets it in every studio of the chain, for whoever leads them all. */
  @Needs('answer recalls of the chain')
  @Put('chain/drill-schedule')
  setInChain(
    @CurrentActor() actor: Actor,
    @Body() dto: SetChainDrillScheduleDto,
  ): Promise<ChainDrillScheduleView> {
    return this.schedules.setInChain(actor, dto);
  }
}
