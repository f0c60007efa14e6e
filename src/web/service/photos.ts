import { base64Of, type PickedPhoto } from '../frame/picked-photo.js';
import { request } from './request.js';

/** Sends a picture to be kept. Sent again after a failure it is kept once. @returns its id */
export async function keepPhoto(studioId: string, { id, occurredAt, picture }: PickedPhoto): Promise<string> {
  const content = await base64Of(picture);
  const kept = await request(
    'POST',
    '/studios/{studioId}/photos',
    { studioId },
    { id, occurredAt, mediaType: 'image/jpeg', content },
  );
  return kept.id;
}

/** Where a kept picture is shown, for those who may see it. */
export const photoAddress = (studioId: string, photoId: string) =>
  `/api/v1/studios/${studioId}/photos/${photoId}`;
