import { Body, Controller, Get, Param, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { IdPipe } from '../../platform/id.pipe.js';
import { WriteDto } from '../../platform/request.dto.js';
import { CurrentActor, CurrentRequester, type StudioActor } from '../actor.guard.js';
import { Needs } from '../needs.decorator.js';
import { MakeApiTokenDto } from './api-tokens.dto.js';
import { ApiTokens } from './api-tokens.service.js';
import { ApiTokenView, MadeApiTokenView, RevokedApiTokenView } from './api-tokens.views.js';
import type { Requester } from './credentials.service.js';
import { OneTimeLinks } from './one-time-links.service.js';
import { RecentSignIns } from './recent-sign-ins.service.js';
import { MadeLinkView, SignedOutView } from './sign-in.views.js';
import { SignIns } from './sign-ins.service.js';

/** Who gets into a studio: invitations and tokens. */
@ApiTags('access')
@Controller('v1/studios/:studioId')
export class AccessController {
  constructor(
    private readonly links: OneTimeLinks,
    private readonly tokens: ApiTokens,
    private readonly signIns: SignIns,
    private readonly recent: RecentSignIns,
  ) {}

  /** A one-time link by which another person comes in, or chooses a new password. At a browser, soon after signing in. */
  @Needs('manage people')
  @Post('people/:personId/invitation')
  async invite(
    @CurrentActor() actor: StudioActor,
    @CurrentRequester() requester: Requester,
    @Param('personId', IdPipe) personId: string,
    @Body() dto: WriteDto,
  ): Promise<MadeLinkView> {
    await this.recent.requireOf(requester);
    return this.links.make(actor, personId, 'invitation', dto.id);
  }

  /** Signs a person out wherever they are signed in. */
  @Needs('manage people')
  @Post('people/:personId/sign-out')
  signOut(
    @CurrentActor() actor: StudioActor,
    @Param('personId', IdPipe) personId: string,
    @Body() dto: WriteDto,
  ): Promise<SignedOutView> {
    return this.signIns.endAllOfPerson(actor, personId, dto.id);
  }

  /** The tokens of the studio, the newest first. */
  @Needs('issue tokens')
  @Get('tokens')
  list(@CurrentActor() actor: StudioActor): Promise<ApiTokenView[]> {
    return this.tokens.list(actor);
  }

  /** A token that acts as you; it is shown in this answer only. At a browser, soon after signing in. */
  @Needs('issue tokens')
  @Post('tokens')
  async make(
    @CurrentActor() actor: StudioActor,
    @CurrentRequester() requester: Requester,
    @Body() dto: MakeApiTokenDto,
  ): Promise<MadeApiTokenView> {
    await this.recent.requireOf(requester);
    return this.tokens.make(actor, actor.may, dto);
  }

  /** Revokes a token at once. */
  @Needs('issue tokens')
  @Post('tokens/:tokenId/revocation')
  revoke(
    @CurrentActor() actor: StudioActor,
    @Param('tokenId', IdPipe) tokenId: string,
    @Body() dto: WriteDto,
  ): Promise<RevokedApiTokenView> {
    return this.tokens.revoke(actor, tokenId, dto.id);
  }
}
