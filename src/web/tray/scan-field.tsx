import { Button, TextInput } from '@mantine/core';
import { type RefObject, useState } from 'react';
import { Fields } from '../frame/fields.js';
import { deviceSettings } from '../scanner/device-settings.js';
import { withSeparators } from '../scanner/typed-symbol.js';
import { useTexts } from '../texts/texts.js';
import styles from './scan-field.module.css';

/** Longer than any symbol of a thing on a tray. */
const longestSymbol = 500;

/**
 * Where a hand-held scanner types, and whoever reads a label without one. It is not focused by itself, for that would open
 * the keyboard of a tablet; what a scanner types comes here all the same.
 */
export function ScanField({
  field,
  action,
  onShown,
}: {
  field: RefObject<HTMLInputElement | null>;
  /** What is done with it, where it is not judged. */
  action?: string;
  onShown: (symbol: string) => void;
}) {
  const texts = useTexts();
  const [text, setText] = useState('');
  const submit = () => {
    if (text.trim() === '') return;
    setText('');
    onShown(withSeparators(text, deviceSettings().separatorSubstitute));
  };
  return (
    <Fields onSubmit={submit} label={texts.tray.scan}>
      <div className={styles.row}>
        <TextInput
          ref={field}
          className={styles.field}
          size="xl"
          label={texts.tray.scan}
          description={texts.tray.scanHint}
          autoComplete="off"
          autoCapitalize="off"
          spellCheck={false}
          maxLength={longestSymbol}
          value={text}
          onChange={(event) => setText(event.currentTarget.value)}
        />
        <Button type="submit" size="xl" variant="default">
          {action ?? texts.tray.judge}
        </Button>
      </div>
    </Fields>
  );
}
