import { IsBase64, IsIn, MaxLength, MinLength } from 'class-validator';
import { EventDto } from '../../platform/request.dto.js';
import { type PhotoMediaType, photoMediaTypes } from './photo-media-type.js';

/** Of the file itself; the pages make pictures smaller before they send them. */
export const maximumPhotoBytes = 700_000;
const maximumPhotoLetters = Math.ceil(maximumPhotoBytes / 3) * 4;

export class KeepPhotoDto extends EventDto {
  @IsIn(photoMediaTypes) mediaType: PhotoMediaType;
  /** The file in base64, at most 700,000 bytes before that. It is kept as it came, with all that a camera wrote into it. */
  @IsBase64()
  @MinLength(4)
  @MaxLength(maximumPhotoLetters)
  content: string;
}
