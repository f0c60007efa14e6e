import {
  IsBoolean,
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
import { mostRetentionYears } from './retention-policy.js';
import { type RetentionChoice, retentionChoices } from './retention-presets.js';

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
  /**
   * Whose rule on keeping clients' records binds the studio: one of the list of presets, or "own". Choosing another
   * one forgets the years and the law set before.
   */
  @MayBeLeftOut() @IsIn(retentionChoices) retentionPreset?: RetentionChoice;
  /** At least those of the preset; null: just those. */
  @IsOptional() @IsInt() @Min(0) @Max(mostRetentionYears) retentionYears?: number | null;
  /** With "own": the law that asks for it. Null: none does, and a client who asks may be erased earlier. */
  @IsOptional() @PlainText(200) retentionLaw?: string | null;
  /** True: a password alone lets nobody into this studio. Whoever says so has a passkey themselves. */
  @MayBeLeftOut() @IsBoolean() passkeysRequired?: boolean;
  /** How people reach the studio, as messages about recalls say it: telephone, e-mail, address. Null: nothing. */
  @IsOptional() @PlainText(300) contactPoint?: string | null;
}

export class AddStudioDto extends WriteDto {
  @PlainText(100) name: string;
  @IsTimeZone() timeZone: string;
  /** Left out by an owner, who owns it too. */
  @MayBeLeftOut() @PlainText(100) ownerName?: string;
}
