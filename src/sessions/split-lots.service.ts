import { Injectable } from '@nestjs/common';
import { Alerts } from '../alerts/alerts.service.js';
import { ProductRegister } from '../catalogue/product-register.service.js';
import type { Transaction } from '../platform/database/transaction.js';
import type { Lot } from '../stock/lot.entity.js';
import type { LotOnRecord } from './written-lot-match.js';

export const sameCodeOtherUseBy = 'same code, other use-by';

/** A lot that a record made, though its code is on record with another use-by date. */
export interface SplitLot {
  lot: Lot;
  sisters: readonly LotOnRecord[];
}

/** Tells of lots that a record split off under a code that is known. */
@Injectable()
export class SplitLots {
  constructor(
    private readonly register: ProductRegister,
    private readonly alerts: Alerts,
  ) {}

  /** Recording does not refuse; that a lot was split is told to whoever recorded it, and stays open until it is seen to. */
  async tell(transaction: Transaction, splits: readonly SplitLot[]): Promise<string[]> {
    if (splits.length === 0) return [];
    const names = await this.register.names(
      transaction.read,
      transaction.actor.chainId,
      splits.map(({ lot }) => lot.productId),
    );
    await this.alerts.raise(
      transaction,
      splits.map(({ lot, sisters }) => {
        const name = names.get(lot.productId);
        return {
          kind: sameCodeOtherUseBy,
          subjectKind: 'lot',
          subjectId: lot.id,
          severity: 'warning',
          facts: {
            product: name?.productName ?? null,
            shade: name?.shade ?? null,
            maker: name?.makerName ?? null,
            lotCode: lot.code,
            useBy: lot.useBy,
            otherUseBy: sisters.map(({ useBy }) => useBy ?? 'none printed'),
            sisterLotIds: sisters.map(({ lotId }) => lotId),
          },
        };
      }),
    );
    return splits.map(({ lot, sisters }) => {
      const recorded = sisters.map(({ lotId, useBy }) => `${useBy ?? 'none printed'} (lot ${lotId})`);
      return `The code ${lot.code} is on record with the use-by ${recorded.join(', ')}, but ${lot.useBy ?? 'none'} was written down. It was recorded as a lot of its own; compare with the label, and correct the date of whichever is wrong.`;
    });
  }
}
