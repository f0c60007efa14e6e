import { Body, Controller, Get, Param, Patch, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor, type StudioActor } from '../../identity/actor.guard.js';
import { Needs } from '../../identity/needs.decorator.js';
import { IdPipe } from '../../platform/id.pipe.js';
import { WriteDto } from '../../platform/request.dto.js';
import { AlertDeliveryView } from '../alerts.views.js';
import { PushKeys } from '../channels/push/push-keys.service.js';
import {
  AddMailDestinationDto,
  AddPushDestinationDto,
  AddWebhookDestinationDto,
  AlertDestinationPageDto,
  ChangeAlertDestinationDto,
} from './alert-destinations.dto.js';
import {
  AlertDestinationPageView,
  AlertDestinationView,
  MadeWebhookView,
  PushKeyView,
  RotatedSecretView,
  TestedDestinationView,
} from './alert-destinations.views.js';
import { DestinationList } from './destination-list.service.js';
import { Destinations } from './destinations.service.js';

/** Where alerts go. Each person sees to their own; whoever may change the channels, to all. */
@ApiTags('alerts')
@Controller('v1/studios/:studioId/alert-destinations')
export class AlertDestinationsController {
  constructor(
    private readonly list: DestinationList,
    private readonly destinations: Destinations,
    private readonly pushKeys: PushKeys,
  ) {}

  /** Your own, and the studio's when you may change where alerts go. */
  @Needs('be told of alerts')
  @Get()
  seen(
    @CurrentActor() actor: StudioActor,
    @Query() query: AlertDestinationPageDto,
  ): Promise<AlertDestinationPageView> {
    return this.list.page(actor, query);
  }

  /** With what a browser subscribes, so that only this service can send to it. */
  @Needs('be told of alerts')
  @Get('push-key')
  async pushKey(): Promise<PushKeyView> {
    const { publicKey } = await this.pushKeys.pair();
    return { publicKey };
  }

  /** The latest deliveries to one, the newest first. */
  @Needs('be told of alerts')
  @Get(':destinationId/deliveries')
  deliveries(
    @CurrentActor() actor: StudioActor,
    @Param('destinationId', IdPipe) destinationId: string,
  ): Promise<AlertDeliveryView[]> {
    return this.list.deliveries(actor, destinationId);
  }

  /** A mail address: your own, or another's when you may change where alerts go. */
  @Needs('be told of alerts')
  @Post('mail')
  addMail(
    @CurrentActor() actor: StudioActor,
    @Body() dto: AddMailDestinationDto,
  ): Promise<AlertDestinationView> {
    return this.destinations.addMail(actor, dto);
  }

  /** A webhook of the studio. Its secret is shown in this answer only. */
  @Needs('change alert channels')
  @Post('webhooks')
  addWebhook(
    @CurrentActor() actor: StudioActor,
    @Body() dto: AddWebhookDestinationDto,
  ): Promise<MadeWebhookView> {
    return this.destinations.addWebhook(actor, dto);
  }

  /** The browser you ask from. */
  @Needs('be told of alerts')
  @Post('push')
  addPush(
    @CurrentActor() actor: StudioActor,
    @Body() dto: AddPushDestinationDto,
  ): Promise<AlertDestinationView> {
    return this.destinations.addPush(actor, dto);
  }

  /** Pauses or resumes one, gives it another name, or a webhook another severity. */
  @Needs('be told of alerts')
  @Patch(':destinationId')
  change(
    @CurrentActor() actor: StudioActor,
    @Param('destinationId', IdPipe) destinationId: string,
    @Body() dto: ChangeAlertDestinationDto,
  ): Promise<AlertDestinationView> {
    return this.destinations.change(actor, destinationId, dto);
  }

  /** Gives a webhook a new secret. The old one signs too for one more day. */
  @Needs('change alert channels')
  @Post(':destinationId/rotate-secret')
  rotateSecret(
    @CurrentActor() actor: StudioActor,
    @Param('destinationId', IdPipe) destinationId: string,
    @Body() dto: WriteDto,
  ): Promise<RotatedSecretView> {
    return this.destinations.rotateSecret(actor, destinationId, dto);
  }

  /** Removes one for good: its address and secrets are wiped, what was promised to it is not sent any more. */
  @Needs('be told of alerts')
  @Post(':destinationId/remove')
  remove(
    @CurrentActor() actor: StudioActor,
    @Param('destinationId', IdPipe) destinationId: string,
    @Body() dto: WriteDto,
  ): Promise<AlertDestinationView> {
    return this.destinations.remove(actor, destinationId, dto);
  }

  /** Promises a test, which goes the way of all deliveries. */
  @Needs('be told of alerts')
  @Post(':destinationId/test')
  test(
    @CurrentActor() actor: StudioActor,
    @Param('destinationId', IdPipe) destinationId: string,
    @Body() dto: WriteDto,
  ): Promise<TestedDestinationView> {
    return this.destinations.test(actor, destinationId, dto);
  }
}
