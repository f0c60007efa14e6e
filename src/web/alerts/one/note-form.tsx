import { Textarea } from '@mantine/core';
import { useState } from 'react';
import { Fields } from '../../frame/fields.js';
import { SaveOrCancel } from '../../frame/save-or-cancel.js';
import { useAction } from '../../service/use-action.js';

const longestNote = 2_000;

/** A note to the history, by itself or with what is done. */
export function NoteForm({
  title,
  label,
  hint,
  save,
  onCancel,
}: {
  /** What is done. */
  title: string;
  label: string;
  hint: string;
  save: (note: string) => Promise<void>;
  onCancel: () => void;
}) {
  const [note, setNote] = useState('');
  const { run, busy, problem } = useAction(() => save(note.trim()));
  return (
    <Fields onSubmit={() => void run()} label={title}>
      <Textarea
        label={label}
        description={hint}
        required
        autosize
        minRows={2}
        maxLength={longestNote}
        autoComplete="off"
        value={note}
        error={problem?.faultOf('note')}
        onChange={(event) => setNote(event.currentTarget.value)}
      />
      <SaveOrCancel problem={problem} busy={busy} save={title} onCancel={onCancel} />
    </Fields>
  );
}
