import { TextInput } from '@mantine/core';
import { readCartridge } from '../../catalogue/cartridge-notation.js';
import { useTexts } from '../texts/texts.js';
import styles from './catalogue.module.css';

/** The trade's way to write a cartridge, with what was understood of it said at once. */
export function NotationField({
  value,
  error,
  onChange,
}: {
  value: string;
  error: string | undefined;
  onChange: (notation: string) => void;
}) {
  const texts = useTexts();
  const reading = value.trim() === '' ? undefined : readCartridge(value);
  return (
    <div>
      <TextInput
        label={texts.products.notation}
        description={texts.products.notationHint}
        maxLength={40}
        autoComplete="off"
        autoCapitalize="characters"
        spellCheck={false}
        value={value}
        error={error ?? (reading && 'error' in reading ? reading.error.message : undefined)}
        onChange={(event) => onChange(event.currentTarget.value)}
      />
      {reading && !('error' in reading) && (
        <p className={styles.explained} role="status">
          {texts.products.notationRead(reading)}
        </p>
      )}
      <NotationExplained />
    </div>
  );
}

/** How a cartridge is written, for whoever does not do it every day. */
export function NotationExplained() {
  const texts = useTexts();
  return (
    <details>
      <summary className={styles.summary}>{texts.products.notationHow}</summary>
      <dl className={styles.notations}>
        {texts.products.notationParts.map(([sign, meaning]) => (
          <div key={sign} className={styles.notation}>
            <dt>{sign}</dt>
            <dd>{meaning}</dd>
          </div>
        ))}
      </dl>
    </details>
  );
}
