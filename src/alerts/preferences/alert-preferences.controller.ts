import { Body, Controller, Get, Put } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor, type StudioActor } from '../../identity/actor.guard.js';
import { Needs } from '../../identity/needs.decorator.js';
import type { Actor } from '../../platform/actor.js';
import { SetAlertPreferenceDto } from './alert-preferences.dto.js';
import { AlertPreferences } from './alert-preferences.service.js';
import { AlertPreferenceView, ToldPersonView } from './alert-preferences.views.js';

@ApiTags('alerts')
@Controller('v1/studios/:studioId/alert-preferences')
export class AlertPreferencesController {
  constructor(private readonly preferences: AlertPreferences) {}

  /** How everybody who works here is told of alerts, and what leads to them. */
  @Needs('change alert channels')
  @Get()
  all(@CurrentActor() actor: Actor): Promise<ToldPersonView[]> {
    return this.preferences.all(actor);
  }

  /** How whoever asks is told of alerts. */
  @Needs('be told of alerts')
  @Get('own')
  own(@CurrentActor() actor: StudioActor): Promise<AlertPreferenceView> {
    return this.preferences.own(actor);
  }

  /** Chooses how one is told of alerts; each for oneself. */
  @Needs('be told of alerts')
  @Put('own')
  set(@CurrentActor() actor: StudioActor, @Body() dto: SetAlertPreferenceDto): Promise<AlertPreferenceView> {
    return this.preferences.set(actor, dto);
  }
}
