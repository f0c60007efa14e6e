import type { Decoder } from './decoder.js';
import { restAfterLook } from './pace.js';

const rest = (milliseconds: number) => new Promise((end) => setTimeout(end, milliseconds));

/**
 * Looks at a running picture again and again, as often as reading allows, until it is told to stop.
 * @throws ReadError when the reader cannot be loaded
 */
export async function watch(
  video: HTMLVideoElement,
  decoder: Decoder,
  signal: AbortSignal,
  onLook: (symbols: string[], at: number) => void,
): Promise<void> {
  while (!signal.aborted) {
    const started = performance.now();
    const frame = await frameOf(video);
    if (frame) {
      const symbols = await decoder.read({ frame });
      if (signal.aborted) return;
      onLook(symbols, performance.now());
    }
    await rest(restAfterLook(performance.now() - started));
  }
}

/** Undefined as long as the camera has not sent a picture. */
async function frameOf(video: HTMLVideoElement): Promise<ImageBitmap | undefined> {
  if (video.readyState < HTMLMediaElement.HAVE_CURRENT_DATA || video.videoWidth === 0) return undefined;
  return createImageBitmap(video).catch(() => undefined);
}
