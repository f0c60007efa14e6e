import { Button, FileButton } from '@mantine/core';
import { useRef, useState } from 'react';
import { Note } from '../frame/note.js';
import { useTexts } from '../texts/texts.js';
import { type Decoder, ReadError } from './decoder.js';
import styles from './scanner.module.css';

type Outcome = { symbols: number } | { failed: 'no picture' | 'no reader' };

/** A photo instead of the running picture: taken now on a phone, or a file. */
export function PhotoButton({
  decoder,
  onShown,
}: {
  decoder: Decoder;
  /** With its symbology identifier in front. */
  onShown: (symbol: string) => void;
}) {
  const texts = useTexts();
  const [outcome, setOutcome] = useState<Outcome>();
  const [busy, setBusy] = useState(false);
  const anew = useRef<() => void>(null);
  const read = async (photo: File | null) => {
    // The same file can be chosen again.
    anew.current?.();
    if (!photo) return;
    setBusy(true);
    setOutcome(undefined);
    try {
      const symbols = await decoder.read({ photo });
      setOutcome({ symbols: symbols.length });
      for (const symbol of symbols) onShown(symbol);
    } catch (error) {
      if (!(error instanceof ReadError)) throw error;
      setOutcome({ failed: error.failure });
    } finally {
      setBusy(false);
    }
  };
  return (
    <>
      <FileButton
        accept="image/*"
        capture="environment"
        resetRef={anew}
        onChange={(photo) => void read(photo)}
      >
        {(props) => (
          <Button {...props} className={styles.button} size="xl" variant="default" loading={busy}>
            {texts.scanner.photo}
          </Button>
        )}
      </FileButton>
      {outcome && (
        <Note kind={'symbols' in outcome && outcome.symbols > 0 ? 'plain' : 'fault'}>
          <p>{'symbols' in outcome ? texts.scanner.found(outcome.symbols) : texts.scanner[outcome.failed]}</p>
        </Note>
      )}
    </>
  );
}
