import { Agent, request } from 'node:http';

export interface LoadRequest {
  path: string;
  /** Posted; left out: the request is a GET. */
  body?: object;
  /** Which recorded request this is of the kind of: the bare handler reads it, the service does not. */
  kind: string;
}

export interface LoadAnswer {
  status: number;
  text: string;
}

export const kindHeader = 'bench-kind';

/** Where requests go, and what they present: a token or the cookies of a browser. */
export interface Target {
  url: string;
  token?: string;
  cookie?: string;
}

function send(
  agent: Agent,
  url: URL,
  { token, cookie }: Target,
  { path, body, kind }: LoadRequest,
): Promise<LoadAnswer> {
  const text = body === undefined ? undefined : JSON.stringify(body);
  return new Promise((resolve, reject) => {
    const outgoing = request(
      {
        agent,
        host: url.hostname,
        port: url.port,
        method: text === undefined ? 'GET' : 'POST',
        path,
        headers: {
          ...(text !== undefined && {
            'content-type': 'application/json',
            'content-length': Buffer.byteLength(text),
          }),
          [kindHeader]: kind,
          ...(token !== undefined && { authorization: `Bearer ${token}` }),
          ...(cookie !== undefined && { cookie }),
        },
      },
      (incoming) => {
        const chunks: Buffer[] = [];
        incoming.on('data', (chunk: Buffer) => chunks.push(chunk));
        incoming.on('error', reject);
        incoming.on('end', () =>
          resolve({ status: incoming.statusCode ?? 0, text: Buffer.concat(chunks).toString('utf8') }),
        );
      },
    );
    outgoing.on('error', reject);
    outgoing.end(text);
  });
}

/**
 * Sends chains of requests over parallel keep-alive connections: within a chain one after the other, as one artist does,
 * the chains beside each other.
 * @returns answers in the order of the chains, and the requests answered in a second
 * @throws Error on the first answer that is no success
 */
export async function runLoad(
  target: Target,
  chains: readonly (readonly LoadRequest[])[],
  connections: number,
): Promise<{ answers: LoadAnswer[][]; perSecond: number }> {
  const agent = new Agent({ keepAlive: true, maxSockets: connections });
  const url = new URL(target.url);
  const answers: LoadAnswer[][] = chains.map(() => []);
  let next = 0;
  const connection = async () => {
    for (let index = next++; index < chains.length; index = next++) {
      for (const step of chains[index] ?? []) {
        const answer = await send(agent, url, target, step);
        if (answer.status >= 300)
          throw new Error(`${step.path} was answered ${answer.status}: ${answer.text}`);
        answers[index]?.push(answer);
      }
    }
  };
  const startedAt = performance.now();
  await Promise.all(Array.from({ length: connections }, connection));
  const seconds = (performance.now() - startedAt) / 1_000;
  agent.destroy();
  return { answers, perSecond: answers.flat().length / seconds };
}
