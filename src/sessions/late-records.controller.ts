import { Body, Controller, HttpCode, Param, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../identity/actor.guard.js';
import { Needs } from '../identity/needs.decorator.js';
import type { Actor } from '../platform/actor.js';
import { IdPipe } from '../platform/id.pipe.js';
import { Amendments } from './amendments.service.js';
import { AddComplicationsDto } from './complications.dto.js';
import { Complications } from './complications.service.js';
import { AddUsesDto, RecordLateSessionDto, ReverseUseDto } from './late-records.dto.js';
import { LateRecords } from './late-records.service.js';
import { RecordedUsesView, ReversedUseView } from './late-records.views.js';
import { WrittenSessionView } from './sessions.views.js';

@ApiTags('sessions')
@Controller('v1/studios/:studioId/sessions')
export class LateRecordsController {
  constructor(
    private readonly lateRecords: LateRecords,
    private readonly amendments: Amendments,
    private readonly complications: Complications,
  ) {}

  /** Records a session that took place earlier, whatever the state of the stock. */
  @Needs('record late')
  @Post('late')
  record(@CurrentActor() actor: Actor, @Body() dto: RecordLateSessionDto): Promise<RecordedUsesView> {
    return this.lateRecords.record(actor, dto);
  }

  /** Records uses that a completed session lacks. */
  @Needs('record late')
  @Post(':sessionId/uses')
  addUses(
    @CurrentActor() actor: Actor,
    @Param('sessionId', IdPipe) sessionId: string,
    @Body() dto: AddUsesDto,
  ): Promise<RecordedUsesView> {
    return this.amendments.addUses(actor, sessionId, dto);
  }

  /** Adds complications that were noticed after the session was completed; what was said before stays. */
  @Needs('record late')
  @Post(':sessionId/complications')
  @HttpCode(200)
  addComplications(
    @CurrentActor() actor: Actor,
    @Param('sessionId', IdPipe) sessionId: string,
    @Body() dto: AddComplicationsDto,
  ): Promise<WrittenSessionView> {
    return this.complications.add(actor, sessionId, dto);
  }

  /** Reverses a use of a completed session that was recorded by mistake; both stay visible. */
  @Needs('record late')
  @Post(':sessionId/uses/:useId/reversal')
  reverse(
    @CurrentActor() actor: Actor,
    @Param('sessionId', IdPipe) sessionId: string,
    @Param('useId', IdPipe) useId: string,
    @Body() dto: ReverseUseDto,
  ): Promise<ReversedUseView> {
    return this.amendments.reverse(actor, sessionId, useId, dto);
  }
}
