import { Body, Controller, Get, Param, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../identity/actor.guard.js';
import { Needs } from '../identity/needs.decorator.js';
import type { Actor } from '../platform/actor.js';
import { IdPipe } from '../platform/id.pipe.js';
import { AddPlaceDto, ArchivePlaceDto } from './places.dto.js';
import { Places } from './places.service.js';
import { PlaceView } from './places.views.js';

@ApiTags('stock')
@Controller('v1/studios/:studioId/places')
export class PlacesController {
  constructor(private readonly places: Places) {}

  /** Where stock stands, archived places too. */
  @Needs('read stock')
  @Get()
  list(@CurrentActor() actor: Actor): Promise<PlaceView[]> {
    return this.places.list(actor);
  }

  /** Adds a place. */
  @Needs('handle stock')
  @Post()
  add(@CurrentActor() actor: Actor, @Body() dto: AddPlaceDto): Promise<PlaceView> {
    return this.places.add(actor, dto);
  }

  /** Archives a place where nothing stands any more. */
  @Needs('handle stock')
  @Post(':placeId/archive')
  archive(
    @CurrentActor() actor: Actor,
    @Param('placeId', IdPipe) placeId: string,
    @Body() dto: ArchivePlaceDto,
  ): Promise<PlaceView> {
    return this.places.archive(actor, placeId, dto);
  }
}
