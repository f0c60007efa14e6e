import { Type } from 'class-transformer';
import {
  ArrayMaxSize,
  ArrayMinSize,
  IsArray,
  IsIn,
  IsInt,
  IsOptional,
  IsString,
  MaxLength,
  Min,
  ValidateNested,
} from 'class-validator';
import { MayBeLeftOut } from '../platform/may-be-left-out.js';
import { PlainText } from '../platform/plain-text.js';
import { WriteDto } from '../platform/request.dto.js';
import { PrintedCodeDto } from './receiving.dto.js';

const maximumCodes = 10;

export class CorrectLotDto extends WriteDto {
  /** The version this correction was made from. */
  @IsInt() @Min(1) version: number;
  /** All codes that are printed, in place of those on record. */
  @MayBeLeftOut()
  @IsArray()
  @ArrayMinSize(1)
  @ArrayMaxSize(maximumCodes)
  @ValidateNested({ each: true })
  @Type(() => PrintedCodeDto)
  codes?: PrintedCodeDto[];
  /** Why there are no codes, in place of codes. */
  @MayBeLeftOut()
  @IsIn(['none printed', 'unreadable'])
  codeState?: 'none printed' | 'unreadable';
  /** YYYY-MM-DD, YYYY-MM or YYYY as printed; null: none is printed. */
  @IsOptional() @IsString() @MaxLength(20) useBy?: string | null;
  /** YYYY-MM-DD; null: none is printed. */
  @IsOptional() @IsString() @MaxLength(20) manufacturedOn?: string | null;
  /** What was wrong. */
  @PlainText(500) reason: string;
}
