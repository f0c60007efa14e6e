import { useDebouncedValue } from '@mantine/hooks';
import { useRef } from 'react';
import type { MatchedLotsView } from '../../../recalls/recalls.views.js';
import type { LotScope } from '../../../stock/lot-matching/lot-scope.js';
import type { ServiceProblem } from '../../service/problem.js';
import { useAnswer } from '../../service/use-answer.js';
import { matchScope } from '../recalls.requests.js';

/** Not at each key: while somebody types, nothing is asked. */
const pauseMilliseconds = 400;

export interface Matches {
  /** Of the scope as it is, else of the one before; undefined until the first is here. */
  matches: MatchedLotsView | undefined;
  /** Whether they are of the scope as it is. */
  isCurrent: boolean;
  problem: ServiceProblem | undefined;
}

/**
 * What a scope meets here, asked anew whenever it changed and nobody types any more.
 * @param scope null: there is nothing to look for yet
 * @param known the answer that came with the reading of this very scope
 */
export function useMatches(
  studioId: string,
  scope: LotScope | null,
  known: { written: string; matches: MatchedLotsView } | undefined,
): Matches {
  const written = scope === null ? '' : JSON.stringify(scope);
  const [asked] = useDebouncedValue(written, pauseMilliseconds);
  const { answer, problem } = useAnswer(['lots of a scope', studioId, asked], async () => {
    if (asked === '') return { asked, matches: null };
    if (asked === known?.written) return { asked, matches: known.matches };
    return { asked, matches: await matchScope(studioId, JSON.parse(asked) as LotScope) };
  });
  const last = useRef<MatchedLotsView>(undefined);
  const found = written !== '' && written === known?.written ? known.matches : answer?.matches;
  if (found) last.current = found;
  const isCurrent = found != null && (written === known?.written || answer?.asked === written);
  return {
    matches: written === '' ? undefined : last.current,
    isCurrent,
    problem: asked === written ? problem : undefined,
  };
}
