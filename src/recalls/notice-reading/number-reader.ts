/** Numbers that are no lots: GTINs, alone and in element strings, and numbers of other kinds. */
import { gtin14 } from '../../catalogue/gs1/check-digit.js';
import type { ElementFacts } from '../../catalogue/gs1/element-facts.js';
import type { DaySpan } from '../../stock/lot-matching/lot-scope.js';
import { type ElementStringInText, elementStringOfWord } from './element-strings-in-text.js';
import { hasDigit, type LabelHit } from './label-words.js';
import { isListWord } from './lot-codes.js';
import type { ReadingState } from './reading-state.js';
import type { Token } from './tokens.js';
import { printedSpan } from './written-dates.js';

export class NumberReader {
  constructor(private readonly state: ReadingState) {}

  gtinLabel(index: number, label: LabelHit, lineStart: boolean): number {
    let at = label.next;
    for (;;) {
      const read = this.numberAt(at);
      if (read === null) break;
      if (read.gtin === null) {
        this.state.context.remarks.add('number not a GTIN', this.state.spanOfTokens(at, read.next));
      } else {
        if (lineStart && at === label.next && this.needsItemFor(read.gtin))
          this.state.setTargets([this.state.scope.newItem(null, this.state.scope.targets[0])]);
        this.addGtin(
          read.gtin,
          this.state.tokens[at]?.start ?? 0,
          this.state.tokens[read.next - 1]?.end ?? 0,
        );
      }
      at = read.next;
      const joint = this.state.tokens[at];
      if (joint === undefined || !(/^[,/&;]$/.test(joint.text) || isListWord(joint))) break;
      if (!/^\d[\d-]{5,}$/.test(this.state.tokens[at + 1]?.text ?? '')) break;
      at += 1;
    }
    if (this.state.inList) this.state.lapse();
    this.state.naming = false;
    return Math.max(at, index + 1);
  }

  private needsItemFor(gtin: string): boolean {
    const [item] = this.state.scope.targets;
    return item !== undefined && item.terms.length > 0 && item.gtins.length > 0 && !item.gtins.includes(gtin);
  }

  addGtin(gtin: string, start: number, end: number): void {
    for (const item of this.state.scope.targets) item.gtins.push(gtin);
    this.state.scope.part('gtin', start, end, gtin, this.state.scope.ofItems());
  }

  /** A number of 8 to 14 digits with its spaces and hyphens, `0 21985 20005 6`; the GTIN it is, or null for none. */
  numberAt(index: number): { gtin: string | null; next: number } | null {
    let digits = '';
    let found: { gtin: string; next: number } | null = null;
    let at = index;
    for (let pieces = 0; pieces < 9 && digits.length <= 14; at++) {
      const token = this.state.tokens[at];
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

  otherNumber(label: LabelHit): number {
    let at = label.next;
    for (let pieces = 0; pieces < 6; at++) {
      const token = this.state.tokens[at];
      if (token === undefined || this.state.context.marks.labels.has(at) || token.gap === 'wide') break;
      if (token.kind === 'word' && hasDigit(token.text)) pieces += 1;
      else if (token.text !== '-' && token.text !== '#') break;
    }
    if (this.state.inList) this.state.lapse();
    return at;
  }

  bareWord(index: number, token: Token): number {
    const string = elementStringOfWord(token.text, this.state.context.today);
    if (string !== null) return this.takeElementString(index + 1, token.start, token.end, string);
    if (/^\d{12,14}$/.test(token.text)) {
      const gtin = gtin14(token.text);
      if (gtin !== undefined) {
        if (this.needsItemFor(gtin))
          this.state.setTargets([this.state.scope.newItem(null, this.state.scope.targets[0])]);
        this.addGtin(gtin, token.start, token.end);
      }
    }
    return index + 1;
  }

  readElementString(index: number, string: ElementStringInText): number {
    let next = index;
    while (next < this.state.tokens.length && (this.state.tokens[next]?.start ?? 0) < string.end) next += 1;
    if (string.fault !== null) {
      this.state.context.remarks.add('symbol not valid', this.state.rawSpan(string.start, string.end), {
        readAs: string.fault.message,
      });
    }
    return this.takeElementString(next, string.start, string.end, string.facts);
  }

  takeElementString(next: number, start: number, end: number, facts: ElementFacts): number {
    const text = this.state.folded(start, end);
    const gtin = facts.gtin14 === undefined ? undefined : gtin14(facts.gtin14);
    if (gtin !== undefined) {
      if (this.needsItemFor(gtin)) {
        const known = this.state.scope.items.find((item) => item.gtins.includes(gtin));
        this.state.setTargets([known ?? this.state.scope.newItem(null)]);
      }
      const at = start + Math.max(0, text.indexOf(gtin));
      this.addGtin(gtin, at, at + gtin.length);
    }
    const stated = facts.useBy ?? facts.bestBefore;
    const useBy = stated === undefined ? null : statedSpan(stated);
    if (facts.lotCode !== undefined) {
      const targets = this.state.scope.addTerm({ kind: 'code', code: facts.lotCode, useBy }, false);
      const at = start + Math.max(0, text.lastIndexOf(facts.lotCode));
      this.state.scope.part('code', at, at + facts.lotCode.length, facts.lotCode, targets);
    } else if (useBy !== null) {
      const targets = this.state.scope.addTerm({ kind: 'use-by', useBy }, false);
      this.state.scope.part('use-by', start, end, printedSpan(useBy), targets);
    }
    this.state.codesSinceLabel += 1;
    this.state.expected = this.state.inList ? 'any' : 'none';
    return next;
  }
}

function statedSpan({ date, precision }: { date: string; precision: 'day' | 'month' }): DaySpan {
  return { from: precision === 'month' ? `${date.slice(0, 7)}-01` : date, through: date };
}
