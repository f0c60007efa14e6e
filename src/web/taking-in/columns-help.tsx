import { Button, Group } from '@mantine/core';
import { saveFile } from '../service/save-file.js';
import { useTexts } from '../texts/texts.js';
import styles from './taking-in.module.css';
import { templateText } from './template-text.js';

/** What the columns of a list are, and files to begin with. */
export function ColumnsHelp<Name extends string>({
  columns,
  example,
  said,
  fileName,
}: {
  columns: readonly { name: Name; needed: boolean }[];
  example: readonly Partial<Record<Name, string>>[];
  said: Record<Name, string>;
  /** Without its ending. */
  fileName: string;
}) {
  const words = useTexts().takingIn;
  const save = (rows: typeof example, name: string) =>
    saveFile(new Blob([templateText(columns, rows)], { type: 'text/csv;charset=utf-8' }), `${name}.csv`);
  return (
    <>
      <Group gap="sm">
        <Button variant="default" onClick={() => save([], fileName)}>
          {words.template}
        </Button>
        <Button variant="default" onClick={() => save(example, `${fileName}-example`)}>
          {words.example}
        </Button>
      </Group>
      <details className={styles.columns}>
        <summary>{words.columns}</summary>
        <p>{words.columnsHint}</p>
        <dl>
          {columns.map(({ name, needed }) => (
            <div key={name}>
              <dt>
                <span lang="en">{name}</span>
                {needed && <span className={styles.needed}>{words.needed}</span>}
              </dt>
              <dd>{said[name]}</dd>
            </div>
          ))}
        </dl>
      </details>
    </>
  );
}
