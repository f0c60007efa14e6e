import { randomBytes } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import { labelCodeRandomBytes, makeLabelCode } from '../catalogue/own-label.js';
import type { Transaction } from '../platform/database/transaction.js';

const codesPerLookUp = 500;

/** Codes for Lotward's own labels, none of which the studio has used before. */
@Injectable()
export class LabelCodes {
  async make(transaction: Transaction, count: number): Promise<string[]> {
    const codes = new Set<string>();
    while (codes.size < count) {
      const fresh = new Set<string>();
      while (fresh.size < Math.min(codesPerLookUp, count - codes.size)) {
        const code = makeLabelCode(randomBytes(labelCodeRandomBytes));
        if (!codes.has(code)) fresh.add(code);
      }
      const candidates = [...fresh];
      const taken = await transaction.query<{ label_code: string }>(
        `SELECT label_code FROM container WHERE studio_id = $1
           AND label_code IN (${candidates.map((_, index) => `$${index + 2}`).join(', ')})`,
        [transaction.studioId, ...candidates],
      );
      for (const { label_code } of taken) fresh.delete(label_code);
      for (const code of fresh) codes.add(code);
    }
    return [...codes];
  }
}
