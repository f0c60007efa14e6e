import type { DaySpan, LotScope, LotTerm, ScopeItem } from '../../stock/lot-matching/lot-scope.js';

/** So many lots of a product are written out; a notice may name thousands. */
const mostTerms = 60;

/** What a scope is about, a sentence a product, in English. */
export function scopeWords(scope: LotScope): string[] {
  return scope.items.map(itemWords);
}

function itemWords({ makerName, productName, shade, gtins, productIds, lots, openEnded }: ScopeItem): string {
  const named = [productName, shade].filter((part) => part !== null).join(' ');
  const of = makerName === null ? '' : ` by ${makerName}`;
  const product =
    named !== ''
      ? `${named}${of}`
      : makerName !== null
        ? `Any product${of}`
        : gtins.length + productIds.length > 0
          ? 'The product named by number'
          : 'Any product';
  const numbers = gtins.length === 0 ? '' : ` (GTIN ${gtins.join(', ')})`;
  const limits = openEnded ? ', and lots beyond those named' : '';
  return `${product}${numbers}: ${lotsWords(lots)}${limits}.`;
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
