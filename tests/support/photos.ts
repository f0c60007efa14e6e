import { PNG } from 'pngjs';
import type { HoldView } from '../../src/stock/holds.views.js';
import type { PhotoView } from '../../src/stock/photos/photos.views.js';
import type { RunningService } from './service.js';

/** A small picture, in base64; another shade is another file. */
export function samplePhoto(shade = 0): { mediaType: 'image/png'; content: string } {
  const picture = new PNG({ width: 4, height: 3 });
  picture.data.fill(shade);
  return { mediaType: 'image/png', content: PNG.sync.write(picture).toString('base64') };
}

export async function keepPhoto(service: RunningService, shade?: number): Promise<string> {
  return (await service.made<PhotoView>('/photos', samplePhoto(shade))).id;
}

/** Releases a recall hold as somebody who works alone: asked for with a photo, then released. */
export async function releaseAlone(
  service: RunningService,
  holdId: string,
  reason: string,
): Promise<HoldView> {
  const photoId = await keepPhoto(service);
  await service.made(`/holds/${holdId}/release-requests`, { reason, photoId });
  return service.made<HoldView>(`/holds/${holdId}/release`, { reason });
}
