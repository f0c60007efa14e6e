import { Body, Controller, Get, HttpCode, Param, Patch, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../identity/actor.guard.js';
import { Needs } from '../identity/needs.decorator.js';
import type { Actor } from '../platform/actor.js';
import { IdPipe } from '../platform/id.pipe.js';
import { PageDto } from '../platform/request.dto.js';
import { AddClientDto, ChangeClientDto, SearchClientsDto } from './clients.dto.js';
import { Clients } from './clients.service.js';
import { ClientPageView, ClientView, WrittenClientView } from './clients.views.js';
import { ShownClients } from './shown-clients.service.js';

@ApiTags('clients')
@Controller('v1/studios/:studioId/clients')
export class ClientsController {
  constructor(
    private readonly clients: Clients,
    private readonly shownClients: ShownClients,
  ) {}

  /** The clients of the studio, a page at a time. */
  @Needs('read clients')
  @Get()
  list(@CurrentActor() actor: Actor, @Query() page: PageDto): Promise<ClientPageView> {
    return this.shownClients.list(actor, page);
  }

  /** Finds clients by their whole name, contact or reference, which is sent in the body. */
  @Needs('read clients')
  @Post('search')
  @HttpCode(200)
  search(@CurrentActor() actor: Actor, @Body() dto: SearchClientsDto): Promise<ClientView[]> {
    return this.shownClients.search(actor, dto);
  }

  /** A client. */
  @Needs('read clients')
  @Get(':clientId')
  show(@CurrentActor() actor: Actor, @Param('clientId', IdPipe) clientId: string): Promise<ClientView> {
    return this.shownClients.show(actor, clientId);
  }

  /** Adds a client; the answer holds their new reference. */
  @Needs('change clients')
  @Post()
  add(@CurrentActor() actor: Actor, @Body() dto: AddClientDto): Promise<WrittenClientView> {
    return this.clients.add(actor, dto);
  }

  /** Changes a client's name, contact or note. */
  @Needs('change clients')
  @Patch(':clientId')
  change(
    @CurrentActor() actor: Actor,
    @Param('clientId', IdPipe) clientId: string,
    @Body() dto: ChangeClientDto,
  ): Promise<WrittenClientView> {
    return this.clients.change(actor, clientId, dto);
  }
}
