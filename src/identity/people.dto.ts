import { IsIn, IsOptional } from 'class-validator';
import { MayBeLeftOut } from '../platform/may-be-left-out.js';
import { IsPlainDate } from '../platform/plain-date.js';
import { PlainText } from '../platform/plain-text.js';
import { WriteDto } from '../platform/request.dto.js';
import { Version } from '../platform/version.js';
import { type Role, roles } from './permissions.js';

const states = ['active', 'left'] as const;
const longestName = 100;

export class AddPersonDto extends WriteDto {
  @PlainText(longestName) name: string;
  @IsIn(roles) role: Role;
  /** The last local day on which they may do anything; an auditor has one. */
  @MayBeLeftOut() @IsPlainDate() until?: string;
}

export class ChangePersonDto extends WriteDto {
  /** The version this change was made from. */
  @Version() version: number;
  @MayBeLeftOut() @PlainText(longestName) name?: string;
  @MayBeLeftOut() @IsIn(roles) role?: Role;
  /** Null: no end. */
  @IsOptional() @IsPlainDate() until?: string | null;
  @MayBeLeftOut() @IsIn(states) state?: (typeof states)[number];
}
