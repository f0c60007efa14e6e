import { Agent, request } from 'node:http';

export interface PlainRequest {
  method?: string;
  headers?: Record<string, string>;
  body?: string;
}

export interface PlainAnswer {
  status: number;
  headers: Headers;
  bytes: Buffer;
}

/** Connections are kept as long as the service keeps them, and keep no process alive. */
const agent = new Agent({ keepAlive: true });

/**
 * One request over HTTP and its whole answer, as by `fetch`, which takes four times the work: tests ask tens of thousands
 * of times. For what goes on for long, is redirected or encrypted there is `fetch`.
 * @throws TypeError as `fetch` does, when nobody answers or an answer breaks off
 */
export function plainExchange(
  address: string,
  { method = 'GET', headers = {}, body }: PlainRequest = {},
): Promise<PlainAnswer> {
  return new Promise((resolve, reject) => {
    const failed = (cause: Error) => reject(new TypeError('fetch failed', { cause }));
    const length = body === undefined ? {} : { 'content-length': String(Buffer.byteLength(body)) };
    const usual = { accept: '*/*', 'user-agent': 'node' };
    const sent = request(
      address,
      { agent, method, headers: { ...usual, ...length, ...headers } },
      (answer) => {
        const parts: Buffer[] = [];
        answer.on('data', (part: Buffer) => parts.push(part));
        answer.once('error', failed);
        answer.once('end', () => {
          const named = new Headers();
          for (let index = 0; index < answer.rawHeaders.length; index += 2) {
            named.append(answer.rawHeaders[index] ?? '', answer.rawHeaders[index + 1] ?? '');
          }
          resolve({ status: answer.statusCode ?? 0, headers: named, bytes: Buffer.concat(parts) });
        });
      },
    );
    sent.once('error', failed);
    sent.end(body);
  });
}
