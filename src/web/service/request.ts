import { tellReached } from './connection.js';
import type { AnswerOf, BodyOf, Method, ParametersOf, PathOf } from './operations.js';
import { type ProblemDocument, ServiceProblem } from './problem.js';

const signedOutListeners = new Set<() => void>();

/** Calls back whenever the service says that nobody is signed in at this browser any more. */
export function onSignedOut(listener: () => void): () => void {
  signedOutListeners.add(listener);
  return () => signedOutListeners.delete(listener);
}

/** A body only where the operation takes one. */
type BodyArguments<Body> = undefined extends Body ? [body?: undefined] : [body: Body];

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
  ...[body]: BodyArguments<BodyOf<M, P>>
): Promise<AnswerOf<M, P>> {
  const response = await send(method, addressOf(path, parameters), body);
  return (response.status === 204 ? undefined : await response.json()) as AnswerOf<M, P>;
}

/** As `request`, for an answer that is a file. */
export async function requestFile<M extends Method, P extends PathOf<M>>(
  method: M,
  path: P,
  parameters: ParametersOf<M, P>,
  ...[body]: BodyArguments<BodyOf<M, P>>
): Promise<Blob> {
  return (await send(method, addressOf(path, parameters), body)).blob();
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

async function send(method: Method, path: string, body: unknown): Promise<Response> {
  let response: Response;
  try {
    response = await fetch(`/api/v1${path}`, {
      method,
      credentials: 'same-origin',
      headers: body === undefined ? {} : { 'content-type': 'application/json' },
      body: body === undefined ? null : JSON.stringify(body),
    });
  } catch {
    tellReached(false);
    throw unreachable();
  }
  if (response.ok) {
    tellReached(true);
    return response;
  }
  const problem = new ServiceProblem(await problemOf(response));
  tellReached(problem.code !== 'unreachable');
  if (problem.code === 'sign-in-needed') for (const listener of signedOutListeners) listener();
  throw problem;
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
