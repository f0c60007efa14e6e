/**
 * Goes through the tokens of a notice once and puts what it finds into a draft.
 *
 * Where lots stand is a matter of words: a lot word opens a list, a comma, a semicolon or a new line lets the next code
 * follow, an ordinary word ends it; until the sentence is over, words that can only be codes are still taken, with a
 * remark. Nothing that stands where lots stand is dropped, and what is unsure is read wider.
 */

import { gtin14 } from '../../catalogue/gs1/check-digit.js';
import type { ElementFacts } from '../../catalogue/gs1/element-facts.js';
import type { DaySpan } from '../../stock/lot-matching/lot-scope.js';
import { completedEnd, hyphenedRange, rangeFacts, wideRange } from './code-ranges.js';
import { type DateExpression, dateExpressionAt } from './date-expression.js';
import type { DraftItem, DraftName, DraftPart, DraftScope } from './draft-scope.js';
import { type ElementStringInText, elementStringOfWord } from './element-strings-in-text.js';
import { type FoldedText, spanOf, type TextSpan } from './folded-text.js';
import { hasDigit, type LabelHit, type LabelRole } from './label-words.js';
import {
  codeEntryAt,
  isFiller,
  isListWord,
  isQuantity,
  isStrongCode,
  longestCode,
  mayBeCode,
  shapeOf,
} from './lot-codes.js';
import { type NoticeMarks, numberingAt } from './notice-marks.js';
import { nameBefore, namesInList, restOfLine, tidyName } from './notice-names.js';
import type { RemarkList } from './notice-remarks.js';
import { type TableLine, tableAt } from './notice-tables.js';
import { plainWord, type Token } from './tokens.js';
import { type DateOrder, dateAt, looksLikeDate, printedSpan, widest } from './written-dates.js';

export interface WalkContext {
  tokens: readonly Token[];
  folded: FoldedText;
  marks: NoticeMarks;
  elementStrings: readonly ElementStringInText[];
  scope: DraftScope;
  remarks: RemarkList;
  today: string;
  order: DateOrder;
  /** Whether lines that begin with a name before their lots are how this notice names its products. */
  namesByPlace: boolean;
}

/** What was read of the notice as a whole. */
export interface WalkResult {
  reference: string | null;
  issuedOn: string | null;
  classification: string | null;
  risk: string | null;
  remedy: string | null;
  /** An open-ended phrase stands outside any list of lots. */
  openEnded: boolean;
  numberingUnclear: boolean;
  orderNeeded: boolean;
}

/** What may come next in a list of lots: any code, only what can be nothing else, or none at all. */
type Expected = 'any' | 'strong' | 'none';

const rangeWords = new Set([
  'thru',
  'through',
  'to',
  'until',
  'till',
  'til',
  'bis',
  'hasta',
  'au',
  'al',
  'tot',
  '\u2013',
  '~',
  'upto',
]);
/** Labels of danger, remedy and class that are marked. */
const mostSayings = 300;
const brandLabels = /^(?:brand|marke|marque|marca|merk)/;
const makerLabels = /^(?:maker|manufactur|hersteller|fabri|legal|produttore|hergestellt|made)/;
const pluralLabels =
  /^(?:products|items|produkte|produits|productos|affected products|affected items|recalled products|betroffene produkte|shades|colours|colors|farbtone|teintes|tonos)/;

export class NoticeWalk {
  readonly result: WalkResult = {
    reference: null,
    issuedOn: null,
    classification: null,
    risk: null,
    remedy: null,
    openEnded: false,
    numberingUnclear: false,
    orderNeeded: false,
  };
  private readonly tokens: readonly Token[];
  private readonly scope: DraftScope;
  private readonly strings: Map<number, ElementStringInText>;
  private readonly thisYear: number;
  private inList = false;
  /** A list was begun and may go on at the start of a line. */
  private listOpen = false;
  private expected: Expected = 'none';
  private lapsed = false;
  private atLineStart = true;
  private codesSinceLabel = 0;
  /** The list also has a column or place for use-by dates. */
  private datesBeside = false;
  private betweenAnd = false;
  private allLots = false;
  private shapes = new Set<string>();
  private lastCode = '';
  private separatorSinceCode = false;
  private lead: { spans: DaySpan[]; start: number; end: number; part: DraftPart | null } | null = null;
  private naming = false;
  /** A numbered list of products is being read. */
  private namingList = false;
  private namedItems: DraftItem[] = [];
  private productList = false;
  private lastNumber = 0;
  private makerRank = 0;
  private sayings = 0;

  constructor(private readonly context: WalkContext) {
    this.tokens = context.tokens;
    this.scope = context.scope;
    this.strings = new Map(context.elementStrings.map((string) => [string.start, string]));
    this.thisYear = Number(context.today.slice(0, 4));
  }

  all(): WalkResult {
    this.run(0, this.tokens.length);
    this.flushLead();
    this.openEndedElsewhere();
    return this.result;
  }

  /** A phrase that stands inside something else, such as the head of a table, opens the whole scope. */
  private openEndedElsewhere(): void {
    const seen = new Set(
      this.scope.parts.flatMap(({ kind, start }) => (kind === 'open-ended' ? [start] : [])),
    );
    for (const place of this.context.marks.labels.places) {
      const label = this.context.marks.labels.get(place);
      const start = this.tokens[place]?.start ?? 0;
      if (label?.role !== 'open-ended' || seen.has(start)) continue;
      this.markOpenEnded(start, this.tokens[label.last]?.end ?? start, false);
    }
  }

  private run(from: number, to: number): void {
    for (let index = from; index < to; ) {
      const next = this.step(index);
      index = Math.max(next, index + 1);
    }
  }

  /** Reads what begins at a token and gives the token after it. */
  private step(index: number): number {
    const token = this.tokens[index];
    if (token === undefined) return index + 1;
    if (token.kind === 'line end' || token.kind === 'blank line') return this.newLine(index, token);
    const lineStart = this.atLineStart;
    this.atLineStart = lineStart && isBullet(token);
    if (lineStart && this.beginsLine(index)) {
      const table = tableAt(this.tokens, index);
      if (table !== null) return this.readTable(table.columns, table.rows, table.next);
    }
    const string = this.strings.get(token.start);
    if (string !== undefined) return this.readElementString(index, string);
    const numbering = numberingAt(this.tokens, index);
    if (numbering !== null && !this.isLoneCode(index, numbering.next)) {
      this.number(numbering.keys, token);
      this.atLineStart = true;
      return numbering.next;
    }
    if (lineStart && this.productList) {
      const next = this.listedProduct(index);
      if (next !== null) return next;
    }
    const label = this.context.marks.labels.get(index);
    if (label !== undefined) return this.label(index, label, lineStart);
    const names = this.context.marks.names.get(index);
    if (
      names !== undefined &&
      !(this.expected === 'any' && this.inList && hasDigit(token.text) && names[0]?.next === index + 1)
    ) {
      return this.mention(index, names);
    }
    if (lineStart && this.listOpen && !isBullet(token)) {
      const next = this.listLine(index);
      if (next !== null) return next;
    }
    if (this.naming && numbering === null) return this.nameOf(index);
    if (this.inList) return this.inListStep(index, token);
    if (token.kind === 'word') return this.bareWord(index, token);
    return index + 1;
  }

  private beginsLine(index: number): boolean {
    const before = this.tokens[index - 1];
    return before === undefined || before.kind === 'line end' || before.kind === 'blank line';
  }

