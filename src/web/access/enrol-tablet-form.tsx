import { Button, Group, TextInput } from '@mantine/core';
import { useRef, useState } from 'react';
import { Fields } from '../frame/fields.js';
import { Note } from '../frame/note.js';
import { RequestIds } from '../service/request-ids.js';
import { useAction } from '../service/use-action.js';
import { ProblemOrSignInAgain } from '../sign-in/sign-in-again.js';
import { useTexts } from '../texts/texts.js';
import { enrolTablet } from './access.requests.js';

/** Makes the device it is open on a shared tablet, once that was confirmed. */
export function EnrolTabletForm({ studioId }: { studioId: string }) {
  const texts = useTexts();
  const [name, setName] = useState('');
  const [asks, setAsks] = useState(false);
  const ids = useRef(new RequestIds()).current;
  const { run, busy, problem } = useAction(async () => {
    await enrolTablet(studioId, { id: ids.for({ name }), name });
    // A fresh page: nothing of whoever enrolled it stays on the shared device.
    window.location.assign('/');
  });
  const submit = () => {
    if (asks) void run();
    else setAsks(true);
  };
  return (
    <Fields onSubmit={submit} label={texts.tablets.enrol}>
      <TextInput
        label={texts.tablets.name}
        description={texts.tablets.nameHint}
        required
        maxLength={100}
        autoComplete="off"
        value={name}
        error={problem?.faultOf('name')}
        onChange={(event) => setName(event.currentTarget.value)}
      />
      {asks && (
        <Note kind="plain">
          <p>{texts.tablets.enrolQuestion}</p>
        </Note>
      )}
      <ProblemOrSignInAgain problem={problem} onSignedIn={run} />
      <Group gap="sm">
        <Button type="submit" variant={asks ? 'filled' : 'default'} loading={busy}>
          {texts.tablets.enrolSubmit}
        </Button>
        {asks && (
          <Button variant="default" onClick={() => setAsks(false)}>
            {texts.app.cancel}
          </Button>
        )}
      </Group>
    </Fields>
  );
}
