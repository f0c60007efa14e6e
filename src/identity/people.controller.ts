import { Body, Controller, Get, Param, Patch, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../platform/actor.js';
import { IdPipe } from '../platform/id.pipe.js';
import { CurrentActor } from './actor.guard.js';
import { Needs } from './needs.decorator.js';
import { AddPersonDto, ChangePersonDto } from './people.dto.js';
import { People } from './people.service.js';
import { PersonView } from './people.views.js';

@ApiTags('identity')
@Controller('v1/studios/:studioId/people')
export class PeopleController {
  constructor(private readonly people: People) {}

  /** Everyone who works or worked in the studio. */
  @Needs('see the studio')
  @Get()
  list(@CurrentActor() actor: Actor): Promise<PersonView[]> {
    return this.people.list(actor);
  }

  /** Adds a person. */
  @Needs('manage people')
  @Post()
  add(@CurrentActor() actor: Actor, @Body() dto: AddPersonDto): Promise<PersonView> {
    return this.people.make(actor, dto);
  }

  /** Changes a person's name, role or state. */
  @Needs('manage people')
  @Patch(':personId')
  change(
    @CurrentActor() actor: Actor,
    @Param('personId', IdPipe) personId: string,
    @Body() dto: ChangePersonDto,
  ): Promise<PersonView> {
    return this.people.change(actor, personId, dto);
  }
}
