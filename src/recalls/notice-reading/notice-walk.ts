/**
 * Goes through the tokens of a notice once and puts what it finds into a draft.
 *
 * Where lots stand is a matter of words: a lot word opens a list, a comma, a semicolon or a new line lets the next code
 * follow, an ordinary word ends it; until the sentence is over, words that can only be codes are still taken, with a
 * remark. Nothing that stands where lots stand is dropped, and what is unsure is read wider.
 */
import { CodeReader } from './code-reader.js';
import { ExpiryReader } from './expiry-reader.js';
import { hasDigit, type LabelHit, type LabelRole } from './label-words.js';
import { isListWord } from './lot-codes.js';
import { numberingAt } from './notice-marks.js';
import { restOfLine } from './notice-names.js';
import { tableAt } from './notice-tables.js';
import { NumberReader } from './number-reader.js';
import { NumberingReader } from './numbering-reader.js';
import { ProductReader } from './product-reader.js';
import { isBullet, ReadingState, spanOver, type WalkContext, type WalkResult } from './reading-state.js';
import { TableReader } from './table-reader.js';
import type { Token } from './tokens.js';
import { printedSpan } from './written-dates.js';

/** Labels of danger, remedy and class that are marked. */
const mostSayings = 300;

export class NoticeWalk {
  private readonly state: ReadingState;
  private readonly products: ProductReader;
  private readonly numbers: NumberReader;
  private readonly numberings: NumberingReader;
  private readonly expiries: ExpiryReader;
  private readonly codes: CodeReader;
  private readonly tables: TableReader;

  constructor(context: WalkContext) {
    this.state = new ReadingState(context);
    this.products = new ProductReader(this.state);
    this.numbers = new NumberReader(this.state);
    this.numberings = new NumberingReader(this.state);
    this.expiries = new ExpiryReader(this.state, this.products);
    this.codes = new CodeReader(this.state, this.expiries, this.numbers);
    this.tables = new TableReader(this.state, this.products, this.numbers, (from, to) => this.run(from, to));
  }

  all(): WalkResult {
    this.run(0, this.state.tokens.length);
    this.state.flushLead();
    this.openEndedElsewhere();
    return this.state.result;
  }

  /** A phrase that stands inside something else, such as the head of a table, opens the whole scope. */
  private openEndedElsewhere(): void {
    const seen = new Set(
      this.state.scope.parts.flatMap(({ kind, start }) => (kind === 'open-ended' ? [start] : [])),
    );
    for (const place of this.state.context.marks.labels.places) {
      const label = this.state.context.marks.labels.get(place);
      const start = this.state.tokens[place]?.start ?? 0;
      if (label?.role !== 'open-ended' || seen.has(start)) continue;
      this.state.markOpenEnded(start, this.state.tokens[label.last]?.end ?? start, false);
    }
  }

  run(from: number, to: number): void {
    for (let index = from; index < to; ) {
      const next = this.step(index);
      index = Math.max(next, index + 1);
    }
  }

  /** Reads what begins at a token and gives the token after it. */
  private step(index: number): number {
    const token = this.state.tokens[index];
    if (token === undefined) return index + 1;
    if (token.kind === 'line end' || token.kind === 'blank line') return this.newLine(index, token);
    const lineStart = this.state.atLineStart;
    this.state.atLineStart = lineStart && isBullet(token);
    if (lineStart && this.beginsLine(index)) {
      const table = tableAt(this.state.tokens, index);
      if (table !== null) return this.tables.readTable(table.columns, table.rows, table.next);
    }
    const string = this.state.strings.get(token.start);
    if (string !== undefined) return this.numbers.readElementString(index, string);
    const numbering = numberingAt(this.state.tokens, index);
    if (numbering !== null && !this.numberings.isLoneCode(index, numbering.next)) {
      this.numberings.number(numbering.keys, token);
      this.state.atLineStart = true;
      return numbering.next;
    }
    if (lineStart && this.state.productList) {
      const next = this.products.listedProduct(index);
      if (next !== null) return next;
    }
    const label = this.state.context.marks.labels.get(index);
    if (label !== undefined) return this.label(index, label, lineStart);
    const names = this.state.context.marks.names.get(index);
    if (
      names !== undefined &&
      !(
        this.state.expected === 'any' &&
        this.state.inList &&
        hasDigit(token.text) &&
        names[0]?.next === index + 1
      )
    ) {
      return this.products.mention(index, names);
    }
    if (lineStart && this.state.listOpen && !isBullet(token)) {
      const next = this.products.listLine(index);
      if (next !== null) return next;
    }
    if (this.state.naming && numbering === null) return this.products.nameOf(index);
    if (this.state.inList) return this.codes.inListStep(index, token);
    if (token.kind === 'word') return this.numbers.bareWord(index, token);
    return index + 1;
  }

  private beginsLine(index: number): boolean {
    const before = this.state.tokens[index - 1];
    return before === undefined || before.kind === 'line end' || before.kind === 'blank line';
  }

  private newLine(index: number, token: Token): number {
    const before = this.state.tokens[index - 1];
    const goesOn = before !== undefined && (before.text === ',' || isListWord(before));
    if (!goesOn) this.state.scope.group += 1;
    if (token.kind === 'blank line') {
      this.state.scope.forgetBound();
      this.state.flushLead();
      this.state.productList = false;
    }
    this.state.atLineStart = true;
    this.state.naming = false;
    if (token.kind === 'blank line') this.state.namingList = false;
    this.state.lapsed = false;
    this.state.betweenAnd = false;
    this.state.separatorSinceCode = true;
    if (this.state.inList) this.state.expected = 'any';
    return index + 1;
  }

