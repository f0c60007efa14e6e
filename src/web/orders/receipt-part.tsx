import type { PurchaseOrderView } from '../../reorder/purchase-orders/purchase-orders.views.js';
import { Entries, Entry } from '../frame/entries.js';
import { PageLink } from '../frame/navigation.js';
import { pathOf } from '../frame/places.js';
import { Section } from '../frame/section.js';
import { useStudioInstants } from '../frame/use-studio-instants.js';
import { useTexts } from '../texts/texts.js';
import { lineName } from './line-name.js';

/** The deliveries that brought something of an order, and what came otherwise. */
export function ReceiptPart({
  studioId,
  order: { expected, deliveries, differences },
  mayReceive,
}: {
  studioId: string;
  order: PurchaseOrderView;
  mayReceive: boolean;
}) {
  const words = useTexts().orders;
  const when = useStudioInstants(studioId);
  const stock = { studioId, area: 'stock' } as const;
  return (
    <Section title={words.receipt}>
      {deliveries.length === 0 && <p>{words.nothingCame}</p>}
      {deliveries.map(({ deliveryId, occurredAt, reference }) => (
        <p key={deliveryId}>
          <PageLink to={pathOf(stock, 'deliveries', deliveryId)}>
            {[words.toDelivery(when(occurredAt)), reference].filter((part) => part !== null).join(', ')}
          </PageLink>
        </p>
      ))}
      {differences.length > 0 && (
        <>
          <p>
            <strong>{words.differences}</strong>
          </p>
          <Entries label={words.differences}>
            {differences.map((difference) => (
              <Entry
                key={difference.deliveryLineId}
                name={`${difference.makerName} ${lineName(difference)}`}
                mark={words.differenceKinds[difference.kind]}
              >
                <p>{words.pieces(difference.pieces)}</p>
              </Entry>
            ))}
          </Entries>
        </>
      )}
      {mayReceive && expected !== null && expected.endedAs === null && (
        <PageLink to={`${pathOf(stock, 'receive')}?expected=${expected.id}`} alone>
          {words.receive}
        </PageLink>
      )}
    </Section>
  );
}
