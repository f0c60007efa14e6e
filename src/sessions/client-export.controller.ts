import { Controller, Get, Param, StreamableFile } from '@nestjs/common';
import { ApiOkResponse, ApiProduces, ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../identity/actor.guard.js';
import { Needs } from '../identity/needs.decorator.js';
import type { Actor } from '../platform/actor.js';
import { IdPipe } from '../platform/id.pipe.js';
import { ClientExports } from './client-export.service.js';
import { ClientExportView } from './client-export.views.js';
import { ClientExportPage } from './client-export-page.service.js';

@ApiTags('clients')
@Controller('v1/studios/:studioId/clients/:clientId')
export class ClientExportController {
  constructor(
    private readonly exports: ClientExports,
    private readonly page: ClientExportPage,
  ) {}

  /** Everything kept of the client, for a client who asks (GDPR Art. 15 and 20). Make sure first that it is they. */
  @Needs('hand out client data')
  @Get('export')
  export(
    @CurrentActor() actor: Actor,
    @Param('clientId', IdPipe) clientId: string,
  ): Promise<ClientExportView> {
    return this.exports.of(actor, clientId);
  }

  /** The same as a page to read and print. */
  @Needs('hand out client data')
  @Get('export.html')
  @ApiProduces('text/html')
  @ApiOkResponse({ content: { 'text/html': { schema: { type: 'string' } } } })
  async exportPage(
    @CurrentActor() actor: Actor,
    @Param('clientId', IdPipe) clientId: string,
  ): Promise<StreamableFile> {
    const view = await this.exports.of(actor, clientId);
    return new StreamableFile(Buffer.from(this.page.of(view), 'utf8'), {
      type: 'text/html; charset=utf-8',
      disposition: `attachment; filename="client-${view.client.reference}.html"`,
    });
  }
}
