import { Injectable } from '@nestjs/common';
import { Config } from '../../../platform/config.js';
import type { MailSettings } from '../../destinations/destination-settings.js';
import type { ChannelMessage } from '../channel-message.js';
import { SendFailure } from '../send-failure.js';
import { handOver } from './hand-over.service.js';

/** Hands mail to the server of SMTP_URL. Without one it waits, and says why. */
@Injectable()
export class MailChannel {
  constructor(private readonly config: Config) {}

  async send(message: ChannelMessage, { address }: MailSettings): Promise<void> {
    const { mailServer, MAIL_FROM: from } = this.config;
    if (mailServer === undefined || from === undefined) {
      throw new SendFailure('No mail server is set: whoever runs the service sets SMTP_URL and MAIL_FROM.');
    }
    await handOver(message, address, from, mailServer);
  }
}
