import { Textarea } from '@mantine/core';
import { useState } from 'react';
import { useAction } from '../service/use-action.js';
import { Fields } from './fields.js';
import { SaveOrCancel } from './save-or-cancel.js';

/** Does something for which only the reason, or a note, has to be said. */
export function ReasonForm({
  title,
  label,
  hint,
  longest,
  field = 'reason',
  press,
  save,
  onCancel,
}: {
  /** What is done, and with what. */
  title: string;
  label: string;
  hint: string;
  longest: number;
  /** What the service calls it. */
  field?: 'reason' | 'note';
  /** What stands on the button; left out: that it is saved. */
  press?: string;
  save: (reason: string) => Promise<void>;
  onCancel: () => void;
}) {
  const [reason, setReason] = useState('');
  const { run, busy, problem } = useAction(() => save(reason.trim()));
  return (
    <Fields onSubmit={() => void run()} label={title}>
      <Textarea
        label={label}
        description={hint}
        required
        autosize
        minRows={2}
        maxLength={longest}
        autoComplete="off"
        value={reason}
        error={problem?.faultOf(field)}
        onChange={(event) => setReason(event.currentTarget.value)}
      />
      <SaveOrCancel problem={problem} busy={busy} save={press} onCancel={onCancel} />
    </Fields>
  );
}
