import { createServer, type IncomingHttpHeaders, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { text } from 'node:stream/consumers';
import { until } from './waiting.js';

export interface ReceivedWebhook {
  /** The header `webhook-id`: the delivery id. */
  id: string;
  headers: IncomingHttpHeaders;
  body: string;
  path: string;
  /** When its body was whole, in milliseconds of `performance.now()`. */
  at: number;
}

/** How a request is answered: 200 at once unless said otherwise. */
export interface WebhookAnswer {
  status?: number;
  headers?: Record<string, string>;
  body?: string;
  /** It is read, and not answered before `release`. */
  held?: boolean;
  /** The request is read, then the connection is cut without an answer. */
  closesEarly?: boolean;
}

/** A real HTTP server on loopback that takes webhooks, answers as it is told, and remembers what came. */
export class WebhookReceiver {
  /** Every request in the order it came, however it was answered. */
  readonly received: ReceivedWebhook[] = [];
  /** How requests are answered when nothing else is to come. */
  usually: WebhookAnswer = {};
  private readonly next: WebhookAnswer[] = [];
  private releaseHeld: () => void = () => undefined;
  private held: Promise<void> | undefined;
  private readonly atPath = new Map<string, WebhookAnswer>();

  private constructor(
    private readonly server: Server,
    readonly port: number,
  ) {}

  static async start(): Promise<WebhookReceiver> {
    const server = createServer();
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
    const receiver = new WebhookReceiver(server, (server.address() as AddressInfo).port);
    server.on('request', async (request, response) => {
      const body = await text(request).catch(() => undefined);
      if (body === undefined) return;
      const id = String(request.headers['webhook-id'] ?? '');
      const at = performance.now();
      receiver.received.push({ id, headers: request.headers, body, path: request.url ?? '', at });
      const answer = receiver.atPath.get(request.url ?? '') ?? receiver.next.shift() ?? receiver.usually;
      if (answer.held) await receiver.hold();
      if (answer.closesEarly) return request.socket.destroy();
      response.writeHead(answer.status ?? 200, answer.headers).end(answer.body ?? '');
    });
    return receiver;
  }

  /** An address to send to; a path tells receivers apart that share this server. */
  url(path = '/alerts'): string {
    return `http://127.0.0.1:${this.port}${path}`;
  }

  /** Answers the next requests in this order, before those that are usual. */
  answerNext(...answers: WebhookAnswer[]): void {
    this.next.push(...answers);
  }

  /** Answers at one address so, whatever is to come elsewhere. */
  answerAt(path: string, answer: WebhookAnswer): void {
    this.atPath.set(path, answer);
  }

  /** Answers what is held, and whatever comes from now on as usual, at once. */
  release(): void {
    this.usually = {};
    this.releaseHeld();
    this.held = undefined;
  }

  private hold(): Promise<void> {
    this.held ??= new Promise((resolve) => {
      this.releaseHeld = resolve;
    });
    return this.held;
  }

  /** What came to one address. */
  at(path: string): ReceivedWebhook[] {
    return this.received.filter((each) => each.path === path);
  }

  /** How often each delivery came, by its id. */
  timesById(): Map<string, number> {
    const times = new Map<string, number>();
    for (const { id } of this.received) times.set(id, (times.get(id) ?? 0) + 1);
    return times;
  }

  /** Waits until as many requests came. */
  async came(count: number): Promise<void> {
    await until(`${count} webhooks`, () => this.received.length >= count || undefined);
  }

  /** Forgets what came. */
  forget(): void {
    this.received.length = 0;
    this.next.length = 0;
    this.atPath.clear();
    this.usually = {};
  }

  async stop(): Promise<void> {
    const closed = new Promise((resolve) => this.server.close(resolve));
    this.server.closeAllConnections();
    await closed;
  }
}
