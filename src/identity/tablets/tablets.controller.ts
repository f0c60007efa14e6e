import {
  Body,
  Controller,
  Get,
  Header,
  HttpCode,
  Param,
  Patch,
  Post,
  Req,
  Res,
  StreamableFile,
} from '@nestjs/common';
import { ApiOkResponse, ApiProduces, ApiTags } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import type { Actor } from '../../platform/actor.js';
import { IdPipe } from '../../platform/id.pipe.js';
import { WriteDto } from '../../platform/request.dto.js';
import { CurrentActor, CurrentRequester, ownBrowser } from '../actor.guard.js';
import { Needs } from '../needs.decorator.js';
import type { Requester } from '../sign-in/credentials.service.js';
import { Badges } from './badges.service.js';
import { EnrolTabletDto, RenameTabletDto } from './tablets.dto.js';
import { Tablets } from './tablets.service.js';
import { BadgeView, TabletView, WithdrawnBadgeView } from './tablets.views.js';

/** The tablets of a studio, and the badges that work on them. */
@ApiTags('tablets')
@Controller('v1/studios/:studioId')
export class TabletsController {
  constructor(
    private readonly tablets: Tablets,
    private readonly badges: Badges,
  ) {}

  /** The tablets, the newest first. */
  @Needs('enrol tablets')
  @Get('tablets')
  list(@CurrentActor() actor: Actor): Promise<TabletView[]> {
    return this.tablets.list(actor);
  }

  /** Makes the browser that asks a tablet of the studio, and signs its enroller out there. */
  @Needs('enrol tablets')
  @Post('tablets')
  async enrol(
    @CurrentActor() actor: Actor,
    @CurrentRequester() requester: Requester,
    @Body() dto: EnrolTabletDto,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<TabletView> {
    ownBrowser(requester);
    return this.tablets.enrol(actor, dto, request, reply);
  }

  /** Renames a tablet. */
  @Needs('enrol tablets')
  @Patch('tablets/:tabletId')
  rename(
    @CurrentActor() actor: Actor,
    @Param('tabletId', IdPipe) tabletId: string,
    @Body() dto: RenameTabletDto,
  ): Promise<TabletView> {
    return this.tablets.rename(actor, tabletId, dto);
  }

  /** Revokes a tablet: whoever is signed in on it is signed out, and nobody signs in there any more. */
  @Needs('enrol tablets')
  @Post('tablets/:tabletId/revocation')
  revoke(
    @CurrentActor() actor: Actor,
    @Param('tabletId', IdPipe) tabletId: string,
    @Body() dto: WriteDto,
  ): Promise<TabletView> {
    return this.tablets.revoke(actor, tabletId, dto.id);
  }

  /** The badges that work. */
  @Needs('manage people')
  @Get('badges')
  listBadges(@CurrentActor() actor: Actor): Promise<BadgeView[]> {
    return this.badges.list(actor);
  }

  /** Prints a badge for a person, as a PDF; the one they had works no more. */
  @Needs('manage people')
  @Post('people/:personId/badge')
  @HttpCode(200)
  @Header('content-type', 'application/pdf')
  @Header('content-disposition', 'inline; filename="badge.pdf"')
  @Header('cache-control', 'no-store')
  @ApiProduces('application/pdf')
  @ApiOkResponse({ schema: { type: 'string', format: 'binary' } })
  async printBadge(
    @CurrentActor() actor: Actor,
    @Param('personId', IdPipe) personId: string,
    @Body() dto: WriteDto,
  ): Promise<StreamableFile> {
    return new StreamableFile(await this.badges.print(actor, personId, dto.id));
  }

  /** Withdraws a person's badge, and signs them out where they came in with it. */
  @Needs('manage people')
  @Post('people/:personId/badge/withdrawal')
  withdrawBadge(
    @CurrentActor() actor: Actor,
    @Param('personId', IdPipe) personId: string,
    @Body() dto: WriteDto,
  ): Promise<WithdrawnBadgeView> {
    return this.badges.withdraw(actor, personId, dto.id);
  }
}
