import type { LotScope, ScopeItem } from '../../stock/lot-matching/lot-scope.js';
import type { TextSpan } from '../notice-reading/folded-text.js';
import type { NoticeReading, ReadPart, RemarkFacts } from '../notice-reading/notice-reading.js';
import { inOneLine, type NoticeRecord, type RecordProduct, saysUnknown } from './notice-record.js';

/** What a notice of a file says and is about. A proposal: nothing counts before a person has looked at it. */
export interface NoticeProposal {
  scope: LotScope;
  /** Stretches of its text and what they were read as; none where fields of their own said all. */
  parts: ReadPart[];
  remarks: { code: string; span: TextSpan | null; facts: RemarkFacts; message: string }[];
  reference: string | null;
  issuer: string | null;
  issuedOn: string | null;
  classification: string | null;
  risk: string | null;
  remedy: string | null;
}

/** So many characters of what it says are proposed, as many as a recall takes; the text has all. */
const longestName = 300;
const longestReference = 200;
const longestClassification = 100;
const longestSentences = 5_000;

/** Whether lots are to be read in the text, since no field is for them alone. */
export function needsReading({ products }: NoticeRecord): boolean {
  return products.some(({ lots }) => lots === null);
}

/**
 * Puts together what the fields of a record say and what its text was read as. Fields win where both say something, for
 * somebody wrote them apart; lots of the text are taken as they were read, never fewer.
 * @param reading of the record's text; null where it needs none
 */
export function proposalOf(record: NoticeRecord, reading: NoticeReading | null): NoticeProposal {
  const items = record.products.flatMap((product) =>
    product.lots !== null || reading === null
      ? [itemOf(product)]
      : reading.scope.items.map((item) => withFields(item, product, reading.scope.items.length === 1)),
  );
  const remarks = record.remarks.map((remark) => ({ ...remark, span: null, facts: {} }));
  return {
    scope: { items },
    parts: reading?.parts ?? [],
    remarks: [...remarks, ...(reading?.remarks ?? [])],
    reference: said(record.reference ?? reading?.reference, longestReference),
    issuer: said(record.issuer, longestName),
    issuedOn: record.issuedOn ?? reading?.issuedOn ?? null,
    classification: said(record.classification ?? reading?.classification, longestClassification),
    risk: said(record.risk ?? reading?.risk, longestSentences),
    remedy: said(record.remedy ?? reading?.remedy, longestSentences),
  };
}

function itemOf({ makerName, productName, shade, gtins, lots, openEnded }: RecordProduct): ScopeItem {
  return {
    makerName: said(makerName, longestName),
    productName: said(productName, longestName),
    shade: said(shade, longestName),
    gtins,
    productIds: [],
    lots: lots ?? [],
    openEnded,
  };
}

/** @param isOnly the text was read as one product, so that the fields speak of it */
function withFields(item: ScopeItem, product: RecordProduct, isOnly: boolean): ScopeItem {
  const fields = itemOf(product);
  const named = (own: string | null, read: string | null) =>
    (isOnly ? own : null) ?? (read !== null && saysUnknown(read) ? null : read) ?? own;
  return {
    ...item,
    makerName: named(fields.makerName, item.makerName),
    productName: named(fields.productName, item.productName),
    shade: named(fields.shade, item.shade),
    gtins: isOnly ? [...new Set([...fields.gtins, ...item.gtins])] : item.gtins,
    openEnded: item.openEnded || fields.openEnded,
  };
}

function said(text: string | null | undefined, mostCharacters: number): string | null {
  return inOneLine(text ?? '', mostCharacters);
}
