import { Body, Controller, Get, Param, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../identity/actor.guard.js';
import { Needs } from '../identity/needs.decorator.js';
import type { Actor } from '../platform/actor.js';
import { IdPipe } from '../platform/id.pipe.js';
import { PageDto } from '../platform/request.dto.js';
import { ClientAccesses } from './client-accesses.service.js';
import { ClientAccessPageView } from './client-accesses.views.js';
import { ErasurePreviews } from './erasure-preview.service.js';
import { AskErasureDto, PreviewErasureDto } from './erasures.dto.js';
import { Erasures } from './erasures.service.js';
import { ErasureAnswerPageView, ErasureAnswerView, ErasurePreviewView } from './erasures.views.js';
import { EndLegalClaimDto, NoteLegalClaimDto } from './legal-claims.dto.js';
import { LegalClaims } from './legal-claims.service.js';
import { LegalClaimView, WrittenLegalClaimView } from './legal-claims.views.js';

/** Who looked at a client's record, and its erasure. */
@ApiTags('clients')
@Controller('v1/studios/:studioId/clients/:clientId')
export class ClientRightsController {
  constructor(
    private readonly accessesOfClients: ClientAccesses,
    private readonly erasures: Erasures,
    private readonly previews: ErasurePreviews,
    private readonly claims: LegalClaims,
  ) {}

  /** Who was shown something of the client and when, the latest first. */
  @Needs('read the audit log')
  @Get('accesses')
  accesses(
    @CurrentActor() actor: Actor,
    @Param('clientId', IdPipe) clientId: string,
    @Query() page: PageDto,
  ): Promise<ClientAccessPageView> {
    return this.accessesOfClients.list(actor, clientId, page);
  }

  /**
   * Asks for the client's erasure (GDPR Art. 17). It is carried out, or refused with its grounds (Art. 17(3)); both
   * answers are recorded. Erased is everything personal, for good; which lots touched the client stays, under the reference.
   */
  @Needs('erase clients')
  @Post('erasure')
  erase(
    @CurrentActor() actor: Actor,
    @Param('clientId', IdPipe) clientId: string,
    @Body() dto: AskErasureDto,
  ): Promise<ErasureAnswerView> {
    return this.erasures.ask(actor, clientId, dto);
  }

  /** What would be answered to a wish for the client's erasure, and why. Changes nothing. */
  @Needs('erase clients')
  @Get('erasure/preview')
  preview(
    @CurrentActor() actor: Actor,
    @Param('clientId', IdPipe) clientId: string,
    @Query() dto: PreviewErasureDto,
  ): Promise<ErasurePreviewView> {
    return this.previews.of(actor, clientId, dto);
  }

  /** Every wish for the client's erasure and its answer, the latest first. */
  @Needs('hand out client data')
  @Get('erasure')
  answers(
    @CurrentActor() actor: Actor,
    @Param('clientId', IdPipe) clientId: string,
    @Query() page: PageDto,
  ): Promise<ErasureAnswerPageView> {
    return this.erasures.answers(actor, clientId, page);
  }

  /** The legal claims noted for the client, the latest first. */
  @Needs('hand out client data')
  @Get('legal-claims')
  legalClaims(
    @CurrentActor() actor: Actor,
    @Param('clientId', IdPipe) clientId: string,
  ): Promise<LegalClaimView[]> {
    return this.claims.list(actor, clientId);
  }

  /** Notes a legal claim for which the record is needed: until its end is noted the client is not erased. */
  @Needs('hand out client data')
  @Post('legal-claims')
  noteClaim(
    @CurrentActor() actor: Actor,
    @Param('clientId', IdPipe) clientId: string,
    @Body() dto: NoteLegalClaimDto,
  ): Promise<WrittenLegalClaimView> {
    return this.claims.note(actor, clientId, dto);
  }

  /** Notes that a legal claim ended. */
  @Needs('hand out client data')
  @Post('legal-claims/:claimId/end')
  endClaim(
    @CurrentActor() actor: Actor,
    @Param('clientId', IdPipe) clientId: string,
    @Param('claimId', IdPipe) claimId: string,
    @Body() dto: EndLegalClaimDto,
  ): Promise<WrittenLegalClaimView> {
    return this.claims.end(actor, clientId, claimId, dto);
  }
}
