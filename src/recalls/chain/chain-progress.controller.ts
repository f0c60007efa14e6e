import { Controller, Get, Param, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../../identity/actor.guard.js';
import { Needs } from '../../identity/needs.decorator.js';
import type { Actor } from '../../platform/actor.js';
import { IdPipe } from '../../platform/id.pipe.js';
import { ChainProgress } from './chain-progress.service.js';
import { ChainProgressView } from './chain-progress.views.js';
import { RecordQualityDto } from './record-quality.dto.js';
import { RecordQuality } from './record-quality.service.js';
import { ChainRecordQualityView, RecordQualityView } from './record-quality.views.js';

@ApiTags('recalls')
@Controller('v1/studios/:studioId')
export class ChainProgressController {
  constructor(
    private readonly progress: ChainProgress,
    private readonly quality: RecordQuality,
  ) {}

  /** How far each studio of the chain has come with a recall or drill, in numbers. */
  @Needs('answer recalls of the chain')
  @Get('recalls/:recallId/studios')
  studios(
    @CurrentActor() actor: Actor,
    @Param('recallId', IdPipe) recallId: string,
  ): Promise<ChainProgressView> {
    return this.progress.of(actor, recallId);
  }

  /** How well uses are recorded in this studio: what a recall would find. */
  @Needs('read recalls')
  @Get('recalls/record-quality')
  own(@CurrentActor() actor: Actor, @Query() query: RecordQualityDto): Promise<RecordQualityView> {
    return this.quality.ofStudio(actor, query);
  }

  /** The same of every studio of the chain. */
  @Needs('answer recalls of the chain')
  @Get('chain/record-quality')
  all(@CurrentActor() actor: Actor, @Query() query: RecordQualityDto): Promise<ChainRecordQualityView> {
    return this.quality.ofChain(actor, query);
  }
}
