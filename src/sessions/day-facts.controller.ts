import { Controller, Get } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../identity/actor.guard.js';
import { Needs } from '../identity/needs.decorator.js';
import type { Actor } from '../platform/actor.js';
import { DayFactsReader } from './day-facts.service.js';
import { DayFactsView } from './day-facts.views.js';

@ApiTags('tray')
@Controller('v1/studios/:studioId/day-facts')
export class DayFactsController {
  constructor(private readonly reader: DayFactsReader) {}

  /** What a device needs to judge today's trays without network: sessions by the client's reference, and what is here. */
  @Needs('work the tray')
  @Get()
  show(@CurrentActor() actor: Actor): Promise<DayFactsView> {
    return this.reader.show(actor);
  }
}
