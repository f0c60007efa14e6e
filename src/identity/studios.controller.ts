import { Body, Controller, Get, Patch } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../platform/actor.js';
import { CurrentActor } from './actor.guard.js';
import { Needs, NeedsSignIn } from './needs.decorator.js';
import { ChangeStudioDto } from './studios.dto.js';
import { Studios } from './studios.service.js';
import { StudioView } from './studios.views.js';

@ApiTags('identity')
@Controller('v1/studios')
export class StudiosController {
  constructor(private readonly studios: Studios) {}

  /** The studios of this service. */
  @NeedsSignIn()
  @Get()
  list(): Promise<StudioView[]> {
    return this.studios.list();
  }

  /** A studio and its settings. */
  @Needs('see the studio')
  @Get(':studioId')
  show(@CurrentActor() actor: Actor): Promise<StudioView> {
    return this.studios.show(actor);
  }

  /** Changes settings. */
  @Needs('change the studio')
  @Patch(':studioId')
  change(@CurrentActor() actor: Actor, @Body() dto: ChangeStudioDto): Promise<StudioView> {
    return this.studios.change(actor, dto);
  }
}
