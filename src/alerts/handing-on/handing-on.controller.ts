import { Body, Controller, Get, Put } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../../identity/actor.guard.js';
import { Needs } from '../../identity/needs.decorator.js';
import type { Actor } from '../../platform/actor.js';
import { SetHandingOnDto } from './handing-on.dto.js';
import { HandingOnSettings } from './handing-on.service.js';
import { HandingOnView } from './handing-on.views.js';

@ApiTags('alerts')
@Controller('v1/studios/:studioId/handing-on')
export class HandingOnController {
  constructor(private readonly settings: HandingOnSettings) {}

  /** Who is told of an urgent alert in what order, and after how many minutes it goes on to the next. */
  @Needs('change alert channels')
  @Get()
  show(@CurrentActor() actor: Actor): Promise<HandingOnView> {
    return this.settings.show(actor);
  }

  /** Sets the order of people and the minutes. */
  @Needs('change alert channels')
  @Put()
  set(@CurrentActor() actor: Actor, @Body() dto: SetHandingOnDto): Promise<HandingOnView> {
    return this.settings.set(actor, dto);
  }
}
