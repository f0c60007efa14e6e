import { Button, Space, TextInput } from '@mantine/core';
import { useState } from 'react';
import type { ClientView } from '../../clients/clients.views.js';
import { Entries, Entry } from '../frame/entries.js';
import { Fields } from '../frame/fields.js';
import { Note } from '../frame/note.js';
import { ProblemNote } from '../frame/problem-note.js';
import { useAction } from '../service/use-action.js';
import { useTexts } from '../texts/texts.js';
import { findClients } from './clients.requests.js';

/** Finds a client by what only somebody who knows them can say whole, and lets one of those found be taken. */
export function FindClient({
  studioId,
  label,
  onChosen,
}: {
  studioId: string;
  /** What taking one of them does, by their reference; left out: they are chosen. */
  label?: (reference: string) => string;
  onChosen: (client: ClientView) => void;
}) {
  const texts = useTexts();
  const [text, setText] = useState('');
  const [found, setFound] = useState<ClientView[]>();
  const { run, busy, problem } = useAction(async () => {
    setFound(undefined);
    setFound(await findClients(studioId, text.trim()));
  });
  return (
    <>
      <Fields onSubmit={() => void run()} label={texts.clients.find}>
        <TextInput
          label={texts.clients.findLabel}
          required
          autoComplete="off"
          maxLength={200}
          value={text}
          error={problem?.faultOf('text')}
          onChange={(event) => setText(event.currentTarget.value)}
        />
        <ProblemNote problem={problem} />
        <div>
          <Button type="submit" loading={busy}>
            {texts.clients.findSubmit}
          </Button>
        </div>
      </Fields>
      <Space h="lg" />
      <div role="status">
        {found?.length === 0 && (
          <Note kind="plain">
            <p>{texts.clients.notFound}</p>
          </Note>
        )}
      </div>
      {found !== undefined && found.length > 0 && (
        <Entries label={texts.clients.found}>
          {found.map((client) => (
            <Entry
              key={client.id}
              name={client.reference}
              mark={client.erasedAt === null ? undefined : texts.clients.erased}
              actions={
                <Button variant="default" onClick={() => onChosen(client)}>
                  {(label ?? texts.clients.choose)(client.reference)}
                </Button>
              }
            >
              <p>{[client.name, client.contact].filter((known) => known !== null).join(', ')}</p>
            </Entry>
          ))}
        </Entries>
      )}
    </>
  );
}
