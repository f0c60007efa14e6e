import { Body, Controller, Get, Patch, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../platform/actor.js';
import { CurrentActor, CurrentRequester, type StudioActor } from './actor.guard.js';
import { Needs, NeedsSignIn } from './needs.decorator.js';
import type { Requester } from './sign-in/credentials.service.js';
import { AddStudioDto, ChangeStudioDto } from './studios.dto.js';
import { Studios } from './studios.service.js';
import { AddedStudioView, RetentionPresetView, StudioView } from './studios.views.js';

@ApiTags('identity')
@Controller('v1/studios')
export class StudiosController {
  constructor(private readonly studios: Studios) {}

  /** The studios in which I have a part. */
  @NeedsSignIn()
  @Get()
  list(@CurrentRequester() requester: Requester): Promise<StudioView[]> {
    return this.studios.list(requester);
  }

  /** A studio and its settings. */
  @Needs('see the studio')
  @Get(':studioId')
  show(@CurrentActor() actor: Actor): Promise<StudioView> {
    return this.studios.show(actor);
  }

  /** Published floors for keeping clients' records, of which the studio takes the one that binds it. */
  @Needs('see the studio')
  @Get(':studioId/retention-presets')
  retentionPresets(): RetentionPresetView[] {
    return this.studios.retentionPresets();
  }

  /** Changes settings. */
  @Needs('change the studio')
  @Patch(':studioId')
  change(@CurrentActor() actor: Actor, @Body() dto: ChangeStudioDto): Promise<StudioView> {
    return this.studios.change(actor, dto);
  }

  /** Adds a studio to this one's chain. */
  @Needs('add studios')
  @Post(':studioId/chain/studios')
  add(@CurrentActor() actor: StudioActor, @Body() dto: AddStudioDto): Promise<AddedStudioView> {
    return this.studios.add(actor, dto);
  }
}
