import { Body, Controller, Get, Param, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../identity/actor.guard.js';
import { Needs } from '../identity/needs.decorator.js';
import type { Actor } from '../platform/actor.js';
import { IdPipe } from '../platform/id.pipe.js';
import { DeclareEquivalenceDto, WithdrawEquivalenceDto } from './configurations.dto.js';
import { Configurations } from './configurations.service.js';
import { ConfigurationView, EquivalenceView } from './configurations.views.js';

@ApiTags('catalogue')
@Controller('v1/studios/:studioId/configurations')
export class ConfigurationsController {
  constructor(private readonly configurations: Configurations) {}

  /** Cartridges by configuration: those within one stand for each other. */
  @Needs('read the register')
  @Get()
  list(@CurrentActor() actor: Actor): Promise<ConfigurationView[]> {
    return this.configurations.list(actor);
  }

  /** Declares that two cartridge products stand for each other. */
  @Needs('change the register')
  @Post('equivalences')
  declare(@CurrentActor() actor: Actor, @Body() dto: DeclareEquivalenceDto): Promise<EquivalenceView> {
    return this.configurations.declare(actor, dto);
  }

  /** Withdraws a declaration. */
  @Needs('change the register')
  @Post('equivalences/:equivalenceId/withdraw')
  withdraw(
    @CurrentActor() actor: Actor,
    @Param('equivalenceId', IdPipe) equivalenceId: string,
    @Body() dto: WithdrawEquivalenceDto,
  ): Promise<EquivalenceView> {
    return this.configurations.withdraw(actor, equivalenceId, dto);
  }
}
