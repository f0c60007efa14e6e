import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import { localDay } from '../identity/local-day.js';
import type { Transaction } from '../platform/database/transaction.js';
import { Hold } from './hold.entity.js';
import type { LotAtReceipt } from './lots-at-receipt.service.js';
import type { PieceFault } from './planned-containers.js';
import { isPastByItsOwnPrint, lotReasonsAtReceipt, lotReasonsOnJoining } from './receipt-reasons.js';
import type { ReceivedHoldView } from './receiving.views.js';
import { caughtWarning } from './standing-holds/caught-warning.js';
import type { CaughtLot } from './standing-holds/standing-hold-followers.service.js';
import { StandingHolds } from './standing-holds/standing-holds.service.js';
import type { HoldKind, HoldReason } from './vocabulary.js';

/** A line that was put away, as far as it decides what is put aside. */
export interface PutAside {
  line: {
    lineNumber: number;
    printed: { useBy: string | null };
    containers: readonly { fault: PieceFault | null }[];
    warnings: string[];
  };
  lot: LotAtReceipt;
  containers: readonly { id: string }[];
}

interface LotHold {
  id: string;
  lot_id: string;
  kind: HoldKind;
  reason: HoldReason;
  /** The instant of its release; null while it is open. */
  released_at: string | null;
}

/** Puts received goods aside until a person decides on what is missing, past or damaged, and what a notice means. */
@Injectable()
export class ReceiptHolds {
  constructor(private readonly standingHolds: StandingHolds) {}

  /** Places the holds of received lines and returns, by line number, these and those open on their lots before. */
  async place(
    transaction: Transaction,
    putAway: readonly PutAside[],
    receivedAt: string,
  ): Promise<Map<number, ReceivedHoldView[]>> {
    const known = await this.onLots(
      transaction,
      putAway.filter(({ lot }) => !lot.isNew).map(({ lot }) => lot.lot.id),
    );
    const day = localDay(receivedAt, transaction.actor.timeZone);
    const placed: Hold[] = [];
    const make = (reason: HoldReason, on: { lotId: string } | { containerId: string }): Hold => {
      const hold = newHold(transaction, reason, on, receivedAt);
      placed.push(hold);
      return hold;
    };
    const lotHolds = new Map<string, Hold[]>();
    const answer = new Map<number, ReceivedHoldView[]>();
    for (const { line, lot, containers } of putAway) {
      const { id: lotId, codeState, useBy } = lot.lot;
      const before = known.filter((hold) => hold.lot_id === lotId && hold.released_at === null);
      const reasons = lotReasonsAtReceipt({ codeState, useBy }, day);
      const asked = lot.isNew
        ? { onLot: reasons, onArrivals: [] }
        : lotReasonsOnJoining({
            reasons,
            reasonsBefore: lotReasonsAtReceipt({ codeState, useBy: useByBefore(lot) }, day),
            open: before.map((hold) => hold.reason),
            released: known
              .filter((hold) => hold.lot_id === lotId && hold.released_at !== null)
              .map((hold) => hold.reason),
          });
      const ofLot = lotHolds.get(lotId) ?? asked.onLot.map((reason) => make(reason, { lotId }));
      lotHolds.set(lotId, ofLot);
      const holds: Hold[] = [...ofLot];
      const onArrivals = isPastByItsOwnPrint(line.printed.useBy, reasons, day)
        ? [...asked.onArrivals, 'already past' as const]
        : asked.onArrivals;
      for (const [index, container] of containers.entries()) {
        const containerId = container.id;
        const fault = line.containers[index]?.fault ?? null;
        holds.push(...onArrivals.map((reason) => make(reason, { containerId })));
        if (fault !== null) holds.push(make(fault, { containerId }));
      }
      answer.set(line.lineNumber, [...before.map(viewOfEarlier), ...holds.map(viewOf)]);
    }
    if (placed.length > 0) await transaction.insert(Hold, placed);
    const lotIds = putAway.map(({ lot }) => lot.lot.id);
    const caught = await this.standingHolds.catchLots(transaction, lotIds, receivedAt);
    for (const { line, lot } of putAway) {
      const ofLot = caught.filter(({ lotId }) => lotId === lot.lot.id);
      answer.get(line.lineNumber)?.push(...ofLot.map(viewOfCaught));
      line.warnings.push(...ofLot.map((one) => caughtWarning(lot.lot.code, one)));
    }
    return answer;
  }

  /** Places holds on a lot for those of the reasons for which none is open on it. */
  async placeOnLot(
    transaction: Transaction,
    lotId: string,
    reasons: readonly HoldReason[],
    occurredAt: string,
  ): Promise<ReceivedHoldView[]> {
    if (reasons.length === 0) return [];
    const known = await this.onLots(transaction, [lotId]);
    const missing = reasons.filter(
      (reason) => !known.some((hold) => hold.reason === reason && hold.released_at === null),
    );
    const holds = missing.map((reason) => newHold(transaction, reason, { lotId }, occurredAt));
    if (holds.length > 0) await transaction.insert(Hold, holds);
    return holds.map(viewOf);
  }

  private async onLots(transaction: Transaction, lotIds: readonly string[]): Promise<LotHold[]> {
    const ids = [...new Set(lotIds)];
    if (ids.length === 0) return [];
    return transaction.query<LotHold>(
      `SELECT hold.id, hold.lot_id, hold.kind, hold.reason, hold_release.occurred_at AS released_at FROM hold
         LEFT JOIN hold_release ON hold_release.studio_id = hold.studio_id AND hold_release.hold_id = hold.id
       WHERE hold.studio_id = $1 AND hold.lot_id IN (${ids.map((_, index) => `$${index + 2}`).join(', ')})
       ORDER BY hold.recorded_at, hold.id`,
      [transaction.studioId, ...ids],
    );
  }
}

/** The date of the lot before this delivery corrected it. */
function useByBefore({ lot, corrections }: LotAtReceipt): string | null {
  const correction = corrections.find(({ field }) => field === 'useBy');
  return correction === undefined ? lot.useBy : correction.from;
}

function newHold(
  transaction: Transaction,
  reason: HoldReason,
  on: { lotId: string } | { containerId: string },
  occurredAt: string,
): Hold {
  const { studioId, personId, via } = transaction.actor;
  return {
    studioId,
    id: uuidv7(),
    kind: 'quarantine',
    lotId: 'lotId' in on ? on.lotId : null,
    containerId: 'containerId' in on ? on.containerId : null,
    reason,
    note: null,
    occurredAt,
    recordedAt: transaction.recordedAt,
    personId,
    via,
  };
}

function viewOf({ id, kind, reason, lotId, containerId }: Hold): ReceivedHoldView {
  return { id, kind, reason, lotId, containerId, placedNow: true };
}

export function viewOfCaught({ holdId, lotId }: CaughtLot): ReceivedHoldView {
  return { id: holdId, kind: 'recall', reason: 'recall notice', lotId, containerId: null, placedNow: true };
}

function viewOfEarlier({ id, lot_id, kind, reason }: LotHold): ReceivedHoldView {
  return { id, kind, reason, lotId: lot_id, containerId: null, placedNow: false };
}
