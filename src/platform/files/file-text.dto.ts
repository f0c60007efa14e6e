import { RawText } from '../raw-text.js';
import { WriteDto } from '../request.dto.js';

/** So long may a file be; the largest body that is read, 1 MiB, holds it when few characters are beyond ASCII. */
export const maximumFileCharacters = 500_000;

/** The text of a file as it stands in it. What it holds is judged cell by cell, so that faults are told by row. */
export function FileText(): PropertyDecorator {
  return RawText(maximumFileCharacters, {
    nul: 'The file is no text: it holds the character NUL. Save it as CSV or iCalendar.',
    halves: 'The file is damaged: it holds halves of characters. Save it anew as UTF-8.',
  });
}

/** A file to be judged; nothing is written. */
export class JudgeFileDto {
  @FileText() text: string;
}

/** A file to be taken in, whole or not at all. */
export class TakeInFileDto extends WriteDto {
  @FileText() text: string;
}
