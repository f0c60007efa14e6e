import { Button } from '@mantine/core';
import { useState } from 'react';
import { type Certainty, certainties } from '../../../../recalls/exposures/exposure-certainty.js';
import type { ExposedClientView } from '../../../../recalls/exposures/exposures.views.js';
import { Choice } from '../../../frame/choice.js';
import { Entry } from '../../../frame/entries.js';
import { PageLink } from '../../../frame/navigation.js';
import { PagedEntries } from '../../../frame/paged-entries.js';
import { pathOf } from '../../../frame/places.js';
import { Section } from '../../../frame/section.js';
import { usePages } from '../../../service/use-pages.js';
import { useTexts } from '../../../texts/texts.js';
import { writtenDay } from '../../../texts/written-dates.js';
import { CertaintySign } from './certainty-sign.js';
import { ExposedSessions } from './exposed-sessions.js';
import styles from './exposures.module.css';
import { listExposedClients } from './exposures.requests.js';

/** Every client by reference, those touched for certain first; each opens to the sessions. */
export function ExposedClients({ studioId, recallId }: { studioId: string; recallId: string }) {
  const words = useTexts().recallExposures;
  const [certainty, setCertainty] = useState<Certainty | ''>('');
  const list = usePages(['exposed clients of recall', studioId, recallId, certainty], (after) =>
    listExposedClients(studioId, recallId, certainty === '' ? undefined : certainty, after),
  );
  return (
    <Section title={words.clients} hint={words.clientsHint}>
      <div className={styles.filter}>
        <Choice
          label={words.filter}
          value={certainty}
          none={words.all}
          choices={certainties.map((value) => ({ value, label: words.certainties[value] }))}
          onChange={setCertainty}
        />
      </div>
      <PagedEntries
        label={words.clients}
        list={list}
        none={certainty === '' ? words.noClients : words.noneOfThese}
        entry={(client) => (
          <ClientEntry key={client.clientId} studioId={studioId} recallId={recallId} client={client} />
        )}
      />
    </Section>
  );
}

function ClientEntry({
  studioId,
  recallId,
  client,
}: {
  studioId: string;
  recallId: string;
  client: ExposedClientView;
}) {
  const texts = useTexts();
  const words = texts.recallExposures;
  const [shown, setShown] = useState(false);
  const { clientId, clientReference, firstDay, lastDay, sessions } = client;
  const day = (iso: string) => writtenDay(iso, texts.language);
  return (
    <Entry
      name={
        <PageLink alone to={pathOf({ studioId, area: 'records' }, 'clients', clientId)}>
          {clientReference}
        </PageLink>
      }
      actions={
        <Button
          variant="default"
          aria-expanded={shown}
          aria-label={shown ? words.hideOf(clientReference) : words.showOf(clientReference)}
          onClick={() => setShown(!shown)}
        >
          {shown ? words.hide : words.show}
        </Button>
      }
      below={
        shown ? (
          <div className={styles.sessions}>
            <ExposedSessions
              studioId={studioId}
              recallId={recallId}
              clientId={clientId}
              label={words.sessionsOf(clientReference)}
            />
          </div>
        ) : undefined
      }
    >
      <p>
        <CertaintySign certainty={client.certainty} />
      </p>
      <p>
        {[
          words.sessions(sessions),
          firstDay === lastDay ? day(firstDay) : words.span(day(firstDay), day(lastDay)),
        ].join(', ')}
      </p>
      <p>{words.contactStates[client.contactState]}</p>
    </Entry>
  );
}
