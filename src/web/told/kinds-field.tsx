import { Checkbox } from '@mantine/core';
import { useTexts } from '../texts/texts.js';
import styles from './kinds-field.module.css';

/** Of which kinds of alerts one does not want to be told. Those that are not known here stay as they are. */
export function KindsField({
  kinds,
  error,
  onChange,
}: {
  kinds: readonly string[];
  error: string | undefined;
  onChange: (kinds: string[]) => void;
}) {
  const texts = useTexts();
  const words = texts.told;
  const known = texts.alerts.kinds;
  const labelOf = (kind: string) => known[kind] ?? kind;
  const offered = [...new Set([...Object.keys(known), ...kinds])].sort((one, other) =>
    labelOf(one).localeCompare(labelOf(other), texts.language),
  );
  return (
    <details>
      <summary className={styles.summary}>{words.kinds(kinds.length)}</summary>
      <Checkbox.Group
        label={words.kindsLeftOut}
        description={words.kindsHint}
        value={[...kinds]}
        error={error}
        onChange={onChange}
      >
        <div className={styles.kinds}>
          {offered.map((kind) => (
            <Checkbox key={kind} value={kind} label={labelOf(kind)} />
          ))}
        </div>
      </Checkbox.Group>
    </details>
  );
}
