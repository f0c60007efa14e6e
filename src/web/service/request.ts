import { type ProblemDocument, ServiceProblem } from './problem.js';

type Method = 'GET' | 'POST' | 'PUT' | 'PATCH' | 'DELETE';

const signedOutListeners = new Set<() => void>();

/** Calls back whenever the service says that nobody is signed in at this browser any more. */
export function onSignedOut(listener: () => void): () => void {
  signedOutListeners.add(listener);
  return () => signedOutListeners.delete(listener);
}

/**
 * Asks the service.
 * @param path below `/api/v1`
 * @returns the JSON of the answer; undefined when it has no content
 * @throws ServiceProblem for every answer that is no success, and when there is none
 */
export async function request<Answer = void>(method: Method, path: string, body?: object): Promise<Answer> {
  const response = await send(method, path, body);
  return (response.status === 204 ? undefined : await response.json()) as Answer;
}

/** As `request`, for an answer that is a file. */
export async function requestFile(method: Method, path: string, body?: object): Promise<Blob> {
  return (await send(method, path, body)).blob();
}

async function send(method: Method, path: string, body: object | undefined): Promise<Response> {
  let response: Response;
  try {
    response = await fetch(`/api/v1${path}`, {
      method,
      credentials: 'same-origin',
      headers: body === undefined ? {} : { 'content-type': 'application/json' },
      body: body === undefined ? null : JSON.stringify(body),
    });
  } catch {
    throw new ServiceProblem({ status: 0, code: 'unreachable', title: '', detail: '' });
  }
  if (response.ok) return response;
  const problem = new ServiceProblem(await problemOf(response));
  if (problem.code === 'sign-in-needed') for (const listener of signedOutListeners) listener();
  throw problem;
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