  private label(index: number, label: LabelHit, lineStart: boolean): number {
    if (label.role !== 'other number' && label.role !== 'gtin') this.state.naming = false;
    if (label.role === 'lot' || label.role === 'all lots' || label.colon) {
      // The lots of a numbered list of products count from one again.
      if (this.state.namingList) this.state.lastNumber = 0;
      this.state.namingList = false;
    }
    switch (label.role) {
      case 'lot':
        return this.lotLabel(index, label, lineStart);
      case 'all lots':
        return this.allLotsLabel(index, label);
      case 'use-by':
        return this.expiries.useByLabel(index, label, lineStart);
      case 'manufactured':
        return this.expiries.manufacturedLabel(index, label);
      case 'open-ended':
        return this.openEndedLabel(index, label);
      case 'exception':
        this.state.context.remarks.add(
          'exception',
          this.state.spanOfTokens(index, this.state.endOfClause(index)),
        );
        return label.next;
      case 'gtin':
        return this.numbers.gtinLabel(index, label, lineStart);
      case 'maker':
        return this.products.makerLabel(index, label);
      case 'product':
        return this.products.productLabel(index, label);
      case 'shade':
        return this.products.shadeLabel(index, label);
      case 'other number':
        return this.numbers.otherNumber(label);
      default:
        return this.noticeLabel(index, label, label.role);
    }
  }

  private lotLabel(index: number, label: LabelHit, lineStart: boolean): number {
    // "a lot of", "lot was found": nothing follows that would be a list; the list then ends by itself.
    if (this.state.context.namesByPlace || lineStart) this.products.nameByPlace(index);
    if (this.state.namedItems.length > 0) {
      this.state.setTargets(this.state.namedItems);
      this.state.namedItems = [];
    }
    this.state.naming = false;
    this.state.productList = false;
    this.state.inList = true;
    this.state.listOpen = true;
    this.state.expected = 'any';
    this.state.lapsed = false;
    this.state.codesSinceLabel = 0;
    this.state.betweenAnd = false;
    this.state.datesBeside = false;
    this.state.separatorSinceCode = true;
    return label.next;
  }

  private allLotsLabel(index: number, label: LabelHit): number {
    this.products.nameByPlace(index);
    if (this.state.namedItems.length > 0) {
      this.state.setTargets(this.state.namedItems);
      this.state.namedItems = [];
    }
    this.state.allLots = true;
    const limited = this.expiries.isLimitedByDate(label.next);
    const start = this.state.tokens[index]?.start ?? 0;
    const end = this.state.tokens[label.last]?.end ?? start;
    const targets = limited
      ? this.state.scope.ofItems()
      : this.state.scope.addTerm({ kind: 'all lots' }, false);
    this.state.scope.part('all lots', start, end, this.state.folded(start, end), targets);
    if (limited) this.state.context.remarks.add('all lots limited', this.state.rawSpan(start, end));
    this.state.inList = label.colon;
    this.state.listOpen = label.colon;
    this.state.expected = label.colon ? 'any' : 'none';
    this.state.codesSinceLabel = 0;
    return label.next;
  }

  private openEndedLabel(index: number, label: LabelHit): number {
    const start = this.state.tokens[index]?.start ?? 0;
    const end = this.state.tokens[label.last]?.end ?? start;
    const local = this.state.inList || this.state.allLots;
    this.state.markOpenEnded(start, end, local);
    if (local) {
      this.state.inList = true;
      this.state.listOpen = true;
      this.state.expected = 'any';
      this.state.lapsed = false;
      this.state.separatorSinceCode = true;
    } else if (/\b(?:lots?|batch(?:es)?)\b/i.test(this.state.folded(start, end))) {
      return this.lotLabel(index, label, false);
    }
    return label.next;
  }

  private noticeLabel(index: number, label: LabelHit, role: LabelRole): number {
    const start = this.state.tokens[index]?.start ?? 0;
    if (role === 'issued on') {
      const dates = this.state.dates(label.next);
      if (dates === null) return label.next;
      this.state.remarkDates(dates);
      const from = this.state.tokens[dates.from]?.start ?? start;
      const end = this.state.tokens[dates.next - 1]?.end ?? from;
      this.state.result.issuedOn ??= dates.spans[0]?.from ?? null;
      this.state.scope.part('issued on', from, end, printedSpan(spanOver(dates.spans)), []);
      return dates.next;
    }
    if (role === 'reference') {
      const name = restOfLine(
        this.state.tokens,
        label.next,
        (at) => this.state.context.marks.labels.has(at),
        {
          untilComma: true,
          most: 3,
          onlyCodes: true,
        },
      );
      if (name === null) return label.next;
      this.state.result.reference ??= name.text;
      this.state.scope.part('reference', name.start, name.end, name.text, []);
      if (this.state.inList) this.state.lapse();
      return name.next;
    }
    if (role === 'classification' || role === 'risk' || role === 'remedy') {
      this.state.endList();
      // What a text says again and again is marked a few times.
      this.state.sayings += 1;
      if (this.state.sayings > mostSayings) return label.next;
      const rest = restOfLine(this.state.tokens, label.next, () => false, {
        untilComma: role === 'classification',
        most: 200,
      });
      if (rest === null) return label.next;
      this.state.result[role] = this.state.result[role] === null ? rest.text : this.state.result[role];
      this.state.scope.part(role, rest.start, rest.end, rest.text, []);
    }
    return label.next;
  }
}
