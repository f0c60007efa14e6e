import { Injectable } from '@nestjs/common';
import { placeholders, type Read } from '../../platform/database/database.js';
import { Attempts } from '../contacts/attempts.service.js';
import { type Attempt, contactStanding } from '../contacts/contact-standing.js';
import { type ContactState, contactState } from './contact-state.js';
import type { LatestContactView } from './exposures.views.js';

type AttemptRow = LatestContactView & Attempt & { clientId: string };

/** How it stands with telling a client, and the last attempt. */
export interface StateOfContact {
  contactState: ContactState;
  /** Null: nobody has tried yet. */
  latestContact: LatestContactView | null;
}

/** How it stands with telling the clients of a recall. */
@Injectable()
export class ContactStates {
  constructor(private readonly attempts: Attempts) {}

  /** By client id. */
  async of(
    read: Read,
    studioId: string,
    recallId: string,
    clients: readonly { clientId: string; erasedAt: string | null }[],
  ): Promise<Map<string, StateOfContact>> {
    const since = await this.attempts.concernedSince(read, studioId, recallId);
    const byClient = await this.attemptsOf(
      read,
      studioId,
      recallId,
      clients.map(({ clientId }) => clientId),
    );
    return new Map(
      clients.map(({ clientId, erasedAt }) => {
        const attempts = byClient.get(clientId) ?? [];
        const { standing } = contactStanding(attempts, since.get(clientId) ?? null);
        const latest = attempts.at(-1);
        return [
          clientId,
          {
            contactState: contactState(standing, erasedAt !== null),
            latestContact: latest
              ? {
                  ...{ id: latest.id, channel: latest.channel },
                  ...{ outcome: latest.outcome, occurredAt: latest.occurredAt },
                }
              : null,
          },
        ];
      }),
    );
  }

  /** In the order in which they happened. */
  private async attemptsOf(
    read: Read,
    studioId: string,
    recallId: string,
    clientIds: readonly string[],
  ): Promise<Map<string, AttemptRow[]>> {
    const attempts = new Map<string, AttemptRow[]>();
    if (clientIds.length === 0) return attempts;
    const rows = await read<AttemptRow>(
      `SELECT client_id AS "clientId", id, channel, outcome, occurred_at AS "occurredAt",
         recorded_at AS "recordedAt"
       FROM recall_contact
       WHERE studio_id = $1 AND recall_id = $2 AND client_id IN (${placeholders(clientIds, 3)})
       ORDER BY occurred_at, recorded_at, id`,
      [studioId, recallId, ...clientIds],
    );
    for (const row of rows) {
      const known = attempts.get(row.clientId);
      if (known) known.push(row);
      else attempts.set(row.clientId, [row]);
    }
    return attempts;
  }
}
