import { Body, Controller, Get, HttpCode, Param, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../identity/actor.guard.js';
import { Needs } from '../identity/needs.decorator.js';
import type { Actor } from '../platform/actor.js';
import { IdPipe } from '../platform/id.pipe.js';
import { maximumLargerBodyBytes, TakesLargerBody } from '../platform/larger-body.decorator.js';
import { PageDto } from '../platform/request.dto.js';
import { NoticeReadings } from './notice-readings.service.js';
import { RecallAmendment } from './recall-amendment.service.js';
import { RecallList } from './recall-list.service.js';
import { RecallNotices } from './recall-notices.service.js';
import { RecallOpening } from './recall-opening.service.js';
import {
  AmendRecallDto,
  DecideLotDto,
  DismissNoticeDto,
  MatchScopeDto,
  OpenRecallDto,
  ReadNoticeDto,
  RecallPageDto,
  WithdrawRecallDto,
} from './recalls.dto.js';
import {
  AmendedRecallView,
  DecidedLotView,
  DismissedNoticeView,
  MatchedLotsView,
  NoticeReadingView,
  OpenedRecallView,
  RecallLotPageView,
  RecallNoticeView,
  RecallPageView,
  RecallView,
  WaitingNoticePageView,
  WithdrawnRecallView,
} from './recalls.views.js';

@ApiTags('recalls')
@Controller('v1/studios/:studioId/recalls')
export class RecallsController {
  constructor(
    private readonly readings: NoticeReadings,
    private readonly opening: RecallOpening,
    private readonly amendment: RecallAmendment,
    private readonly list: RecallList,
    private readonly notices: RecallNotices,
  ) {}

  /** Reads a notice and proposes a scope, with the lots it meets here. Nothing is written. */
  @Needs('answer recalls')
  @TakesLargerBody(maximumLargerBodyBytes)
  @Post('readings')
  @HttpCode(200)
  read(@CurrentActor() actor: Actor, @Body() dto: ReadNoticeDto): Promise<NoticeReadingView> {
    return this.readings.read(actor, dto);
  }

  /** The lots that a scope meets here. Nothing is written. */
  @Needs('answer recalls')
  @TakesLargerBody(maximumLargerBodyBytes)
  @Post('matches')
  @HttpCode(200)
  match(@CurrentActor() actor: Actor, @Body() dto: MatchScopeDto): Promise<MatchedLotsView> {
    return this.readings.match(actor, dto);
  }

  /** Published notices that met something here and wait for an answer. */
  @Needs('read recalls')
  @Get('notices')
  waitingNotices(@CurrentActor() actor: Actor, @Query() query: PageDto): Promise<WaitingNoticePageView> {
    return this.notices.waiting(actor, query);
  }

  /** A notice, as it came. */
  @Needs('read recalls')
  @Get('notices/:noticeId')
  notice(
    @CurrentActor() actor: Actor,
    @Param('noticeId', IdPipe) noticeId: string,
  ): Promise<RecallNoticeView> {
    return this.notices.show(actor, noticeId);
  }

  /** Notes that a published notice asks for nothing here. */
  @Needs('answer recalls')
  @Post('notices/:noticeId/dismissal')
  dismissNotice(
    @CurrentActor() actor: Actor,
    @Param('noticeId', IdPipe) noticeId: string,
    @Body() dto: DismissNoticeDto,
  ): Promise<DismissedNoticeView> {
    return this.notices.dismiss(actor, noticeId, dto);
  }

  /** The recalls that were answered here, and drills. */
  @Needs('read recalls')
  @Get()
  page(@CurrentActor() actor: Actor, @Query() query: RecallPageDto): Promise<RecallPageView> {
    return this.list.page(actor, query);
  }

  /** Opens a recall: its certain lots are held at once, the possible ones by choice, and what may still arrive. */
  @Needs('answer recalls')
  @TakesLargerBody(maximumLargerBodyBytes)
  @Post()
  open(@CurrentActor() actor: Actor, @Body() dto: OpenRecallDto): Promise<OpenedRecallView> {
    return this.opening.open(actor, dto);
  }

  /** A recall, with what it was about from the first scope on. */
  @Needs('read recalls')
  @Get(':recallId')
  show(@CurrentActor() actor: Actor, @Param('recallId', IdPipe) recallId: string): Promise<RecallView> {
    return this.list.show(actor, recallId);
  }

  /** The lots that its scope meets. */
  @Needs('read recalls')
  @Get(':recallId/lots')
  lots(
    @CurrentActor() actor: Actor,
    @Param('recallId', IdPipe) recallId: string,
    @Query() query: PageDto,
  ): Promise<RecallLotPageView> {
    return this.list.lots(actor, recallId, query);
  }

  /** Widens or corrects what it is about. A recall that had ended is open again. */
  @Needs('answer recalls')
  @TakesLargerBody(maximumLargerBodyBytes)
  @Post(':recallId/scopes')
  amend(
    @CurrentActor() actor: Actor,
    @Param('recallId', IdPipe) recallId: string,
    @Body() dto: AmendRecallDto,
  ): Promise<AmendedRecallView> {
    return this.amendment.amend(actor, recallId, dto);
  }

  /** Decides whether a lot that is possibly meant is affected. */
  @Needs('answer recalls')
  @Post(':recallId/lots/:lotId/decisions')
  decide(
    @CurrentActor() actor: Actor,
    @Param('recallId', IdPipe) recallId: string,
    @Param('lotId', IdPipe) lotId: string,
    @Body() dto: DecideLotDto,
  ): Promise<DecidedLotView> {
    return this.amendment.decide(actor, recallId, lotId, dto);
  }

  /** Withdraws a recall: nothing more is caught, and the release of its holds is asked for. */
  @Needs('answer recalls')
  @Post(':recallId/withdrawal')
  withdraw(
    @CurrentActor() actor: Actor,
    @Param('recallId', IdPipe) recallId: string,
    @Body() dto: WithdrawRecallDto,
  ): Promise<WithdrawnRecallView> {
    return this.amendment.withdraw(actor, recallId, dto);
  }
}
