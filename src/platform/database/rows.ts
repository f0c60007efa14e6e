import type { DataSource } from 'typeorm';
import { canonicalJson } from '../canonical-json.js';
import type { SqlValue } from './database.js';
import { snakeCase } from './snake-case.naming.js';

/** How the rows of one entity are written and read: made once from TypeORM's metadata. */
export interface RowShape {
  table: string;
  /** The column that names a row beside its studio or chain. */
  key: string;
  insertHead: string;
  /** The column that the database fills with a number of its own. */
  numbered: string | undefined;
  columns: { property: string; column: string; json: boolean }[];
}

const shapes = new WeakMap<DataSource, Map<object, RowShape>>();

export function rowShape(source: DataSource, entity: new () => object): RowShape {
  const known = shapes.get(source) ?? new Map<object, RowShape>();
  shapes.set(source, known);
  let shape = known.get(entity);
  if (!shape) {
    const metadata = source.getMetadata(entity);
    const columns = metadata.columns
      .filter((column) => !column.isGenerated)
      .map((column) => ({
        property: column.propertyName,
        column: column.databaseName,
        json: column.type === 'simple-json',
      }));
    const names = columns.map(({ column }) => `"${column}"`).join(', ');
    shape = {
      table: metadata.tableName,
      key: metadata.primaryColumns.at(-1)?.databaseName ?? 'id',
      insertHead: `INSERT INTO "${metadata.tableName}" (${names}) VALUES `,
      numbered: metadata.columns.find((column) => column.isGenerated)?.databaseName,
      columns,
    };
    known.set(entity, shape);
  }
  return shape;
}

/** A value as it stands in the database; JSON columns hold canonical text. */
export function toSqlValue(value: unknown, json: boolean): SqlValue {
  if (value === undefined || value === null) return null;
  if (json) return canonicalJson(value);
  if (typeof value === 'string' || typeof value === 'number') return value;
  throw new TypeError(`A column cannot hold a ${typeof value}.`);
}

/** The row as the database has it, keyed by column name, in the order of the shape. */
export function databaseRow(shape: RowShape, values: Record<string, unknown>): Record<string, SqlValue> {
  const row: Record<string, SqlValue> = {};
  for (const { property, column, json } of shape.columns) row[column] = toSqlValue(values[property], json);
  return row;
}

/** The entity's properties from a row of the database. */
export function fromDatabaseRow<Entity extends object>(
  shape: RowShape,
  row: Record<string, SqlValue>,
): Entity {
  const values: Record<string, unknown> = {};
  for (const { property, column, json } of shape.columns) {
    const value = row[column] ?? null;
    values[property] = json && typeof value === 'string' ? JSON.parse(value) : value;
  }
  return values as Entity;
}

/** `"use_by" = $3, "code" IS NULL` … for equality with the given properties. */
export function equalTo(where: Record<string, SqlValue>, firstParameter: number): [string, SqlValue[]] {
  const parameters: SqlValue[] = [];
  const parts = Object.entries(where).map(([property, value]) => {
    if (value === null) return `"${snakeCase(property)}" IS NULL`;
    parameters.push(value);
    return `"${snakeCase(property)}" = $${firstParameter + parameters.length - 1}`;
  });
  return [parts.join(' AND '), parameters];
}
