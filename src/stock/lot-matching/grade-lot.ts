import type { LotFacts, ProductFacts } from './lot-facts.js';
import type { LotScope, MatchGrade, ScopeItem } from './lot-scope.js';
import { type LotTermsMatcher, lotTermsMatcher } from './lot-terms.js';
import type { MatchReason } from './match-reasons.js';
import { matchProduct, type ProductMatch } from './product-match.js';

export interface LotGrade {
  grade: MatchGrade;
  /** The item of the scope by which it is meant; null when it is not. */
  itemIndex: number | null;
  /** Why, of the product and of the lot. */
  reasons: MatchReason[];
}

/**
 * Grades one lot against what a notice is about: the best grade that any of its items gives it, the first of equals.
 *
 * Nothing that is certain is ever less, and what is in doubt is possible, never not: a person decides.
 */
export function gradeLot(scope: LotScope, lot: LotFacts): LotGrade {
  return new LotGrader(scope).grade(lot);
}

/**
 * Grades many lots against one scope: a product is compared once, and thousands of codes cost little more than one.
 * Products of one id must have the same facts each time.
 */
export class LotGrader {
  private readonly items: { item: ScopeItem; matchLot: LotTermsMatcher }[];
  private readonly products = new Map<string, ProductMatch[]>();

  constructor({ items }: LotScope) {
    this.items = items.map((item) => ({ item, matchLot: lotTermsMatcher(item) }));
  }

  /** Whether any lot of a product can be more than not. */
  mayMean(product: ProductFacts): boolean {
    return this.matchesOf(product).some(({ grade }) => grade !== 'not');
  }

  /**
   * The codes of which a lot of this product must bear one to be more than not, as they are named; null: it need not, or
   * ranges are named too.
   */
  codesNeeded(product: ProductFacts): string[] | null {
    const needed: string[] = [];
    for (const [index, { grade }] of this.matchesOf(product).entries()) {
      if (grade === 'not') continue;
      if (grade !== 'slight') return null;
      for (const term of this.items[index]?.item.lots ?? []) {
        if (term.kind === 'code range') return null;
        if (term.kind === 'code') needed.push(term.code);
      }
    }
    return needed;
  }

  grade(lot: LotFacts): LotGrade {
    const products = this.matchesOf(lot);
    let best: LotGrade | undefined;
    let nearest: MatchReason[] | undefined;
    for (const [itemIndex, { matchLot }] of this.items.entries()) {
      const product = products[itemIndex];
      if (product === undefined) continue;
      const { grade, reasons } = together(product, () => matchLot(lot));
      if (grade === 'certain') return { grade, itemIndex, reasons };
      if (grade === 'possible') best ??= { grade, itemIndex, reasons };
      else if (product.grade !== 'not') nearest ??= reasons;
    }
    const reasons = nearest ?? products.slice(0, 1).map(({ reason }) => reason);
    return best ?? { grade: 'not', itemIndex: null, reasons };
  }

  private matchesOf(product: ProductFacts): ProductMatch[] {
    const known = this.products.get(product.productId);
    if (known) return known;
    const matches = this.items.map(({ item }) => matchProduct(item, product));
    this.products.set(product.productId, matches);
    return matches;
  }
}

function together(
  product: ProductMatch,
  lotMatch: () => ReturnType<LotTermsMatcher>,
): Pick<LotGrade, 'grade' | 'reasons'> {
  if (product.grade === 'not') return { grade: 'not', reasons: [product.reason] };
  const lot = lotMatch();
  const reasons = [product.reason, ...lot.reasons];
  if (product.grade === 'slight') {
    if (lot.byCode === null) return { grade: 'not', reasons };
    return { grade: 'possible', reasons: [product.reason, lot.byCode] };
  }
  return {
    grade: product.grade === 'certain' ? lot.grade : lot.grade === 'not' ? 'not' : 'possible',
    reasons,
  };
}
