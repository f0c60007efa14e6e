import { Body, Controller, Delete, Get, Param, Put } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../identity/actor.guard.js';
import { Needs } from '../identity/needs.decorator.js';
import type { Actor } from '../platform/actor.js';
import { IdPipe } from '../platform/id.pipe.js';
import { RemoveLevelDto, SetLevelDto } from './levels.dto.js';
import { Levels } from './levels.service.js';
import { LevelView, StockLevelsView } from './levels.views.js';

@ApiTags('stock')
@Controller('v1/studios/:studioId/stock/levels')
export class LevelsController {
  constructor(private readonly levels: Levels) {}

  /** Usable, in-date stock by product and by cartridge configuration, with what to take first. */
  @Needs('read stock')
  @Get()
  show(@CurrentActor() actor: Actor): Promise<StockLevelsView> {
    return this.levels.show(actor);
  }

  /** Sets the minimum of a product or of a configuration. */
  @Needs('set levels')
  @Put()
  set(@CurrentActor() actor: Actor, @Body() dto: SetLevelDto): Promise<LevelView> {
    return this.levels.set(actor, dto);
  }

  /** Removes a minimum, with its alert; it is answered as it stood. */
  @Needs('set levels')
  @Delete(':levelId')
  remove(
    @CurrentActor() actor: Actor,
    @Param('levelId', IdPipe) levelId: string,
    @Body() dto: RemoveLevelDto,
  ): Promise<LevelView> {
    return this.levels.remove(actor, levelId, dto);
  }
}
