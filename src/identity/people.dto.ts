import { IsIn, IsInt, IsOptional, IsString, Length, Min } from 'class-validator';
import { WriteDto } from '../platform/request.dto.js';

const roles = ['owner', 'manager', 'artist'] as const;
const states = ['active', 'left'] as const;

export class AddPersonDto extends WriteDto {
  @IsString() @Length(1, 100) name: string;
  @IsIn(roles) role: (typeof roles)[number];
}

export class ChangePersonDto extends WriteDto {
  /** The version this change was made from. */
  @IsInt() @Min(1) version: number;
  @IsOptional() @IsString() @Length(1, 100) name?: string;
  @IsOptional() @IsIn(roles) role?: (typeof roles)[number];
  @IsOptional() @IsIn(states) state?: (typeof states)[number];
}
