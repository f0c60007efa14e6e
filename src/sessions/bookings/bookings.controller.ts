import { Body, Controller, HttpCode, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../../identity/actor.guard.js';
import { Needs } from '../../identity/needs.decorator.js';
import type { Actor } from '../../platform/actor.js';
import { JudgeBookingsDto, TakeInBookingsDto } from './bookings.dto.js';
import { Bookings } from './bookings.service.js';
import { BookingsPreviewView, TakenInBookingsView } from './bookings.views.js';

@ApiTags('sessions')
@Controller('v1/studios/:studioId/bookings')
export class BookingsController {
  constructor(private readonly bookings: Bookings) {}

  /** Judges a list of bookings, CSV or iCalendar, row by row; writes nothing but who was looked for. */
  @Needs('take in bookings')
  @Post('preview')
  @HttpCode(200)
  preview(@CurrentActor() actor: Actor, @Body() dto: JudgeBookingsDto): Promise<BookingsPreviewView> {
    return this.bookings.preview(actor, dto);
  }

  /** Takes the list in, whole or not at all; with any fault it is refused with what the preview would say. */
  @Needs('take in bookings')
  @Post()
  takeIn(@CurrentActor() actor: Actor, @Body() dto: TakeInBookingsDto): Promise<TakenInBookingsView> {
    return this.bookings.takeIn(actor, dto);
  }
}
