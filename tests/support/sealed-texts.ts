import { readConfig } from '../../src/platform/config.js';
import { MasterKeys } from '../../src/platform/encryption/master-keys.js';
import { open } from '../../src/platform/encryption/sealing.js';
import type { PlainRow, PlainSql } from './plain-sql.js';

/** Columns whose rows name their data key, or the client whose data key it is. */
const keyOfRow: Record<string, string> = {
  alert_entry: 'SELECT alert_entry.*, data_key_id AS opened_by FROM alert_entry',
  alert_destination: 'SELECT alert_destination.*, data_key_id AS opened_by FROM alert_destination',
  client: 'SELECT client.*, data_key_id AS opened_by FROM client',
  photo: 'SELECT photo.*, data_key_id AS opened_by FROM photo',
  supplier_claim: 'SELECT supplier_claim.*, data_key_id AS opened_by FROM supplier_claim',
  supplier_terms: 'SELECT supplier_terms.*, data_key_id AS opened_by FROM supplier_terms',
  person: 'SELECT person.*, data_key_id AS opened_by FROM person',
  session:
    'SELECT session.*, client.data_key_id AS opened_by FROM session JOIN client ON client.id = session.client_id',
  session_use:
    'SELECT session_use.*, client.data_key_id AS opened_by FROM session_use JOIN client ON client.id = session_use.client_id',
  session_use_reversal: `SELECT session_use_reversal.*, client.data_key_id AS opened_by FROM session_use_reversal
    JOIN session_use ON session_use.id = session_use_reversal.use_id JOIN client ON client.id = session_use.client_id`,
  legal_claim:
    'SELECT legal_claim.*, client.data_key_id AS opened_by FROM legal_claim JOIN client ON client.id = legal_claim.client_id',
  recall_contact:
    'SELECT recall_contact.*, client.data_key_id AS opened_by FROM recall_contact JOIN client ON client.id = recall_contact.client_id',
  legal_claim_end: `SELECT legal_claim_end.*, client.data_key_id AS opened_by FROM legal_claim_end
    JOIN legal_claim ON legal_claim.id = legal_claim_end.claim_id JOIN client ON client.id = legal_claim.client_id`,
};

/** Tables whose sealed columns are under a key that is not a person's; photos hold no text. */
const sealedByTheService = new Set(['account', 'passkey', 'photo']);

/** Ids and instants say nothing of a person by themselves, and stand in other places too. */
const noText = /^([0-9a-f]{8}-[0-9a-f-]{27}|\d{4}-\d\d-\d\dT[\d:.]+Z)$/;

function textsIn(value: unknown): string[] {
  if (typeof value === 'string') return noText.test(value) ? [] : [value];
  return value !== null && typeof value === 'object' ? Object.values(value).flatMap(textsIn) : [];
}

/** What JSON holds in a sealed field are several texts. */
function texts(opened: string): string[] {
  try {
    return textsIn(JSON.parse(opened));
  } catch {
    return [opened];
  }
}

/**
 * Every text about a person that is sealed in a database, opened past the service with the key file.
 * @throws Error when a table has a sealed column that is not known here, so that none is forgotten
 */
export async function sealedTexts(sql: PlainSql): Promise<Set<string>> {
  const { masterKeyFile } = readConfig({ DATA_DIR: sql.place.dataFolder });
  const masterKeys = MasterKeys.load(masterKeyFile, false);
  const keys = new Map<string, Buffer>();
  for (const row of await sql.rows('SELECT * FROM data_key WHERE wrapped_key IS NOT NULL')) {
    const wrappedBy = masterKeys.get(String(row.master_key_id));
    keys.set(String(row.id), open(wrappedBy, String(row.wrapped_key), `data_key:${row.id}`));
  }
  const found = new Set<string>();
  for (const table of await sql.tables()) {
    const sealed = (await sql.columns(table))
      .map(({ name }) => name)
      .filter((name) => name.endsWith('_sealed'));
    if (sealed.length === 0 || sealedByTheService.has(table)) continue;
    const query = keyOfRow[table];
    if (query === undefined) throw new Error(`Nobody says whose key opens ${table}.`);
    for (const row of await sql.rows(query)) {
      const key = keys.get(String(row.opened_by));
      if (!key) continue;
      for (const column of sealed) {
        const value = row[column];
        if (value === null || value === undefined || value === '') continue;
        const place = `${table}.${column.replace(/_sealed$/, '')}:${idOf(row)}`;
        for (const text of texts(open(key, String(value), place).toString('utf8'))) found.add(text);
      }
    }
  }
  return found;
}

const idOf = (row: PlainRow) => row.use_id ?? row.claim_id ?? row.id ?? row.supplier_id;
