import { Injectable } from '@nestjs/common';
import { Clock } from '../../../platform/clock.js';
import { Config } from '../../../platform/config.js';
import { signedHeaders } from '../../../platform/standard-webhooks.js';
import type { WebhookSettings } from '../../destinations/destination-settings.js';
import { failureOfAnswer, webhookAnswers } from '../answered.js';
import type { ChannelMessage } from '../channel-message.js';
import { post } from '../post.service.js';
import { webhookPayload } from './webhook-payload.js';

/** Sends to the studio's own programs, signed by the Standard Webhooks specification 1.0.0. */
@Injectable()
export class WebhookChannel {
  constructor(
    private readonly config: Config,
    private readonly clock: Clock,
  ) {}

  async send(message: ChannelMessage, { url, secrets }: WebhookSettings): Promise<void> {
    const now = this.clock.now();
    const body = webhookPayload(message);
    const valid = secrets.filter(({ until }) => until === null || until > now).map(({ secret }) => secret);
    const headers = {
      'content-type': 'application/json; charset=utf-8',
      accept: '*/*',
      ...signedHeaders(message.deliveryId, now, body, valid),
    };
    const answer = await post({ url, headers, body: Buffer.from(body, 'utf8') }, this.config, now);
    const failure = failureOfAnswer(answer, webhookAnswers);
    if (failure) throw failure;
  }
}
