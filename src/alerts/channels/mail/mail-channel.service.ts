import { Injectable } from '@nestjs/common';
import { createTransport } from 'nodemailer';
import { Config } from '../../../platform/config.js';
import type { MailServer } from '../../../platform/mail-server-setting.js';
import type { MailSettings } from '../../destinations/destination-settings.js';
import type { ChannelMessage } from '../channel-message.js';
import { SendFailure } from '../send-failure.js';
import { type MailFault, mailFailure } from './mail-failure.js';
import { mailText } from './mail-text.js';

const connectMilliseconds = 15_000;
const silentMilliseconds = 20_000;
/** A server that answers drop by drop is left after so long. */
const wholeMilliseconds = 60_000;

/** Hands mail to the server of SMTP_URL, one connection each. */
@Injectable()
export class MailChannel {
  constructor(private readonly config: Config) {}

  async send(message: ChannelMessage, { address }: MailSettings): Promise<void> {
    const { mailServer, MAIL_FROM: from } = this.config;
    if (mailServer === undefined || from === undefined) {
      throw new SendFailure('No mail server is set: whoever runs the service sets SMTP_URL and MAIL_FROM.');
    }
    const { subject, text, html } = mailText(message);
    try {
      await createTransport(transportOf(mailServer)).sendMail({
        from: { name: 'Lotward', address: from },
        to: { name: '', address },
        envelope: { from, to: [address] },
        subject,
        text,
        html,
        messageId: `<${message.deliveryId}@${from.slice(from.lastIndexOf('@') + 1)}>`,
        // Answered by no machine (RFC 3834, 5).
        headers: { 'Auto-Submitted': 'auto-generated' },
        disableFileAccess: true,
        disableUrlAccess: true,
        signal: AbortSignal.timeout(wholeMilliseconds),
      });
    } catch (error) {
      throw mailFailure(error as MailFault);
    }
  }
}

function transportOf({ host, port, secure, requireTls, auth }: MailServer) {
  return {
    host,
    port,
    secure,
    requireTLS: requireTls,
    // Where mail may go unencrypted anyway, a certificate nobody knows is still better than none.
    tls: { rejectUnauthorized: secure || requireTls },
    ...(auth && { auth: { user: auth.user, pass: auth.password } }),
    connectionTimeout: connectMilliseconds,
    greetingTimeout: connectMilliseconds,
    socketTimeout: silentMilliseconds,
    dnsTimeout: connectMilliseconds,
  };
}
