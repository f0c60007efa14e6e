import {
  IsIn,
  IsInt,
  IsISO4217CurrencyCode,
  IsOptional,
  IsString,
  IsTimeZone,
  Length,
  Matches,
  Max,
  Min,
  ValidateIf,
} from 'class-validator';
import { WriteDto } from '../platform/request.dto.js';

const houseBlends = ['off', 'allowed'] as const;

export class ChangeStudioDto extends WriteDto {
  /** The version this change was made from. */
  @IsInt() @Min(1) version: number;
  @IsOptional() @IsString() @Length(1, 100) name?: string;
  @IsOptional() @IsTimeZone() timeZone?: string;
  @IsOptional() @IsISO4217CurrencyCode() currency?: string;
  @IsOptional()
  @Matches(/^([01]\d|2[0-3]):[0-5]\d$/, { message: 'morning must be a time such as 07:00' })
  morning?: string;
  @IsOptional() @IsInt() @Min(0) @Max(730) useByNearDays?: number;
  @IsOptional() @IsInt() @Min(0) @Max(365) openedLifeEndingDays?: number;
  /** Null: no opened life is assumed. */
  @IsOptional()
  @ValidateIf((_, value) => value !== null)
  @Matches(/^P([1-9]\d{0,2})[MD]$/, { message: 'assumedOpenedLife must be a duration such as P6M or P90D' })
  assumedOpenedLife?: string | null;
  @IsOptional() @IsIn(houseBlends) houseBlends?: (typeof houseBlends)[number];
}
