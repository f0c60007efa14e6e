import { applyDecorators } from '@nestjs/common';
import { ApiProperty } from '@nestjs/swagger';
import { IsString, Length, Matches, NotContains } from 'class-validator';
import { MayBeLeftOut } from '../platform/may-be-left-out.js';
import { maximumSymbolCharacters } from './barcode.js';

/**
 * What a scanner sent or a person typed. Separators (GS, 0x1D) stay as they are, since GS1 data needs them; NUL and
 * halves of characters, which PostgreSQL cannot store, are refused.
 */
export function SymbolText(message?: string): PropertyDecorator {
  return applyDecorators(
    IsString(message === undefined ? undefined : { message }),
    Length(1, maximumSymbolCharacters),
    ApiProperty({ minLength: 1, maxLength: maximumSymbolCharacters }),
    NotContains('\0', { message: '$property must not hold the character NUL' }),
    Matches(/^\P{Cs}*$/u, { message: '$property must not hold halves of characters' }),
  );
}

/** What kind of symbol the reader saw, by its symbology identifier (ISO/IEC 15424) [S]. */
export function SymbologyIdentifier(): PropertyDecorator {
  return applyDecorators(
    MayBeLeftOut(),
    Matches(/^\][A-Za-z][0-9A-Za-z]$/, { message: '$property must be such as ]d2' }),
  );
}

/** A symbol as the reader gave it. */
export class SymbolDto {
  /** What the scanner sent or a person typed; separators stay as they are. */
  @SymbolText() text: string;
  /** What kind of symbol the reader saw, such as ]d2. */
  @SymbologyIdentifier() symbologyIdentifier?: string;
}
