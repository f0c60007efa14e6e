import { Button, Group } from '@mantine/core';
import { useRef } from 'react';
import { useNavigate } from 'react-router';
import type { BasketView } from '../../reorder/plan/plans.views.js';
import { PageLink } from '../frame/navigation.js';
import { pathOf } from '../frame/places.js';
import { ProblemNote } from '../frame/problem-note.js';
import { isProblem } from '../service/problem.js';
import { request } from '../service/request.js';
import { RequestIds } from '../service/request-ids.js';
import { useAction } from '../service/use-action.js';
import { useAnswer } from '../service/use-answer.js';
import { useTexts } from '../texts/texts.js';
import { latestOrders } from './plans.requests.js';

/** Makes a draft of a purchase order from a basket, and opens it. What is drafted already is drafted again on purpose only. */
export function DraftOrder({
  studioId,
  planId,
  basket,
  isDue,
}: {
  studioId: string;
  planId: string;
  basket: BasketView;
  /** Whether it is to be ordered today. */
  isDue: boolean;
}) {
  const texts = useTexts();
  const words = texts.plans;
  const open = useNavigate();
  const ids = useRef(new RequestIds()).current;
  const drafting = useAction(async (again: boolean) => {
    const drafted = {
      planId,
      lineNumbers: basket.lines.map(({ lineNumber }) => lineNumber),
      ...(again && { again }),
    };
    const { orders } = await request(
      'POST',
      '/studios/{studioId}/purchase-orders/from-plan',
      { studioId },
      { id: ids.for(drafted), ...drafted },
    );
    ids.renew();
    const [order] = orders;
    void open(pathOf({ studioId, area: 'ordering' }, 'orders', ...(order ? [order.id] : [])));
  });
  const ordered = useOrdersOfBasket(studioId, planId, basket);
  const isDrafted = isProblem(drafting.problem, 'already-exists');
  const draftedId = isDrafted ? drafting.problem?.document.orderId : undefined;
  return (
    <>
      {ordered.length > 0 && (
        <p>
          {words.drafted}{' '}
          {ordered.map(({ id, number, state }) => (
            <PageLink key={id} to={pathOf({ studioId, area: 'ordering' }, 'orders', id)} alone>
              {words.orderOfPlan(number, texts.orders.states[state])}
            </PageLink>
          ))}
        </p>
      )}
      <ProblemNote problem={drafting.problem} />
      {draftedId !== undefined && (
        <PageLink to={pathOf({ studioId, area: 'ordering' }, 'orders', draftedId)} alone>
          {words.toDrafted}
        </PageLink>
      )}
      <Group>
        <Button
          {...((!isDue || ordered.length > 0) && { variant: 'default' })}
          loading={drafting.busy}
          aria-label={words.draftOf(basket.supplierName)}
          onClick={() => void drafting.run(false)}
        >
          {words.draft}
        </Button>
        {isDrafted && (
          <Button variant="default" loading={drafting.busy} onClick={() => void drafting.run(true)}>
            {words.draftAgain(basket.supplierName)}
          </Button>
        )}
      </Group>
    </>
  );
}

/** The orders of this plan in which something of the basket stands already; those that were called off hold nothing. */
function useOrdersOfBasket(studioId: string, planId: string, { supplierId, lines }: BasketView) {
  const { answer } = useAnswer(['latest orders', studioId], () => latestOrders(studioId));
  const planned = new Set(lines.map(({ productId }) => productId));
  return (
    answer?.filter(
      (order) =>
        order.planId === planId &&
        order.supplierId === supplierId &&
        order.state !== 'called off' &&
        order.productIds.some((productId) => planned.has(productId)),
    ) ?? []
  );
}
