import { Body, Controller, Get, Param, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../../identity/actor.guard.js';
import { Needs } from '../../identity/needs.decorator.js';
import type { Actor } from '../../platform/actor.js';
import { IdPipe } from '../../platform/id.pipe.js';
import { CloseRecallDto } from './closing.dto.js';
import { Closing } from './closing.service.js';
import { ClosingView, ReadinessView } from './closing.views.js';
import { Readiness } from './readiness.service.js';

@ApiTags('recalls')
@Controller('v1/studios/:studioId/recalls/:recallId')
export class ClosingController {
  constructor(
    private readonly readiness: Readiness,
    private readonly closing: Closing,
  ) {}

  /** Whether a recall can be closed, and what stands against it. */
  @Needs('read recalls')
  @Get('readiness')
  ready(@CurrentActor() actor: Actor, @Param('recallId', IdPipe) recallId: string): Promise<ReadinessView> {
    return this.readiness.of(actor, recallId);
  }

  /** Closes a recall or a drill. Holds and standing holds of a recall stay in force. */
  @Needs('answer recalls')
  @Post('closing')
  close(
    @CurrentActor() actor: Actor,
    @Param('recallId', IdPipe) recallId: string,
    @Body() dto: CloseRecallDto,
  ): Promise<ClosingView> {
    return this.closing.close(actor, recallId, dto);
  }
}
