import { TextInput } from '@mantine/core';
import { useState } from 'react';
import { localDay } from '../../../identity/local-day.js';
import { Fields } from '../../frame/fields.js';
import { SaveOrCancel } from '../../frame/save-or-cancel.js';
import { useStudio } from '../../service/studio-answers.js';
import { useAction } from '../../service/use-action.js';
import { useTexts } from '../../texts/texts.js';
import { daysToPutOff } from './days-to-put-off.js';

/** Until which morning nobody is reminded. */
export function PutOffForm({
  studioId,
  save,
  onCancel,
}: {
  studioId: string;
  /** @param until plain date, local to the studio */
  save: (until: string) => Promise<void>;
  onCancel: () => void;
}) {
  const words = useTexts().alertPages.one;
  const studio = useStudio(studioId);
  const timeZone = studio.answer?.timeZone;
  const days = timeZone && daysToPutOff(localDay(new Date().toISOString(), timeZone));
  const [until, setUntil] = useState('');
  const { run, busy, problem } = useAction(() => save(until));
  return (
    <Fields onSubmit={() => void run()} label={words.putOffIt}>
      <TextInput
        type="date"
        label={words.putOffUntil}
        description={words.putOffHint}
        required
        {...(days && { min: days.first, max: days.last })}
        value={until}
        error={problem?.faultOf('until')}
        onChange={(event) => setUntil(event.currentTarget.value)}
      />
      <SaveOrCancel
        problem={problem ?? studio.problem}
        busy={busy}
        save={words.putOffIt}
        onCancel={onCancel}
      />
    </Fields>
  );
}
