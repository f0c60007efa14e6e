import { Controller, Get, Headers, Req, Res } from '@nestjs/common';
import { ApiHeader, ApiOkResponse, ApiProduces, ApiTags } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { CurrentActor, CurrentRequester, type StudioActor } from '../../identity/actor.guard.js';
import { Needs } from '../../identity/needs.decorator.js';
import type { Requester } from '../../identity/sign-in/credentials.service.js';
import { Problem } from '../../platform/problem.js';
import { LiveStreams } from './live-streams.service.js';

const streamType = 'text/event-stream';

@ApiTags('alerts')
@Controller('v1/studios/:studioId/alerts')
export class LiveController {
  constructor(private readonly streams: LiveStreams) {}

  /**
   * What happens to alerts, as it happens: server-sent events. First `connected` with the number of the newest step, then
   * one `alert` for each new step: `{"sequence", "alertId", "kind", "severity", "event"}`. `missed` when there were too many
   * since: read the alerts anew. `ended` before the service closes it for good. Going on with `Last-Event-ID` loses nothing.
   */
  @Needs('see alerts')
  @Get('live')
  @ApiProduces(streamType)
  @ApiHeader({ name: 'Last-Event-ID', required: false })
  @ApiOkResponse({ content: { [streamType]: { schema: { type: 'string' } } } })
  async listen(
    @CurrentActor() actor: StudioActor,
    @CurrentRequester() requester: Requester,
    @Headers('accept') accept: string | undefined,
    @Headers('last-event-id') lastEventId: string | undefined,
    @Req() request: FastifyRequest,
    @Res() reply: FastifyReply,
  ): Promise<void> {
    if (accept?.includes(streamType) !== true) {
      throw new Problem(
        400,
        'malformed-request',
        `This answer never ends. Ask for it with "Accept: ${streamType}", as EventSource does.`,
      );
    }
    // It would be answered without a body, for ever.
    if (request.method === 'HEAD') {
      void reply.type(streamType).send('');
      return;
    }
    await this.streams.open(actor, requester, lastEventId, reply);
  }
}
