/** What an entry says of one row that its write inserted, changed or removed. */
export class AuditedRowView {
  table: string;
  id: string;
  /** SHA-256 of the row as the write left it; null: it was removed. */
  digest: string | null;
  /** SHA-256 of the row as the write found it; missing when it was made. */
  before?: string;
}

export class AuditEntryView {
  /** Gapless from 1 in each studio. */
  sequence: number;
  recordedAt: string;
  /** Null: the service by itself. */
  personId: string | null;
  /** By what way it came in: `api`, `paper`, `system`, `cli`. */
  via: string;
  /** Room and verb, such as `stock.open`. */
  action: string;
  subjectKind: string;
  subjectId: string;
  /** What the write told beside its rows; ids and names of fields, never personal data. */
  notes: Record<string, unknown>;
  rows: AuditedRowView[];
  previousHash: string;
  /** SHA-256 of the entry with the hash of the one before. */
  hash: string;
}

export class AuditPageView {
  items: AuditEntryView[];
  /**
   * Hand it in as `after` for the next page; null: this was the last. Where few entries fit the filters, a page can hold
   * fewer than asked for, or none, and still have a next one: each looks through so many entries only.
   */
  next: number | null;
}
