import type { ProductFacts } from '../../stock/lot-matching/lot-facts.js';
import type { DaySpan, LotScope, LotTerm } from '../../stock/lot-matching/lot-scope.js';
import { matchProduct } from '../../stock/lot-matching/product-match.js';

/** What of a product is put on hold as soon as it arrives. */
export type CaughtOnArrival =
  | { lots: 'every' }
  /** The lots as they are named. */
  | { lots: 'some'; named: string[] }
  | { lots: 'none' };

/** More names would hide the others. */
const mostNamed = 20;

/** What standing holds will catch of what comes of a product: every lot where one of them names none, or not only some. */
export function caughtOnArrival(scopes: readonly LotScope[], product: ProductFacts): CaughtOnArrival {
  const named = new Set<string>();
  for (const { items } of scopes) {
    for (const item of items) {
      const { grade } = matchProduct(item, product);
      if (grade === 'not') continue;
      // A product that is only a little alike is meant by codes and ranges alone.
      const terms = grade === 'slight' ? item.lots.filter(hasCode) : item.lots;
      if (grade !== 'slight') {
        const isLimited = terms.length > 0 && !item.openEnded;
        if (!isLimited || terms.some(({ kind }) => kind === 'all lots')) return { lots: 'every' };
      }
      for (const term of terms) named.add(nameOf(term));
    }
  }
  if (named.size === 0) return { lots: 'none' };
  return { lots: 'some', named: [...named].slice(0, mostNamed) };
}

function hasCode({ kind }: LotTerm): boolean {
  return kind === 'code' || kind === 'code range';
}

function nameOf(term: LotTerm): string {
  switch (term.kind) {
    case 'all lots':
      return '*';
    case 'code':
      return term.code;
    case 'code range':
      return `${term.from}–${term.through}`;
    case 'use-by':
      return spanName(term.useBy);
    case 'manufactured':
      return spanName(term.manufactured);
  }
}

function spanName({ from, through }: DaySpan): string {
  return from === through ? (from ?? '*') : `${from ?? '…'}–${through ?? '…'}`;
}
