import { Body, Controller, Get, Param, Patch, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../identity/actor.guard.js';
import { Needs } from '../identity/needs.decorator.js';
import type { Actor } from '../platform/actor.js';
import { IdPipe } from '../platform/id.pipe.js';
import { AddProcedureDto, ChangeProcedureDto, ListProceduresDto } from './procedures.dto.js';
import { Procedures } from './procedures.service.js';
import { ProcedureView } from './procedures.views.js';

@ApiTags('sessions')
@Controller('v1/studios/:studioId/procedures')
export class ProceduresController {
  constructor(private readonly procedures: Procedures) {}

  /** What the studio offers. */
  @Needs('read sessions')
  @Get()
  list(@CurrentActor() actor: Actor, @Query() dto: ListProceduresDto): Promise<ProcedureView[]> {
    return this.procedures.list(actor, dto);
  }

  /** Adds a procedure. */
  @Needs('change procedures')
  @Post()
  add(@CurrentActor() actor: Actor, @Body() dto: AddProcedureDto): Promise<ProcedureView> {
    return this.procedures.add(actor, dto);
  }

  /** Changes or archives a procedure. */
  @Needs('change procedures')
  @Patch(':procedureId')
  change(
    @CurrentActor() actor: Actor,
    @Param('procedureId', IdPipe) procedureId: string,
    @Body() dto: ChangeProcedureDto,
  ): Promise<ProcedureView> {
    return this.procedures.change(actor, procedureId, dto);
  }
}
