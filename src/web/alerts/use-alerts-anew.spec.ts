import { InfiniteQueryObserver, QueryClient } from '@tanstack/react-query';
import { expect, it } from 'vitest';
import { askAlertsAnew } from './use-alerts-anew.js';

it('lets a list get what more of it was asked for, and then asks it anew', async () => {
  const answers = new QueryClient();
  const asked: number[] = [];
  let answer = (): void => undefined;
  const list = new InfiniteQueryObserver(answers, {
    queryKey: ['pages', 'alerts', 's', 'open'],
    queryFn: async ({ pageParam }) => {
      asked.push(pageParam);
      if (asked.length === 2) await new Promise<void>((settle) => (answer = settle));
      return pageParam;
    },
    initialPageParam: 1,
    getNextPageParam: (last: number) => last + 1,
  });
  const forget = list.subscribe(() => undefined);
  await list.refetch();
  const more = list.fetchNextPage();
  const anew = askAlertsAnew(answers, 's');
  answer();
  await Promise.all([more, anew]);
  expect(list.getCurrentResult().data?.pages).toEqual([1, 2]);
  expect(asked).toEqual([1, 2, 1, 2]);
  forget();
  answers.clear();
});
