import { Body, Controller, Get, HttpCode, Post, Req, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { CurrentBrowser, CurrentRequester } from '../actor.guard.js';
import { NeedsOwnBrowser, NeedsRecentSignIn, NeedsSignIn } from '../needs.decorator.js';
import type { Requester } from './credentials.service.js';
import { OwnAccount } from './own-account.service.js';
import { OwnPassword } from './own-password.service.js';
import { ChangePasswordDto, EndSignInsDto } from './sign-in.dto.js';
import { OwnSignInView, RequesterView } from './sign-in.views.js';
import type { SignedIn } from './sign-ins.service.js';

/** What somebody sees and changes of their own account. */
@ApiTags('own account')
@Controller('v1/me')
export class OwnAccountController {
  constructor(
    private readonly ownAccount: OwnAccount,
    private readonly ownPassword: OwnPassword,
  ) {}

  /** Who I am, where, and what I may do there. */
  @NeedsSignIn()
  @Get()
  show(@CurrentRequester() requester: Requester): Promise<RequesterView> {
    return this.ownAccount.show(requester);
  }

  /** Where I am signed in. */
  @NeedsOwnBrowser()
  @Get('sign-ins')
  signIns(@CurrentBrowser() browser: SignedIn): Promise<OwnSignInView[]> {
    return this.ownAccount.signIns(browser);
  }

  /** Signs me out elsewhere: at one browser, or at all but this. */
  @NeedsRecentSignIn()
  @Post('sign-ins/end')
  @HttpCode(204)
  end(@CurrentBrowser() browser: SignedIn, @Body() dto: EndSignInsDto): Promise<void> {
    return this.ownAccount.endSignIns(browser, dto.signInId);
  }

  /** Changes my password, or gives me one, and signs me out everywhere else. */
  @NeedsOwnBrowser()
  @Post('password')
  @HttpCode(204)
  changePassword(
    @CurrentBrowser() browser: SignedIn,
    @Body() dto: ChangePasswordDto,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<void> {
    return this.ownPassword.change(browser, dto, request.ip, reply);
  }

  /** From now on I sign in by passkey only; signs me out everywhere else. */
  @NeedsRecentSignIn()
  @Post('password/removal')
  @HttpCode(204)
  removePassword(
    @CurrentBrowser() browser: SignedIn,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<void> {
    return this.ownPassword.remove(browser, reply);
  }
}
