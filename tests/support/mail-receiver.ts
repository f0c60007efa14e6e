import type { Socket } from 'node:net';
import { buffer } from 'node:stream/consumers';
import { type ParsedMail, simpleParser } from 'mailparser';
import { SMTPServer } from 'smtp-server';
import { sparePort } from './spare-port.js';
import { until } from './waiting.js';

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
  /** The mail is read whole, and not answered before `release`. */
  held?: boolean;
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
  private releaseHeld: () => void = () => undefined;
  private held: Promise<void> | undefined;

  private constructor(private readonly port: number) {}

  static async start(): Promise<MailReceiver> {
    const receiver = new MailReceiver(await sparePort());
    await receiver.restart();
    return receiver;
  }

  /** For SMTP_URL. */
  get url(): string {
    return `smtp://127.0.0.1:${this.port}`;
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
          // One whose connection ended before its last byte never came.
          const source = await buffer(stream).catch(() => undefined);
          if (source === undefined) return;
          const { refusesMail, held, closesEarly } = this.answer;
          this.received.push({
            mail: await simpleParser(source),
            source: source.toString('utf8'),
            from: session.envelope.mailFrom === false ? '' : session.envelope.mailFrom.address,
            to: session.envelope.rcptTo.map(({ address }) => address),
          });
          if (held) await this.hold();
          if (closesEarly) return this.cutConnections();
          done(refusesMail === undefined ? null : refusal(refusesMail));
        })();
      },
    });
    server.server.on('connection', (socket: Socket) => {
      this.sockets.add(socket);
      socket.once('close', () => this.sockets.delete(socket));
    });
    await new Promise<void>((resolve, reject) => {
      server.once('error', reject);
      server.listen(this.port, '127.0.0.1', () => resolve());
    });
    // A connection that is cut is no fault of this server.
    server.on('error', () => undefined);
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

  /** Answers what is held, and whatever comes from now on, at once. */
  release(): void {
    this.answer = {};
    this.releaseHeld();
    this.held = undefined;
  }

  private hold(): Promise<void> {
    this.held ??= new Promise((resolve) => {
      this.releaseHeld = resolve;
    });
    return this.held;
  }

  /** Forgets what came; whatever comes from now on is taken. */
  forget(): void {
    this.received.length = 0;
    this.release();
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