  private newLine(index: number, token: Token): number {
    const before = this.tokens[index - 1];
    const goesOn = before !== undefined && (before.text === ',' || isListWord(before));
    if (!goesOn) this.scope.group += 1;
    if (token.kind === 'blank line') {
      this.scope.forgetBound();
      this.flushLead();
      this.productList = false;
    }
    this.atLineStart = true;
    this.naming = false;
    if (token.kind === 'blank line') this.namingList = false;
    this.lapsed = false;
    this.betweenAnd = false;
    this.separatorSinceCode = true;
    if (this.inList) this.expected = 'any';
    return index + 1;
  }

  // Labels

  private label(index: number, label: LabelHit, lineStart: boolean): number {
    if (label.role !== 'other number' && label.role !== 'gtin') this.naming = false;
    if (label.role === 'lot' || label.role === 'all lots' || label.colon) this.namingList = false;
    switch (label.role) {
      case 'lot':
        return this.lotLabel(index, label, lineStart);
      case 'all lots':
        return this.allLotsLabel(index, label);
      case 'use-by':
        return this.useByLabel(index, label, lineStart);
      case 'manufactured':
        return this.manufacturedLabel(index, label);
      case 'open-ended':
        return this.openEndedLabel(index, label);
      case 'exception':
        this.context.remarks.add('exception', this.spanOfTokens(index, this.endOfClause(index)));
        return label.next;
      case 'gtin':
        return this.gtinLabel(index, label, lineStart);
      case 'maker':
        return this.makerLabel(index, label);
      case 'product':
        return this.productLabel(index, label);
      case 'shade':
        return this.shadeLabel(index, label);
      case 'other number':
        return this.otherNumber(label);
      default:
        return this.noticeLabel(index, label, label.role);
    }
  }

  private lotLabel(index: number, label: LabelHit, lineStart: boolean): number {
    // "a lot of", "lot was found": nothing follows that would be a list; the list then ends by itself.
    if (this.context.namesByPlace || lineStart) this.nameByPlace(index);
    if (this.namedItems.length > 0) {
      this.setTargets(this.namedItems);
      this.namedItems = [];
    }
    this.naming = false;
    this.productList = false;
    this.inList = true;
    this.listOpen = true;
    this.expected = 'any';
    this.lapsed = false;
    this.codesSinceLabel = 0;
    this.betweenAnd = false;
    this.datesBeside = false;
    this.separatorSinceCode = true;
    return label.next;
  }

  private allLotsLabel(index: number, label: LabelHit): number {
    this.nameByPlace(index);
    if (this.namedItems.length > 0) {
      this.setTargets(this.namedItems);
      this.namedItems = [];
    }
    this.allLots = true;
    const limited = this.isLimitedByDate(label.next);
    const start = this.tokens[index]?.start ?? 0;
    const end = this.tokens[label.last]?.end ?? start;
    const targets = limited ? this.scope.ofItems() : this.scope.addTerm({ kind: 'all lots' }, false);
    this.scope.part('all lots', start, end, this.folded(start, end), targets);
    if (limited) this.context.remarks.add('all lots limited', this.rawSpan(start, end));
    this.inList = label.colon;
    this.listOpen = label.colon;
    this.expected = label.colon ? 'any' : 'none';
    this.codesSinceLabel = 0;
    return label.next;
  }

  /** Whether a date of expiry or manufacture stands in the same clause and says which of all lots are meant. */
  private isLimitedByDate(index: number): boolean {
    for (let at = index; at < index + 30; at++) {
      const token = this.tokens[at];
      if (token === undefined || token.kind === 'line end' || token.kind === 'blank line') return false;
      if (token.text === ';' || (token.text === '.' && this.endsSentence(at))) return false;
      const label = this.context.marks.labels.get(at);
      if (label?.role === 'use-by' || label?.role === 'manufactured') return this.dates(label.next) !== null;
      if (label?.role === 'lot') return false;
    }
    return false;
  }

  private useByLabel(index: number, label: LabelHit, lineStart: boolean): number {
    const dates = this.dates(label.next);
    if (dates === null) {
      if (this.inList) this.datesBeside = true;
      else if (label.colon || hasDigit(this.tokens[label.next]?.text ?? '')) this.dateNotRead(label);
      if (this.inList && this.codesSinceLabel > 0 && label.colon) this.dateNotRead(label);
      return label.next;
    }
    this.remarkDates(dates);
    this.takeUseBy(index, dates, lineStart);
    this.lapsed = false;
    if (this.inList) this.expected = 'any';
    this.separatorSinceCode = false;
    return dates.next;
  }

  private dateNotRead(label: LabelHit): void {
    const token = this.tokens[label.next];
    if (token?.kind !== 'word' || this.context.marks.labels.has(label.next)) return;
    const end = Math.min(label.next + 4, this.endOfClause(label.next));
    this.context.remarks.add('date not read', this.spanOfTokens(label.next, Math.max(end, label.next + 1)));
  }

  private takeUseBy(index: number, dates: DateExpression, lineStart: boolean): void {
    const start = this.tokens[dates.from]?.start ?? 0;
    const end = this.tokens[dates.next - 1]?.end ?? start;
    const useBy = spanOver(dates.spans);
    const add = (targets: DraftPart['targets']): void => {
      this.scope.part('use-by', start, end, printedSpan(useBy), targets);
      if (dates.spans.length > 1) {
        this.context.remarks.add('several expiries', this.rawSpan(start, end), {
          readAs: printedSpan(useBy),
        });
      }
    };
    const leads = this.leadsCodes(dates.next);
    if (
      this.scope.hasPending &&
      !(leads && this.separatorSinceCode && this.tokens[index - 1]?.text === ';')
    ) {
      const targets = this.scope.waiting(lineStart);
      this.scope.bind(targets, useBy);
      add(targets);
      return;
    }
    if (this.scope.hasBound && !leads) {
      add(this.scope.widenBound(useBy));
      return;
    }
    this.flushLead();
    if (dates.yearUnclear) for (const item of this.scope.targets) item.openEnded = true;
    this.lead = { spans: dates.spans, start, end, part: null };
    this.scope.forgetBound();
  }

