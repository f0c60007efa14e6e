import { NativeSelect } from '@mantine/core';
import { useEffect, useState } from 'react';
import { useTexts } from '../texts/texts.js';
import { listCameras, nameOf } from './open-camera.js';

/** Which camera looks, where the device has several. */
export function CameraChoice({
  stream,
  onChoose,
}: {
  stream: MediaStream;
  /** By the name the system gives it. */
  onChoose: (label: string) => void;
}) {
  const texts = useTexts();
  const [labels, setLabels] = useState<string[]>([]);
  useEffect(() => {
    let over = false;
    const list = () =>
      void listCameras().then((cameras) => {
        if (!over) setLabels([...new Set(cameras.map(({ label }) => label))]);
      });
    list();
    navigator.mediaDevices.addEventListener('devicechange', list);
    return () => {
      over = true;
      navigator.mediaDevices.removeEventListener('devicechange', list);
    };
  }, []);
  if (labels.length < 2) return null;
  return (
    <NativeSelect
      label={texts.scanner.camera}
      data={labels}
      value={nameOf(stream)}
      onChange={(event) => onChoose(event.currentTarget.value)}
    />
  );
}
