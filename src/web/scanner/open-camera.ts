/** The picture is asked for as sharp as is quickly read; a camera that has less gives what it has. */
const wanted: MediaTrackConstraints = { width: { ideal: 1_920 }, height: { ideal: 1_080 } };

/**
 * Opens the camera of that name, or the one at the back, away from who holds the device.
 * @param label as the system names it; empty for none in particular
 * @throws DOMException as getUserMedia does
 */
export async function openCamera(label: string): Promise<MediaStream> {
  const known = await cameraOf(label);
  if (known) return open({ deviceId: { exact: known.deviceId } });
  const stream = await open({ facingMode: { ideal: 'environment' } });
  // Some browsers tell the names of cameras only to those who may use one.
  const found = nameOf(stream) === label ? undefined : await cameraOf(label);
  if (!found) return stream;
  closeCamera(stream);
  return open({ deviceId: { exact: found.deviceId } });
}

export function closeCamera(stream: MediaStream | undefined): void {
  for (const track of stream?.getTracks() ?? []) track.stop();
}

export async function listCameras(): Promise<MediaDeviceInfo[]> {
  const devices = await navigator.mediaDevices.enumerateDevices();
  return devices.filter(({ kind, label }) => kind === 'videoinput' && label !== '');
}

export function nameOf(stream: MediaStream): string {
  return stream.getVideoTracks()[0]?.label ?? '';
}

function open(which: MediaTrackConstraints): Promise<MediaStream> {
  return navigator.mediaDevices.getUserMedia({ video: { ...wanted, ...which }, audio: false });
}

async function cameraOf(label: string): Promise<MediaDeviceInfo | undefined> {
  return label === '' ? undefined : (await listCameras()).find((camera) => camera.label === label);
}