  /** Whether codes follow, which an expiry before them belongs to. */
  private leadsCodes(index: number): boolean {
    for (let at = index; at < index + 4; at++) {
      const token = this.tokens[at];
      if (token === undefined) return false;
      if (this.context.marks.labels.get(at)?.role === 'lot') return true;
      if (token.text === ':') return true;
      if (token.kind === 'sign' && !/^[-,(\u2013]$/.test(token.text)) return false;
      if (token.kind === 'word' && !isListWord(token) && !isFiller(token)) return false;
      if (token.kind === 'blank line') return false;
    }
    return false;
  }

  /** An expiry that no codes followed is a term of its own. */
  private flushLead(): void {
    const lead = this.lead;
    this.lead = null;
    if (lead === null || lead.part !== null) return;
    const targets = lead.spans.flatMap((useBy) => this.scope.addTerm({ kind: 'use-by', useBy }, false));
    this.scope.part('use-by', lead.start, lead.end, printedSpan(spanOver(lead.spans)), targets);
  }

  private manufacturedLabel(index: number, label: LabelHit): number {
    const dates = this.dates(label.next);
    if (dates === null) return this.manufacturedBy(index, label);
    this.remarkDates(dates);
    const start = this.tokens[dates.from]?.start ?? 0;
    const end = this.tokens[dates.next - 1]?.end ?? start;
    const value = printedSpan(spanOver(dates.spans));
    const waiting = this.allLots ? [] : this.scope.waiting(false);
    if (waiting.length > 0) {
      this.scope.part('manufactured', start, end, value, waiting);
      this.context.remarks.add('manufactured beside codes', this.rawSpan(start, end), { readAs: value });
    } else {
      const targets = dates.spans.flatMap((manufactured) =>
        this.scope.addTerm({ kind: 'manufactured', manufactured }, false),
      );
      this.scope.part('manufactured', start, end, value, targets);
    }
    if (this.inList) this.expected = 'any';
    this.separatorSinceCode = false;
    return dates.next;
  }

  /** "Manufactured by Northlight Ltd": a maker, where no label names one. */
  private manufacturedBy(_index: number, label: LabelHit): number {
    const by = this.tokens[label.next]?.plain ?? '';
    if (by !== 'by' && by !== 'von' && by !== 'par' && by !== 'por') {
      if (this.inList && this.codesSinceLabel > 0) this.lapse();
      return label.next;
    }
    const name = restOfLine(this.tokens, label.next + 1, (at) => this.context.marks.labels.has(at), {
      untilComma: true,
      most: 8,
    });
    if (name !== null && this.makerRank === 0) this.setMaker(name, 0);
    this.lapse();
    return label.next + 1;
  }

  private openEndedLabel(index: number, label: LabelHit): number {
    const start = this.tokens[index]?.start ?? 0;
    const end = this.tokens[label.last]?.end ?? start;
    const local = this.inList || this.allLots;
    this.markOpenEnded(start, end, local);
    if (local) {
      this.inList = true;
      this.listOpen = true;
      this.expected = 'any';
      this.lapsed = false;
      this.separatorSinceCode = true;
    } else if (/\b(?:lots?|batch(?:es)?)\b/i.test(this.folded(start, end))) {
      return this.lotLabel(index, label, false);
    }
    return label.next;
  }

  private markOpenEnded(start: number, end: number, local: boolean): void {
    if (local) for (const item of this.scope.targets) item.openEnded = true;
    else this.result.openEnded = true;
    this.scope.part('open-ended', start, end, this.folded(start, end), local ? this.scope.ofItems() : []);
    this.context.remarks.add('open-ended', this.rawSpan(start, end));
  }

  private gtinLabel(index: number, label: LabelHit, lineStart: boolean): number {
    let at = label.next;
    for (;;) {
      const read = this.numberAt(at);
      if (read === null) break;
      if (read.gtin === null) {
        this.context.remarks.add('number not a GTIN', this.spanOfTokens(at, read.next));
      } else {
        if (lineStart && at === label.next && this.needsItemFor(read.gtin))
          this.setTargets([this.scope.newItem(null, this.scope.targets[0])]);
        this.addGtin(read.gtin, this.tokens[at]?.start ?? 0, this.tokens[read.next - 1]?.end ?? 0);
      }
      at = read.next;
      const joint = this.tokens[at];
      if (joint === undefined || !(/^[,/&;]$/.test(joint.text) || isListWord(joint))) break;
      if (!/^\d[\d-]{5,}$/.test(this.tokens[at + 1]?.text ?? '')) break;
      at += 1;
    }
    if (this.inList) this.lapse();
    this.naming = false;
    return Math.max(at, index + 1);
  }

  private needsItemFor(gtin: string): boolean {
    const [item] = this.scope.targets;
    return item !== undefined && item.terms.length > 0 && item.gtins.length > 0 && !item.gtins.includes(gtin);
  }

  private addGtin(gtin: string, start: number, end: number): void {
    for (const item of this.scope.targets) item.gtins.push(gtin);
    this.scope.part('gtin', start, end, gtin, this.scope.ofItems());
  }

  /** A number of 8 to 14 digits with its spaces and hyphens, `0 21985 20005 6`; the GTIN it is, or null for none. */
  private numberAt(index: number): { gtin: string | null; next: number } | null {
    let digits = '';
    let found: { gtin: string; next: number } | null = null;
    let at = index;
    for (let pieces = 0; pieces < 9 && digits.length <= 14; at++) {
      const token = this.tokens[at];
      if (token === undefined || (pieces > 0 && token.gap === 'wide')) break;
      if (token.text === '-' && pieces > 0) continue;
      if (token.kind !== 'word' || !/^\d[\d-]*$/.test(token.text) || token.text.length > 20) break;
      digits += token.text.replaceAll('-', '');
      pieces += 1;
      const gtin = gtin14(digits);
      if (gtin !== undefined) found = { gtin, next: at + 1 };
    }
    if (digits === '') return null;
    return found ?? { gtin: null, next: Math.max(at, index + 1) };
  }

  // Names

  private makerLabel(index: number, label: LabelHit): number {
    const words = plainWord(this.folded(this.tokens[index]?.start ?? 0, this.tokens[label.last]?.end ?? 0));
    const rank = brandLabels.test(words) ? 3 : makerLabels.test(words) ? 2 : 1;
    const name = restOfLine(this.tokens, label.next, (at) => this.beginsField(at), {
      untilComma: rank === 1,
      most: 20,
    });
    this.endList();
    if (name === null) return label.next;
    const [item] = this.scope.targets;
    if (item !== undefined && item.terms.length > 0) {
      const next = this.scope.newItem(null);
      this.setTargets([next]);
      this.makerRank = 0;
    }
    this.setMaker(name, rank);
    return name.next;
  }

  private setMaker(name: DraftName, rank: number): void {
    if (this.scope.targets.some((item) => item.maker !== null) && rank <= this.makerRank) return;
    this.makerRank = rank;
    for (const item of this.scope.targets) item.maker = name;
    this.scope.part('maker', name.start, name.end, name.text, this.scope.ofItems());
  }

  private productLabel(index: number, label: LabelHit): number {
    this.endList();
    this.flushLead();
    this.namedItems = [];
    this.lastNumber = 0;
    const words = plainWord(this.folded(this.tokens[index]?.start ?? 0, this.tokens[label.last]?.end ?? 0));
    if (numberingAt(this.tokens, label.next) !== null) {
      this.namingList = true;
      return label.next;
    }
    const name = restOfLine(this.tokens, label.next, (at) => this.beginsField(at), {
      untilComma: false,
      most: 40,
    });
    if (name === null) {
      this.productList = true;
      return label.next;
    }
    const list = pluralLabels.test(words) ? namesInList(name, this.context.folded.text) : [name];
    const items = list.map((one) => this.nameProduct(one));
    this.setTargets(items);
    this.namedItems = items.length > 1 ? items : [];
    return Math.min(name.next, this.firstNameWithin(label.next, name.next));
  }

  /** Names of the register inside a labelled name are noted too. */
  private firstNameWithin(from: number, to: number): number {
    for (let at = from; at < to; at++) {
      const names = this.context.marks.names.get(at);
      if (names !== undefined)
        for (const name of names) this.noteMention(name.kind, name.products, at, name.next, true);
    }
    return to;
  }

  private nameProduct(name: DraftName): DraftItem {
    const [current] = this.scope.targets;
    const free =
      current !== undefined &&
      current.product === null &&
      (current.terms.length === 0 || current.key !== null);
    const lotsFirst =
      current !== undefined &&
      current.product === null &&
      current.terms.length > 0 &&
      this.scope.items.length === 1;
    const item = current !== undefined && (free || lotsFirst) ? current : this.itemLike(current);
    item.product = name;
    this.scope.part('product', name.start, name.end, name.text, this.scope.ofItems([item]));
    return item;
  }

  /** A further product of the same maker. */
  private itemLike(current: DraftItem | undefined): DraftItem {
    const item = this.scope.newItem(null);
    item.maker = current?.maker ?? null;
    return item;
  }

  private shadeLabel(_index: number, label: LabelHit): number {
    const name = restOfLine(this.tokens, label.next, (at) => this.beginsField(at), {
      untilComma: false,
      most: 20,
    });
    this.endList();
    if (name === null) return label.next;
    const shades = namesInList(name, this.context.folded.text);
    const items: DraftItem[] = [];
    for (const shade of shades) {
      const current = this.scope.targets[0];
      const free = current !== undefined && current.shade === null && current.terms.length === 0;
      const item =
        free && items.length === 0 && current !== undefined ? current : this.scope.newItem(null, current);
      item.shade = shade;
      if (current !== undefined && item !== current) item.mentions.push(...current.mentions);
      this.scope.part('shade', shade.start, shade.end, shade.text, this.scope.ofItems([item]));
      items.push(item);
    }
    const earlier = this.scope.targets.filter(
      (item) => item.terms.length === 0 && item.shade !== null && !items.includes(item),
    );
    this.setTargets([...earlier, ...items]);
    return this.firstNameWithin(label.next, name.next);
  }

  /** The name behind a number of a list of products: up to the end of its first sentence. */
  private nameOf(index: number): number {
    this.naming = false;
    const name = restOfLine(this.tokens, index, (at) => this.beginsField(at), {
      untilComma: false,
      most: 40,
      untilSentence: true,
    });
    if (name === null) return index + 1;
    for (const item of this.scope.targets) item.product ??= name;
    this.scope.part('product', name.start, name.end, name.text, this.scope.ofItems());
    return this.firstNameWithin(index, name.next);
  }

  /** A line below "Products:" names one. */
  private listedProduct(index: number): number | null {
    const token = this.tokens[index];
    if (token === undefined || isBullet(token)) return null;
    const label = this.context.marks.labels.get(index);
    if (label !== undefined) {
      this.productList = false;
      return null;
    }
    const name = restOfLine(this.tokens, index, (at) => this.context.marks.labels.has(at), {
      untilComma: false,
      most: 40,
    });
    if (name === null) return null;
    const item = this.nameProduct(name);
    this.setTargets([item]);
    this.namedItems.push(item);
    if (this.context.marks.labels.has(name.next)) this.namedItems = [];
    return this.firstNameWithin(index, name.next);
  }

  /** A name before the lot word of a line, in a notice that names its products so. */
  private nameByPlace(index: number): void {
    if (!this.context.namesByPlace) return;
    const name = nameBefore(this.tokens, index, this.context.marks);
    if (name === null) return;
    const taken = this.scope.targets.some((item) => item.mentions.length > 0 && item.terms.length === 0);
    if (taken) return;
    this.newProductByPlace(name);
  }

  private newProductByPlace(name: DraftName): void {
    const [current] = this.scope.targets;
    if (current?.product?.text === name.text) return;
    const free = current !== undefined && current.product === null && current.terms.length === 0;
    const item = free ? current : this.itemLike(current);
    item.product = name;
    this.scope.part('product', name.start, name.end, name.text, this.scope.ofItems([item]));
    this.context.remarks.add('name by its place', this.rawSpan(name.start, name.end));
    this.setTargets([item]);
  }

  /** A line of a list that begins with a name: `Walnut: A1, A2`. */
  private listLine(index: number): number | null {
    const token = this.tokens[index];
    if (token === undefined || (mayBeCode(token) && hasDigit(token.text))) return null;
    for (let at = index; at < index + 12; at++) {
      const sign = this.tokens[at];
      if (
        sign === undefined ||
        sign.kind === 'line end' ||
        sign.kind === 'blank line' ||
        this.context.marks.labels.has(at)
      )
        return null;
      if (at === index || (sign.text !== ':' && !(sign.text === '-' || sign.text === '\u2013'))) continue;
      const code = this.tokens[at + 1];
      if (code === undefined || !mayBeCode(code) || !hasDigit(code.text)) continue;
      const name = tidyName(this.tokens, index, at);
      if (name === null || hasDigit(token.text)) return null;
      this.newProductByPlace(name);
      this.firstNameWithin(index, at);
      this.inList = true;
      this.expected = 'any';
      this.codesSinceLabel = 0;
      this.lapsed = false;
      return at + 1;
    }
    return null;
  }

  private mention(
    index: number,
    names: readonly { kind: 'maker' | 'product' | 'shade'; next: number; products: number[] }[],
  ): number {
    let next = index + 1;
    const kinds = new Set(names.map(({ kind }) => kind));
    for (const name of names) {
      next = name.next;
      // One word may be a maker and a shade: the fuller meaning counts.
      if (name.kind === 'shade' && (kinds.has('maker') || kinds.has('product'))) continue;
      if (name.kind === 'maker' && kinds.has('product')) continue;
      this.noteMention(name.kind, name.products, index, next, false);
    }
    if (this.inList && this.codesSinceLabel > 0) this.lapse();
    return next;
  }

  private noteMention(
    kind: 'maker' | 'product' | 'shade',
    products: number[],
    from: number,
    next: number,
    labelled: boolean,
  ): void {
    const start = this.tokens[from]?.start ?? 0;
    const end = this.tokens[next - 1]?.end ?? start;
    const name = { text: this.folded(start, end), start, end };
    const [current] = this.scope.targets;
    if (current === undefined) return;
    if (!labelled && kind === 'product' && this.startsProduct(current, name.text)) {
      this.setTargets([this.itemLike(current)]);
    } else if (!labelled && kind === 'shade') {
      if (!this.isShadeOf(current, products)) return;
      if (current.shade !== null && plainWord(current.shade.text) !== plainWord(name.text)) {
        const item = this.scope.newItem(null, current);
        item.mentions.push(...current.mentions);
        if (current.terms.length > 0) this.setTargets([item]);
        else this.setTargets([...this.scope.targets, item]);
      }
    }
    for (const item of this.scope.targets) this.mentionIn(item, kind, name, products, labelled);
    if (!labelled) {
      const named = this.scope.targets.filter((item) => item[kind]?.start === start);
      if (named.length > 0) this.scope.part(kind, start, end, name.text, this.scope.ofItems(named));
    }
  }

  private mentionIn(
    item: DraftItem,
    kind: 'maker' | 'product' | 'shade',
    name: DraftName,
    products: number[],
    labelled: boolean,
  ): void {
    if (kind !== 'maker' || item.mentions.length === 0)
      item.mentions.push(...(kind === 'maker' ? [] : products));
    if (labelled && kind === 'product') return;
    item[kind] ??= name;
  }

  /** Another product than the one whose lots were just read, or than the one just named. */
  private startsProduct(current: DraftItem, name: string): boolean {
    if (current.product === null) return current.terms.length > 0 && this.scope.items.length > 1;
    return current.terms.length > 0 && !plainWord(current.product.text).includes(plainWord(name));
  }

  private isShadeOf(item: DraftItem, products: readonly number[]): boolean {
    return (
      item.product !== null &&
      (item.mentions.length === 0 || products.some((product) => item.mentions.includes(product)))
    );
  }

  // Other labels

  private otherNumber(label: LabelHit): number {
    let at = label.next;
    for (let pieces = 0; pieces < 6; at++) {
      const token = this.tokens[at];
      if (token === undefined || this.context.marks.labels.has(at) || token.gap === 'wide') break;
      if (token.kind === 'word' && hasDigit(token.text)) pieces += 1;
      else if (token.text !== '-' && token.text !== '#') break;
    }
    if (this.inList) this.lapse();
    return at;
  }

  private noticeLabel(index: number, label: LabelHit, role: LabelRole): number {
    const start = this.tokens[index]?.start ?? 0;
    if (role === 'issued on') {
      const dates = this.dates(label.next);
      if (dates === null) return label.next;
      this.remarkDates(dates);
      const from = this.tokens[dates.from]?.start ?? start;
      const end = this.tokens[dates.next - 1]?.end ?? from;
      this.result.issuedOn ??= dates.spans[0]?.from ?? null;
      this.scope.part('issued on', from, end, printedSpan(spanOver(dates.spans)), []);
      return dates.next;
    }
    if (role === 'reference') {
      const name = restOfLine(this.tokens, label.next, (at) => this.context.marks.labels.has(at), {
        untilComma: true,
        most: 3,
        onlyCodes: true,
      });
      if (name === null) return label.next;
      this.result.reference ??= name.text;
      this.scope.part('reference', name.start, name.end, name.text, []);
      if (this.inList) this.lapse();
      return name.next;
    }
    if (role === 'classification' || role === 'risk' || role === 'remedy') {
      this.endList();
      // What a text says again and again is marked a few times.
      this.sayings += 1;
      if (this.sayings > mostSayings) return label.next;
      const rest = restOfLine(this.tokens, label.next, () => false, {
        untilComma: role === 'classification',
        most: 200,
      });
      if (rest === null) return label.next;
      this.result[role] = this.result[role] === null ? rest.text : this.result[role];
      this.scope.part(role, rest.start, rest.end, rest.text, []);
    }
    return label.next;
  }

  // Numbered lists

  private number(keys: string[], token: Token): void {
    this.naming = this.namingList;
    const first = Number(keys[0]);
    if (Number.isInteger(first)) {
      if (first <= this.lastNumber && first !== 1) this.unclear(token);
      else if (first === 1 && this.lastNumber > 0 && this.inList) this.unclear(token);
      this.lastNumber = Number(keys[keys.length - 1]);
    }
    const items = keys.map((key) => this.itemOf(key));
    this.setTargets([...new Set(items)]);
    this.lapsed = false;
    if (this.inList || this.listOpen) {
      this.expected = 'any';
      this.codesSinceLabel = 0;
    }
    this.separatorSinceCode = true;
  }

  private unclear(token: Token): void {
    if (!this.result.numberingUnclear)
      this.context.remarks.add('numbering unclear', this.rawSpan(token.start, token.end));
    this.result.numberingUnclear = true;
  }

  private itemOf(key: string): DraftItem {
    const known = this.scope.items.find((item) => item.key === key);
    if (known !== undefined) return known;
    const base = this.scope.items.find((item) => item.key === null && item.terms.length === 0);
    if (base !== undefined && base.product === null && base.gtins.length === 0) {
      base.key = key;
      return base;
    }
    const like = base ?? this.scope.targets[0];
    const item = this.scope.newItem(key, this.naming ? undefined : like);
    item.maker = like?.maker ?? null;
    if (!this.naming && like !== undefined) item.mentions.push(...like.mentions);
    if (base !== undefined && !this.naming) base.key = 'replaced';
    return item;
  }

  /** `A1, 5)`: a code before a closing bracket is no number of a list. */
  private isLoneCode(index: number, next: number): boolean {
    if (!this.inList || this.tokens[index]?.text === '(') return false;
    const before = this.tokens[index - 1]?.text;
    const after = this.tokens[next];
    const stands = after === undefined || after.kind === 'line end' || after.kind === 'blank line';
    return before === ',' && stands;
  }

  // Codes

  private inListStep(index: number, token: Token): number {
    if (token.kind === 'sign') return this.sign(index, token);
    if (isListWord(token) && !(this.betweenAnd && this.expected === 'none')) {
      if (this.expected === 'none') this.expected = this.lapsed ? 'strong' : 'any';
      this.separatorSinceCode = true;
      return index + 1;
    }
    if (this.codesSinceLabel === 0 && !this.lapsed && isFiller(token)) {
      if (/^(?:between|zwischen|entre)$/i.test(token.text)) this.betweenAnd = true;
      return index + 1;
    }
    if (
      this.codesSinceLabel > 0 &&
      /^(?:from|between|von|zwischen|entre|nos?|nr|numbers?|FROM|BETWEEN|NOS?|NUMBERS?)$/.test(token.text)
    ) {
      this.betweenAnd = /^(?:between|zwischen|entre)$/i.test(token.text);
      this.expected = 'any';
      return index + 1;
    }
    const string = elementStringOfWord(token.text, this.context.today);
    if (string !== null) return this.takeElementString(index + 1, token.start, token.end, string);
    if (this.weakOpenEnded(index)) return index + 1;
    const date = this.dateInList(index, token);
    if (date !== null) return date;
    if (token.text.length > longestCode && hasDigit(token.text) && this.expected !== 'none')
      return this.tooLong(index, token);
    if (this.expected === 'any' || (this.expected === 'none' && token.gap === 'wide' && !this.lapsed)) {
      const next = this.codeAt(index);
      if (next !== null) return next;
    }
    const apart =
      isStrongCode(token) || (this.codesSinceLabel === 0 && hasDigit(token.text) && token.text.length >= 3);
    if (this.lapsed && apart && !isQuantity(this.tokens, index) && !this.isMeasure(index)) {
      const next = this.codeAt(index);
      if (next !== null) {
        this.context.remarks.add('code apart from its word', this.spanOfTokens(index, index + 1));
        this.lapsed = true;
        this.expected = 'strong';
        return next;
      }
    }
    this.lapse();
    return index + 1;
  }

  private isMeasure(index: number): boolean {
    return /^\d+(?:[.,]\d+)?\p{Ll}{1,3}$/u.test(this.tokens[index]?.text ?? '');
  }

  private lapse(): void {
    this.lapsed = true;
    this.expected = 'strong';
  }

  private sign(index: number, token: Token): number {
    switch (token.text) {
      case ';':
        this.scope.group += 1;
        if (this.lead?.part) this.lead = null;
        this.lapsed = false;
        this.expected = 'any';
        break;
      case '.':
        if (this.endsSentence(index)) this.endSentence(index);
        break;
      case ':':
        if (this.codesSinceLabel === 0 || !this.lapsed) this.reopen();
        break;
      case '(':
      case '[': {
        const end = this.endOfQuantity(index);
        if (end !== null) return end;
        if (this.codesSinceLabel > 0) this.expected = 'strong';
        break;
      }
      case ')':
      case ']':
        if (!this.lapsed) this.expected = 'strong';
        break;
      default:
        if (/[,/|*•&+]/.test(token.text)) this.expected = this.lapsed ? 'strong' : 'any';
        else if (/[-\u2013]/.test(token.text)) this.expected = this.lapsed ? 'strong' : this.expected;
    }
    this.separatorSinceCode = true;
    return index + 1;
  }

  /** `( 2 units)` says how many there are of the lot before it. */
  private endOfQuantity(index: number): number | null {
    if (this.codesSinceLabel === 0 || !isQuantity(this.tokens, index + 1)) return null;
    return this.tokens[index + 3]?.text === ')' ? index + 4 : null;
  }

  private reopen(): void {
    this.lapsed = false;
    this.expected = 'any';
  }

  private endsSentence(index: number): boolean {
    const following = this.tokens[index + 1];
    if (following === undefined || following.kind === 'line end' || following.kind === 'blank line')
      return true;
    return following.kind === 'word' && following.gap !== 'none' && /^\p{Lu}/u.test(following.text);
  }

  private endSentence(index: number): void {
    const following = this.tokens[index + 1];
    this.scope.group += 1;
    this.lapsed = false;
    this.allLots = false;
    if (
      following !== undefined &&
      mayBeCode(following) &&
      hasDigit(following.text) &&
      isStrongCode(following)
    ) {
      this.expected = 'any';
      return;
    }
    if (following?.kind === 'word') {
      this.inList = false;
      this.expected = 'none';
    }
  }

  private endList(): void {
    this.inList = false;
    this.listOpen = false;
    this.expected = 'none';
    this.lapsed = false;
    this.allLots = false;
  }

  /** "such as", "e.g.", "etc.", "at least" in a list of lots. */
  private weakOpenEnded(index: number): boolean {
    const written = this.tokens[index]?.text.slice(0, 20) ?? '';
    if (hasDigit(written) || written === written.toUpperCase()) return false;
    const word = plainWord(written);
    const following = this.tokens[index + 1]?.plain ?? '';
    const two = (one: string, other: string): boolean => word === one && following === other;
    const single =
      /^(?:etc|usw|e\.g|z\.b|insbesondere|notamment|beispielsweise|particularly|approximately)$/.test(word);
    const words =
      two('such', 'as') ||
      two('for', 'example') ||
      two('for', 'instance') ||
      two('at', 'least') ||
      two('zum', 'beispiel') ||
      two('par', 'exemple') ||
      two('por', 'ejemplo');
    if (!single && !words) return false;
    const start = this.tokens[index]?.start ?? 0;
    this.markOpenEnded(start, this.tokens[words ? index + 1 : index]?.end ?? start, true);
    this.reopen();
    return true;
  }

  /** A date in a list of lots without a word for it: mostly the expiry of the lot before it; where lots stand, a lot. */
  private dateInList(index: number, token: Token): number | null {
    if (!hasDigit(token.text) && this.codesSinceLabel === 0) return null;
    const labelled = this.datesBeside && /[/.]/.test(token.text);
    const date = dateAt(this.tokens, index, { thisYear: this.thisYear, order: this.context.order, labelled });
    if (date === null) return null;
    if (this.codesSinceLabel === 0 || !this.scope.hasPending) return null;
    if (this.shapes.has(shapeOf(token.text)) || looksLikeDate(this.lastCode)) return null;
    const named = date.next > index + 1 || /\p{L}/u.test(token.text);
    const long = /\d{4}/.test(token.text) || token.text.includes('/');
    if (this.separatorSinceCode && !this.datesBeside && !named && !long) return null;
    if (!this.separatorSinceCode || this.datesBeside || named || long) {
      const useBy = widest(date.readings);
      const targets = this.scope.lastWaiting();
      if (targets.length === 0) return null;
      this.scope.bind(targets, useBy);
      const start = token.start;
      const end = this.tokens[date.next - 1]?.end ?? token.end;
      this.scope.part('use-by', start, end, printedSpan(useBy), targets);
      if (date.readings.length > 1) this.ambiguous(index, date.next, date.readings);
      this.result.orderNeeded ||= date.byOrder;
      if (!this.datesBeside)
        this.context.remarks.add('date without a word', this.rawSpan(start, end), {
          readAs: printedSpan(useBy),
        });
      this.expected = 'any';
      this.separatorSinceCode = false;
      return date.next;
    }
    return null;
  }

  private tooLong(index: number, token: Token): number {
    for (const item of this.scope.targets) item.openEnded = true;
    this.context.remarks.add('code too long', this.rawSpan(token.start, token.end), {
      count: token.end - token.start,
      allowed: longestCode,
    });
    return index + 1;
  }

  private codeAt(index: number): number | null {
    const entry = this.entryAt(index);
    if (entry === null) return null;
    const [only] = entry.codes;
    const range =
      entry.codes.length === 1 && only !== undefined ? this.rangeFrom(only.text, entry.next) : null;
    if (range !== null && only !== undefined) {
      this.takeRange(only.text, range.to, index, range.next);
      this.afterCode(only.text);
      return range.next;
    }
    if (entry.codes.length > 1) {
      this.context.remarks.add('codes parted by spaces', this.spanOfTokens(index, entry.next), {
        otherReadings: entry.codes.slice(0, 8).map(({ text }) => text),
      });
    }
    for (const code of entry.codes) this.takeCode(code.text, code.from, code.to + 1, entry.alternatives);
    return entry.next;
  }

  private entryAt(index: number): ReturnType<typeof codeEntryAt> {
    const token = this.tokens[index];
    if (!mayBeCode(token)) return null;
    const entry = codeEntryAt(this.tokens, index, { isTaken: (at) => this.isTaken(at), shapes: this.shapes });
    if (entry === null || hasDigit(token.text) || entry.codes.some(({ text }) => hasDigit(text)))
      return entry;
    // Letters alone are a code only where nothing but the list goes on.
    const following = this.tokens[entry.next];
    const ends =
      following === undefined ||
      following.kind !== 'word' ||
      isListWord(following) ||
      isRangeWord(following) ||
      this.context.marks.labels.has(entry.next) ||
      following.gap === 'wide';
    return ends && (token.text.length <= 2 || this.atCodePlace(index)) ? entry : null;
  }

  /** Directly behind a lot word or a code and its comma. */
  private atCodePlace(index: number): boolean {
    const before = this.tokens[index - 1];
    return before !== undefined && before.kind !== 'line end' && before.kind !== 'blank line';
  }

  private isTaken(at: number): boolean {
    const token = this.tokens[at];
    if (token === undefined || this.context.marks.labels.has(at) || this.strings.has(token.start))
      return true;
    const names = this.context.marks.names.get(at);
    if (names !== undefined && !hasDigit(token.text)) return true;
    if (isRangeWord(token)) return true;
    const date = dateAt(this.tokens, at, { thisYear: this.thisYear, order: null, labelled: false });
    return (
      date !== null &&
      (token.text.includes('/') ||
        /\p{L}/u.test(token.text) ||
        date.next > at + 1 ||
        /^\d{4}-/.test(token.text) ||
        this.datesBeside)
    );
  }

  private rangeFrom(from: string, index: number): { to: string; next: number } | null {
    const joint = this.tokens[index];
    if (joint === undefined) return null;
    const word = joint.text.toLowerCase();
    const plainHyphen = joint.text === '-' && this.tokens[index + 1]?.gap !== 'none';
    const spanish = word === 'a' && joint.text === 'a' && /^\d/.test(this.tokens[index + 1]?.text ?? '');
    const and = this.betweenAnd && isListWord(joint);
    if (!isRangeWord(joint) && !plainHyphen && !spanish && !and && joint.text !== '-' && word !== 'up')
      return null;
    let at = index + 1;
    // "through to", "up to and including", "through lot".
    for (let steps = 0; steps < 4; steps++) {
      const token = this.tokens[at];
      const label = this.context.marks.labels.get(at);
      if (label?.role === 'lot') at = label.next;
      else if (
        token !== undefined &&
        (isRangeWord(token) ||
          /^(?:and|including|incl|einschliesslich|y|compris)$/i.test(token.text) ||
          token.text === '.')
      )
        at += 1;
      else break;
    }
    const end = this.tokens[at];
    if (end === undefined || !mayBeCode(end) || isQuantity(this.tokens, at)) return null;
    const entry = codeEntryAt(this.tokens, at, {
      isTaken: (place) => this.isTaken(place),
      shapes: this.shapes,
    });
    const to = entry?.codes.length === 1 ? (entry.codes[0]?.text ?? '') : end.text;
    const next = entry?.codes.length === 1 ? entry.next : at + 1;
    if (!hasDigit(from) && !hasDigit(to) && from.length > 2) return null;
    const sign = joint.kind === 'sign';
    if (sign && shapeOf(from) !== shapeOf(to) && completedEnd(from, to) === null) return null;
    if (
      sign &&
      dateAt(this.tokens, at, { thisYear: this.thisYear, order: null, labelled: false }) !== null &&
      !looksLikeDate(from)
    )
      return null;
    this.betweenAnd = false;
    return { to, next };
  }

  private takeRange(from: string, to: string, index: number, next: number): void {
    const start = this.tokens[index]?.start ?? 0;
    const end = this.tokens[next - 1]?.end ?? start;
    const span = this.rawSpan(start, end);
    const facts = rangeFacts(from, to);
    const useBy = this.leadUseBy();
    const targets = this.scope.addTerm(
      { kind: 'code range', from: facts.from, through: facts.through, useBy },
      useBy === null,
    );
    const ends = (codes: readonly string[]): void => {
      for (const code of codes)
        targets.push(...this.scope.addTerm({ kind: 'code', code, useBy }, useBy === null));
    };
    if (facts.turned)
      this.context.remarks.add('range turned', span, { readAs: `${facts.from} \u2013 ${facts.through}` });
    if (facts.count !== null && facts.count > wideRange)
      this.context.remarks.add('very wide range', span, { count: facts.count });
    if (facts.differentLength) {
      const whole = completedEnd(from, to);
      if (whole !== null) {
        targets.push(
          ...this.scope.addTerm({ kind: 'code range', from, through: whole, useBy }, useBy === null),
        );
      }
      ends([from, to]);
      this.context.remarks.add('range ends differ in length', span, {
        otherReadings: whole === null ? [] : [`${from} \u2013 ${whole}`],
      });
    } else if (!facts.alike) {
      ends([from, to]);
      this.context.remarks.add('range ends differ in letters', span);
    }
    this.scope.part('code range', start, end, `${facts.from} \u2013 ${facts.through}`, targets);
    this.useLead(targets);
  }

  private takeCode(code: string, from: number, next: number, alternatives: readonly string[]): void {
    const start = this.tokens[from]?.start ?? 0;
    const end = this.tokens[next - 1]?.end ?? start;
    const span = this.rawSpan(start, end);
    const useBy = this.leadUseBy();
    const targets = this.scope.addTerm({ kind: 'code', code, useBy }, useBy === null);
    const more = (term: Parameters<DraftScope['addTerm']>[0]): void => {
      targets.push(...this.scope.addTerm(term, useBy === null));
    };
    for (const other of alternatives) more({ kind: 'code', code: other, useBy });
    if (alternatives.length > 0)
      this.context.remarks.add('code with spaces', span, { otherReadings: [...alternatives] });
    const halves = hyphenedRange(code);
    if (halves !== null) {
      more({ kind: 'code range', from: halves[0], through: halves[1], useBy });
      this.context.remarks.add('range or code', span, { readAs: `${halves[0]} \u2013 ${halves[1]}` });
      const { count } = rangeFacts(...halves);
      if (count !== null && count > wideRange) this.context.remarks.add('very wide range', span, { count });
    }
    if (targets.length > 0) this.scope.part('code', start, end, code, targets);
    this.useLead(targets);
    if (looksLikeDate(code)) this.context.remarks.add('code like a date', span);
    if (!hasDigit(code)) this.context.remarks.add('code of letters', span);
    const digits = digitsForLetters(code);
    if (digits !== code) this.context.remarks.add('code with O or I', span, { otherReadings: [digits] });
    this.afterCode(code);
  }

  private afterCode(code: string): void {
    this.codesSinceLabel += 1;
    if (this.shapes.size < 500) this.shapes.add(shapeOf(code));
    this.lastCode = code;
    this.expected = 'none';
    this.lapsed = false;
    this.separatorSinceCode = false;
  }

  private leadUseBy(): DaySpan | null {
    return this.lead === null ? null : spanOver(this.lead.spans);
  }

  /** The expiry before the codes belongs to them. */
  private useLead(targets: DraftPart['targets']): void {
    const lead = this.lead;
    if (lead === null) return;
    if (lead.part === null)
      lead.part = this.scope.part('use-by', lead.start, lead.end, printedSpan(spanOver(lead.spans)), [
        ...targets,
      ]);
    else lead.part.targets.push(...targets);
  }

  // Words outside lists

  private bareWord(index: number, token: Token): number {
    const string = elementStringOfWord(token.text, this.context.today);
    if (string !== null) return this.takeElementString(index + 1, token.start, token.end, string);
    if (/^\d{12,14}$/.test(token.text)) {
      const gtin = gtin14(token.text);
      if (gtin !== undefined) {
        if (this.needsItemFor(gtin)) this.setTargets([this.scope.newItem(null, this.scope.targets[0])]);
        this.addGtin(gtin, token.start, token.end);
      }
    }
    return index + 1;
  }

  // Element strings

  private readElementString(index: number, string: ElementStringInText): number {
    let next = index;
    while (next < this.tokens.length && (this.tokens[next]?.start ?? 0) < string.end) next += 1;
    if (string.fault !== null) {
      this.context.remarks.add('symbol not valid', this.rawSpan(string.start, string.end), {
        readAs: string.fault.message,
      });
    }
    return this.takeElementString(next, string.start, string.end, string.facts);
  }

  private takeElementString(next: number, start: number, end: number, facts: ElementFacts): number {
    const text = this.folded(start, end);
    const gtin = facts.gtin14 === undefined ? undefined : gtin14(facts.gtin14);
    if (gtin !== undefined) {
      if (this.needsItemFor(gtin)) {
        const known = this.scope.items.find((item) => item.gtins.includes(gtin));
        this.setTargets([known ?? this.scope.newItem(null)]);
      }
      const at = start + Math.max(0, text.indexOf(gtin));
      this.addGtin(gtin, at, at + gtin.length);
    }
    const stated = facts.useBy ?? facts.bestBefore;
    const useBy = stated === undefined ? null : statedSpan(stated);
    if (facts.lotCode !== undefined) {
      const targets = this.scope.addTerm({ kind: 'code', code: facts.lotCode, useBy }, false);
      const at = start + Math.max(0, text.lastIndexOf(facts.lotCode));
      this.scope.part('code', at, at + facts.lotCode.length, facts.lotCode, targets);
    } else if (useBy !== null) {
      const targets = this.scope.addTerm({ kind: 'use-by', useBy }, false);
      this.scope.part('use-by', start, end, printedSpan(useBy), targets);
    }
    this.codesSinceLabel += 1;
    this.expected = this.inList ? 'any' : 'none';
    return next;
  }

  // Tables

  private readTable(columns: (LabelRole | null)[], rows: TableLine[], next: number): number {
    const byName = new Map<string, DraftItem>();
    const [base] = this.scope.targets;
    let previous: DraftItem[] = this.scope.targets;
    const names = columns.some(
      (role) => role === 'product' || role === 'shade' || role === 'maker' || role === 'gtin',
    );
    for (const row of rows) {
      this.endList();
      this.flushLead();
      if (names) {
        const item = this.itemOfRow(columns, row, byName, base);
        if (item !== null) previous = [item];
      }
      this.setTargets(previous);
      for (const role of ['lot', 'use-by', 'manufactured', 'other number'] as const) {
        columns.forEach((column, place) => {
          const cell = row[place];
          if (column === role && cell !== undefined && role !== 'other number')
            this.readCell(role, cell.from, cell.to);
        });
      }
    }
    this.endList();
    this.flushLead();
    this.scope.forgetWaiting();
    this.atLineStart = true;
    return next;
  }

  private itemOfRow(
    columns: (LabelRole | null)[],
    row: TableLine,
    byName: Map<string, DraftItem>,
    base: DraftItem | undefined,
  ): DraftItem | null {
    const cell = (role: LabelRole): DraftName | null => {
      const place = columns.indexOf(role);
      const found = place < 0 ? undefined : row[place];
      return found === undefined ? null : tidyName(this.tokens, found.from, found.to);
    };
    const [maker, product, shade, number] = [cell('maker'), cell('product'), cell('shade'), cell('gtin')];
    const key = [maker, product, shade, number].map((name) => plainWord(name?.text ?? '')).join('|');
    if (key === '|||') return null;
    const known = byName.get(key);
    if (known !== undefined) return known;
    const free =
      byName.size === 0 &&
      base !== undefined &&
      base.terms.length === 0 &&
      base.product === null &&
      base.gtins.length === 0;
    const last = [...byName.values()].at(-1);
    const item = free ? base : this.scope.newItem(null);
    byName.set(key, item);
    item.maker = maker ?? item.maker ?? base?.maker ?? null;
    // An empty cell below a product stands for the product above it.
    item.product =
      product ?? (columns.includes('product') ? (last?.product ?? null) : (base?.product ?? null));
    item.shade = shade;
    if (product === null && last !== undefined) item.mentions.push(...last.mentions);
    this.setTargets([item]);
    for (const [kind, name] of [
      ['maker', maker],
      ['product', product],
      ['shade', shade],
    ] as const) {
      if (name !== null) this.scope.part(kind, name.start, name.end, name.text, this.scope.ofItems([item]));
    }
    for (const role of ['maker', 'product', 'shade'] as const) {
      const found = row[columns.indexOf(role)];
      if (found !== undefined) this.firstNameWithin(found.from, found.to);
    }
    const digits = columns.indexOf('gtin');
    const found = row[digits];
    if (found !== undefined) {
      const read = this.numberAt(found.from);
      if (read?.gtin)
        this.addGtin(read.gtin, this.tokens[found.from]?.start ?? 0, this.tokens[read.next - 1]?.end ?? 0);
      else if (read !== null)
        this.context.remarks.add('number not a GTIN', this.spanOfTokens(found.from, found.to));
    }
    return item;
  }

  private readCell(role: 'lot' | 'use-by' | 'manufactured', from: number, to: number): void {
    const first = this.tokens[from];
    if (first === undefined || to <= from) return;
    if (role === 'lot') {
      if (/^(?:all|alle|tous|todos|toutes|any)$/i.test(first.text)) {
        const end = this.tokens[to - 1]?.end ?? first.end;
        this.scope.part(
          'all lots',
          first.start,
          end,
          this.folded(first.start, end),
          this.scope.addTerm({ kind: 'all lots' }, false),
        );
        return;
      }
      this.inList = true;
      this.expected = 'any';
      this.codesSinceLabel = 0;
      this.separatorSinceCode = true;
      this.lapsed = false;
      this.atLineStart = false;
      this.run(from, to);
      this.inList = false;
      return;
    }
    const dates = this.dates(from);
    if (dates === null || dates.from >= to) {
      if (mayBeCode(first)) this.context.remarks.add('date not read', this.spanOfTokens(from, to));
      return;
    }
    this.remarkDates(dates);
    const start = this.tokens[dates.from]?.start ?? 0;
    const end = this.tokens[dates.next - 1]?.end ?? start;
    const span = spanOver(dates.spans);
    const waiting = this.scope.waiting(true);
    if (waiting.length > 0 && role === 'use-by') this.scope.bind(waiting, span);
    const targets =
      waiting.length > 0
        ? waiting
        : this.scope.addTerm(
            role === 'use-by'
              ? { kind: 'use-by', useBy: span }
              : { kind: 'manufactured', manufactured: span },
            false,
          );
    this.scope.part(role, start, end, printedSpan(span), targets);
  }

  // Small things

  private setTargets(items: DraftItem[]): void {
    this.flushLead();
    this.scope.forgetWaiting();
    this.scope.group += 1;
    this.scope.targets = items;
  }

  private dates(index: number): DateExpression | null {
    return dateExpressionAt(this.tokens, index, {
      thisYear: this.thisYear,
      order: this.context.order,
      isLabel: (at) => this.context.marks.labels.has(at),
    });
  }

  private remarkDates(dates: DateExpression): void {
    for (const { from, next, readings } of dates.ambiguous) this.ambiguous(from, next, readings);
    this.result.orderNeeded ||= dates.byOrder;
    if (dates.yearUnclear)
      this.context.remarks.add('date without a year', this.spanOfTokens(dates.from, dates.next));
    if (dates.turned) {
      this.context.remarks.add('dates turned', this.spanOfTokens(dates.from, dates.next), {
        readAs: printedSpan(spanOver(dates.spans)),
      });
    }
  }

  private ambiguous(
    from: number,
    next: number,
    readings: readonly { from: string; through: string }[],
  ): void {
    this.context.remarks.add('ambiguous date', this.spanOfTokens(from, next), {
      otherReadings: readings.map((reading) =>
        reading.from === reading.through ? reading.from : `${reading.from} to ${reading.through}`,
      ),
    });
  }

  /** Whether a label begins a field of its own, which ends the value of the one before. */
  private beginsField(index: number): boolean {
    const label = this.context.marks.labels.get(index);
    if (label === undefined) return false;
    return (
      label.colon ||
      label.role === 'lot' ||
      label.role === 'use-by' ||
      label.role === 'all lots' ||
      label.role === 'open-ended' ||
      label.role === 'gtin' ||
      label.role === 'other number' ||
      label.role === 'reference'
    );
  }

  private endOfClause(index: number): number {
    let at = index;
    while (at < index + 12) {
      const token = this.tokens[at];
      if (
        token === undefined ||
        token.kind === 'line end' ||
        token.kind === 'blank line' ||
        token.text === ';'
      )
        break;
      if (token.text === '.' && this.endsSentence(at)) break;
      at += 1;
    }
    return Math.max(at, index + 1);
  }

  private folded(start: number, end: number): string {
    return this.context.folded.text.slice(start, end);
  }

  private rawSpan(start: number, end: number): TextSpan {
    return spanOf(this.context.folded, start, end);
  }

  private spanOfTokens(from: number, next: number): TextSpan {
    const start = this.tokens[from]?.start ?? 0;
    return this.rawSpan(start, this.tokens[next - 1]?.end ?? start);
  }
}

/** In capitals only English ones: AL 12-34 is a code. */
function isRangeWord({ text }: Token): boolean {
  return rangeWords.has(text) || /^(?:Thru|Through|To|Until|Bis|THRU|THROUGH|TO|UNTIL|BIS)$/.test(text);
}

function isBullet(token: Token): boolean {
  return token.kind === 'sign' && /^[-*•\u2013>]$/.test(token.text);
}

function spanOver(spans: readonly DaySpan[]): DaySpan {
  const from = spans.some((span) => span.from === null)
    ? null
    : spans.map((span) => span.from ?? '').sort()[0];
  const through = spans.some((span) => span.through === null)
    ? null
    : spans
        .map((span) => span.through ?? '')
        .sort()
        .at(-1);
  return { from: from ?? null, through: through ?? null };
}

function statedSpan({ date, precision }: { date: string; precision: 'day' | 'month' }): DaySpan {
  return { from: precision === 'month' ? `${date.slice(0, 7)}-01` : date, through: date };
}

/** O and I beside digits as the digits they look like. */
function digitsForLetters(code: string): string {
  return code.replace(/(?<=\d)[Oo]|[Oo](?=\d)/g, '0').replace(/(?<=\d)[Il]|[Il](?=\d)/g, '1');
}
