import { Body, Controller, Param, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../identity/actor.guard.js';
import { Needs } from '../identity/needs.decorator.js';
import type { Actor } from '../platform/actor.js';
import { IdPipe } from '../platform/id.pipe.js';
import { ReverseMovementDto } from './container-operations.dto.js';
import { ContainerChangeView } from './container-operations.views.js';
import { MovementReversal } from './movement-reversal.service.js';

@ApiTags('stock')
@Controller('v1/studios/:studioId/movements')
export class MovementsController {
  constructor(private readonly reversal: MovementReversal) {}

  /** Reverses a movement that was a mistake; both stay visible. */
  @Needs('correct stock')
  @Post(':movementId/reversal')
  reverse(
    @CurrentActor() actor: Actor,
    @Param('movementId', IdPipe) movementId: string,
    @Body() dto: ReverseMovementDto,
  ): Promise<ContainerChangeView> {
    return this.reversal.reverse(actor, movementId, dto);
  }
}
