import { Body, Controller, Delete, Get, Param, Put, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../../identity/actor.guard.js';
import { Needs } from '../../identity/needs.decorator.js';
import type { Actor } from '../../platform/actor.js';
import { IdPipe } from '../../platform/id.pipe.js';
import { ArtistPlannings } from './artist-plannings.service.js';
import { ItemPlannings } from './item-plannings.service.js';
import {
  ItemPlanningPageDto,
  RemoveItemPlanningDto,
  SetArtistPlanningDto,
  SetItemPlanningDto,
  SetPlanningSettingsDto,
} from './planning-settings.dto.js';
import {
  ArtistPlanningView,
  ItemPlanningPageView,
  ItemPlanningView,
  PlanningSettingsView,
} from './planning-settings.views.js';
import { StudioPlanning } from './studio-planning.service.js';

/** How the studio plans: itself, single items, and until when artists are here. */
@ApiTags('reorder')
@Controller('v1/studios/:studioId/planning-settings')
export class PlanningSettingsController {
  constructor(
    private readonly studio: StudioPlanning,
    private readonly items: ItemPlannings,
    private readonly artists: ArtistPlannings,
  ) {}

  /** How the studio plans, with what is assumed. */
  @Needs('read plans')
  @Get()
  show(@CurrentActor() actor: Actor): Promise<PlanningSettingsView> {
    return this.studio.show(actor);
  }

  /** Sets them whole: what is left out is assumed again. */
  @Needs('plan orders')
  @Put()
  set(@CurrentActor() actor: Actor, @Body() dto: SetPlanningSettingsDto): Promise<PlanningSettingsView> {
    return this.studio.set(actor, dto);
  }

  /** A page of the items that are planned otherwise. */
  @Needs('read plans')
  @Get('items')
  listItems(@CurrentActor() actor: Actor, @Query() page: ItemPlanningPageDto): Promise<ItemPlanningPageView> {
    return this.items.list(actor, page);
  }

  /** Sets how one item is planned, whole. */
  @Needs('plan orders')
  @Put('items')
  setItem(@CurrentActor() actor: Actor, @Body() dto: SetItemPlanningDto): Promise<ItemPlanningView> {
    return this.items.set(actor, dto);
  }

  /** It is planned as the studio plans again; it is answered as it stood. */
  @Needs('plan orders')
  @Delete('items')
  removeItem(@CurrentActor() actor: Actor, @Body() dto: RemoveItemPlanningDto): Promise<ItemPlanningView> {
    return this.items.remove(actor, dto);
  }

  /** Everybody who treats here, and until when. */
  @Needs('read plans')
  @Get('artists')
  listArtists(@CurrentActor() actor: Actor): Promise<ArtistPlanningView[]> {
    return this.artists.list(actor);
  }

  /** Sets until when somebody treats here. */
  @Needs('plan orders')
  @Put('artists/:personId')
  setArtist(
    @CurrentActor() actor: Actor,
    @Param('personId', IdPipe) personId: string,
    @Body() dto: SetArtistPlanningDto,
  ): Promise<ArtistPlanningView> {
    return this.artists.set(actor, personId, dto);
  }
}
