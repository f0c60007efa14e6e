import { Agent, request } from 'node:http';
import type { HostileRequest } from './hostile-requests.js';

export interface HostileAnswer {
  status: number;
  contentType: string;
  headers: Record<string, string | string[] | undefined>;
  text: string;
}

/** Sends what no `fetch` would, over connections that are kept. */
export class HostileClient {
  private readonly agent = new Agent({ keepAlive: true, maxSockets: 4 });

  constructor(
    private readonly url: string,
    private readonly token: string,
  ) {}

  send({ method, target, headers, body }: HostileRequest): Promise<HostileAnswer> {
    const { hostname, port } = new URL(this.url);
    const named = 'authorization' in headers || 'cookie' in headers;
    return new Promise((resolve, reject) => {
      const sent = request(
        {
          agent: this.agent,
          host: hostname,
          port,
          method,
          path: target,
          headers: {
            ...(named ? {} : { authorization: `Bearer ${this.token}` }),
            ...(body === undefined ? {} : { 'content-length': Buffer.byteLength(body) }),
            ...headers,
          },
        },
        (answer) => {
          const parts: Buffer[] = [];
          answer.on('data', (part: Buffer) => parts.push(part));
          answer.once('error', reject);
          answer.once('end', () =>
            resolve({
              status: answer.statusCode ?? 0,
              contentType: answer.headers['content-type'] ?? '',
              headers: answer.headers,
              text: Buffer.concat(parts).toString('utf8'),
            }),
          );
        },
      );
      sent.once('error', reject);
      sent.end(body);
    });
  }

  close(): void {
    this.agent.destroy();
  }
}

const members = ['type', 'title', 'status', 'detail', 'code'];
/** What only the inside of the service knows: a stack, a file, a statement, the word of a database. */
const inside =
  /\n\s+at |node_modules|\.[tj]s:\d+|SqliteError|SQLITE_|QueryFailedError|syntax error at|violates \w+ constraint|SELECT .+ FROM|INSERT INTO "?\w+"? \(|relation "|TypeError|RangeError|ReferenceError/;

/** What is wrong with an answer; null: nothing. A refusal is a problem document (RFC 9457) that tells nothing of the inside. */
export function faultOf(
  { status, contentType, text }: HostileAnswer,
  expects: HostileRequest['expects'],
): string | null {
  if (status >= 500) return `failed with ${status}`;
  if (status < 400) return expects === 'refusal' ? `was answered ${status}` : null;
  if (!contentType.startsWith('application/problem+json')) return `was refused ${status} as ${contentType}`;
  if (inside.test(text)) return `tells of the inside: ${inside.exec(text)?.[0]}`;
  try {
    const problem = JSON.parse(text) as Record<string, unknown>;
    const missing = members.filter((member) => !(member in problem));
    if (missing.length > 0) return `is a problem without ${missing}`;
    return problem.status === status ? null : `says ${String(problem.status)} for ${status}`;
  } catch {
    return 'is no JSON';
  }
}
