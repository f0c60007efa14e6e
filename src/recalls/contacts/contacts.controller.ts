import { Body, Controller, Get, Param, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor, type StudioActor } from '../../identity/actor.guard.js';
import { Needs } from '../../identity/needs.decorator.js';
import { IdPipe } from '../../platform/id.pipe.js';
import {
  ContactPageDto,
  EffectivenessDto,
  PrepareMessageDto,
  RecipientPageDto,
  RecordContactDto,
} from './contacts.dto.js';
import { RecallContacts } from './contacts.service.js';
import {
  ContactPageView,
  EffectivenessView,
  PreparedMessageView,
  RecipientPageView,
  RecordedContactView,
} from './contacts.views.js';
import { Effectiveness } from './effectiveness.service.js';
import { RecallMessages } from './messages.service.js';
import { Recipients } from './recipients.service.js';

/** Telling people of a recall: who is to be told, with what words, and who was. Nothing is sent to clients from here. */
@ApiTags('recalls')
@Controller('v1/studios/:studioId/recalls/:recallId')
export class RecallContactsController {
  constructor(
    private readonly recipients: Recipients,
    private readonly messages: RecallMessages,
    private readonly contacts: RecallContacts,
    private readonly effectiveness: Effectiveness,
  ) {}

  /** Who of an audience is to be told, and how it stands with each. */
  @Needs('read recalls')
  @Get('recipients')
  listRecipients(
    @CurrentActor() actor: StudioActor,
    @Param('recallId', IdPipe) recallId: string,
    @Query() page: RecipientPageDto,
  ): Promise<RecipientPageView> {
    return this.recipients.list(actor, recallId, page);
  }

  /** Prepares a message for one recipient; one for a client needs the permission to tell clients of recalls. */
  @Needs('answer recalls')
  @Get('messages')
  prepareMessage(
    @CurrentActor() actor: StudioActor,
    @Param('recallId', IdPipe) recallId: string,
    @Query() dto: PrepareMessageDto,
  ): Promise<PreparedMessageView> {
    return this.messages.prepare(actor, recallId, dto);
  }

  /** Records an attempt to tell somebody; one to tell a client needs the permission to tell clients of recalls. */
  @Needs('answer recalls')
  @Post('contacts')
  recordContact(
    @CurrentActor() actor: StudioActor,
    @Param('recallId', IdPipe) recallId: string,
    @Body() dto: RecordContactDto,
  ): Promise<RecordedContactView> {
    return this.contacts.record(actor, recallId, dto);
  }

  /** Attempts to tell people, the latest first. */
  @Needs('read recalls')
  @Get('contacts')
  listContacts(
    @CurrentActor() actor: StudioActor,
    @Param('recallId', IdPipe) recallId: string,
    @Query() page: ContactPageDto,
  ): Promise<ContactPageView> {
    return this.contacts.list(actor, recallId, page);
  }

  /** How many of those to be told were told, and which level of effectiveness checks that meets. */
  @Needs('read recalls')
  @Get('effectiveness')
  showEffectiveness(
    @CurrentActor() actor: StudioActor,
    @Param('recallId', IdPipe) recallId: string,
    @Query() dto: EffectivenessDto,
  ): Promise<EffectivenessView> {
    return this.effectiveness.show(actor, recallId, dto);
  }
}
