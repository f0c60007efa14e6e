import { Controller, Get, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor, type StudioActor } from '../../identity/actor.guard.js';
import { Needs } from '../../identity/needs.decorator.js';
import { PageDto } from '../../platform/request.dto.js';
import { MorningSummaryPageView, SummaryNowView } from './morning-summaries.views.js';
import { OwnSummaries } from './own-summaries.service.js';

@ApiTags('alerts')
@Controller('v1/studios/:studioId')
export class MorningSummariesController {
  constructor(private readonly own: OwnSummaries) {}

  /** What the morning summary would say to you now; nothing is kept or sent. */
  @Needs('see alerts')
  @Get('morning-summary')
  now(@CurrentActor() actor: StudioActor): Promise<SummaryNowView> {
    return this.own.now(actor);
  }

  /** The summaries that were written for you, the latest first. */
  @Needs('see alerts')
  @Get('morning-summaries')
  page(@CurrentActor() actor: StudioActor, @Query() page: PageDto): Promise<MorningSummaryPageView> {
    return this.own.page(actor, page);
  }
}
