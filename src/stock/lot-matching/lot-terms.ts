import { type CodeForms, codeForms } from './code-forms.js';
import { type CodeRange, codeRange, isSlipFromRange, placeInRange } from './code-range.js';
import { dayInSpan, useByInSpan } from './day-spans.js';
import type { LotFacts, RecordedCode } from './lot-facts.js';
import type { DaySpan, LotTerm, MatchGrade, ScopeItem } from './lot-scope.js';
import {
  type LotReasonCode,
  lotReasonCodes,
  type MatchFacts,
  type MatchReason,
  matchReason,
} from './match-reasons.js';
import { isLikelySlip, withoutOne } from './one-slip.js';

export interface LotMatch {
  grade: MatchGrade;
  reasons: MatchReason[];
  /** Set when a code of the lot, as it stands on record now, is equal to one that is named, or lies in such a range. */
  byCode: MatchReason | null;
}

/** Decides by the lots that one item names, once its product is. */
export type LotTermsMatcher = (lot: LotFacts) => LotMatch;

type CodeTerm = Extract<LotTerm, { kind: 'code' }> & { forms: CodeForms };
type RangeTerm = Extract<LotTerm, { kind: 'code range' }> & { written: CodeRange; seen: CodeRange };

interface FormedCode extends RecordedCode {
  forms: CodeForms;
}

interface Found {
  code: LotReasonCode;
  facts: MatchFacts;
  /** The code by which it was found was corrected since. */
  corrected?: string;
}

const certain: readonly LotReasonCode[] = [
  'all lots named',
  'code equal',
  'code in range',
  'use-by in span',
  'manufactured in span',
];

/**
 * Prepares the lots that an item names, so that many lots can be compared with thousands of codes.
 *
 * Certain is a lot whose code is equal but for case and outer spaces, or lies in a range, unless the use-by date that is
 * named with it contradicts the record; then it is possible. Possible is also what one slip, look-alike characters, spacing,
 * lost zeros or a correction of the record can explain, and what has no code or date to compare. Two doubts at once – a
 * slipped or missing code, and a use-by date that contradicts – make it another lot.
 */
export function lotTermsMatcher({ lots, openEnded }: Pick<ScopeItem, 'lots' | 'openEnded'>): LotTermsMatcher {
  const codes = new CodeTerms(lots.flatMap((term) => (term.kind === 'code' ? [term] : [])));
  const ranges = lots.flatMap((term) => (term.kind === 'code range' ? [rangeTerm(term)] : []));
  const others = lots.filter(({ kind }) => kind !== 'code' && kind !== 'code range');
  const byCodes = codes.size + ranges.length > 0;
  return (lot) => {
    const formed = lot.codes.map((code): FormedCode => ({ ...code, forms: codeForms(code.code) }));
    const found = others.flatMap((term) => byTerm(term, lot));
    for (const code of formed) {
      found.push(...codes.find(code, lot));
      for (const term of ranges) found.push(...byRange(term, code, lot));
    }
    if (byCodes && !lot.codes.some(({ superseded, kind }) => !superseded && kind !== 'other')) {
      const code: LotReasonCode = lot.codeState === 'unreadable' ? 'code unreadable' : 'no code printed';
      const isContradicted = (useBy: DaySpan | null) => contradicts(useBy, lot);
      if (![...codes.terms, ...ranges].every(({ useBy }) => isContradicted(useBy))) {
        found.push({ code, facts: {} });
      }
    }
    if (openEnded) found.push({ code: 'open-ended', facts: {} });
    if (lots.length === 0) found.push({ code: 'no lots named', facts: {} });
    return strongest(found);
  };
}

/** The codes that an item names, to be found by every form of theirs. */
class CodeTerms {
  readonly terms: CodeTerm[];
  private readonly byWritten = new Map<string, CodeTerm[]>();
  private readonly byPlain = new Map<string, CodeTerm[]>();
  private readonly bySeen = new Map<string, CodeTerm[]>();
  private readonly byValue = new Map<string, CodeTerm[]>();
  /** By what is left of it without one character: whatever is one slip apart shares one of these. */
  private readonly byRest = new Map<string, CodeTerm[]>();

  constructor(terms: readonly Extract<LotTerm, { kind: 'code' }>[]) {
    this.terms = terms.map((term) => ({ ...term, forms: codeForms(term.code) }));
    for (const term of this.terms) {
      const { written, plain, seen, value } = term.forms;
      add(this.byWritten, written, term);
      add(this.byPlain, plain, term);
      add(this.bySeen, seen, term);
      add(this.byValue, value, term);
      for (const rest of [seen, ...withoutOne(seen)]) add(this.byRest, rest, term);
    }
  }

  get size(): number {
    return this.terms.length;
  }

  find(code: FormedCode, lot: LotFacts): Found[] {
    if (this.terms.length === 0) return [];
    const { written, plain, seen, value } = code.forms;
    const equal = this.byWritten.get(written) ?? [];
    const found = equal.map((term): Found => {
      if (contradicts(term.useBy, lot)) {
        const { from, through } = term.useBy ?? { from: null, through: null };
        return {
          code: 'code equal, other use-by',
          facts: { named: term.code, recorded: lot.useBy, from, through },
        };
      }
      return { code: 'code equal', facts: { named: term.code, recorded: code.code } };
    });
    if (found.length === 0) {
      const looser =
        this.looser('other spacing', this.byPlain.get(plain), code) ??
        this.looser('look-alikes', this.bySeen.get(seen), code) ??
        this.looser('leading zeros', this.byValue.get(value), code) ??
        this.slips(code, lot);
      found.push(...looser);
    }
    return code.superseded ? found.map((one) => ({ ...one, corrected: code.code })) : found;
  }

