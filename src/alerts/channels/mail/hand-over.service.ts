import { domainToASCII } from 'node:url';
import { createTransport } from 'nodemailer';
import { isMailAddress, type MailServer } from '../../../platform/mail-server-setting.js';
import type { ChannelMessage } from '../channel-message.js';
import { SendFailure } from '../send-failure.js';
import { type MailFault, mailFailure } from './mail-failure.js';
import { mailText } from './mail-text.js';

/** How long a mail server is waited for. */
export interface MailLimits {
  /** Until it greets. */
  connectMilliseconds: number;
  /** Without a word from it. */
  silentMilliseconds: number;
  /** For all of a mail: a server that answers drop by drop is left after so long. */
  wholeMilliseconds: number;
}

export const mailLimits: MailLimits = {
  connectMilliseconds: 15_000,
  silentMilliseconds: 20_000,
  wholeMilliseconds: 60_000,
};

/** A mail as it is handed over. */
export interface OutgoingMail {
  /** Of what it delivers: the same delivery has the same Message-ID each time. */
  id: string;
  /** Who it comes from, beside the address. */
  fromName: string;
  subject: string;
  text: string;
  html: string;
  attachments?: { filename: string; contentType: string; content: Buffer }[];
}

/**
 * Tells of an alert by mail.
 * @param from the address it comes from
 * @throws SendFailure when the server did not take it
 */
export function handOver(
  message: ChannelMessage,
  address: string,
  from: string,
  server: MailServer,
  limits: MailLimits = mailLimits,
): Promise<void> {
  return handOverMail(
    { id: message.deliveryId, fromName: 'Lotward', ...mailText(message) },
    address,
    from,
    server,
    limits,
  );
}

/**
 * Hands one mail to the server, over a connection of its own.
 * @param from the address it comes from
 * @throws SendFailure when the server did not take it
 */
export async function handOverMail(
  { id, fromName, ...mail }: OutgoingMail,
  address: string,
  from: string,
  server: MailServer,
  limits: MailLimits = mailLimits,
): Promise<void> {
  // A list of addresses would reach all of them.
  if (!isMailAddress(address)) throw new SendFailure('What it is to be mailed to is no mail address.', true);
  const to = inAscii(address);
  try {
    await createTransport(transportOf(server, limits)).sendMail({
      ...mail,
      from: { name: fromName, address: from },
      to: { name: '', address: to },
      envelope: { from: inAscii(from), to: [to] },
      messageId: `<${id}@${domainToASCII(from.slice(from.lastIndexOf('@') + 1))}>`,
      // So that no machine answers it (RFC 3834, 5 [M]).
      headers: { 'Auto-Submitted': 'auto-generated' },
      disableFileAccess: true,
      disableUrlAccess: true,
      signal: AbortSignal.timeout(limits.wholeMilliseconds),
    });
  } catch (error) {
    throw mailFailure(error as MailFault);
  }
}

/** A name in letters of another alphabet as mail servers know it (RFC 5890 [M]). */
function inAscii(address: string): string {
  const at = address.lastIndexOf('@') + 1;
  return address.slice(0, at) + domainToASCII(address.slice(at));
}

function transportOf({ host, port, secure, requireTls, auth }: MailServer, limits: MailLimits) {
  return {
    host,
    port,
    secure,
    requireTLS: requireTls,
    // Where mail may go unencrypted anyway, a certificate nobody knows is still better than none.
    tls: { rejectUnauthorized: secure || requireTls },
    ...(auth && { auth: { user: auth.user, pass: auth.password } }),
    connectionTimeout: limits.connectMilliseconds,
    greetingTimeout: limits.connectMilliseconds,
    dnsTimeout: limits.connectMilliseconds,
    socketTimeout: limits.silentMilliseconds,
  };
}
