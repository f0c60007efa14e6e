import { IsString, Length, Matches, MaxLength } from 'class-validator';
import { MayBeLeftOut } from '../platform/may-be-left-out.js';
import { maximumSymbolCharacters } from './barcode.js';

/** Reading changes nothing, so it needs no id. */
export class ReadSymbolDto {
  /** What the scanner sent or a person typed; separators stay as they are. */
  @IsString() @Length(1, maximumSymbolCharacters) text: string;
  /** What kind of symbol the reader saw, such as ]d2. */
  @MayBeLeftOut()
  @MaxLength(3)
  @Matches(/^\][A-Za-z][0-9A-Za-z]$/, { message: 'symbologyIdentifier must be such as ]d2' })
  symbologyIdentifier?: string;
}
