import type { DaySpan, LotScope, LotTerm, ScopeItem } from '../../stock/lot-matching/lot-scope.js';

/** So many lots of a product are written out; a notice may name thousands. */
const mostTerms = 60;

/**
 * What a scope is about, a sentence a product, in English.
 * @param products names of products of the register by their ids; those that were chosen are named so
 */
export function scopeWords(scope: LotScope, products: ReadonlyMap<string, string>): string[] {
  return scope.items.map((item) => {
    const limits = item.openEnded ? ', and lots beyond those named' : '';
    return `${productWords(item, products)}: ${lotsWords(item.lots)}${limits}.`;
  });
}

function productWords(
  { makerName, productName, shade, gtins, productIds }: ScopeItem,
  products: ReadonlyMap<string, string>,
): string {
  if (productIds.length > 0) {
    const chosen = productIds.map((id) => products.get(id) ?? `the product ${id}`);
    return `${chosen.join(' and ')}, chosen from the register`;
  }
  const named = [productName, shade].filter((part) => part !== null).join(' ');
  const of = makerName === null ? '' : ` by ${makerName}`;
  const product =
    named !== ''
      ? `${named}${of}`
      : makerName !== null
        ? `Any product${of}`
        : gtins.length > 0
          ? 'The product named by number'
          : 'Any product';
  return gtins.length === 0 ? product : `${product} (GTIN ${gtins.join(', ')})`;
}

function lotsWords(lots: readonly LotTerm[]): string {
  if (lots.length === 0) return 'no lots are named, so each may be meant';
  const written = lots.slice(0, mostTerms).map(termWords).join('; ');
  return lots.length > mostTerms ? `${written}; and ${lots.length - mostTerms} more` : written;
}

function termWords(term: LotTerm): string {
  switch (term.kind) {
    case 'all lots':
      return 'all lots';
    case 'code':
      return `lot ${term.code}${ofUseBy(term.useBy)}`;
    case 'code range':
      return `lots ${term.from} through ${term.through}${ofUseBy(term.useBy)}`;
    case 'use-by':
      return `lots with a use-by date ${spanWords(term.useBy)}`;
    case 'manufactured':
      return `lots manufactured ${spanWords(term.manufactured)}`;
  }
}

function ofUseBy(span: DaySpan | null): string {
  return span === null ? '' : ` (use by ${spanWords(span)})`;
}

function spanWords({ from, through }: DaySpan): string {
  if (from !== null && from === through) return `of ${from}`;
  if (from === null) return through === null ? 'of any day' : `up to ${through}`;
  return through === null ? `from ${from}` : `from ${from} through ${through}`;
}
