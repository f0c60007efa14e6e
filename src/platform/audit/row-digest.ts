import { hash } from 'node:crypto';
import { addedColumns } from '../../../migrations/added-columns.js';
import type { SqlValue } from '../database/database.js';

/** What an audit entry says of one row that its write inserted, changed or removed. */
export interface WrittenRow {
  table: string;
  /** The value of the last column of the row's key. */
  id: string;
  /** The row as the write left it; null when it removed the row. */
  digest: string | null;
  /**
   * The row as the write found it; absent when it inserted the row. So a row that was changed past the service shows
   * even after the service changed it again.
   */
  before?: string;
  /** The studio whose row it is, where it is not the studio of the entry: see `writtenAcrossStudios`. */
  studioId?: string;
  /** The number that the database itself gave the row: see `numberedByDatabase`. */
  number?: number;
}

/** The columns that the database fills. They are no part of a row's digest; the entry holds their value beside it. */
export const numberedByDatabase: Readonly<Record<string, string>> = { movement: 'sequence' };

/**
 * Tables whose rows may be written from another studio than their own: an account acts in several. Every other row is
 * told of by its own studio's chain only, so that no other chain can account for a change of it.
 */
export const writtenAcrossStudios: ReadonlySet<string> = new Set(['account']);

const none: readonly string[] = [];

/**
 * The digest of a row as it stands in the database: SHA-256 of its canonical JSON by column name, without what the
 * database numbers and without added columns that are null.
 */
export function rowDigest(table: string, row: Readonly<Record<string, SqlValue>>): string {
  const numbered = numberedByDatabase[table];
  const added = addedColumns[table] ?? none;
  // Written here and not by `canonicalJson`, which takes several times as long: of text, whole numbers and null JSON has
  // one form only, so all that RFC 8785 asks for is the order of the names.
  let text = '';
  for (const column of Object.keys(row).sort()) {
    const value = row[column] ?? null;
    if (column === numbered || (value === null && added.includes(column))) continue;
    text += `${text === '' ? '{' : ','}${JSON.stringify(column)}:${JSON.stringify(value)}`;
  }
  return hash('sha256', `${text}}`);
}
