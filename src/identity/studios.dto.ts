import {
  IsIn,
  IsInt,
  IsISO4217CurrencyCode,
  IsOptional,
  IsString,
  IsTimeZone,
  Matches,
  Max,
  MaxLength,
  Min,
} from 'class-validator';
import { MayBeLeftOut } from '../platform/may-be-left-out.js';
import { PlainText } from '../platform/plain-text.js';
import { WriteDto } from '../platform/request.dto.js';
import { Version } from '../platform/version.js';

const houseBlends = ['off', 'allowed'] as const;

export class ChangeStudioDto extends WriteDto {
  /** The version this change was made from. */
  @Version() version: number;
  @MayBeLeftOut() @PlainText(100) name?: string;
  @MayBeLeftOut() @IsTimeZone() timeZone?: string;
  @MayBeLeftOut() @IsISO4217CurrencyCode() currency?: string;
  @MayBeLeftOut()
  @Matches(/^([01]\d|2[0-3]):[0-5]\d$/, { message: 'morning must be a time such as 07:00' })
  morning?: string;
  @MayBeLeftOut() @IsInt() @Min(0) @Max(730) useByNearDays?: number;
  @MayBeLeftOut() @IsInt() @Min(0) @Max(365) openedLifeEndingDays?: number;
  /** Null: no opened life is assumed. */
  @IsOptional() @IsString() @MaxLength(40) assumedOpenedLife?: string | null;
  @MayBeLeftOut() @IsIn(houseBlends) houseBlends?: (typeof houseBlends)[number];
}

export class AddStudioDto extends WriteDto {
  @PlainText(100) name: string;
  @IsTimeZone() timeZone: string;
  /** Left out by an owner, who owns it too. */
  @MayBeLeftOut() @PlainText(100) ownerName?: string;
}
