/** One statement as the service ran it. */
export interface RecordedStatement {
  onReader: boolean;
  sql: string;
  parameters: (string | number | null)[];
  rows: Record<string, unknown>[];
}

/** Where a value comes from when a statement runs for another request of the same kind. */
export type ValueSource =
  | { from: 'constant'; value: string | number | null }
  /** A field of the request, such as `body.lines.0.trayLineId`. */
  | { from: 'request'; field: string }
  /** A column of a row that an earlier statement gave, and one more for the next number of a sequence. */
  | { from: 'row'; statement: number; row: number; column: string; more: 0 | 1 }
  /** An id made for this request. */
  | { from: 'fresh id'; number: number };

export interface StatementTemplate {
  onReader: boolean;
  sql: string;
  values: ValueSource[];
}

/** What the bare handler does for one kind of request. */
export interface RequestTemplate {
  statements: StatementTemplate[];
  /** The answer of the service, for its size. */
  answer: string;
}

const uuid = /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/;
const hash = /^[0-9a-f]{64}$/;

/** Every text in a request by its path, such as `params.sessionId`. */
export function requestFields(value: unknown, path = ''): Map<string, string> {
  if (typeof value === 'string') return new Map([[path, value]]);
  const fields = new Map<string, string>();
  if (typeof value !== 'object' || value === null) return fields;
  for (const [key, part] of Object.entries(value)) {
    for (const [field, text] of requestFields(part, path === '' ? key : `${path}.${key}`))
      fields.set(field, text);
  }
  return fields;
}

/**
 * Makes of recorded statements what runs for any request of the same kind: ids and hashes are followed to the request or
 * to the row they were read from; everything else stays as recorded, so that sizes are equal.
 */
export function makeTemplate(
  recorded: readonly RecordedStatement[],
  request: Record<string, unknown>,
): StatementTemplate[] {
  const sources = new Map<string, ValueSource>();
  for (const [field, value] of requestFields(request)) {
    if (!sources.has(value)) sources.set(value, { from: 'request', field });
  }
  let freshIds = 0;
  let sequence: { next: number; source: ValueSource } | undefined;
  return recorded.map(({ onReader, sql, parameters, rows }, statement) => {
    const values = parameters.map((value): ValueSource => {
      if (typeof value === 'number' && value === sequence?.next) return sequence.source;
      if (typeof value !== 'string') return { from: 'constant', value };
      const known = sources.get(value);
      if (known) return known;
      if (!uuid.test(value)) return { from: 'constant', value };
      const fresh: ValueSource = { from: 'fresh id', number: freshIds++ };
      sources.set(value, fresh);
      return fresh;
    });
    rows.forEach((row, index) => {
      for (const [column, value] of Object.entries(row)) {
        const source = { from: 'row', statement, row: index, column } as const;
        if (typeof value === 'number' && column === 'sequence') {
          sequence = { next: value + 1, source: { ...source, more: 1 } };
        }
        if (typeof value !== 'string' || sources.has(value)) continue;
        if (uuid.test(value) || hash.test(value)) sources.set(value, { ...source, more: 0 });
      }
    });
    return { onReader, sql, values };
  });
}
