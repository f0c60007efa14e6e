import { Controller, Get, Param, Req, Res } from '@nestjs/common';
import { ApiOkResponse, ApiProduces, ApiTags } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { OpenToAnyone } from '../../identity/needs.decorator.js';
import { CalendarFeed } from './calendar-feed.service.js';

const calendarType = 'text/calendar; charset=utf-8';

@ApiTags('alerts')
@Controller('v1/calendars')
export class CalendarsController {
  constructor(private readonly feed: CalendarFeed) {}

  /** Expiries, touch-up windows and expected deliveries, for a calendar program that was given the secret address. */
  @OpenToAnyone()
  @Get(':file')
  @ApiProduces('text/calendar')
  @ApiOkResponse({ content: { 'text/calendar': { schema: { type: 'string' } } } })
  async read(
    @Param('file') file: string,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<string | undefined> {
    const { text, etag } = await this.feed.read(file);
    void reply
      // Kept by the reader alone, and asked for again each time.
      .header('cache-control', 'private, no-cache')
      .header('etag', etag);
    if (names(request.headers['if-none-match'], etag)) {
      void reply.status(304);
      return undefined;
    }
    void reply.type(calendarType).header('content-disposition', 'inline; filename="lotward.ics"');
    return text;
  }
}

/** Whether an `If-None-Match` names this version, compared weakly: RFC 9110, 13.1.2 [M]. */
function names(header: string | undefined, etag: string): boolean {
  if (header === undefined) return false;
  return header.trim() === '*' || header.split(',').some((each) => each.trim().replace(/^W\//, '') === etag);
}
