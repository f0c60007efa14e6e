import { Body, Controller, Header, HttpCode, Post, StreamableFile } from '@nestjs/common';
import { ApiOkResponse, ApiProduces, ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../identity/actor.guard.js';
import { Needs } from '../identity/needs.decorator.js';
import type { Actor } from '../platform/actor.js';
import { PrintLabelsDto } from './labels.dto.js';
import { Labels } from './labels.service.js';

@ApiTags('stock')
@Controller('v1/studios/:studioId/labels')
export class LabelsController {
  constructor(private readonly labels: Labels) {}

  /** Prints labels for bottles and boxes, as a PDF. */
  @Needs('print labels')
  @Post()
  @HttpCode(200)
  @Header('content-type', 'application/pdf')
  @Header('content-disposition', 'inline; filename="labels.pdf"')
  @Header('cache-control', 'no-store')
  @ApiProduces('application/pdf')
  @ApiOkResponse({ schema: { type: 'string', format: 'binary' } })
  async print(@CurrentActor() actor: Actor, @Body() dto: PrintLabelsDto): Promise<StreamableFile> {
    return new StreamableFile(await this.labels.print(actor, dto));
  }
}
