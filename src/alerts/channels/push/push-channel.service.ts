import { createHash } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import webPush from 'web-push';
import { Clock } from '../../../platform/clock.js';
import { Config } from '../../../platform/config.js';
import type { PushSettings } from '../../destinations/destination-settings.js';
import { failureOfAnswer, pushAnswers } from '../answered.js';
import type { ChannelMessage } from '../channel-message.js';
import { post } from '../post.service.js';
import { PushKeys } from './push-keys.service.js';
import { pushPayload } from './push-payload.js';

/** So long a push service keeps a message for a browser that is not reached; what is older is in the app. */
const keptSeconds = 86_400;

/** Sends to browsers while the app is closed: encrypted for the one browser (RFC 8291), as this service (RFC 8292). */
@Injectable()
export class PushChannel {
  constructor(
    private readonly config: Config,
    private readonly clock: Clock,
    private readonly keys: PushKeys,
  ) {}

  async send(message: ChannelMessage, { endpoint, p256dh, auth }: PushSettings): Promise<void> {
    const pair = await this.keys.pair();
    const { headers, body } = webPush.generateRequestDetails(
      { endpoint, keys: { p256dh, auth } },
      pushPayload(message),
      {
        vapidDetails: { subject: this.subject(), ...pair },
        TTL: keptSeconds,
        contentEncoding: 'aes128gcm',
        urgency: message.severity === 'urgent' ? 'high' : 'normal',
        // What is still kept of the same alert gives way to the newer message.
        topic: topicOf(message.alert?.id ?? message.deliveryId),
      },
    );
    const request = { url: endpoint, headers: textHeaders(headers), body: body as Buffer };
    const failure = failureOfAnswer(await post(request, this.config, this.clock.now()), pushAnswers);
    if (failure) throw failure;
  }

  /** Whom the push service may ask when something is wrong (RFC 8292, 2.1). */
  private subject(): string {
    const { MAIL_FROM: address, publicUrl } = this.config;
    if (address !== undefined) return `mailto:${address}`;
    return publicUrl.startsWith('https://') ? publicUrl : 'mailto:operator@lotward.invalid';
  }
}

/** At most 32 characters of base64url (RFC 8030, 5.4), from which nobody learns the id. */
function topicOf(id: string): string {
  return createHash('sha256').update(id, 'utf8').digest('base64url').slice(0, 32);
}

function textHeaders(headers: Record<string, unknown>): Record<string, string> {
  return Object.fromEntries(
    Object.entries(headers)
      .filter(([name]) => name.toLowerCase() !== 'content-length')
      .map(([name, value]) => [name, String(value)]),
  );
}
