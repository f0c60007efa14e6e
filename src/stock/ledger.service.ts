import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import type { Transaction } from '../platform/database/transaction.js';
import { notFound, Problem } from '../platform/problem.js';
import { Movement } from './movement.entity.js';
import type { MovementKind } from './vocabulary.js';

/** A change to be booked, in absolute quantities except for `adjusted`, which is signed. */
export interface Booking {
  /** Given when something else must name the movement. */
  id?: string;
  lotId: string;
  containerId: string;
  kind: MovementKind;
  pieces: number;
  microlitres: number;
  sessionId?: string | null;
  reason?: string | null;
  occurredAt: string;
}

const incoming: ReadonlySet<MovementKind> = new Set(['received', 'produced', 'transferred in', 'adjusted']);

/** Reason of the adjustment that precedes a use of more than the book shows. */
export const moreThanBooked = 'more than booked';

/**
 * The movement ledger. Guarantees: a movement is only ever inserted; the database keeps each container's balance as the
 * sum of its movements and refuses one below zero; a mistake is reversed by a movement that names it, once.
 */
@Injectable()
export class Ledger {
  /** Books movements in the caller's transaction. */
  async book(transaction: Transaction, bookings: Booking[]): Promise<Movement[]> {
    const { studioId, personId, via } = transaction.actor;
    const movements = bookings
      .filter(({ pieces, microlitres }) => pieces !== 0 || microlitres !== 0)
      .map((booking): Movement => {
        const sign = incoming.has(booking.kind) ? 1 : -1;
        return {
          studioId,
          id: booking.id ?? uuidv7(),
          lotId: booking.lotId,
          containerId: booking.containerId,
          kind: booking.kind,
          pieces: sign * booking.pieces || 0,
          microlitres: sign * booking.microlitres || 0,
          reversesId: null,
          sessionId: booking.sessionId ?? null,
          reason: booking.reason ?? null,
          occurredAt: booking.occurredAt,
          recordedAt: transaction.recordedAt,
          personId,
          via,
        };
      });
    if (movements.length > 0) await transaction.insert(Movement, movements);
    return movements;
  }

  /**
   * Books what happened even when the book holds less: the difference is first booked as an adjustment, so that the
   * record never refuses the truth and the balance never goes below zero.
   * @returns the movements of the bookings, and how many adjustments they needed
   */
  async bookWhatHappened(
    transaction: Transaction,
    bookings: Booking[],
  ): Promise<{ movements: Movement[]; adjustments: Movement[] }> {
    const balances = await this.balances(
      transaction,
      bookings.map((booking) => booking.containerId),
    );
    const adjustments: Booking[] = [];
    for (const booking of bookings) {
      const balance = balances.get(booking.containerId) ?? { pieces: 0, microlitres: 0 };
      const missing = {
        pieces: Math.max(0, booking.pieces - balance.pieces),
        microlitres: Math.max(0, booking.microlitres - balance.microlitres),
      };
      if (missing.pieces > 0 || missing.microlitres > 0) {
        adjustments.push({ ...booking, ...missing, id: undefined, kind: 'adjusted', reason: moreThanBooked });
      }
      balances.set(booking.containerId, {
        pieces: balance.pieces + missing.pieces - booking.pieces,
        microlitres: balance.microlitres + missing.microlitres - booking.microlitres,
      });
    }
    return {
      adjustments: await this.book(transaction, adjustments),
      movements: await this.book(transaction, bookings),
    };
  }

  /**
   * Negates a movement by another that names it.
   * @throws Problem not-found; wrong-state when it is reversed already or is itself a reversal; not-enough-stock when
   * what it brought in is no longer there
   */
  async reverse(
    transaction: Transaction,
    movementId: string,
    reason: string,
    occurredAt: string,
    reversalId: string = uuidv7(),
  ): Promise<Movement> {
    const { studioId, personId, via } = transaction.actor;
    const [original] = await transaction.query<{
      lot_id: string;
      container_id: string;
      kind: MovementKind;
      pieces: number;
      microlitres: number;
      reverses_id: string | null;
      session_id: string | null;
      reversed_by: string | null;
    }>(
      `SELECT movement.lot_id, movement.container_id, movement.kind, movement.pieces, movement.microlitres,
         movement.reverses_id, movement.session_id,
         (SELECT later.id FROM movement AS later
          WHERE later.studio_id = movement.studio_id AND later.reverses_id = movement.id) AS reversed_by
       FROM movement WHERE movement.studio_id = $1 AND movement.id = $2`,
      [studioId, movementId],
    );
    if (!original) throw notFound('movement', movementId);
    if (original.reverses_id !== null) {
      throw new Problem(
        409,
        'wrong-state',
        'This movement is itself a reversal; book the movement anew instead.',
      );
    }
    if (original.reversed_by !== null) {
      throw new Problem(409, 'wrong-state', `This movement is reversed already, by ${original.reversed_by}.`);
    }
    await transaction.lock('container', [original.container_id]);
    const balances = await this.balances(transaction, [original.container_id]);
    const balance = balances.get(original.container_id) ?? { pieces: 0, microlitres: 0 };
    if (balance.pieces < original.pieces || balance.microlitres < original.microlitres) {
      throw new Problem(
        409,
        'not-enough-stock',
        `The movement brought in ${original.pieces} pieces and ${original.microlitres} µL, of which ${balance.pieces} and ${balance.microlitres} are left. Reverse first what was taken since.`,
      );
    }
    const reversal: Movement = {
      studioId,
      id: reversalId,
      lotId: original.lot_id,
      containerId: original.container_id,
      kind: original.kind,
      pieces: -original.pieces || 0,
      microlitres: -original.microlitres || 0,
      reversesId: movementId,
      sessionId: original.session_id,
      reason,
      occurredAt,
      recordedAt: transaction.recordedAt,
      personId,
      via,
    };
    await transaction.insert(Movement, reversal);
    return reversal;
  }

  /** Balances by container id. */
  async balances(
    transaction: Transaction,
    containerIds: readonly string[],
  ): Promise<Map<string, { pieces: number; microlitres: number }>> {
    const ids = [...new Set(containerIds)];
    if (ids.length === 0) return new Map();
    const rows = await transaction.query<{ container_id: string; pieces: number; microlitres: number }>(
      `SELECT container_id, pieces, microlitres FROM balance
       WHERE studio_id = $1 AND container_id IN (${ids.map((_, index) => `$${index + 2}`).join(', ')})`,
      [transaction.studioId, ...ids],
    );
    return new Map(
      rows.map((row) => [row.container_id, { pieces: row.pieces, microlitres: row.microlitres }]),
    );
  }
}
