/** The lamp beside a camera; not in the types of browsers yet (W3C MediaStream Image Capture [S]). */
interface TorchCapabilities extends MediaTrackCapabilities {
  torch?: boolean;
}

interface TorchConstraints extends MediaTrackConstraintSet {
  torch: boolean;
}

export function hasTorch(stream: MediaStream): boolean {
  const capabilities: TorchCapabilities | undefined = stream.getVideoTracks()[0]?.getCapabilities?.();
  return capabilities?.torch === true;
}

/** @throws when the lamp does not obey */
export async function setTorch(stream: MediaStream, lit: boolean): Promise<void> {
  const wish: TorchConstraints = { torch: lit };
  await stream.getVideoTracks()[0]?.applyConstraints({ advanced: [wish] });
}
