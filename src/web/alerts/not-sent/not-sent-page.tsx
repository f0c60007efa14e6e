import { useEffect, useRef } from 'react';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import { Page } from '../../frame/page.js';
import { PagedEntries } from '../../frame/paged-entries.js';
import { Section } from '../../frame/section.js';
import { usePages } from '../../service/use-pages.js';
import { useTexts } from '../../texts/texts.js';
import { listPromised } from '../alerts.requests.js';
import { PromisedEntry } from './promised-entry.js';

/** Messages that were given up, each with its cause and the way to send it again, and those that are still tried. */
export function NotSentPage({ standing }: { standing: StandingView }) {
  const words = useTexts().alertPages.notSent;
  const { studioId, studioName } = standing;
  const givenUp = usePages(['alerts', studioId, 'not sent'], (after) =>
    listPromised(studioId, 'undeliverable', after),
  );
  const waiting = usePages(
    ['alerts', studioId, 'waiting'],
    (after) => listPromised(studioId, 'pending', after),
    () => true,
  );
  // What waits no more was sent, or was given up.
  const waits = waiting.items?.map(({ id }) => id).join();
  const waited = useRef(waits);
  const { reload } = givenUp;
  useEffect(() => {
    if (waited.current !== undefined && waited.current !== waits) void reload();
    waited.current = waits;
  }, [waits, reload]);
  return (
    <Page above={studioName} title={words.title} lead={words.lead}>
      <Section title={words.list}>
        <PagedEntries
          label={words.list}
          list={givenUp}
          none={words.none}
          entry={(delivery) => <PromisedEntry key={delivery.id} standing={standing} delivery={delivery} />}
        />
      </Section>
      <Section title={words.waiting} hint={words.waitingHint}>
        <PagedEntries
          label={words.waiting}
          list={waiting}
          none={words.noneWaiting}
          entry={(delivery) => <PromisedEntry key={delivery.id} standing={standing} delivery={delivery} />}
        />
      </Section>
    </Page>
  );
}
