import { applyDecorators } from '@nestjs/common';
import { ApiProperty } from '@nestjs/swagger';
import { Transform } from 'class-transformer';
import { IsString, Length, Matches } from 'class-validator';

const trimmed = ({ value }: { value: unknown }) => (typeof value === 'string' ? value.trim() : value);

/**
 * A line of text of 1 to so many characters, without spaces around it. Control characters are refused: PostgreSQL
 * cannot store NUL, and none of them can be seen; so are halves of characters, which change when they are stored.
 */
export function PlainText(maximumLength: number): PropertyDecorator {
  return applyDecorators(
    Transform(trimmed),
    IsString(),
    Length(1, maximumLength),
    ApiProperty({ minLength: 1, maxLength: maximumLength }),
    Matches(/^[^\p{Cc}\p{Cs}]*$/u, { message: '$property must not hold control characters' }),
  );
}
