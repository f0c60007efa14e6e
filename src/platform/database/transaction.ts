import type { EntityManager } from 'typeorm';
import type { Actor } from '../actor.js';
import { rowDigest, type WrittenRow, writtenAcrossStudios } from '../audit/row-digest.js';
import { notFound, staleVersion } from '../problem.js';
import { type Engine, placeholders, query, type Read, type SqlValue } from './database.js';
import { databaseRow, equalTo, fromDatabaseRow, type RowShape, rowShape, toSqlValue } from './rows.js';

const maximumRowsPerInsert = 200;

/**
 * What a write may do inside its transaction. Every row inserted, changed or removed here is listed with its digest in
 * the audit entry that closes the transaction, so rows are written through this class and never by a repository.
 */
export class Transaction {
  readonly writtenRows: WrittenRow[] = [];
  readonly notes: Record<string, unknown> = {};

  constructor(
    readonly actor: Actor,
    readonly engine: Engine,
    /** TypeORM's manager of this transaction, for finding entities. */
    readonly manager: EntityManager,
    /** The instant at which the server records this write. */
    readonly recordedAt: string,
  ) {}

  get studioId(): string {
    return this.actor.studioId;
  }

  /** Runs SQL with `$1`, `$2`, … on either engine. */
  query<Row>(sql: string, parameters: readonly SqlValue[] = []): Promise<Row[]> {
    return query<Row>(this.manager, this.engine, sql, parameters);
  }

  /** `query` as a function of its own, for what reads inside a transaction or outside. */
  readonly read: Read = (sql, parameters) => this.query(sql, parameters);

  /** Inserts whole rows: every column has a value, null included. */
  async insert<Entity extends object>(entity: new () => Entity, rows: Entity | Entity[]): Promise<void> {
    const all = Array.isArray(rows) ? rows : [rows];
    const shape = rowShape(this.manager.dataSource, entity);
    for (let start = 0; start < all.length; start += maximumRowsPerInsert) {
      const batch = all.slice(start, start + maximumRowsPerInsert);
      const parameters: SqlValue[] = [];
      const written: WrittenRow[] = [];
      const tuples = batch.map((row) => {
        const values = databaseRow(shape, row as Record<string, unknown>);
        written.push(this.noteWritten(shape, values));
        return `(${shape.columns.map(({ column }) => `$${parameters.push(values[column] ?? null)}`).join(', ')})`;
      });
      const statement = shape.insertHead + tuples.join(', ');
      if (shape.numbered === undefined) await this.query(statement, parameters);
      else await this.insertNumbered(shape.key, shape.numbered, statement, parameters, written);
    }
  }

  /** Inserts rows to which the database gives a number, and puts the numbers into the audit entry. */
  private async insertNumbered(
    key: string,
    numbered: string,
    statement: string,
    parameters: SqlValue[],
    written: readonly WrittenRow[],
  ): Promise<void> {
    const rows = await this.query<{ id: string; number: number }>(
      `${statement} RETURNING "${key}" AS id, "${numbered}" AS number`,
      parameters,
    );
    const numbers = new Map(rows.map(({ id, number }) => [id, number]));
    for (const row of written) row.number = numbers.get(row.id);
  }

  /**
   * Updates the one row that `where` names and returns it as it stands now, or undefined when there is none – which,
   * with the version in `where`, means that someone else changed it first.
   */
  async update<Entity extends object>(
    entity: new () => Entity,
    where: Partial<Entity> & Record<string, unknown>,
    changes: Partial<Entity>,
  ): Promise<Entity | undefined> {
    const shape = rowShape(this.manager.dataSource, entity);
    const rows = await this.updateWhere(shape, changes, (first) =>
      equalTo(where as Record<string, SqlValue>, first),
    );
    if (rows.length > 1) throw new Error(`An update of ${shape.table} met ${rows.length} rows.`);
    return rows[0] && fromDatabaseRow<Entity>(shape, rows[0]);
  }

  /** Makes the same changes to the studio's rows of these ids, in one statement. Ids that are not there are passed over. */
  async updateAll<Entity extends { studioId: string; id: string }>(
    entity: new () => Entity,
    ids: readonly string[],
    changes: Partial<Entity>,
  ): Promise<Entity[]> {
    if (ids.length === 0) return [];
    const shape = rowShape(this.manager.dataSource, entity);
    const rows = await this.updateWhere(shape, changes, (first) => [
      `studio_id = $${first} AND id IN (${placeholders(ids, first + 1)})`,
      [this.studioId, ...ids],
    ]);
    return rows.map((row) => fromDatabaseRow<Entity>(shape, row));
  }

  /** Removes the one row that `where` names and returns it as it stood, or undefined when there is none. */
  async remove<Entity extends object>(
    entity: new () => Entity,
    where: Partial<Entity> & Record<string, unknown>,
  ): Promise<Entity | undefined> {
    const shape = rowShape(this.manager.dataSource, entity);
    const [condition, parameters] = equalTo(where as Record<string, SqlValue>, 1);
    const rows = await this.query<Record<string, SqlValue>>(
      `DELETE FROM "${shape.table}" WHERE ${condition} RETURNING *`,
      parameters,
    );
    const [row] = rows;
    if (!row) return undefined;
    if (rows.length > 1) throw new Error(`A removal from ${shape.table} met ${rows.length} rows.`);
    this.writtenRows.push({ ...this.nameOf(shape, row), before: rowDigest(shape.table, row), digest: null });
    return fromDatabaseRow<Entity>(shape, row);
  }

