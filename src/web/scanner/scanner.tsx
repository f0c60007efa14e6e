import { Button } from '@mantine/core';
import { type RefObject, useEffect, useRef, useState } from 'react';
import type { ScanView } from '../../sessions/tray.views.js';
import { Note } from '../frame/note.js';
import { useTexts } from '../texts/texts.js';
import { CameraChoice } from './camera-choice.js';
import { CameraPicture } from './camera-picture.js';
import { Decoder } from './decoder.js';
import { PhotoButton } from './photo-button.js';
import styles from './scanner.module.css';
import { SeparatorField } from './separator-field.js';
import { TorchButton } from './torch-button.js';
import { useScanCamera } from './use-scan-camera.js';
import { useTypedScans } from './use-typed-scans.js';
import { VerdictSound } from './verdict-sound.js';

/**
 * All ways in which symbols come to a tray but typing them by hand: the camera, which looks as long as this is shown, a
 * photo, and a hand-held scanner, which types into the field of the page.
 */
export function Scanner({
  field,
  scan,
  onShown,
}: {
  /** Where a hand-held scanner types. */
  field: RefObject<HTMLInputElement | null>;
  /** What the last scan was answered, null before any; it sounds where that is chosen. Left out where nothing is judged. */
  scan?: Pick<ScanView, 'verdict'> | null | undefined;
  /** A symbol of the camera or of a photo, its symbology identifier in front, such as `]d2`. */
  onShown: (symbol: string) => void;
}) {
  const texts = useTexts();
  useTypedScans(field);
  const decoder = useRef(new Decoder()).current;
  useEffect(() => () => decoder.stop(), [decoder]);
  const camera = useScanCamera();
  const [readerFailed, setReaderFailed] = useState(false);
  const start = () => {
    setReaderFailed(false);
    camera.start();
  };
  const { state } = camera;
  const fault = readerFailed ? 'no reader' : state.is === 'faulty' ? state.fault : undefined;
  const stream = state.is === 'looking' && !readerFailed ? state.stream : undefined;
  return (
    <section className={styles.scanner} aria-label={texts.scanner.title}>
      {fault && (
        <Note kind="fault">
          <p>{texts.scanner[fault]}</p>
          <p>{texts.scanner.stillWorks}</p>
        </Note>
      )}
      <div className={styles.look}>
        {stream && (
          <CameraPicture
            stream={stream}
            decoder={decoder}
            onShown={onShown}
            onFailed={() => setReaderFailed(true)}
          />
        )}
        <div className={styles.actions}>
          {(fault || !camera.on) && (
            <Button className={styles.button} size="xl" variant="default" onClick={start}>
              {fault ? texts.scanner.startAgain : texts.scanner.start}
            </Button>
          )}
          {stream && <TorchButton key={stream.id} stream={stream} />}
          {/* Always here: a phone hides the page while it takes the photo. */}
          <PhotoButton decoder={decoder} onShown={onShown} />
        </div>
      </div>
      <details className={styles.settings}>
        <summary>{texts.scanner.settings}</summary>
        {stream && <CameraChoice stream={stream} onChoose={camera.choose} />}
        {scan !== undefined && <VerdictSound scan={scan} />}
        <SeparatorField />
        {camera.on && (
          <Button variant="default" onClick={camera.stop}>
            {texts.scanner.stop}
          </Button>
        )}
      </details>
    </section>
  );
}
