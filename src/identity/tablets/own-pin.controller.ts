import { Body, Controller, Get, HttpCode, Param, Post, Put } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { IdPipe } from '../../platform/id.pipe.js';
import { CurrentBrowser } from '../actor.guard.js';
import { NeedsOwnBrowser, NeedsRecentSignIn } from '../needs.decorator.js';
import type { SignedIn } from '../sign-in/sign-ins.service.js';
import { Pins } from './pins.service.js';
import { ChoosePinDto } from './tablets.dto.js';
import { OwnPinView } from './tablets.views.js';

/** The PIN by which I am known on the tablets of a studio. */
@ApiTags('own account')
@Controller('v1/me/studios/:studioId/pin')
export class OwnPinController {
  constructor(private readonly pins: Pins) {}

  /** Whether I have one there. */
  @NeedsOwnBrowser()
  @Get()
  show(
    @CurrentBrowser() browser: SignedIn,
    @Param('studioId', IdPipe) studioId: string,
  ): Promise<OwnPinView> {
    return this.pins.show(browser, studioId);
  }

  /** Chooses one; the one before works no more. */
  @NeedsRecentSignIn()
  @Put()
  choose(
    @CurrentBrowser() browser: SignedIn,
    @Param('studioId', IdPipe) studioId: string,
    @Body() dto: ChoosePinDto,
  ): Promise<OwnPinView> {
    return this.pins.choose(browser, studioId, dto.pin);
  }

  /** Removes it. */
  @NeedsRecentSignIn()
  @Post('removal')
  @HttpCode(200)
  remove(
    @CurrentBrowser() browser: SignedIn,
    @Param('studioId', IdPipe) studioId: string,
  ): Promise<OwnPinView> {
    return this.pins.remove(browser, studioId);
  }
}
