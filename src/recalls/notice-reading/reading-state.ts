/** Where the walk through a notice stands, and what all that read on the way share. */
import type { DaySpan } from '../../stock/lot-matching/lot-scope.js';
import { type DateExpression, dateExpressionAt } from './date-expression.js';
import type { DraftItem, DraftPart, DraftScope } from './draft-scope.js';
import type { ElementStringInText } from './element-strings-in-text.js';
import { type FoldedText, spanOf, type TextSpan } from './folded-text.js';
import type { NoticeMarks } from './notice-marks.js';
import type { RemarkList } from './notice-remarks.js';
import type { Token } from './tokens.js';
import { type DateOrder, printedSpan } from './written-dates.js';

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
export type Expected = 'any' | 'strong' | 'none';

export class ReadingState {
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
  readonly tokens: readonly Token[];
  readonly scope: DraftScope;
  readonly strings: Map<number, ElementStringInText>;
  readonly thisYear: number;
  inList = false;
  /** A list was begun and may go on at the start of a line. */
  listOpen = false;
  expected: Expected = 'none';
  lapsed = false;
  atLineStart = true;
  codesSinceLabel = 0;
  /** The list also has a column or place for use-by dates. */
  datesBeside = false;
  betweenAnd = false;
  allLots = false;
  shapes = new Set<string>();
  lastCode = '';
  separatorSinceCode = false;
  lead: { spans: DaySpan[]; start: number; end: number; part: DraftPart | null } | null = null;
  naming = false;
  /** A numbered list of products is being read. */
  namingList = false;
  namedItems: DraftItem[] = [];
  productList = false;
  lastNumber = 0;
  makerRank = 0;
  sayings = 0;

  constructor(readonly context: WalkContext) {
    this.tokens = context.tokens;
    this.scope = context.scope;
    this.strings = new Map(context.elementStrings.map((string) => [string.start, string]));
    this.thisYear = Number(context.today.slice(0, 4));
  }

  setTargets(items: DraftItem[]): void {
    this.flushLead();
    this.scope.forgetWaiting();
    this.scope.group += 1;
    this.scope.targets = items;
  }

  /** An expiry that no codes followed is a term of its own. */
  flushLead(): void {
    const lead = this.lead;
    this.lead = null;
    if (lead === null || lead.part !== null) return;
    const targets = lead.spans.flatMap((useBy) => this.scope.addTerm({ kind: 'use-by', useBy }, false));
    this.scope.part('use-by', lead.start, lead.end, printedSpan(spanOver(lead.spans)), targets);
  }

  lapse(): void {
    this.lapsed = true;
    this.expected = 'strong';
  }

  reopen(): void {
    this.lapsed = false;
    this.expected = 'any';
  }

  endList(): void {
    this.inList = false;
    this.listOpen = false;
    this.expected = 'none';
    this.lapsed = false;
    this.allLots = false;
  }

  dates(index: number): DateExpression | null {
    return dateExpressionAt(this.tokens, index, {
      thisYear: this.thisYear,
      order: this.context.order,
      isLabel: (at) => this.context.marks.labels.has(at),
    });
  }

  remarkDates(dates: DateExpression): void {
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

  ambiguous(from: number, next: number, readings: readonly { from: string; through: string }[]): void {
    this.context.remarks.add('ambiguous date', this.spanOfTokens(from, next), {
      otherReadings: readings.map((reading) =>
        reading.from === reading.through ? reading.from : `${reading.from} to ${reading.through}`,
      ),
    });
  }

  /** Whether a label begins a field of its own, which ends the value of the one before. */
  beginsField(index: number): boolean {
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

  endOfClause(index: number): number {
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

  endsSentence(index: number): boolean {
    const following = this.tokens[index + 1];
    if (following === undefined || following.kind === 'line end' || following.kind === 'blank line')
      return true;
    return following.kind === 'word' && following.gap !== 'none' && /^\p{Lu}/u.test(following.text);
  }

  folded(start: number, end: number): string {
    return this.context.folded.text.slice(start, end);
  }

  rawSpan(start: number, end: number): TextSpan {
    return spanOf(this.context.folded, start, end);
  }

  spanOfTokens(from: number, next: number): TextSpan {
    const start = this.tokens[from]?.start ?? 0;
    return this.rawSpan(start, this.tokens[next - 1]?.end ?? start);
  }

  markOpenEnded(start: number, end: number, local: boolean): void {
    if (local) for (const item of this.scope.targets) item.openEnded = true;
    else this.result.openEnded = true;
    this.scope.part('open-ended', start, end, this.folded(start, end), local ? this.scope.ofItems() : []);
    this.context.remarks.add('open-ended', this.rawSpan(start, end));
  }

  leadUseBy(): DaySpan | null {
    return this.lead === null ? null : spanOver(this.lead.spans);
  }

  /** The expiry before the codes belongs to them. */
  useLead(targets: DraftPart['targets']): void {
    const lead = this.lead;
    if (lead === null) return;
    if (lead.part === null)
      lead.part = this.scope.part('use-by', lead.start, lead.end, printedSpan(spanOver(lead.spans)), [
        ...targets,
      ]);
    else lead.part.targets.push(...targets);
  }
}

/** One span over several. */
export function spanOver(spans: readonly DaySpan[]): DaySpan {
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

/** A sign that begins an entry of a list. */
export function isBullet(token: Token): boolean {
  return token.kind === 'sign' && /^[-*•\u2013>]$/.test(token.text);
}
