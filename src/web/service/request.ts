import { isAttended } from './attended.js';
import { tellReached } from './connection.js';
import type { AnswerOf, BodyOf, Method, ParametersOf, PathOf } from './operations.js';
import { type ProblemDocument, ServiceProblem } from './problem.js';

const signedOutListeners = new Set<() => void>();

/** Calls back whenever the service says that nobody is signed in at this browser any more. */
export function onSignedOut(listener: () => void): () => void {
  signedOutListeners.add(listener);
  return () => signedOutListeners.delete(listener);
}

/** How a request is sent, beside what it asks. */
export interface Sending {
  /** Who did it: the service refuses it, `signed-in-as-another`, when somebody else is signed in here by now. */
  personId?: string;
  /** No answer for so long is none. Left out: 20 seconds for a question, and no limit for what changes something. */
  limitMilliseconds?: number;
}

const questionMilliseconds = 20_000;

/** A body only where the operation takes one. */
type BodyArguments<Body> = undefined extends Body
  ? [body?: undefined, sending?: Sending]
  : [body: Body, sending?: Sending];

/**
 * Asks the service.
 * @param path below `/api/v1`, as the service's own description has it: `/studios/{studioId}/people`
 * @param parameters what stands in the braces of the path; the others are its query, and those undefined are left out
 * @returns the JSON of the answer; undefined when it has no content
 * @throws ServiceProblem for every answer that is no success, and when there is none
 */
export async function request<M extends Method, P extends PathOf<M>>(
  method: M,
  path: P,
  parameters: ParametersOf<M, P>,
  ...[body, sending = {}]: BodyArguments<BodyOf<M, P>>
): Promise<AnswerOf<M, P>> {
  const { limitMilliseconds = method === 'GET' ? questionMilliseconds : undefined } = sending;
  return send(
    method,
    addressOf(path, parameters),
    body,
    { ...sending, limitMilliseconds },
    async (response) => (response.status === 204 ? undefined : await response.json()),
  ) as Promise<AnswerOf<M, P>>;
}

/** As `request`, for an answer that is a file, however long it takes. */
export async function requestFile<M extends Method, P extends PathOf<M>>(
  method: M,
  path: P,
  parameters: ParametersOf<M, P>,
  ...[body, sending = {}]: BodyArguments<BodyOf<M, P>>
): Promise<Blob> {
  return send(method, addressOf(path, parameters), body, sending, (response) => response.blob());
}

function addressOf(path: string, parameters: unknown): string {
  const query = new URLSearchParams();
  let filled = path;
  for (const [name, value] of Object.entries(parameters as Record<string, string | number | undefined>)) {
    if (value === undefined) continue;
    const place = `{${name}}`;
    if (filled.includes(place)) filled = filled.replace(place, encodeURIComponent(value));
    else query.append(name, String(value));
  }
  return query.size === 0 ? filled : `${filled}?${query}`;
}

async function send<Answer>(
  method: Method,
  path: string,
  body: unknown,
  { personId, limitMilliseconds }: { personId?: string; limitMilliseconds?: number | undefined },
  read: (response: Response) => Promise<Answer>,
): Promise<Answer> {
  const givenUp = new AbortController();
  const limit = limitMilliseconds && setTimeout(() => givenUp.abort(), limitMilliseconds);
  try {
    const response = await fetch(`/api/v1${path}`, {
      method,
      credentials: 'same-origin',
      headers: {
        ...(body !== undefined && { 'content-type': 'application/json' }),
        ...(personId !== undefined && { 'lotward-person': personId }),
        // Only a person changes anything; what an unattended page asks must not keep anybody signed in.
        ...(method === 'GET' && !isAttended() && { 'lotward-by-itself': '1' }),
      },
      body: body === undefined ? null : JSON.stringify(body),
      signal: givenUp.signal,
    });
    if (!response.ok) throw new ServiceProblem(await problemOf(response));
    // The network may be lost in the middle of an answer, or something else answers in the service's place.
    const answer = await read(response);
    tellReached(true);
    return answer;
  } catch (error) {
    const problem = error instanceof ServiceProblem ? error : unreachable();
    tellReached(problem.code !== 'unreachable');
    if (problem.code === 'sign-in-needed') for (const listener of signedOutListeners) listener();
    throw problem;
  } finally {
    clearTimeout(limit);
  }
}

/** There was no answer, so it is not known whether anything was changed. */
export function unreachable(): ServiceProblem {
  return new ServiceProblem({ status: 0, code: 'unreachable', title: '', detail: '' });
}

async function problemOf(response: Response): Promise<ProblemDocument> {
  const after = Number(response.headers.get('retry-after'));
  const waits = Number.isInteger(after) && after > 0 ? { retryAfterSeconds: after } : {};
  try {
    return { ...waits, ...((await response.json()) as ProblemDocument) };
  } catch {
    // Something between here and the service answered in its place.
    return { ...waits, status: response.status, code: 'unreachable', title: '', detail: '' };
  }
}
