import BetterSqlite3 from 'better-sqlite3';
import type { WrittenRow } from '../../platform/audit/row-digest.js';
import type { RowChange } from './row-history.js';

const cacheKibibytes = 32_768;

/** A row as an entry names it: its table, the studio or chain it belongs to ('' for neither), and its id there. */
export interface RowName {
  table: string;
  scope: string;
  id: string;
}

type Stored = [
  ordinal: number,
  studio: number,
  sequence: number,
  before: string | null,
  after: string | null,
  number: number | null,
];

/**
 * All that the audit log says of rows, by row. It lies in a temporary file that SQLite removes by itself, so that memory
 * does not grow with the record; only one bit for each change is kept in memory, for whether its row was met.
 */
export class WrittenRows {
  private readonly database = new BetterSqlite3('');
  /** Tables, scopes and studios by number. */
  private readonly numbers = new Map<string, number>();
  private readonly names: string[] = [];
  private readonly insertion: BetterSqlite3.Statement;
  private readonly lookUp: BetterSqlite3.Statement;
  private changes = 0;
  private rowsMet = 0;
  private met = new Uint8Array(0);

  constructor() {
    // Nobody's record: when the process ends the file is gone.
    this.database.pragma('journal_mode = OFF');
    this.database.pragma('synchronous = OFF');
    this.database.pragma(`cache_size = -${cacheKibibytes}`);
    this.database.exec(`CREATE TABLE change (
      tabled INTEGER, scope INTEGER, id TEXT, ordinal INTEGER, studio INTEGER, sequence INTEGER, before TEXT, after TEXT,
      number INTEGER, PRIMARY KEY (tabled, scope, id, ordinal)) WITHOUT ROWID`);
    this.insertion = this.database.prepare('INSERT INTO change VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)');
    this.lookUp = this.database
      .prepare(
        `SELECT ordinal, studio, sequence, before, after, number FROM change
         WHERE tabled = ? AND scope = ? AND id = ? ORDER BY ordinal`,
      )
      .raw();
    this.database.exec('BEGIN');
  }

  /** Takes in the entries of each chain in its order, all before the first look-up. */
  add(name: RowName, entry: { studioId: string; sequence: number }, row: WrittenRow): void {
    this.insertion.run(
      this.numberOf(name.table),
      this.numberOf(name.scope),
      name.id,
      this.changes,
      this.numberOf(entry.studioId),
      entry.sequence,
      row.before ?? null,
      row.digest,
      row.number ?? null,
    );
    this.changes += 1;
  }

  /** What the log says of a row, which is thereby met. `again`: it was met before, so it stands twice. */
  meet({ table, scope, id }: RowName): { changes: RowChange[]; again: boolean } {
    const found = this.lookUp.all(
      this.numbers.get(table) ?? -1,
      this.numbers.get(scope) ?? -1,
      id,
    ) as Stored[];
    const [first] = found;
    const again = first !== undefined && !this.mark(first[0]);
    return { changes: found.map((stored) => this.changeOf(stored)), again };
  }

  /** The rows that the log names and that were not met, by table, scope and id. */
  *unmet(): Generator<{ name: RowName; changes: RowChange[] }> {
    const rows = this.database.prepare(
      'SELECT count(*) FROM (SELECT DISTINCT tabled, scope, id FROM change)',
    );
    if (rows.pluck().get() === this.rowsMet) return;
    type Line = [tabled: number, scope: number, id: string, ...Stored];
    const lines = this.database
      .prepare(
        `SELECT tabled, scope, id, ordinal, studio, sequence, before, after, number
         FROM change ORDER BY tabled, scope, id, ordinal`,
      )
      .raw()
      .iterate() as IterableIterator<Line>;
    let group: { name: RowName; changes: RowChange[]; first: number } | undefined;
    for (const [tabled, scope, id, ...stored] of lines) {
      const name = { table: this.names[tabled] ?? '', scope: this.names[scope] ?? '', id };
      const isSame =
        group?.name.id === id && group.name.table === name.table && group.name.scope === name.scope;
      if (!isSame) {
        if (group && !this.isMet(group.first)) yield group;
        group = { name, changes: [], first: stored[0] };
      }
      group?.changes.push(this.changeOf(stored));
    }
    if (group && !this.isMet(group.first)) yield group;
  }

  close(): void {
    this.database.close();
  }

  private changeOf([, studio, sequence, before, after, number]: Stored): RowChange {
    return { studioId: this.names[studio] ?? '', sequence, before, after, number };
  }

  private numberOf(name: string): number {
    let number = this.numbers.get(name);
    if (number === undefined) {
      number = this.names.push(name) - 1;
      this.numbers.set(name, number);
    }
    return number;
  }

  /** False when it was marked before. */
  private mark(ordinal: number): boolean {
    if (this.met.length === 0) this.met = new Uint8Array(Math.ceil(this.changes / 8));
    if (this.isMet(ordinal)) return false;
    this.met[ordinal >> 3] = (this.met[ordinal >> 3] ?? 0) | (1 << (ordinal & 7));
    this.rowsMet += 1;
    return true;
  }

  private isMet(ordinal: number): boolean {
    return ((this.met[ordinal >> 3] ?? 0) & (1 << (ordinal & 7))) !== 0;
  }
}
