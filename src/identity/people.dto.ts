import { IsIn } from 'class-validator';
import { MayBeLeftOut } from '../platform/may-be-left-out.js';
import { PlainText } from '../platform/plain-text.js';
import { WriteDto } from '../platform/request.dto.js';
import { Version } from '../platform/version.js';

const roles = ['owner', 'manager', 'artist'] as const;
const states = ['active', 'left'] as const;
const longestName = 100;

export class AddPersonDto extends WriteDto {
  @PlainText(longestName) name: string;
  @IsIn(roles) role: (typeof roles)[number];
}

export class ChangePersonDto extends WriteDto {
  /** The version this change was made from. */
  @Version() version: number;
  @MayBeLeftOut() @PlainText(longestName) name?: string;
  @MayBeLeftOut() @IsIn(roles) role?: (typeof roles)[number];
  @MayBeLeftOut() @IsIn(states) state?: (typeof states)[number];
}
