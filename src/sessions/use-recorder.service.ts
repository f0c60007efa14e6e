import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import { Alerts } from '../alerts/alerts.service.js';
import { placeholders } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/transaction.js';
import type { FieldSealer } from '../platform/encryption/data-keys.service.js';
import { type ContainerFact, ContainerFacts } from '../stock/container-facts.service.js';
import { Ledger } from '../stock/ledger.service.js';
import { StockConditions } from '../stock/stock-conditions.service.js';
import { ProspectJudge } from './prospects/prospect-judge.service.js';
import { sealedAsUseReason } from './sealing-contexts.js';
import { SessionOpenings } from './session-openings.service.js';
import { SessionUse } from './session-use.entity.js';
import type { KnownBy } from './vocabulary.js';

/** The session that uses belong to. */
export interface UsingSession {
  id: string;
  clientId: string;
  /** Seals under the client's key. */
  sealing: Pick<FieldSealer, 'seal'>;
  /** Whether its tray is settled by what is recorded. */
  settled?: true;
}

/** One use as it happened. Quantities are absolute; both zero when the amount is not known. */
export interface UseToRecord {
  id?: string;
  containerId: string;
  mixId: string | null;
  /** The line of the tray it was settled from. */
  trayLineId?: string;
  knownBy: KnownBy;
  pieces: number;
  drops: number | null;
  microlitres: number;
  /** Codes of the refusals it was used against; empty: none. */
  againstRefusal: string[];
  reason: string | null;
  appliedAt: string | null;
  removedAt: string | null;
  appliedBy: string | null;
  occurredAt: string;
}

/** What was opened for a session and touched nobody: it still ends in the sharps container. */
export interface WasteToRecord {
  containerId: string;
  pieces: number;
  microlitres: number;
  reason: string;
  occurredAt: string;
}

export const useAgainstRefusal = 'use against a refusal';

/**
 * Writes what touched a client. Guarantees: it never refuses – a use above the book first books an adjustment; each use
 * keeps the label as it was known then; a use against a refusal opens an urgent alert in the same transaction.
 */
@Injectable()
export class UseRecorder {
  constructor(
    private readonly containerFacts: ContainerFacts,
    private readonly ledger: Ledger,
    private readonly openings: SessionOpenings,
    private readonly alerts: Alerts,
    private readonly stockConditions: StockConditions,
    private readonly prospects: ProspectJudge,
  ) {}

