import type { LotScope } from '../../../stock/lot-matching/lot-scope.js';
import type { Texts } from '../../texts/en/english.js';
import { nameOfItem, writtenTerm } from '../scope/written-scope.js';

const longest = 120;
const mostTerms = 3;

/** What a recall is called until a person calls it otherwise: the product, and its lots when they are few. */
export function titleOfScope({ items }: LotScope, texts: Texts): string {
  const [first, ...others] = items;
  if (first === undefined) return '';
  const { words } = texts.scope;
  const name = nameOfItem(first, texts);
  const lots = first.lots
    .slice(0, mostTerms)
    .map((term) => writtenTerm(term, texts))
    .join(', ');
  const more = others.length + Math.max(0, first.lots.length - mostTerms);
  const title = [lots === '' ? name : `${name}: ${lots}`, ...(more > 0 ? [words.more(more)] : [])].join(', ');
  return title.length > longest ? `${title.slice(0, longest - 1).trimEnd()}…` : title;
}
