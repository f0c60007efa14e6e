import { Checkbox } from '@mantine/core';
import { useRef } from 'react';
import type { PersonView } from '../../identity/people.views.js';
import { Fields } from '../frame/fields.js';
import { SaveOrCancel } from '../frame/save-or-cancel.js';
import { useEdits } from '../frame/use-edits.js';
import { readAnewIfStale } from '../service/read-anew-if-stale.js';
import { RequestIds } from '../service/request-ids.js';
import { useAction } from '../service/use-action.js';
import { useTexts } from '../texts/texts.js';
import { changePerson } from './access.requests.js';
import { type PersonDraft, PersonFields } from './person-fields.js';

/** Changes who somebody is here, or notes that they left. */
export function ChangePersonForm({
  studioId,
  person,
  onChanged,
  onStale,
  onCancel,
}: {
  studioId: string;
  person: PersonView;
  onChanged: () => Promise<void>;
  /** Somebody else changed the person: read them again. */
  onStale: () => Promise<void>;
  onCancel: () => void;
}) {
  const texts = useTexts();
  // Read anew, what was written here stays, and only that is sent.
  const edits = useEdits({ ...draftOf(person), works: person.state === 'active' });
  const ids = useRef(new RequestIds()).current;
  const { run, busy, problem } = useAction(async () => {
    const { until, works, ...words } = edits.changes;
    const change = {
      version: person.version,
      ...words,
      ...(until !== undefined && { until: until === '' ? null : until }),
      ...(works !== undefined && { state: works ? ('active' as const) : ('left' as const) }),
    };
    await readAnewIfStale(
      () => changePerson(studioId, person.id, { id: ids.for(change), ...change }),
      onStale,
    );
    await onChanged();
  });
  return (
    <Fields onSubmit={() => void run()} label={texts.people.changeOf(person.name ?? texts.people.noName)}>
      <PersonFields draft={edits.draft} onChange={edits.set} problem={problem} />
      <Checkbox
        label={texts.people.works}
        description={texts.people.worksHint}
        checked={edits.draft.works}
        onChange={(event) => edits.set({ works: event.currentTarget.checked })}
      />
      <SaveOrCancel problem={problem} busy={busy} onCancel={onCancel} />
    </Fields>
  );
}

function draftOf({ name, role, until }: PersonView): PersonDraft {
  return { name: name ?? '', role, until: until ?? '' };
}
