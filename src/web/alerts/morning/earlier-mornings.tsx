import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import { Entry } from '../../frame/entries.js';
import { PagedEntries } from '../../frame/paged-entries.js';
import { Section } from '../../frame/section.js';
import { ServiceWords } from '../../frame/service-words.js';
import { usePages } from '../../service/use-pages.js';
import { useTexts } from '../../texts/texts.js';
import { writtenDay } from '../../texts/written-dates.js';
import { listSummaries } from '../alerts.requests.js';
import { SummaryParts } from './summary-parts.js';

/** What was said on the mornings before, and whether it was sent. */
export function EarlierMornings({ standing: { studioId } }: { standing: StandingView }) {
  const texts = useTexts();
  const { morning: words, channels, deliveryStates, cause } = texts.alertPages;
  const list = usePages(
    ['alerts', studioId, 'mornings'],
    (after) => listSummaries(studioId, after),
    ({ deliveries }) => deliveries.some(({ state }) => state === 'pending'),
  );
  return (
    <Section title={words.earlier} hint={words.earlierHint}>
      <PagedEntries
        label={words.earlier}
        list={list}
        none={words.noneEarlier}
        entry={({ id, day, parts, deliveries }) => {
          const written = writtenDay(day, texts.language);
          return (
            <Entry
              key={id}
              name={written}
              below={
                parts.length > 0 && (
                  <details>
                    <summary aria-label={words.showOf(written)}>{words.show}</summary>
                    <SummaryParts studioId={studioId} day={written} parts={parts} />
                  </details>
                )
              }
            >
              {parts.length === 0 && <p>{words.nothingSent}</p>}
              {deliveries.map((delivery) => (
                <p key={delivery.id}>
                  {channels[delivery.channel]}, {deliveryStates[delivery.state]}
                  {delivery.state !== 'sent' && delivery.lastError !== null && (
                    <>
                      . {cause} <ServiceWords>{delivery.lastError}</ServiceWords>
                    </>
                  )}
                </p>
              ))}
            </Entry>
          );
        }}
      />
    </Section>
  );
}
