import type { LotScope } from '../../stock/lot-matching/lot-scope.js';
import { type DraftItem, DraftScope, placesOf } from './draft-scope.js';
import { elementStringsIn } from './element-strings-in-text.js';
import { type FoldedText, foldText, spanOf, type TextSpan } from './folded-text.js';
import { KnownNames } from './known-names.js';
import { isStrongCode } from './lot-codes.js';
import { meantProducts } from './meant-products.js';
import { marksOf, type NoticeMarks } from './notice-marks.js';
import { nameBefore } from './notice-names.js';
import { RemarkList } from './notice-remarks.js';
import { classIn, sentencesOf } from './notice-sentences.js';
import { NoticeWalk } from './notice-walk.js';
import type { WalkResult } from './reading-state.js';
import { type Token, tokensOf } from './tokens.js';
import { looksLikeDate, orderOf } from './written-dates.js';

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

export type NoticeRemarkCode =
  | 'nothing read'
  | 'text cut'
  | 'too many terms'
  | 'too many items'
  | 'look-alike letters'
  | 'invisible marks'
  | 'control characters'
  | 'ambiguous date'
  | 'date order'
  | 'date not read'
  | 'date without a word'
  | 'date without a year'
  | 'dates turned'
  | 'several expiries'
  | 'code like a date'
  | 'code with O or I'
  | 'code with spaces'
  | 'codes parted by spaces'
  | 'code of letters'
  | 'code too long'
  | 'code apart from its word'
  | 'codes without a word'
  | 'very wide range'
  | 'range ends differ in length'
  | 'range ends differ in letters'
  | 'range turned'
  | 'range or code'
  | 'exception'
  | 'open-ended'
  | 'number not a GTIN'
  | 'symbol not valid'
  | 'name by its place'
  | 'numbering unclear'
  | 'names disagree'
  | 'manufactured beside codes'
  | 'all lots limited';

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

/** Products beyond these are not kept apart. */
export const maximumItems = 200;
/** More stretches of text than these are not marked; what they say is read all the same. */
const maximumParts = 20_000;

/** Reads a notice and proposes which lots it means. Never throws; what is unsure is read wider, and remarked. */
export function readNotice(text: string, { today, knownProducts = [] }: ReadingOptions): NoticeReading {
  const kept = text.slice(0, maximumNoticeCharacters);
  const folded = foldText(kept);
  const remarks = new RemarkList(kept);
  const tokens = tokensOf(folded.text);
  const marks = marksOf(tokens, new KnownNames(knownProducts));
  const order = orderOf(tokens);
  const foreign =
    order === null ? marks.labels.places.find((place) => marks.labels.get(place)?.dayFirst) : undefined;
  const scope = new DraftScope({ terms: maximumTerms, items: maximumItems, parts: maximumParts });
  const walk = new NoticeWalk({
    tokens,
    folded,
    marks,
    elementStrings: elementStringsIn(folded.text, today),
    scope,
    remarks,
    today,
    order: order?.order ?? (foreign === undefined ? null : 'day first'),
    namesByPlace: namesLines(tokens, marks),
  });
  const result = walk.all();
  const spanAt = (start: number, end: number): TextSpan => spanOf(folded, start, end);
  if (result.orderNeeded) {
    const because = order?.token ?? tokens[foreign ?? 0];
    if (because !== undefined) {
      const readAs = order?.order === 'month first' ? 'month first' : 'day first';
      remarks.add('date order', spanAt(because.start, because.end), { readAs });
    }
  }
  readSentences(folded.text, scope, result);
  takeCodesWithoutWord(tokens, marks, scope, remarks, spanAt);
  const items = finishedItems(scope, result);
  if (result.openEnded) for (const item of items) item.openEnded = true;
  if (text.length > maximumNoticeCharacters) {
    for (const item of items) item.openEnded = true;
    remarks.add('text cut', null, { count: text.length, allowed: maximumNoticeCharacters });
  }
  if (scope.termsLeftOut > 0)
    remarks.add('too many terms', null, { count: scope.termsLeftOut, allowed: maximumTerms });
  if (scope.itemsLeftOut > 0)
    remarks.add('too many items', null, { count: scope.itemsLeftOut, allowed: maximumItems });
  if (items.every((item) => item.terms.length === 0)) remarks.add('nothing read', null);
  remarkFoldings(folded, remarks);
  const places = placesOf(items);
  return {
    scope: scope.finish(items, (item) => chosen(item, knownProducts, remarks, spanAt)),
    parts: scope.parts
      .map((part) => ({
        kind: part.kind,
        span: spanAt(part.start, part.end),
        value: part.value,
        targets: places(part.targets),
      }))
      .sort((one, other) => one.span.start - other.span.start || one.span.end - other.span.end),
    remarks: remarks.inOrder(),
    reference: result.reference,
    issuedOn: result.issuedOn,
    classification: result.classification,
    risk: result.risk,
    remedy: result.remedy,
  };
}

/** Two lines at least begin with a name before their lots. */
function namesLines(tokens: readonly Token[], marks: NoticeMarks): boolean {
  const names = new Set<string>();
  for (const index of marks.labels.places) {
    const label = marks.labels.get(index);
    if (label?.role !== 'lot' && label?.role !== 'all lots') continue;
    const name = nameBefore(tokens, index, marks);
    if (name !== null) names.add(name.text.toLowerCase());
    if (names.size > 1) return true;
  }
  return false;
}

