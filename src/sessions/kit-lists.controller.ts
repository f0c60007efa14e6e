import { Body, Controller, Get, Param, Put, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../identity/actor.guard.js';
import { Needs } from '../identity/needs.decorator.js';
import type { Actor } from '../platform/actor.js';
import { IdPipe } from '../platform/id.pipe.js';
import { PutKitListDto, ShowKitListDto } from './kit-lists.dto.js';
import { KitLists } from './kit-lists.service.js';
import { KitListView } from './kit-lists.views.js';

@ApiTags('sessions')
@Controller('v1/studios/:studioId/procedures/:procedureId/kit-list')
export class KitListsController {
  constructor(private readonly kitLists: KitLists) {}

  /** What the procedure needs on the tray: the artist's own list, else the procedure's. */
  @Needs('read sessions')
  @Get()
  show(
    @CurrentActor() actor: Actor,
    @Param('procedureId', IdPipe) procedureId: string,
    @Query() dto: ShowKitListDto,
  ): Promise<KitListView> {
    return this.kitLists.show(actor, procedureId, dto.artistId ?? null);
  }

  /** Makes the list of a procedure, or of one artist for it, or replaces it whole. */
  @Needs('change procedures')
  @Put()
  put(
    @CurrentActor() actor: Actor,
    @Param('procedureId', IdPipe) procedureId: string,
    @Body() dto: PutKitListDto,
  ): Promise<KitListView> {
    return this.kitLists.put(actor, procedureId, dto);
  }
}
