import { Button } from '@mantine/core';
import { useState } from 'react';
import { Entries, Entry } from '../frame/entries.js';
import { MoreButton } from '../frame/more-button.js';
import { ProblemNote } from '../frame/problem-note.js';
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
    <>
      <ProblemNote problem={list.problem} />
      {list.items?.length === 0 && <p>{texts.client.noAccesses}</p>}
      {list.items !== undefined && list.items.length > 0 && (
        <Entries label={texts.client.accesses}>
          {list.items.map(({ id, personName, what, accessedAt }) => (
            <Entry key={id} name={personName ?? texts.records.unknownPerson}>
              <p>{`${texts.client.looked[what]}, ${writtenInstant(accessedAt, texts.language, timeZone)}`}</p>
            </Entry>
          ))}
        </Entries>
      )}
      <MoreButton list={list} />
    </>
  );
}
