/** Why there is no picture of a camera. */
export type CameraFault = 'insecure' | 'refused' | 'absent' | 'in use' | 'unplugged' | 'unknown';

/**
 * What keeps the camera from being opened, by the name of the browser's error (W3C Media Capture and Streams,
 * getUserMedia [S]).
 * @param name of the DOMException; undefined where the browser offers no cameras at all
 * @param isSecureContext whether the page came by HTTPS or from this very machine; browsers offer cameras only there
 */
export function cameraFault(name: string | undefined, isSecureContext: boolean): CameraFault {
  if (!isSecureContext) return 'insecure';
  switch (name) {
    case 'NotAllowedError':
    case 'SecurityError':
      return 'refused';
    case undefined:
    case 'NotFoundError':
    case 'OverconstrainedError':
      return 'absent';
    // Another program has it, or the system keeps it back.
    case 'NotReadableError':
    case 'AbortError':
      return 'in use';
    default:
      return 'unknown';
  }
}
