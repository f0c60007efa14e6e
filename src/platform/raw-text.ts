import { applyDecorators } from '@nestjs/common';
import { ApiProperty } from '@nestjs/swagger';
import { IsString, Length, Matches, NotContains } from 'class-validator';

/**
 * A text of 1 to so many characters that is kept as it came, lines and all. Only what no database keeps is refused: NUL
 * and halves of characters.
 * @param faults what is said of those two
 */
export function RawText(
  maximumLength: number,
  faults: { nul: string; halves: string } = {
    nul: '$property holds the character NUL, which is no part of a text. Copy it anew.',
    halves: '$property holds halves of characters. Copy it anew.',
  },
): PropertyDecorator {
  return applyDecorators(
    IsString(),
    Length(1, maximumLength),
    NotContains('\0', { message: faults.nul }),
    Matches(/^\P{Cs}*$/u, { message: faults.halves }),
    ApiProperty({ minLength: 1, maxLength: maximumLength }),
  );
}
