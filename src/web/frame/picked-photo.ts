import { v7 as uuidv7 } from 'uuid';

/** A picture that was taken or chosen, made small enough to be sent, and not sent yet. */
export interface PickedPhoto {
  /** Under which it will be kept, also when it is sent again. */
  id: string;
  occurredAt: string;
  picture: Blob;
}

/** Well below what the service keeps. */
const mostBytes = 600_000;
const longestSide = 1_600;
const firstQuality = 0.85;

/** @throws Error when the file is no picture that this browser can read */
export async function pickPhoto(file: Blob): Promise<PickedPhoto> {
  return { id: uuidv7(), occurredAt: new Date().toISOString(), picture: await madeSmall(file) };
}

/**
 * Drawn anew as a JPEG, the way it was held, smaller and coarser until it is small enough. What the camera wrote into the
 * file, such as the place, stays behind.
 */
async function madeSmall(file: Blob): Promise<Blob> {
  const drawn = await createImageBitmap(file, { imageOrientation: 'from-image' });
  try {
    let scale = Math.min(1, longestSide / Math.max(drawn.width, drawn.height));
    for (let quality = firstQuality; ; ) {
      const picture = await jpegOf(drawn, scale, quality);
      if (picture.size <= mostBytes) return picture;
      if (quality > 0.5) quality -= 0.15;
      else scale *= 0.75;
    }
  } finally {
    drawn.close();
  }
}

async function jpegOf(drawn: ImageBitmap, scale: number, quality: number): Promise<Blob> {
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(drawn.width * scale));
  canvas.height = Math.max(1, Math.round(drawn.height * scale));
  const context = canvas.getContext('2d');
  if (!context) throw new Error('This browser cannot draw.');
  // What is transparent would turn black in a JPEG.
  context.fillStyle = '#fff';
  context.fillRect(0, 0, canvas.width, canvas.height);
  context.drawImage(drawn, 0, 0, canvas.width, canvas.height);
  return new Promise((resolve, reject) => {
    canvas.toBlob(
      (blob) => (blob ? resolve(blob) : reject(new Error('The picture could not be drawn.'))),
      'image/jpeg',
      quality,
    );
  });
}

export async function base64Of(blob: Blob): Promise<string> {
  const bytes = new Uint8Array(await blob.arrayBuffer());
  let letters = '';
  // In steps: a call takes so many arguments.
  for (let from = 0; from < bytes.length; from += 8_192) {
    letters += String.fromCharCode(...bytes.subarray(from, from + 8_192));
  }
  return btoa(letters);
}
