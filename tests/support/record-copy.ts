import { randomBytes } from 'node:crypto';
import { cpSync, mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import pg from 'pg';
import type { DataPlace } from './plain-sql.js';

/** A place of its own with the same record; nobody may be connected to the first meanwhile. */
export async function copyOfRecord({ dataFolder, databaseUrl }: DataPlace): Promise<DataPlace> {
  const copy = mkdtempSync(join(tmpdir(), 'lotward-copy-'));
  cpSync(dataFolder, copy, { recursive: true });
  return {
    dataFolder: copy,
    databaseUrl: databaseUrl === undefined ? undefined : await copyOfDatabase(databaseUrl),
  };
}

async function copyOfDatabase(databaseUrl: string): Promise<string> {
  const url = new URL(databaseUrl);
  const name = url.pathname.slice(1);
  const copy = `${name}_${randomBytes(4).toString('hex')}`;
  const client = new pg.Client({ connectionString: process.env.LOTWARD_TEST_POSTGRES });
  await client.connect();
  await client.query(`CREATE DATABASE ${copy} TEMPLATE ${name}`);
  await client.end();
  url.pathname = `/${copy}`;
  return url.href;
}
