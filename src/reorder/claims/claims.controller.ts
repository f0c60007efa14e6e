import { Body, Controller, Get, Param, Patch, Post, Query, StreamableFile } from '@nestjs/common';
import { ApiOkResponse, ApiProduces, ApiTags } from '@nestjs/swagger';
import { CurrentActor, type StudioActor } from '../../identity/actor.guard.js';
import { Needs } from '../../identity/needs.decorator.js';
import type { Actor } from '../../platform/actor.js';
import { IdPipe } from '../../platform/id.pipe.js';
import { ClaimList } from './claim-list.service.js';
import { ClaimSuggestions } from './claim-suggestions.service.js';
import {
  ChangeClaimDto,
  ClaimPageDto,
  ClaimStepDto,
  ClaimSuggestionsDto,
  OpenClaimDto,
  SettleClaimDto,
} from './claims.dto.js';
import { Claims } from './claims.service.js';
import { ClaimPageView, ClaimSuggestionsView, ClaimView, ShownClaimView } from './claims.views.js';

@ApiTags('ordering')
@Controller('v1/studios/:studioId/claims')
export class ClaimsController {
  constructor(
    private readonly claims: Claims,
    private readonly list: ClaimList,
    private readonly suggestions: ClaimSuggestions,
  ) {}

  /** A page of claims against suppliers, the latest first. */
  @Needs('read plans')
  @Get()
  page(@CurrentActor() actor: Actor, @Query() page: ClaimPageDto): Promise<ClaimPageView> {
    return this.list.page(actor, page);
  }

  /** What deliveries and closed orders give reason to claim, and nobody opened yet. */
  @Needs('read plans')
  @Get('suggestions')
  suggest(@CurrentActor() actor: Actor, @Query() dto: ClaimSuggestionsDto): Promise<ClaimSuggestionsView> {
    return this.suggestions.list(actor, dto);
  }

  /** One claim, with its note for those who may place orders. */
  @Needs('read plans')
  @Get(':claimId')
  show(@CurrentActor() actor: StudioActor, @Param('claimId', IdPipe) id: string): Promise<ShownClaimView> {
    return this.list.show(actor, id);
  }

  /** Opens a claim. */
  @Needs('place orders')
  @Post()
  open(@CurrentActor() actor: Actor, @Body() dto: OpenClaimDto): Promise<ClaimView> {
    return this.claims.open(actor, dto);
  }

  /** Changes a claim; one that was sent is open again. */
  @Needs('place orders')
  @Patch(':claimId')
  change(
    @CurrentActor() actor: Actor,
    @Param('claimId', IdPipe) id: string,
    @Body() dto: ChangeClaimDto,
  ): Promise<ClaimView> {
    return this.claims.change(actor, id, dto);
  }

  /** The supplier was told of it. */
  @Needs('place orders')
  @Post(':claimId/sent')
  sent(
    @CurrentActor() actor: Actor,
    @Param('claimId', IdPipe) id: string,
    @Body() dto: ClaimStepDto,
  ): Promise<ClaimView> {
    return this.claims.step(actor, id, 'send', dto);
  }

  /** The supplier made it good. */
  @Needs('place orders')
  @Post(':claimId/settled')
  settled(
    @CurrentActor() actor: Actor,
    @Param('claimId', IdPipe) id: string,
    @Body() dto: SettleClaimDto,
  ): Promise<ClaimView> {
    return this.claims.step(actor, id, 'settle', dto);
  }

  /** It is not asked for any more. */
  @Needs('place orders')
  @Post(':claimId/dropped')
  dropped(
    @CurrentActor() actor: Actor,
    @Param('claimId', IdPipe) id: string,
    @Body() dto: ClaimStepDto,
  ): Promise<ClaimView> {
    return this.claims.step(actor, id, 'drop', dto);
  }

  /** What to write to the supplier, as plain text. */
  @Needs('place orders')
  @Get(':claimId/claim.txt')
  @ApiProduces('text/plain')
  @ApiOkResponse({ content: { 'text/plain': { schema: { type: 'string' } } } })
  async text(
    @CurrentActor() actor: StudioActor,
    @Param('claimId', IdPipe) id: string,
  ): Promise<StreamableFile> {
    return new StreamableFile(Buffer.from(await this.list.text(actor, id), 'utf8'), {
      type: 'text/plain; charset=utf-8',
      disposition: `attachment; filename="claim-${id}.txt"`,
    });
  }
}
