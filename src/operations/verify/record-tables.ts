/** Every table is covered by the audit log, row by row, but for these, each for its reason. */
export const uncoveredTables: Readonly<Record<string, string>> = {
  accepted_request: 'what a request was answered, so that its repetition is; what it did is in the audit log',
  audit_entry: 'the audit log itself: each entry is covered by its hash, and all by the chain',
  audit_head: 'the end of the chain, held against the last entry',
  balance: 'kept by the database, and held against the sum of the movements',
  credential_use: 'when a credential was last used, and how often a passkey: no record',
  fetched_notice:
    'which published notices were seen before, by digest: no record; those that matter here are kept as notices',
  failed_sign_in: 'failed attempts to sign in: no record, and cleared when they are old',
  passkey_challenge: 'what a browser is asked to sign just now: no record, and cleared when it is old',
  notice_source_state:
    'when published notices were last fetched, and from where: no record; what was found is a notice of its own',
  migrations: 'which migrations were applied: the schema, not the record',
  plan_lease: 'until when a plan that is being made belongs to the process that makes it: no record',
  schedule_state: 'when what fires by time was last done: no record',
  sign_in:
    'who is signed in just now: no record, and cleared when it is old; the signing in is in the audit log',
};

/** The key by which an entry names a row, where it is not the primary key. */
export const keysOfRecord: Readonly<Record<string, readonly string[]>> = {
  movement: ['studio_id', 'id'],
};

/** Tables whose rows are a studio or a chain themselves. */
export const rowsThemselves: Readonly<Record<string, 'studio' | 'chain'>> = {
  chain: 'chain',
  studio: 'studio',
};

type Row = Readonly<Record<string, string | number | null>>;

/** Rows of which only the making is in the audit log: how each looked when it was made. */
export const asMade: Readonly<Record<string, (row: Row) => Row>> = {
  // That a delivery was tried is no part of the record.
  outbox: (row) => ({
    ...row,
    state: 'pending',
    attempts: 0,
    begun: null,
    next_attempt_at: row.not_before ?? row.created_at ?? null,
    last_error: null,
    settled_at: null,
  }),
};
