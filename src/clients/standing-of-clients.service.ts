import { Injectable } from '@nestjs/common';
import { localDay } from '../identity/local-day.js';
import { type RetentionPolicy, retentionPolicy } from '../identity/retention-policy.js';
import type { RetentionChoice } from '../identity/retention-presets.js';
import type { Actor } from '../platform/actor.js';
import { placeholders, type Read } from '../platform/database/database.js';
import type { Client } from './client.entity.js';
import type { ErasureFacts } from './erasure-decision.js';
import { TreatmentRecords } from './treatment-records.service.js';

/** What matters to whether a client is erased. */
export interface ClientStanding {
  client: Pick<Client, 'id' | 'reference' | 'createdAt'>;
  /** Visits that are planned or under way. */
  openSessionIds: string[];
  facts: ErasureFacts;
}

/** Gathers the facts by which erasures are decided, a fixed number of questions for any number of clients. */
@Injectable()
export class StandingOfClients {
  constructor(private readonly treatmentRecords: TreatmentRecords) {}

  /** @param at the instant whose local day is today */
  async of(
    read: Read,
    { studioId, timeZone }: Actor,
    clients: readonly ClientStanding['client'][],
    at: string,
  ): Promise<ClientStanding[]> {
    if (clients.length === 0) return [];
    const ids = clients.map(({ id }) => id);
    const policy = await this.policyOf(read, studioId);
    const treatments = await this.treatmentRecords.facts(read, studioId, ids);
    const claims = await this.openClaims(read, studioId, ids);
    const dayOf = (instant: string) => localDay(instant, timeZone);
    return clients.map((client) => {
      const treatment = treatments.get(client.id);
      const lastRecordAt = treatment?.lastRecordAt ?? null;
      return {
        client,
        openSessionIds: treatment?.openSessionIds ?? [],
        facts: {
          today: dayOf(at),
          policy,
          lastRecordOn: lastRecordAt === null ? null : dayOf(lastRecordAt),
          addedOn: dayOf(client.createdAt),
          heldLotIds: treatment?.heldLotIds ?? [],
          openClaims: claims.get(client.id) ?? 0,
        },
      };
    });
  }

  private async policyOf(read: Read, studioId: string): Promise<RetentionPolicy | null> {
    const [settings] = await read<{
      preset: RetentionChoice | null;
      years: number | null;
      law: string | null;
    }>(
      `SELECT retention_preset AS preset, retention_years AS years, retention_law AS law FROM studio WHERE id = $1`,
      [studioId],
    );
    return settings ? retentionPolicy(settings) : null;
  }

  private async openClaims(
    read: Read,
    studioId: string,
    clientIds: readonly string[],
  ): Promise<Map<string, number>> {
    const rows = await read<{ clientId: string; open: number }>(
      `SELECT claim.client_id AS "clientId", count(*) AS open FROM legal_claim AS claim
       WHERE claim.studio_id = $1 AND claim.client_id IN (${placeholders(clientIds)})
         AND NOT EXISTS (SELECT 1 FROM legal_claim_end
           WHERE legal_claim_end.studio_id = claim.studio_id AND legal_claim_end.claim_id = claim.id)
       GROUP BY claim.client_id`,
      [studioId, ...clientIds],
    );
    return new Map(rows.map(({ clientId, open }) => [clientId, open]));
  }
}
