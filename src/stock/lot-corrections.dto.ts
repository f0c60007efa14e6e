import { IsIn, IsOptional, IsString, MaxLength } from 'class-validator';
import { MayBeLeftOut } from '../platform/may-be-left-out.js';
import { NestedList } from '../platform/nested.js';
import { PlainText } from '../platform/plain-text.js';
import { WriteDto } from '../platform/request.dto.js';
import { Version } from '../platform/version.js';
import { PrintedCodeDto } from './receiving.dto.js';

const maximumCodes = 10;
/** Of the decisions at receipt those that a correction leaves: two lots on record cannot become one. */
export const correctionDecisions = ['separate lot'] as const;

export class CorrectLotDto extends WriteDto {
  /** The version this correction was made from. */
  @Version() version: number;
  /** All codes that are printed, in place of those on record. */
  @MayBeLeftOut()
  @NestedList(() => PrintedCodeDto, maximumCodes, 1)
  codes?: PrintedCodeDto[];
  /** Why there are no codes, in place of codes. */
  @MayBeLeftOut()
  @IsIn(['none printed', 'unreadable'])
  codeState?: 'none printed' | 'unreadable';
  /** YYYY-MM-DD, YYYY-MM or YYYY as printed; null: none is printed. */
  @IsOptional() @IsString() @MaxLength(20) useBy?: string | null;
  /** YYYY-MM-DD; null: none is printed. */
  @IsOptional() @IsString() @MaxLength(20) manufacturedOn?: string | null;
  /** The answer to a code that is known with another use-by date: these are two lots all the same. */
  @MayBeLeftOut() @IsIn(correctionDecisions) sameCodeDecision?: (typeof correctionDecisions)[number];
  /** What was wrong. Of the thing and never of a client: it is kept in the clear. */
  @PlainText(500) reason: string;
}