  async record(
    transaction: Transaction,
    session: UsingSession,
    uses: readonly UseToRecord[],
    wastes: readonly WasteToRecord[] = [],
  ): Promise<SessionUse[]> {
    const { studioId, personId, via } = transaction.actor;
    const containerIds = [...uses, ...wastes].map((thing) => thing.containerId);
    await this.lockLots(transaction, containerIds);
    const facts = await this.containerFacts.load(transaction.read, studioId, { containerIds, ended: true });
    const byId = new Map(facts.map((fact) => [fact.containerId, fact]));
    const factOf = (containerId: string): ContainerFact => {
      const fact = byId.get(containerId);
      if (!fact) throw new Error(`The container ${containerId} is not in this studio.`);
      return fact;
    };
    const codes = await this.codesOf(transaction, [...new Set(facts.map((fact) => fact.lotId))]);

    const bookedUses = uses.map((use) => ({
      ...use,
      id: use.id ?? uuidv7(),
      movementId: use.pieces === 0 && use.microlitres === 0 ? null : uuidv7(),
    }));
    await this.ledger.bookWhatHappened(transaction, [
      ...bookedUses.flatMap((use) =>
        use.movementId === null
          ? []
          : [
              {
                id: use.movementId,
                lotId: factOf(use.containerId).lotId,
                containerId: use.containerId,
                kind: 'used' as const,
                pieces: use.pieces,
                microlitres: use.microlitres,
                sessionId: session.id,
                occurredAt: use.occurredAt,
              },
            ],
      ),
      ...wastes.map((waste) => ({
        lotId: factOf(waste.containerId).lotId,
        containerId: waste.containerId,
        kind: 'wasted' as const,
        pieces: waste.pieces,
        microlitres: waste.microlitres,
        sessionId: session.id,
        reason: waste.reason,
        occurredAt: waste.occurredAt,
      })),
    ]);

    const rows = bookedUses.map((use): SessionUse => {
      const fact = factOf(use.containerId);
      return {
        studioId,
        id: use.id,
        sessionId: session.id,
        clientId: session.clientId,
        lotId: fact.lotId,
        containerId: use.containerId,
        movementId: use.movementId,
        mixId: use.mixId,
        trayLineId: use.trayLineId ?? null,
        knownBy: use.knownBy,
        pieces: use.pieces,
        drops: use.drops,
        microlitres: use.microlitres,
        againstRefusal: use.againstRefusal.length > 0 ? use.againstRefusal : null,
        reasonSealed: session.sealing.seal(use.reason, sealedAsUseReason(use.id)),
        appliedAt: use.appliedAt,
        removedAt: use.removedAt,
        appliedBy: use.appliedBy,
        makerName: fact.makerName,
        productName: fact.productName,
        shade: fact.shade,
        lotCode: fact.code,
        codes: codes.get(fact.lotId) ?? [],
        useBy: fact.useBy,
        occurredAt: use.occurredAt,
        recordedAt: transaction.recordedAt,
        personId,
        via,
      };
    });
    if (rows.length > 0) await transaction.insert(SessionUse, rows);

    const openedProductIds = await this.openings.record(
      transaction,
      session.id,
      [...uses, ...wastes],
      session.settled,
    );

    const againstRefusal = rows.filter((use) => use.againstRefusal !== null);
    await this.alerts.raise(
      transaction,
      againstRefusal.map((use) => ({
        kind: useAgainstRefusal,
        subjectKind: 'use',
        subjectId: use.id,
        severity: 'urgent',
        facts: {
          product: use.productName,
          maker: use.makerName,
          shade: use.shade,
          lotCode: use.lotCode,
          useBy: use.useBy,
          reasons: use.againstRefusal,
          sessionId: session.id,
        },
      })),
    );
    await this.stockConditions.reevaluate(transaction, [
      ...new Set([...facts.map((fact) => fact.productId), ...openedProductIds]),
    ]);
    // Also when nothing was used: a touch-up that took place is owed no longer.
    await this.prospects.mark(transaction);
    return rows;
  }

  /**
   * Locks the lots of containers, after their session and before anything of them is read: whoever else changes one of
   * their containers or places a hold locks its lot first, so that what is read here still stands when it is written.
   */
  async lockLots(transaction: Transaction, containerIds: readonly string[]): Promise<void> {
    const ids = [...new Set(containerIds)];
    if (transaction.engine === 'sqlite' || ids.length === 0) return;
    const rows = await transaction.query<{ lot_id: string }>(
      `SELECT lot_id FROM container WHERE studio_id = $1 AND id IN (${placeholders(ids)})`,
      [transaction.studioId, ...ids],
    );
    await transaction.lock(
      'lot',
      rows.map((row) => row.lot_id),
    );
  }

  /** The codes printed for each lot that stand now. */
  private async codesOf(
    transaction: Transaction,
    lotIds: readonly string[],
  ): Promise<Map<string, { kind: string; code: string }[]>> {
    const codes = new Map<string, { kind: string; code: string }[]>();
    if (lotIds.length === 0) return codes;
    const rows = await transaction.query<{ lot_id: string; kind: string; code: string }>(
      `SELECT lot_id, kind, code FROM lot_code
       WHERE studio_id = $1 AND superseded_at IS NULL AND lot_id IN (${placeholders(lotIds)})
       ORDER BY lot_id, id`,
      [transaction.studioId, ...lotIds],
    );
    for (const row of rows) {
      codes.set(row.lot_id, [...(codes.get(row.lot_id) ?? []), { kind: row.kind, code: row.code }]);
    }
    return codes;
  }
}
