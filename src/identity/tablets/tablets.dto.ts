import { IsString, Length } from 'class-validator';
import { MayBeLeftOut } from '../../platform/may-be-left-out.js';
import { NamedId } from '../../platform/named-id.js';
import { PlainText } from '../../platform/plain-text.js';
import { WriteDto } from '../../platform/request.dto.js';
import { Version } from '../../platform/version.js';
import { mostDigits } from './pin-fault.js';

const longestName = 100;
const longestBadge = 100;

export class EnrolTabletDto extends WriteDto {
  /** Where it lies, or what it looks like. */
  @PlainText(longestName) name: string;
}

export class RenameTabletDto extends WriteDto {
  /** The version this change was made from. */
  @Version() version: number;
  @PlainText(longestName) name: string;
}

/** A badge alone, or a person and their PIN. */
export class SwitchDto {
  /** What the symbol of the badge holds. */
  @MayBeLeftOut() @PlainText(longestBadge) badge?: string;
  @MayBeLeftOut() @NamedId() personId?: string;
  @MayBeLeftOut() @IsString() @Length(1, mostDigits) pin?: string;
}

export class ChoosePinDto {
  /** 4 to 8 digits, and none of those that are tried first. */
  @IsString() @Length(1, 20) pin: string;
}
