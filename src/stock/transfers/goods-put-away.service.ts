import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import { placeholders } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Container } from '../container.entity.js';
import { LabelCodes } from '../label-codes.service.js';
import { type Booking, Ledger } from '../ledger.service.js';
import { type ArrivingLine, type LotAtReceipt, LotsAtReceipt } from '../lots-at-receipt.service.js';
import { StandingPlaces } from '../standing-places.service.js';
import { intoContainers } from './arrival-of-line.js';
import { ArrivedHolds } from './arrived-holds.service.js';
import type { ArrivedLine as UnderstoodLine } from './arrived-lines.js';
import type { Quantity } from './transfer-balance.js';
import type { KnownLine } from './transfer-register.service.js';
import type { ArrivedLineDto } from './transfers.dto.js';

/** Reason of the adjustment for what arrived beyond what was sent. */
const moreThanSent = 'more than sent';

export type ArrivedLine = UnderstoodLine<KnownLine, ArrivedLineDto>;

/** A container made for what arrived. */
export interface MadeContainer {
  container: Container;
  came: Quantity;
  surplusPieces: number;
  /** Null when all of it is surplus. */
  movementId: string | null;
}

/** An arrived line with all that was made for it. */
export interface PutAwayGoods {
  line: ArrivedLine;
  lot: LotAtReceipt;
  made: MadeContainer[];
  warnings: string[];
}

/** Puts away what arrived of a transfer: its lots, containers with labels of their own, movements and holds. */
@Injectable()
export class GoodsPutAway {
  constructor(
    private readonly places: StandingPlaces,
    private readonly lots: LotsAtReceipt,
    private readonly labelCodes: LabelCodes,
    private readonly ledger: Ledger,
    private readonly holds: ArrivedHolds,
  ) {}

  /**
   * The products must be locked.
   * @param lines of which anything is here
   * @throws Problem not-found for a place or person of another studio, or wrong-state for one that is no longer here
   */
  async put(
    transaction: Transaction,
    lines: readonly ArrivedLine[],
    arrivedAt: string,
  ): Promise<PutAwayGoods[]> {
    if (lines.length === 0) return [];
    await this.places.checkPlaces(
      transaction,
      lines.flatMap(({ said }) => said.placeId ?? []),
    );
    await this.places.checkOwners(
      transaction,
      lines.flatMap(({ said }) => said.ownerId ?? []),
    );
    const arriving = lines.map(asArriving);
    const lots = await this.lots.decide(transaction, arriving, 'transfer');
    await this.lots.write(transaction, lots);
    const labelCodes = await this.labelCodes.make(
      transaction,
      lines.reduce((sum, { containers }) => sum + containers.length, 0),
    );
    const goods = lines.map((line, index): PutAwayGoods => {
      const lot = lots[index];
      if (!lot) throw new Error(`Line ${line.lineNumber} has no lot.`);
      const made = intoContainers(line.became.arrived, line.containers).map(
        (came): MadeContainer => ({
          ...came,
          container: newContainer(transaction, line, lot.lot.id, labelCodes.pop() ?? '', arrivedAt),
          movementId: came.came.pieces === 0 ? null : uuidv7(),
        }),
      );
      return { line, lot, made, warnings: arriving[index]?.warnings ?? [] };
    });
    await transaction.insert(
      Container,
      goods.flatMap(({ made }) => made.map(({ container }) => container)),
    );
    await this.ledger.book(
      transaction,
      goods.flatMap(({ line, made }) => made.flatMap((one) => bookingsOf(line, one, arrivedAt))),
    );
    await this.holds.place(
      transaction,
      goods.map(({ line, lot, made, warnings }) => ({
        line: { ...line, printed: line.sent, warnings },
        lot,
        containers: made.map(({ container }) => container),
        practice: line.sent.state === 'practice only',
        heldThere: line.sent.holds,
      })),
      arrivedAt,
    );
    await this.warnOfOtherDates(transaction, goods);
    return goods;
  }

  /** The code of a new lot that is known here with another date: a misprint, a misreading, or another batch. */
  private async warnOfOtherDates(transaction: Transaction, goods: readonly PutAwayGoods[]): Promise<void> {
    const made = goods.filter(({ lot }) => lot.isNew && lot.lot.code !== null);
    if (made.length === 0) return;
    const { studioId } = transaction;
    const codes = [...new Set(made.flatMap(({ lot }) => lot.lot.code ?? []))];
    const known = await transaction.query<{
      id: string;
      product_id: string;
      code: string;
      use_by: string | null;
    }>(
      `SELECT id, product_id, code, use_by FROM lot
       WHERE studio_id = $1 AND code IN (${placeholders(codes)}) ORDER BY created_at, id`,
      [studioId, ...codes],
    );
    for (const { lot, warnings } of made) {
      const { id, productId, code, useBy } = lot.lot;
      const other = known.find((row) => row.product_id === productId && row.code === code && row.id !== id);
      if (other === undefined) continue;
      warnings.push(
        `The code ${code} is on record here with the use-by date ${other.use_by ?? 'none printed'}, the sending studio says ${useBy ?? 'none printed'}. They are kept as two lots; compare with the package, and correct the one that is wrong.`,
      );
    }
  }
}

/** A code that is known here with another date makes another lot: what arrived is recorded whatever the record says. */
function asArriving({ lineNumber, sent }: ArrivedLine): ArrivingLine {
  return {
    lineNumber,
    product: { id: sent.productId },
    printed: sent,
    dto: { sameCodeDecision: 'separate lot' },
    warnings: [],
  };
}

function newContainer(
  { studioId }: Transaction,
  { sent, said }: ArrivedLine,
  lotId: string,
  labelCode: string,
  receivedAt: string,
): Container {
  const { form, state, openedAt, usableThrough } = sent;
  return {
    ...{ studioId, lotId, form, labelCode, state, openedAt, usableThrough, receivedAt },
    id: uuidv7(),
    placeId: said.placeId ?? '',
    ownerId: said.ownerId ?? null,
    // Whoever opened it is a person of the other studio.
    openedBy: null,
    endedAt: null,
    openingToldAt: null,
    endedFrom: null,
    version: 1,
  };
}

function bookingsOf(
  { sent }: ArrivedLine,
  { container, came, surplusPieces, movementId }: MadeContainer,
  occurredAt: string,
): Booking[] {
  const into = { lotId: container.lotId, containerId: container.id, occurredAt };
  return [
    ...(movementId === null
      ? []
      : [
          {
            ...into,
            ...came,
            id: movementId,
            kind: 'transferred in' as const,
            reason: `from ${sent.labelCode} of another studio`,
          },
        ]),
    {
      ...into,
      kind: 'adjusted',
      pieces: surplusPieces,
      microlitres: 0,
      reason: moreThanSent,
    },
  ];
}
