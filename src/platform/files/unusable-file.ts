import { type FieldFault, Problem } from '../problem.js';

interface Judged {
  faults: readonly { row: number | null; column: string | null; message: string }[];
  rows: readonly { row: number; faults: readonly { column: string | null; message: string }[] }[];
}

/**
 * The refusal of a file that has faults: nothing of it was taken in.
 * @param preview what the preview of the file says, which is told with it
 */
export function unusableFile(preview: Judged): Problem {
  const faults: FieldFault[] = [
    ...preview.faults.map(({ row, column, message }) => ({ field: place(row, column), message })),
    ...preview.rows.flatMap(({ row, faults }) =>
      faults.map(({ column, message }) => ({ field: place(row, column), message })),
    ),
  ];
  const rows = preview.rows.filter((row) => row.faults.length > 0).length;
  const seen =
    rows === 0 ? 'The file cannot be read' : `${rows} of ${preview.rows.length} rows cannot be taken in`;
  return new Problem(
    400,
    'unusable-file',
    `${seen}, so nothing was. See faults, correct the file and bring it again.`,
    {
      faults,
      preview,
    },
  );
}

function place(row: number | null, column: string | null): string {
  const words = [row === null ? null : `row ${row}`, column === null ? null : column];
  return words.filter((word) => word !== null).join(', ') || 'text';
}
