import { Button } from '@mantine/core';
import { useState } from 'react';
import { useTexts } from '../texts/texts.js';
import styles from './scanner.module.css';
import { hasTorch, setTorch } from './torch.js';

/** The lamp beside the camera, where there is one. It goes out with the camera. */
export function TorchButton({ stream }: { stream: MediaStream }) {
  const texts = useTexts();
  const [lit, setLit] = useState(false);
  if (!hasTorch(stream)) return null;
  const turn = () =>
    void setTorch(stream, !lit).then(
      () => setLit(!lit),
      () => undefined,
    );
  return (
    <Button className={styles.button} size="xl" variant="default" aria-pressed={lit} onClick={turn}>
      {lit ? texts.scanner.torchOff : texts.scanner.torchOn}
    </Button>
  );
}
