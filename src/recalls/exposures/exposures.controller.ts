import { Controller, Get, Param, Query, StreamableFile } from '@nestjs/common';
import { ApiOkResponse, ApiProduces, ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../../identity/actor.guard.js';
import { Needs } from '../../identity/needs.decorator.js';
import type { Actor } from '../../platform/actor.js';
import { IdPipe } from '../../platform/id.pipe.js';
import { PageDto } from '../../platform/request.dto.js';
import { spreadsheetType } from '../../platform/spreadsheet.js';
import { ClientRecalls } from './client-recalls.service.js';
import { ContactList } from './contact-list.service.js';
import { ExposedClients } from './exposed-clients.service.js';
import { ExposedSessions } from './exposed-sessions.service.js';
import { ExposureFile } from './exposure-file.service.js';
import { ExposedClientsDto, ExposuresDto } from './exposures.dto.js';
import { ClientRecallsView, ExposedClientPageView, ExposurePageView } from './exposures.views.js';
import { PlannedSessions } from './planned-sessions.service.js';
import { PlannedSessionsView } from './planned-sessions.views.js';

const csvType = 'text/csv; charset=utf-8; header=present';

@ApiTags('recalls')
@Controller('v1/studios/:studioId')
export class ExposuresController {
  constructor(
    private readonly sessions: ExposedSessions,
    private readonly clients: ExposedClients,
    private readonly planned: PlannedSessions,
    private readonly file: ExposureFile,
    private readonly contactList: ContactList,
    private readonly clientRecalls: ClientRecalls,
  ) {}

  /** Every session in which a lot of the recall touched a client, directly, in a mix or in a house blend, or may have. */
  @Needs('read recalls')
  @Get('recalls/:recallId/exposures')
  exposures(
    @CurrentActor() actor: Actor,
    @Param('recallId', IdPipe) recallId: string,
    @Query() dto: ExposuresDto,
  ): Promise<ExposurePageView> {
    return this.sessions.page(actor, recallId, dto);
  }

  /** Every client whom a lot of the recall touched, or may have, by reference, with how it stands with telling them. */
  @Needs('read recalls')
  @Get('recalls/:recallId/exposed-clients')
  exposedClients(
    @CurrentActor() actor: Actor,
    @Param('recallId', IdPipe) recallId: string,
    @Query() dto: ExposedClientsDto,
  ): Promise<ExposedClientPageView> {
    return this.clients.page(actor, recallId, dto);
  }

  /** Sessions in setup or planned that would use a lot of the recall, and what else is in date. */
  @Needs('read recalls')
  @Get('recalls/:recallId/planned-sessions')
  plannedSessions(
    @CurrentActor() actor: Actor,
    @Param('recallId', IdPipe) recallId: string,
    @Query() page: PageDto,
  ): Promise<PlannedSessionsView> {
    return this.planned.list(actor, recallId, page);
  }

  /** All exposures as CSV, for a spreadsheet: a row for each use and lot of the recall in it. */
  @Needs('read recalls')
  @Get('recalls/:recallId/exposures.csv')
  @ApiProduces('text/csv')
  @ApiOkResponse({ content: { 'text/csv': { schema: { type: 'string' } } } })
  async exposuresAsCsv(
    @CurrentActor() actor: Actor,
    @Param('recallId', IdPipe) recallId: string,
  ): Promise<StreamableFile> {
    return new StreamableFile(await this.file.csv(actor, recallId), {
      type: csvType,
      disposition: `attachment; filename="exposures-${recallId}.csv"`,
    });
  }

  /** The same as an Office Open XML workbook. */
  @Needs('read recalls')
  @Get('recalls/:recallId/exposures.xlsx')
  @ApiProduces(spreadsheetType)
  @ApiOkResponse({ content: { [spreadsheetType]: { schema: { type: 'string', format: 'binary' } } } })
  async exposuresAsSpreadsheet(
    @CurrentActor() actor: Actor,
    @Param('recallId', IdPipe) recallId: string,
  ): Promise<StreamableFile> {
    return new StreamableFile(await this.file.spreadsheet(actor, recallId), {
      type: spreadsheetType,
      disposition: `attachment; filename="exposures-${recallId}.xlsx"`,
    });
  }

  /** Names and contacts of all exposed clients as CSV, for those who tell them. Each look is noted. */
  @Needs('tell clients of recalls')
  @Get('recalls/:recallId/contact-list.csv')
  @ApiProduces('text/csv')
  @ApiOkResponse({ content: { 'text/csv': { schema: { type: 'string' } } } })
  async contactListAsCsv(
    @CurrentActor() actor: Actor,
    @Param('recallId', IdPipe) recallId: string,
  ): Promise<StreamableFile> {
    return new StreamableFile(await this.contactList.csv(actor, recallId), {
      type: csvType,
      disposition: `attachment; filename="contacts-${recallId}.csv"`,
    });
  }

  /** The recalls by which a client was exposed, for certain or possibly. */
  @Needs('read recalls')
  @Get('clients/:clientId/recalls')
  recallsOfClient(
    @CurrentActor() actor: Actor,
    @Param('clientId', IdPipe) clientId: string,
  ): Promise<ClientRecallsView> {
    return this.clientRecalls.of(actor, clientId);
  }
}
