import type { AddressInfo, Socket } from 'node:net';
import { buffer } from 'node:stream/consumers';
import { type ParsedMail, simpleParser } from 'mailparser';
import { SMTPServer } from 'smtp-server';
import { until, wait } from './waiting.js';

export interface ReceivedMail {
  /** As an independent parser reads it. */
  mail: ParsedMail;
  /** As it came, byte for byte. */
  source: string;
  from: string;
  to: string[];
}

/** How mail is met: taken at once unless said otherwise. */
export interface MailAnswer {
  /** Refuses the recipient with this code: 4xx for now, 5xx for good. */
  refusesRecipient?: number;
  /** Refuses the mail with this code once it was read. */
  refusesMail?: number;
  afterMilliseconds?: number;
  /** The mail is read whole, then the connection is cut without an answer. */
  closesEarly?: boolean;
}

const refusal = (responseCode: number) =>
  Object.assign(new Error(responseCode < 500 ? 'try again later' : 'there is no such mailbox'), {
    responseCode,
  });

/** A real SMTP server on loopback, without TLS, that takes mail as it is told and remembers what came. */
export class MailReceiver {
  /** Every mail that was read whole, in the order it came, also those that were then refused or cut off. */
  readonly received: ReceivedMail[] = [];
  answer: MailAnswer = {};
  private readonly sockets = new Set<Socket>();
  private server: SMTPServer | undefined;
  private listensAt = 0;

  static async start(): Promise<MailReceiver> {
    const receiver = new MailReceiver();
    await receiver.restart();
    return receiver;
  }

  /** For SMTP_URL. */
  get url(): string {
    return `smtp://127.0.0.1:${this.listensAt}`;
  }

  /** Starts it again at the same port. */
  async restart(): Promise<void> {
    await this.stop();
    const server = new SMTPServer({
      authOptional: true,
      disabledCommands: ['STARTTLS', 'AUTH'],
      disableReverseLookup: true,
      closeTimeout: 1,
      onRcptTo: (_address, _session, done) => {
        const { refusesRecipient } = this.answer;
        done(refusesRecipient === undefined ? null : refusal(refusesRecipient));
      },
      onData: (stream, session, done) => {
        void (async () => {
          const source = await buffer(stream);
          const { refusesMail, afterMilliseconds, closesEarly } = this.answer;
          this.received.push({
            mail: await simpleParser(source),
            source: source.toString('utf8'),
            from: session.envelope.mailFrom === false ? '' : session.envelope.mailFrom.address,
            to: session.envelope.rcptTo.map(({ address }) => address),
          });
          if (afterMilliseconds !== undefined) await wait(afterMilliseconds);
          if (closesEarly) return this.cutConnections();
          done(refusesMail === undefined ? null : refusal(refusesMail));
        })();
      },
    });
    // A connection that is cut is no fault of this server.
    server.on('error', () => undefined);
    server.server.on('connection', (socket: Socket) => {
      this.sockets.add(socket);
      socket.once('close', () => this.sockets.delete(socket));
    });
    await new Promise<void>((resolve) => {
      server.listen(this.listensAt, '127.0.0.1', () => resolve());
    });
    this.listensAt = (server.server.address() as AddressInfo).port;
    this.server = server;
  }

  /** Waits until as many mails came. */
  async came(count: number): Promise<void> {
    await until(`${count} mails`, () => this.received.length >= count || undefined);
  }

  /** How often each mail came, by its Message-ID. */
  timesById(): Map<string, number> {
    const times = new Map<string, number>();
    for (const { mail } of this.received) {
      const id = mail.messageId ?? '';
      times.set(id, (times.get(id) ?? 0) + 1);
    }
    return times;
  }

  forget(): void {
    this.received.length = 0;
    this.answer = {};
  }

  cutConnections(): void {
    for (const socket of this.sockets) socket.destroy();
  }

  async stop(): Promise<void> {
    const { server } = this;
    this.server = undefined;
    if (!server) return;
    const closed = new Promise<void>((resolve) => server.close(() => resolve()));
    this.cutConnections();
    await closed;
  }
}
