import { Injectable } from '@nestjs/common';
import type { Read } from '../../platform/database/database.js';
import { grouped } from '../../platform/grouped.js';
import { recallLots, recallReach } from '../recall-lots.query.js';
import type { ContactAudience, ContactOutcome } from '../vocabulary.js';
import type { Attempt } from './contact-standing.js';

interface AttemptRow extends Attempt {
  id: string;
  audience: ContactAudience;
  clientId: string | null;
  artistId: string | null;
  company: string | null;
  outcome: ContactOutcome;
}

/** Attempts to tell people of one recall. */
export interface AttemptsOfRecall {
  /** In the order in which they were recorded. */
  of: (audience: ContactAudience, key: string) => readonly AttemptRow[];
  /** Companies that an attempt names, as first written, with the id of that attempt. */
  companies: (audience: ContactAudience) => { id: string; company: string }[];
}

/** Companies are the same whatever the case and spaces they are written with. */
export const companyKey = (name: string) => name.normalize('NFKC').replace(/\s+/gu, ' ').trim().toLowerCase();

/** Reads the attempts to tell people, and since when they are to be told of what concerns them. */
@Injectable()
export class Attempts {
  async of(read: Read, studioId: string, recallId: string): Promise<AttemptsOfRecall> {
    const rows = await read<AttemptRow>(
      `SELECT id, audience, client_id AS "clientId", artist_id AS "artistId", company, outcome,
         occurred_at AS "occurredAt", recorded_at AS "recordedAt"
       FROM recall_contact WHERE studio_id = $1 AND recall_id = $2 ORDER BY recorded_at, id`,
      [studioId, recallId],
    );
    const keyOf = (row: AttemptRow) => row.clientId ?? row.artistId ?? companyKey(row.company ?? '');
    const byRecipient = grouped(rows, (row) => `${row.audience} ${keyOf(row)}`);
    return {
      of: (audience, key) => byRecipient.get(`${audience} ${key}`) ?? [],
      companies: (audience) =>
        [...byRecipient.values()].flatMap(([first]) =>
          first?.audience === audience && first.company !== null
            ? [{ id: first.id, company: first.company }]
            : [],
        ),
    };
  }

  /**
   * Of clients whom somebody tried to tell: when the last of the lots that concern them came to be known as theirs, by
   * client id. Those whose lots were all known when the recall was opened are left out.
   */
  async concernedSince(read: Read, studioId: string, recallId: string): Promise<Map<string, string>> {
    const rows = await read<{ clientId: string; since: string }>(
      `WITH RECURSIVE ${recallLots}, ${recallReach},
       tried (client_id) AS (
         SELECT DISTINCT client_id FROM recall_contact
         WHERE studio_id = $1 AND recall_id = $2 AND client_id IS NOT NULL),
       named (lot_id, since) AS (
         SELECT lot_id, min(recorded_at) FROM recall_lot
         WHERE studio_id = $1 AND recall_id = $2 GROUP BY lot_id),
       met (client_id, lot_id, since) AS (
         SELECT tried.client_id, recall_reach.source_lot_id, min(session_use.recorded_at)
         FROM tried CROSS JOIN session_use CROSS JOIN recall_reach
         WHERE session_use.studio_id = $1 AND session_use.client_id = tried.client_id
           AND recall_reach.lot_id = session_use.lot_id
           AND NOT EXISTS (SELECT 1 FROM session_use_reversal WHERE session_use_reversal.studio_id = $1
             AND session_use_reversal.use_id = session_use.id)
         GROUP BY tried.client_id, recall_reach.source_lot_id),
       known (client_id, since) AS (
         SELECT met.client_id, CASE WHEN met.since > named.since THEN met.since ELSE named.since END
         FROM met JOIN named ON named.lot_id = met.lot_id)
       SELECT client_id AS "clientId", max(since) AS since FROM known GROUP BY client_id
       HAVING max(since) > (
         SELECT min(recorded_at) FROM recall_lot WHERE studio_id = $1 AND recall_id = $2)`,
      [studioId, recallId],
    );
    return new Map(rows.map(({ clientId, since }) => [clientId, since]));
  }
}
