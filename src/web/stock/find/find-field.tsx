import { Button, TextInput } from '@mantine/core';
import { useRef, useState } from 'react';
import { useNavigate } from 'react-router';
import { Fields } from '../../frame/fields.js';
import { Note } from '../../frame/note.js';
import { pathOf } from '../../frame/places.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { useTypedScans } from '../../scanner/use-typed-scans.js';
import { useAction } from '../../service/use-action.js';
import { useTexts } from '../../texts/texts.js';
import styles from './find-field.module.css';
import { type Found, findThing } from './find-thing.js';

/** Longer than any symbol of a thing on a shelf. */
const longestSymbol = 500;

/** Opens what is scanned or typed: a container by our label, a lot by its code, lots by their product. */
export function FindField({ studioId }: { studioId: string }) {
  const texts = useTexts();
  const open = useNavigate();
  const field = useRef<HTMLInputElement>(null);
  const [text, setText] = useState('');
  const [missing, setMissing] = useState<string>();
  useTypedScans(field);
  const { run, busy, problem } = useAction(async () => {
    setMissing(undefined);
    const found = await findThing(studioId, text);
    if (found.page === 'nothing') {
      setMissing(text.trim());
      field.current?.select();
      return;
    }
    setText('');
    await open(pathOfFound(studioId, found));
  });
  const submit = () => {
    if (text.trim() !== '') void run();
  };
  return (
    <div className={styles.find}>
      <Fields onSubmit={submit} label={texts.find.label}>
        <div className={styles.row}>
          <TextInput
            ref={field}
            className={styles.field ?? ''}
            label={texts.find.label}
            description={texts.find.hint}
            type="search"
            autoComplete="off"
            autoCapitalize="off"
            spellCheck={false}
            maxLength={longestSymbol}
            value={text}
            onChange={(event) => setText(event.currentTarget.value)}
          />
          <Button type="submit" variant="default" loading={busy}>
            {texts.find.find}
          </Button>
        </div>
        <ProblemNote problem={problem} />
        {missing !== undefined && (
          <Note kind="fault">
            <p>{texts.find.nothing(missing)}</p>
          </Note>
        )}
      </Fields>
    </div>
  );
}

function pathOfFound(studioId: string, found: Exclude<Found, { page: 'nothing' }>): string {
  const area = { studioId, area: 'stock' } as const;
  switch (found.page) {
    case 'container':
      return pathOf(area, 'containers', found.id);
    case 'lot':
      return pathOf(area, 'lots', found.id);
    case 'lots':
      return `${pathOf(area, 'lots')}?${new URLSearchParams(found.query)}`;
    case 'levels':
      return `${pathOf(area, 'levels')}?${new URLSearchParams({ text: found.text })}`;
  }
}
