import { Injectable } from '@nestjs/common';
import type { Transaction } from '../platform/database/transaction.js';
import { Ledger } from '../stock/ledger.service.js';
import { StockConditions } from '../stock/stock-conditions.service.js';
import { SessionOpenings } from './session-openings.service.js';

/** What was opened or poured for a session and touched nobody. Quantities are absolute. */
export interface SessionWaste {
  productId: string;
  lotId: string;
  containerId: string;
  pieces: number;
  microlitres: number;
}

/** Books what a session wasted though it was never completed, or before it was. */
@Injectable()
export class SessionWastes {
  constructor(
    private readonly ledger: Ledger,
    private readonly openings: SessionOpenings,
    private readonly stockConditions: StockConditions,
  ) {}

  /** @param settled whether the tray is settled by it: then every bottle that was dropped from is recorded as opened */
  async book(
    transaction: Transaction,
    sessionId: string,
    wastes: readonly SessionWaste[],
    reason: string,
    occurredAt: string,
    settled = false,
  ): Promise<void> {
    if (wastes.length === 0 && !settled) return;
    await transaction.lock(
      'lot',
      wastes.map((waste) => waste.lotId),
    );
    await this.ledger.bookWhatHappened(
      transaction,
      wastes.map(({ lotId, containerId, pieces, microlitres }) => ({
        lotId,
        containerId,
        kind: 'wasted',
        pieces,
        microlitres,
        sessionId,
        reason,
        occurredAt,
      })),
    );
    const openedProductIds = await this.openings.record(
      transaction,
      sessionId,
      wastes.map(({ containerId }) => ({ containerId, occurredAt })),
      settled,
    );
    await this.stockConditions.reevaluate(transaction, [
      ...new Set([...wastes.map((waste) => waste.productId), ...openedProductIds]),
    ]);
  }
}
