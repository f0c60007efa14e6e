import { Body, Controller, HttpCode, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../../identity/actor.guard.js';
import { Needs } from '../../identity/needs.decorator.js';
import type { Actor } from '../../platform/actor.js';
import { JudgeFileDto, TakeInFileDto } from '../../platform/files/file-text.dto.js';
import { OpeningStock } from './opening-stock.service.js';
import { OpeningStockPreviewView, TakenInStockView } from './opening-stock.views.js';

@ApiTags('stock')
@Controller('v1/studios/:studioId/opening-stock')
export class OpeningStockController {
  constructor(private readonly openingStock: OpeningStock) {}

  /** Judges a CSV file of what lies on the shelf at the start, row by row; writes nothing. */
  @Needs('take in opening stock')
  @Post('preview')
  @HttpCode(200)
  preview(@CurrentActor() actor: Actor, @Body() dto: JudgeFileDto): Promise<OpeningStockPreviewView> {
    return this.openingStock.preview(actor, dto);
  }

  /** Takes the file in, whole or not at all; with any fault it is refused with what the preview would say. */
  @Needs('take in opening stock')
  @Post()
  takeIn(@CurrentActor() actor: Actor, @Body() dto: TakeInFileDto): Promise<TakenInStockView> {
    return this.openingStock.takeIn(actor, dto);
  }
}
