import { Body, Controller, Get, HttpCode, Param, Post, Query, StreamableFile } from '@nestjs/common';
import { ApiOkResponse, ApiProduces, ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../identity/actor.guard.js';
import { Needs } from '../identity/needs.decorator.js';
import type { Actor } from '../platform/actor.js';
import { IdPipe } from '../platform/id.pipe.js';
import { PageDto } from '../platform/request.dto.js';
import { TraceLotsDto } from './trace.dto.js';
import { Trace } from './trace.service.js';
import { LotTraceView, TraceView } from './trace.views.js';
import { TraceCsv } from './trace-csv.service.js';

@ApiTags('sessions')
@Controller('v1/studios/:studioId')
export class TraceController {
  constructor(
    private readonly trace: Trace,
    private readonly traceCsv: TraceCsv,
  ) {}

  /** Every session and client that a lot touched, directly, in a mix or in a house blend of any depth. */
  @Needs('trace')
  @Get('lots/:lotId/trace')
  ofLot(
    @CurrentActor() actor: Actor,
    @Param('lotId', IdPipe) lotId: string,
    @Query() page: PageDto,
  ): Promise<LotTraceView> {
    return this.trace.ofLot(actor, lotId, page);
  }

  /** The whole trace of a lot as CSV, for a spreadsheet. */
  @Needs('trace')
  @Get('lots/:lotId/trace.csv')
  @ApiProduces('text/csv')
  @ApiOkResponse({ content: { 'text/csv': { schema: { type: 'string' } } } })
  async csvOfLot(
    @CurrentActor() actor: Actor,
    @Param('lotId', IdPipe) lotId: string,
  ): Promise<StreamableFile> {
    return new StreamableFile(await this.traceCsv.ofLot(actor, lotId), {
      type: 'text/csv; charset=utf-8; header=present',
      disposition: `attachment; filename="trace-${lotId}.csv"`,
    });
  }

  /** The trace of several lots together, each use once. */
  @Needs('trace')
  @Post('trace')
  @HttpCode(200)
  ofLots(@CurrentActor() actor: Actor, @Body() dto: TraceLotsDto): Promise<TraceView> {
    return this.trace.ofLots(actor, dto);
  }

  /** Every lot that touched a client, and what house blends among them were made of. */
  @Needs('trace')
  @Get('clients/:clientId/trace')
  ofClient(
    @CurrentActor() actor: Actor,
    @Param('clientId', IdPipe) clientId: string,
    @Query() page: PageDto,
  ): Promise<TraceView> {
    return this.trace.ofClient(actor, clientId, page);
  }

  /** Every lot that touched the client in one session, and what house blends among them were made of. */
  @Needs('trace')
  @Get('sessions/:sessionId/trace')
  ofSession(
    @CurrentActor() actor: Actor,
    @Param('sessionId', IdPipe) sessionId: string,
    @Query() page: PageDto,
  ): Promise<TraceView> {
    return this.trace.ofSession(actor, sessionId, page);
  }
}
