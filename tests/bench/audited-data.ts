import { join } from 'node:path';
import BetterSqlite3 from 'better-sqlite3';
import { type TableShape, tableShapes } from '../../src/operations/verify/table-shapes.query.js';
import { hashOfLink } from '../../src/platform/audit/audit-log.js';
import { rowDigest, type WrittenRow } from '../../src/platform/audit/row-digest.js';
import { canonicalJson } from '../../src/platform/canonical-json.js';
import { openSnapshot } from '../../src/platform/database/snapshot.js';

/** As many rows as the completion of a session writes. */
const rowsPerEntry = 20;

type Row = Record<string, string | number | null>;

/** The rows of one table, taken a few at a time so that all tables come to their end together. */
interface Source {
  shape: TableShape;
  rows: IterableIterator<Row>;
  count: number;
  taken: number;
}

/**
 * Writes the audit log that would have led to what stands in a database of one studio: entries of twenty rows each, taken
 * from all tables in step, as sessions write them.
 */
export async function writeAuditLog(dataFolder: string, studioId: string): Promise<{ entries: number }> {
  const file = join(dataFolder, 'lotward.sqlite');
  const snapshot = await openSnapshot({ file });
  const shapes = await tableShapes(snapshot);
  await snapshot.close();
  const reader = new BetterSqlite3(file, { readonly: true });
  const writer = new BetterSqlite3(file);
  writer.pragma('synchronous = OFF');
  const sources = shapes.map(
    (shape): Source => ({
      shape,
      count: Number(reader.prepare(`SELECT count(*) FROM "${shape.name}"`).pluck().get()),
      rows: reader.prepare(`SELECT * FROM "${shape.name}"`).iterate() as IterableIterator<Row>,
      taken: 0,
    }),
  );
  const entries = Math.ceil(sources.reduce((sum, { count }) => sum + count, 0) / rowsPerEntry);
  try {
    const chain = new ChainWriter(writer, studioId);
    writer.exec('BEGIN');
    for (let entry = 1; entry <= entries; entry += 1) {
      chain.append(sources.flatMap((source) => take(source, Math.floor((entry / entries) * source.count))));
    }
    chain.end();
    writer.exec('COMMIT');
    writer.pragma('wal_checkpoint(TRUNCATE)');
    return { entries };
  } finally {
    for (const { rows } of sources) rows.return?.();
    reader.close();
    writer.close();
  }
}

/** The rows up to the given number of them. */
function take(source: Source, upTo: number): WrittenRow[] {
  const { shape, rows } = source;
  const written: WrittenRow[] = [];
  for (; source.taken < upTo; source.taken += 1) {
    const { value: row } = rows.next() as IteratorYieldResult<Row>;
    const number = shape.numbered === undefined ? {} : { number: Number(row[shape.numbered]) };
    written.push({
      table: shape.name,
      id: String(row[shape.key]),
      digest: rowDigest(shape.name, row),
      ...number,
    });
  }
  return written;
}

class ChainWriter {
  private head: { sequence: number; hash: string };
  private readonly insertion: BetterSqlite3.Statement;

  constructor(
    private readonly database: BetterSqlite3.Database,
    private readonly studioId: string,
  ) {
    this.head = database
      .prepare('SELECT sequence, hash FROM audit_head WHERE studio_id = ?')
      .get(studioId) as ChainWriter['head'];
    this.insertion = database.prepare(
      `INSERT INTO audit_entry (studio_id, sequence, recorded_at, via, action, subject_kind, subject_id, payload, previous_hash, hash)
       VALUES (@studioId, @sequence, @recordedAt, @via, @action, @subjectKind, @subjectId, @payload, @previousHash, @hash)`,
    );
  }

  append(rows: readonly WrittenRow[]): void {
    const link = {
      studioId: this.studioId,
      sequence: this.head.sequence + 1,
      recordedAt: '2026-03-01T09:30:00.000Z',
      personId: null,
      via: 'system',
      action: 'sessions.complete',
      subjectKind: 'session',
      subjectId: this.studioId,
      payload: canonicalJson({ rows }),
      previousHash: this.head.hash,
    };
    const hash = hashOfLink(link);
    this.insertion.run({ ...link, hash });
    this.head = { sequence: link.sequence, hash };
  }

  end(): void {
    this.database
      .prepare('UPDATE audit_head SET sequence = ?, hash = ? WHERE studio_id = ?')
      .run(this.head.sequence, this.head.hash, this.studioId);
  }
}
