import { Button, Group, TextInput } from '@mantine/core';
import { useState } from 'react';
import { useAction } from '../service/use-action.js';
import { useTexts } from '../texts/texts.js';
import { Fields } from './fields.js';
import { ProblemNote } from './problem-note.js';

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
  const texts = useTexts();
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
      <ProblemNote problem={problem} />
      <Group gap="sm">
        <Button type="submit" loading={busy}>
          {texts.app.save}
        </Button>
        <Button variant="default" onClick={onCancel}>
          {texts.app.cancel}
        </Button>
      </Group>
    </Fields>
  );
}
