import { useDocumentVisibility } from '@mantine/hooks';
import { useState } from 'react';
import { changeDeviceSettings, deviceSettings } from './device-settings.js';
import { useCamera } from './use-camera.js';
import { useCameraAllowed } from './use-camera-allowed.js';
import { useScreenAwake } from './use-screen-awake.js';

/**
 * The camera of this device, looking while the page is seen, with the screen kept on: from a press on, or by itself where
 * the browser allows it and it was not stopped here by hand.
 */
export function useScanCamera() {
  const allowed = useCameraAllowed();
  const isSeen = useDocumentVisibility() === 'visible';
  const [label, setLabel] = useState(deviceSettings().camera);
  /** By a press on this page; undefined before any. */
  const [pressed, setPressed] = useState<'start' | 'stop'>();
  const [attempt, setAttempt] = useState(0);
  const byItself = allowed === true && !deviceSettings().cameraStopped;
  const on = pressed === undefined ? byItself : pressed === 'start';
  const state = useCamera(on && isSeen, label, attempt);
  useScreenAwake(state.is === 'looking');
  return {
    state,
    on,
    /** Also after a fault. */
    start() {
      changeDeviceSettings({ cameraStopped: false });
      setPressed('start');
      setAttempt((count) => count + 1);
    },
    stop() {
      changeDeviceSettings({ cameraStopped: true });
      setPressed('stop');
    },
    choose(camera: string) {
      changeDeviceSettings({ camera });
      setLabel(camera);
    },
  };
}