  /** Updates rows, each noted as it was found and as it is left. The rows come in the order of their ids. */
  private async updateWhere(
    shape: RowShape,
    changes: object,
    conditionFrom: (firstParameter: number) => [string, SqlValue[]],
  ): Promise<Record<string, SqlValue>[]> {
    const columns = new Map(shape.columns.map((column) => [column.property, column]));
    const parameters: SqlValue[] = [];
    const assignments = Object.entries(changes).map(([property, value]) => {
      const column = columns.get(property);
      if (!column) throw new TypeError(`${shape.table} has no ${property}.`);
      return `"${column.column}" = $${parameters.push(toSqlValue(value, column.json))}`;
    });
    const found = await this.digestsOf(shape, ...conditionFrom(1));
    if (found.size === 0) return [];
    const [condition, keys] = conditionFrom(parameters.length + 1);
    const rows = await this.query<Record<string, SqlValue>>(
      `UPDATE "${shape.table}" SET ${assignments.join(', ')} WHERE ${condition} RETURNING *`,
      [...parameters, ...keys],
    );
    // In one order on both engines, as the audit entry lists them.
    rows.sort((one, other) => (String(one[shape.key]) < String(other[shape.key]) ? -1 : 1));
    for (const row of rows) this.noteWritten(shape, row, found.get(String(row[shape.key])));
    return rows;
  }

  /** The digests of the rows that are about to be changed, by id. They are locked as the change itself locks them. */
  private async digestsOf(
    shape: RowShape,
    condition: string,
    parameters: SqlValue[],
  ): Promise<Map<string, string>> {
    const lock = this.engine === 'postgres' ? ' FOR NO KEY UPDATE' : '';
    const rows = await this.query<Record<string, SqlValue>>(
      `SELECT * FROM "${shape.table}" WHERE ${condition}${lock}`,
      parameters,
    );
    return new Map(rows.map((row) => [String(row[shape.key]), rowDigest(shape.table, row)]));
  }

  private noteWritten(shape: RowShape, row: Record<string, SqlValue>, before?: string): WrittenRow {
    const digest = rowDigest(shape.table, row);
    const written: WrittenRow = { ...this.nameOf(shape, row), digest, ...(before && { before }) };
    this.writtenRows.push(written);
    return written;
  }

  private nameOf(
    { table, key }: RowShape,
    row: Record<string, SqlValue>,
  ): Pick<WrittenRow, 'table' | 'id' | 'studioId'> {
    const id = String(row[key] ?? '');
    const studioId = row.studio_id;
    if (typeof studioId !== 'string' || studioId === this.studioId) return { table, id };
    if (!writtenAcrossStudios.has(table)) {
      throw new Error(`A row of ${table} was to be written from another studio than its own.`);
    }
    return { table, id, studioId };
  }

  /**
   * Changes the row that `key` names, provided it still stands at `version`, and moves it one version on.
   * @param what the row's name in messages, such as `session`
   * @throws Problem not-found or stale-version
   */
  async change<Entity extends { id: string; version: number }>(
    entity: new () => Entity,
    what: string,
    key: Partial<Entity> & { id: string },
    version: number,
    changes: Partial<Entity>,
  ): Promise<Entity> {
    const where = { ...key, version } as Partial<Entity> & Record<string, unknown>;
    const changed = await this.update(entity, where, { ...changes, version: version + 1 });
    if (changed) return changed;
    const shape = rowShape(this.manager.dataSource, entity);
    const [condition, parameters] = equalTo(key as Record<string, SqlValue>, 1);
    const [row] = await this.query<{ version: number }>(
      `SELECT version FROM "${shape.table}" WHERE ${condition}`,
      parameters,
    );
    throw row ? staleVersion(what, row.version) : notFound(what, key.id);
  }

  /**
   * Locks rows until the end of the transaction, in one order for all, so that what is decided on them still holds when
   * it is written. SQLite needs no lock: its transactions queue.
   */
  async lock(
    table: 'client' | 'lot' | 'session' | 'container' | 'product' | 'recall',
    ids: readonly string[],
  ): Promise<void> {
    if (this.engine === 'sqlite' || ids.length === 0) return;
    const scope =
      table === 'product' ? 'chain_id = (SELECT chain_id FROM studio WHERE id = $1)' : 'studio_id = $1';
    // That somebody looks at a client may be noted meanwhile: it needs no more than that their row stays.
    const strength = table === 'client' ? 'NO KEY UPDATE' : 'UPDATE';
    const ordered = [...new Set(ids)].sort();
    await this.query(
      `SELECT id FROM "${table}" WHERE ${scope} AND id IN (${placeholders(ordered)}) ORDER BY id FOR ${strength}`,
      [this.studioId, ...ordered],
    );
  }

  /**
   * Lets one transaction at a time through for what is decided on the whole studio: the conditions of its stock, its
   * places. SQLite needs no lock: its transactions queue.
   */
  async lockStudio(): Promise<void> {
    if (this.engine === 'sqlite') return;
    await this.query('SELECT id FROM studio WHERE id = $1 FOR NO KEY UPDATE', [this.studioId]);
  }

  /** The same for the chain, whose register its studios share. */
  async lockChain(): Promise<void> {
    if (this.engine === 'sqlite') return;
    await this.query('SELECT id FROM chain WHERE id = $1 FOR NO KEY UPDATE', [this.actor.chainId]);
  }

  /** Adds to the payload of the audit entry. Never personal data: ids and names of changed fields only. */
  note(facts: Record<string, unknown>): void {
    Object.assign(this.notes, facts);
  }
}
