export const exportFormat = 'lotward-audit-log/1';

/** What the last entry of an exported log says of itself. */
export const exportAction = 'operations.export-audit-log';

/** The first line of an exported log; each further line is one entry, from 1 to the head. */
export interface ExportOpening {
  format: typeof exportFormat;
  studioId: string;
  /** ISO 8601 in UTC: when the last entry, that of the export itself, was recorded. */
  exportedAt: string;
  head: { sequence: number; hash: string };
}

/**
 * A line of an exported log, with its line feed. U+2028 and U+2029 are escaped, for there are readers that end a line at
 * them.
 */
export function logLine(value: object): string {
  const escaped = (end: string) => `\\u${end.charCodeAt(0).toString(16)}`;
  return `${JSON.stringify(value).replace(/[\u2028\u2029]/g, escaped)}\n`;
}

/** The opening that a line holds, or undefined when it holds none. */
export function readOpening(line: string): ExportOpening | undefined {
  let value: unknown;
  try {
    value = JSON.parse(line);
  } catch {
    return undefined;
  }
  const { format, studioId, exportedAt, head } = (value ?? {}) as Partial<Record<string, unknown>>;
  const { sequence, hash } = (head ?? {}) as Partial<Record<string, unknown>>;
  const isWhole =
    format === exportFormat &&
    typeof studioId === 'string' &&
    typeof exportedAt === 'string' &&
    Number.isSafeInteger(sequence) &&
    typeof hash === 'string' &&
    /^[0-9a-f]{64}$/.test(hash);
  return isWhole ? (value as ExportOpening) : undefined;
}
