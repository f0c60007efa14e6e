import { useQuery } from '@tanstack/react-query';
import { useCallback } from 'react';
import { ServiceProblem } from './problem.js';
import { untilNextLook } from './until-next-look.js';

/**
 * What the service answers to a question; undefined until it did. It is asked anew when the page opens or is looked at
 * again; what was answered before stays beside the problem of asking anew.
 * @param key says what is asked, its kind first: `['people', studioId]`. Equal keys share one answer
 * @param isUnderWay whether something in the answer changes soon by itself: then it is asked again and again while it is shown
 */
export function useAnswer<Answer extends NonNullable<unknown> | null>(
  key: readonly string[],
  ask: () => Promise<Answer>,
  isUnderWay: (answer: Answer) => boolean = () => false,
): { answer: Answer | undefined; problem: ServiceProblem | undefined; reload(): Promise<void> } {
  const { data, error, refetch } = useQuery<Answer>({
    queryKey: key,
    queryFn: ask,
    refetchInterval: ({ state }) =>
      state.data !== undefined && isUnderWay(state.data) && untilNextLook(state.dataUpdateCount),
  });
  const reload = useCallback(async () => {
    await refetch();
  }, [refetch]);
  if (error !== null && !(error instanceof ServiceProblem)) throw error;
  return { answer: data, problem: error ?? undefined, reload };
}
