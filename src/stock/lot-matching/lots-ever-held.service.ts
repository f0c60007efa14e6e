import { Injectable } from '@nestjs/common';
import type { Read } from '../../platform/database/database.js';
import { LotGrader } from './grade-lot.js';
import type { LotFacts, ProductFacts } from './lot-facts.js';
import { LotFactsReader } from './lot-facts.service.js';
import type { LotScope } from './lot-scope.js';
import type { MatchReason } from './match-reasons.js';

/** So many codes of lots are looked for in one question. */
const mostCodesAskedFor = 500;

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
  /** Products so unlike what is named that only their lots of these codes may be meant. */
  byCodeOnly: { products: ReadonlyMap<string, ProductFacts>; codes: readonly string[] };
}

/**
 * Grades every lot a studio ever held against what a notice is about, however it came and whatever has become of it. Blends
 * are not graded: a hold on a lot reaches them. Products are compared first, so that only the lots of those are read that
 * may be meant.
 */
@Injectable()
export class LotsEverHeld {
  constructor(private readonly facts: LotFactsReader) {}

  /** @returns the oldest first, those of products that are only slightly like what is named after the others */
  async graded(read: Read, chainId: string, studioId: string, scope: LotScope): Promise<GradedLot[]> {
    return this.gradedIn(read, studioId, this.prepared(await this.register(read, chainId), scope));
  }

  /** The products of a chain, to be read once however many scopes are asked for. */
  register(read: Read, chainId: string): Promise<ReadonlyMap<string, ProductFacts>> {
    return this.facts.products(read, chainId);
  }

  /** A scope made ready once for all studios of a chain. */
  prepared(products: ReadonlyMap<string, ProductFacts>, scope: LotScope): ScopeInChain {
    const grader = new LotGrader(scope);
    const meant = new Map<string, ProductFacts>();
    const unlike = new Map<string, ProductFacts>();
    const codes = new Set<string>();
    for (const [id, product] of products) {
      if (!grader.mayMean(product)) continue;
      const needed = grader.codesNeeded(product);
      (needed === null ? meant : unlike).set(id, product);
      for (const code of needed ?? []) codes.add(code);
    }
    // Thousands of codes are soon compared, and not soon asked for.
    if (codes.size > mostCodesAskedFor) {
      return {
        grader,
        products: new Map([...meant, ...unlike]),
        byCodeOnly: { products: new Map(), codes: [] },
      };
    }
    return { grader, products: meant, byCodeOnly: { products: unlike, codes: [...codes] } };
  }

  /** As `graded`, with a scope made ready; where it may mean no product, nothing is asked. */
  async gradedIn(
    read: Read,
    studioId: string,
    { grader, products, byCodeOnly }: ScopeInChain,
  ): Promise<GradedLot[]> {
    const lots = await this.facts.lots(read, studioId, products);
    if (byCodeOnly.products.size > 0 && byCodeOnly.codes.length > 0) {
      const ids = await this.facts.lotsOfCodes(read, studioId, byCodeOnly.codes);
      if (ids.length > 0) lots.push(...(await this.facts.lots(read, studioId, byCodeOnly.products, ids)));
    }
    return lots.flatMap((lot) => {
      const { grade, itemIndex, reasons } = grader.grade(lot);
      return grade === 'not' || itemIndex === null ? [] : [{ ...lot, grade, itemIndex, reasons }];
    });
  }
}
