import { rowDigest } from '../../platform/audit/row-digest.js';
import type { SqlValue } from '../../platform/database/database.js';
import type { Snapshot } from '../../platform/database/snapshot.js';
import type { Findings } from './findings.store.js';
import { asMade } from './record-tables.js';
import type { Finding } from './report-words.js';
import { type RowChange, type RowFault, rowFault } from './row-history.js';
import type { TableShape } from './table-shapes.query.js';
import type { RowName, WrittenRows } from './written-rows.store.js';

/**
 * Holds every row of every covered table against what the audit log says of it, and looks for the rows that the log names
 * and that are gone.
 * @returns how many rows were held against it, by studio or chain
 */
export async function checkRows(
  snapshot: Snapshot,
  shapes: readonly TableShape[],
  written: WrittenRows,
  findings: Findings,
): Promise<Map<string, number>> {
  const counts = new Map<string, number>();
  for (const shape of shapes) {
    const columns = shape.columns.map((column) => `"${column}"`).join(', ');
    for await (const batch of snapshot.batches(`SELECT ${columns} FROM "${shape.name}"`)) {
      for (const values of batch) {
        const row = rowOf(shape, values);
        const name = nameOf(shape, row);
        counts.set(name.scope, (counts.get(name.scope) ?? 0) + 1);
        await checkRow(snapshot, shape, name, row, written, findings);
      }
    }
  }
  for (const { name, changes } of written.unmet()) {
    const fault = rowFault(changes, undefined);
    if (fault) await findings.add(about(name), () => faultWords(snapshot, name, fault, findings));
  }
  return counts;
}

async function checkRow(
  snapshot: Snapshot,
  shape: TableShape,
  name: RowName,
  row: Record<string, SqlValue>,
  written: WrittenRows,
  findings: Findings,
): Promise<void> {
  const { changes, again } = written.meet(name);
  const digest = rowDigest(shape.name, asMade[shape.name]?.(row) ?? row);
  const number = shape.numbered === undefined ? null : Number(row[shape.numbered]);
  const fault = rowFault(changes, { digest, number });
  if (fault) await findings.add(about(name), () => faultWords(snapshot, name, fault, findings));
  if (again) await findings.add(about(name), `${rowWords(name)} stands there twice.`);
}

function rowOf({ columns }: TableShape, values: SqlValue[]): Record<string, SqlValue> {
  const row: Record<string, SqlValue> = {};
  columns.forEach((column, index) => {
    row[column] = values[index] ?? null;
  });
  return row;
}

function nameOf({ name, owner, key }: TableShape, row: Record<string, SqlValue>): RowName {
  return { table: name, scope: owner === null ? '' : String(row[owner]), id: String(row[key]) };
}

function about({ table, scope, id }: RowName): Omit<Finding, 'message'> {
  return { check: 'row', studioId: scope === '' ? null : scope, table, id };
}

function rowWords({ table, scope, id }: RowName): string {
  return `${table} ${id}${scope === '' || scope === id ? '' : ` of ${scope}`}`;
}

async function faultWords(
  snapshot: Snapshot,
  name: RowName,
  fault: RowFault,
  findings: Findings,
): Promise<string> {
  const row = rowWords(name);
  // Studios share accounts and the register of their chain, and not what each of them did.
  const entry = (change: RowChange) =>
    findings.mayTellOf(change.studioId) ? entryWords(snapshot, change) : 'an entry of another studio';
  switch (fault.kind) {
    case 'in no entry':
      return `${row} is in no audit entry: it was put there past the service.`;
    case 'changed': {
      const older = fault.standsAs && ` It stands as ${await entry(fault.standsAs)} left it.`;
      return `${row} is not as ${await entry(fault.last)} left it.${older ?? ''}`;
    }
    case 'changed in between':
      return `${row} was not as ${await entry(fault.last)} had left it when ${await entry(fault.at)} changed it: it had been changed past the service.`;
    case 'not made by an entry':
      return `${row} was there when ${await entry(fault.at)} changed it, but no entry made it: it had been put there past the service.`;
    case 'gone':
      return `${row} is gone; ${await entry(fault.last)} was the last to write it.`;
    case 'back':
      return `${row} is there, though ${await entry(fault.last)} removed it.`;
    case 'renumbered':
      return `${row} has the number ${fault.number}, but ${await entry(fault.at)} gave it ${fault.at.number}.`;
  }
}

async function entryWords(snapshot: Snapshot, { studioId, sequence }: RowChange): Promise<string> {
  const [entry] = await snapshot.read<{ action: string; recorded_at: string }>(
    'SELECT action, recorded_at FROM audit_entry WHERE studio_id = $1 AND sequence = $2',
    [studioId, sequence],
  );
  return `audit entry ${sequence} (${entry?.action}, ${entry?.recorded_at})`;
}
