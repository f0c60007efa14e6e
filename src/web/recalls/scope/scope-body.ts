import type { DaySpan, LotScope, LotTerm } from '../../../stock/lot-matching/lot-scope.js';

/** A scope as the service takes it: what is not said is left out. */
export function bodyOf({ items }: LotScope) {
  return {
    items: items.map(({ makerName, productName, shade, gtins, productIds, lots, openEnded }) => ({
      ...(makerName !== null && { makerName }),
      ...(productName !== null && { productName }),
      ...(shade !== null && { shade }),
      gtins,
      productIds,
      lots: lots.map(termBody),
      openEnded,
    })),
  };
}

function termBody(term: LotTerm) {
  switch (term.kind) {
    case 'all lots':
      return { kind: term.kind };
    case 'use-by':
      return { kind: term.kind, useBy: spanBody(term.useBy) };
    case 'manufactured':
      return { kind: term.kind, manufactured: spanBody(term.manufactured) };
    default: {
      const { useBy, ...codes } = term;
      return { ...codes, ...(useBy !== null && { useBy: spanBody(useBy) }) };
    }
  }
}

const spanBody = ({ from, through }: DaySpan) => ({
  ...(from !== null && { from }),
  ...(through !== null && { through }),
});
