import { Body, Controller, Get, HttpCode, Post, Req, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { CurrentBrowser, CurrentRequester } from '../actor.guard.js';
import { NeedsOwnBrowser, NeedsSignIn } from '../needs.decorator.js';
import type { Requester } from './credentials.service.js';
import { OwnAccount } from './own-account.service.js';
import { PasswordSignIn } from './password-sign-in.service.js';
import { ChangePasswordDto, EndSignInsDto } from './sign-in.dto.js';
import { OwnSignInView, RequesterView } from './sign-in.views.js';
import type { SignedIn } from './sign-ins.service.js';

/** What somebody sees and changes of their own account. */
@ApiTags('own account')
@Controller('v1/me')
export class OwnAccountController {
  constructor(
    private readonly ownAccount: OwnAccount,
    private readonly passwordSignIn: PasswordSignIn,
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
  @NeedsOwnBrowser()
  @Post('sign-ins/end')
  @HttpCode(204)
  end(@CurrentBrowser() browser: SignedIn, @Body() dto: EndSignInsDto): Promise<void> {
    return this.ownAccount.endSignIns(browser, dto.signInId);
  }

  /** Changes my password, and signs me out everywhere else. */
  @NeedsOwnBrowser()
  @Post('password')
  @HttpCode(204)
  changePassword(
    @CurrentBrowser() browser: SignedIn,
    @Body() dto: ChangePasswordDto,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<void> {
    return this.passwordSignIn.changePassword(browser, dto, request, reply);
  }
}
