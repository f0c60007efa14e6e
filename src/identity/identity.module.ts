import { Module } from '@nestjs/common';
import { APP_GUARD } from '@nestjs/core';
import { ActorGuard } from './actor.guard.js';
import { FirstStart } from './first-start.service.js';
import { PeopleController } from './people.controller.js';
import { People } from './people.service.js';
import { Person } from './person.entity.js';
import { Chain, Studio } from './studio.entity.js';
import { StudioChanges } from './studio-changes.service.js';
import { StudioFounding } from './studio-founding.service.js';
import { StudiosController } from './studios.controller.js';
import { Studios } from './studios.service.js';

export const identityEntities = [Chain, Studio, Person];

@Module({
  controllers: [StudiosController, PeopleController],
  providers: [
    Studios,
    StudioChanges,
    People,
    StudioFounding,
    FirstStart,
    { provide: APP_GUARD, useClass: ActorGuard },
  ],
  exports: [Studios, StudioChanges, People],
})
export class IdentityModule {}
