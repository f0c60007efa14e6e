import { VisuallyHidden } from '@mantine/core';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import { Entry } from '../../frame/entries.js';
import { PageLink } from '../../frame/navigation.js';
import { Page } from '../../frame/page.js';
import { PagedEntries } from '../../frame/paged-entries.js';
import { pathOf } from '../../frame/places.js';
import { Section } from '../../frame/section.js';
import { useStudioInstants } from '../../frame/use-studio-instants.js';
import { usePages } from '../../service/use-pages.js';
import { useTexts } from '../../texts/texts.js';
import { listDeliveries } from '../receiving.requests.js';
import { factsOfDelivery, productsOf } from './delivery-words.js';

/** What arrived, the latest first. */
export function DeliveriesPage({
  standing: { studioId, studioName, permissions },
}: {
  standing: StandingView;
}) {
  const texts = useTexts();
  const words = texts.deliveries;
  const list = usePages(['deliveries', studioId], (after) => listDeliveries(studioId, after));
  const at = useStudioInstants(studioId);
  const place = { studioId, area: 'stock' } as const;
  return (
    <Page above={studioName} title={words.title} lead={words.lead}>
      <Section title={words.list} hint={words.listHint}>
        <PagedEntries
          label={words.list}
          list={list}
          none={
            <>
              {words.none}{' '}
              {permissions.includes('receive stock') && (
                <PageLink to={pathOf(place, 'receive')}>{texts.receiving.title}</PageLink>
              )}
            </>
          }
          entry={(delivery) => (
            <Entry
              key={delivery.id}
              name={at(delivery.occurredAt)}
              mark={words.lines(delivery.lines.length)}
              actions={
                <PageLink to={pathOf(place, 'deliveries', delivery.id)} alone>
                  {words.show}
                  <VisuallyHidden> {at(delivery.occurredAt)}</VisuallyHidden>
                </PageLink>
              }
            >
              <p>{factsOfDelivery(delivery, texts).join(', ')}</p>
              <p>{productsOf(delivery)}</p>
            </Entry>
          )}
        />
      </Section>
    </Page>
  );
}
