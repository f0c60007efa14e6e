import { useInfiniteQuery } from '@tanstack/react-query';
import { useCallback, useMemo } from 'react';
import { ServiceProblem } from './problem.js';
import { untilNextLook } from './until-next-look.js';

/** One page of a list: `next`, handed in as `after`, leads to the next one; null on the last. */
export interface AnsweredPage<Item> {
  items: Item[];
  next: string | null;
}

/**
 * A list that the service answers page by page, as far as it was asked for; undefined until its first page is here.
 * @param key as in `useAnswer`
 * @param ask for the page after this one; undefined for the first
 * @param isUnderWay as in `useAnswer`, of any item
 */
export function usePages<Item>(
  key: readonly string[],
  ask: (after: string | undefined) => Promise<AnsweredPage<Item>>,
  isUnderWay: (item: Item) => boolean = () => false,
): {
  items: Item[] | undefined;
  problem: ServiceProblem | undefined;
  hasMore: boolean;
  isAsking: boolean;
  more(): void;
  reload(): Promise<void>;
} {
  const { data, error, refetch, fetchNextPage, hasNextPage, isFetching } = useInfiniteQuery({
    queryKey: ['pages', ...key],
    queryFn: ({ pageParam }) => ask(pageParam),
    initialPageParam: undefined as string | undefined,
    getNextPageParam: ({ next }: AnsweredPage<Item>) => next ?? undefined,
    refetchInterval: ({ state: { data: known, dataUpdateCount } }) =>
      known?.pages.some(({ items }) => items.some(isUnderWay)) === true && untilNextLook(dataUpdateCount),
  });
  const reload = useCallback(async () => {
    await refetch();
  }, [refetch]);
  // The same list as long as nothing new came: whoever shows thousands of rows need not look at each again.
  const items = useMemo(() => data?.pages.flatMap((page) => page.items), [data]);
  const more = useCallback(() => void fetchNextPage(), [fetchNextPage]);
  if (error !== null && !(error instanceof ServiceProblem)) throw error;
  return {
    items,
    problem: error ?? undefined,
    hasMore: hasNextPage,
    isAsking: isFetching,
    more,
    reload,
  };
}
