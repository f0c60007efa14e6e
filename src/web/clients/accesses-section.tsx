import { Button } from '@mantine/core';
import { useState } from 'react';
import { Entry } from '../frame/entries.js';
import { PagedEntries } from '../frame/paged-entries.js';
import { Section } from '../frame/section.js';
import { usePages } from '../service/use-pages.js';
import { useTexts } from '../texts/texts.js';
import { writtenInstant } from '../texts/written-dates.js';
import { listAccesses } from './clients.requests.js';

/** Who was shown something of a client, and when. */
export function AccessesSection(props: { studioId: string; clientId: string; timeZone: string }) {
  const texts = useTexts();
  const [shown, setShown] = useState(false);
  return (
    <Section title={texts.client.accesses} hint={texts.client.accessesHint}>
      {shown ? (
        <Accesses {...props} />
      ) : (
        <Button variant="default" onClick={() => setShown(true)}>
          {texts.client.showAccesses}
        </Button>
      )}
    </Section>
  );
}

function Accesses({
  studioId,
  clientId,
  timeZone,
}: {
  studioId: string;
  clientId: string;
  timeZone: string;
}) {
  const texts = useTexts();
  const list = usePages(['client accesses', studioId, clientId], (after) =>
    listAccesses(studioId, clientId, after),
  );
  return (
    <PagedEntries
      label={texts.client.accesses}
      list={list}
      none={texts.client.noAccesses}
      entry={({ id, personName, what, accessedAt }) => (
        <Entry key={id} name={personName ?? texts.records.unknownPerson}>
          <p>{`${texts.client.looked[what]}, ${writtenInstant(accessedAt, texts.language, timeZone)}`}</p>
        </Entry>
      )}
    />
  );
}
