import { TextDecoder } from 'node:util';
import { type NoticeSource, withoutQuery } from '../../platform/notice-sources-setting.js';
import { retryAfter } from '../../platform/retry-after.js';
import { declaredEncoding } from './declared-encoding.js';
import type { SourceOutcome } from './source-state.js';

/** What asking for an address may take. */
export interface FetchLimits {
  /** Until the answer begins. */
  answerMilliseconds: number;
  /** Until it has come whole. */
  wholeMilliseconds: number;
  /** Of the body as it is unpacked. */
  bodyBytes: number;
}

export const fetchLimits: FetchLimits = {
  answerMilliseconds: 30_000,
  wholeMilliseconds: 120_000,
  bodyBytes: 8_388_608,
};

export type Fetched =
  | { kind: 'text'; text: string; etag: string | null; lastModified: string | null }
  | Exclude<SourceOutcome, { kind: 'read' }>;

/** By what a source knows which version is known here. */
export interface KnownVersion {
  etag: string | null;
  lastModified: string | null;
}

type Failure = Extract<Fetched, { kind: 'failed' }>;

const accepted: Record<NoticeSource['kind'], string> = {
  csv: 'text/csv, text/plain;q=0.9, */*;q=0.1',
  'enforcement json': 'application/json, */*;q=0.1',
  'safety gate xml': 'application/xml, text/xml, */*;q=0.1',
};
const namesShown = 120;

/**
 * Asks one address once. Guarantees: it ends within its limits, also when the answer comes drop by drop or unpacks to far
 * more than it seems; it follows no redirection; whatever goes wrong is an outcome in words, which show nothing that may
 * be a key. The addresses are written by whoever runs the service, who may well have a source in the same network: none
 * is refused for where it is.
 */
export class NoticeFetch {
  constructor(private readonly limits: FetchLimits = fetchLimits) {}

  /**
   * @param known sent along, so that the answer may be that nothing is new
   * @param now ISO 8601 instant
   * @param ending breaks it off
   */
  async fetch(
    { kind, url }: NoticeSource,
    known: KnownVersion,
    now: string,
    ending?: AbortSignal,
  ): Promise<Fetched> {
    const breaking = new AbortController();
    const limit = (milliseconds: number, words: string) =>
      setTimeout(() => breaking.abort(new OutOfTime(words)), milliseconds);
    const { answerMilliseconds, wholeMilliseconds } = this.limits;
    const answer = limit(answerMilliseconds, `It did not answer within ${answerMilliseconds / 1_000} s.`);
    const whole = limit(wholeMilliseconds, `Its answer did not end within ${wholeMilliseconds / 1_000} s.`);
    const breakOff = () => breaking.abort(new OutOfTime('The service ended meanwhile.'));
    ending?.addEventListener('abort', breakOff, { once: true });
    if (ending?.aborted) breakOff();
    try {
      const response = await fetch(url, {
        headers: headersOf(kind, known),
        redirect: 'manual',
        signal: breaking.signal,
      });
      clearTimeout(answer);
      return await this.answered(kind, response, known, now);
    } catch (error) {
      return forNow(wordsOf(breaking.signal.aborted ? breaking.signal.reason : error));
    } finally {
      clearTimeout(answer);
      clearTimeout(whole);
      ending?.removeEventListener('abort', breakOff);
      // Whatever was not read is not to come either.
      breaking.abort();
    }
  }

  private async answered(
    kind: NoticeSource['kind'],
    response: Response,
    { etag, lastModified }: KnownVersion,
    now: string,
  ): Promise<Fetched> {
    const { status, headers } = response;
    if (status === 304) {
      return etag === null && lastModified === null
        ? forGood('It answered 304, that nothing is new, though nothing of it is known here.')
        : { kind: 'unchanged' };
    }
    if (status === 200 || (status === 404 && kind === 'enforcement json')) {
      const text = await this.textOf(response);
      if (typeof text !== 'string') return text;
      const version = { etag: headers.get('etag'), lastModified: headers.get('last-modified') };
      if (status === 200) return { kind: 'text', text, ...version };
      // A search that finds nothing is answered so.
      if (saysNothingMatches(text)) return { kind: 'text', text: '[]', etag: null, lastModified: null };
    }
    if (status >= 300 && status < 400)
      return forGood(redirected(status, headers.get('location'), response.url));
    if (status === 429 || status === 503) {
      return forNow(`It answered ${status}.`, retryAfter(headers.get('retry-after'), now));
    }
    if (status === 408 || status === 425 || status >= 500) return forNow(`It answered ${status}.`);
    return forGood(`It answered ${status} where 200 is expected.`);
  }

  private async textOf(response: Response): Promise<string | Failure> {
    const { bodyBytes } = this.limits;
    const tooLarge = forGood(`Its answer is larger than ${bodyBytes} bytes, which is the most that is read.`);
    const parts: Uint8Array[] = [];
    let length = 0;
    for await (const part of response.body ?? []) {
      length += part.byteLength;
      if (length > bodyBytes) return tooLarge;
      parts.push(part);
    }
    const bytes = Buffer.concat(parts);
    const encoding = declaredEncoding(
      bytes.subarray(0, 512).toString('latin1'),
      response.headers.get('content-type'),
    );
    let decoder: TextDecoder;
    try {
      decoder = new TextDecoder(encoding, { fatal: true });
    } catch {
      return forGood(`Its answer is said to be written in "${encoding.slice(0, 40)}", which is not known.`);
    }
    try {
      return decoder.decode(bytes);
    } catch {
      return forGood(`Its answer is not written in ${encoding}, as it should be.`);
    }
  }
}

class OutOfTime extends Error {}

function forNow(error: string, retryAt: string | null = null): Failure {
  return { kind: 'failed', error, isLasting: false, retryAt };
}

function forGood(error: string): Failure {
  return { kind: 'failed', error, isLasting: true, retryAt: null };
}

function headersOf(kind: NoticeSource['kind'], { etag, lastModified }: KnownVersion): Record<string, string> {
  return {
    accept: accepted[kind],
    'user-agent': 'lotward',
    ...(etag === null ? {} : { 'if-none-match': etag }),
    ...(lastModified === null ? {} : { 'if-modified-since': lastModified }),
  };
}

function redirected(status: number, location: string | null, url: string): string {
  if (location === null || !URL.canParse(location, url))
    return `It answered ${status} and does not say where it moved.`;
  const there = withoutQuery(new URL(location, url).href).slice(0, namesShown);
  return `It leads on to ${there}. If that is right, write that address into NOTICE_SOURCES.`;
}

function saysNothingMatches(text: string): boolean {
  try {
    const { error } = JSON.parse(text) as { error?: { code?: unknown } };
    return error?.code === 'NOT_FOUND';
  } catch {
    return false;
  }
}

/** Some wrap what went wrong with the connection, some hand it on as it is. */
function wordsOf(error: unknown): string {
  if (error instanceof OutOfTime) return error.message;
  const { cause, code, message } = error as {
    cause?: { code?: string; message?: string };
    code?: string;
    message?: string;
  };
  const seen = cause?.code ?? code ?? cause?.message ?? message ?? String(error);
  return `It could not be reached (${seen.slice(0, namesShown)}).`;
}
