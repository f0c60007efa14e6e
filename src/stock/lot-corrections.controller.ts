import { Body, Controller, Param, Patch } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../identity/actor.guard.js';
import { Needs } from '../identity/needs.decorator.js';
import type { Actor } from '../platform/actor.js';
import { IdPipe } from '../platform/id.pipe.js';
import { CorrectLotDto } from './lot-corrections.dto.js';
import { LotCorrections } from './lot-corrections.service.js';
import { CorrectedLotView } from './lot-corrections.views.js';

@ApiTags('stock')
@Controller('v1/studios/:studioId/lots')
export class LotCorrectionsController {
  constructor(private readonly corrections: LotCorrections) {}

  /** Corrects the codes or dates of a lot; what stood there before stays findable. */
  @Needs('correct stock')
  @Patch(':lotId')
  correct(
    @CurrentActor() actor: Actor,
    @Param('lotId', IdPipe) lotId: string,
    @Body() dto: CorrectLotDto,
  ): Promise<CorrectedLotView> {
    return this.corrections.correct(actor, lotId, dto);
  }
}
