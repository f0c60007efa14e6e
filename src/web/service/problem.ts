/** What the service refuses, as it says it (RFC 9457). */
export interface ProblemDocument {
  status: number;
  code: string;
  title: string;
  detail: string;
  faults?: { field: string; message: string }[];
  /** What is wrong with single lines of a tray that was to be completed. */
  lines?: { lineId: string; code: string; message: string }[];
  /** The order in which what was to be ordered stands already. */
  orderId?: string;
  /** The state something was found in that is not the one it would have to be in. */
  state?: string;
  /** Whole seconds until it makes sense to try again. */
  retryAfterSeconds?: number;
}

/** An answer that is no success; `unreachable` when there was none at all. */
export class ServiceProblem extends Error {
  constructor(readonly document: ProblemDocument) {
    super(document.detail);
  }

  get code(): string {
    return this.document.code;
  }

  /** The service's words, when it is the problem of this code. */
  detailOf(code: string): string | undefined {
    return this.code === code ? this.document.detail : undefined;
  }

  /** What was wrong with one field of the request, in the service's words. */
  faultOf(field: string): string | undefined {
    return this.document.faults?.find((fault) => fault.field === field)?.message;
  }
}

export function isProblem(error: unknown, code: string): boolean {
  return error instanceof ServiceProblem && error.code === code;
}

/** Whether the same request may well be answered otherwise in a while: no answer, too many requests, a fault of the service. */
export function isPassing(error: unknown): boolean {
  if (!(error instanceof ServiceProblem)) return false;
  const { status, code } = error.document;
  return code === 'unreachable' || status === 429 || status >= 500;
}
