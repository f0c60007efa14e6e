import { useEffect } from 'react';
import { useSearchParams } from 'react-router';
import { usePages } from '../service/use-pages.js';
import { listExpected } from '../stock/expected/expected.requests.js';
import type { KeptDelivery } from './delivery-draft.js';
import { chooseExpected } from './expected-field.js';

const asked = 'expected';

/**
 * Chooses the expected delivery that the address names, as an order's link does: once, so that it can be chosen otherwise.
 * @param isReady false while the delivery before it is still shown
 */
export function useAskedExpected(studioId: string, delivery: KeptDelivery, isReady: boolean): void {
  const [search, setSearch] = useSearchParams();
  const askedId = search.get(asked);
  const { items, hasMore, isAsking, more } = usePages(
    ['expected deliveries', studioId, 'expected'],
    (after) => listExpected(studioId, 'expected', after),
  );
  useEffect(() => {
    if (askedId === null || !isReady || items === undefined || isAsking) return;
    const found = items.find(({ id }) => id === askedId);
    if (!found && hasMore) {
      more();
      return;
    }
    if (found) {
      delivery.change({ origin: 'purchase' });
      chooseExpected(delivery, found);
    }
    setSearch((before) => withoutAsked(before), { replace: true });
  }, [askedId, isReady, items, hasMore, isAsking, more, delivery, setSearch]);
}

function withoutAsked(search: URLSearchParams): URLSearchParams {
  const rest = new URLSearchParams(search);
  rest.delete(asked);
  return rest;
}
