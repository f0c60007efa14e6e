import { Checkbox } from '@mantine/core';
import { useEffect, useRef, useState } from 'react';
import type { ScanView } from '../../sessions/tray.views.js';
import { useTexts } from '../texts/texts.js';
import { changeDeviceSettings, deviceSettings } from './device-settings.js';
import { Sounder } from './sounder.js';

/** A short sound at each verdict, off unless it is chosen for this device. */
export function VerdictSound({ scan }: { scan: Pick<ScanView, 'verdict'> | null }) {
  const texts = useTexts();
  const [on, setOn] = useState(deviceSettings().sound);
  const sounder = useRef(new Sounder()).current;
  /** What was judged before the page opened, or before sound was chosen, is not sounded. */
  const last = useRef(scan);
  useEffect(() => {
    if (scan === last.current) return;
    last.current = scan;
    if (on && scan) void sounder.sound(scan.verdict);
  }, [on, scan, sounder]);
  useEffect(() => () => sounder.stop(), [sounder]);
  const choose = (sound: boolean) => {
    setOn(sound);
    changeDeviceSettings({ sound });
    // One hears what was chosen, and the browser has been touched.
    if (sound) void sounder.sound('admitted');
  };
  return (
    <Checkbox
      label={texts.scanner.sound}
      description={texts.scanner.soundHint}
      checked={on}
      onChange={(event) => choose(event.currentTarget.checked)}
    />
  );
}
