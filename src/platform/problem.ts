/** The stable codes a client of the API may rely on. */
export type ProblemCode =
  | 'malformed-request'
  | 'invalid-fields'
  | 'body-too-large'
  | 'unsupported-media-type'
  | 'not-found'
  | 'not-allowed'
  | 'cross-site-request'
  | 'sign-in-needed'
  | 'sign-in-failed'
  | 'signed-in-as-another'
  | 'recent-sign-in-needed'
  | 'passkey-needed'
  | 'passkeys-unavailable'
  | 'unusable-passkey'
  | 'unusable-pin'
  | 'unusable-link'
  | 'unusable-password'
  | 'request-id-reused'
  | 'stale-version'
  | 'wrong-state'
  | 'already-exists'
  | 'unusable-date'
  | 'unusable-time'
  | 'unusable-symbol'
  | 'unknown-symbol'
  | 'unusable-quantity'
  | 'same-code-other-use-by'
  | 'not-enough-stock'
  | 'decision-needed'
  | 'second-person-needed'
  | 'erasure-not-listed'
  | 'unusable-file'
  | 'too-many-requests'
  | 'not-ready'
  | 'internal-error';

export interface FieldFault {
  /** Path in the request body, such as `lines.0.quantity`. */
  field: string;
  message: string;
}

const titles: Record<ProblemCode, string> = {
  'malformed-request': 'The request could not be read',
  'invalid-fields': 'Some fields cannot be accepted',
  'body-too-large': 'The request body is too large',
  'unsupported-media-type': 'The body is of a kind that is not read here',
  'not-found': 'Not found',
  'not-allowed': 'Not allowed',
  'cross-site-request': 'Asked for by a page of another site',
  'sign-in-needed': 'Signing in is needed',
  'sign-in-failed': 'Signing in failed',
  'signed-in-as-another': 'Somebody else is signed in',
  'recent-sign-in-needed': 'Signing in again is needed',
  'passkey-needed': 'Signing in with a passkey is needed',
  'passkeys-unavailable': 'Passkeys do not work at this address',
  'unusable-passkey': 'The passkey cannot be used',
  'unusable-pin': 'The PIN cannot be used',
  'unusable-link': 'The link cannot be used',
  'unusable-password': 'The password cannot be used',
  'request-id-reused': 'This id was already used for another request',
  'stale-version': 'Someone changed this in the meantime',
  'wrong-state': 'Not possible in its present state',
  'already-exists': 'Already exists',
  'unusable-date': 'The date cannot be used',
  'unusable-time': 'The time cannot be used',
  'unusable-symbol': 'The symbol cannot be used',
  'unknown-symbol': 'The symbol is not known here',
  'unusable-quantity': 'The quantity cannot be used',
  'same-code-other-use-by': 'This code is known with another use-by date',
  'not-enough-stock': 'Not enough stock',
  'decision-needed': 'A decision is needed',
  'second-person-needed': 'A second person is needed',
  'erasure-not-listed': 'The erasure is not on the list of erasures',
  'unusable-file': 'The file cannot be taken in',
  'too-many-requests': 'Too many requests',
  'not-ready': 'Not ready',
  'internal-error': 'Something went wrong on our side',
};

/**
 * An answer of HTTP status 4xx, or 503, in the form of RFC 9457.
 * `detail` says what was seen, what is allowed and what to do.
 */
export class Problem extends Error {
  readonly title: string;

  constructor(
    readonly status: number,
    readonly code: ProblemCode,
    readonly detail: string,
    /** Further members of the problem document, such as `faults` or `choices`. */
    readonly extensions: Record<string, unknown> = {},
  ) {
    super(detail);
    this.title = titles[code];
  }
}

/** Not found, or not in this studio: the two are never told apart. */
export function notFound(what: string, id: string): Problem {
  return new Problem(404, 'not-found', `This studio has no ${what} with the id ${id}.`);
}

/** A request that names a field whose value cannot be accepted. */
export function invalidField(field: string, message: string): Problem {
  return new Problem(400, 'invalid-fields', message, { faults: [{ field, message }] satisfies FieldFault[] });
}

/**
 * All faults of a request as one problem naming every field. Its code is theirs when they share one.
 * @param faults at least one; a fault without a code is one of `invalid-fields`
 */
export function faultsProblem(faults: readonly (FieldFault & { code?: ProblemCode })[]): Problem {
  const [first] = faults;
  const [code = 'invalid-fields', ...others] = new Set(faults.map((fault) => fault.code ?? 'invalid-fields'));
  const detail =
    faults.length === 1 && first
      ? `${first.field}: ${first.message}.`
      : `${faults.length} fields cannot be accepted; see faults.`;
  return new Problem(400, others.length === 0 ? code : 'invalid-fields', detail, {
    faults: faults.map(({ field, message }): FieldFault => ({ field, message })),
  });
}

/** An edit that was made from an older version of what it changes. */
export function staleVersion(what: string, version: number): Problem {
  return new Problem(
    409,
    'stale-version',
    `This ${what} was changed by someone else; it is now at version ${version}. Read it again, then repeat your change.`,
    { version },
  );
}

/**
 * Refuses a change of a setting that was made from another version than the one that stands.
 * @param standing null: nothing is set yet, and the change names no version
 */
export function refuseOtherVersion(what: string, standing: number | null, given: number | undefined): void {
  if (standing === (given ?? null)) return;
  if (standing !== null) throw staleVersion(what, standing);
  throw new Problem(
    404,
    'not-found',
    `No ${what} is set here, so it has no version ${given}. Leave the version out to set it.`,
  );
}

/** An id that stands for another request already. */
export function reusedId(id: string): Problem {
  return new Problem(
    409,
    'request-id-reused',
    `The id ${id} was already used for a request with other content. Nothing was changed; make a new id for a new request.`,
  );
}
