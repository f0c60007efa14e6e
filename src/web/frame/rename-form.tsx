import { TextInput } from '@mantine/core';
import { useState } from 'react';
import { useAction } from '../service/use-action.js';
import { Fields } from './fields.js';
import { SaveOrCancel } from './save-or-cancel.js';

/** Gives something another name. */
export function RenameForm({
  title,
  label,
  name,
  rename,
  onCancel,
}: {
  /** What is renamed. */
  title: string;
  label: string;
  name: string;
  rename: (name: string) => Promise<void>;
  onCancel: () => void;
}) {
  const [newName, setNewName] = useState(name);
  const { run, busy, problem } = useAction(() => rename(newName));
  return (
    <Fields onSubmit={() => void run()} label={title}>
      <TextInput
        label={label}
        required
        maxLength={100}
        autoComplete="off"
        value={newName}
        onChange={(event) => setNewName(event.currentTarget.value)}
      />
      <SaveOrCancel problem={problem} busy={busy} onCancel={onCancel} />
    </Fields>
  );
}
