/** What stands in a cell by RFC 4180: in quotes where it holds a separator, a quote or the end of a line. */
function cell(text: string): string {
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/**
 * A file to be filled in: the row of column names, and rows that show what may stand where. With a byte order mark, by
 * which spreadsheets know UTF-8.
 */
export function templateText<Name extends string>(
  columns: readonly { name: Name }[],
  rows: readonly Partial<Record<Name, string>>[],
): string {
  const lines = [
    columns.map(({ name }) => cell(name)),
    ...rows.map((row) => columns.map(({ name }) => cell(row[name] ?? ''))),
  ];
  return `\uFEFF${lines.map((line) => `${line.join(',')}\r\n`).join('')}`;
}
