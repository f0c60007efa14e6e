import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { Page } from '../frame/page.js';
import { PagedEntries } from '../frame/paged-entries.js';
import { Section } from '../frame/section.js';
import { usePages } from '../service/use-pages.js';
import { useTexts } from '../texts/texts.js';
import { DraftByHand } from './draft-by-hand.js';
import { OrderEntry } from './order-entry.js';
import { listOrders } from './orders.requests.js';

/** What is under way with suppliers, and what ended. */
export function OrdersPage({ standing }: { standing: StandingView }) {
  const words = useTexts().orders;
  const { studioId, studioName, permissions } = standing;
  const underWay = usePages(['purchase orders', studioId, 'open'], (after) =>
    listOrders(studioId, 'open', after),
  );
  const ended = usePages(['purchase orders', studioId, 'ended'], (after) =>
    listOrders(studioId, 'ended', after),
  );
  return (
    <Page above={studioName} title={words.title} lead={words.lead}>
      <Section title={words.underWay}>
        <PagedEntries
          label={words.underWay}
          list={underWay}
          none={words.noneUnderWay}
          entry={(order) => <OrderEntry key={order.id} studioId={studioId} order={order} />}
        />
      </Section>
      {permissions.includes('plan orders') && (
        <Section title={words.byHand} hint={words.byHandHint}>
          <DraftByHand studioId={studioId} mayAddSupplier={permissions.includes('change the register')} />
        </Section>
      )}
      <Section title={words.ended}>
        <PagedEntries
          label={words.ended}
          list={ended}
          none={words.noneEnded}
          entry={(order) => <OrderEntry key={order.id} studioId={studioId} order={order} />}
        />
      </Section>
    </Page>
  );
}
