import { request } from 'node:http';
import { connect } from 'node:net';

export interface RawAnswer {
  status: number;
  headers: Record<string, string | string[] | undefined>;
  body: string;
}

/** A request with exactly the headers given, Host among them, as no `fetch` would send it. */
export function rawRequest(
  url: string,
  options: { method?: string; path?: string; headers?: Record<string, string>; body?: string } = {},
): Promise<RawAnswer> {
  const { hostname, port, pathname } = new URL(url);
  return new Promise((resolve, reject) => {
    const sent = request(
      {
        host: hostname.replace(/^\[|\]$/g, ''),
        port,
        path: options.path ?? pathname,
        method: options.method ?? 'GET',
        headers: options.headers ?? {},
      },
      (answer) => {
        const parts: Buffer[] = [];
        answer.on('data', (part: Buffer) => parts.push(part));
        answer.once('error', reject);
        answer.once('end', () =>
          resolve({
            status: answer.statusCode ?? 0,
            headers: answer.headers,
            body: Buffer.concat(parts).toString('utf8'),
          }),
        );
      },
    );
    sent.once('error', reject);
    sent.end(options.body);
  });
}

/** Writes bytes to the service and reads whatever comes back until it closes the connection. */
export function rawExchange(url: string, text: string): Promise<{ answer: string; milliseconds: number }> {
  const { hostname, port } = new URL(url);
  const started = Date.now();
  return new Promise((resolve, reject) => {
    const socket = connect(Number(port), hostname.replace(/^\[|\]$/g, ''), () => socket.write(text));
    let answer = '';
    socket.setEncoding('latin1');
    socket.on('data', (part: string) => {
      answer += part;
    });
    socket.once('error', (error: Error & { code?: string }) =>
      error.code === 'ECONNRESET' || error.code === 'EPIPE' ? undefined : reject(error),
    );
    socket.once('close', () => resolve({ answer, milliseconds: Date.now() - started }));
  });
}
