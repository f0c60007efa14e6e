import { Body, Controller, Get, Param, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../identity/actor.guard.js';
import { Needs } from '../identity/needs.decorator.js';
import type { Actor } from '../platform/actor.js';
import { IdPipe } from '../platform/id.pipe.js';
import { WriteDto } from '../platform/request.dto.js';
import { AlertAnswers } from './alert-answers.service.js';
import { AlertHistory } from './alert-history.service.js';
import { AlertList } from './alert-list.service.js';
import { AlertPageDto, CloseDto, GiveDto, NoteDto, PutOffDto } from './alerts.dto.js';
import { AlertDeliveryView, AlertHistoryView, AlertPageView, AlertView, SweepView } from './alerts.views.js';
import { Sweep } from './schedule/sweep.service.js';

@ApiTags('alerts')
@Controller('v1/studios/:studioId/alerts')
export class AlertsController {
  constructor(
    private readonly list: AlertList,
    private readonly history: AlertHistory,
    private readonly answers: AlertAnswers,
    private readonly sweep: Sweep,
  ) {}

  /** The open alerts, or all of them, or those that are asked for; the latest first. */
  @Needs('see alerts')
  @Get()
  page(@CurrentActor() actor: Actor, @Query() query: AlertPageDto): Promise<AlertPageView> {
    return this.list.page(actor, query);
  }

  /** Judges all conditions now instead of in the morning. */
  @Needs('answer alerts')
  @Post('sweep')
  sweepNow(@CurrentActor() actor: Actor, @Body() dto: WriteDto): Promise<SweepView> {
    return this.sweep.sweep(actor, dto.id);
  }

  /** An alert with its history. */
  @Needs('see alerts')
  @Get(':alertId')
  show(@CurrentActor() actor: Actor, @Param('alertId', IdPipe) alertId: string): Promise<AlertHistoryView> {
    return this.history.of(actor, alertId);
  }

  /** Notes that somebody has seen to an alert; it closes when its condition ends. */
  @Needs('answer alerts')
  @Post(':alertId/acknowledge')
  acknowledge(
    @CurrentActor() actor: Actor,
    @Param('alertId', IdPipe) alertId: string,
    @Body() dto: WriteDto,
  ): Promise<AlertView> {
    return this.answers.acknowledge(actor, alertId, dto);
  }

  /** Puts an alert off until the morning of a day: nobody is reminded of it before, unless it gets worse. */
  @Needs('answer alerts')
  @Post(':alertId/put-off')
  putOff(
    @CurrentActor() actor: Actor,
    @Param('alertId', IdPipe) alertId: string,
    @Body() dto: PutOffDto,
  ): Promise<AlertView> {
    return this.answers.putOff(actor, alertId, dto);
  }

  /** Gives an alert to somebody, who is told so and sees to it. */
  @Needs('answer alerts')
  @Post(':alertId/give')
  give(
    @CurrentActor() actor: Actor,
    @Param('alertId', IdPipe) alertId: string,
    @Body() dto: GiveDto,
  ): Promise<AlertView> {
    return this.answers.give(actor, alertId, dto);
  }

  /** Adds a note to the history of an alert. */
  @Needs('answer alerts')
  @Post(':alertId/notes')
  note(
    @CurrentActor() actor: Actor,
    @Param('alertId', IdPipe) alertId: string,
    @Body() dto: NoteDto,
  ): Promise<AlertView> {
    return this.answers.note(actor, alertId, dto);
  }

  /** Closes an alert by hand. While its condition stands and gets no worse, it does not open anew. */
  @Needs('answer alerts')
  @Post(':alertId/close')
  close(
    @CurrentActor() actor: Actor,
    @Param('alertId', IdPipe) alertId: string,
    @Body() dto: CloseDto,
  ): Promise<AlertView> {
    return this.answers.close(actor, alertId, dto);
  }

  /** How the announcements of an alert were delivered. */
  @Needs('see alerts')
  @Get(':alertId/deliveries')
  deliveries(
    @CurrentActor() actor: Actor,
    @Param('alertId', IdPipe) alertId: string,
  ): Promise<AlertDeliveryView[]> {
    return this.list.deliveries(actor, alertId);
  }
}
