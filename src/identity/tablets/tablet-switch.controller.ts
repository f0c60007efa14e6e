import { Body, Controller, Get, HttpCode, Post, Req, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { OpenToAnyone } from '../needs.decorator.js';
import { TabletSwitch } from './tablet-switch.service.js';
import { SwitchDto } from './tablets.dto.js';
import { EnrolledTabletView } from './tablets.views.js';

/** What an enrolled tablet asks for by itself. It is known by its own cookie; every other browser is turned away. */
@ApiTags('tablets')
@Controller('v1/tablet')
export class TabletSwitchController {
  constructor(private readonly tabletSwitch: TabletSwitch) {}

  /** Which tablet this is, and who may sign in on it by PIN. */
  @OpenToAnyone()
  @Get()
  show(
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<EnrolledTabletView> {
    return this.tabletSwitch.show(request, reply);
  }

  /** Signs a person in by badge or PIN; whoever was signed in before is signed out. */
  @OpenToAnyone()
  @Post('switch')
  @HttpCode(204)
  async switch(
    @Body() dto: SwitchDto,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<void> {
    await this.tabletSwitch.switch(dto, request, reply);
  }
}
