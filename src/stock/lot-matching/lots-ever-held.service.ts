import { Injectable } from '@nestjs/common';
import type { Read } from '../../platform/database/database.js';
import type { LotFacts } from './lot-facts.js';
import type { LotScope } from './lot-scope.js';
import type { MatchReason } from './match-reasons.js';

export interface GradedLot extends LotFacts {
  grade: 'certain' | 'possible';
  itemIndex: number;
  reasons: MatchReason[];
}

/** PLACEHOLDER by the lead, so that the tree compiles: the matching engineer replaces this file. */
@Injectable()
export class LotsEverHeld {
  async graded(_read: Read, _chainId: string, _studioId: string, _scope: LotScope): Promise<GradedLot[]> {
    throw new Error('not built yet');
  }
}
