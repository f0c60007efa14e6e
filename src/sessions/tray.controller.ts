import { Body, Controller, Get, Param, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../identity/actor.guard.js';
import { Needs } from '../identity/needs.decorator.js';
import type { Actor } from '../platform/actor.js';
import { IdPipe } from '../platform/id.pipe.js';
import { CompleteSessionDto } from './completion.dto.js';
import { Completion } from './completion.service.js';
import { CompletionView } from './completion.views.js';
import { AddToMixDto, StartMixDto } from './mixes.dto.js';
import { Mixes } from './mixes.service.js';
import { AddedToMixView, MixView } from './mixes.views.js';
import { SetupTray } from './setup-tray.service.js';
import { ScanDto, TakeOffDto } from './tray.dto.js';
import { ScanView, TakenOffView, TrayView } from './tray.views.js';
import { TrayReader } from './tray-reader.service.js';
import { TrayRemoval } from './tray-removal.service.js';

@ApiTags('tray')
@Controller('v1/studios/:studioId/sessions/:sessionId')
export class TrayController {
  constructor(
    private readonly tray: SetupTray,
    private readonly removal: TrayRemoval,
    private readonly reader: TrayReader,
    private readonly mixes: Mixes,
    private readonly completion: Completion,
  ) {}

  /** The tray: what lies on it, what changed since, and what the kit lacks. */
  @Needs('read sessions')
  @Get('tray')
  show(@CurrentActor() actor: Actor, @Param('sessionId', IdPipe) sessionId: string): Promise<TrayView> {
    return this.reader.show(actor, sessionId);
  }

  /** Shows a symbol, or what was picked, to the tray and is answered admitted, warned, refused or with a question. */
  @Needs('work the tray')
  @Post('scans')
  scan(
    @CurrentActor() actor: Actor,
    @Param('sessionId', IdPipe) sessionId: string,
    @Body() dto: ScanDto,
  ): Promise<ScanView> {
    return this.tray.scan(actor, sessionId, dto);
  }

  /** Takes a line off the tray again: unopened, or opened and wasted. */
  @Needs('work the tray')
  @Post('tray/:lineId/take-off')
  takeOff(
    @CurrentActor() actor: Actor,
    @Param('sessionId', IdPipe) sessionId: string,
    @Param('lineId', IdPipe) lineId: string,
    @Body() dto: TakeOffDto,
  ): Promise<TakenOffView> {
    return this.removal.takeOff(actor, sessionId, lineId, dto);
  }

  /** The mixes of the session. */
  @Needs('read sessions')
  @Get('mixes')
  listMixes(@CurrentActor() actor: Actor, @Param('sessionId', IdPipe) sessionId: string): Promise<MixView[]> {
    return this.mixes.list(actor, sessionId);
  }

  /** Starts a mix: a single-use cup. */
  @Needs('work the tray')
  @Post('mixes')
  startMix(
    @CurrentActor() actor: Actor,
    @Param('sessionId', IdPipe) sessionId: string,
    @Body() dto: StartMixDto,
  ): Promise<MixView> {
    return this.mixes.start(actor, sessionId, dto);
  }

  /** Adds drops or a volume of a bottle on the tray to a mix, or takes a slip back. */
  @Needs('work the tray')
  @Post('mixes/:mixId/components')
  addToMix(
    @CurrentActor() actor: Actor,
    @Param('sessionId', IdPipe) sessionId: string,
    @Param('mixId', IdPipe) mixId: string,
    @Body() dto: AddToMixDto,
  ): Promise<AddedToMixView> {
    return this.mixes.add(actor, sessionId, mixId, dto);
  }

  /** Completes the session: books what was used and wasted, and signs it off. */
  @Needs('work the tray')
  @Post('completion')
  complete(
    @CurrentActor() actor: Actor,
    @Param('sessionId', IdPipe) sessionId: string,
    @Body() dto: CompleteSessionDto,
  ): Promise<CompletionView> {
    return this.completion.complete(actor, sessionId, dto);
  }
}
