import { useEffect, useState } from 'react';
import { type CameraFault, cameraFault } from './camera-fault.js';
import { closeCamera, openCamera } from './open-camera.js';

export type CameraState =
  | { is: 'off' }
  | { is: 'starting' }
  | { is: 'looking'; stream: MediaStream }
  | { is: 'faulty'; fault: CameraFault };

/**
 * The camera, open as long as it is wanted and the page is seen.
 * @param label of the camera; another one changes over to it
 * @param attempt counts up to try again after a fault
 */
export function useCamera(wanted: boolean, label: string, attempt: number): CameraState {
  const [state, setState] = useState<CameraState>({ is: 'off' });
  // biome-ignore lint/correctness/useExhaustiveDependencies: another attempt opens it anew.
  useEffect(() => {
    if (!wanted) return;
    let over = false;
    let opened: MediaStream | undefined;
    const fail = (fault: CameraFault) => {
      closeCamera(opened);
      if (!over) setState({ is: 'faulty', fault });
    };
    setState({ is: 'starting' });
    void open(label).then(
      (stream) => {
        opened = stream;
        if (over) return closeCamera(stream);
        // Pulled out, or taken away by the system; stopping it here does not say so.
        stream.getVideoTracks()[0]?.addEventListener('ended', () => fail('unplugged'));
        setState({ is: 'looking', stream });
      },
      (error: unknown) =>
        fail(cameraFault(error instanceof DOMException ? error.name : undefined, isSecureContext)),
    );
    return () => {
      over = true;
      closeCamera(opened);
      setState({ is: 'off' });
    };
  }, [wanted, label, attempt]);
  return state;
}

/** Browsers offer no cameras at all to a page that came without HTTPS. */
async function open(label: string): Promise<MediaStream> {
  if (navigator.mediaDevices === undefined) throw new Error('no cameras');
  return openCamera(label);
}
