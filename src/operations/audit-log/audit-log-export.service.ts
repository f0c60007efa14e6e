import { PassThrough, pipeline, Readable } from 'node:stream';
import { Injectable, Logger } from '@nestjs/common';
import type { Actor } from '../../platform/actor.js';
import type { AuditLink } from '../../platform/audit/audit-log.js';
import { Database } from '../../platform/database/database.js';
import { Transactions } from '../../platform/database/transactions.js';
import type { WriteDto } from '../../platform/request.dto.js';
import { type ExportOpening, exportAction, exportFormat, logLine } from './exported-log.js';

const entriesPerRead = 500;

export interface AuditLogExport {
  opening: ExportOpening;
  /** NDJSON: the opening, then the entries. */
  lines: Readable;
}

type EntryRow = Omit<AuditLink, 'studioId'> & { hash: string };

/**
 * Hands out a studio's whole audit log. Guarantees: the export is itself an entry of the log, written before anything is
 * handed out, and the last entry of what is handed out; so every export is known of, and its head is one that the log
 * must contain for ever. A repeated request hands out the same log again.
 */
@Injectable()
export class AuditLogExports {
  private readonly logger = new Logger('audit log');

  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
  ) {}

  async export(actor: Actor, { id }: WriteDto): Promise<AuditLogExport> {
    const { studioId } = actor;
    const { sequence } = await this.transactions.write(
      actor,
      {
        id,
        action: exportAction,
        subject: { kind: 'audit log', id: studioId },
        content: {},
      },
      async (transaction) => {
        const lock = transaction.engine === 'postgres' ? ' FOR UPDATE' : '';
        const [head] = await transaction.query<{ sequence: number }>(
          `SELECT sequence FROM audit_head WHERE studio_id = $1${lock}`,
          [studioId],
        );
        // The head stays locked, so the entry of this write is the next.
        return { sequence: (head?.sequence ?? 0) + 1 };
      },
    );
    const [own] = await this.entries(studioId, sequence - 1, 1);
    if (!own) throw new Error(`The entry ${sequence} of the studio ${studioId} is not there.`);
    const opening: ExportOpening = {
      format: exportFormat,
      studioId,
      exportedAt: own.recordedAt,
      head: { sequence, hash: own.hash },
    };
    const lines = pipeline(Readable.from(this.linesOf(opening)), new PassThrough(), (error) => {
      if (error) this.logger.error(`An audit log could not be handed out to its end: ${error.message}`);
    });
    return { opening, lines };
  }

  private async *linesOf(opening: ExportOpening): AsyncGenerator<string> {
    const { studioId, head } = opening;
    yield logLine(opening);
    for (let after = 0; after < head.sequence; after += entriesPerRead) {
      const entries = await this.entries(studioId, after, Math.min(entriesPerRead, head.sequence - after));
      yield entries.map((entry) => logLine({ studioId, ...entry })).join('');
    }
  }

  /** So many entries after one, in order. */
  private entries(studioId: string, after: number, count: number): Promise<EntryRow[]> {
    return this.database.read<EntryRow>(
      `SELECT sequence, recorded_at AS "recordedAt", person_id AS "personId", via, action,
         subject_kind AS "subjectKind", subject_id AS "subjectId", payload, previous_hash AS "previousHash", hash
       FROM audit_entry WHERE studio_id = $1 AND sequence > $2 ORDER BY sequence LIMIT ${count}`,
      [studioId, after],
    );
  }
}
