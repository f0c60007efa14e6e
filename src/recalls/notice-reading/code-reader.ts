/** Lots of a list, one after the other: codes, ranges and what stands between them. */
import { completedEnd, hyphenedRange, rangeFacts, wideRange } from './code-ranges.js';
import type { DraftScope } from './draft-scope.js';
import { elementStringOfWord } from './element-strings-in-text.js';
import type { ExpiryReader } from './expiry-reader.js';
import { hasDigit } from './label-words.js';
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
import type { NumberReader } from './number-reader.js';
import type { ReadingState } from './reading-state.js';
import { plainWord, type Token } from './tokens.js';
import { dateAt, looksLikeDate } from './written-dates.js';

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

export class CodeReader {
  constructor(
    private readonly state: ReadingState,
    private readonly expiries: ExpiryReader,
    private readonly numbers: NumberReader,
  ) {}

  inListStep(index: number, token: Token): number {
    if (token.kind === 'sign') return this.sign(index, token);
    if (isListWord(token) && !(this.state.betweenAnd && this.state.expected === 'none')) {
      if (this.state.expected === 'none') this.state.expected = this.state.lapsed ? 'strong' : 'any';
      this.state.separatorSinceCode = true;
      return index + 1;
    }
    if (this.state.codesSinceLabel === 0 && !this.state.lapsed && isFiller(token)) {
      if (/^(?:between|zwischen|entre)$/i.test(token.text)) this.state.betweenAnd = true;
      return index + 1;
    }
    if (
      this.state.codesSinceLabel > 0 &&
      /^(?:from|between|von|zwischen|entre|nos?|nr|numbers?|FROM|BETWEEN|NOS?|NUMBERS?)$/.test(token.text)
    ) {
      this.state.betweenAnd = /^(?:between|zwischen|entre)$/i.test(token.text);
      this.state.expected = 'any';
      return index + 1;
    }
    const string = elementStringOfWord(token.text, this.state.context.today);
    if (string !== null) return this.numbers.takeElementString(index + 1, token.start, token.end, string);
    if (this.weakOpenEnded(index)) return index + 1;
    const date = this.expiries.dateInList(index, token);
    if (date !== null) return date;
    if (token.text.length > longestCode && hasDigit(token.text) && this.state.expected !== 'none')
      return this.tooLong(index, token);
    if (
      this.state.expected === 'any' ||
      (this.state.expected === 'none' && token.gap === 'wide' && !this.state.lapsed)
    ) {
      const next = this.codeAt(index);
      if (next !== null) return next;
    }
    const apart =
      isStrongCode(token) ||
      (this.state.codesSinceLabel === 0 && hasDigit(token.text) && token.text.length >= 3);
    if (this.state.lapsed && apart && !isQuantity(this.state.tokens, index) && !this.isMeasure(index)) {
      const next = this.codeAt(index);
      if (next !== null) {
        this.state.context.remarks.add('code apart from its word', this.state.spanOfTokens(index, index + 1));
        this.state.lapsed = true;
        this.state.expected = 'strong';
        return next;
      }
    }
    this.state.lapse();
    return index + 1;
  }

  private isMeasure(index: number): boolean {
    return /^\d+(?:[.,]\d+)?\p{Ll}{1,3}$/u.test(this.state.tokens[index]?.text ?? '');
  }

  private sign(index: number, token: Token): number {
    switch (token.text) {
      case ';':
        this.state.scope.group += 1;
        if (this.state.lead?.part) this.state.lead = null;
        this.state.lapsed = false;
        this.state.expected = 'any';
        break;
      case '.':
        if (this.state.endsSentence(index)) this.endSentence(index);
        break;
      case ':':
        if (this.state.codesSinceLabel === 0 || !this.state.lapsed) this.state.reopen();
        break;
      case '(':
      case '[': {
        const end = this.endOfQuantity(index);
        if (end !== null) return end;
        if (this.state.codesSinceLabel > 0) this.state.expected = 'strong';
        break;
      }
      case ')':
      case ']':
        if (!this.state.lapsed) this.state.expected = 'strong';
        break;
      default:
        if (/[,/|*•&+]/.test(token.text)) this.state.expected = this.state.lapsed ? 'strong' : 'any';
        else if (/[-\u2013]/.test(token.text))
          this.state.expected = this.state.lapsed ? 'strong' : this.state.expected;
    }
    this.state.separatorSinceCode = true;
    return index + 1;
  }

  /** `( 2 units)` says how many there are of the lot before it. */
  private endOfQuantity(index: number): number | null {
    if (this.state.codesSinceLabel === 0 || !isQuantity(this.state.tokens, index + 1)) return null;
    return this.state.tokens[index + 3]?.text === ')' ? index + 4 : null;
  }

