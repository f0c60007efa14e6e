import { type ArgumentsHost, Catch, type ExceptionFilter, HttpException, Logger } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { QueryFailedError } from 'typeorm';
import { Problem, type ProblemCode } from './problem.js';

interface FastifyError {
  statusCode: number;
  code: string;
  message: string;
}

function isFastifyError(error: unknown): error is FastifyError {
  return error instanceof Error && 'statusCode' in error && 'code' in error;
}

/** The database's own word, when the rules before it were overtaken by something that ran at the same time. */
const balanceChecks = /pieces_never_below_zero|microlitres_never_below_zero/;

function brokenKey(error: QueryFailedError): boolean {
  const { code } = error.driverError as { code?: string };
  return code === '23505' || code === 'SQLITE_CONSTRAINT_UNIQUE' || code === 'SQLITE_CONSTRAINT_PRIMARYKEY';
}

function asProblem(error: unknown): Problem | undefined {
  if (error instanceof Problem) return error;
  if (error instanceof QueryFailedError && brokenKey(error)) {
    return new Problem(
      409,
      'already-exists',
      'Someone recorded the same at the same moment, so nothing was changed. Look at it again, then decide.',
    );
  }
  if (error instanceof QueryFailedError && balanceChecks.test(error.message)) {
    return new Problem(
      409,
      'not-enough-stock',
      'This would take more than the book shows, so nothing was changed. Look at the balance again; if more is there than the book says, count it first.',
    );
  }
  const status =
    error instanceof HttpException ? error.getStatus() : isFastifyError(error) ? error.statusCode : undefined;
  if (status === undefined || status >= 500) return undefined;
  const detail = (error as Error).message;
  if (status === 404) return new Problem(404, 'not-found', `Nothing is served here: ${detail}.`);
  if (status === 413)
    return new Problem(413, 'body-too-large', `${detail}. Send less at a time, in several requests.`);
  if (status === 415) {
    return new Problem(
      415,
      'unsupported-media-type',
      `${detail}. Send JSON, and say so: Content-Type: application/json.`,
    );
  }
  if (status === 401 || status === 403) return new Problem(status, 'not-allowed', detail);
  return new Problem(status, 'malformed-request', detail);
}

/** The members of a problem document. */
export function problemDocument(problem: Problem): object {
  return {
    ...problem.extensions,
    type: `urn:lotward:problem:${problem.code}`,
    title: problem.title,
    status: problem.status,
    detail: problem.detail,
    code: problem.code,
  };
}

const refusals = new WeakMap<FastifyReply, ProblemCode>();

/** The code of the problem an answer consists of, for the log. */
export function refusalOf(reply: FastifyReply): ProblemCode | undefined {
  return refusals.get(reply);
}

/** Answers with a problem document. */
export function sendProblem(reply: FastifyReply, problem: Problem): void {
  refusals.set(reply, problem.code);
  const { retryAfterSeconds } = problem.extensions;
  if (typeof retryAfterSeconds === 'number') void reply.header('retry-after', retryAfterSeconds);
  // RFC 9110, 11.6.1 [P]: an answer of 401 says how one shows who one is.
  if (problem.status === 401) void reply.header('www-authenticate', 'Bearer realm="lotward"');
  void reply
    .status(problem.status)
    .header('content-type', 'application/problem+json')
    .send(problemDocument(problem));
}

/** Turns every error into an RFC 9457 problem document; what is not a problem is logged and told as 500 without its inside. */
@Catch()
export class ProblemFilter implements ExceptionFilter {
  private readonly logger = new Logger('problem');

  catch(error: unknown, host: ArgumentsHost): void {
    const http = host.switchToHttp();
    const request = http.getRequest<FastifyRequest>();
    const reply = http.getResponse<FastifyReply>();
    let problem = asProblem(error);
    if (!problem) {
      // A failed query carries its parameters, which may be personal: only the message of the driver is logged.
      const cause = error instanceof Error ? (error.stack ?? error.message) : String(error);
      this.logger.error(`${request.method} ${request.routeOptions.url ?? ''} (${request.id}): ${cause}`);
      problem = new Problem(
        500,
        'internal-error',
        'Nothing was changed. Try again; if it happens again, look for this requestId in the log of the service.',
        { requestId: request.id },
      );
    }
    sendProblem(reply, problem);
  }
}
