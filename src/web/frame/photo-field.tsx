import { Button, FileButton, Group } from '@mantine/core';
import { useEffect, useId, useRef, useState } from 'react';
import { useTexts } from '../texts/texts.js';
import { Note } from './note.js';
import styles from './photo-field.module.css';
import { type PickedPhoto, pickPhoto } from './picked-photo.js';

/**
 * A photo of a thing: taken with the camera of a phone, or a file. It is made small on the device and shown before it is
 * sent; whoever saves the form sends it first (`keepPhoto`) and names it by its id.
 */
export function PhotoField({
  label,
  hint,
  value,
  onChange,
}: {
  label: string;
  hint?: string;
  value: PickedPhoto | undefined;
  onChange: (photo: PickedPhoto | undefined) => void;
}) {
  const texts = useTexts().photos;
  const id = useId();
  const [busy, setBusy] = useState(false);
  const [unreadable, setUnreadable] = useState(false);
  const anew = useRef<() => void>(null);
  const pick = async (file: File | null) => {
    // The same file can be chosen again.
    anew.current?.();
    if (!file) return;
    setBusy(true);
    setUnreadable(false);
    try {
      onChange(await pickPhoto(file));
    } catch {
      setUnreadable(true);
    } finally {
      setBusy(false);
    }
  };
  return (
    <fieldset className={styles.field} aria-describedby={hint === undefined ? undefined : id}>
      <legend className={styles.label}>{label}</legend>
      {hint !== undefined && (
        <p className={styles.hint} id={id}>
          {hint}
        </p>
      )}
      {value && <Preview picture={value.picture} description={texts.preview} />}
      <Group gap="sm">
        <FileButton
          accept="image/*"
          capture="environment"
          resetRef={anew}
          onChange={(file) => void pick(file)}
        >
          {(props) => (
            <Button {...props} variant="default" loading={busy}>
              {value ? texts.another : texts.take}
            </Button>
          )}
        </FileButton>
        {value && (
          <Button variant="subtle" onClick={() => onChange(undefined)}>
            {texts.without}
          </Button>
        )}
      </Group>
      {unreadable && (
        <Note kind="fault">
          <p>{texts.unreadable}</p>
        </Note>
      )}
    </fieldset>
  );
}

function Preview({ picture, description }: { picture: Blob; description: string }) {
  const [address, setAddress] = useState<string>();
  useEffect(() => {
    const made = URL.createObjectURL(picture);
    setAddress(made);
    return () => URL.revokeObjectURL(made);
  }, [picture]);
  return address === undefined ? null : <img className={styles.picture} src={address} alt={description} />;
}
