import { Injectable } from '@nestjs/common';
import type { AlertDestination } from '../destinations/alert-destination.entity.js';
import { OpenedDestinations } from '../destinations/opened-destinations.service.js';
import type { OutboxRow } from '../outbox/outbox-row.entity.js';
import type { ChannelMessage } from './channel-message.js';
import { LogChannel } from './log/log-channel.service.js';
import { MailChannel } from './mail/mail-channel.service.js';
import { MessageWriter } from './message-writer.service.js';
import { PushChannel } from './push/push-channel.service.js';
import { SendFailure } from './send-failure.js';
import { WebhookChannel } from './webhook/webhook-channel.service.js';

/** One way of telling. */
export interface AlertChannel<Settings> {
  /** @throws SendFailure */
  send(message: ChannelMessage, settings: Settings): Promise<void>;
}

/** Sends what an outbox row promises, by the way it names. Changes nothing in the record: whoever calls notes what came of it. */
@Injectable()
export class AlertChannels {
  constructor(
    private readonly writer: MessageWriter,
    private readonly destinations: OpenedDestinations,
    private readonly log: LogChannel,
    private readonly mail: MailChannel,
    private readonly webhook: WebhookChannel,
    private readonly push: PushChannel,
  ) {}

  /**
   * Tries once, within two minutes.
   * @param destination the one the row names, as it stands now and not removed; null for the log
   * @throws SendFailure when it was not taken
   */
  async send(row: OutboxRow, destination: AlertDestination | null): Promise<void> {
    const message = await this.writer.write(row);
    if (row.channel === 'log') return this.toLog(message);
    if (destination === null || destination.kind !== row.channel) {
      throw new SendFailure('It names no destination of its channel any more.', true);
    }
    await this.destinations.refuseWhoLeft(destination);
    switch (destination.kind) {
      case 'mail':
        return this.mail.send(message, await this.destinations.mail(destination));
      case 'webhook':
        return this.webhook.send(message, await this.destinations.webhook(destination));
      case 'push':
        return this.push.send(message, await this.destinations.push(destination));
    }
  }

  private async toLog({ deliveryId, event, severity, alert }: ChannelMessage): Promise<void> {
    // What is of no alert goes to people only.
    if (alert === null || severity === null) return;
    await this.log.send(deliveryId, { event, kind: alert.kind, severity, facts: alert.facts });
  }
}
