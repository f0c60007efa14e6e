import { Button, FileButton, Group, Textarea } from '@mantine/core';
import { type ReactNode, useRef, useState } from 'react';
import { Fields } from '../frame/fields.js';
import { Note } from '../frame/note.js';
import { useTexts } from '../texts/texts.js';
import { type FileFault, readBroughtFile } from './brought-file.js';
import styles from './taking-in.module.css';

/** Where a list comes from: a file, or a text that is pasted. */
export function FileSource({
  accept,
  text,
  onBrought,
  onLook,
  busy,
  children,
}: {
  accept: string;
  text: string;
  onBrought: (text: string) => void;
  onLook: () => void;
  busy: boolean;
  /** What is chosen for all rows. */
  children?: ReactNode;
}) {
  const words = useTexts().takingIn;
  const [fault, setFault] = useState<FileFault>();
  const [name, setName] = useState<string>();
  const anew = useRef<() => void>(null);
  const read = async (file: File | null) => {
    // So that the same file, mended, can be chosen again.
    anew.current?.();
    if (!file) return;
    const reading = await readBroughtFile(file);
    setFault('fault' in reading ? reading.fault : undefined);
    setName('fault' in reading ? undefined : file.name);
    onBrought('fault' in reading ? '' : reading.text);
  };
  return (
    <Fields onSubmit={onLook} label={words.bring}>
      <Group gap="md">
        <FileButton accept={accept} resetRef={anew} onChange={(file) => void read(file)}>
          {(props) => (
            <Button {...props} variant="default">
              {words.choose}
            </Button>
          )}
        </FileButton>
        {name !== undefined && text !== '' && <span className={styles.name}>{words.chosen(name)}</span>}
      </Group>
      {fault && (
        <Note kind="fault">
          <p>{words.fileFaults[fault]}</p>
        </Note>
      )}
      <Textarea
        label={words.paste}
        description={words.pasteHint}
        rows={6}
        autoComplete="off"
        spellCheck={false}
        classNames={{ input: styles.text ?? '' }}
        value={text}
        onChange={(event) => {
          setName(undefined);
          setFault(undefined);
          onBrought(event.currentTarget.value);
        }}
      />
      {children}
      <div>
        <Button type="submit" loading={busy} disabled={text.trim() === ''}>
          {words.look}
        </Button>
      </div>
    </Fields>
  );
}
