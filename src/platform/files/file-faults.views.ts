/** Why a file cannot be taken in, as far as it is told of a place in it. Told to whoever brought the file, kept nowhere. */
export class CellFaultView {
  /** Name of the column; null when the row as a whole is meant. */
  column: string | null;
  message: string;
}

export class FileFaultView {
  /** Number of the row as a spreadsheet counts them, the header being row 1; null when the file as a whole is meant. */
  row: number | null;
  column: string | null;
  message: string;
}
