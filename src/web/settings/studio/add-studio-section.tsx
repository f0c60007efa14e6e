import { Button, Select, TextInput } from '@mantine/core';
import { useMemo, useRef, useState } from 'react';
import { Fields } from '../../frame/fields.js';
import { Note } from '../../frame/note.js';
import { Section } from '../../frame/section.js';
import { RequestIds } from '../../service/request-ids.js';
import { useAction } from '../../service/use-action.js';
import { useSignedIn } from '../../sign-in/requester.js';
import { ProblemOrSignInAgain } from '../../sign-in/sign-in-again.js';
import { ownTimeZone, timeZones } from '../../sign-in/time-zones.js';
import { useTexts } from '../../texts/texts.js';
import { addStudio } from '../settings.requests.js';

/** Adds a studio to the chain: the register is shared, stock, sessions and clients are each studio's own. */
export function AddStudioSection({ studioId }: { studioId: string }) {
  const texts = useTexts();
  const words = texts.studioSettings;
  const { refresh } = useSignedIn();
  const [name, setName] = useState('');
  const [timeZone, setTimeZone] = useState(ownTimeZone);
  const [ownerName, setOwnerName] = useState('');
  const [added, setAdded] = useState<string>();
  const ids = useRef(new RequestIds()).current;
  const zones = useMemo(timeZones, []);
  const { run, busy, problem } = useAction(async () => {
    setAdded(undefined);
    const studio = {
      name: name.trim(),
      timeZone,
      ...(ownerName.trim() !== '' && { ownerName: ownerName.trim() }),
    };
    await addStudio(studioId, { id: ids.for(studio), ...studio });
    ids.renew();
    await refresh();
    setAdded(studio.name);
    setName('');
    setOwnerName('');
  });
  return (
    <Section title={words.addStudio} hint={words.addStudioHint}>
      <Fields onSubmit={() => void run()} label={words.addStudio}>
        <TextInput
          label={words.name}
          required
          maxLength={100}
          autoComplete="off"
          value={name}
          error={problem?.faultOf('name')}
          onChange={(event) => setName(event.currentTarget.value)}
        />
        <Select
          label={words.timeZone}
          required
          searchable
          allowDeselect={false}
          data={zones}
          value={timeZone}
          error={problem?.faultOf('timeZone')}
          onChange={(zone) => zone !== null && setTimeZone(zone)}
        />
        <TextInput
          label={words.ownerName}
          description={words.ownerNameHint}
          maxLength={100}
          autoComplete="off"
          value={ownerName}
          error={problem?.faultOf('ownerName')}
          onChange={(event) => setOwnerName(event.currentTarget.value)}
        />
        <ProblemOrSignInAgain problem={problem} onSignedIn={run} />
        {added !== undefined && (
          <Note kind="good">
            <p>{words.studioAdded(added)}</p>
          </Note>
        )}
        <div>
          <Button type="submit" loading={busy}>
            {words.addStudio}
          </Button>
        </div>
      </Fields>
    </Section>
  );
}
