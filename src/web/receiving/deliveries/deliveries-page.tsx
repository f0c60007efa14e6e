import { VisuallyHidden } from '@mantine/core';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import { Entries, Entry } from '../../frame/entries.js';
import { MoreButton } from '../../frame/more-button.js';
import { PageLink } from '../../frame/navigation.js';
import { Page } from '../../frame/page.js';
import { pathOf } from '../../frame/places.js';
import { ProblemNote } from '../../frame/problem-note.js';
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
        <ProblemNote problem={list.problem} />
        {!list.items && !list.problem && <p>{texts.app.loading}</p>}
        {list.items?.length === 0 && (
          <p role="status">
            {words.none}{' '}
            {permissions.includes('receive stock') && (
              <PageLink to={pathOf(place, 'receive')}>{texts.receiving.title}</PageLink>
            )}
          </p>
        )}
        {list.items && list.items.length > 0 && (
          <Entries label={words.list}>
            {list.items.map((delivery) => (
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
            ))}
          </Entries>
        )}
        <MoreButton list={list} />
      </Section>
    </Page>
  );
}
