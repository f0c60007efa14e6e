import type { EntityManager } from 'typeorm';
import type { Actor } from '../actor.js';
import { digestOf } from '../canonical-json.js';
import { notFound, staleVersion } from '../problem.js';
import { type Engine, placeholders, query, type Read, type SqlValue } from './database.js';
import { databaseRow, equalTo, fromDatabaseRow, type RowShape, rowShape, toSqlValue } from './rows.js';

export interface WrittenRow {
  table: string;
  id: string;
  digest: string;
}

const maximumRowsPerInsert = 200;

/**
 * What a write may do inside its transaction. Every row inserted or updated here is listed with its digest in the audit
 * entry that closes the transaction, so rows are written through this class and never by a repository.
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
      const tuples = batch.map((row) => {
        const values = databaseRow(shape, row as Record<string, unknown>);
        this.noteWritten(shape, values);
        return `(${shape.columns.map(({ column }) => `$${parameters.push(values[column] ?? null)}`).join(', ')})`;
      });
      await this.query(shape.insertHead + tuples.join(', '), parameters);
    }
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
    const [row] = rows;
    if (!row) return undefined;
    if (rows.length > 1) throw new Error(`An update of ${shape.table} met ${rows.length} rows.`);
    return this.noted<Entity>(shape, row);
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
    // In one order on both engines, as the audit entry lists them.
    rows.sort((one, other) => (String(one.id) < String(other.id) ? -1 : 1));
    return rows.map((row) => this.noted<Entity>(shape, row));
  }

  private updateWhere(
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
    const [condition, keys] = conditionFrom(parameters.length + 1);
    return this.query(
      `UPDATE "${shape.table}" SET ${assignments.join(', ')} WHERE ${condition} RETURNING *`,
      [...parameters, ...keys],
    );
  }

  private noted<Entity extends object>(shape: RowShape, row: Record<string, SqlValue>): Entity {
    const updated = fromDatabaseRow<Entity>(shape, row);
    this.noteWritten(shape, databaseRow(shape, updated as Record<string, unknown>));
    return updated;
  }

  private noteWritten({ table, key }: RowShape, values: Record<string, SqlValue>): void {
    this.writtenRows.push({ table, id: String(values[key] ?? ''), digest: digestOf(values) });
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
  async lock(table: 'lot' | 'session' | 'container' | 'product', ids: readonly string[]): Promise<void> {
    if (this.engine === 'sqlite' || ids.length === 0) return;
    const scope =
      table === 'product' ? 'chain_id = (SELECT chain_id FROM studio WHERE id = $1)' : 'studio_id = $1';
    const ordered = [...new Set(ids)].sort();
    await this.query(
      `SELECT id FROM "${table}" WHERE ${scope} AND id IN (${placeholders(ordered)}) ORDER BY id FOR UPDATE`,
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
