import type { PurchaseOrderView } from '../../reorder/purchase-orders/purchase-orders.views.js';
import { Facts } from '../frame/facts.js';
import { PageLink } from '../frame/navigation.js';
import { pathOf } from '../frame/places.js';
import { useStudioInstants } from '../frame/use-studio-instants.js';
import { writtenMoney } from '../plans/figures/written-money.js';
import { Sign } from '../stock/sign.js';
import { useTexts } from '../texts/texts.js';
import { writtenDay } from '../texts/written-dates.js';

/** How an order stands, and what it comes to. */
export function OrderFacts({ studioId, order }: { studioId: string; order: PurchaseOrderView }) {
  const texts = useTexts();
  const words = texts.orders;
  const when = useStudioInstants(studioId);
  const { sums, currency, expected, planId } = order;
  const money = (minor: number | null) =>
    minor === null ? words.notKnown : writtenMoney(minor, currency, texts.language);
  const delivery =
    sums.deliveryCostMinor === null
      ? words.notKnown
      : `${money(sums.deliveryCostMinor)} (${words.deliveryFrom[sums.deliveryCostFrom]})`;
  return (
    <>
      <Facts
        facts={[
          [
            words.state,
            order.endedAs === null
              ? words.states[order.state]
              : `${words.states[order.state]}, ${words.endings[order.endedAs]}`,
          ],
          [words.created, when(order.createdAt)],
          [words.approved, order.approvedAt !== null && when(order.approvedAt)],
          [
            words.sent,
            order.sentAt !== null &&
              [when(order.sentAt), order.sentAs !== null && words.sentAs[order.sentAs]]
                .filter((part) => part !== false)
                .join(', '),
          ],
          [
            words.expected,
            expected !== null && expected.endedAs === null && writtenDay(expected.expectedOn, texts.language),
          ],
          [words.endedAt, order.endedAt !== null && when(order.endedAt)],
          [words.goods, money(sums.linesMinor)],
          [words.delivery, delivery],
          [words.total, money(sums.totalMinor)],
          [words.minimum, sums.minimumOrderMinor !== null && money(sums.minimumOrderMinor)],
          [
            words.plan,
            planId !== null && (
              <PageLink to={pathOf({ studioId, area: 'ordering' }, 'plan', planId)}>{words.toPlan}</PageLink>
            ),
          ],
        ]}
      />
      {sums.unpricedLines > 0 && <p>{words.unpriced(sums.unpricedLines)}</p>}
      {expected?.late && (
        <p>
          <Sign standing="care">{words.late}</Sign>
        </p>
      )}
    </>
  );
}
