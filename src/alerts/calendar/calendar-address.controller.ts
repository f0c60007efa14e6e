import { Body, Controller, Get, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor, CurrentRequester, ownBrowser, type StudioActor } from '../../identity/actor.guard.js';
import { Needs } from '../../identity/needs.decorator.js';
import type { Requester } from '../../identity/sign-in/credentials.service.js';
import { WriteDto } from '../../platform/request.dto.js';
import {
  MadeCalendarAddressView,
  OwnCalendarAddressView,
  RemovedCalendarAddressView,
} from './calendar-address.views.js';
import { CalendarAddresses } from './calendar-addresses.service.js';

@ApiTags('alerts')
@Controller('v1/studios/:studioId/calendar-address')
export class CalendarAddressController {
  constructor(private readonly addresses: CalendarAddresses) {}

  /** Whether there is an address at which your calendar program reads; the address itself is not shown again. */
  @Needs('be told of alerts')
  @Get()
  own(@CurrentActor() actor: StudioActor): Promise<OwnCalendarAddressView> {
    return this.addresses.own(actor);
  }

  /** Makes an address for yourself; the one before ends. At a browser of your own, for it lasts. */
  @Needs('be told of alerts')
  @Post()
  make(
    @CurrentActor() actor: StudioActor,
    @CurrentRequester() requester: Requester,
    @Body() dto: WriteDto,
  ): Promise<MadeCalendarAddressView> {
    ownBrowser(requester);
    return this.addresses.make(actor, dto);
  }

  /** Ends your address: whoever has it reads nothing more. */
  @Needs('be told of alerts')
  @Post('remove')
  remove(@CurrentActor() actor: StudioActor, @Body() dto: WriteDto): Promise<RemovedCalendarAddressView> {
    return this.addresses.remove(actor, dto);
  }
}
