import { Body, Controller, HttpCode, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../identity/actor.guard.js';
import { Needs } from '../identity/needs.decorator.js';
import type { Actor } from '../platform/actor.js';
import { ReadSymbolDto } from './symbols.dto.js';
import { Symbols } from './symbols.service.js';
import { SymbolView } from './symbols.views.js';

@ApiTags('catalogue')
@Controller('v1/studios/:studioId/symbols')
export class SymbolsController {
  constructor(private readonly symbols: Symbols) {}

  /** Reads a scanned symbol or typed text, and names the product it belongs to. */
  @Needs('read symbols')
  @Post('read')
  @HttpCode(200)
  read(@CurrentActor() actor: Actor, @Body() dto: ReadSymbolDto): Promise<SymbolView> {
    return this.symbols.read(actor, dto);
  }
}
