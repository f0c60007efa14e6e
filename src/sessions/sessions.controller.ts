import { Body, Controller, Get, HttpCode, Param, Patch, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../identity/actor.guard.js';
import { Needs } from '../identity/needs.decorator.js';
import type { Actor } from '../platform/actor.js';
import { IdPipe } from '../platform/id.pipe.js';
import { SessionList } from './session-list.service.js';
import { SessionPlanning } from './session-planning.service.js';
import { SessionRecord } from './session-record.service.js';
import { ClientRecordView, SessionView } from './session-record.views.js';
import { SessionSteps } from './session-steps.service.js';
import {
  ChangeSessionDto,
  ListSessionsDto,
  PlanSessionDto,
  SessionStepDto,
  WalkInDto,
} from './sessions.dto.js';
import { SessionPageView, WrittenSessionView } from './sessions.views.js';
import { WalkIns } from './walk-in.service.js';

@ApiTags('sessions')
@Controller('v1/studios/:studioId/sessions')
export class SessionsController {
  constructor(
    private readonly planning: SessionPlanning,
    private readonly walkIns: WalkIns,
    private readonly steps: SessionSteps,
    private readonly sessions: SessionList,
    private readonly records: SessionRecord,
  ) {}

  /** Sessions in the order in which they start, by local day, state, artist or client. */
  @Needs('read sessions')
  @Get()
  list(@CurrentActor() actor: Actor, @Query() dto: ListSessionsDto): Promise<SessionPageView> {
    return this.sessions.list(actor, dto);
  }

  /** Plans a session. */
  @Needs('plan sessions')
  @Post()
  plan(@CurrentActor() actor: Actor, @Body() dto: PlanSessionDto): Promise<WrittenSessionView> {
    return this.planning.plan(actor, dto);
  }

  /** Begins the session of someone who is here now, and makes the client when they are new. */
  @Needs('work the tray')
  @Post('walk-in')
  walkIn(@CurrentActor() actor: Actor, @Body() dto: WalkInDto): Promise<WrittenSessionView> {
    return this.walkIns.begin(actor, dto);
  }

  /** Everything recorded of a session. */
  @Needs('read sessions')
  @Get(':sessionId')
  show(@CurrentActor() actor: Actor, @Param('sessionId', IdPipe) sessionId: string): Promise<SessionView> {
    return this.records.show(actor, sessionId);
  }

  /** The visit as a written client record asks for it. */
  @Needs('read sessions')
  @Get(':sessionId/record')
  record(
    @CurrentActor() actor: Actor,
    @Param('sessionId', IdPipe) sessionId: string,
  ): Promise<ClientRecordView> {
    return this.records.record(actor, sessionId);
  }

  /** Changes what was planned, until the session is over. */
  @Needs('plan sessions')
  @Patch(':sessionId')
  change(
    @CurrentActor() actor: Actor,
    @Param('sessionId', IdPipe) sessionId: string,
    @Body() dto: ChangeSessionDto,
  ): Promise<WrittenSessionView> {
    return this.planning.change(actor, sessionId, dto);
  }

  /** Starts the setup of a planned session. */
  @Needs('work the tray')
  @Post(':sessionId/setup')
  @HttpCode(200)
  startSetup(
    @CurrentActor() actor: Actor,
    @Param('sessionId', IdPipe) sessionId: string,
    @Body() dto: SessionStepDto,
  ): Promise<WrittenSessionView> {
    return this.steps.take(actor, sessionId, 'start setup', dto);
  }

  /** Cancels a session; what was poured for it is recorded as wasted. */
  @Needs('plan sessions')
  @Post(':sessionId/cancellation')
  @HttpCode(200)
  cancel(
    @CurrentActor() actor: Actor,
    @Param('sessionId', IdPipe) sessionId: string,
    @Body() dto: SessionStepDto,
  ): Promise<WrittenSessionView> {
    return this.steps.take(actor, sessionId, 'cancel', dto);
  }

  /** Records that the client did not come. */
  @Needs('plan sessions')
  @Post(':sessionId/non-attendance')
  @HttpCode(200)
  notAttended(
    @CurrentActor() actor: Actor,
    @Param('sessionId', IdPipe) sessionId: string,
    @Body() dto: SessionStepDto,
  ): Promise<WrittenSessionView> {
    return this.steps.take(actor, sessionId, 'not attended', dto);
  }
}
