import { Body, Controller, Get, Param, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../../identity/actor.guard.js';
import { Needs } from '../../identity/needs.decorator.js';
import type { Actor } from '../../platform/actor.js';
import { IdPipe } from '../../platform/id.pipe.js';
import { Arrival } from './arrival.service.js';
import { Sending } from './sending.service.js';
import { TransferList } from './transfer-list.service.js';
import { RecordArrivalDto, SendTransferDto, TransferPageDto, WithdrawTransferDto } from './transfers.dto.js';
import { ArrivalView, ReceivingStudioView, TransferPageView, TransferView } from './transfers.views.js';
import { Withdrawal } from './withdrawal.service.js';

@ApiTags('transfers')
@Controller('v1/studios/:studioId/transfers')
export class TransfersController {
  constructor(
    private readonly sending: Sending,
    private readonly arrival: Arrival,
    private readonly withdrawal: Withdrawal,
    private readonly list: TransferList,
  ) {}

  /** Sends goods to another studio of the chain; they are in transit until one of the two says what became of them. */
  @Needs('transfer stock')
  @Post()
  send(@CurrentActor() actor: Actor, @Body() dto: SendTransferDto): Promise<TransferView> {
    return this.sending.send(actor, dto);
  }

  /** A page of transfers from and to this studio, those with anything in transit first. */
  @Needs('read stock')
  @Get()
  page(@CurrentActor() actor: Actor, @Query() query: TransferPageDto): Promise<TransferPageView> {
    return this.list.page(actor, query);
  }

  /** The studios of the chain that goods can be sent to. */
  @Needs('transfer stock')
  @Get('receivers')
  receivers(@CurrentActor() actor: Actor): Promise<ReceivingStudioView[]> {
    return this.list.receivers(actor);
  }

  /** One transfer with its lines and what became of them. */
  @Needs('read stock')
  @Get(':transferId')
  show(@CurrentActor() actor: Actor, @Param('transferId', IdPipe) transferId: string): Promise<TransferView> {
    return this.list.show(actor, transferId);
  }

  /** Records what arrived here, what is damaged and what is missing; held goods arrive on hold. */
  @Needs('receive stock')
  @Post(':transferId/arrival')
  arrive(
    @CurrentActor() actor: Actor,
    @Param('transferId', IdPipe) transferId: string,
    @Body() dto: RecordArrivalDto,
  ): Promise<ArrivalView> {
    return this.arrival.record(actor, transferId, dto);
  }

  /** Calls back what was sent from here, while nothing of it has arrived; it stands on the shelf again. */
  @Needs('transfer stock')
  @Post(':transferId/withdrawal')
  withdraw(
    @CurrentActor() actor: Actor,
    @Param('transferId', IdPipe) transferId: string,
    @Body() dto: WithdrawTransferDto,
  ): Promise<TransferView> {
    return this.withdrawal.withdraw(actor, transferId, dto);
  }
}
