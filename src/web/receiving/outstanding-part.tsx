import { Entries, Entry } from '../frame/entries.js';
import { PageLink } from '../frame/navigation.js';
import { pathOf } from '../frame/places.js';
import { Section } from '../frame/section.js';
import { lineName } from '../orders/line-name.js';
import { listOrders, showOrder } from '../orders/orders.requests.js';
import { useAnswer } from '../service/use-answer.js';
import { useTexts } from '../texts/texts.js';

/** What is still to come of the order whose delivery this is; nothing is shown where it is of none. */
export function OutstandingPart({
  studioId,
  expectedDeliveryId,
}: {
  studioId: string;
  expectedDeliveryId: string;
}) {
  const words = useTexts().receiving;
  const { answer: order } = useAnswer(['order of expected delivery', studioId, expectedDeliveryId], () =>
    orderOf(studioId, expectedDeliveryId),
  );
  const outstanding = order?.lines.filter(({ outstandingPieces }) => outstandingPieces > 0) ?? [];
  if (!order) return null;
  const title = words.outstandingOf(order.number);
  return (
    <Section title={title} hint={words.outstandingHint}>
      {outstanding.length === 0 && <p>{words.nothingOutstanding}</p>}
      {outstanding.length > 0 && (
        <Entries label={title}>
          {outstanding.map((line) => (
            <Entry key={line.id} name={`${line.makerName} ${lineName(line)}`}>
              <p>{words.outstanding(line.outstandingPieces, line.orderedPieces)}</p>
            </Entry>
          ))}
        </Entries>
      )}
      <PageLink to={pathOf({ studioId, area: 'ordering' }, 'orders', order.id)} alone>
        {words.toOrder(order.number)}
      </PageLink>
    </Section>
  );
}

/** The open order that is expected with this delivery, looked for through all that are open; null: it is of none. */
async function orderOf(studioId: string, expectedDeliveryId: string) {
  let after: string | undefined;
  do {
    const { items, next } = await listOrders(studioId, 'open', after);
    const found = items.find((order) => order.expectedDeliveryId === expectedDeliveryId);
    if (found) return showOrder(studioId, found.id);
    after = next ?? undefined;
  } while (after !== undefined);
  return null;
}
