import { Injectable, type OnModuleInit } from '@nestjs/common';
import {
  type TreatmentFacts,
  TreatmentRecords,
  type TreatmentSource,
} from '../clients/treatment-records.service.js';
import { placeholders, type Read } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/transaction.js';
import { HoldsInForce } from '../stock/holds-in-force.service.js';
import { Session } from './session.entity.js';

/** Entries that add to the record of a visit long after it: how it healed, what showed later. */
const laterRecords = ['sessions.add-complications', 'sessions.record-healed-result'];

/** What the sessions of clients say to how long the clients are kept, and what of them is cleared by an erasure. */
@Injectable()
export class ClientTreatments implements TreatmentSource, OnModuleInit {
  constructor(
    private readonly treatmentRecords: TreatmentRecords,
    private readonly holdsInForce: HoldsInForce,
  ) {}

  onModuleInit(): void {
    this.treatmentRecords.register(this);
  }

  async facts(
    read: Read,
    studioId: string,
    clientIds: readonly string[],
  ): Promise<Map<string, TreatmentFacts>> {
    const facts = new Map<string, TreatmentFacts>(
      clientIds.map((id) => [id, { lastRecordAt: null, openSessionIds: [], heldLotIds: [] }]),
    );
    for (const { clientId, at } of await this.lastRecords(read, studioId, clientIds)) {
      const known = facts.get(clientId);
      if (known) known.lastRecordAt = at;
    }
    for (const { clientId, id } of await this.openSessions(read, studioId, clientIds)) {
      facts.get(clientId)?.openSessionIds.push(id);
    }
    for (const { clientId, lotId } of await this.heldLots(read, studioId, clientIds)) {
      facts.get(clientId)?.heldLotIds.push(lotId);
    }
    return facts;
  }

  async lock(transaction: Transaction, clientId: string): Promise<void> {
    const sessions = await transaction.query<{ id: string }>(
      'SELECT id FROM session WHERE studio_id = $1 AND client_id = $2',
      [transaction.studioId, clientId],
    );
    await transaction.lock(
      'session',
      sessions.map(({ id }) => id),
    );
  }

  async erase(transaction: Transaction, clientId: string): Promise<void> {
    const { studioId } = transaction;
    const sessions = await transaction.query<{ id: string; version: number }>(
      `SELECT id, version FROM session WHERE studio_id = $1 AND client_id = $2
         AND coalesce(body_place_detail_sealed, complications_sealed, healed_result_sealed) IS NOT NULL
       ORDER BY id`,
      [studioId, clientId],
    );
    for (const { id, version } of sessions) {
      await transaction.change(Session, 'session', { studioId, id }, version, {
        bodyPlaceDetailSealed: null,
        complicationsSealed: null,
        healedResultSealed: null,
      });
    }
  }

  /**
   * When each client's record was last added to. What is told late counts from when it happened, not from when it was
   * written down: that is the visit whose record a law speaks of.
   */
  private lastRecords(
    read: Read,
    studioId: string,
    clientIds: readonly string[],
  ): Promise<{ clientId: string; at: string }[]> {
    const clients = placeholders(clientIds, 2 + laterRecords.length);
    return read(
      `SELECT client_id AS "clientId", max(at) AS at FROM (
         SELECT client_id, completed_at AS at FROM session
         WHERE studio_id = $1 AND state = 'completed' AND client_id IN (${clients})
         UNION ALL
         SELECT client_id, occurred_at FROM session_use WHERE studio_id = $1 AND client_id IN (${clients})
         UNION ALL
         SELECT session.client_id, audit_entry.recorded_at FROM session JOIN audit_entry
           ON audit_entry.studio_id = session.studio_id AND audit_entry.subject_kind = 'session'
             AND audit_entry.subject_id = session.id AND audit_entry.action IN (${placeholders(laterRecords)})
         WHERE session.studio_id = $1 AND session.client_id IN (${clients})
       ) AS records GROUP BY client_id`,
      [studioId, ...laterRecords, ...clientIds],
    );
  }

  private openSessions(
    read: Read,
    studioId: string,
    clientIds: readonly string[],
  ): Promise<{ clientId: string; id: string }[]> {
    return read(
      `SELECT client_id AS "clientId", id FROM session
       WHERE studio_id = $1 AND state IN ('planned', 'in setup') AND client_id IN (${placeholders(clientIds)})
       ORDER BY id`,
      [studioId, ...clientIds],
    );
  }

  /** Uses recorded by mistake touched nobody. */
  private async heldLots(
    read: Read,
    studioId: string,
    clientIds: readonly string[],
  ): Promise<{ clientId: string; lotId: string }[]> {
    const uses = `FROM session_use WHERE session_use.studio_id = $1
      AND session_use.client_id IN (${placeholders(clientIds)})
      AND NOT EXISTS (SELECT 1 FROM session_use_reversal
        WHERE session_use_reversal.studio_id = session_use.studio_id
          AND session_use_reversal.use_id = session_use.id)`;
    const parameters = [studioId, ...clientIds];
    const where = `container.studio_id = $1 AND container.id IN (SELECT session_use.container_id ${uses})`;
    const held = await this.holdsInForce.reaching(read, { where, parameters });
    if (held.size === 0) return [];
    const touched = await read<{ clientId: string; lotId: string; containerId: string }>(
      `SELECT DISTINCT session_use.client_id AS "clientId", session_use.lot_id AS "lotId",
         session_use.container_id AS "containerId" ${uses}
       ORDER BY "clientId", "lotId", "containerId"`,
      parameters,
    );
    const lots = new Map(
      touched
        .filter(({ containerId }) => held.has(containerId))
        .map(({ clientId, lotId }) => [`${clientId} ${lotId}`, { clientId, lotId }] as const),
    );
    return [...lots.values()];
  }
}
