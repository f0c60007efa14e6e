import { Body, Controller, Get, HttpCode, Param, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../identity/actor.guard.js';
import { Needs } from '../identity/needs.decorator.js';
import type { Actor } from '../platform/actor.js';
import { IdPipe } from '../platform/id.pipe.js';
import { RecordHealedResultDto } from './healed-result.dto.js';
import { HealedResults } from './healed-result.service.js';
import { WrittenSessionView } from './sessions.views.js';
import { TouchUps } from './touch-up.service.js';
import { TouchUpView } from './touch-up.views.js';

@ApiTags('sessions')
@Controller('v1/studios/:studioId')
export class TouchUpController {
  constructor(
    private readonly touchUps: TouchUps,
    private readonly healedResults: HealedResults,
  ) {}

  /** What the earlier visit leaves to its touch-up: mixes, lots, amounts, and whether they last until then. */
  @Needs('read sessions')
  @Get('sessions/:sessionId/touch-up')
  ofSession(
    @CurrentActor() actor: Actor,
    @Param('sessionId', IdPipe) sessionId: string,
  ): Promise<TouchUpView> {
    return this.touchUps.ofSession(actor, sessionId);
  }

  /** The same for every completed first session of a client, the latest first. */
  @Needs('read sessions')
  @Get('clients/:clientId/touch-ups')
  ofClient(
    @CurrentActor() actor: Actor,
    @Param('clientId', IdPipe) clientId: string,
  ): Promise<TouchUpView[]> {
    return this.touchUps.ofClient(actor, clientId);
  }

  /** Records how the colour of a completed session healed. */
  @Needs('record late')
  @Post('sessions/:sessionId/healed-result')
  @HttpCode(200)
  recordHealedResult(
    @CurrentActor() actor: Actor,
    @Param('sessionId', IdPipe) sessionId: string,
    @Body() dto: RecordHealedResultDto,
  ): Promise<WrittenSessionView> {
    return this.healedResults.record(actor, sessionId, dto);
  }
}
