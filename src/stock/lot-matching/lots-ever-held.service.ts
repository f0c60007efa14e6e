import { Injectable } from '@nestjs/common';
import type { Read } from '../../platform/database/database.js';
import { LotGrader } from './grade-lot.js';
import type { LotFacts, ProductFacts } from './lot-facts.js';
import { LotFactsReader } from './lot-facts.service.js';
import type { LotScope } from './lot-scope.js';
import type { MatchReason } from './match-reasons.js';

/** A lot that a notice means or may mean. */
export interface GradedLot extends LotFacts {
  grade: 'certain' | 'possible';
  itemIndex: number;
  reasons: MatchReason[];
}

/** A scope whose products were looked up in a chain's register, to be asked of each of its studios. */
export interface ScopeInChain {
  grader: LotGrader;
  products: ReadonlyMap<string, ProductFacts>;
}

/**
 * Grades every lot a studio ever held against what a notice is about, however it came and whatever has become of it. Blends
 * are not graded: a hold on a lot reaches them. Products are compared first, so that only the lots of those are read that
 * may be meant.
 */
@Injectable()
export class LotsEverHeld {
  constructor(private readonly facts: LotFactsReader) {}

  /** @returns the oldest first */
  async graded(read: Read, chainId: string, studioId: string, scope: LotScope): Promise<GradedLot[]> {
    return this.gradedIn(read, studioId, await this.inChain(read, chainId, scope));
  }

  /** The scope made ready once for all studios of a chain. */
  async inChain(read: Read, chainId: string, scope: LotScope): Promise<ScopeInChain> {
    const grader = new LotGrader(scope);
    const products = await this.facts.products(read, chainId);
    return { grader, products: new Map([...products].filter(([, product]) => grader.mayMean(product))) };
  }

  /** As `graded`, with a scope made ready. */
  async gradedIn(read: Read, studioId: string, { grader, products }: ScopeInChain): Promise<GradedLot[]> {
    const lots = await this.facts.lots(read, studioId, products);
    return lots.flatMap((lot) => {
      const { grade, itemIndex, reasons } = grader.grade(lot);
      return grade === 'not' || itemIndex === null ? [] : [{ ...lot, grade, itemIndex, reasons }];
    });
  }
}
