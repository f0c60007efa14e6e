import { Injectable } from '@nestjs/common';
import { placeholders, type Read, type SqlValue } from '../../platform/database/database.js';
import type { SummaryLine, SummaryMaterial, SummaryPartName } from './summary-choice.js';

/** Of a part no more are read; those that are left out are counted. */
const mostAlertsOfPart = 2_000;

/** How one room has its alerts told in the morning. */
export interface SummarySource {
  /** The room's name. */
  name: string;
  part: SummaryPartName;
  /** The kinds of alerts the part tells of; no other does. */
  kinds: readonly string[];
  /**
   * The facts that hold the day by which lines are ordered, the earliest first; of several that one counts which is there.
   * Left out: the worst come first.
   */
  dayFacts?: readonly string[];
}

type AlertRow = Omit<SummaryLine, 'facts'> & { facts: string };

/**
 * What a morning summary is made of: the alerts that stand open and are not put off. Rooms to the right register here at
 * start-up (onModuleInit) which kinds of theirs belong to which part; all others need an answer today, unless somebody
 * has acknowledged them.
 */
@Injectable()
export class SummaryLines {
  private readonly sources: SummarySource[] = [];

  register(source: SummarySource): void {
    for (const other of this.sources) {
      const shared = source.kinds.find((kind) => other.kinds.includes(kind));
      if (shared !== undefined || other.part === source.part) {
        throw new Error(
          `Both ${other.name} and ${source.name} tell of "${shared ?? source.part}" in the morning.`,
        );
      }
    }
    this.sources.push(source);
  }

  /** All that may be told at an instant, ISO 8601. */
  async material(read: Read, studioId: string, now: string): Promise<SummaryMaterial[]> {
    const material: SummaryMaterial[] = [];
    for (const { part, kinds, dayFacts = [] } of this.sources) {
      const which = `kind IN (${placeholders(kinds, 3)})`;
      material.push({ name: part, dayFacts, ...(await open(read, [studioId, now, ...kinds], which)) });
    }
    const told = this.sources.flatMap(({ kinds }) => kinds);
    const others = told.length === 0 ? '' : `AND kind NOT IN (${placeholders(told, 3)})`;
    const rest = await open(read, [studioId, now, ...told], `acknowledged_at IS NULL ${others}`);
    return [{ name: 'answer today', dayFacts: [], ...rest }, ...material];
  }
}

async function open(
  read: Read,
  parameters: SqlValue[],
  which: string,
): Promise<Pick<SummaryMaterial, 'lines' | 'counts'>> {
  const standing = `studio_id = $1 AND closed_at IS NULL AND (put_off_until IS NULL OR put_off_until <= $2) AND ${which}`;
  const counts = await read<SummaryMaterial['counts'][number]>(
    `SELECT kind, severity, count(*) AS count FROM alert WHERE ${standing} GROUP BY kind, severity`,
    parameters,
  );
  if (counts.length === 0) return { lines: [], counts };
  const rows = await read<AlertRow>(
    `SELECT id AS "alertId", kind, subject_kind AS "subjectKind", subject_id AS "subjectId", severity, facts
     FROM alert WHERE ${standing}
     ORDER BY CASE severity WHEN 'urgent' THEN 0 WHEN 'warning' THEN 1 ELSE 2 END, opened_at, id
     LIMIT ${mostAlertsOfPart}`,
    parameters,
  );
  return { counts, lines: rows.map((row) => ({ ...row, facts: JSON.parse(row.facts) })) };
}
