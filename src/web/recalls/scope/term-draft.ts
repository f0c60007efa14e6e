import type { DaySpan, LotTerm } from '../../../stock/lot-matching/lot-scope.js';
import { codesOf } from './scope-draft.js';

/** What is typed of lots. */
export interface TypedTerm {
  kind: LotTerm['kind'];
  /** Several when new ones are added. */
  codes: string;
  from: string;
  through: string;
  /** Of the dates that are named, or that stand beside codes. */
  firstDay: string;
  lastDay: string;
}

export const emptyTerm: TypedTerm = {
  kind: 'code',
  codes: '',
  from: '',
  through: '',
  firstDay: '',
  lastDay: '',
};

export function typedOf(term: LotTerm): TypedTerm {
  const span =
    term.kind === 'all lots' ? null : term.kind === 'manufactured' ? term.manufactured : term.useBy;
  return {
    kind: term.kind,
    codes: term.kind === 'code' ? term.code : '',
    from: term.kind === 'code range' ? term.from : '',
    through: term.kind === 'code range' ? term.through : '',
    firstDay: span?.from ?? '',
    lastDay: span?.through ?? '',
  };
}

/** The lots that were typed; none while something is missing. */
export function termsOf(typed: TypedTerm): LotTerm[] {
  const span = spanOf(typed);
  switch (typed.kind) {
    case 'all lots':
      return [{ kind: 'all lots' }];
    case 'code':
      return codesOf(typed.codes).map((code) => ({ kind: 'code', code, useBy: span }));
    case 'code range': {
      const [from, through] = [typed.from.trim(), typed.through.trim()];
      return from === '' || through === '' ? [] : [{ kind: 'code range', from, through, useBy: span }];
    }
    case 'use-by':
      return span === null ? [] : [{ kind: 'use-by', useBy: span }];
    case 'manufactured':
      return span === null ? [] : [{ kind: 'manufactured', manufactured: span }];
  }
}

function spanOf({ firstDay, lastDay }: TypedTerm): DaySpan | null {
  if (firstDay === '' && lastDay === '') return null;
  return { from: firstDay === '' ? null : firstDay, through: lastDay === '' ? null : lastDay };
}
