import type { NoticeReading } from '../../../recalls/notice-reading/notice-reading.js';
import type { LotScope, LotTerm, ScopeItem } from '../../../stock/lot-matching/lot-scope.js';

/** Lots as they are being settled, and which words of the notice they were read from. */
export interface TermDraft {
  key: string;
  term: LotTerm;
  /** Index of the part of the reading; null: a person entered it. */
  part: number | null;
}

/** One product of a scope as it is being settled. */
export interface ItemDraft {
  key: string;
  makerName: string;
  productName: string;
  shade: string;
  /** As typed, apart by commas or spaces. */
  gtins: string;
  productIds: string[];
  lots: TermDraft[];
  openEnded: boolean;
  /** It was read so: whoever takes it away is told what that means. */
  wasOpenEnded: boolean;
}

/** Keys are counted on, so that what is typed into one entry never turns up in another. */
let counted = 0;
const newKey = () => {
  counted += 1;
  return `k${counted}`;
};

export const emptyItem = (): ItemDraft => ({
  key: newKey(),
  makerName: '',
  productName: '',
  shade: '',
  gtins: '',
  productIds: [],
  lots: [],
  openEnded: false,
  wasOpenEnded: false,
});

/** What a reading proposes, with the words that each of its lots was read from. */
export function draftOfReading({ scope, parts }: Pick<NoticeReading, 'scope' | 'parts'>): ItemDraft[] {
  const partOf = new Map<string, number>();
  for (const [index, { targets }] of parts.entries()) {
    for (const { item, lot } of targets) {
      const key = `${item} ${lot}`;
      if (lot !== null && !partOf.has(key)) partOf.set(key, index);
    }
  }
  return draftOf(scope, (item, lot) => partOf.get(`${item} ${lot}`) ?? null);
}

export function draftOf(
  scope: LotScope,
  partOf: (item: number, lot: number) => number | null = () => null,
): ItemDraft[] {
  return scope.items.map((item, index) => ({
    key: newKey(),
    makerName: item.makerName ?? '',
    productName: item.productName ?? '',
    shade: item.shade ?? '',
    gtins: item.gtins.join(', '),
    productIds: [...item.productIds],
    lots: item.lots.map((term, lot) => ({ key: newKey(), term, part: partOf(index, lot) })),
    openEnded: item.openEnded,
    wasOpenEnded: item.openEnded,
  }));
}

export function scopeOf(items: readonly ItemDraft[]): LotScope {
  return { items: items.map(itemOf) };
}

function itemOf({ makerName, productName, shade, gtins, productIds, lots, openEnded }: ItemDraft): ScopeItem {
  return {
    makerName: said(makerName),
    productName: said(productName),
    shade: said(shade),
    gtins: gtinsOf(gtins),
    productIds: [...productIds],
    lots: lots.map(({ term }) => term),
    openEnded,
  };
}

const said = (text: string) => (text.trim() === '' ? null : text.trim());

/** Shorter numbers are filled up with zeros to 14 digits, as GS1 has it; what is no number is left as it was typed. */
export function gtinsOf(typed: string): string[] {
  const found = typed.split(/[\s,;]+/).filter((one) => one !== '');
  return [...new Set(found.map((one) => (/^\d{8,13}$/.test(one) ? one.padStart(14, '0') : one)))];
}

/** Codes as they are pasted: one a line, or apart by commas or semicolons. Spaces inside of a code stay. */
export function codesOf(typed: string): string[] {
  const found = typed.split(/[\n\r,;]+/).map((one) => one.trim());
  return [...new Set(found.filter((one) => one !== ''))];
}

/** Whether it says anything that could be looked for; "all lots" of nothing in particular would be the whole shelf. */
export function saysSomething({
  makerName,
  productName,
  shade,
  gtins,
  productIds,
  lots,
}: ItemDraft): boolean {
  return (
    productIds.length > 0 ||
    lots.some(({ term }) => term.kind !== 'all lots') ||
    [makerName, productName, shade, gtins].some((one) => one.trim() !== '')
  );
}

export function newTerms(terms: readonly LotTerm[]): TermDraft[] {
  return terms.map((term) => ({ key: newKey(), term, part: null }));
}