  private endSentence(index: number): void {
    const following = this.state.tokens[index + 1];
    this.state.scope.group += 1;
    this.state.lapsed = false;
    this.state.allLots = false;
    if (
      following !== undefined &&
      mayBeCode(following) &&
      hasDigit(following.text) &&
      isStrongCode(following)
    ) {
      this.state.expected = 'any';
      return;
    }
    if (following?.kind === 'word') {
      this.state.inList = false;
      this.state.expected = 'none';
    }
  }

  /** "such as", "e.g.", "etc.", "at least" in a list of lots. */
  private weakOpenEnded(index: number): boolean {
    const written = this.state.tokens[index]?.text.slice(0, 20) ?? '';
    if (hasDigit(written) || written === written.toUpperCase()) return false;
    const word = plainWord(written);
    const following = this.state.tokens[index + 1]?.plain ?? '';
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
    const start = this.state.tokens[index]?.start ?? 0;
    this.state.markOpenEnded(start, this.state.tokens[words ? index + 1 : index]?.end ?? start, true);
    this.state.reopen();
    return true;
  }

  private tooLong(index: number, token: Token): number {
    for (const item of this.state.scope.targets) item.openEnded = true;
    this.state.context.remarks.add('code too long', this.state.rawSpan(token.start, token.end), {
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
      this.state.context.remarks.add('codes parted by spaces', this.state.spanOfTokens(index, entry.next), {
        otherReadings: entry.codes.slice(0, 8).map(({ text }) => text),
      });
    }
    for (const code of entry.codes) this.takeCode(code.text, code.from, code.to + 1, entry.alternatives);
    return entry.next;
  }

  private entryAt(index: number): ReturnType<typeof codeEntryAt> {
    const token = this.state.tokens[index];
    if (!mayBeCode(token)) return null;
    const entry = codeEntryAt(this.state.tokens, index, {
      isTaken: (at) => this.isTaken(at),
      shapes: this.state.shapes,
    });
    if (entry === null || hasDigit(token.text) || entry.codes.some(({ text }) => hasDigit(text)))
      return entry;
    // Letters alone are a code only where nothing but the list goes on.
    const following = this.state.tokens[entry.next];
    const ends =
      following === undefined ||
      following.kind !== 'word' ||
      isListWord(following) ||
      isRangeWord(following) ||
      this.state.context.marks.labels.has(entry.next) ||
      following.gap === 'wide';
    return ends && (token.text.length <= 2 || this.atCodePlace(index)) ? entry : null;
  }

  /** Directly behind a lot word or a code and its comma. */
  private atCodePlace(index: number): boolean {
    const before = this.state.tokens[index - 1];
    return before !== undefined && before.kind !== 'line end' && before.kind !== 'blank line';
  }

  private isTaken(at: number): boolean {
    const token = this.state.tokens[at];
    if (token === undefined || this.state.context.marks.labels.has(at) || this.state.strings.has(token.start))
      return true;
    const names = this.state.context.marks.names.get(at);
    if (names !== undefined && !hasDigit(token.text)) return true;
    if (isRangeWord(token)) return true;
    const date = dateAt(this.state.tokens, at, {
      thisYear: this.state.thisYear,
      order: null,
      labelled: false,
    });
    return (
      date !== null &&
      (token.text.includes('/') ||
        /\p{L}/u.test(token.text) ||
        date.next > at + 1 ||
        /^\d{4}-/.test(token.text) ||
        this.state.datesBeside)
    );
  }

  private rangeFrom(from: string, index: number): { to: string; next: number } | null {
    const joint = this.state.tokens[index];
    if (joint === undefined) return null;
    const word = joint.text.toLowerCase();
    const plainHyphen = joint.text === '-' && this.state.tokens[index + 1]?.gap !== 'none';
    const spanish =
      word === 'a' && joint.text === 'a' && /^\d/.test(this.state.tokens[index + 1]?.text ?? '');
    const and = this.state.betweenAnd && isListWord(joint);
    if (!isRangeWord(joint) && !plainHyphen && !spanish && !and && joint.text !== '-' && word !== 'up')
      return null;
    let at = index + 1;
    // "through to", "up to and including", "through lot".
    for (let steps = 0; steps < 4; steps++) {
      const token = this.state.tokens[at];
      const label = this.state.context.marks.labels.get(at);
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
    const end = this.state.tokens[at];
    if (end === undefined || !mayBeCode(end) || isQuantity(this.state.tokens, at)) return null;
    const entry = codeEntryAt(this.state.tokens, at, {
      isTaken: (place) => this.isTaken(place),
      shapes: this.state.shapes,
    });
    const to = entry?.codes.length === 1 ? (entry.codes[0]?.text ?? '') : end.text;
    const next = entry?.codes.length === 1 ? entry.next : at + 1;
    if (!hasDigit(from) && !hasDigit(to) && from.length > 2) return null;
    const sign = joint.kind === 'sign';
    if (sign && shapeOf(from) !== shapeOf(to) && completedEnd(from, to) === null) return null;
    if (
      sign &&
      dateAt(this.state.tokens, at, { thisYear: this.state.thisYear, order: null, labelled: false }) !==
        null &&
      !looksLikeDate(from)
    )
      return null;
    this.state.betweenAnd = false;
    return { to, next };
  }

  private takeRange(from: string, to: string, index: number, next: number): void {
    const start = this.state.tokens[index]?.start ?? 0;
    const end = this.state.tokens[next - 1]?.end ?? start;
    const span = this.state.rawSpan(start, end);
    const facts = rangeFacts(from, to);
    const useBy = this.state.leadUseBy();
    const targets = this.state.scope.addTerm(
      { kind: 'code range', from: facts.from, through: facts.through, useBy },
      useBy === null,
    );
    const ends = (codes: readonly string[]): void => {
      for (const code of codes)
        targets.push(...this.state.scope.addTerm({ kind: 'code', code, useBy }, useBy === null));
    };
    if (facts.turned)
      this.state.context.remarks.add('range turned', span, {
        readAs: `${facts.from} \u2013 ${facts.through}`,
      });
    if (facts.count !== null && facts.count > wideRange)
      this.state.context.remarks.add('very wide range', span, { count: facts.count });
    if (facts.differentLength) {
      const whole = completedEnd(from, to);
      if (whole !== null) {
        targets.push(
          ...this.state.scope.addTerm({ kind: 'code range', from, through: whole, useBy }, useBy === null),
        );
      }
      ends([from, to]);
      this.state.context.remarks.add('range ends differ in length', span, {
        otherReadings: whole === null ? [] : [`${from} \u2013 ${whole}`],
      });
    } else if (!facts.alike) {
      ends([from, to]);
      this.state.context.remarks.add('range ends differ in letters', span);
    }
    this.state.scope.part('code range', start, end, `${facts.from} \u2013 ${facts.through}`, targets);
    this.state.useLead(targets);
  }

  private takeCode(code: string, from: number, next: number, alternatives: readonly string[]): void {
    const start = this.state.tokens[from]?.start ?? 0;
    const end = this.state.tokens[next - 1]?.end ?? start;
    const span = this.state.rawSpan(start, end);
    const useBy = this.state.leadUseBy();
    const targets = this.state.scope.addTerm({ kind: 'code', code, useBy }, useBy === null);
    const more = (term: Parameters<DraftScope['addTerm']>[0]): void => {
      targets.push(...this.state.scope.addTerm(term, useBy === null));
    };
    for (const other of alternatives) more({ kind: 'code', code: other, useBy });
    if (alternatives.length > 0)
      this.state.context.remarks.add('code with spaces', span, { otherReadings: [...alternatives] });
    const halves = hyphenedRange(code);
    if (halves !== null) {
      more({ kind: 'code range', from: halves[0], through: halves[1], useBy });
      this.state.context.remarks.add('range or code', span, { readAs: `${halves[0]} \u2013 ${halves[1]}` });
      const { count } = rangeFacts(...halves);
      if (count !== null && count > wideRange)
        this.state.context.remarks.add('very wide range', span, { count });
    }
    if (targets.length > 0) this.state.scope.part('code', start, end, code, targets);
    this.state.useLead(targets);
    if (looksLikeDate(code)) this.state.context.remarks.add('code like a date', span);
    if (!hasDigit(code)) this.state.context.remarks.add('code of letters', span);
    const digits = digitsForLetters(code);
    if (digits !== code)
      this.state.context.remarks.add('code with O or I', span, { otherReadings: [digits] });
    this.afterCode(code);
  }

  private afterCode(code: string): void {
    this.state.codesSinceLabel += 1;
    if (this.state.shapes.size < 500) this.state.shapes.add(shapeOf(code));
    this.state.lastCode = code;
    this.state.expected = 'none';
    this.state.lapsed = false;
    this.state.separatorSinceCode = false;
  }
}

/** In capitals only English ones: AL 12-34 is a code. */
function isRangeWord({ text }: Token): boolean {
  return rangeWords.has(text) || /^(?:Thru|Through|To|Until|Bis|THRU|THROUGH|TO|UNTIL|BIS)$/.test(text);
}

/** O and I beside digits as the digits they look like. */
function digitsForLetters(code: string): string {
  return code.replace(/(?<=\d)[Oo]|[Oo](?=\d)/g, '0').replace(/(?<=\d)[Il]|[Il](?=\d)/g, '1');
}
