import { Body, Controller, Get, Put } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../identity/actor.guard.js';
import type { Actor } from '../platform/actor.js';
import { SetLevelDto } from './levels.dto.js';
import { Levels } from './levels.service.js';
import { LevelView, StockLevelsView } from './levels.views.js';

@ApiTags('stock')
@Controller('v1/studios/:studioId/stock/levels')
export class LevelsController {
  constructor(private readonly levels: Levels) {}

  /** Usable, in-date stock by product and by cartridge configuration, with what to take first. */
  @Get()
  show(@CurrentActor() actor: Actor): Promise<StockLevelsView> {
    return this.levels.show(actor);
  }

  /** Sets the minimum of a product or of a configuration. */
  @Put()
  set(@CurrentActor() actor: Actor, @Body() dto: SetLevelDto): Promise<LevelView> {
    return this.levels.set(actor, dto);
  }
}
