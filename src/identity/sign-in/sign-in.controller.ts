import { Body, Controller, Get, HttpCode, Post, Req, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { OpenToAnyone } from '../needs.decorator.js';
import { Accounts } from './accounts.service.js';
import { BrowserSignIns } from './browser-sign-ins.service.js';
import { Invitations } from './invitations.service.js';
import { PasswordSignIn } from './password-sign-in.service.js';
import { AcceptInvitationDto, LookAtInvitationDto, SetUpDto, SignInDto } from './sign-in.dto.js';
import { InvitationView, SetUpStateView } from './sign-in.views.js';
import { SignInCookies } from './sign-in-cookies.service.js';

/** What can be done before anybody is signed in. The answers to signing in carry a cookie and no content. */
@ApiTags('sign-in')
@Controller('v1')
export class SignInController {
  constructor(
    private readonly passwordSignIn: PasswordSignIn,
    private readonly invitations: Invitations,
    private readonly accounts: Accounts,
    private readonly browserSignIns: BrowserSignIns,
    private readonly cookies: SignInCookies,
  ) {}

  /** Whether the first owner has still to come in by the link on the console. */
  @OpenToAnyone()
  @Get('set-up')
  async setUpState(): Promise<SetUpStateView> {
    return { isOpen: await this.invitations.isSetUpOpen() };
  }

  /** Makes the first owner's account by the link on the console, and signs them in. */
  @OpenToAnyone()
  @Post('set-up')
  @HttpCode(204)
  async setUp(
    @Body() dto: SetUpDto,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<void> {
    const account = await this.accounts.get(await this.invitations.setUp(dto));
    await this.browserSignIns.start(account, 'one-time link', request, reply);
  }

  /** Signs in with name and password. */
  @OpenToAnyone()
  @Post('sign-in')
  @HttpCode(204)
  async signIn(
    @Body() dto: SignInDto,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<void> {
    await this.passwordSignIn.signIn(dto, request, reply);
  }

  /** Signs this browser out; does nothing when nobody is signed in. */
  @OpenToAnyone()
  @Post('sign-out')
  @HttpCode(204)
  async signOut(
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<void> {
    await this.browserSignIns.end(request);
    this.cookies.clear(reply);
    // What the browser kept of answers goes with them; the app forgets the day itself, and keeps what waits to be sent.
    void reply.header('clear-site-data', '"cache"');
  }

  /** What the holder of an invitation is asked for. */
  @OpenToAnyone()
  @Post('invitation/look')
  @HttpCode(200)
  lookAtInvitation(@Body() dto: LookAtInvitationDto): Promise<InvitationView> {
    return this.invitations.lookAt(dto.secret);
  }

  /** Accepts an invitation: with a new account, a new password, or the account that is signed in here; and signs in. */
  @OpenToAnyone()
  @Post('invitation/accept')
  @HttpCode(204)
  async acceptInvitation(
    @Body() dto: AcceptInvitationDto,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<void> {
    const found = await this.browserSignIns.find(request);
    const signedIn = found && found.who.tablet === null ? found.who.accountId : null;
    const account = await this.accounts.get(await this.invitations.accept(dto, signedIn));
    await this.browserSignIns.start(account, 'one-time link', request, reply);
  }
}
