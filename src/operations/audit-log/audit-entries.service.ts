import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/actor.js';
import type { WrittenRow } from '../../platform/audit/row-digest.js';
import { Database, type SqlValue } from '../../platform/database/database.js';
import { defaultPageSize } from '../../platform/page.js';
import { invalidField } from '../../platform/problem.js';
import type { AuditPageDto } from './audit-log.dto.js';
import type { AuditEntryView, AuditPageView } from './audit-log.views.js';

/** How far one page looks, so that no filter can make it read the whole log. */
const entriesPerLook = 20_000;

type EntryRow = Omit<AuditEntryView, 'notes' | 'rows'> & { payload: string };

/** The entries of a studio's audit log, a page at a time. */
@Injectable()
export class AuditEntries {
  constructor(private readonly database: Database) {}

  /** @throws Problem invalid-fields when there is no entry to go on from */
  async page(actor: Actor, dto: AuditPageDto): Promise<AuditPageView> {
    const { studioId } = actor;
    const { limit = defaultPageSize, order = 'newest' } = dto;
    const last = await this.lastEntry(studioId);
    const look = lookFrom(order, dto.after, last);
    const { where, parameters } = filters(dto, [studioId, look.from, look.to]);
    const rows = await this.database.read<EntryRow>(
      `SELECT sequence, recorded_at AS "recordedAt", person_id AS "personId", via, action,
         subject_kind AS "subjectKind", subject_id AS "subjectId", payload, previous_hash AS "previousHash", hash
       FROM audit_entry WHERE studio_id = $1 AND sequence BETWEEN $2 AND $3${where}
       ORDER BY sequence ${order === 'newest' ? 'DESC' : 'ASC'} LIMIT ${limit}`,
      parameters,
    );
    // A full page may have left out some of what it looked through.
    const reached = rows.length === limit ? (rows.at(-1)?.sequence ?? look.end) : look.end;
    const isOver = order === 'newest' ? reached <= 1 : reached >= last;
    return { items: rows.map(viewOf), next: isOver ? null : reached };
  }

  private async lastEntry(studioId: string): Promise<number> {
    const [head] = await this.database.read<{ sequence: number }>(
      'SELECT sequence FROM audit_head WHERE studio_id = $1',
      [studioId],
    );
    return head?.sequence ?? 0;
  }
}

/** The entries that a page looks through, both ends included, and the one at which it ends. */
function lookFrom(
  order: 'newest' | 'oldest',
  after: number | undefined,
  last: number,
): { from: number; to: number; end: number } {
  if (after !== undefined && after > last) {
    throw invalidField(
      'after',
      `There is no entry ${after} to go on from; the last is ${last}. Give the "next" of the page before, or leave it out.`,
    );
  }
  if (order === 'oldest') {
    const from = (after ?? 0) + 1;
    const to = Math.min(last, from + entriesPerLook - 1);
    return { from, to, end: to };
  }
  const to = (after ?? last + 1) - 1;
  const from = Math.max(1, to - entriesPerLook + 1);
  return { from, to, end: from };
}

function filters(dto: AuditPageDto, parameters: SqlValue[]): { where: string; parameters: SqlValue[] } {
  const instant = (text: string | undefined) => text && new Date(text).toISOString();
  const asked: [string, string | undefined][] = [
    ['subject_kind =', dto.subjectKind],
    ['subject_id =', dto.subjectId],
    ['action =', dto.action],
    ['person_id =', dto.personId],
    ['recorded_at >=', instant(dto.from)],
    ['recorded_at <', instant(dto.to)],
  ];
  const conditions = asked.flatMap(([condition, value]) =>
    value === undefined ? [] : ` AND ${condition} $${parameters.push(value)}`,
  );
  return { where: conditions.join(''), parameters };
}

function viewOf({ payload, ...entry }: EntryRow): AuditEntryView {
  const { rows, ...notes } = JSON.parse(payload) as Record<string, unknown> & { rows: WrittenRow[] };
  return {
    ...entry,
    notes,
    rows: rows.map(({ table, id, digest, before }) => ({ table, id, digest, ...(before && { before }) })),
  };
}
