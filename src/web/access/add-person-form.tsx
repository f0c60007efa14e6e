import { Button } from '@mantine/core';
import { useRef, useState } from 'react';
import { Fields } from '../frame/fields.js';
import { RequestIds } from '../service/request-ids.js';
import { useAction } from '../service/use-action.js';
import { ProblemOrSignInAgain } from '../sign-in/sign-in-again.js';
import { useTexts } from '../texts/texts.js';
import { addPerson, makeLink } from './access.requests.js';
import type { MadeLink } from './made-link-note.js';
import { type PersonDraft, PersonFields } from './person-fields.js';

const nobody: PersonDraft = { name: '', role: 'artist', until: '' };

/** Adds a person and makes the link by which they come in. */
export function AddPersonForm({
  studioId,
  onLink,
}: {
  studioId: string;
  onLink: (link: MadeLink) => Promise<void>;
}) {
  const texts = useTexts();
  const [draft, setDraft] = useState(nobody);
  const ids = useRef({ person: new RequestIds(), link: new RequestIds() }).current;
  const { run, busy, problem } = useAction(async () => {
    const { name, role, until } = draft;
    const content = { name, role, ...(until !== '' && { until }) };
    const person = await addPerson(studioId, { id: ids.person.for(content), ...content });
    const link = await makeLink(studioId, person.id, ids.link.for({ personId: person.id }));
    ids.person.renew();
    setDraft(nobody);
    await onLink({ ...link, personName: name, isForNewPassword: false });
  });
  return (
    <Fields onSubmit={() => void run()} label={texts.people.add}>
      <PersonFields draft={draft} onChange={setDraft} problem={problem} />
      <ProblemOrSignInAgain problem={problem} onSignedIn={run} />
      <div>
        <Button type="submit" loading={busy}>
          {texts.people.addSubmit}
        </Button>
      </div>
    </Fields>
  );
}
