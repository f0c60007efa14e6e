import { useState } from 'react';
import { roleMay } from '../../../identity/permissions.js';
import { Choice } from '../../frame/choice.js';
import { Fields } from '../../frame/fields.js';
import { SaveOrCancel } from '../../frame/save-or-cancel.js';
import { usePeople } from '../../service/studio-answers.js';
import { useAction } from '../../service/use-action.js';
import { useTexts } from '../../texts/texts.js';

/** Who sees to it from now on: anybody who works here and may answer alerts. */
export function GiveForm({
  studioId,
  givenTo,
  save,
  onCancel,
}: {
  studioId: string;
  /** Who sees to it now; it cannot be given to them once more. */
  givenTo: string | null;
  save: (personId: string) => Promise<void>;
  onCancel: () => void;
}) {
  const texts = useTexts();
  const words = texts.alertPages.one;
  const people = usePeople(studioId);
  const [personId, setPersonId] = useState('');
  const { run, busy, problem } = useAction(() => save(personId));
  const choices = (people.answer ?? [])
    .filter(({ id, state, role }) => id !== givenTo && state === 'active' && roleMay(role, 'answer alerts'))
    .map(({ id, name }) => ({ value: id, label: name ?? texts.records.unknownPerson }));
  return (
    <Fields onSubmit={() => void run()} label={words.giveIt}>
      <Choice
        label={words.giveTo}
        description={words.giveHint}
        required
        value={personId}
        none={words.choose}
        choices={choices}
        error={problem?.faultOf('personId')}
        onChange={setPersonId}
      />
      <SaveOrCancel problem={problem ?? people.problem} busy={busy} save={words.giveIt} onCancel={onCancel} />
    </Fields>
  );
}
