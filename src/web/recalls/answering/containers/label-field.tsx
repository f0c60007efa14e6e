import { Button, TextInput } from '@mantine/core';
import { useRef, useState } from 'react';
import type { RecallContainerView } from '../../../../recalls/containers/recall-containers.views.js';
import { readSymbol } from '../../../catalogue/catalogue.requests.js';
import { Fields } from '../../../frame/fields.js';
import { Note } from '../../../frame/note.js';
import { ProblemNote } from '../../../frame/problem-note.js';
import { useTypedScans } from '../../../scanner/use-typed-scans.js';
import { useAction } from '../../../service/use-action.js';
import { writtenLabel } from '../../../stock/amounts.js';
import { useTexts } from '../../../texts/texts.js';
import { listRecallContainers } from './containers.requests.js';
import styles from './label-field.module.css';

const longestSymbol = 500;

/** Shows the bottle or box of the recall whose label is scanned or typed. */
export function LabelField({
  studioId,
  recallId,
  onFound,
}: {
  studioId: string;
  recallId: string;
  onFound: (container: RecallContainerView) => void;
}) {
  const words = useTexts().recallContainers;
  const field = useRef<HTMLInputElement>(null);
  const [text, setText] = useState('');
  const [missing, setMissing] = useState<string>();
  useTypedScans(field);
  const { run, busy, problem } = useAction(async () => {
    setMissing(undefined);
    const { labelCode } = await readSymbol(studioId, text);
    if (labelCode === null) {
      setMissing(words.noLabel(text.trim()));
    } else {
      const container = await labelled(studioId, recallId, labelCode);
      if (container) {
        setText('');
        onFound(container);
        return;
      }
      setMissing(words.notOfRecall(writtenLabel(labelCode)));
    }
    field.current?.select();
  });
  return (
    <div className={styles.find}>
      <Fields
        onSubmit={() => {
          if (text.trim() !== '') void run();
        }}
        label={words.scan}
      >
        <div className={styles.row}>
          <TextInput
            ref={field}
            className={styles.field ?? ''}
            label={words.scan}
            description={words.scanHint}
            type="search"
            autoComplete="off"
            autoCapitalize="characters"
            spellCheck={false}
            maxLength={longestSymbol}
            value={text}
            onChange={(event) => setText(event.currentTarget.value)}
          />
          <Button type="submit" variant="default" loading={busy}>
            {words.show}
          </Button>
        </div>
        <ProblemNote problem={problem} />
        {missing !== undefined && (
          <Note kind="fault">
            <p>{missing}</p>
          </Note>
        )}
      </Fields>
    </div>
  );
}

/** Page by page: a recall has few containers, and the list is the one place that knows all of them. */
async function labelled(
  studioId: string,
  recallId: string,
  labelCode: string,
): Promise<RecallContainerView | undefined> {
  for (let after: string | undefined; ; ) {
    const { items, next } = await listRecallContainers(studioId, recallId, undefined, after);
    const found = items.find((container) => container.labelCode === labelCode);
    if (found || next === null) return found;
    after = next;
  }
}
