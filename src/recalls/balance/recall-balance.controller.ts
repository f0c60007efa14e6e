import { Controller, Get, Param, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../../identity/actor.guard.js';
import { Needs } from '../../identity/needs.decorator.js';
import type { Actor } from '../../platform/actor.js';
import { IdPipe } from '../../platform/id.pipe.js';
import { PageDto } from '../../platform/request.dto.js';
import { BalanceMovementPageDto } from './recall-balance.dto.js';
import { BalanceMovementPageView, RecallBalanceView } from './recall-balance.views.js';
import { RecallBalances } from './recall-balances.service.js';

@ApiTags('recalls')
@Controller('v1/studios/:studioId/recalls/:recallId/balance')
export class RecallBalanceController {
  constructor(private readonly balances: RecallBalances) {}

  /**
   * The mass balance of each lot of the recall, and of the house blends in which they are: pieces exactly, volumes as
   * estimates, with what is not explained.
   */
  @Needs('read recalls')
  @Get()
  page(
    @CurrentActor() actor: Actor,
    @Param('recallId', IdPipe) recallId: string,
    @Query() query: PageDto,
  ): Promise<RecallBalanceView> {
    return this.balances.page(actor, recallId, query);
  }

  /** The movements behind a figure of one lot. */
  @Needs('read recalls')
  @Get(':lotId/movements')
  movements(
    @CurrentActor() actor: Actor,
    @Param('recallId', IdPipe) recallId: string,
    @Param('lotId', IdPipe) lotId: string,
    @Query() query: BalanceMovementPageDto,
  ): Promise<BalanceMovementPageView> {
    return this.balances.movements(actor, recallId, lotId, query);
  }
}
