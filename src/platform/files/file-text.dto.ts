import { applyDecorators } from '@nestjs/common';
import { ApiProperty } from '@nestjs/swagger';
import { IsString, Length, Matches, NotContains } from 'class-validator';
import { WriteDto } from '../request.dto.js';

/** So long may a file be; the largest body that is read, 1 MiB, holds it when few characters are beyond ASCII. */
export const maximumFileCharacters = 500_000;

/** The text of a file as it stands in it. What it holds is judged cell by cell, so that faults are told by row. */
export function FileText(): PropertyDecorator {
  return applyDecorators(
    IsString(),
    Length(1, maximumFileCharacters),
    NotContains('\0', {
      message: 'The file is no text: it holds the character NUL. Save it as CSV or iCalendar.',
    }),
    Matches(/^\P{Cs}*$/u, {
      message: 'The file is damaged: it holds halves of characters. Save it anew as UTF-8.',
    }),
    ApiProperty({ minLength: 1, maxLength: maximumFileCharacters }),
  );
}

/** A file to be judged; nothing is written. */
export class JudgeFileDto {
  @FileText() text: string;
}

/** A file to be taken in, whole or not at all. */
export class TakeInFileDto extends WriteDto {
  @FileText() text: string;
}