function readSentences(text: string, scope: DraftScope, result: WalkResult): void {
  if (result.classification === null) {
    const found = classIn(text);
    if (found !== null) {
      result.classification = text.slice(found.start, found.end);
      scope.part('classification', found.start, found.end, result.classification, []);
    }
  }
  const found = sentencesOf(text);
  for (const kind of ['risk', 'remedy'] as const) {
    if (result[kind] !== null || found[kind].length === 0) continue;
    const sentences = found[kind].map(({ start, end }) => ({
      start,
      end,
      value: text.slice(start, end).replace(/\s+/g, ' '),
    }));
    result[kind] = sentences.map(({ value }) => value).join(' ');
    for (const { start, end, value } of sentences) scope.part(kind, start, end, value, []);
  }
}

/**
 * A text without any word for lots, such as the bare content of a field: what can only be codes is taken, and since
 * naming some lots may not narrow what could be all, the scope is then open-ended.
 */
function takeCodesWithoutWord(
  tokens: readonly Token[],
  marks: NoticeMarks,
  scope: DraftScope,
  remarks: RemarkList,
  spanAt: (start: number, end: number) => TextSpan,
): void {
  const worded = marks.labels.places.some((place) => {
    const role = marks.labels.get(place)?.role;
    return role === 'lot' || role === 'all lots';
  });
  if (worded || scope.items.some((item) => item.terms.length > 0 || item.gtins.length > 0)) return;
  const [item] = scope.items;
  if (item === undefined) return;
  scope.targets = [item];
  const read = new Set(scope.parts.map(({ start }) => start));
  for (const [index, token] of tokens.entries()) {
    if (
      !isStrongCode(token) ||
      marks.labels.has(index - 1) ||
      read.has(token.start) ||
      looksLikeDate(token.text)
    )
      continue;
    const targets = scope.addTerm({ kind: 'code', code: token.text, useBy: null }, false);
    if (targets.length > 0) scope.part('code', token.start, token.end, token.text, targets);
    remarks.add('codes without a word', spanAt(token.start, token.end));
    item.openEnded = true;
  }
}

/** Items that say something; those of an unclear numbering share their lots. */
function finishedItems(scope: DraftScope, { numberingUnclear }: WalkResult): DraftItem[] {
  const maker = scope.items.find((item) => item.maker !== null)?.maker ?? null;
  for (const item of scope.items) item.maker ??= maker;
  const named = (item: DraftItem): boolean =>
    item.product !== null || item.shade !== null || item.gtins.length > 0;
  if (numberingUnclear) shareTerms(scope.items.filter((item) => item.key !== null));
  const replaced = scope.items.some((item) => item.key === 'replaced' && item.openEnded);
  const says = (item: DraftItem): boolean => {
    if (item.key === 'replaced' && item.terms.length === 0) return false;
    if (item.terms.length > 0 || item.openEnded) return true;
    return (
      named(item) &&
      !scope.items.some((other) => other !== item && other.terms.length > 0 && sameNames(item, other))
    );
  };
  const kept = scope.items.filter(says);
  if (replaced) for (const item of kept) item.openEnded = true;
  const [first] = scope.items;
  return kept.length > 0 || first === undefined ? kept : [first];
}

function sameNames(one: DraftItem, other: DraftItem): boolean {
  const same = (left: string | undefined, right: string | undefined): boolean =>
    left === undefined || left.toLowerCase() === right?.toLowerCase();
  return (
    same(one.product?.text, other.product?.text) &&
    same(one.shade?.text, other.shade?.text) &&
    one.gtins.every((gtin) => other.gtins.includes(gtin))
  );
}

function shareTerms(items: readonly DraftItem[]): void {
  const all = new Map(
    items.flatMap((item) => item.terms.map((term) => [JSON.stringify(term.term), term] as const)),
  );
  const shared = [...all.values()].slice(0, maximumTerms);
  for (const item of items) {
    const own = new Set(item.terms.map(({ term }) => JSON.stringify(term)));
    item.terms.push(...shared.filter(({ term }) => !own.has(JSON.stringify(term))));
    item.openEnded ||= items.some((other) => other.openEnded);
  }
}

function chosen(
  item: DraftItem,
  knownProducts: readonly KnownProduct[],
  remarks: RemarkList,
  spanAt: (start: number, end: number) => TextSpan,
): { productIds: string[] } {
  if (knownProducts.length === 0) return { productIds: [] };
  const byGtin = new Map<string, KnownProduct[]>();
  if (item.gtins.length > 0) {
    for (const product of knownProducts)
      for (const gtin of product.gtins) byGtin.set(gtin, [...(byGtin.get(gtin) ?? []), product]);
  }
  const names = {
    makerName: item.maker?.text ?? null,
    productName: item.product?.text ?? null,
    shade: item.shade?.text ?? null,
    gtins: [...new Set(item.gtins)],
  };
  const mentioned = [...new Set(item.mentions)].flatMap((place) => knownProducts[place] ?? []);
  const { productIds, disagreeingGtin } = meantProducts(names, mentioned, byGtin);
  const name = item.product ?? item.shade;
  if (disagreeingGtin !== null && name !== null) {
    remarks.add('names disagree', spanAt(name.start, name.end), { readAs: disagreeingGtin });
  }
  return { productIds };
}

function remarkFoldings(folded: FoldedText, remarks: RemarkList): void {
  for (const { kind, span, folded: readAs } of folded.foldings) {
    if (kind === 'look-alike letters') remarks.add(kind, span, { readAs });
  }
  for (const kind of ['invisible marks', 'control characters'] as const) {
    const first = folded.foldings.find((folding) => folding.kind === kind);
    if (first !== undefined) remarks.add(kind, first.span, { seen: '', count: folded.counts[kind] });
  }
}
