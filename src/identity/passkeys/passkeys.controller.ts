import { Body, Controller, Get, HttpCode, Param, Patch, Post, Req, Res } from '@nestjs/common';
import { ApiCreatedResponse, ApiOkResponse, ApiTags } from '@nestjs/swagger';
import type {
  PublicKeyCredentialCreationOptionsJSON,
  PublicKeyCredentialRequestOptionsJSON,
} from '@simplewebauthn/server';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { IdPipe } from '../../platform/id.pipe.js';
import { CurrentBrowser } from '../actor.guard.js';
import { NeedsOwnBrowser, NeedsRecentSignIn, OpenToAnyone } from '../needs.decorator.js';
import type { SignedIn } from '../sign-in/sign-ins.service.js';
import { PasskeyRegistration } from './passkey-registration.service.js';
import { PasskeySignIn } from './passkey-sign-in.service.js';
import { AddPasskeyDto, PasskeySignInDto, RenamePasskeyDto } from './passkeys.dto.js';
import { Passkeys } from './passkeys.service.js';
import { AddedPasskeyView, PasskeyView } from './passkeys.views.js';

const optionsOf = (dictionary: string) => ({
  description: `${dictionary} of WebAuthn Level 3, for the browser`,
  schema: { type: 'object', additionalProperties: true },
});

@ApiTags('passkeys')
@Controller('v1')
export class PasskeysController {
  constructor(
    private readonly passkeys: Passkeys,
    private readonly registration: PasskeyRegistration,
    private readonly passkeySignIn: PasskeySignIn,
  ) {}

  /** What the browser is to ask the authenticator for, to sign in. Its challenge is good for one answer, for 5 minutes. */
  @OpenToAnyone()
  @Post('sign-in/passkey/options')
  @HttpCode(200)
  @ApiOkResponse(optionsOf('PublicKeyCredentialRequestOptionsJSON'))
  signInOptions(
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<PublicKeyCredentialRequestOptionsJSON> {
    return this.passkeySignIn.options(request, reply);
  }

  /** Signs in with a passkey. */
  @OpenToAnyone()
  @Post('sign-in/passkey')
  @HttpCode(204)
  async signIn(
    @Body() dto: PasskeySignInDto,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<void> {
    await this.passkeySignIn.signIn(dto, request, reply);
  }

  /** My passkeys. */
  @NeedsOwnBrowser()
  @Get('me/passkeys')
  list(@CurrentBrowser() browser: SignedIn): Promise<PasskeyView[]> {
    return this.passkeys.list(browser.accountId);
  }

  /** What the browser is to ask an authenticator for, to make me a passkey. Its challenge is good for one answer, for 5 minutes. */
  @NeedsRecentSignIn()
  @Post('me/passkeys/options')
  @HttpCode(200)
  @ApiOkResponse(optionsOf('PublicKeyCredentialCreationOptionsJSON'))
  options(
    @CurrentBrowser() browser: SignedIn,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<PublicKeyCredentialCreationOptionsJSON> {
    return this.registration.options(browser, request, reply);
  }

  /** Adds the passkey that the authenticator made. */
  @NeedsRecentSignIn()
  @Post('me/passkeys')
  @ApiCreatedResponse({ type: AddedPasskeyView })
  async add(
    @CurrentBrowser() browser: SignedIn,
    @Body() dto: AddPasskeyDto,
    @Req() request: FastifyRequest,
  ): Promise<AddedPasskeyView> {
    return { id: await this.registration.add(browser, dto, request) };
  }

  /** Renames one of my passkeys. */
  @NeedsOwnBrowser()
  @Patch('me/passkeys/:passkeyId')
  @HttpCode(204)
  rename(
    @CurrentBrowser() browser: SignedIn,
    @Param('passkeyId', IdPipe) passkeyId: string,
    @Body() dto: RenamePasskeyDto,
  ): Promise<void> {
    return this.passkeys.rename(browser.accountId, passkeyId, dto.name, dto.version);
  }

  /** Removes one of my passkeys, and signs me out everywhere else. */
  @NeedsRecentSignIn()
  @Post('me/passkeys/:passkeyId/removal')
  @HttpCode(204)
  remove(@CurrentBrowser() browser: SignedIn, @Param('passkeyId', IdPipe) passkeyId: string): Promise<void> {
    return this.passkeys.remove(browser, passkeyId);
  }
}
