import { type Query, type QueryClient, useQueryClient } from '@tanstack/react-query';
import { useCallback } from 'react';

/** Asks anew for what is shown of the alerts of a studio, after one of them was changed here or elsewhere. */
export function useAlertsAnew(studioId: string): () => Promise<void> {
  const answers = useQueryClient();
  return useCallback(() => askAlertsAnew(answers, studioId), [answers, studioId]);
}

export async function askAlertsAnew(answers: QueryClient, studioId: string): Promise<void> {
  await Promise.all([
    answers.invalidateQueries({ queryKey: ['alerts', studioId] }),
    askPagesAnew(answers, ['pages', 'alerts', studioId]),
  ]);
}

/** Whoever asked for more of a list gets it: only then is the list asked anew. */
async function askPagesAnew(answers: QueryClient, queryKey: readonly string[]): Promise<void> {
  await answers.invalidateQueries({ queryKey, predicate: isAskingForMore }, { cancelRefetch: false });
  await answers.invalidateQueries({ queryKey });
}

function isAskingForMore({ state: { fetchStatus, fetchMeta } }: Query): boolean {
  return fetchStatus === 'fetching' && fetchMeta?.fetchMore !== undefined;
}
