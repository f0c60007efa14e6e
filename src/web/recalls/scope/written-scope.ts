import type { DaySpan, LotScope, LotTerm, ScopeItem } from '../../../stock/lot-matching/lot-scope.js';
import type { Texts } from '../../texts/en/english.js';
import { writtenDay } from '../../texts/written-dates.js';

/** More are only counted. */
const mostTerms = 40;

/** Days as they are read: `1 Oct 2015 – 31 Oct 2015`, or open at one side. */
export function writtenSpan({ from, through }: DaySpan, texts: Texts): string {
  const { words } = texts.scope;
  const day = (one: string) => writtenDay(one, texts.language);
  if (from !== null && through !== null) {
    return from === through ? day(from) : words.fromThrough(day(from), day(through));
  }
  if (from !== null) return words.from(day(from));
  return through === null ? '' : words.through(day(through));
}

/** Which lots, in words: `07110002 through 07110009, use-by 1 Oct 2015 – 31 Oct 2015`. */
export function writtenTerm(term: LotTerm, texts: Texts): string {
  const { words } = texts.scope;
  switch (term.kind) {
    case 'all lots':
      return words.allLots;
    case 'use-by':
      return words.usable(writtenSpan(term.useBy, texts));
    case 'manufactured':
      return words.made(writtenSpan(term.manufactured, texts));
    default: {
      const codes = term.kind === 'code' ? term.code : words.codeRange(term.from, term.through);
      return term.useBy === null ? codes : `${codes}, ${words.usable(writtenSpan(term.useBy, texts))}`;
    }
  }
}

/** What a product of a scope is called. @param productNames of those that were chosen of the register, where they are known */
export function nameOfItem(
  { makerName, productName, shade, gtins }: Pick<ScopeItem, 'makerName' | 'productName' | 'shade' | 'gtins'>,
  texts: Texts,
  productNames: readonly string[] = [],
): string {
  const { words } = texts.scope;
  if (productNames.length > 0) return productNames.join(', ');
  const named = [makerName, productName].filter((one) => one !== null).join(' ');
  const parts = [
    ...(named === '' ? [] : [named]),
    ...(shade === null ? [] : [words.shade(shade)]),
    ...(named === '' || gtins.length === 1 ? gtins.slice(0, 3).map(words.gtin) : []),
  ];
  return parts.length === 0 ? words.anyProduct : parts.join(', ');
}

/** Which lots of a product, in words. */
export function writtenLots(
  { lots, openEnded }: Pick<ScopeItem, 'lots' | 'openEnded'>,
  texts: Texts,
): string {
  const { words } = texts.scope;
  const shown = lots.slice(0, mostTerms).map((term) => writtenTerm(term, texts));
  const said =
    lots.length === 0
      ? [words.anyLots]
      : [...shown, ...(lots.length > mostTerms ? [words.more(lots.length - mostTerms)] : [])];
  return [...said, ...(openEnded ? [words.openEnded] : [])].join('; ');
}

/** A scope as one text, a line for each product: what is kept where there was no text of a notice. */
export function writtenScope(scope: LotScope, texts: Texts): string {
  return scope.items.map((item) => `${nameOfItem(item, texts)}: ${writtenLots(item, texts)}`).join('\n');
}
