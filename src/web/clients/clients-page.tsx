import { Button } from '@mantine/core';
import { useState } from 'react';
import { useNavigate } from 'react-router';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { Page } from '../frame/page.js';
import { pathOf } from '../frame/places.js';
import { Section } from '../frame/section.js';
import { useTexts } from '../texts/texts.js';
import { ClientList } from './client-list.js';
import { FindClient } from './find-client.js';
import { NewClientForm } from './new-client-form.js';

/** Where a client is found, listed or taken on. What is searched for never stands in the address. */
export function ClientsPage({ standing }: { standing: StandingView }) {
  const texts = useTexts();
  const open = useNavigate();
  const { studioId, studioName, permissions } = standing;
  const [listed, setListed] = useState(false);
  const show = (clientId: string) => void open(pathOf({ studioId, area: 'records' }, 'clients', clientId));
  return (
    <Page above={studioName} title={texts.clients.title} lead={texts.clients.lead}>
      <Section title={texts.clients.find} hint={texts.clients.findHint}>
        <FindClient studioId={studioId} label={texts.clients.open} onChosen={({ id }) => show(id)} />
      </Section>
      {permissions.includes('change clients') && (
        <Section title={texts.clients.add} hint={texts.clients.addHint}>
          <NewClientForm studioId={studioId} onAdded={show} />
        </Section>
      )}
      <Section title={texts.clients.list} hint={texts.clients.listHint}>
        {listed ? (
          <ClientList studioId={studioId} />
        ) : (
          <Button variant="default" onClick={() => setListed(true)}>
            {texts.clients.listSubmit}
          </Button>
        )}
      </Section>
    </Page>
  );
}