  private looser(
    reason: LotReasonCode,
    terms: CodeTerm[] | undefined,
    code: FormedCode,
  ): Found[] | undefined {
    return terms
      ?.slice(0, 1)
      .map((term) => ({ code: reason, facts: { named: term.code, recorded: code.code } }));
  }

  private slips(code: FormedCode, lot: LotFacts): Found[] {
    const { seen } = code.forms;
    for (const rest of [seen, ...withoutOne(seen)]) {
      for (const term of this.byRest.get(rest) ?? []) {
        if (!isLikelySlip(term.forms.seen, seen) || contradicts(term.useBy, lot)) continue;
        return [{ code: 'slip', facts: { named: term.code, recorded: code.code } }];
      }
    }
    return [];
  }
}

function rangeTerm(term: Extract<LotTerm, { kind: 'code range' }>): RangeTerm {
  const [from, through] = [codeForms(term.from), codeForms(term.through)];
  return {
    ...term,
    written: codeRange(from.written, through.written),
    seen: codeRange(from.seen, through.seen),
  };
}

function byTerm(term: LotTerm, lot: LotFacts): Found[] {
  switch (term.kind) {
    case 'all lots':
      return [{ code: 'all lots named', facts: {} }];
    case 'use-by': {
      const facts = { recorded: lot.useBy, ...term.useBy };
      const reasons = {
        inside: 'use-by in span',
        overlaps: 'use-by overlaps span',
        unknown: 'no use-by on record',
        outside: null,
      } as const;
      const code = reasons[useByInSpan(term.useBy, lot)];
      return code === null ? [] : [{ code, facts }];
    }
    case 'manufactured': {
      const facts = { recorded: lot.manufacturedOn, ...term.manufactured };
      const place = dayInSpan(term.manufactured, lot.manufacturedOn);
      if (place === 'inside') return [{ code: 'manufactured in span', facts }];
      return place === 'unknown' ? [{ code: 'no manufacture date on record', facts }] : [];
    }
    default:
      return [];
  }
}

function byRange(term: RangeTerm, code: FormedCode, lot: LotFacts): Found[] {
  const facts = { recorded: code.code, from: term.from, through: term.through };
  const reason = reasonByRange(term, code.forms);
  if (reason === null) return [];
  const found = (each: LotReasonCode, its: MatchFacts = facts): Found[] => [
    { code: each, facts: its, ...(code.superseded && { corrected: code.code }) },
  ];
  if (!contradicts(term.useBy, lot)) return found(reason);
  if (reason !== 'code in range') return [];
  const { from, through } = term.useBy ?? { from: null, through: null };
  const named = `${term.from} through ${term.through}`;
  return found('code in range, other use-by', { named, recorded: lot.useBy, from, through });
}

function reasonByRange(term: RangeTerm, { written, seen }: CodeForms): LotReasonCode | null {
  if (term.written.kind === 'not understood') {
    const isEnd = [term.from, term.through].some((end) => codeForms(end).written === written);
    return isEnd ? 'code in range' : 'range not understood';
  }
  switch (placeInRange(term.written, written)) {
    case 'inside':
      return 'code in range';
    case 'other length':
      return 'range shows other length';
    case 'perhaps inside':
      return 'range perhaps';
    default:
  }
  const place = placeInRange(term.seen, seen);
  if (place === 'inside' || place === 'perhaps inside') return 'look-alike of range';
  if (place === 'other length') return 'range shows other length';
  return isSlipFromRange(term.seen, seen) ? 'slip from range' : null;
}

function contradicts(useBy: DaySpan | null, lot: LotFacts): boolean {
  return useBy !== null && useByInSpan(useBy, lot) === 'outside';
}

function strongest(found: readonly Found[]): LotMatch {
  const rank = ({ code, corrected }: Found) =>
    lotReasonCodes.indexOf(code) + (corrected !== undefined && certain.includes(code) ? certain.length : 0);
  const [best] = [...found].sort((one, other) => rank(one) - rank(other));
  if (best === undefined) return { grade: 'not', reasons: [matchReason('lot not named')], byCode: null };
  const { code, facts, corrected } = best;
  const reasons = [matchReason(code, facts)];
  if (corrected !== undefined) reasons.push(matchReason('corrected code', { recorded: corrected }));
  const isCertain = certain.includes(code) && corrected === undefined;
  const equal = found.find(
    (one) => (one.code === 'code equal' || one.code === 'code in range') && one.corrected === undefined,
  );
  const byCode = equal === undefined ? null : matchReason(equal.code, equal.facts);
  return { grade: isCertain ? 'certain' : 'possible', reasons, byCode };
}

function add<Value>(map: Map<string, Value[]>, key: string, value: Value): void {
  const known = map.get(key);
  if (known) known.push(value);
  else map.set(key, [value]);
}
