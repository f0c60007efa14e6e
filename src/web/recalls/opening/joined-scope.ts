import type { LotScope } from '../../../stock/lot-matching/lot-scope.js';

/**
 * What a further notice says, and what was said before: nothing that was recalled is lost by it. The further notice comes
 * first, so that the marks in its text keep their places.
 */
export function joinedScope(further: LotScope | null, before: LotScope): LotScope {
  if (further === null) return before;
  const said = new Set(further.items.map((item) => JSON.stringify(item)));
  return { items: [...further.items, ...before.items.filter((item) => !said.has(JSON.stringify(item)))] };
}
