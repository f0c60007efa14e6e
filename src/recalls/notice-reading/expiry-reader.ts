/** Dates of a notice: expiries, which bind to lots, and dates of manufacture. */
import type { DateExpression } from './date-expression.js';
import type { DraftPart } from './draft-scope.js';
import { hasDigit, type LabelHit } from './label-words.js';
import { isFiller, isListWord, shapeOf } from './lot-codes.js';
import type { ProductReader } from './product-reader.js';
import { type ReadingState, spanOver } from './reading-state.js';
import type { Token } from './tokens.js';
import { dateAt, looksLikeDate, printedSpan, widest } from './written-dates.js';

export class ExpiryReader {
  constructor(
    private readonly state: ReadingState,
    private readonly products: ProductReader,
  ) {}

  useByLabel(index: number, label: LabelHit, lineStart: boolean): number {
    const dates = this.state.dates(label.next);
    if (dates === null) {
      if (this.state.inList) this.state.datesBeside = true;
      else if (label.colon || hasDigit(this.state.tokens[label.next]?.text ?? '')) this.dateNotRead(label);
      if (this.state.inList && this.state.codesSinceLabel > 0 && label.colon) this.dateNotRead(label);
      return label.next;
    }
    this.state.remarkDates(dates);
    this.takeUseBy(index, dates, lineStart);
    this.state.lapsed = false;
    if (this.state.inList) this.state.expected = 'any';
    this.state.separatorSinceCode = false;
    return dates.next;
  }

  private dateNotRead(label: LabelHit): void {
    const token = this.state.tokens[label.next];
    if (token?.kind !== 'word' || this.state.context.marks.labels.has(label.next)) return;
    const end = Math.min(label.next + 4, this.state.endOfClause(label.next));
    this.state.context.remarks.add(
      'date not read',
      this.state.spanOfTokens(label.next, Math.max(end, label.next + 1)),
    );
  }

  private takeUseBy(index: number, dates: DateExpression, lineStart: boolean): void {
    const start = this.state.tokens[dates.from]?.start ?? 0;
    const end = this.state.tokens[dates.next - 1]?.end ?? start;
    const useBy = spanOver(dates.spans);
    const add = (targets: DraftPart['targets']): void => {
      this.state.scope.part('use-by', start, end, printedSpan(useBy), targets);
      if (dates.spans.length > 1) {
        this.state.context.remarks.add('several expiries', this.state.rawSpan(start, end), {
          readAs: printedSpan(useBy),
        });
      }
    };
    const leads = this.leadsCodes(dates.next);
    if (
      this.state.scope.hasPending &&
      !(leads && this.state.separatorSinceCode && this.state.tokens[index - 1]?.text === ';')
    ) {
      const targets = this.state.scope.waiting(lineStart);
      this.state.scope.bind(targets, useBy);
      add(targets);
      return;
    }
    if (this.state.scope.hasBound && !leads) {
      add(this.state.scope.widenBound(useBy));
      return;
    }
    this.state.flushLead();
    if (dates.yearUnclear) for (const item of this.state.scope.targets) item.openEnded = true;
    this.state.lead = { spans: dates.spans, start, end, part: null };
    this.state.scope.forgetBound();
  }

  /** Whether codes follow, which an expiry before them belongs to. */
  private leadsCodes(index: number): boolean {
    for (let at = index; at < index + 4; at++) {
      const token = this.state.tokens[at];
      if (token === undefined) return false;
      if (this.state.context.marks.labels.get(at)?.role === 'lot') return true;
      if (token.text === ':') return true;
      if (token.kind === 'sign' && !/^[-,(\u2013]$/.test(token.text)) return false;
      if (token.kind === 'word' && !isListWord(token) && !isFiller(token)) return false;
      if (token.kind === 'blank line') return false;
    }
    return false;
  }

  manufacturedLabel(index: number, label: LabelHit): number {
    const dates = this.state.dates(label.next);
    if (dates === null) return this.products.manufacturedBy(index, label);
    this.state.remarkDates(dates);
    const start = this.state.tokens[dates.from]?.start ?? 0;
    const end = this.state.tokens[dates.next - 1]?.end ?? start;
    const value = printedSpan(spanOver(dates.spans));
    const waiting = this.state.allLots ? [] : this.state.scope.waiting(false);
    if (waiting.length > 0) {
      this.state.scope.part('manufactured', start, end, value, waiting);
      this.state.context.remarks.add('manufactured beside codes', this.state.rawSpan(start, end), {
        readAs: value,
      });
    } else {
      const targets = dates.spans.flatMap((manufactured) =>
        this.state.scope.addTerm({ kind: 'manufactured', manufactured }, false),
      );
      this.state.scope.part('manufactured', start, end, value, targets);
    }
    if (this.state.inList) this.state.expected = 'any';
    this.state.separatorSinceCode = false;
    return dates.next;
  }

  /** A date in a list of lots without a word for it: mostly the expiry of the lot before it; where lots stand, a lot. */
  dateInList(index: number, token: Token): number | null {
    if (!hasDigit(token.text) && this.state.codesSinceLabel === 0) return null;
    const labelled = this.state.datesBeside && /[/.]/.test(token.text);
    const date = dateAt(this.state.tokens, index, {
      thisYear: this.state.thisYear,
      order: this.state.context.order,
      labelled,
    });
    if (date === null) return null;
    if (this.state.codesSinceLabel === 0 || !this.state.scope.hasPending) return null;
    if (this.state.shapes.has(shapeOf(token.text)) || looksLikeDate(this.state.lastCode)) return null;
    const named = date.next > index + 1 || /\p{L}/u.test(token.text);
    const long = /\d{4}/.test(token.text) || token.text.includes('/');
    if (this.state.separatorSinceCode && !this.state.datesBeside && !named && !long) return null;
    if (!this.state.separatorSinceCode || this.state.datesBeside || named || long) {
      const useBy = widest(date.readings);
      const targets = this.state.scope.lastWaiting();
      if (targets.length === 0) return null;
      this.state.scope.bind(targets, useBy);
      const start = token.start;
      const end = this.state.tokens[date.next - 1]?.end ?? token.end;
      this.state.scope.part('use-by', start, end, printedSpan(useBy), targets);
      if (date.readings.length > 1) this.state.ambiguous(index, date.next, date.readings);
      this.state.result.orderNeeded ||= date.byOrder;
      if (!this.state.datesBeside)
        this.state.context.remarks.add('date without a word', this.state.rawSpan(start, end), {
          readAs: printedSpan(useBy),
        });
      this.state.expected = 'any';
      this.state.separatorSinceCode = false;
      return date.next;
    }
    return null;
  }

  /** Whether a date of expiry or manufacture stands in the same clause and says which of all lots are meant. */
  isLimitedByDate(index: number): boolean {
    for (let at = index; at < index + 30; at++) {
      const token = this.state.tokens[at];
      if (token === undefined || token.kind === 'line end' || token.kind === 'blank line') return false;
      if (token.text === ';' || (token.text === '.' && this.state.endsSentence(at))) return false;
      const label = this.state.context.marks.labels.get(at);
      if (label?.role === 'use-by' || label?.role === 'manufactured')
        return this.state.dates(label.next) !== null;
      if (label?.role === 'lot') return false;
    }
    return false;
  }
}
