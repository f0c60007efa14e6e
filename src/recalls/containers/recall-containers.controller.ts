import { Body, Controller, Get, Param, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../../identity/actor.guard.js';
import { Needs } from '../../identity/needs.decorator.js';
import type { Actor } from '../../platform/actor.js';
import { IdPipe } from '../../platform/id.pipe.js';
import { Dispositions } from './dispositions.service.js';
import { Findings } from './findings.service.js';
import { RecallContainerPageDto, RecordDispositionDto, RecordFindingDto } from './recall-containers.dto.js';
import { RecallContainers } from './recall-containers.service.js';
import {
  RecallContainerPageView,
  RecordedDispositionView,
  RecordedFindingView,
} from './recall-containers.views.js';

@ApiTags('recalls')
@Controller('v1/studios/:studioId/recalls/:recallId/containers')
export class RecallContainersController {
  constructor(
    private readonly containers: RecallContainers,
    private readonly findings: Findings,
    private readonly dispositions: Dispositions,
  ) {}

  /** Every container of the recall that is here, was looked for or was disposed of, by their ids. */
  @Needs('read recalls')
  @Get()
  page(
    @CurrentActor() actor: Actor,
    @Param('recallId', IdPipe) recallId: string,
    @Query() query: RecallContainerPageDto,
  ): Promise<RecallContainerPageView> {
    return this.containers.page(actor, recallId, query);
  }

  /** Records that a container was found, and puts it aside, or that it was not. In a drill nothing is moved. */
  @Needs('find held stock')
  @Post(':containerId/findings')
  find(
    @CurrentActor() actor: Actor,
    @Param('recallId', IdPipe) recallId: string,
    @Param('containerId', IdPipe) containerId: string,
    @Body() dto: RecordFindingDto,
  ): Promise<RecordedFindingView> {
    return this.findings.record(actor, recallId, containerId, dto);
  }

  /** Records that a container, or pieces of a box, went back or were destroyed, with a witness or a photo. */
  @Needs('answer recalls')
  @Post(':containerId/dispositions')
  dispose(
    @CurrentActor() actor: Actor,
    @Param('recallId', IdPipe) recallId: string,
    @Param('containerId', IdPipe) containerId: string,
    @Body() dto: RecordDispositionDto,
  ): Promise<RecordedDispositionView> {
    return this.dispositions.record(actor, recallId, containerId, dto);
  }
}
