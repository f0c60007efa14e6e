import { Controller, Get, Header, Param, StreamableFile } from '@nestjs/common';
import { ApiOkResponse, ApiProduces, ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../../identity/actor.guard.js';
import { Needs } from '../../identity/needs.decorator.js';
import type { Actor } from '../../platform/actor.js';
import { IdPipe } from '../../platform/id.pipe.js';
import { RecallReportView } from './recall-report.views.js';
import { RecallReports } from './recall-reports.service.js';
import { ReportDrawing } from './report-drawing.service.js';

@ApiTags('recalls')
@Controller('v1/studios/:studioId/recalls/:recallId')
export class ReportController {
  constructor(
    private readonly reports: RecallReports,
    private readonly drawing: ReportDrawing,
  ) {}

  /** The report of a recall as data; of a closed one as it stood at the closing. */
  @Needs('read recalls')
  @Get('report.json')
  show(@CurrentActor() actor: Actor, @Param('recallId', IdPipe) recallId: string): Promise<RecallReportView> {
    return this.reports.of(actor, recallId);
  }

  /** The same as a document to hand out. */
  @Needs('read recalls')
  @Get('report.pdf')
  @Header('content-type', 'application/pdf')
  @Header('content-disposition', 'inline; filename="recall-report.pdf"')
  @Header('cache-control', 'no-store')
  @ApiProduces('application/pdf')
  @ApiOkResponse({ schema: { type: 'string', format: 'binary' } })
  async print(
    @CurrentActor() actor: Actor,
    @Param('recallId', IdPipe) recallId: string,
  ): Promise<StreamableFile> {
    return new StreamableFile(await this.drawing.draw(await this.reports.of(actor, recallId)));
  }
}
