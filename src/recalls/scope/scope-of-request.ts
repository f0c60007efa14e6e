import type { DaySpan, LotScope, LotTerm, ScopeItem } from '../../stock/lot-matching/lot-scope.js';

interface WrittenSpan {
  from?: string;
  through?: string;
}

interface WrittenTerm {
  kind: LotTerm['kind'];
  code?: string;
  from?: string;
  through?: string;
  useBy?: WrittenSpan;
  manufactured?: WrittenSpan;
}

interface WrittenItem {
  makerName?: string;
  productName?: string;
  shade?: string;
  gtins: readonly string[];
  productIds: readonly string[];
  lots: readonly WrittenTerm[];
  openEnded: boolean;
}

export interface ScopeFault {
  /** Path in the scope, such as `items.0.lots.2.code`. */
  field: string;
  message: string;
}

/**
 * A scope as somebody wrote it into a request, with everything that a kind of term needs.
 * @returns the scope, or what is missing or contradicts itself, all of it
 */
export function scopeOf(written: { items: readonly WrittenItem[] }): {
  scope: LotScope;
  faults: ScopeFault[];
} {
  const faults: ScopeFault[] = [];
  const items = written.items.map((item, index): ScopeItem => {
    const field = `items.${index}`;
    if (!namesSomething(item)) {
      faults.push({
        field,
        message:
          'Name what is recalled: a maker, a product, a shade, a GTIN, a product of the register, or lots.',
      });
    }
    return {
      makerName: item.makerName ?? null,
      productName: item.productName ?? null,
      shade: item.shade ?? null,
      gtins: [...new Set(item.gtins)],
      productIds: [...new Set(item.productIds)],
      lots: item.lots.flatMap((term, at) => termOf(term, `${field}.lots.${at}`, faults) ?? []),
      openEnded: item.openEnded,
    };
  });
  return { scope: { items }, faults };
}

function namesSomething({ makerName, productName, shade, gtins, productIds, lots }: WrittenItem): boolean {
  const named = makerName ?? productName ?? shade ?? gtins[0] ?? productIds[0];
  // "All lots" of nothing in particular would hold the whole shelf.
  return named !== undefined || lots.some(({ kind }) => kind !== 'all lots');
}

function termOf(term: WrittenTerm, field: string, faults: ScopeFault[]): LotTerm | undefined {
  const { kind, code, from, through } = term;
  const useBy = spanOf(term.useBy, `${field}.useBy`, faults);
  const manufactured = spanOf(term.manufactured, `${field}.manufactured`, faults);
  const missing = (name: string, message: string) => {
    faults.push({ field: `${field}.${name}`, message });
    return undefined;
  };
  switch (kind) {
    case 'all lots':
      return { kind };
    case 'code':
      return code === undefined ? missing('code', 'Give the code of the lot.') : { kind, code, useBy };
    case 'code range':
      if (from === undefined || through === undefined) {
        return missing(from === undefined ? 'from' : 'through', 'Give the first and the last code.');
      }
      return { kind, from, through, useBy };
    case 'use-by':
      return useBy === null ? missing('useBy', 'Give the use-by dates that are meant.') : { kind, useBy };
    case 'manufactured':
      return manufactured === null
        ? missing('manufactured', 'Give the days of manufacture that are meant.')
        : { kind, manufactured };
  }
}

/** Null: no days are said. */
function spanOf(span: WrittenSpan | undefined, field: string, faults: ScopeFault[]): DaySpan | null {
  if (span === undefined) return null;
  const { from = null, through = null } = span;
  if (from === null && through === null) return null;
  if (from !== null && through !== null && through < from) {
    faults.push({ field, message: `The days end, ${through}, before they begin, ${from}. Turn them round.` });
  }
  return { from, through };
}
