/** That a picture is kept, without the picture. */
export class PhotoView {
  id: string;
  mediaType: 'image/jpeg' | 'image/png';
  bytes: number;
  /** SHA-256 of the file, hexadecimal. */
  digest: string;
  occurredAt: string;
}
