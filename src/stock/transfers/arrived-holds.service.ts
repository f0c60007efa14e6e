import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import { placeholders } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Hold } from '../hold.entity.js';
import { type PutAside, ReceiptHolds } from '../receipt-holds.service.js';
import { StandingHolds } from '../standing-holds/standing-holds.service.js';
import type { ToldHold } from './transfer.entity.js';

/** Goods that arrived, with what stands on them in the studio they came from. */
export interface ArrivedGoods extends PutAside {
  practice: boolean;
  heldThere: readonly ToldHold[];
}

const note = 'On hold in the studio it came from when it arrived.';

/**
 * What arrives is put aside for all that a delivery would be, and stays on hold when the studio it came from holds it: a
 * recall reaches goods that were on their way. A hold on the lot there becomes one on the lot here.
 */
@Injectable()
export class ArrivedHolds {
  constructor(
    private readonly receiptHolds: ReceiptHolds,
    private readonly standingHolds: StandingHolds,
  ) {}

  async place(transaction: Transaction, goods: readonly ArrivedGoods[], arrivedAt: string): Promise<void> {
    // What is for practice touches nobody: nothing has to be decided of its dates.
    const forClients = goods.filter(({ practice }) => !practice);
    await this.receiptHolds.place(transaction, forClients, arrivedAt);
    // What is recalled is put aside from practice too.
    const lotIds = goods.filter(({ practice }) => practice).map(({ lot }) => lot.lot.id);
    await this.standingHolds.catchLots(transaction, lotIds, arrivedAt);
    await this.carryOver(transaction, goods, arrivedAt);
  }

  private async carryOver(
    transaction: Transaction,
    goods: readonly ArrivedGoods[],
    occurredAt: string,
  ): Promise<void> {
    const held = goods.filter(({ heldThere }) => heldThere.length > 0);
    if (held.length === 0) return;
    const { studioId, recordedAt, actor } = transaction;
    const known = await this.openOn(
      transaction,
      held.map(({ lot }) => lot.lot.id),
    );
    const placed: Hold[] = [];
    const place = ({ kind, reason }: ToldHold, lotId: string | null, containerId: string | null) => {
      const words = `${kind} ${reason} ${lotId ?? containerId}`;
      if (known.has(words)) return;
      known.add(words);
      const { personId, via } = actor;
      placed.push({
        ...{ studioId, kind, lotId, containerId, reason, note, occurredAt, recordedAt, personId, via },
        id: uuidv7(),
      });
    };
    for (const { lot, containers, heldThere } of held) {
      for (const hold of heldThere) {
        if (hold.on === 'lot') place(hold, lot.lot.id, null);
        else for (const { id } of containers) place(hold, null, id);
      }
    }
    if (placed.length > 0) await transaction.insert(Hold, placed);
  }

  /** The open holds on these lots, in words. */
  private async openOn(transaction: Transaction, lotIds: readonly string[]): Promise<Set<string>> {
    const rows = await transaction.query<{ kind: string; reason: string; lot_id: string }>(
      `SELECT hold.kind, hold.reason, hold.lot_id FROM hold
       WHERE hold.studio_id = $1 AND hold.lot_id IN (${placeholders(lotIds)}) AND NOT EXISTS (
         SELECT 1 FROM hold_release
         WHERE hold_release.studio_id = hold.studio_id AND hold_release.hold_id = hold.id)`,
      [transaction.studioId, ...lotIds],
    );
    return new Set(rows.map(({ kind, reason, lot_id }) => `${kind} ${reason} ${lot_id}`));
  }
}
