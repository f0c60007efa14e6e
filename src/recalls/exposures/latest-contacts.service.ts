import { Injectable } from '@nestjs/common';
import { placeholders, type Read } from '../../platform/database/database.js';
import type { LatestContactView } from './exposures.views.js';

type ContactRow = LatestContactView & { clientId: string };

/** The latest attempt to tell each client of a recall. */
@Injectable()
export class LatestContacts {
  /** By client id; nobody has tried to tell those who are left out. */
  async of(
    read: Read,
    studioId: string,
    recallId: string,
    clientIds: readonly string[],
  ): Promise<Map<string, LatestContactView>> {
    if (clientIds.length === 0) return new Map();
    const rows = await read<ContactRow>(
      `SELECT client_id AS "clientId", id, channel, outcome, occurred_at AS "occurredAt" FROM recall_contact
       WHERE studio_id = $1 AND recall_id = $2 AND client_id IN (${placeholders(clientIds, 3)})
       ORDER BY recorded_at, id`,
      [studioId, recallId, ...clientIds],
    );
    return new Map(rows.map(({ clientId, ...contact }) => [clientId, contact]));
  }
}
