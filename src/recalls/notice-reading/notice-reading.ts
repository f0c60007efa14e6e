import type { LotScope } from '../../stock/lot-matching/lot-scope.js';
import { foldText, spanOf, type TextSpan } from './folded-text.js';

/** What a stretch of a notice was read as. */
export type ReadPartKind =
  | 'maker'
  | 'product'
  | 'shade'
  | 'gtin'
  | 'code'
  | 'code range'
  | 'use-by'
  | 'manufactured'
  | 'all lots'
  | 'open-ended'
  | 'reference'
  | 'issued on'
  | 'classification'
  | 'risk'
  | 'remedy';

/** What a part says in the scope: an item, and one of its lots; null: the item itself (its names, or that it is open-ended). */
export interface PartTarget {
  item: number;
  lot: number | null;
}

/** A stretch of the notice and what it was read as. */
export interface ReadPart {
  kind: ReadPartKind;
  /** In the text as it was given. */
  span: TextSpan;
  /** As read: a code, `from – through`, days as ISO `YYYY-MM-DD/YYYY-MM-DD`, 14 digits, a name, a sentence. */
  value: string;
  /** Empty: it speaks of the notice as a whole. */
  targets: PartTarget[];
}

/** What a person must look at. The sentence is English; the code and the facts let a page say it in another language. */
export interface NoticeRemark {
  code: NoticeRemarkCode;
  /** Null: it is about the notice as a whole. */
  span: TextSpan | null;
  facts: RemarkFacts;
  message: string;
}

export type NoticeRemarkCode = 'nothing read' | 'text cut' | 'too many terms';

export interface RemarkFacts {
  /** As it is written, cut to 80 characters. */
  seen?: string;
  readAs?: string;
  /** What else it could mean. */
  otherReadings?: string[];
  count?: number;
  allowed?: number;
}

/** A product of the register whose names and numbers are looked for in the text. */
export interface KnownProduct {
  productId: string;
  makerName: string;
  productName: string;
  shade: string | null;
  /** 14 digits each. */
  gtins: string[];
}

export interface ReadingOptions {
  /** YYYY-MM-DD; its year decides the century of years of two digits. */
  today: string;
  knownProducts?: readonly KnownProduct[];
}

/** A proposal: nothing counts before a person has looked at it. */
export interface NoticeReading {
  /** At least one item. */
  scope: LotScope;
  /** In the order of the text. */
  parts: ReadPart[];
  remarks: NoticeRemark[];
  /** The number under which the notice is filed. */
  reference: string | null;
  /** YYYY-MM-DD. */
  issuedOn: string | null;
  /** As it is written, such as "Class II". */
  classification: string | null;
  /** The sentences that say what the danger is and what to do. */
  risk: string | null;
  remedy: string | null;
}

/** A longer text is read up to here, and the scope is then open-ended. */
export const maximumNoticeCharacters = 1_048_576;
/** Lots beyond these are not listed; the scope is then open-ended. */
export const maximumTerms = 5_000;

/** Reads a notice and proposes which lots it means. Never throws; what is unsure is read wider, and remarked. */
export function readNotice(text: string, _options: ReadingOptions): NoticeReading {
  const folded = foldText(text.slice(0, maximumNoticeCharacters));
  const reading: NoticeReading = {
    scope: { items: [] },
    parts: [],
    remarks: [],
    reference: null,
    issuedOn: null,
    classification: null,
    risk: null,
    remedy: null,
  };
  const item: LotScope['items'][number] = {
    makerName: null,
    productName: null,
    shade: null,
    gtins: [],
    productIds: [],
    lots: [],
    openEnded: text.length > maximumNoticeCharacters,
  };
  reading.scope.items.push(item);
  const add = (kind: ReadPartKind, start: number, end: number, value: string, lot: number | null): void => {
    reading.parts.push({ kind, span: spanOf(folded, start, end), value, targets: [{ item: 0, lot }] });
  };
  for (const match of folded.text.matchAll(/\b(?:lots?|batch(?:es)?)\b(?: numbers?| no\.?)?[ #:]*/gi)) {
    const list = /(?:[A-Z0-9][A-Z0-9./-]{0,40}(?:, ?| and )?)+/y;
    list.lastIndex = match.index + match[0].length;
    const found = list.exec(folded.text);
    for (const code of found?.[0].matchAll(/[A-Z0-9][A-Z0-9./-]*/g) ?? []) {
      if (item.lots.length >= maximumTerms || found === null) break;
      item.lots.push({ kind: 'code', code: code[0], useBy: null });
      const start = found.index + code.index;
      add('code', start, start + code[0].length, code[0], item.lots.length - 1);
    }
  }
  for (const match of folded.text.matchAll(/\ball (?:lots|batches|products)\b/gi)) {
    item.lots.push({ kind: 'all lots' });
    add('all lots', match.index, match.index + match[0].length, match[0], item.lots.length - 1);
  }
  for (const match of folded.text.matchAll(/\bnot limited to\b/gi)) {
    item.openEnded = true;
    add('open-ended', match.index, match.index + match[0].length, match[0], null);
  }
  if (item.lots.length === 0) {
    reading.remarks.push({
      code: 'nothing read',
      span: null,
      facts: {},
      message:
        'No lot was read in the notice, so that each lot may be meant. Read it and enter what it names.',
    });
  }
  return reading;
}
