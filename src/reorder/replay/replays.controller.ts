import { Body, Controller, Get, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../../identity/actor.guard.js';
import { Needs } from '../../identity/needs.decorator.js';
import type { Actor } from '../../platform/actor.js';
import { MakeReplayDto } from './replays.dto.js';
import { Replays } from './replays.service.js';
import { ReplaysView, ReplayView } from './replays.views.js';

@ApiTags('ordering')
@Controller('v1/studios/:studioId/plans/replay')
export class ReplaysController {
  constructor(private readonly replays: Replays) {}

  /** What had come of it if plans had been followed over the record, beside what was ordered: the latest answer. */
  @Needs('read plans')
  @Get()
  latest(@CurrentActor() actor: Actor): Promise<ReplaysView> {
    return this.replays.latest(actor);
  }

  /** Has it worked out anew; it waits its turn and runs in the background. It ends like a plan: …/plans/{planId}/cancel. */
  @Needs('plan orders')
  @Post()
  make(@CurrentActor() actor: Actor, @Body() dto: MakeReplayDto): Promise<ReplayView> {
    return this.replays.make(actor, dto);
  }
}
