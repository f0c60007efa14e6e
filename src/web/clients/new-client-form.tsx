import { Button } from '@mantine/core';
import { useRef, useState } from 'react';
import { Fields } from '../frame/fields.js';
import { ProblemNote } from '../frame/problem-note.js';
import { RequestIds } from '../service/request-ids.js';
import { useAction } from '../service/use-action.js';
import { useTexts } from '../texts/texts.js';
import { addClient } from './clients.requests.js';
import { WhoFields, whoOf } from './who-fields.js';

/** Takes on a client who is not known yet. */
export function NewClientForm({
  studioId,
  onAdded,
}: {
  studioId: string;
  onAdded: (clientId: string) => void;
}) {
  const texts = useTexts();
  const [draft, setDraft] = useState({ name: '', contact: '', note: '' });
  const ids = useRef(new RequestIds()).current;
  const { run, busy, problem } = useAction(async () => {
    const who = whoOf(draft);
    const { id } = await addClient(studioId, ids.for(who), who);
    ids.renew();
    onAdded(id);
  });
  return (
    <Fields onSubmit={() => void run()} label={texts.clients.add}>
      <WhoFields draft={draft} problem={problem} onChange={setDraft} />
      <ProblemNote problem={problem} />
      <div>
        <Button type="submit" loading={busy}>
          {texts.clients.addSubmit}
        </Button>
      </div>
    </Fields>
  );
}
